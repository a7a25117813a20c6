import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";

/** "codes", "idu 4 fault log:": what the lines below it are. */
const heading =
  /^(?:[\w #-]{0,20} )?(?:codes?|faults?|alarms?|errors?|(?:fault|alarm|error) (?:log|history|list))\s*:?\s*$/;
/** One code on a line, numbered or not, and how often or how it stands. */
const listed =
  /^\s*(?:[-*•]\s*|\d[.)]\s*)?([a-z]{1,2}-?\d{1,4}(?:-\d{1,3})?|\d{1,3})\s*(?:x ?\d{1,2}|\d{1,2} ?x|\(\d{1,2}\)|twice|once|active|stored|cleared|history|hist|now|old)?\s*$/;

function take(note: Note, code: string, [from, to]: readonly [number, number]): void {
  for (const item of note.items)
    if (item.from >= from && item.to <= to) item.owner = codeLines.name;
  fileCode(note, code, { span: [from, to], rule: codeLines.name });
}

/** "codes / E7-04 x3 / P11" in lines: a list of codes below its heading. */
export const codeLines: Rule = {
  name: "codes, a line each",
  heads: "code|codes|fault|faults|alarm|alarms|error|errors|log|history|list",
  needs: "number",
  apply: (note) => {
    if (!note.plain.includes("\n")) return;
    let at = 0;
    let under = false;
    for (const line of note.plain.split("\n")) {
      const match = under ? listed.exec(line) : null;
      const code = match?.[1];
      if (code !== undefined) {
        const from = at + line.indexOf(code);
        take(note, note.text.slice(from, from + code.length).toUpperCase(), [
          from,
          at + line.trimEnd().length,
        ]);
      } else under = heading.test(line);
      at += line.length + 1;
    }
  },
};
