import type { ReplyInput } from "../model.ts";
import { newReadings } from "./read-back.ts";
import { sentence, sentenceCase } from "./wording.ts";

/** What the company's list says of each fault code that a message names; that it says nothing, too. */
export function codeLines(input: ReplyInput): readonly string[] {
  const codes = newReadings(input).flatMap(({ quantity, value }) =>
    quantity === "fault_code" && typeof value === "string" ? [value] : [],
  );
  return [...new Set(codes)].map((code) => {
    const known = input.codes.find((line) => plain(line.code) === plain(code));
    if (known === undefined) return `${code}: not in the company's list.`;
    const first = known.first === undefined ? "" : ` Look at first: ${sentence(known.first)}`;
    return `${code}, company's list: ${sentence(sentenceCase(known.meaning))}${first}`;
  });
}

const plain = (code: string): string => code.toLowerCase().replace(/[^a-z0-9]/g, "");
