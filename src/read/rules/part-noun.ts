import { isStrongBreak } from "../breaks.ts";
import { type Due, dueDay, dueWords } from "../due-time.ts";
import { itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { role } from "../word.ts";
import { partWords } from "../words/parts.ts";
import { numberOf } from "./part-number.ts";
import { fits, needs } from "./part-verb.ts";

/** The name of the rule that reads parts. */
export const PART = "<part> needed|ordered|fitted";

const parts = new Map<string, string>();
for (const [words, part] of partWords) for (const word of words.split("|")) parts.set(word, part);

export function nounAt(note: Note, i: number): string | undefined {
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
  /^(?:board|motor|valve|kit|switch|sensor|tank|blade|coil|relay|belt|fuse|module|thermistor|harness|drier|dryer|timer|clock|actuator|controller)$/;

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

export function numberAt(note: Note, part: string, at: number): string | undefined {
  const item = note.items[at];
  const named = part !== "" && item !== undefined && nounAt(note, at) !== undefined;
  return numberOf(note, named ? item.from : undefined, othersOf(note, at));
}

/** When it comes, as its own sentence says: "contactor due wed. fuses due friday". */
export function dueNear({ items, plain }: Note, at: number): Due | undefined {
  const from = items.findLastIndex((item, i) => i < at && isStrongBreak(item)) + 1;
  const end = items.findIndex((item, i) => i > at && isStrongBreak(item));
  return dueWords({ items: items.slice(from, end < 0 ? undefined : end), plain });
}

export function dueSaid(note: Note, due: Due | undefined): { due?: string; due_on?: string } {
  if (due === undefined) return {};
  const said = note.text.slice(due.first.from, due.last.to);
  const day = dueDay(said, note.context.at);
  return { due: said, ...(day === undefined ? {} : { due_on: day }) };
}
