import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { heldSize } from "./held-size.ts";
import { lengthOf } from "./length-of.ts";
import { orderedSize, ratedMotor, sideOf, tapped } from "./made-for.ts";
import { freeNumber, textAt, wordBefore, wordBehind } from "./near.ts";
import { belt, gauge, pipe } from "./pipe-and-wire.ts";
import { resistorSize } from "./resistor-size.ts";
import { heights, isMeasure, jugs, oilGrade, SIZE, tons } from "./size-words.ts";
import { doubled, oneSupply, supply, takeSides, twoSupplies } from "./twin-size.ts";

/** Nominal thousands of British thermal units an hour; common practice, no source. */
const btus: ReadonlySet<number> = new Set([
  6, 7, 8, 9, 10, 12, 14, 15, 18, 20, 24, 30, 36, 42, 48, 54, 60, 80, 100, 120,
]);

/** Beside these inches tell how deep it stands. */
const wetBefore: ReadonlySet<string> = new Set(["standing", "deep", "snow", "rain", "pan"]);
const wetBehind: ReadonlySet<string> = new Set(["pan", "drain", "floor", "basement"]);

/** "4-20 ma", "0-10v": what a signal may be, not what it is. */
function signalRange(items: readonly Item[], i: number): boolean {
  const [first, second] = [items[i], items[i + 2]];
  if (first?.unit !== undefined || textAt(items, i + 1) !== "-" || second?.unit === undefined)
    return false;
  if (second.kind !== itemKind.number || second.owner !== undefined) return false;
  const said = `${first?.value}-${second.value} ${second.unit.figure}`;
  return /^(?:4-20 mA|0-20 mA|0-10 V|2-10 V|0-5 V|1-5 V)$/.test(said);
}

/** "36k btu", "8k unit", "4 zone 36k": what a machine moves, no ohms. */
function thousandBtu(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.unit?.figure !== "kilohm" || !btus.has(item.value)) return false;
  const [before, next] = [textAt(items, i - 1), textAt(items, i + 1)];
  if (items[i + 2]?.kind === itemKind.number) return false;
  return (
    /^(?:btu|btus|btuh|unit|odu|idu|ou|multi|rtu|split|system|head|heads|cassette|condenser|furnace|heat|outdoor|indoor|mini|minisplit)$/.test(
      next,
    ) || /^(?:zone|zones|ton|head|heads|split|single)$/.test(before)
  );
}

const machines =
  /^(?:unit|system|rtu|ahu|machine|fan|blower|rooftop|handler|coil|doas|mau|split|multisplit|heat pump|heatpump|odu|idu|outdoor|outdoors|indoor|cassette|condenser|chiller)$/;
/** What only a machine is called, so that no article is needed: "5 kW unit on a 16 A breaker". */
const wholes = /^(?:unit|system|machine|split|rooftop|cassette|chiller|odu|multisplit)$/;

/** "on a 4000 cfm unit", "a 10 kW machine": what it is called by. */
function calledBy(items: readonly Item[], i: number): boolean {
  const dimension = items[i]?.unit?.dimension;
  // "a 30 amp unit"
  if (dimension === "current" && /^an?$/.test(textAt(items, i - 1)))
    return /^(?:unit|system|machine|circuit|load|rtu)$/.test(textAt(items, i + 1));
  if (dimension !== "airflow" && dimension !== "power") return false;
  const before = items[i - 1];
  const article = before?.kind === itemKind.word && /^(?:an?|new|this|that)$/.test(before.text);
  const starts = before === undefined || before.kind === itemKind.line || before.text === ",";
  const verb = /^(?:is|pulls|draws|takes|reads|now|running|load|total|:)$/.test(
    textAt(items, i + 2),
  );
  if (dimension === "power" && starts && !verb && wholes.test(textAt(items, i + 1))) return true;
  return article && machines.test(textAt(items, i + 1));
}

