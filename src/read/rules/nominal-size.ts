import { type Item, itemKind } from "../item.ts";
import { unitCalled } from "../kinds.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, textAt, wordBefore, wordBehind } from "./near.ts";

const sized: ReadonlySet<string> = new Set([
  "line",
  "lines",
  "pipe",
  "copper",
  "tube",
  "tubing",
  "drier",
  "dryer",
  "valve",
  "ell",
  "elbow",
  "elbows",
  "fitting",
  "flare",
  "nut",
  "coupling",
  "couplings",
  "hose",
  "hoses",
  "wrench",
  "bit",
  "socket",
  "screw",
  "screws",
  "bolt",
  "bolts",
  "filter",
  "filters",
  "belt",
  "belts",
  "wire",
  "cable",
  "conduit",
  "awg",
  "gauge",
  "ga",
  "od",
  "id",
  "lineset",
  "insulation",
  "suction",
  "liquid",
  "allthread",
  "stub",
  "tee",
  "reducer",
  "sheave",
  "pulley",
  "bore",
  "shaft",
  "pitch",
  "blade",
  "wheel",
  "duct",
  "flex",
  "strut",
  "discharge",
  "port",
  "tap",
  "nipple",
  "union",
  "trap",
  "anchor",
  "rod",
  "hole",
  "driver",
  "nutdriver",
  "thick",
  "wide",
  "long",
  "tall",
  "deep",
  "ball",
  "solenoid",
  "strainer",
  "armaflex",
  "stick",
  "sticks",
]);
const heights: ReadonlySet<string> = new Set([
  "ladder",
  "lift",
  "roof",
  "hatch",
  "extension",
  "cord",
  "crane",
  "scissor",
  "boom",
  "rope",
  "run",
  "away",
  "ceiling",
  "belt",
  "hose",
  "tall",
  "long",
  "high",
  "up",
  "wide",
  "deep",
  "thick",
  "stepladder",
  "chain",
  "scaffold",
  "tape",
  "parapet",
  "wall",
  "filters",
  "filter",
  "pipe",
  "cable",
  "wire",
]);
const jugs: ReadonlySet<string> = new Set([
  "jug",
  "jugs",
  "drum",
  "cylinder",
  "cylinders",
  "tank",
  "tanks",
  "bottle",
  "bottles",
  "can",
  "cans",
  "bag",
  "bags",
  "cyl",
  "box",
  "dumbbell",
  "recovery",
]);
const tons: ReadonlySet<string> = new Set([
  "ton",
  "tons",
  "tonner",
  "seer",
  "hp",
  "horse",
  "horsepower",
  "mbh",
  "phase",
  "ph",
  "btu",
  "gallon",
  "gallons",
  "gal",
  "percent",
  "speed",
  "wheel",
  "row",
  "mile",
  "miles",
  "mph",
  "yard",
  "story",
  "stories",
  "flights",
  "wheeler",
  "year",
  "years",
  "yr",
  "yrs",
  "months",
  "month",
  "volts",
  "degree",
  "inch",
  "inches",
  "way",
  "ohm",
  "flight",
  "size",
  "frame",
  "series",
  "mil",
  "ft",
]);

function small(item: Item): boolean {
  return item.unit === undefined || item.unit.dimension === "length";
}

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
function supply(note: Note, i: number, item: Item): boolean {
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
  state(note, nominalSizes.name, [i + 1, i + 5], { kind: "note", about: "supply" });
  return true;
}

/** Takes "four sixteen by …" with its count. */
/** "the belt's a B fifty two": a belt's letter and number. */
function belt(note: Note, i: number, item: Item): boolean {
  const before = note.items[i - 1];
  if (
    item.unit !== undefined ||
    before === undefined ||
    !/^[abcd]x?$/.test(before.text) ||
    before.kind === itemKind.points
  )
    return false;
  if (wordBefore(note.items, i, new Set(["belt", "belts"]), 5) < 0) return false;
  state(note, nominalSizes.name, [i - 1, i + 1], { kind: "note", about: "size" });
  return true;
}

function takeSides(note: Note, i: number): boolean {
  const end = sides(note, i);
  if (end === undefined) return false;
  state(note, nominalSizes.name, [i, end], { kind: "note", about: "size" });
  return true;
}

