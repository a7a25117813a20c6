import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber } from "./near.ts";

/** Parts of one kind that hang on one unit; common practice, no source. */
const PARTS = 12;

/** The value that a verb or the next item gives to it: "reads .3uf", "3.1 a". */
function hasValue(items: readonly Item[], i: number): boolean {
  const verb = items[i];
  const value = ((verb?.roles ?? 0) & role.is) !== 0 ? items[i + 1] : verb;
  return (
    (value?.kind === itemKind.number && value.unit !== undefined) || value?.kind === itemKind.over
  );
}

/** "cap 1 reads 33", "cap 2 4.1": a small number, and behind it a value that is not of its size. */
function capByNumber(items: readonly Item[], i: number): boolean {
  const number = items[i - 1];
  const verb = items[i];
  const value = ((verb?.roles ?? 0) & role.is) !== 0 ? items[i + 1] : verb;
  if (items[i - 2]?.label?.quantity !== "capacitance" || number === undefined) return false;
  if (value?.kind !== itemKind.number || value.owner !== undefined || number.value > 4)
    return false;
  const ratio = value.value / number.value;
  return ratio < 0.5 || ratio > 1.5;
}

const spent =
  /^(?:dead|short|shorted|blown|bulged|bulging|swollen|domed|leaking|open|ol|burnt|burned|toast|fried|popped|failed|gone|out|missing|disconnected|unhooked)$/;
const judged = /^(?:bad|good|fine|ok|okay|weak|low)$/;

/** "cap 2 dead short", "cap 1 good cap 2 open", "cap 1 weak 28.2uf": how it is, and not how many microfarads. */
function capTold(items: readonly Item[], i: number): boolean {
  const isNumbered = (at: number): boolean =>
    items[at - 1]?.label?.quantity === "capacitance" && (items[at]?.value ?? PARTS) <= 4;
  if (items[i - 1]?.label?.quantity !== "capacitance") return false;
  const at = ((items[i + 1]?.roles ?? 0) & role.is) !== 0 ? i + 2 : i + 1;
  const how = items[at]?.text ?? "";
  if (spent.test(how) || items[at]?.kind === itemKind.over) return true;
  if (!judged.test(how) || !isNumbered(i)) return false;
  return hasValue(items, at + 1) || items.some((_, other) => other !== i && isNumbered(other));
}

/** "eev1 180 eev2 220", "eev 1 at 410": the valve's number, and its opening behind it. */
function valveByNumber(items: readonly Item[], i: number): boolean {
  if (!/^valve_/.test(items[i - 1]?.label?.quantity ?? "")) return false;
  const led = /^(?:at|is|@|:|=)$/.test(items[i + 1]?.text ?? "");
  const value = items[led ? i + 2 : i + 1];
  if (!freeNumber(value)) return false;
  return led || items[i]?.glued === true || value.value > PARTS;
}

/** "eev 21 is 190": so many steps behind a verb, so the number before it is the valve's. */
function stepsTold(items: readonly Item[], i: number): boolean {
  if (!/^valve_/.test(items[i - 1]?.label?.quantity ?? "")) return false;
  const steps = items[i + 2];
  if (!/^(?:is|:|=|reads|shows)$/.test(items[i + 1]?.text ?? "")) return false;
  return freeNumber(steps) && steps.value > 100;
}

/** "eev 2 stuck shut", "eev 3 coil 46 ohm": what it does, or a part of it, is told of a valve by its number. */
function valveTold(items: readonly Item[], i: number): boolean {
  if (!/^valve_/.test(items[i - 1]?.label?.quantity ?? "")) return false;
  return /^(?:stuck|jammed|frozen|hung|dead|coil|motor|driver|stepper|body|wont|doesnt|isnt|not|never)$/.test(
    items[i + 1]?.text ?? "",
  );
}

