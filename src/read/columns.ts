import type { Unit } from "../quantities/quantity.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import type { Label } from "./label.ts";

/** What stands at the top of a column. */
type Head =
  | { readonly kind: "subject"; readonly subject: string }
  | { readonly kind: "point"; readonly point: readonly string[] }
  | { readonly kind: "after"; readonly seconds: number; readonly index: number }
  | { readonly kind: "unit"; readonly unit: Unit }
  | { readonly kind: "label"; readonly label: Label };

interface Line {
  readonly from: number;
  readonly to: number;
}

function linesOf(items: readonly Item[]): Line[] {
  const lines: Line[] = [];
  let from = 0;
  for (let i = 0; i <= items.length; i++) {
    if (i < items.length && items[i]?.kind !== itemKind.line) continue;
    // "|1|478|16.2|"
    while (from < i && items[from]?.text === "|") from++;
    if (i > from) lines.push({ from, to: i });
    from = i + 1;
  }
  return lines;
}

function headsOf(item: Item, index: number): readonly Head[] {
  if (item.kind === itemKind.subject && (item.subject ?? "") !== "")
    return [{ kind: "subject", subject: item.subject ?? "" }];
  if (item.kind === itemKind.points)
    return (item.points ?? []).map((point) => ({ kind: "point", point }));
  if (item.kind === itemKind.number && item.unit?.dimension === "time")
    return [{ kind: "after", seconds: item.value * item.unit.factor, index }];
  if (item.kind === itemKind.unit && item.unit !== undefined && item.unit.dimension !== "time")
    return [{ kind: "unit", unit: item.unit }];
  const { label } = item;
  if (label === undefined || label.rating !== undefined || label.action !== undefined) return [];
  if (item.kind === itemKind.label && (label.place ?? label.quantity) !== undefined)
    return [{ kind: "label", label }];
  return [];
}

/** "leg v a": units by their letters, behind a title of rows. */
function letterHead({ kind, text }: Item): Head | undefined {
  if (kind !== itemKind.word || !/^[va]$/.test(text)) return undefined;
  const unit = unitCalled(text.toUpperCase());
  return unit === undefined ? undefined : { kind: "unit", unit };
}

const rowTitle = /^(?:leads?|leg|pt|point|terminal|comp|fan|ckt|circuit|unit|reading|test)$/;

/** Do the rows below count: "1 | 3.2", "2 | 3.3"? */
function countsBelow(items: readonly Item[], to: number): boolean {
  const rows = linesOf(items).filter(({ from }) => from > to);
  const first = rows.map(({ from }) => items[from]);
  return (
    rows.length > 1 &&
    first.every(
      (item, at) =>
        item?.kind === itemKind.number && item.unit === undefined && item.value === at + 1,
    ) &&
    rows.every(({ from, to: end }) => end - from > 1)
  );
}

/** The heads of a line that holds nothing else; all of one kind, two at least, or one over rows that count. */
function headLine(items: readonly Item[], line: Line): readonly Head[] {
  const heads: Head[] = [];
  let titled = false;
  for (let i = line.from; i < line.to; i++) {
    const item = items[i];
    if (item === undefined) return [];
    const letter = titled ? letterHead(item) : undefined;
    const found = letter === undefined ? headsOf(item, i) : [letter];
    if (found.length > 0) heads.push(...found);
    else if (i === line.from && rowTitle.test(item.text)) titled = true;
    else if (!/^[|/,:]$/.test(item.text)) return [];
  }
  const [first] = heads;
  const enough = heads.length > 1 || (titled && countsBelow(items, line.to));
  return enough && heads.every(({ kind }) => kind === first?.kind) ? heads : [];
}

/** What the small numbers of the rows count, by the word before the heads. */
const counted: Readonly<Record<string, string>> = {
  ckt: "circuit ",
  circuit: "circuit ",
  comp: "compressor ",
  fan: "fan ",
  unit: "unit ",
  lead: "lead ",
  leads: "lead ",
  leg: "L",
};

/** The values of a row under `columns` heads; a small whole number before them counts the leads. */
function rowOf(
  list: readonly Draft[],
  items: readonly Item[],
  line: Line,
): { readonly values: Draft[]; readonly count: Draft | undefined } {
  const values = list.filter(({ index }) => index >= line.from && index < line.to);
  const [first] = values;
  const counts =
    first?.index === line.from &&
    items[first.index]?.unit === undefined &&
    Number.isInteger(first.value) &&
    first.value >= 1 &&
    first.value <= 12 &&
    items.some(({ text }) => text in counted);
  return counts ? { values: values.slice(1), count: first } : { values, count: undefined };
}

