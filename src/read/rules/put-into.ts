import { itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber } from "./near.ts";

/** Cases and boxes of one kind at a site; common practice, no source. */
const mostCases = 12;

const goods =
  /\b(?:product|stock|stuff|food|load|milk|meat|goods|inventory|everything)\b[^.,;\d]{0,30}\b(?:to|into|in)(?: the| our)? (?!about|around|roughly|like|only|just|maybe|almost|under|over|low|high|mid)[a-z-]+ $/;
const moved = /\b(?:moved?|moving|put|shifted|took|taken|carried|transferred|relocated)\b/;

function isWhere({ plain, items }: Note, i: number): boolean {
  const next = items[i + 1];
  const ends = next === undefined || next.kind !== itemKind.word || (next.roles & role.is) === 0;
  const before = plain.slice(0, items[i]?.from);
  return ends && moved.test(before) && goods.test(before);
}

/** "product moved to dairy 2": where it was put, no degrees of it. */
export const putInto: Rule = {
  name: "<goods> moved to <place> <number>",
  heads: "product|stock|stuff|food|load|milk|meat|goods|inventory|everything",
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || item.fraction) return;
      if (!/^\d+$/.test(item.text) && !item.spoken) return;
      if (!Number.isInteger(item.value) || item.value < 1 || item.value > mostCases) return;
      if (isWhere(note, i)) state(note, putInto.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