/** "at the valve core on dairy case 4", "case 4 is 38 F": one of a line of cases, no degrees. */
function isCase({ items, plain }: Note, i: number): boolean {
  const noun = items[i - 1];
  if (noun === undefined || !/\bcase$/.test(plain.slice(noun.from, noun.to))) return false;
  if (hasValue(items, i + 1)) return true;
  // "sh at case 7 sh at comp 31": what was read there
  const read = items[i - 3]?.label?.quantity === "superheat" && items[i - 2]?.text === "at";
  if (read && (items[i + 1] === undefined || items[i + 1]?.label !== undefined)) return false;
  const before = /\b(?:on|at|in|by|behind|under|from|near|of|into)(?: the| our)?(?: [a-z]+)? $/;
  return before.test(plain.slice(Math.max(0, noun.from - 24), noun.from));
}

const boxState =
  /^(?:has|head|heads|dead|fine|ok|okay|good|down|out|rooms|feeds|serves|lost|still|works|working)$/;

/** "box 2 has 208 on L1 L2", "206 and 208 are on box 2", "box 2 head dead, box 1 fine": a branch box by its number, no cold room's degrees. */
function isBox({ items, plain }: Note, i: number): boolean {
  const ofBox = (at: number): boolean =>
    /\bbox$/.test(plain.slice(items[at - 1]?.from ?? 0, items[at - 1]?.to ?? 0));
  if (!ofBox(i)) return false;
  if (/^(?:on|off|from|by|under|same)$/.test(items[i - 2]?.text ?? "")) return true;
  const is = /^(?:is|are|was|,)$/.test(items[i + 1]?.text ?? "");
  const said = items[is ? i + 2 : i + 1];
  if (said?.text === "has") return true;
  // "box 2, still climbing" is how cold it is
  if (boxState.test(said?.text ?? "") && said?.text !== "still") return true;
  const others = items.some(
    (item, at) =>
      at !== i &&
      (/^box [1-9]$/.test(item.subject ?? "") || (/^[1-9]$/.test(item.text) && ofBox(at))),
  );
  return others;
}

const counted =
  /(?:^|\s)(?:boards?|modules?|pcbs?|controllers?|cassettes?|indoors|grp|group|bank|tnk|stage|tap)$/;

/** "boards 1 and 2", "trips on board 2", "indoors 7 to 12": numbers of things that have no value of their own. */
function namesEnd(items: readonly Item[], from: number): number {
  let end = from;
  for (; end < items.length; end++) {
    const item = items[end];
    const name =
      freeNumber(item) &&
      item.unit === undefined &&
      !item.fraction &&
      Number.isInteger(item.value) &&
      !item.text.includes(".") &&
      item.value >= 1 &&
      item.value <= HEADS;
    const joint = end > from && /^(?:and|&|,|to|-)$/.test(items[end]?.text ?? "");
    if (name) continue;
    if (!joint || !freeNumber(items[end + 1])) break;
  }
  return end;
}

const numberedBoards = /^(?:inv|invs|inverter|th|thermistor|thermistors|board|module|drive)$/;
const how =
  /^(?:fine|ok|okay|good|bad|dead|shorted|short|fault|faults|faulted|faulting|open|ol|locked|blown|out|down|burnt|fried|toast|trips|tripped|tripping|wont|isnt|doesnt|not|had|has|is)$/;
/** Boards and sensors of a kind on one unit; common practice, no source. */
const BOARDS = 9;

/** "inv 2 fine", "th 2 is ol", "the inverter board for two is shorted": its number, and behind it how it is. */
function boardTold(items: readonly Item[], i: number): boolean {
  const item = items[i];
  const noun = items[i - 1]?.text === "for" ? items[i - 2] : items[i - 1];
  if (item === undefined || item.value > BOARDS || !numberedBoards.test(noun?.text ?? ""))
    return false;
  const [next, behind] = [items[i + 1], items[i + 2]];
  // "th 1 10.2k th 2 9.8k"
  const ohms = next?.kind === itemKind.number && next.unit?.dimension === "resistance";
  if (ohms && noun === items[i - 1]) return true;
  if (!how.test(next?.text ?? "")) return false;
  // "th 1 is 10.2k"
  if (!/^(?:is|has|had)$/.test(next?.text ?? "")) return true;
  return behind?.kind !== itemKind.number || behind.unit !== undefined || behind.value === 0;
}

