import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** What the bare numbers of a row count: leads where leads are spoken of, else the points named before. */
function familyBefore(items: readonly Item[], list: readonly Draft[], order: number): string {
  const said = list[order - 1]?.points?.at(-1)?.[0] ?? "";
  const subject = list[order - 1]?.subject ?? "";
  const match = /^(lead |L|T)(\d)$/.exec(said) ?? /^(.+ )(\d)$/.exec(said === "" ? subject : "");
  if (match !== null) return `${match[1]}${match[2]}`;
  // "gnd test 1 ol 2 ol 3 .2M"
  const told = items.some(
    (item) =>
      item.text === "leads" ||
      item.kind === itemKind.ground ||
      // "ran meg at 250v: 1 9.5 2 9.9 3 10.1"
      item.label?.quantity === "insulation_resistance" ||
      (item.kind === itemKind.unit && /^meg/.test(item.text)),
  );
  if (told) return "lead 0";
  // "1 3.3A 2 3.4A 3 3.3A": counted from one, whatever of
  const [draft, next] = list.slice(order, order + 2);
  const before = items[(draft?.index ?? 0) - 1];
  const opens = before === undefined || before.kind === itemKind.line || before.text === ":";
  return opens && draft?.unit === undefined && next?.ownUnit === true ? `${unnamed}0` : "";
}

/** A row that is counted, of which no word says what is counted. */
const unnamed = "#";

const tells = role.is | role.only | role.about | role.greater | role.less;

/** "three's only 18", "3 is down at 9", "3: 410": does nothing but a verb and its like stand between? */
function gives(items: readonly Item[], from: number, to: number): boolean {
  const words = items.slice(from + 1, to);
  const [first] = words;
  if (first === undefined) return true;
  if (words.length === 1 && first.kind === itemKind.sign) return /^[:=]$/.test(first.text);
  if (words.length > 3) return false;
  return words.every(
    ({ roles, text }) => (roles & tells) !== 0 || /^(?:just|down|up|at|still|now)$/.test(text),
  );
}

/** A small whole number that stands right before a value of its own. */
function counts(items: readonly Item[], draft: Draft, next: Draft | undefined): boolean {
  if (next === undefined || draft.ownUnit || draft.points !== undefined) return false;
  if (!Number.isInteger(draft.value) || draft.value < 1 || draft.value > 12) return false;
  const other = draft.named !== undefined && draft.named !== "insulation_resistance";
  if (other || draft.place !== undefined || next.points !== undefined) return false;
  return gives(items, draft.index, next.index);
}

/** "leads 1 and 2 are 300, three's 5": a verb says that the small number has a value of its own. */
export function byVerb(items: readonly Item[], draft: Draft | undefined, next?: Draft): boolean {
  if (draft === undefined || next === undefined) return false;
  const verb = items[draft.index]?.apostrophe === true || next.index > draft.index + 1;
  return verb && counts(items, draft, next);
}

/** "leads: 1 140M 2 138M 3 141M", "lead 1 550 2 560 3 540 meg": the small numbers are the leads. */
export function numberedRows(list: readonly Draft[], items: readonly Item[]): void {
  for (let at = 0; at < list.length; at++) {
    const family = familyBefore(items, list, at);
    if (family === "") continue;
    const name = family.slice(0, -1);
    const rows: (readonly [Draft, Draft])[] = [];
    let wanted = Number(family.slice(-1)) + 1;
    for (let i = at; ; i += 2, wanted++) {
      const [draft, next] = [list[i], list[i + 1]];
      if (draft === undefined || next === undefined || draft.value !== wanted) break;
      if (!counts(items, draft, next)) break;
      if (name === unnamed && !next.ownUnit) break;
      rows.push([draft, next]);
    }
    const named = !/^(?:lead |L|T)\d$/.test(family);
    const units = [list[at - 1], ...rows.map(([, next]) => next)];
    if (named && units.every((one) => one?.unit === undefined)) continue;
    const enough = family.endsWith("0") ? rows.length > 1 : rows.length > 0;
    if (!enough) continue;
    for (const [draft, next] of rows) {
      const item = items[draft.index];
      draft.gone = true;
      if (item !== undefined) item.owner = "<row> <value>";
      if (/^(?:lead |L|T)$/.test(name)) next.points = [[`${name}${draft.value}`]];
      else if (name !== unnamed) next.subject = `${name}${draft.value}`;
      next.subject ??= draft.subject;
      next.before = [draft.index, ...next.before];
    }
  }
}
