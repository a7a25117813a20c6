import { COUNTED } from "../count-words.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { things } from "./counted-things.ts";
import { besideTravel, freeNumber, legLost, textAt } from "./near.ts";

/** The sentence has begun to measure: the number behind a label is its value, not a count. */
function labelBefore(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  if (before === undefined) return false;
  if (before.label?.action !== undefined && countNoun(items[i + 1])) return false;
  if (
    before.kind === itemKind.points ||
    before.label !== undefined ||
    before.kind === itemKind.unit
  )
    return true;
  return (
    (before.roles & role.is) !== 0 &&
    (items[i - 2]?.label !== undefined || items[i - 2]?.kind === itemKind.points)
  );
}

/** "cap 31 of 40": a word that measures leads no count. */
function measures(item: Item | undefined): boolean {
  return item?.label?.quantity !== undefined || item?.label?.hint !== undefined;
}

function countNoun(item: Item | undefined): boolean {
  return (
    item?.kind === itemKind.word &&
    item.roles === 0 &&
    (/[a-z]{3,}s$/.test(item.text) || things.has(item.text))
  );
}

/** "there's four": said of things named before. */
function thereAre(items: readonly Item[], i: number): boolean {
  const before = textAt(items, i - 1);
  const there = before === "theres" || (before === "are" && textAt(items, i - 2) === "there");
  const next = items[i + 1];
  return there && (next === undefined || next.kind === itemKind.sign || next.text === "of");
}

const wares = /^(?:deli|dairy|meat|meats|produce|bakery|fish|seafood|beer|cheese|poultry)$/;
/** Fans, heaters or compressors that one case or box has. Common practice, no source. */
const mostOfCase = 8;

const isPart = ({ label, text }: Item): boolean =>
  label?.thing !== undefined || label?.component === true || text === "heater";

/** Nothing before it that it could be the number of. */
const stops = (item: Item | undefined): boolean =>
  item === undefined ||
  item.kind === itemKind.sign ||
  item.kind === itemKind.line ||
  /^(?:used|left|got|has|have|need|only|still|and)$/.test(item.text);

/** "four evap fans": parts of the machine in the plural. */
function partsBehind(items: readonly Item[], number: number): boolean {
  // "2.1 amps two fans dead": behind a number in words no comma was left out
  const left = items[number + 1];
  const i = left?.from === left?.to && items[number]?.spoken === true ? number + 1 : number;
  const word = items[i + 1];
  const plain = (word?.kind === itemKind.word && word.roles === 0) || word?.kind === itemKind.label;
  const next =
    plain && items[i + 2]?.plural === true && items[i + 2]?.roles === 0 ? items[i + 2] : word;
  if (next !== undefined && next !== word && next.label === undefined)
    return word?.kind === itemKind.label && !labelBefore(items, number) && next.text.length > 4;
  if (next === undefined || next.label === undefined || labelBefore(items, number)) return false;
  if (next.label.thing === undefined && next.label.component !== true) return false;
  const last = textAt(items, i + 2);
  return next.plural || last === "fans" || last === "heaters" || last === "motors";
}

/** "leaving. one heater used" */
function onePart(items: readonly Item[], i: number): boolean {
  const [item, next] = [items[i], items[i + 1]];
  const one = item?.spoken === true && item.value === 1 && stops(items[i - 1]);
  return one && next !== undefined && isPart(next);
}

/** "deli 2 compressors down", "dairy 3 fans out": a case by what lies in it, and how many of its parts. */
function partsOfCase(items: readonly Item[], i: number): boolean {
  if (!wares.test(textAt(items, i - 1)) || (items[i]?.value ?? 0) > mostOfCase) return false;
  // a comma that was left out may stand in between
  const next = items[i + 1];
  const left = next?.kind === itemKind.sign && next.from === next.to ? 2 : 1;
  // "dairy 2 of 4 fans out"
  const of = next?.text === "of" && items[i + 2]?.kind === itemKind.number;
  const part = items[i + (of ? 3 : left)];
  const { thing, component } = part?.label ?? {};
  const several = part?.plural === true || part?.text.endsWith("s") === true;
  return (thing !== undefined || component === true) && several;
}

