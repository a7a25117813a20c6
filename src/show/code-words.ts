import type { ReplyInput } from "../model.ts";
import { newReadings } from "./read-back.ts";
import { listed, sentence, sentenceCase } from "./wording.ts";

/** What the company's list says of each fault code that a message names; that it says nothing, too. */
export function codeLines(input: ReplyInput): readonly string[] {
  const codes = newReadings(input).flatMap(({ quantity, value }) =>
    quantity === "fault_code" && typeof value === "string" ? [value] : [],
  );
  const listing = (code: string) => input.codes.find((line) => plain(line.code) === plain(code));
  const all = [...new Set(codes)];
  const unknown = all.filter((code) => listing(code) === undefined);
  const known = all.flatMap((code) => {
    const line = listing(code);
    if (line === undefined) return [];
    const first = line.first === undefined ? "" : ` Look at first: ${sentence(line.first)}`;
    return [`${code}, company's list: ${sentence(sentenceCase(line.meaning))}${first}`];
  });
  return unknown.length === 0
    ? known
    : [...known, `${listed(unknown)}: not in the company's list.`];
}

const plain = (code: string): string => code.toLowerCase().replace(/[^a-z0-9]/g, "");
