import type { Reading } from "../../model.ts";
import { itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { nth } from "../nth.ts";

/** The nouns that are numbered on one machine, as readings name them. */
const nouns: readonly (readonly [said: RegExp, name: string])[] = [
  [/^(?:comp|compressor|cmp|compr)$/, "compressor"],
  [/^(?:circuit|ckt|circ|cir)$/, "circuit"],
  [/^(?:fan|fan motor)$/, "fan"],
  [/^(?:pump)$/, "pump"],
];

/** Of a pair the one that was not read last is the other. */
const PAIR = 2;

function numberOf(name: string, readings: readonly Reading[]): number | undefined {
  for (let at = readings.length - 1; at >= 0; at--) {
    const [, kind, number] = /^(\D+) (\d{1,2})$/.exec(readings[at]?.subject ?? "") ?? [];
    if (kind === name) return Number(number);
  }
  return undefined;
}

/** Words of a message that does no more than turn: "ok second comp now" */
const ALONE = 4;

/** The noun becomes the machine of its kind with the number found. */
function turn(note: Note, at: number, number: (name: string) => number | undefined): void {
  const noun = note.items[at];
  const numbered = noun?.kind === itemKind.subject && / \w{1,2}$/.test(noun.subject ?? "");
  if (noun === undefined || numbered || noun.plural) return;
  const name = nouns.find(([said]) => said.test(noun.text))?.[1];
  const found = name === undefined ? undefined : number(name);
  if (found === undefined) return;
  noun.kind = itemKind.subject;
  noun.subject = `${name} ${found}`;
  state(note, nextMachine.name, [at - 1, at], { kind: "note", about: "place" });
}

/** "next comp 13.9 14 14.1" behind compressor 1: compressor 2; "other comp": of two the one not read last. */
export const nextMachine: Rule = {
  name: "<next> <machine>",
  heads: "next|other|first|second|third|1st|2nd|3rd",
  apply: (note) => {
    const { items, context } = note;
    items.forEach((item, i) => {
      const number = nth.get(item.text);
      if (number !== undefined && items.length <= ALONE) turn(note, i + 1, () => number);
      if (!/^(?:next|other)$/.test(item.text)) return;
      turn(note, i + 1, (name) => {
        const last = numberOf(name, context.readings);
        if (last === undefined || (item.text === "other" && last > PAIR)) return undefined;
        return item.text === "next" ? last + 1 : PAIR + 1 - last;
      });
    });
  },
};
