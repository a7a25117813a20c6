import type { PartState } from "../../model.ts";
import { isStrongBreak } from "../breaks.ts";
import { dueDay, dueWords } from "../due-time.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { role } from "../word.ts";
import { partWords } from "../words/parts.ts";

const parts = new Map<string, string>();
for (const [words, part] of partWords) for (const word of words.split("|")) parts.set(word, part);

const needs: ReadonlySet<string> = new Set([
  "need",
  "needs",
  "needed",
  "require",
  "requires",
  "needing",
]);
const fits: ReadonlySet<string> = new Set([
  "replaced",
  "changed",
  "swapped",
  "installed",
  "fitted",
  "change",
  "swaped",
  "replced",
  "hung",
  "replacing",
]);

interface Verb {
  readonly state: PartState;
  readonly at: number;
}

/** What became of parts in this clause: needed, ordered, or fitted. */
function verbOf(items: readonly Item[], from: number, to: number): Verb | undefined {
  for (let i = from; i < to; i++) {
    const item = items[i];
    if (item === undefined) continue;
    if (needs.has(item.text) || (item.text === "going" && items[i + 1]?.text === "need"))
      return notFirst(items, i, { state: "needed", at: i });
    if (
      item.text === "ordered" ||
      item.text === "ordering" ||
      (item.text === "on" && items[i + 1]?.text === "order") ||
      (item.text === "order" && i === from)
    )
      return { state: item.text === "order" ? "needed" : "ordered", at: i };
    if (item.text === "change" && items[i + 1]?.text === "over") continue;
    if (fits.has(item.text)) return notFirst(items, i, { state: "fitted", at: i });
    if (
      (item.text === "put" || item.text === "dropped" || item.text === "stuck") &&
      items.slice(i + 1, i + 4).some((word) => word.text === "new" || word.text === "in")
    )
      return { state: "fitted", at: i };
    if (item.text === "put" && item.signs !== undefined && item.to - item.from > 4)
      return { state: "fitted", at: i };
    if (
      item.text === "new" &&
      items
        .slice(i + 1, i + 5)
        .some((word) => word.text === "in" || word.text === "installed" || word.text === "reads")
    )
      return { state: "fitted", at: i };
  }
  return undefined;
}

function notFirst(items: readonly Item[], i: number, verb: Verb): Verb | undefined {
  for (let at = i - 1; at >= 0 && at >= i - 3; at--) {
    const item = items[at];
    if (item === undefined || isStrongBreak(item) || item.text === ",") break;
    if (item.text === "should" || (item.roles & role.plan) !== 0)
      return verb.state === "fitted" ? { ...verb, state: "needed" } : verb;
    if ((item.roles & role.not) !== 0) return undefined;
    if (/^(?:who|somebody|someone|they|utility|guy)$/.test(item.text)) return undefined;
  }
  return verb;
}

