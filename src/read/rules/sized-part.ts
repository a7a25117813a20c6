import type { Dimension } from "../../quantities/quantity.ts";
import { endsClause, isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, textAt } from "./near.ts";

/** What is sold by pressure, and by what it stands. */
const byPressure =
  /\b(?:switch|switches|sw|hps|lps|hpco|lpco|cutout|cut out|transducer|xducer|relief|relief valve|prv|regulator)$/;
const byOhms = /\b(?:sensor|sensors|thermistor|thermistors|ntc|probe|probes|pot|resistor)$/;
const byVolts =
  /\b(?:coil|solenoid|contactor|relay|transformer|xfmr|motor|mtr|motors|heater|heaters|actuator|valve|blower|damper)s?$/;
const byAmps = /\b(?:fuse|breaker|brkr|disconnect|disco|contactor|relay)s?$/;
const byWatts = /\b(?:heater|heaters|strip|strips|kit|element|elements|motor|bulb)$/;
const byWarmth = /\b(?:limit|limits|klixon|thermodisc|snap disc|link|rollout)$/;
const byInches =
  /\b(?:drier|dryer|driers|valve|solenoid|coupling|elbow|ell|tee|union|fitting|sight glass|strainer|nut|flare)$/;

const startCap = /\b(?:start cap|start capacitor)s?$/;

/** By what things are called that one buys by a figure. */
const called: ReadonlyMap<Dimension, RegExp> = new Map<Dimension, RegExp>([
  ["pressure", byPressure],
  ["mass", byPressure],
  ["resistance", byOhms],
  ["voltage", byVolts],
  ["current", byAmps],
  ["power", byWatts],
  ["apparent_power", /\b(?:transformer|xfmr)$/],
  ["temperature", byWarmth],
  ["inches_of_water", byInches],
  ["length", byInches],
  ["capacitance", startCap],
]);

/** V that machines and their controls are made for; common practice, no source. */
const mains: ReadonlySet<number> = new Set([
  12, 24, 110, 115, 120, 200, 208, 220, 230, 240, 277, 380, 400, 415, 440, 460, 480, 575, 600,
]);

/** Words between the figure and the noun at most: "40 amp time delay fuse". */
const FAR = 4;

const deeds =
  /^(?:put|putting|puts|install|installed|installing|replace|replaced|replacing|swap|swapped|swapping|change|changed|changing|fit|fitted|fitting|threw|throw|throwing|stuck|popped|dropped|slapped|wired|mounted|set|need|needs|needed|order|ordered|ordering|get|getting|grab|grabbed|picking|pick|pick up|used|use|using|went|takes|take|calls|found|had|took|pulled|bring|bought|blew|has|going|brazed|screwed|sweated)$/;
const fresh = /^(?:a|an|another|new|bad|blown|old|spare|fresh|failed|dead|wrong|two|three|second)$/;
const became =
  /^(?:in|on|installed|replaced|fitted|changed|swapped|blown|bad|failed|burnt|burned|popped|ordered|needed|was|blew|shorted|out|to|used)$/;
/** Behind these a figure was read. */
const readAt = /^(?:at|@|is|are|reads|reading|read|hit|hits|now|only|got|getting|seeing)$/;

const where = /^(?:at|on|in|to|from|across|of|for|the|through|thru|with|into|by|off|near)$/;
const ends = role.is | role.preposition | role.conjunction | role.next;

function nameOf({ plain }: Note, item: Item): string {
  return plain.slice(item.from, item.to);
}

/** Index behind the noun that the figure at `i` is a size of; -1 where none follows. */
function nounEnd(note: Note, i: number): number {
  const { items } = note;
  const noun = called.get(items[i]?.unit?.dimension ?? "ratio");
  if (noun === undefined) return -1;
  for (let at = i + 1; at <= i + FAR; at++) {
    const item = items[at];
    if (item === undefined || item.kind === itemKind.line || item.kind === itemKind.points) break;
    if (item.kind === itemKind.number) {
      // "24v 40va transformer"
      if (item.unit === undefined || !called.has(item.unit.dimension)) break;
      continue;
    }
    // "at the heater" may be one item
    if (item.kind === itemKind.sign || (item.roles & ends) !== 0 || where.test(item.text)) break;
    // "relief valve", "sensor kit": the longest name
    if (noun.test(nameOf(note, item))) {
      const next = items[at + 1];
      const more = next !== undefined && next.kind === itemKind.word;
      return more && noun.test(nameOf(note, next)) ? at + 2 : at + 1;
    }
  }
  return -1;
}

/** Was the thing bought, fitted, found bad, or called by its article? */
function handled(items: readonly Item[], i: number, end: number): boolean {
  if (fresh.test(textAt(items, i - 1))) return true;
  for (let at = i - 1; at >= Math.max(0, i - 8); at--) {
    const item = items[at];
    if (item === undefined || endsClause(item)) break;
    if (deeds.test(item.text)) return true;
    if (freeNumber(item)) break;
  }
  return became.test(textAt(items, end));
}