function pipe(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const article = textAt(items, i - 1);
  if (
    item.fraction &&
    item.unit === undefined &&
    item.value < 3 &&
    !item.spoken &&
    (article === "a" || article === "the" || article === "new")
  ) {
    state(note, nominalSizes.name, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (!small(item)) return false;
  const said = item.fraction || item.unit?.figure === "in" || item.unit?.figure === "mm";
  const behind = wordBehind(items, i, sized, 2);
  if (!said || behind < 0) return false;
  if (item.unit === undefined && item.value >= 5) return false;
  if (
    items[behind]?.label?.place !== undefined &&
    textAt(items, behind + 1) !== "line" &&
    textAt(items, behind + 1) !== "pipe" &&
    !item.fraction
  )
    return false;
  if (textAt(items, i + 1) === "at" || textAt(items, i + 1) === "on") return false;
  state(note, nominalSizes.name, [i, i + 1], { kind: "note", about: "size" });
  return true;
}

function gauge(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const next = textAt(items, i + 1);
  const wire =
    next === "ga" ||
    next === "awg" ||
    ((next === "gauge" || next === "gage") && item.unit === undefined);
  if (wire && Number.isInteger(item.value)) {
    state(note, nominalSizes.name, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  const wired =
    textAt(items, i + 1) === "wire" ||
    textAt(items, i + 1) === "thhn" ||
    textAt(items, i + 1) === "romex";
  if (item.unit === undefined && wired) {
    state(note, nominalSizes.name, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  return false;
}

/** "18/2", "45/5 cap": a cable's cores, a capacitor's two sides. */
function doubled(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const other = items[i + 2];
  if (
    (textAt(items, i + 1) !== "/" && textAt(items, i + 1) !== "+") ||
    !freeNumber(other) ||
    !Number.isInteger(item.value) ||
    textAt(items, i + 3) === "/"
  )
    return false;
  const marked = items
    .slice(Math.max(0, i - 3), i)
    .some((word) => word.label?.rating !== undefined);
  if (marked) return false;
  const cap =
    capNear(items, i) &&
    other.value < item.value &&
    other.value <= 15 &&
    item.value >= 15 &&
    item.value <= 80;
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
    /^(?:wire|cable|romex|so|cord|stranded)$/.test(textAt(items, i + 3));
  if (!cap && !cable && !core) return false;
  state(note, nominalSizes.name, [i, i + 3], { kind: "note", about: "size" });
  return true;
}

function capNear(items: readonly Item[], i: number): boolean {
  const before = items
    .slice(Math.max(0, i - 3), i)
    .some((item) => item.label?.quantity === "capacitance");
  return before || items.slice(i + 3, i + 7).some((item) => item.label?.quantity === "capacitance");
}

function others(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const space = note.items[i + 1]?.text ?? "";
  if (item.unit === undefined && /^(?:m3|ft3|sqft|sf|cubic|m2)$/.test(space)) {
    state(note, nominalSizes.name, [i, i + 2], { kind: "note", about: "size" });
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
    state(note, nominalSizes.name, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  const next = textAt(items, i + 1);
  if (
    item.unit?.dimension === "mass" &&
    (jugs.has(next) || jugs.has(textAt(items, i + 2))) &&
    next !== "in" &&
    next !== "," &&
    next !== "and" &&
    !wordsIn(items, i + 1)
  ) {
    state(note, nominalSizes.name, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  if (item.unit?.dimension === "length" || item.unit?.dimension === "inches_of_water") {
    if (wordBefore(items, i, new Set(["standing", "deep", "snow", "rain"]), 4) >= 0) {
      state(note, nominalSizes.name, [i, i + 1], { kind: "note", about: "depth" });
      return true;
    }
  }
  if (item.unit?.dimension === "length") {
    if (wordBehind(items, i, heights, 3) < 0 && wordBefore(items, i, heights, 5) < 0) return false;
    if (items.some((word) => word.label?.quantity === "length")) return false;
    if (items.some((word) => word.label?.quantity === "static_pressure")) return false;
    state(note, nominalSizes.name, [i, i + 1], { kind: "note", about: "length" });
    return true;
  }
  if (
    item.unit === undefined &&
    tons.has(next) &&
    items[i + 1]?.kind !== itemKind.points &&
    items[i + 1]?.kind !== itemKind.unit &&
    items[i + 1]?.label === undefined
  ) {
    const ago = ((items[i + 1]?.roles ?? 0) & role.earlier) !== 0;
    state(note, nominalSizes.name, [i, ago ? i + 1 : i + 2], { kind: "note", about: "size" });
    return true;
  }
  return false;
}

function wordsIn(items: readonly Item[], i: number): boolean {
  return (
    textAt(items, i) === "into" ||
    textAt(items, i) === "in" ||
    textAt(items, i) === "from" ||
    textAt(items, i) === "to" ||
    textAt(items, i) === "out"
  );
}

/** Sizes that things are called by: pipe, wire, filters, belts, ladders, jugs, tons. */
export const nominalSizes: Rule = {
  name: "<number> <size of a thing>",
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      if (
        supply(note, i, item) ||
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
