import { itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { role } from "../word.ts";
import type { Verb } from "./part-verb.ts";

/** "55-810": what stands before a part's number is its name, whatever it is. */
export function unknownAt(note: Note, verb: Verb, to: number): string | undefined {
  const { items } = note;
  let end = verb.at + 1;
  while (
    end < to &&
    (((items[end]?.roles ?? 0) & role.article) !== 0 || items[end]?.text === "new")
  )
    end++;
  const from = end;
  if (items[from]?.text === "one") return undefined;
  while (end < to && items[end]?.kind !== itemKind.number && items[end]?.kind !== itemKind.sign)
    end++;
  if (end === from || end - from > 4) return namedByCode(note, from, to);
  if (!/^\d/.test(items[end]?.text ?? "")) return namedByCode(note, from, to);
  if (items[end + 1]?.text !== "-") return undefined;
  const first = items[from];
  const last = items[end - 1];
  if (first === undefined || last === undefined) return undefined;
  return note.plain
    .slice(first.from, last.to)
    .replace(/,? ?part(?: number)?$/, "")
    .trim();
}

/** "need a trap, part 12E4": up to four words of its name, with the number behind them. */
function namedByCode(note: Note, from: number, to: number): string | undefined {
  const first = note.items[from];
  const code = note.statements.find(
    (one) => one.kind === "note" && one.about.startsWith("part ") && one.said.length > 0,
  );
  const at = code?.spans[0]?.[0];
  if (first === undefined || at === undefined || at <= first.from) return undefined;
  const own = note.items.slice(from, to).filter((item) => item.from < at);
  const last = own.findLast((item) => item.kind !== itemKind.sign);
  const plain = own.every((item) => item.kind !== itemKind.number && item.owner === undefined);
  if (last === undefined || !plain || own.length > 5) return undefined;
  return note.plain.slice(first.from, last.to).trim();
}
