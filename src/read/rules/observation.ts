import type { ObservationName } from "../../vocabulary.ts";
import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { saidOtherwise } from "../said-otherwise.ts";
import { signIndex } from "../signs.ts";
import { role } from "../word.ts";
import { observationPatterns } from "../words/observations.ts";

/** One element of a pattern: a sign's number, or a word. */
type Element = number | string;

interface Pattern {
  readonly name: ObservationName;
  readonly wants: readonly Element[];
  readonly bars: readonly Element[];
  readonly ordered: boolean;
  /** the signs it wants, as bits, thirty to a number */
  readonly mask: readonly number[];
}

const WIDE = 30;

function maskOf(wants: readonly Element[]): number[] {
  const mask: number[] = [];
  for (const want of wants) {
    if (typeof want !== "number") continue;
    const at = Math.floor(want / WIDE);
    while (mask.length <= at) mask.push(0);
    mask[at] = (mask[at] ?? 0) | (1 << (want % WIDE));
  }
  return mask;
}

/** Signs of a clause as bits. */
function signsIn(clause: Clause): number[] {
  const mask: number[] = [];
  for (let i = clause.from; i < clause.to; i++)
    for (const sign of clause.items[i]?.signs ?? []) {
      const at = Math.floor(sign / WIDE);
      while (mask.length <= at) mask.push(0);
      mask[at] = (mask[at] ?? 0) | (1 << (sign % WIDE));
    }
  return mask;
}

function has(signs: readonly number[], mask: readonly number[]): boolean {
  for (let i = 0; i < mask.length; i++) {
    const want = mask[i] ?? 0;
    if (((signs[i] ?? 0) & want) !== want) return false;
  }
  return true;
}

function element(text: string): Element {
  return text.startsWith("=") ? text.slice(1) : signIndex(text);
}

function parse(name: ObservationName, text: string): Pattern {
  const parts = text.split(" ");
  const wants = parts.filter((part) => part !== "<" && !part.startsWith("!")).map(element);
  const bars = parts.filter((part) => part.startsWith("!")).map((part) => element(part.slice(1)));
  return {
    name,
    wants,
    bars: bars.filter((bar) => bar !== -1),
    ordered: parts[0] === "<",
    mask: maskOf(wants),
  };
}

/** Patterns by their first element; those with a sign that does not exist are none. */
const bySign = new Map<Element, Pattern[]>();
for (const [name, ...patterns] of observationPatterns)
  for (const text of patterns) {
    const pattern = parse(name, text);
    const [first] = pattern.wants;
    if (first === undefined || pattern.wants.includes(-1)) continue;
    const list = bySign.get(first) ?? [];
    list.push(pattern);
    bySign.set(first, list);
  }

const FAR = 8;

function holds(item: Item | undefined, wanted: Element): boolean {
  if (item === undefined) return false;
  return typeof wanted === "string" ? item.text === wanted : item.signs?.includes(wanted) === true;
}

interface Clause {
  readonly items: readonly Item[];
  readonly from: number;
  readonly to: number;
}

/** Where the wanted element stands nearest to `at` in the clause; never on an item already used. */
function find(clause: Clause, wanted: Element, at: number, used: readonly number[]): number {
  for (let far = 0; far <= FAR; far++) {
    for (const i of far === 0 ? [at] : [at + far, at - far]) {
      if (i < clause.from || i >= clause.to || used.includes(i)) continue;
      if (holds(clause.items[i], wanted)) return i;
    }
  }
  return -1;
}

function match(clause: Clause, pattern: Pattern, at: number): number[] | undefined {
  const used = [at];
  for (const wanted of pattern.wants.slice(1)) {
    const found = find(clause, wanted, at, used);
    if (found < 0) return undefined;
    if (pattern.ordered && found < (used[used.length - 1] ?? 0)) return undefined;
    used.push(found);
  }
  const low = Math.min(...used) - 3;
  const high = Math.max(...used) + 3;
  for (const bar of pattern.bars)
    for (let i = Math.max(clause.from, low); i < Math.min(clause.to, high + 1); i++)
      if (holds(clause.items[i], bar)) return undefined;
  return used.sort((a, b) => a - b);
}

