import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { role } from "../word.ts";
import { countAt } from "./part-count.ts";
import { dueNear, dueSaid, nounAt, numberAt, PART } from "./part-noun.ts";
import type { Verb } from "./part-verb.ts";

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
    rule: PART,
  });
}

/** "a contactor and a txv": what is named behind "and" goes with the first. */
export function alsoNamed(note: Note, verb: Verb, at: number, to: number): void {
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

/** "txv and drier in", "a 45/5 cap and a txv due thursday": what is named ahead of "and" goes with the last. */
export function alsoAhead(note: Note, verb: Verb, at: number, from: number): void {
  const { items } = note;
  let i = at - 1;
  const beside = (item: Item | undefined): boolean =>
    ((item?.roles ?? 0) & role.article) !== 0 ||
    item?.text === "new" ||
    countAt(item) !== undefined;
  while (i > from && beside(items[i])) i--;
  if (i <= from || !/^(?:and|&|n|\+)$/.test(items[i]?.text ?? "")) return;
  i--;
  const part = nounAt(note, i);
  if (part === undefined || items[i]?.owner === PART) return;
  const long = i > from ? nounAt(note, i - 1) : undefined;
  const whole = long?.endsWith(` ${part}`) === true ? long : part;
  alone(note, { part: whole, at: i, state: verb.state });
}

/** "ordered a cap, contactor 33-208 and a fan motor": behind the comma a part and nothing done to it. */
export function listGoesOn(note: Note, verb: Verb, from: number, to: number): boolean {
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
  const said = note.items.slice(at, to).some(
    (word, i) =>
      (word.roles & (role.is | role.not)) !== 0 ||
      word.unit !== undefined ||
      word.kind === itemKind.subject ||
      // "coupling" is a thing, "coming" none
      (word.text.endsWith("ing") && nounAt(note, at + i) === undefined),
  );
  if (said || at + 8 < to) return false;
  alone(note, { part, at, state: verb.state, quantity: counted });
  alsoNamed(note, verb, at, to);
  return true;
}
