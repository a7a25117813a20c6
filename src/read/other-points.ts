import type { Context } from "./context.ts";
import { copyDraft, copyReading } from "./copy-value.ts";
import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { leads, legRows } from "./leg-rows.ts";
import type { Note } from "./note.ts";

type Points = readonly string[];

/** Pairs between three terminals, in the order in which they are measured. */
export const rows: readonly Points[] = [...legRows, ["C", "R", "S"]];

/** How many of the others are spoken of, by what stands in the message; 0 where none are. */
export function othersTold(words: string): number {
  if (/\bother (?:two|2)\b/.test(words)) return 2;
  if (/\b(?:the|on|both) (?:others|rest|other (?:pairs|windings|leads|legs|phases))\b/.test(words))
    return 2;
  if (/^(?:and )?others\b|\bothers (?:the |are |all )*same$/.test(words)) return 2;
  if (/\b(?:other|last|third|remaining) (?:pair|winding|set|lead|leg|phase|one)\b/.test(words))
    return 1;
  return 0;
}

/** "other two same", "same on the other two leads": of what was not named. */
export function saysOthers(items: readonly Item[], same: number): boolean {
  return (
    /\b(?:others|rest|other (?:two|2|one|lead|leg|phase|pair))$/.test(
      wordsFrom(items, same - 3, same),
    ) ||
    /^(?:on|for|at|with|across) (?:the )?(?:others|rest|other)\b/.test(
      wordsFrom(items, same + 1, same + 5),
    )
  );
}

/** All that stand in the row of these points: single ones, each to ground, or pairs. */
function rowOf(points: Points): readonly Points[] {
  const [first = "", second] = points;
  const row = [...rows, leads].find((one) => one.includes(first));
  if (row === undefined) return [];
  if (second === undefined) return row.map((point) => [point]);
  if (second === "ground") return row.map((point) => [point, second]);
  const [a = "", b = "", c = ""] = row;
  return row.includes(second)
    ? [
        [a, b],
        [b, c],
        [a, c],
      ]
    : [];
}

const keyOf = (points: Points): string => [...points].sort().join();

/** The points of the row that have no value yet, where they are as many as are spoken of. */
export function otherPoints(
  items: readonly Item[],
  { readings }: Context,
  before: readonly Draft[],
): readonly Points[] | undefined {
  const count = othersTold(items.map(({ text }) => text).join(" "));
  if (count === 0) return undefined;
  const here = before.flatMap(({ points }) => points ?? []);
  const last = readings.at(-1);
  const like = here.at(-1) ?? last?.points;
  if (like === undefined || (here.length === 0 && last?.rating !== undefined)) return undefined;
  const row = rowOf(like);
  const earlier = readings
    .slice(-row.length)
    .filter(({ quantity, subject }) => quantity === last?.quantity && subject === last.subject)
    .map(({ points }) => points ?? []);
  const done = new Set([...here, ...(here.length === 0 ? earlier : [])].map(keyOf));
  const open = row.filter((points) => !done.has(keyOf(points)));
  return open.length === count ? open : undefined;
}

/** "the other two are the same" behind lead 1, "the other leg's the same" behind L1 and L2. */
export function ofOtherPoints(
  note: Note,
  draft: Draft,
  before: readonly Draft[],
  left: Draft | undefined,
): boolean {
  if (draft.points !== undefined || draft.subject !== undefined) return false;
  const points = otherPoints(note.items, note.context, before);
  const like = note.context.readings.at(-1);
  if (points === undefined) return false;
  draft.points = points;
  draft.count = points.length;
  if (left !== undefined) copyDraft(note, draft, left);
  else if (like !== undefined) copyReading(note, draft, like);
  return true;
}
