import type { CaseNote } from "../model.ts";

const inIt =
  /\b(?:new|spare|replacement) (?:\w+ ){0,2}?(one|comp\w*|motor|board|drive|inverter|module|cap\w*|contactor|sensor|txv) (?:is |was |went |goes |now )?in\b(?! (?:the |my )?(?:truck|van|box|shop|stock|transit|hand)|coming)/i;
const old = /\bold (comp\w*|motor|board|drive|inverter|module|cap\w*|contactor|sensor|txv)\b/i;

/** Where a note says that a new part is in; below 0 where it does not. */
export function newInAt(note: CaseNote): number {
  return (note.text ?? "").search(inIt);
}

/** The part that is new: "new one is in" names what was called old before. */
export function newPart(notes: readonly CaseNote[]): string | undefined {
  const text = notes.map((note) => note.text ?? "").join("\n");
  const named = inIt.exec(text)?.[1]?.toLowerCase();
  return named === "one" ? old.exec(text)?.[1]?.toLowerCase() : named;
}
