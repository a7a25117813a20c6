import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import type { Note } from "./note.ts";

const ahead = /^(?:(?:on|for|at|with) )?(?:the )?(?:other (?:two|2)|others|rest)\b/;
const behind =
  /(?:^|\b(?:the|and|,|\.) )(?:other (?:two|2)|others|rest)(?: are| is| both| all| read| reads| the)*$/;

/** "same on the other two", "the others are the same" */
export function saysOthers(items: readonly Item[], same: number): boolean {
  if (ahead.test(wordsFrom(items, same + 1, same + 5))) return true;
  return behind.test(wordsFrom(items, same - 6, same));
}

/** "same on the other two" behind lead 1, here or in the message before: those of the three that have no value yet. */
export function pointsLeft(note: Note, draft: Draft, here: readonly Draft[]): Draft["points"] {
  if (!saysOthers(note.items, draft.index)) return undefined;
  const own = here.filter((one) => one.index < draft.index && !one.gone);
  const told = own.some(({ points }) => points !== undefined);
  const last = note.context.readings.at(-1);
  const before = note.context.readings
    .slice(-3)
    .filter(({ quantity, subject }) => quantity === last?.quantity && subject === last?.subject);
  const all = told ? own.map(({ points }) => points?.[0]) : before.map(({ points }) => points);
  const [first = "", second] = all.at(-1) ?? [];
  const family = /^(lead |phase |L|T)[123ABC]$/.exec(first)?.[1];
  if (family === undefined || (second !== undefined && second !== "ground")) return undefined;
  const done = all.map((points) => points?.[0]);
  const names = /[ABC]$/.test(first) ? ["A", "B", "C"] : ["1", "2", "3"];
  const left = names.map((name) => `${family}${name}`).filter((point) => !done.includes(point));
  if (left.length !== 2) return undefined;
  return left.map((point) => (second === undefined ? [point] : [point, second]));
}
