import type { Span } from "../../model.ts";
import { isStrongBreak } from "../breaks.ts";
import { type Due, dueWords } from "../due-time.ts";
import type { Note, Rule } from "../note.ts";
import { capacitorAt, pipeAt } from "./by-size.ts";
import { countOf } from "./part-count.ts";
import { alsoAhead, alsoNamed, listGoesOn } from "./part-joined.ts";
import { dueNear, dueSaid, nounAt, numberAt, PART } from "./part-noun.ts";
import { numberOf } from "./part-number.ts";
import { unknownAt } from "./part-unknown.ts";
import { isBareOrder, type Verb, verbOf } from "./part-verb.ts";

/** The part's own words and those that say when it comes, in their order. */
function partSpans(own: Span, due: Due | undefined): readonly Span[] {
  if (due === undefined) return [own];
  const when: Span = [due.first.from, due.last.to];
  if (when[0] >= own[0] && when[1] <= own[1]) return [own];
  if (when[0] < own[1] && own[0] < when[1])
    return [[Math.min(own[0], when[0]), Math.max(own[1], when[1])]];
  return when[0] < own[0] ? [when, own] : [own, when];
}

function add(note: Note, part: string, verb: Verb, at: number): void {
  const first = note.items[Math.min(at, verb.at)];
  const last = note.items[Math.max(at, verb.at)];
  if (first === undefined || last === undefined) return;
  const number = numberAt(note, part, at);
  const quantity = countOf(note, at);
  const due = verb.state === "fitted" ? undefined : (dueNear(note, at) ?? dueWords(note));
  const spans = partSpans([first.from, last.to], due);
  note.statements.push({
    kind: "part",
    part,
    ...(number === undefined ? {} : { number }),
    ...(quantity === undefined ? {} : { quantity }),
    state: verb.state,
    ...dueSaid(note, due),
    said: spans.map(([from, to]) => note.text.slice(from, to)).join(" "),
    spans,
    rule: PART,
  });
}

function isNumberAlone(note: Note, from: number, to: number): boolean {
  const { items, statements } = note;
  const [first, last] = [items[from], items[to - 1]];
  if (first === undefined || last === undefined) return false;
  if (items.slice(from, to).some((_, i) => nounAt(note, from + i) !== undefined)) return false;
  return statements.some(
    ({ kind, spans: [span] }) =>
      kind === "note" && span !== undefined && span[0] <= first.from && span[1] >= last.to,
  );
}

const spoken = (note: Note): boolean => note.statements.some(({ kind }) => kind === "part");

function inClause(note: Note, verb: Verb, [from, to]: readonly [number, number]): boolean {
  let best: { part: string; at: number } | undefined;
  for (let i = from; i < to; i++) {
    const part = nounAt(note, i);
    if (part === undefined) continue;
    if (best !== undefined && i === best.at + 1 && best.part.endsWith(part)) continue;
    if (best === undefined || Math.abs(i - verb.at) < Math.abs(best.at - verb.at))
      best = { part, at: i };
  }
  // "swapped two legs at the contactor": the contactor stays
  const wires = note.items
    .slice(verb.at + 1, Math.min(verb.at + 5, best?.at ?? 0))
    .some(({ text }) => /^(?:legs?|leads?|wires?|phases?|legs)$/.test(text));
  if (wires && verb.state === "fitted") return false;
  if (best !== undefined) {
    if (verb.at > best.at) alsoAhead(note, verb, best.at, from);
    add(note, best.part, verb, best.at);
    alsoNamed(note, verb, best.at, to);
    return true;
  }
  const cap = verb.state === "fitted" ? capacitorAt(note, verb.at, to) : -1;
  if (cap >= 0) {
    add(note, "capacitor", verb, cap);
    return true;
  }
  const pipe = verb.state === "needed" ? pipeAt(note, verb.at, to) : undefined;
  const unknown = pipe ?? unknownAt(note, verb, to);
  if (unknown !== undefined && unknown !== "") {
    add(note, unknown, verb, verb.at);
    return true;
  }
  // "its due friday" is of what was spoken of before: ordered or not, nobody said
  const dueAlone = note.items[verb.at]?.text === "due";
  if (dueAlone && (numberOf(note, undefined, []) === undefined || spoken(note))) return false;
  const bare = isBareOrder(note, verb, from, to);
  if (verb.state === "ordered" && (bare || numberOf(note, undefined, []) !== undefined)) {
    add(note, "", verb, verb.at);
    return true;
  }
  if (verb.state === "fitted" || verb.state === "needed") {
    const before = [...Array(from).keys()].reverse().find((i) => nounAt(note, i) !== undefined);
    const short = before === undefined ? undefined : nounAt(note, before);
    // "got a defrost sensor, putting it in": the fuller name
    const long = before === undefined ? undefined : nounAt(note, before - 1);
    const part = short !== undefined && long?.endsWith(` ${short}`) === true ? long : short;
    if (
      before !== undefined &&
      part !== undefined &&
      from - before < (numberOf(note, undefined, []) === undefined ? 7 : 11) &&
      // "bb-2 board is dead, need 71-3304": nothing but its number
      (note.items.slice(verb.at, to).some((item) => /^(?:em|them|it|all|one)$/.test(item.text)) ||
        (verb.state === "needed" && isNumberAlone(note, verb.at + 1, to)))
    )
      add(note, part, verb, before);
  }
  return false;
}

/** "need a contactor, part 44-1902", "88-2260 ordered, 2 days", "comp 1 replaced", "new filters in" */
export const partRule: Rule = {
  name: PART,
  apply: (note) => {
    if (
      note.holds.question ||
      note.statements.some(
        (one) => one.kind === "open_job" || one.kind === "question" || one.kind === "undo",
      )
    )
      return;
    let from = 0;
    let last: Verb | undefined;
    for (let i = 0; i <= note.items.length; i++) {
      const item = note.items[i];
      if (item !== undefined && !isStrongBreak(item) && item.text !== "," && item.text !== "but")
        continue;
      const verb = verbOf(note.items, from, i);
      if (verb !== undefined && inClause(note, verb, [from, i])) last = verb;
      // ", part 60-12E4,": the number of what was named before it
      else if (last !== undefined && verb === undefined && isNumberAlone(note, from, i)) {
        from = i + 1;
        continue;
      } else if (last === undefined || verb !== undefined || !listGoesOn(note, last, from, i))
        last = undefined;
      if (item?.text !== ",") last = undefined;
      from = i + 1;
    }
  },
};
