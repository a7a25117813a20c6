import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** A gauge, a pipe or a machine: what a figure can be of. */
const names = (item: Item | undefined): boolean =>
  item?.kind === itemKind.subject
    ? item.subject !== ""
    : item?.kind === itemKind.label && (item.label?.place ?? item.label?.hint) !== undefined;

/** "head not suct, 310", "not comp 1, comp 2 was 39": the name that is denied, where another stands beside it. */
export function deniedNames(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.text !== "not" || item.kind !== itemKind.word) return;
    const at = ((items[i + 1]?.roles ?? 0) & role.article) !== 0 ? i + 2 : i + 1;
    const denied = items[at];
    if (denied === undefined || !names(denied)) return;
    const before = items[i - 1];
    const behind = items[at + 1]?.text === "," ? items[at + 2] : undefined;
    const other = [before, behind].find((one) => one?.kind === denied.kind && names(one));
    // "that was liquid not head": without a figure it tells what an earlier one is not
    const figure = items.slice(at + 1).some(({ kind }) => kind === itemKind.number);
    if (other === undefined || !figure) return;
    denied.kind = itemKind.word;
    denied.label = undefined;
    denied.subject = undefined;
  });
}
