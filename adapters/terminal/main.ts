import { mkdirSync, writeFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { createInterface, type Interface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import { z } from "zod";
import type { ChatKind, ChatPlatform, Door, Part } from "../chat-platform.ts";
import { isoWithOffset } from "../local-time.ts";
import { problemsOf } from "../serve/problems.ts";
import { sentenceOf } from "../serve/pump.ts";
import { type Speaker, speakerFrom, translate } from "./translate.ts";

const name = "terminal";

const configShape = z.strictObject({
  person: z.string().min(1).default("you"),
  role: z.enum(["tech", "dispatcher", "office"]).default("tech"),
});

interface Streams {
  readonly input: Readable & { readonly isTTY?: boolean };
  readonly output: Writable;
}

/** The chat on this terminal: one line is one message. */
export const terminal: ChatKind = terminalOn(() => ({
  input: process.stdin,
  output: process.stdout,
}));

export function terminalOn(streams: () => Streams): ChatKind {
  return {
    name,
    configure: (raw) => {
      const parsed = configShape.safeParse(raw ?? {}, { reportInput: true });
      return parsed.success
        ? { ok: true, platform: terminalPlatform(parsed.data, streams()) }
        : { ok: false, problems: problemsOf(parsed.error, ["platforms", name]) };
    },
  };
}

const welcome = (path: string): readonly string[] => [
  "Type a reading as you would text it: OU-3 comp 1 lead 2 to ground 84 megohm at 500 V",
  "Open a job: New job: Gull Wharf OU-3, not cooling. Then: here, why, what next, status, summary, done.",
  `/as NAME dispatcher changes who types, /board shows the open jobs, /quit ends. Kept in ${path}`,
];

function terminalPlatform(first: Speaker, { input, output }: Streams): ChatPlatform {
  const print = (text: string): void => {
    output.write(`${text}\n`);
  };
  let lines: Interface | undefined;
  const printed = new Map<string, string>();
  const files = new Map<string, string>();
  let store = "";
  let hearing: Hearing = { speaker: first, count: 0, said: 0 };
  let end: () => void = () => {};
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  const ask = (): void => {
    if (input.isTTY !== true || lines === undefined) return;
    lines.setPrompt(`${hearing.speaker.person}> `);
    lines.prompt();
  };
  return {
    name,
    longest: 1_000_000,
    boardEveryMs: 1000,
    start: async (door) => {
      const opened = createInterface({ input, output, terminal: input.isTTY === true, prompt: "" });
      lines = opened;
      store = door.storePath ?? "";
      for (const line of welcome(door.storePath ?? "")) print(line);
      opened.on("line", (text) => {
        if (text.trim() === "/quit") opened.close();
        else hearing = hear(text, hearing, { door, print, ask });
      });
      opened.once("close", end);
      door.connected(true);
      ask();
      return "";
    },
    send: async (part, { bytes }) => {
      if (part.kind === "text") {
        for (const line of shownOf(part, printed)) print(line);
        printed.set(part.replaces ?? part.key, part.text);
      }
      if (part.kind === "upload" && part.file !== undefined && bytes !== undefined) {
        files.set(part.file.sha256, savedFile(store, part.file.name, bytes));
      }
      if (part.kind === "share") print(`  file: ${files.get(part.file?.sha256 ?? "") ?? ""}`);
      return { kind: "sent", remote: part.key };
    },
    // what was printed before the program died may be printed once more
    find: async () => ({ kind: "absent" }),
    rest: ask,
    ended,
    stop: async () => lines?.close(),
    check: async () => [{ ok: true, says: "Terminal: this terminal is used." }],
  };
}

/** A terminal shows no files: they are written beside the store, and their paths are told. */
function savedFile(store: string, name: string, bytes: Uint8Array): string {
  const folder = join(dirname(resolve(store)), "files");
  const path = join(folder, basename(name));
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path, bytes, { mode: 0o600 });
    return path;
  } catch (error) {
    return `${name} could not be written to ${folder}: ${error instanceof Error ? error.message : String(error)}`;
  }
}

/** What is printed can't be taken back: of a changed answer only what is new in it, and marked. */
function shownOf(part: Part, printed: ReadonlyMap<string, string>): readonly string[] {
  if (part.replaces === undefined) return [part.text];
  const before = new Set(printed.get(part.replaces)?.split("\n") ?? []);
  const fresh = part.text.split("\n").filter((line) => !before.has(line));
  return fresh.map((line) => `(mends the answer above) ${line}`);
}

interface Hearing {
  readonly speaker: Speaker;
  /** lines said so far */
  readonly count: number;
  /** ms, when the last line was said: pasted lines keep their order */
  readonly said: number;
}

interface Surroundings {
  readonly door: Door;
  readonly print: (text: string) => void;
  readonly ask: () => void;
}

/** One typed line: a command of the terminal, or something said. */
function hear(text: string, hearing: Hearing, { door, print, ask }: Surroundings): Hearing {
  const { speaker } = hearing;
  const said = text.trim() !== "" && text.trim() !== "/board" && !text.startsWith("/as ");
  if (!said) {
    if (text.trim() === "/board") print(door.board?.() ?? "");
    ask();
    return { ...hearing, speaker: speakerFrom(text) ?? speaker };
  }
  const count = hearing.count + 1;
  const when = Math.max(door.now(), hearing.said + 1);
  const at = isoWithOffset(new Date(when));
  try {
    const id = `${at}-${process.pid}-${count}`;
    door.deliver({ message: translate({ text, at, id }, speaker) });
  } catch (error) {
    print(`Not kept: ${sentenceOf(error, door.storePath ?? "the store")}`);
    ask();
  }
  return { speaker, count, said: when };
}
