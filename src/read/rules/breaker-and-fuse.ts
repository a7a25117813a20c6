import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { builtFor, calledSo } from "./called-by-amps.ts";
import { freeNumber, textAt, wordBefore, wordBehind } from "./near.ts";
import { poles, readThenNext, rowEnd, tellsOwn } from "./row-of-sizes.ts";
import { isAmpsSize } from "./size-words.ts";

const gear: ReadonlySet<string> = new Set([
  "breaker",
  "breakers",
  "fuse",
  "fuses",
  "fused",
  "brkr",
  "bkr",
  "pole",
  "disconnect",
  "disco",
  "disc",
  "contactor",
  "contactors",
  "feeder",
  "ocpd",
  "ocp",
  "service",
  "cb",
  "relay",
  "wire",
  "wiring",
  "receptacle",
  "circuit",
  "transformer",
  "xfmr",
  "panel",
  "plug",
  "cord",
  "outlet",
  "switch",
  "gfci",
  "toggle",
  "mcb",
  "mccb",
  "rcbo",
  "rcd",
  "isolator",
]);
const own: ReadonlySet<string> = new Set([
  "breaker",
  "breakers",
  "fuse",
  "fuses",
  "brkr",
  "bkr",
  "disconnect",
  "disco",
  "contactor",
  "contactors",
  "breaker's",
  "mcb",
  "mccb",
  "rcbo",
  "rcd",
  "isolator",
]);
const holds: ReadonlySet<string> = new Set([
  "is",
  "a",
  "an",
  "its",
  "the",
  "was",
  "are",
  "with",
  "to",
  "only",
  "just",
  ":",
  "it",
  "in",
  "number",
  "need",
  "needs",
  "size",
  "sized",
  "rated",
  "(",
]);

/** Supplies of boards, by their nominal volts. */
const own5: ReadonlySet<number> = new Set([3, 5, 12, 15, 18]);

/** "A-B 209" begins with a point, no article. */
function isArticle(item: Item | undefined): boolean {
  return item?.kind === itemKind.word && /^(?:a|an|new|another|the)$/.test(item.text);
}

/** "breaker is 60": sizes go by fives, and nothing else of a breaker has a figure. */
function isSize(items: readonly Item[], i: number): boolean {
  const [gear, verb, item] = [items[i - 2], items[i - 1], items[i]];
  const sized = item !== undefined && item.value >= 15 && item.value % 5 === 0;
  const is = /^(?:is|are|=|:)$/.test(verb?.text ?? "") || gear?.apostrophe === true;
  return sized && is && own.has(gear?.text ?? "") && items[i + 1]?.kind !== itemKind.unit;
}

/** "for a thirty amp two pole contactor": an article, the amps, what has them. */
function bought(items: readonly Item[], i: number): boolean {
  if (!isArticle(items[i - 1])) return false;
  // "the breaker in panel LP-3 is number 22, a 45 amp, and …"
  const ends = items[i + 1] === undefined || items[i + 1]?.kind === itemKind.sign;
  if (
    ends &&
    items.slice(Math.max(0, i - 12), i).some(({ text }) => /^(?:breaker|fuse)$/.test(text))
  )
    return true;
  for (let at = i + 1; at < i + 5; at++) {
    const item = items[at];
    if (item === undefined || (item.roles & role.is) !== 0) return false;
    if (own.has(item.text)) return true;
  }
  return false;
}

