import type { Readable } from "node:stream";
import type { z } from "zod";
import type { Exit, Io } from "./command.ts";

/** The lines of a stream; one of any length, the last with or without an end. */
export async function* linesOf(input: Readable): AsyncGenerator<string> {
  for await (const lines of lineGroupsOf(input, Number.POSITIVE_INFINITY)) yield* lines;
}

/** The lines as they come: at most so many together, and never waiting for more to arrive. */
export async function* lineGroupsOf(
  input: Readable,
  most: number,
): AsyncGenerator<readonly string[]> {
  const decoder = new TextDecoder("utf-8");
  let parts: string[] = [];
  for await (const chunk of input) {
    const text = typeof chunk === "string" ? chunk : decoder.decode(chunk, { stream: true });
    const pieces = text.split("\n");
    let lines: string[] = [];
    for (const [index, piece] of pieces.entries()) {
      parts.push(piece);
      if (index === pieces.length - 1) break;
      lines.push(withoutReturn(parts.join("")));
      parts = [];
      if (lines.length < most) continue;
      yield lines;
      lines = [];
    }
    if (lines.length > 0) yield lines;
  }
  const last = parts.join("") + decoder.decode();
  if (last !== "") yield [withoutReturn(last)];
}

const withoutReturn = (line: string): string => (line.endsWith("\r") ? line.slice(0, -1) : line);

/** Answers each NDJSON line in order; one that is not valid is refused by itself and the rest go on. */
export async function answerLines<T>(
  io: Io,
  schema: z.ZodType<T>,
  answer: (value: T) => unknown,
): Promise<Exit> {
  let exit: Exit = 0;
  for await (const line of linesOf(io.input)) {
    if (line.trim() === "") continue;
    const parsed = parseLine(line, schema);
    if (parsed.ok) io.line(JSON.stringify(answer(parsed.value)));
    else {
      exit = 1;
      io.line(JSON.stringify({ id: parsed.id, error: parsed.error }));
    }
  }
  return exit;
}

export type ParsedLine<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly id: string | number | null; readonly error: string };

export function parseLine<T>(line: string, schema: z.ZodType<T>): ParsedLine<T> {
  let json: unknown;
  try {
    json = JSON.parse(line);
  } catch {
    return { ok: false, id: null, error: "This line is not JSON." };
  }
  const parsed = schema.safeParse(json);
  if (parsed.success) return { ok: true, value: parsed.data };
  return { ok: false, id: idOf(json), error: problemOf(parsed.error) };
}

function idOf(json: unknown): string | number | null {
  if (typeof json !== "object" || json === null || !("id" in json)) return null;
  const { id } = json;
  return typeof id === "string" || typeof id === "number" ? id : null;
}

function problemOf(error: z.ZodError): string {
  const [issue] = error.issues;
  if (issue === undefined) return "This line does not fit.";
  const path = issue.path.map(String).join(".");
  const text = issue.message.replace(/^Invalid input: /, "");
  return path === "" ? `This line does not fit: ${text}.` : `"${path}" does not fit: ${text}.`;
}