const daySeconds = 86400;

function timeOf(item: Item | undefined): number {
  return item?.unit?.dimension === "time" ? item.unit.factor : 0;
}

const oneOfParts =
  /^(?:1|one) (?:[a-z-]+ ){0,2}(?:contactor|cap|capacitor|kit|relay|fuse|filter|motor|belt|board|drier|dryer|valve|bearing|transformer|xfmr|sensor|thermostat|stat|breaker|igniter|ignitor|pump|switch|disconnect|whip|harness|thermistor|fan|blade|core|gasket|element|heater|coupling|elbow|tee|can|roll|bottle|cartridge|nozzle|hinge|knob)\b/;

/** A part by its noun, its count before it and nothing that the count could be the number of. */
function isOnePart({ items, plain }: Note, i: number): boolean {
  const [before, item] = [items[i - 1], items[i]];
  if (item?.value !== 1 || !oneOfParts.test(plain.slice(item.from, item.from + 40))) return false;
  const begins = /^(?:[,;.:&+]|and|n|plus|used|put|installed|replaced|need|ordered|got|have|with)$/;
  return before === undefined || before.kind === itemKind.line || begins.test(before.text);
}

const runs = /^(?:on|off|running|up|down|out|lit|going)$/;

/** "3 picks", "two big fans", "filters, 6 of them", "qty 6", "the other two legs", "& 4 20x20x2" */
export const counts: Rule = {
  name: COUNTED,
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (
        !freeNumber(item) ||
        item.unit !== undefined ||
        !Number.isInteger(item.value) ||
        item.value < 0
      )
        return;
      // "lt 3 on suct 11": machines of one half of a plant that run
      if (/^[lm]t$/.test(textAt(items, i - 1)) && /^(?:on|off)$/.test(textAt(items, i + 1))) {
        state(note, counts.name, [i, i + 2], { kind: "note", about: "count" });
        return;
      }
      // "3.5 hrs plus 1 drive": an hour of the way
      if (besideTravel(items, i - 2)) return;
      const next = items[i + 1];
      const text = textAt(items, i + 1);
      const before = textAt(items, i - 1);
      // "4 20x25x2 filters", "6 of 16x20x2"
      const sized = text === "of" ? items[i + 2] : next;
      if (sized?.kind === itemKind.code && /^\d+x\d+(?:x\d+)?s?$/.test(sized.text)) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      if (
        /^(?:km|miles|odo|odometer|mileage)$/.test(before) &&
        items[i - 2]?.kind !== itemKind.number
      ) {
        state(note, counts.name, [i - 1, i + 1], { kind: "note", about: "distance" });
        return;
      }
      // "three to five days": how long something takes
      if (/^(?:to|or|-|–)$/.test(text) && timeOf(items[i + 2]) >= daySeconds) {
        state(note, counts.name, [i, i + 3], { kind: "note", about: "time" });
        return;
      }
      // "2 more" while gas is weighed in, or all that is said
      if (text === "more" && (note.context.action !== undefined || items.length === 2)) return;
      if (
        before === "qty" ||
        before === "quantity" ||
        before === "x" ||
        before === "order" ||
        legLost(items, i) ||
        before === "other"
      ) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      if (
        (before === "all" && item.value <= 24 && items[i + 1]?.kind === itemKind.number) ||
        (before === "(" && text === ")" && item.value <= 60) ||
        (before === "the" && item.spoken && items[i - 2]?.label === undefined)
      ) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      if (
        text === "or" &&
        items[i + 2]?.kind === itemKind.number &&
        items[i + 2]?.unit === undefined &&
        countNoun(items[i + 3])
      ) {
        state(note, counts.name, [i, i + 3], { kind: "note", about: "count" });
        return;
      }
      // "fans are running one of three is dead"
      if (before === "of" && items[i - 2]?.text === "one" && item.unit === undefined) {
        state(note, counts.name, [i - 2, i + 1], { kind: "note", about: "count" });
        return;
      }
      // "set for four defrosts at thirty minutes": how many a day
      if (/^(?:defrosts|cycles)$/.test(text) && item.value <= 24) {
        state(note, counts.name, [i, i + 2], { kind: "note", about: "count" });
        return;
      }
      // "defrost 3 a day 25 min": "a day" is one day
      const aDay =
        timeOf(next) === daySeconds && /^a /.test(note.plain.slice(next?.from, next?.to));
      if (aDay && item.value <= 24) {
        state(note, counts.name, [i, i + 2], { kind: "note", about: "count" });
        return;
      }
      // "two fans out of three running"
      const outOf = before === "out" && (items[i - 1]?.to ?? 0) > (items[i - 1]?.from ?? 0) + 3;
      const fans = countNoun(items[i - 2]) || items[i - 2]?.plural === true;
      if (outOf && fans && items[i - 3]?.kind === itemKind.number) {
        state(note, counts.name, [i - 1, i + 1], { kind: "note", about: "count" });
        return;
      }
      // "1 hard start kit, 1 dual cap": one of each
      if (isOnePart(note, i)) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      // "three comps of four on"
      if (before === "of" && countNoun(items[i - 2]) && runs.test(text)) {
        state(note, counts.name, [i - 1, i + 1], { kind: "note", about: "count" });
        return;
      }
      const counted = !measures(items[i - 1]) || countNoun(items[i + 3]);
      // "3 of 5", "3 out of 5": "out of" is one item
      const of =
        text === "of" ||
        (text === "out" && /^out\s+of$/.test(note.plain.slice(next?.from, next?.to)));
      // "14 of 15 RLA"
      const rated = items[i + 3]?.label?.rating !== undefined;
      if (of && counted && !rated && freeNumber(items[i + 2]) && items[i + 2]?.unit === undefined) {
        state(note, counts.name, [i, i + 3], { kind: "note", about: "count" });
        return;
      }
      // "recovered 12 of the 14 lb" is weighed
      const weighed = items[i + 3]?.unit?.dimension === "mass";
      if (
        text === "of" &&
        !weighed &&
        (textAt(items, i + 2) === "them" ||
          textAt(items, i + 2) === "em" ||
          textAt(items, i + 2) === "the")
      ) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      // "coil is one block of ice", whatever was said before it
      const lump = /^(?:block|chunk|slab|sheet|lump|solid|big)$/.test(text) && item.value === 1;
      if (lump && item.spoken && items.slice(i + 2, i + 5).some((one) => one.text === "of")) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      // "480 per leg" is measured
      const perLeg = ((next?.roles ?? 0) & role.each) !== 0;
      if (text === "per" && !perLeg && !labelBefore(items, i)) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      if (
        onePart(items, i) ||
        (item.value > 1 &&
          item.value <= 12 &&
          (thereAre(items, i) || partsBehind(items, i) || partsOfCase(items, i)))
      ) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      // "2 blown fuses", "pulled 2 bad contactors"
      const how =
        /^(?:blown|burnt|burned|bad|broken|loose|missing|spare|open|shorted|frayed|tripped|stripped|cracked|leaking|plugged|dirty|good|dead|failed|seized|melted)$/;
      const taken = items[i - 1]?.label?.action !== undefined;
      const many = items[i + 2]?.plural === true && items[i + 2]?.kind !== itemKind.unit;
      if (how.test(text) && many && (taken || !labelBefore(items, i))) {
        state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
        return;
      }
      // "swept w/ nitro 3 times", "b56 2 ea"
      const apiece = text === "ea" && item.value <= 12 && !labelBefore(items, i);
      if (apiece || (text === "times" && item.value <= 60)) {
        state(note, counts.name, [i, i + 2], { kind: "note", about: "count" });
        return;
      }
      // "herm 31 of 40 fan 4.2": the full figure of what was measured
      const full = textAt(items, i - 1) === "of" && measures(items[i - 3]);
      if (next === undefined || item.value > 60 || full || labelBefore(items, i)) return;
      const plural =
        next.kind === itemKind.word && next.roles === 0 && /[a-z]{3,}s$/.test(next.text);
      if (!plural && !things.has(text)) return;
      if (
        text === "more" &&
        items.slice(Math.max(0, i - 2), i).some((word) => word.label?.action !== undefined)
      )
        return;

      if (next.kind === itemKind.points) return;
      state(note, counts.name, [i, i + 1], { kind: "note", about: "count" });
    });
  },
};
