import { type Item, itemKind } from "../item.ts";
import { unitCalled } from "../kinds.ts";
import { type Note, state } from "../note.ts";
import { freeNumber, textAt, wordBefore } from "./near.ts";
import { SIZE, sized } from "./size-words.ts";

/** "16x20x2", "sixteen by twenty five by two": sides of a filter or a duct. */
function sides(note: Note, i: number): number | undefined {
  const { items } = note;
  let end = i;
  let count = 1;
  for (;;) {
    const joint = textAt(items, end + 1);
    const next = items[end + 2];
    if ((joint !== "x" && joint !== "by" && joint !== "×") || !freeNumber(next)) break;
    end += 2;
    count++;
  }
  return count > 1 ? end + 1 : undefined;
}

/** "208-230/3/60": volts, phases and hertz of a supply as a plate gives them. */
export function supply(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const [phases, hertz] = [items[i + 2], items[i + 4]];
  if (
    textAt(items, i + 1) !== "/" ||
    textAt(items, i + 3) !== "/" ||
    phases === undefined ||
    hertz === undefined
  )
    return false;
  if (
    (phases.value !== 1 && phases.value !== 3) ||
    (hertz.value !== 50 && hertz.value !== 60) ||
    item.value < 100
  )
    return false;
  item.unit = unitCalled("V");
  state(note, SIZE, [i + 1, i + 5], { kind: "note", about: "supply" });
  return true;
}

/** Takes "four sixteen by …" with its count. */
export function takeSides(note: Note, i: number): boolean {
  const end = sides(note, i);
  if (end === undefined) return false;
  state(note, SIZE, [i, end], { kind: "note", about: "size" });
  return true;
}

/** "18/2", "45/5 cap": a cable's cores, a capacitor's two sides. */
const supplies: ReadonlySet<number> = new Set([
  115, 120, 200, 208, 220, 230, 240, 265, 277, 380, 400, 415, 440, 460, 480, 575, 600,
]);

/** "unit is 208/230": two supplies that a machine is built for. */
export function twoSupplies(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const other = items[i + 2];
  if (
    textAt(items, i + 1) !== "/" ||
    other === undefined ||
    !supplies.has(item.value) ||
    !supplies.has(other.value) ||
    item.value >= other.value
  )
    return false;
  if (textAt(items, i + 3) === "/") return false;
  const before = textAt(items, i - 1);
  if (other.unit !== undefined && before !== "is" && before !== "a") return false;
  state(note, SIZE, [i, i + 3], { kind: "note", about: "supply" });
  return true;
}

/** "179 178 180 on a 208 unit": what a machine or a service is called by. */
export function oneSupply(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  if (!supplies.has(item.value) || (item.unit !== undefined && item.unit.figure !== "V"))
    return false;
  if (!/^(?:an?|the|our|this)$/.test(textAt(items, i - 1))) return false;
  if (!/^(?:on|for|with|off|from|is)$/.test(textAt(items, i - 2))) return false;
  if (
    !/^(?:unit|machine|supply|system|service|feed|nameplate|motor|comp|compressor)$/.test(
      textAt(items, i + 1),
    )
  )
    return false;
  state(note, SIZE, [i, i + 1], { kind: "note", about: "supply" });
  return true;
}

/** "it's a forty five five", "forty five five cap": a capacitor's two sizes without a joint, 45 and 5. */
function spokenTwin(items: readonly Item[], i: number, item: Item): boolean {
  const small = Math.round((item.value % 1) * 10);
  if (!item.spoken || !item.loose || item.unit !== undefined) return false;
  if (item.value < 15 || item.value > 81 || small === 0) return false;
  if (items[i + 1]?.label?.quantity === "capacitance") return true;
  if (small < 3 || Math.floor(item.value) % 5 !== 0) return false;
  // "dual run cap forty five five is reading 42 and 3.9"
  const read = /^(?:is|reads|reading|tests|tested|got|getting|measures)$/;
  const cap = items[i - 1]?.label?.quantity === "capacitance" && read.test(textAt(items, i + 1));
  if (cap && goesOn(items, i + 1)) return true;
  if (!/^(?:a|an|the|new|dual)$/.test(textAt(items, i - 1))) return false;
  return items.some(
    ({ label, text }) => label?.quantity === "capacitance" || /^(?:cap|caps|dual)$/.test(text),
  );
}

/** V that capacitors are made for. Common practice, no source. */
const capVolts: ReadonlySet<number> = new Set([370, 440]);

/** "fan cap 7.5/440": its microfarads and what it stands. */
function withItsVolts(note: Note, i: number): boolean {
  const [item, stroke, volts] = note.items.slice(i, i + 3);
  if (item?.unit !== undefined || stroke?.text !== "/" || !freeNumber(volts)) return false;
  if (!capVolts.has(volts.value) || (item?.value ?? 999) > 200) return false;
  if (!/\bcap(?:acitor)?s?\b/.test(note.plain)) return false;
  state(note, SIZE, [i, i + 3], { kind: "note", about: `size ${item?.value}/${volts.value}` });
  return true;
}

/** "45/5 440", "45/5/370 volt": behind the two sizes what the can stands; index of what follows. */
function behindTwin(items: readonly Item[], from: number): number {
  const at = textAt(items, from) === "/" ? from + 1 : from;
  const volts = items[at];
  if (volts?.kind !== itemKind.number || volts.owner !== undefined) return from;
  const unit = volts.unit?.figure ?? "V";
  return capVolts.has(volts.value) && unit === "V" ? at + 1 : from;
}

