import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** "compressor 2 also" behind what the first one has: the same. */
export function alsoSo(items: readonly Item[]): void {
  const said = items.filter(({ kind, text }) => kind !== itemKind.sign && text !== "and");
  const [subject, also, ...more] = said;
  if (subject?.kind !== itemKind.subject || also === undefined || more.length > 0) return;
  if (!/^(?:also|likewise|too)$/.test(also.text)) return;
  also.kind = itemKind.same;
  also.roles = role.same;
}