/** Indoor units on one outdoor unit at most; common practice, no source. */
const HEADS = 64;

/** "sensor 1 10.1k, 2 9.8k, 3 open": the parts behind the first go by their numbers alone. */
function restOfRow(note: Note, first: number): void {
  const { items } = note;
  let number = items[first]?.value ?? 0;
  for (let i = first + 2; i < items.length; i++) {
    const item = items[i];
    if (item?.text === "," || item?.text === "and" || item?.kind === itemKind.line) continue;
    if (!freeNumber(item) || item.unit !== undefined || item.value !== number + 1) return;
    if (!hasValue(items, i + 1)) return;
    state(note, numberedParts.name, [i, i + 1], { kind: "note", about: "place" });
    number = item.value;
    i++;
  }
}

/** "cap 2 reads .3uf", "heater 3 14 ohms": the number is the part's name, the value comes behind. */
export const numberedParts: Rule = {
  name: "<part> <number> reads",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (item.kind === itemKind.number || item.kind === itemKind.sign) return;
      if (!counted.test(note.plain.slice(item.from, item.to))) return;
      // "first stage 17 split": its number was said before it
      if (/^(?:first|second|third|1st|2nd|3rd|low|high|lo|hi)$/.test(items[i - 1]?.text ?? ""))
        return;
      const end = namesEnd(items, i + 1);
      const next = items[end];
      const behind = items[end + 1];
      // "group 1 is 21 psi", "board two is showing U4": the value or what it does comes behind the verb
      const told =
        end === i + 2 &&
        (behind?.unit !== undefined ||
          behind?.kind === itemKind.over ||
          /^(?:showing|flashing|blinking|throwing|dead|out|off|on)$/.test(behind?.text ?? ""));
      const is = ((next?.roles ?? 0) & role.is) !== 0 && next?.text !== ":" && !told;
      const measured = is || next?.kind === itemKind.unit;
      if (end > i + 1 && !measured)
        state(note, numberedParts.name, [i + 1, end], { kind: "note", about: "place" });
    });
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || item.fraction) return;
      if (!Number.isInteger(item.value) || item.value < 1) return;
      if (item.text.includes(".") || item.value > (stepsTold(items, i) ? HEADS : PARTS)) return;
      if (isBox(note, i)) {
        state(note, numberedParts.name, [i, i + 1], { kind: "note", about: "place" });
        return;
      }
      // "bus cap 1 310v bus cap 2 290v"
      const bus = items[i - 1];
      const cap = bus !== undefined && /\bcaps?$/.test(note.plain.slice(bus.from, bus.to));
      if (
        isCase(note, i) ||
        valveTold(items, i) ||
        capTold(items, i) ||
        boardTold(items, i) ||
        (cap && bus?.label?.place === "dc_bus" && hasValue(items, i + 1))
      ) {
        state(note, numberedParts.name, [i, i + 1], { kind: "note", about: "place" });
        return;
      }
      const label = items[i - 1]?.label;
      // "eev1 180 eev2 220"
      const valve = valveByNumber(items, i);
      const part =
        label?.quantity === "capacitance" ||
        label?.component === true ||
        valve ||
        (label?.thing !== undefined && label.thing !== "level");
      if (!part || label?.rating !== undefined || label?.place !== undefined) return;
      const atPins = items[i + 1]?.kind === itemKind.points && freeNumber(items[i + 2]);
      if (!valve && !atPins && !hasValue(items, i + 1) && !capByNumber(items, i + 1)) return;
      state(note, numberedParts.name, [i, i + 1], { kind: "note", about: "place" });
      restOfRow(note, i);
    });
  },
};