/** "not", "no" shortly before or inside what was matched, where the pattern has none itself. */
function denied(clause: Clause, used: readonly number[]): boolean {
  const first = used[0] ?? 0;
  const last = used[used.length - 1] ?? first;
  for (let i = Math.max(clause.from, first - 2); i < last; i++) {
    const item = clause.items[i];
    if (item === undefined || used.includes(i)) continue;
    if (item.kind === itemKind.sign && i < first) continue;
    // "no" is a sign of its own in "no cooling": here it stands before what was seen
    const alone = /^(?:no|not|never)$/.test(item.text) && item.signsTo <= item.to;
    const bare = item.signs === undefined || alone;
    if ((item.roles & role.not) !== 0 && bare) return true;
  }
  // "stopped humming", "quit tripping"
  if (/^(?:stopped|quit)$/.test(clause.items[first - 1]?.text ?? "")) return true;
  // "checked for leaks found none", "hums no more"
  const [next, more] = [clause.items[last + 1]?.text ?? "", clause.items[last + 2]?.text];
  // "fan 3 dead 0 amps": a figure, and what it stands for
  if (clause.items[last + 1]?.unit !== undefined) return false;
  return /^(?:none|nothing|nada|zero|0)$/.test(next) || (next === "no" && more === "more");
}

function subjectOf(note: Note, used: readonly number[]): string | undefined {
  const last = used[used.length - 1] ?? 0;
  // "fans 1 and 2 running 3 dead": the one right before how it is
  const before = note.items[last - 1];
  if (before?.kind === itemKind.subject && before.subject !== undefined && before.subject !== "")
    return before.subject;
  // "fan 2 dead 0 amps fan 1 3.2": the one that is spoken of
  const own = used.map((i) => note.items[i]?.subject).find((name) => name !== undefined);
  if (own !== undefined && own !== "") return own;
  for (let i = Math.min(note.items.length - 1, last + 3); i >= Math.max(0, last - 40); i--) {
    const item = note.items[i];
    if (item?.subject !== undefined && item.subject !== "" && (item.roles & role.clock) === 0)
      return item.subject;
  }
  return undefined;
}

function earlier(clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++)
    if (((clause.items[i]?.roles ?? 0) & role.earlier) !== 0) return true;
  return false;
}

function say(note: Note, clause: Clause, pattern: Pattern, used: readonly number[]): void {
  const first = note.items[used[0] ?? 0];
  const last = note.items[used[used.length - 1] ?? 0];
  if (first === undefined || last === undefined) return;
  // "isn't spinning": to the end of the words that tell it
  const to = Math.max(last.to, last.signsTo);
  if (saidOtherwise(pattern.name, note.text.slice(first.from, last.to), note.text)) return;
  const subject = subjectOf(note, used);
  const negative = denied(clause, used);
  const statement = {
    kind: "observation" as const,
    observation: pattern.name,
    ...(subject === undefined ? {} : { subject }),
    ...(negative ? { denied: true as const } : {}),
    ...(earlier(clause) ? { earlier: true as const } : {}),
    said: note.text.slice(first.from, to),
    spans: [[first.from, to]] as const,
    rule: observations.name,
  };
  if (
    !note.statements.some(
      (other) =>
        other.kind === "observation" &&
        other.observation === pattern.name &&
        other.subject === subject,
    )
  )
    note.statements.push(statement);
}

function inClause(note: Note, clause: Clause): void {
  const signs = signsIn(clause);
  if (signs.length === 0 && !note.holds.signs) return;
  for (let i = clause.from; i < clause.to; i++) {
    const item = note.items[i];
    if (item === undefined) continue;
    for (const sign of item.signs ?? [])
      for (const pattern of bySign.get(sign) ?? [])
        if (has(signs, pattern.mask)) tryPattern(note, clause, pattern, i);
    if (item.kind !== itemKind.number)
      for (const pattern of bySign.get(item.text) ?? [])
        if (has(signs, pattern.mask)) tryPattern(note, clause, pattern, i);
  }
}

/** "fan 2 dead 0 amps fan 1 3.2": the state belongs to the machine right before it, not to the next. */
function ofOther(note: Note, used: readonly number[]): boolean {
  const [state, other] = [used[0] ?? 0, used[used.length - 1] ?? 0];
  const before = note.items[state - 1]?.subject ?? "";
  const named = note.items[other]?.subject ?? "";
  return other > state + 1 && before !== "" && named !== "" && before !== named;
}

function tryPattern(note: Note, clause: Clause, pattern: Pattern, i: number): void {
  const used = match(clause, pattern, i);
  if (used !== undefined && !ofOther(note, used)) say(note, clause, pattern, used);
}

/** "hums and trips", "coil matted", "oil stain at the flare": what was noticed, by name. */
export const observations: Rule = {
  name: "<thing> <state>",
  apply: (note) => {
    const { items } = note;
    if (
      note.holds.question ||
      note.statements.some((one) => one.kind === "open_job" || one.kind === "undo")
    )
      return;
    let from = 0;
    for (let i = 0; i <= items.length; i++) {
      const item = items[i];
      if (item !== undefined && !isStrongBreak(item) && item.text !== "but" && item.text !== ",")
        continue;
      // "so is it tight?" is asked, not told
      if (items[from]?.owner !== "<question>") inClause(note, { items, from, to: i });
      from = i + 1;
    }
  },
};