function others(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const space = note.items[i + 1]?.text ?? "";
  // "400 cfm/ton", "400 cfm per ton"
  if (
    item.unit?.figure === "cfm" &&
    /^(?:\/|per|a)$/.test(space) &&
    textAt(items, i + 2) === "ton"
  ) {
    state(note, SIZE, [i, i + 3], { kind: "note", about: "size" });
    return true;
  }
  // "driven sheave 610 rpm" is how fast it turns
  const named = /^(?:sheaves?|pulley|tonnage)$/.test(textAt(items, i - 1));
  if (named && item.unit?.dimension !== "speed") {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (signal(items, i)) {
    state(note, SIZE, [i - 2, i + 1], { kind: "note", about: "size" });
    return true;
  }
  const oil = textAt(items, i - 1);
  // "AB 211, BC 200" are legs
  const oiled =
    /^(?:poe|pve|pag|mineral|vg)$/.test(oil) ||
    oilGrade(items, i) ||
    (oil === "ab" && /\boil/i.test(note.plain));
  if (item.unit === undefined && oiled) {
    state(note, SIZE, [i - 1, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (item.unit === undefined && isMeasure(items[i + 1], items[i + 2])) {
    state(note, SIZE, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  if (
    item.unit === undefined &&
    (item.value === 50 || item.value === 60) &&
    /^cycles?$/.test(space)
  ) {
    state(note, SIZE, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  if (signalRange(items, i)) {
    state(note, SIZE, [i, i + 3], { kind: "note", about: "size" });
    return true;
  }
  if (tapped(items, i) || ratedMotor(items, i) || sideOf(items, i) || orderedSize(items, i)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  // "cap 370v 45": what a capacitor stands
  const stands = item.unit?.figure === "V" && (item.value === 370 || item.value === 440);
  if (stands && items.some(({ label }) => label?.quantity === "capacitance")) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (thousandBtu(items, i)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  const kinds =
    /^(?:sensor|thermistor|ntc|probe)$/.test(items[i + 1]?.text ?? "") &&
    items[i + 2]?.kind !== itemKind.subject;
  if (
    item.unit?.figure === "kilohm" &&
    kinds &&
    note.items.some((word, at) => at > i && word.unit?.figure === "kilohm")
  ) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  const plated =
    item.unit?.figure === "hp" ||
    (item.unit?.figure === "VA" && items.some((word) => word.label?.thing === "transformer"));
  if (
    plated &&
    items.length > 1 &&
    items.some((word) => word.kind === itemKind.label || word.kind === itemKind.word)
  ) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  const next = textAt(items, i + 1);
  if (
    calledBy(items, i) ||
    resistorSize(items, i) ||
    heats(items, i, item, next) ||
    turned(items, i, item) ||
    lengthOf(note, i, item, next)
  ) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (heldSize(note, i, item)) return true;
  // "2 jugs 25 lb each": how big they are
  const each = ((items[i + 1]?.roles ?? 0) & role.each) !== 0;
  if (
    item.unit?.dimension === "mass" &&
    each &&
    items.slice(Math.max(0, i - 8), i).some(({ text }) => jugs.has(text))
  ) {
    state(note, SIZE, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  if (
    item.unit?.dimension === "mass" &&
    (jugs.has(next) || jugs.has(textAt(items, i + 2))) &&
    // "6 lb 1 oz, cylinder 22": the bottle that it went into
    items[i + 1]?.kind !== itemKind.subject &&
    // "recovered 11 lb. box 38": how cold the box is
    !(next === "box" && items[i + 2]?.kind === itemKind.number) &&
    !isWeighed(items, i) &&
    next !== "in" &&
    next !== "," &&
    next !== "." &&
    next !== "and" &&
    !wordsIn(items, i + 1)
  ) {
    state(note, SIZE, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  if (item.unit?.dimension === "length" || item.unit?.dimension === "inches_of_water") {
    if (wordBefore(items, i, wetBefore, 4) >= 0 || wordBehind(items, i, wetBehind, 5) >= 0) {
      state(note, SIZE, [i, i + 1], { kind: "note", about: "depth" });
      return true;
    }
  }
  if (item.unit?.dimension === "length") {
    if (wordBehind(items, i, heights, 3) < 0 && wordBefore(items, i, heights, 5) < 0) return false;
    if (items.some((word) => word.label?.quantity === "length")) return false;
    if (items.some((word) => word.label?.quantity === "static_pressure")) return false;
    state(note, SIZE, [i, i + 1], { kind: "note", about: "length" });
    return true;
  }
  return counted(note, i, item);
}

/** "4-20 mA": what a signal is called by. */
function signal(items: readonly Item[], i: number): boolean {
  const [low, joint, high] = [items[i - 2], textAt(items, i - 1), items[i]];
  if (high?.unit?.figure !== "mA" || high.value !== 20 || low?.value !== 4) return false;
  return freeNumber(low) && (joint === "to" || joint === "-");
}

const overmuch = /^(?:too|over|up|off|high|low|past|more|less|above|below|hot)$/;

function counted(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const next = textAt(items, i + 1);
  // "two thirty five way too hot": how much it is over
  if (next === "way" && overmuch.test(textAt(items, i + 2))) return false;
  // ".8 .8 .8 phase to phase"
  if (/^(?:phase|ph)$/.test(next) && item.value !== 1 && item.value !== 3) return false;
  // ".45 one way, OL the other way": no valve of so many ways
  if (next === "way" && (item.value < 2 || !Number.isInteger(item.value))) return false;
  if (
    item.unit === undefined &&
    tons.has(next) &&
    items[i + 1]?.kind !== itemKind.points &&
    items[i + 1]?.kind !== itemKind.unit &&
    items[i + 1]?.label === undefined
  ) {
    const ago = ((items[i + 1]?.roles ?? 0) & role.earlier) !== 0;
    state(note, SIZE, [i, ago ? i + 1 : i + 2], { kind: "note", about: "size" });
    return true;
  }
  return false;
}

/** "10 kw heat strips", "5 kW heater": what it is called by. */
function heats(items: readonly Item[], i: number, item: Item, next: string): boolean {
  if (item.unit?.dimension !== "power") return false;
  const after = textAt(items, i + 2);
  return (
    /^(?:heat|heater|heaters|strip|strips|kit|element|elements|furnace|generator|motor)$/.test(
      next,
    ) && !/^(?:is|reads|pulls|at)$/.test(after)
  );
}

/** "rotated 180 degrees", "90 degree elbow": an angle. */
function turned(items: readonly Item[], i: number, item: Item): boolean {
  if (item.unit?.figure !== "degrees") return false;
  const around = `${textAt(items, i - 1)} ${textAt(items, i - 2)} ${textAt(items, i + 1)}`;
  return /\b(?:rotat\w*|turn\w*|spun|flipped|elbows?|ells?|bends?|swivel\w*|clockwise)\b/.test(
    around,
  );
}

/** "recovered 9 lb cylinder tare 27", "7 oz recovered cyl 21": what was done with so much stands straight beside it. */
function isWeighed(items: readonly Item[], i: number): boolean {
  return items[i - 1]?.label?.action !== undefined || items[i + 1]?.label?.action !== undefined;
}

/** "6 lb into it", "210# head, box warm": what was moved, or a gauge's. */
function wordsIn(items: readonly Item[], i: number): boolean {
  return /^(?:into|in|from|to|out)$/.test(textAt(items, i)) || items[i]?.label?.place !== undefined;
}

/** Sizes that things are called by: pipe, wire, filters, belts, ladders, jugs, tons. */
export const nominalSizes: Rule = {
  name: SIZE,
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      // "filters dp is 1.4 inches": what they cost, no size of them
      if (/\bdp (?:is |was |at )?$/.test(note.plain.slice(Math.max(0, item.from - 8), item.from)))
        return;
      // "1.3 inches of static"
      if (
        textAt(note.items, i + 1) === "of" &&
        note.items[i + 2]?.label?.quantity === "static_pressure"
      )
        return;
      if (
        supply(note, i, item) ||
        twoSupplies(note, i, item) ||
        oneSupply(note, i, item) ||
        belt(note, i, item) ||
        takeSides(note, i) ||
        doubled(note, i, item) ||
        gauge(note, i, item) ||
        pipe(note, i, item)
      )
        return;
      others(note, i, item);
    });
  },
};
