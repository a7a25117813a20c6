import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";

const name = String.raw`\d{1,2}\.\d{1,2}`;
const list = `(${name}(?:(?:, and |, | and | & | n | )${name})*)`;
const linked = `(?: (?:are|is|all|both|still|were))*`;
const noun = `(?:flats?|rooms?|apartments?|apts?|suites?|units?|offices?|studios?)`;
const ill = new RegExp(
  String.raw`(?:\b(${noun}) )?(?<![\d.])${list}${linked} (warm|hot|cold|stuffy|freezing|complaining)\b`,
);
const well = new RegExp(
  String.raw`(?<![\d.])${list}${linked} (?:ok|okay|fine|good|cooling|cool)\b`,
);

const namesIn = (listed: string): readonly string[] =>
  [...listed.matchAll(new RegExp(name, "g"))].map(([one]) => one);

/** "flats 3.1 and 3.2 warm", "3.1 3.4 warm, 3.3 is ok": rooms by floor and door, where a noun or both lists say so. */
export const dottedRooms: Rule = {
  name: "<floor.door> <symptom>",
  heads: "warm|hot|cold|stuffy|freezing|complaining",
  needs: "number",
  apply: (note: Note) => {
    const { items, plain } = note;
    if (items.some(({ unit, label }) => unit !== undefined || label?.place !== undefined)) return;
    const out = ill.exec(plain);
    if (out === null) return;
    const [all, called, listed = "", symptom = ""] = out;
    const end = out.index + all.length;
    const fine = well.exec(plain.slice(end));
    const both = fine !== null && namesIn(listed).length > 1;
    if (called === undefined && !both) return;
    const to = fine === null ? end : end + fine.index + fine[0].length;
    for (const item of items)
      if (item.kind === itemKind.number && item.from >= out.index && item.to <= to)
        item.owner ??= dottedRooms.name;
    note.statements.push({
      kind: "complaint",
      places: [...namesIn(listed)],
      symptom,
      fine: [...namesIn(fine?.[1] ?? "")],
      said: note.text.slice(out.index, to),
      spans: [[out.index, to]],
      rule: dottedRooms.name,
    });
  },
};