/** "60 amp breaker", "the board fuse is a 3 amp", "seventy amp three pole", "contactor 30 amp 24 V coil" */
export const breakers: Rule = {
  name: "<number> amp breaker",
  heads:
    "breaker|breakers|fuse|fuses|fused|brkr|bkr|pole|disconnect|disco|disc|contactor|contactors|feeder|ocpd|ocp|service|cb|relay|wire|wiring|receptacle|circuit|transformer|xfmr|panel|plug|cord|outlet|switch|gfci|toggle|mcb|mccb|rcbo|rcd|isolator|breaker's|poles|three|unit|motor|compressor|system|sys|feed|board|p|coil|supply|rail|logic|source|side|ctrl|control|secondary|primary|inverter|drive|vfd|heat|phase",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      const amps = item.unit?.dimension === "current" && isAmpsSize(item.value);
      const volts = item.unit?.dimension === "voltage" && Number.isInteger(item.value);
      const bare = item.unit === undefined && Number.isInteger(item.value);
      if ((!amps && !volts && !bare) || readThenNext(items, i, note.plain)) return;
      const next = textAt(items, i + 1);
      if (textAt(items, i + 1) === "pole" || next === "poles") {
        state(note, breakers.name, [i, i + 2], { kind: "note", about: "size" });
        return;
      }
      if (amps && bought(items, i)) {
        state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      const end = rowEnd(items, i);
      if (end > 0) {
        state(note, breakers.name, [i, end], { kind: "note", about: "size" });
        return;
      }
      if (amps && poles(items, i)) {
        state(note, breakers.name, [i, i + 3], { kind: "note", about: "size" });
        return;
      }
      if (bare) {
        if (next === "breaker" || next === "fuse" || next === "fuses")
          state(note, breakers.name, [i, i + 2], { kind: "note", about: "size" });
        else if (/^(?:fused|fuses|brkr|bkr)$/.test(textAt(items, i - 1)) && item.value % 5 === 0)
          // "60a fused 45"
          state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        else if (isSize(items, i))
          // "breaker is 60"
          state(note, breakers.name, [i - 2, i + 1], { kind: "note", about: "size" });
        else if (isArticle(items[i - 1]) && namedBefore(items, i - 2))
          // "breaker is a 35", "breaker's a 35"
          state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      if (volts && voltsSide(items, i)) {
        state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      const behind = acrossOf(items, i) ? -1 : wordBehind(items, i, gear, 2);
      if (behind > 0 && sized(items, i, behind)) {
        state(note, breakers.name, [i, behind + 1], { kind: "note", about: "size" });
        return;
      }
      if (volts && /^(?:supply|rail|logic|source)$/.test(next) && own5.has(item.value)) {
        const thing = items[i + 1];
        if (thing !== undefined) thing.label = { place: "control", hint: "voltage", kind: "dc" };
        state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      if (volts && builtFor(note, i)) {
        state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      if (volts && !measuredVolts(items, i) && hasVolts.test(next))
        state(note, breakers.name, [i, i + 2], { kind: "note", about: "size" });
      if (volts) return;
      if (
        (items[i + 1] === undefined || calledSo(items, i)) &&
        textAt(items, i - 1) === "," &&
        items.slice(0, i).some((word) => word.text === "fuse" || word.text === "fuses")
      ) {
        state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      // "fuse blown 3a, replaced"
      if (
        /^(?:blown|popped|blew)$/.test(textAt(items, i - 1)) &&
        wordBefore(items, i, own, 3) >= 0
      ) {
        state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
        return;
      }
      const before = wordBefore(items, i, own, 6);
      if (
        before >= 0 &&
        items.slice(before + 1, i).every((word) => holds.has(word.text) || word.owner !== undefined)
      )
        state(note, breakers.name, [before, i + 1], { kind: "note", about: "size" });
      else if (behind < 0 && next === "three" && !tellsOwn(items, i + 1))
        state(note, breakers.name, [i, i + 1], { kind: "note", about: "size" });
    });
  },
};

const hasVolts =
  /^(?:coil|contactor|transformer|unit|motor|compressor|system|sys|service|relay|board)$/;

/** "bus at 538 volts compressor at 19.7 amps": read off something, and the next word has its own figure. */
function measuredVolts(items: readonly Item[], i: number): boolean {
  // "getting 118 volts motor is open"
  if (/^(?:getting|gets|seeing|sees|reads|reading|measured|shows)$/.test(textAt(items, i - 1)))
    return true;
  const before = items.slice(Math.max(0, i - 3), i);
  const named = before.some(
    ({ label }) =>
      label?.quantity === "voltage" || label?.hint === "voltage" || label?.place === "dc_bus",
  );
  const [behind, after] = [items[i + 2], items[i + 3]];
  const verb = ((behind?.roles ?? 0) & (role.is | role.preposition)) !== 0;
  const own = verb ? after : behind;
  const machine = /^(?:compressor|motor)$/.test(textAt(items, i + 1));
  if (isArticle(items[i - 1])) return false;
  return named || (machine && own?.kind === itemKind.number && own.owner === undefined);
}

function namedBefore(items: readonly Item[], at: number): boolean {
  return own.has(textAt(items, items[at]?.apostrophe === true ? at : at - 1));
}

/** V: half of what a supply may be off by before it is another one; common practice, no source. */
const offBy = 0.15;

/** "440v side 438/441/437", "120v ctrl 118": what a side is called by, and its own volts behind it. */
function voltsSide(items: readonly Item[], i: number): boolean {
  const [called, noun, value] = items.slice(i, i + 3);
  if (!/^(?:side|ctrl|control|circuit|secondary|primary|panel)$/.test(noun?.text ?? ""))
    return false;
  if (value?.kind !== itemKind.number || value.owner !== undefined || called === undefined)
    return false;
  if (value.unit !== undefined && value.unit.dimension !== "voltage") return false;
  if (Math.abs(value.value / called.value - 1) > offBy) return false;
  const control = called.value <= 30 || /^(?:ctrl|control)$/.test(noun?.text ?? "");
  if (noun !== undefined)
    noun.label = control ? { place: "control", hint: "voltage" } : { hint: "voltage" };
  return true;
}

/** "89 V across pole 3": measured there. */
function acrossOf(items: Parameters<typeof textAt>[0], i: number): boolean {
  return textAt(items, i + 1) === "across" && items[i]?.unit?.dimension === "voltage";
}

/** Only a few plain words stand between the size and the gear; "amps at the disconnect" is measured there. */
function sized(items: Parameters<typeof textAt>[0], i: number, behind: number): boolean {
  for (let at = i + 1; at < behind; at++) {
    const text = textAt(items, at);
    if (
      text === "at" ||
      text === "on" ||
      text === "through" ||
      text === "," ||
      text === "and" ||
      text === "is" ||
      text === "to" ||
      text === "in" ||
      text === "of" ||
      text === "the" ||
      text === "from"
    )
      return false;
  }
  const word = textAt(items, behind);
  return !(word === "circuit" || word === "panel" || word === "service") || behind === i + 1;
}