/** Is the figure one that such things are made with? */
function isMade({ value, unit }: Item): boolean {
  if (!(value > 0)) return false;
  switch (unit?.dimension) {
    case "voltage":
      return mains.has(value);
    case "current":
      return Number.isInteger(value * 2);
    case "mass":
      // "450# switch", "400 lb relief"
      return unit.figure === "lb" && value >= 20 && Number.isInteger(value);
    case "resistance":
      return unit.figure === "kilohm" && Number.isInteger(value);
    default:
      return true;
  }
}

/** "0-500 psi transducer": index at which the row of figures begins. */
function rangeFrom(items: readonly Item[], i: number): number {
  const low = items[i - 2];
  const dash = /^(?:-|to)$/.test(textAt(items, i - 1));
  return dash && freeNumber(low) && low.unit === undefined ? i - 2 : i;
}

/** "480/24 transformer", "208 to 24 transformer": both sides of one; items that they take, 0 for none. */
function tappings(items: readonly Item[], i: number): number {
  const [high, low] = [items[i], items[i + 2]];
  const joint = textAt(items, i + 1);
  if (!/^(?:\/|to|-|:)$/.test(joint) || !freeNumber(low)) return 0;
  const both = mains.has(high?.value ?? 0) && mains.has(low.value);
  if (!both || (high?.value ?? 0) < low.value) return 0;
  const behind = transformers.test(textAt(items, i + 3));
  // "transformer 480 to 24 is making 26.8"
  const before = /^(?:is|a|the|its|from|:)$/.test(textAt(items, i - 1)) ? i - 2 : i - 1;
  if (joint === "/" && behind) return 4;
  return behind || transformers.test(textAt(items, before)) ? 3 : 0;
}

const transformers = /^(?:transformer|xfmr|xformer|trafo|cpt)$/;

/** "60/2 breaker", "10-ton TXV", "083 drier": what a bare figure is of, by the noun behind it; items that it takes, 0 for none. */
function bareSize(note: Note, i: number): number {
  const { items } = note;
  const [one, two, three] = [1, 2, 3].map((step) => textAt(items, i + step));
  const whole = Number.isInteger(items[i]?.value);
  if (one === "/" && /^[123]$/.test(two ?? "") && /^(?:breaker|brkr)$/.test(three ?? "")) return 4;
  if (whole && one === "-" && /^tons?$/.test(two ?? "")) return 3;
  const zero = note.plain.charAt(items[i]?.from ?? 0) === "0";
  if (zero && whole && /^(?:drier|dryer|filter drier)$/.test(one ?? "")) return 2;
  const sides = tappings(items, i);
  if (sides > 0) return sides;
  return startRange(note, i) ? 4 : 0;
}

/** "189-227 start cap": the range that it is made in. */
function startRange(note: Note, i: number): boolean {
  const { items } = note;
  const [high, noun] = [items[i + 2], items[i + 3]];
  if (textAt(items, i + 1) !== "-" || !freeNumber(high) || noun === undefined) return false;
  return startCap.test(nameOf(note, noun));
}

/** "24v solenoid coil ok": what it is called by, where no figure of its own volts follows. */
function namesCoil(items: readonly Item[], i: number, end: number): boolean {
  const coil = items[end - 1]?.text ?? "";
  const next = items[end];
  const own = next?.kind === itemKind.number && next.unit?.dimension !== "resistance";
  return items[i]?.unit?.dimension === "voltage" && !own && /^(?:coil|solenoid)$/.test(coil);
}

/** "was a 20 A, now a 30 amp fuse", "swapped the 7 psi for a 20 psi switch": what stood there before. */
function formerSizes(note: Note, i: number, dimension: Dimension): void {
  const { items } = note;
  for (let at = i - 1; at >= 0; at--) {
    const item = items[at];
    if (item === undefined || isStrongBreak(item)) return;
    if (!freeNumber(item) || item.unit?.dimension !== dimension || !isMade(item)) continue;
    const led = /^(?:an?|the|old)$/.test(textAt(items, at - 1));
    const verb = /^(?:was|had|from|the|swapped|took|pulled|for)$/.test(textAt(items, at - 2));
    if (led && (verb || deeds.test(textAt(items, at - 2))))
      state(note, sizedParts.name, [at, at + 1], { kind: "note", about: "size" });
  }
}

/**
 * "put in a 450 psi hp switch", "new 10k sensor", "24v solenoid replaced": what a part is called by was not
 * measured.
 */
export const sizedParts: Rule = {
  name: "<part> by its <size of a thing>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      if (item.unit === undefined) {
        const size = bareSize(note, i);
        if (size === 3 || (size > 0 && handled(items, i, i + size)))
          state(note, sizedParts.name, [i, i + size], { kind: "note", about: "size" });
        return;
      }
      if (!isMade(item)) return;
      const end = nounEnd(note, i);
      if (end < 0) return;
      const from = rangeFrom(items, i);
      const said = handled(items, from, end);
      const alone = item.unit.dimension === "pressure" || namesCoil(items, i, end);
      if (!said && (!alone || readAt.test(textAt(items, from - 1)))) return;
      // "24v solenoid coil ok 16 ohm": the noun still says whose ohms they are
      const ohms = items.slice(end, end + 4).some(({ unit }) => unit?.dimension === "resistance");
      const own = ohms && items[end - 1]?.label?.component === true ? i + 1 : end;
      state(note, sizedParts.name, [from, own], { kind: "note", about: "size" });
      formerSizes(note, from, item.unit.dimension);
    });
  },
};