/** What the row's own label says holds for each of its values. */
function like(first: Draft, draft: Draft): void {
  if (draft.before.length > 0 && draft.named !== undefined) return;
  draft.named ??= first.named;
  draft.hint ??= first.hint;
  draft.place ??= first.place;
  draft.kind ??= first.kind;
  draft.state ??= first.state;
  draft.rating ??= first.rating;
  draft.unit ??= first.unit;
  draft.points ??= first.points;
  draft.subject ??= first.subject;
  draft.grounded = draft.grounded || first.grounded;
}

function give(head: Head | undefined, draft: Draft): void {
  if (head?.kind === "subject") draft.subject = head.subject;
  else if (head?.kind === "point") draft.points = [head.point];
  else if (head?.kind === "after") {
    draft.after = head.seconds;
    draft.shared.push(head.index);
  } else if (head?.kind === "unit") giveUnit(head.unit, draft);
  else if (head?.kind === "label") {
    const { label } = head;
    draft.place = label.place;
    draft.hint = label.hint;
    draft.named = label.quantity;
    draft.settled = label.quantity !== undefined;
    draft.kind = label.kind;
    draft.thing = undefined;
  }
}

/** "volts / amps" over "AB 478 / 41.2": a pair of legs has volts, no amps. */
function giveUnit(unit: Unit, draft: Draft): void {
  if (draft.ownUnit) return;
  draft.unit = unit;
  draft.named = undefined;
  draft.hint = undefined;
  if (unit.dimension === "current" && draft.points?.some((points) => points.length > 1))
    draft.points = undefined;
}

/** The number that begins a row names its lead, its circuit, its fan. */
function nameRow(count: Draft, values: readonly Draft[], items: readonly Item[]): void {
  const item = items[count.index];
  const name = counted[items.find(({ text }) => text in counted)?.text ?? ""] ?? "";
  count.gone = true;
  if (item !== undefined) item.owner = "<row> <value>";
  for (const draft of values) {
    if (name === "lead " || name === "L") draft.points = [[`${name}${count.value}`]];
    else draft.subject = `${name}${count.value}`;
    draft.before = [count.index, ...draft.before];
  }
}

function dropHeads(list: readonly Draft[], items: readonly Item[], line: Line): void {
  for (const draft of list)
    if (draft.index >= line.from && draft.index < line.to) {
      draft.gone = true;
      const item = items[draft.index];
      if (item !== undefined) item.owner = "<head> of a column";
    }
}

/**
 * "comp 1 comp 2", then "suct 126 124", "head 366 371": heads on a line, as many values in each row.
 * Returns the values whose head names no place: a superheat between two pressures belongs to neither.
 */
export function columns(list: readonly Draft[], items: readonly Item[]): readonly Draft[] {
  const lines = linesOf(items);
  const placeless: Draft[] = [];
  if (lines.length < 2) return placeless;
  for (let at = 0; at + 1 < lines.length; at++) {
    const line = lines[at];
    const heads = line === undefined ? [] : headLine(items, line);
    if (line === undefined || heads.length === 0) continue;
    const alive = list.filter((draft) => !draft.gone && draft.index >= line.to);
    let rows = 0;
    for (let next = at + 1; next < lines.length; next++) {
      const below = lines[next];
      if (below === undefined) break;
      const { values, count } = rowOf(alive, items, below);
      const [first] = values;
      if (first === undefined || values.length !== heads.length) break;
      if (heads[0]?.kind === "point") first.points = undefined;
      if (heads[0]?.kind === "subject") first.subject = undefined;
      if (count !== undefined) nameRow(count, values, items);
      values.forEach((draft, order) => {
        like(first, draft);
        const head = heads[order];
        give(head, draft);
        if (head?.kind === "label" && head.label.place === undefined) placeless.push(draft);
      });
      rows++;
    }
    if (rows > 0 && heads[0]?.kind === "after") dropHeads(list, items, line);
    at += rows;
  }
  return placeless;
}

/** "micron log", then "9:00 1800", "9:15 920": each line a time and one more of the same. */
export function timedRows(list: readonly Draft[], items: readonly Item[]): void {
  const timed = list.filter((draft) => {
    const time = items[draft.index - 1];
    const start = items[draft.index - 2];
    return (
      !draft.gone &&
      time?.kind === itemKind.number &&
      time.colon &&
      start?.kind === itemKind.line &&
      (items[draft.index + 1] === undefined || items[draft.index + 1]?.kind === itemKind.line)
    );
  });
  const [first, ...rest] = timed;
  if (first === undefined || rest.length === 0) return;
  for (const draft of rest)
    if (draft.before.length === 0 && draft.unit === undefined) like(first, draft);
}