export function doubled(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  if (spokenTwin(items, i, item)) {
    const first = Math.trunc(item.value);
    const second = Math.round((item.value - first) * 10);
    state(note, SIZE, [i, i + 1], { kind: "note", about: `size ${first}/${second}` });
    return true;
  }
  if (withItsVolts(note, i)) return true;
  const other = items[i + 2];
  if (
    !/^(?:[/+]|plus|over|slash|by|and)$/.test(textAt(items, i + 1)) ||
    !freeNumber(other) ||
    !Number.isInteger(item.value) ||
    (textAt(items, i + 3) === "/" && behindTwin(items, i + 3) === i + 3)
  )
    return false;
  const marked = items
    .slice(Math.max(0, i - 3), i)
    .some((word) => word.label?.rating !== undefined);
  if (marked) return false;
  if (readsTwo(items, i)) {
    state(note, SIZE, [i, i + 3], { kind: "note", about: `size ${item.value}/${other.value}` });
    return true;
  }
  const joined = textAt(items, i + 1) !== "and" || goesOn(items, i + 3);
  // "reads 38.8 / 4.1, fitted new 45/5"
  const fresh = /^(?:new|fitted|installed|fresh)$/.test(textAt(items, i - 1));
  // "40/5 370 reads 38.2 on herm": only a can is called by its volts too
  const voltsEnd = behindTwin(items, i + 3);
  const canned = voltsEnd > i + 3 && textAt(items, i + 1) === "/";
  const cap =
    joined &&
    (canned || fresh || putIn(items, i) || capNear(items, i)) &&
    isTwin(item.value, other.value);
  const cable =
    wordBefore(items, i, sized, 3) >= 0 &&
    item.value <= 22 &&
    other.value <= 12 &&
    item.unit === undefined &&
    other.unit === undefined &&
    wordBefore(items, i, new Set(["wire", "cable"]), 3) >= 0;
  const core =
    item.value <= 22 &&
    other.value <= 12 &&
    (/^(?:wire|cable|cord|stranded)$/.test(textAt(items, i + 3)) ||
      // "18/3 so" is a cord, "nineteen and three so it's starving" none
      (textAt(items, i + 3) === "so" && textAt(items, i + 1) === "/"));
  if (!cap && !cable && !core) return false;
  const about = cap ? `size ${item.value}/${other.value}` : "size";
  // "says 45 over 5 on the can": the can's word is of the size, not of what was measured
  const said = cap ? voltsEnd : i + 3;
  const end = cap && items[said]?.label?.rating === "nominal" ? said + 1 : said;
  state(note, SIZE, [i, end], { kind: "note", about });
  return true;
}

/** "threw in a 45/5", "put a 40/7.5 in", "its a 35/5": what is called by two such sizes is a capacitor. */
function putIn(items: readonly Item[], i: number): boolean {
  if (textAt(items, i + 1) !== "/" || !/^an?$/.test(textAt(items, i - 1))) return false;
  const [far, near] = [textAt(items, i - 3), textAt(items, i - 2)];
  const verb =
    /^(?:put|threw|throw|stuck|popped|installed|dropped|slapped|got|need|needs|takes|was|fitted|put in|for|to|with|had|its)$/;
  return verb.test(near) || (near === "in" && verb.test(far));
}

/** "45/5 reads 44/3.2": two sizes of a capacitor and what each side has; gives the values their unit. */
function readsTwo(items: readonly Item[], i: number): boolean {
  const [first, second] = [items[i], items[i + 2]];
  if (first === undefined || second === undefined || textAt(items, i + 1) !== "/") return false;
  if (first.unit !== undefined || second.unit !== undefined || capNear(items, i)) return false;
  if (!isTwin(first.value, second.value)) return false;
  if (!/^(?:reads|read|got|tests|tested|measures|now)$/.test(textAt(items, i + 3))) return false;
  const read = [items[i + 4], items[i + 6]] as const;
  if (textAt(items, i + 5) !== "/" || !freeNumber(read[0]) || !freeNumber(read[1])) return false;
  const near = (one: Item, size: Item): boolean =>
    one.unit === undefined && one.value > size.value * 0.3 && one.value < size.value * 1.15;
  if (!near(read[0], first) || !near(read[1], second)) return false;
  read[0].unit = unitCalled("microfarad");
  read[1].unit = unitCalled("microfarad");
  return true;
}

/** Microfarads that run capacitors are made in, for a compressor and for its fan; common practice, no source. */
const ofCompressor: ReadonlySet<number> = new Set([
  15, 17.5, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80,
]);
const ofFan: ReadonlySet<number> = new Set([1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 7.5, 10, 12.5, 15]);

function isTwin(first: number, second: number): boolean {
  return second < first && ofCompressor.has(first) && ofFan.has(second);
}

/** "dual cap 45 and 5, got 39 and 4.8": two values behind the two sizes. */
function goesOn(items: readonly Item[], from: number): boolean {
  return items.slice(from).filter((item) => freeNumber(item)).length >= 2;
}

function capNear(items: readonly Item[], i: number): boolean {
  const called = /^(?:a|an|the)$/.test(textAt(items, i - 1));
  const before = items
    .slice(called ? 0 : Math.max(0, i - 3), i)
    .some((item) => item.label?.quantity === "capacitance");
  return before || items.slice(i + 3, i + 7).some((item) => item.label?.quantity === "capacitance");
}