function nounAt(note: Note, i: number): string | undefined {
  const item = note.items[i];
  if (item === undefined || item.kind === itemKind.number) return undefined;
  const text = note.plain.slice(item.from, item.to).replace(/'s$/, "");
  const known = compound(note, i) ?? parts.get(text);
  if (item.subject !== undefined && item.subject !== "")
    return item.subject.startsWith("compressor")
      ? item.subject
      : parts.get(item.text) === undefined
        ? undefined
        : item.subject;
  return known;
}

const compoundHead =
  /^(?:board|motor|valve|kit|switch|sensor|blade|coil|relay|belt|fuse|module|thermistor|harness|drier|dryer)$/;

/** "inverter board", "branch valve kit": a name of several words, kept as said. */
function compound(note: Note, i: number): string | undefined {
  const { items } = note;
  let end = i;
  while (compoundHead.test(items[end + 1]?.text ?? "") && items[end + 1]?.kind !== itemKind.number)
    end++;
  const first = items[i];
  const last = items[end];
  if (end === i || first === undefined || last === undefined || first.kind === itemKind.sign)
    return undefined;
  if ((first.roles & role.article) !== 0 || needs.has(first.text) || fits.has(first.text))
    return undefined;
  if (/^(?:new|fresh|old|bad|another|same|other|ordered|order|of)$/.test(first.text))
    return undefined;
  if (first.roles !== 0 || first.unit !== undefined) return undefined;
  const said = note.plain.slice(first.from, last.to).trim();
  return parts.get(said) ?? said;
}

/** "55-810": what stands before a part's number is its name, whatever it is. */
function unknownAt(note: Note, verb: Verb, to: number): string | undefined {
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
  if (end === from || end - from > 4 || !/^\d/.test(items[end]?.text ?? "")) return undefined;
  if (items[end + 1]?.text !== "-") return undefined;
  const first = items[from];
  const last = items[end - 1];
  if (first === undefined || last === undefined) return undefined;
  return note.plain
    .slice(first.from, last.to)
    .replace(/,? ?part(?: number)?$/, "")
    .trim();
}

/** "part 44-1902", "88-2260": the number that goes with it. */
function numberOf(note: Note): string | undefined {
  for (const statement of note.statements) {
    if (statement.kind !== "note") continue;
    if (statement.about.startsWith("part ")) return statement.about.slice(5);
  }
  const code = /(?:^|\s)(\d{2,3}-[0-9A-Z]{3,6})(?=$|[\s,.])/i.exec(
    note.text.slice(note.items[0]?.from ?? 0, note.items[note.items.length - 1]?.to ?? 0),
  );
  return code?.[1];
}

function countOf(note: Note, at: number): number | undefined {
  const { items } = note;
  for (let i = Math.max(0, at - 3); i < Math.min(items.length, at + 6); i++) {
    const item = items[i];
    if (
      item?.kind !== itemKind.number ||
      item.unit !== undefined ||
      !Number.isInteger(item.value) ||
      item.value < 1 ||
      item.value > 60
    )
      continue;
    if (item.owner === undefined || /^(?:<number> <things>|going to)/.test(item.owner)) {
      const next = items[i + 1]?.text;
      if (i < at || next === "of" || items[i - 1]?.text === "qty") return item.value;
    }
  }
  return undefined;
}

function add(note: Note, part: string, verb: Verb, at: number): void {
  const first = note.items[Math.min(at, verb.at)];
  const last = note.items[Math.max(at, verb.at)];
  if (first === undefined || last === undefined) return;
  const number = numberOf(note);
  const quantity = countOf(note, at);
  const due = verb.state === "fitted" ? undefined : dueWords(note);
  const dueSaid = due === undefined ? "" : note.text.slice(due.first.from, due.last.to);
  const dueOn = due === undefined ? undefined : dueDay(dueSaid, note.context.at);
  note.statements.push({
    kind: "part",
    part,
    ...(number === undefined ? {} : { number }),
    ...(quantity === undefined ? {} : { quantity }),
    state: verb.state,
    ...(due === undefined ? {} : { due: dueSaid }),
    ...(dueOn === undefined ? {} : { due_on: dueOn }),
    said: note.text.slice(first.from, last.to),
    spans: [
      [first.from, last.to],
      ...(due === undefined ? [] : [[due.first.from, due.last.to] as const]),
    ],
    rule: partRule.name,
  });
}

/** "a contactor and a txv": what is named behind "and" goes with the first. */
function alsoNamed(note: Note, verb: Verb, at: number, to: number): void {
  let i = at + 1;
  while (i < to && note.items[i]?.text !== "and" && note.items[i]?.text !== "&") i++;
  if (i - at > 5) return;
  i++;
  while (
    i < to &&
    (((note.items[i]?.roles ?? 0) & role.article) !== 0 || note.items[i]?.text === "new")
  )
    i++;
  const part = i < to ? nounAt(note, i) : undefined;
  const first = note.items[i];
  if (part === undefined || first === undefined) return;
  note.statements.push({
    kind: "part",
    part,
    state: verb.state,
    said: note.text.slice(first.from, first.to),
    spans: [[first.from, first.to]],
    rule: partRule.name,
  });
}

function inClause(note: Note, from: number, to: number): boolean {
  const verb = verbOf(note.items, from, to);
  if (verb === undefined) return false;
  let best: { part: string; at: number } | undefined;
  for (let i = from; i < to; i++) {
    const part = nounAt(note, i);
    if (part === undefined) continue;
    if (best !== undefined && i === best.at + 1 && best.part.endsWith(part)) continue;
    if (best === undefined || Math.abs(i - verb.at) < Math.abs(best.at - verb.at))
      best = { part, at: i };
  }
  if (best !== undefined) {
    add(note, best.part, verb, best.at);
    alsoNamed(note, verb, best.at, to);
    return true;
  }
  const unknown = unknownAt(note, verb, to);
  if (unknown !== undefined && unknown !== "") {
    add(note, unknown, verb, verb.at);
    return true;
  }
  if (verb.state === "ordered" && numberOf(note) !== undefined) {
    add(note, "", verb, verb.at);
    return true;
  }
  if (verb.state === "fitted" || verb.state === "needed") {
    const before = [...Array(from).keys()].reverse().find((i) => nounAt(note, i) !== undefined);
    const part = before === undefined ? undefined : nounAt(note, before);
    if (
      before !== undefined &&
      part !== undefined &&
      from - before < 7 &&
      note.items.slice(verb.at, to).some((item) => /^(?:em|them|it|all|one)$/.test(item.text))
    )
      add(note, part, verb, before);
  }
  return false;
}

/** "need a contactor, part 44-1902", "88-2260 ordered, 2 days", "comp 1 replaced", "new filters in" */
export const partRule: Rule = {
  name: "<part> needed|ordered|fitted",
  apply: (note) => {
    if (
      note.holds.question ||
      note.statements.some(
        (one) => one.kind === "open_job" || one.kind === "question" || one.kind === "undo",
      )
    )
      return;
    let from = 0;
    for (let i = 0; i <= note.items.length; i++) {
      const item = note.items[i];
      if (item !== undefined && !isStrongBreak(item) && item.text !== "," && item.text !== "but")
        continue;
      if (inClause(note, from, i)) from = i + 1;
      from = i + 1;
    }
  },
};
