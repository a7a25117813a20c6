import type { Span } from "../../model.ts";
import { isStrongBreak } from "../breaks.ts";
import { type Due, dueDay, dueWords } from "../due-time.ts";
import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { role } from "../word.ts";
import { partWords } from "../words/parts.ts";
import { capacitorAt, pipeAt } from "./by-size.ts";
import { countAt, countOf } from "./part-count.ts";
import { numberOf } from "./part-number.ts";
import { unknownAt } from "./part-unknown.ts";
import { fits, isBareOrder, needs, type Verb, verbOf } from "./part-verb.ts";

const parts = new Map<string, string>();
for (const [words, part] of partWords) for (const word of words.split("|")) parts.set(word, part);

function nounAt(note: Note, i: number): string | undefined {
  const item = note.items[i];
  if (item === undefined || item.kind === itemKind.number) return undefined;
  // "pump oil changed": the pump stays
  if (note.items[i + 1]?.text === "oil" && note.items[i + 2]?.text !== "filter") return undefined;
  const text = note.plain.slice(item.from, item.to).replace(/'s$/, "");
  // "oil filter": none that air goes through
  if (/^filters?$/.test(text) && /^(?:oil|suction)$/.test(note.items[i - 1]?.text ?? ""))
    return `${note.items[i - 1]?.text ?? ""} filter`;
  const known = compound(note, i) ?? parts.get(text) ?? namedSensor(text);
  if (item.subject !== undefined && item.subject !== "")
    return item.subject.startsWith("compressor")
      ? item.subject
      : parts.get(item.text) === undefined
        ? undefined
        : item.subject;
  return known;
}

const compoundHead =
  /^(?:board|motor|valve|kit|switch|sensor|blade|coil|relay|belt|fuse|module|thermistor|harness|drier|dryer|timer|clock|actuator|controller)$/;

/** "coil sensor", "liquid line thermistor": a place and the part that sits there, kept as said. */
function namedSensor(text: string): string | undefined {
  return /^[a-z ]+ (?:sensor|thermistor|probe|transducer)$/.test(text) ? text : undefined;
}

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
  if (
    /^(?:new|fresh|old|bad|another|same|other|spare|rebuilt|replacement|ordered|order|of)$/.test(
      first.text,
    )
  )
    return undefined;
  if (first.roles !== 0 || first.unit !== undefined) return undefined;
  const said = note.plain.slice(first.from, last.to).trim();
  return parts.get(said) ?? said;
}

/** Where other parts than the one at `at` are named. */
function othersOf(note: Note, at: number): number[] {
  const found: number[] = [];
  note.items.forEach((item, i) => {
    const joint = note.items[i - 1]?.text ?? "and";
    const own = /^(?:and|&|n|,|a|an|the|new|plus|also|need|order|ordered)$/.test(joint);
    if (Math.abs(i - at) > 1 && own && nounAt(note, i) !== undefined) found.push(item.from);
  });
  return found;
}

function numberAt(note: Note, part: string, at: number): string | undefined {
  const item = note.items[at];
  const named = part !== "" && item !== undefined && nounAt(note, at) !== undefined;
  return numberOf(note, named ? item.from : undefined, othersOf(note, at));
}

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
    rule: partRule.name,
  });
}

/** When it comes, as its own sentence says: "contactor due wed. fuses due friday". */
function dueNear({ items, plain }: Note, at: number): Due | undefined {
  const from = items.findLastIndex((item, i) => i < at && isStrongBreak(item)) + 1;
  const end = items.findIndex((item, i) => i > at && isStrongBreak(item));
  return dueWords({ items: items.slice(from, end < 0 ? undefined : end), plain });
}

function dueSaid(note: Note, due: Due | undefined): { due?: string; due_on?: string } {
  if (due === undefined) return {};
  const said = note.text.slice(due.first.from, due.last.to);
  const day = dueDay(said, note.context.at);
  return { due: said, ...(day === undefined ? {} : { due_on: day }) };
}

interface Named {
  readonly part: string;
  readonly at: number;
  readonly state: Verb["state"];
  readonly quantity?: number | undefined;
}

/** A part of a list, by its name alone. */
function alone(note: Note, { part, at, state, quantity }: Named): void {
  const item = note.items[at];
  const number = numberAt(note, part, at);
  if (item === undefined) return;
  note.statements.push({
    kind: "part",
    part,
    ...(number === undefined ? {} : { number }),
    ...(quantity === undefined ? {} : { quantity }),
    state,
    // "ordered 2 bearings and a belt, eta thursday": they come together
    ...dueSaid(note, state === "fitted" ? undefined : dueNear(note, at)),
    said: note.text.slice(item.from, item.to),
    spans: [[item.from, item.to]],
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
  // "and 2 filters"
  const quantity = i < to ? countAt(note.items[i]) : undefined;
  if (quantity !== undefined) i++;
  const part = i < to ? nounAt(note, i) : undefined;
  if (part !== undefined) alone(note, { part, at: i, state: verb.state, quantity });
}

/** "ordered a cap, contactor 33-208 and a fan motor": behind the comma a part and nothing done to it. */
function listGoesOn(note: Note, verb: Verb, from: number, to: number): boolean {
  if (verb.state === "fitted") return false;
  let at = from;
  while (/^(?:and|&|plus|also)$/.test(note.items[at]?.text ?? "")) at++;
  while (((note.items[at]?.roles ?? 0) & role.article) !== 0 || note.items[at]?.text === "new")
    at++;
  // ", 2 filters"
  const counted = countAt(note.items[at]);
  if (counted !== undefined) at++;
  // "and a 35/5 cap"
  while (/<size of a thing>$/.test(note.items[at]?.owner ?? "")) at++;
  const part = at < to ? nounAt(note, at) : undefined;
  const item = note.items[at];
  if (part === undefined || item === undefined) return false;
  const said = note.items
    .slice(at, to)
    .some(
      (word) =>
        (word.roles & (role.is | role.not)) !== 0 ||
        word.unit !== undefined ||
        word.kind === itemKind.subject ||
        word.text.endsWith("ing"),
    );
  if (said || at + 8 < to) return false;
  alone(note, { part, at, state: verb.state, quantity: counted });
  alsoNamed(note, verb, at, to);
  return true;
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
