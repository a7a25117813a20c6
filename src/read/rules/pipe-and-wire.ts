import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, state } from "../note.ts";
import { textAt, wordBefore, wordBehind } from "./near.ts";
import { SIZE, sized } from "./size-words.ts";

function small(item: Item): boolean {
  return item.unit === undefined || item.unit.dimension === "length";
}

/** "the belt's a B fifty two": a belt's letter and number. */
export function belt(note: Note, i: number, item: Item): boolean {
  const before = note.items[i - 1];
  if (
    item.unit !== undefined ||
    before === undefined ||
    !/^[abcd]x?$/.test(before.text) ||
    before.kind === itemKind.points
  )
    return false;
  const belts = new Set(["belt", "belts"]);
  if (wordBehind(note.items, i, belts, 2) < 0 && !beltBefore(note, i)) return false;
  state(note, SIZE, [i - 1, i + 1], { kind: "note", about: "size" });
  return true;
}

/**
 * Outside diameters of refrigerant tube in mm that nobody would say of degrees: with two decimals.
 * Source: EN 12735-1, ASTM B280, from memory.
 */
const diameters: ReadonlySet<string> = new Set(
  "6.35 9.52 9.53 15.88 19.05 22.22 28.58 31.75 34.92 41.28".split(" "),
);

/** "liquid pipe 9.52": a diameter, no degrees. */
function isDiameter(note: Note, i: number, item: Item): boolean {
  if (item.unit !== undefined || !diameters.has(note.plain.slice(item.from, item.to))) return false;
  return note.items
    .slice(Math.max(0, i - 2), i + 3)
    .some((one) =>
      /\b(?:pipes?|lines?|copper|tube|tubing)\b/.test(note.plain.slice(one.from, one.to)),
    );
}

/** The belt may have been named a while before: "threw a new one on, it's an A fifty two". */
function beltBefore(note: Note, i: number): boolean {
  const spoken = /^(?:a|an|the)$/.test(textAt(note.items, i - 2));
  return wordBefore(note.items, i, new Set(["belt", "belts"]), spoken ? 20 : 5) >= 0;
}

/** Said in eighths that are no quarters: so pipes are called, no gauge is read so. */
function eighths(item: Item): boolean {
  return item.value > 0 && (item.value * 8) % 2 === 1;
}

/** "the suction pipe's one and one eighth", "line set is three eighths" */
function spokenPipe(items: readonly Item[], i: number, item: Item): boolean {
  return (
    item.spoken &&
    eighths(item) &&
    items
      .slice(Math.max(0, i - 4), i)
      .some(({ text }) =>
        /^(?:pipe|pipes|line|lines|suction|liquid|lineset|set|tube|copper)$/.test(text),
      )
  );
}

/** The same to one decimal, as they are thumbed. */
const rounded: ReadonlySet<number> = new Set([
  6, 6.4, 6.35, 9.5, 9.52, 9.53, 10, 12, 12.7, 15.9, 15.88, 16, 18, 19, 19.1, 19.05, 22, 22.2, 28,
  28.6,
]);

/** "line 42m 9.5/15.9": the diameters of liquid and gas. */
function twoDiameters(items: readonly Item[], i: number): boolean {
  const [item, stroke, other] = [items[i], items[i + 1], items[i + 2]];
  if (stroke?.text !== "/" || other?.kind !== itemKind.number || item === undefined) return false;
  if (item.unit !== undefined || other.unit !== undefined || other.owner !== undefined)
    return false;
  if (!rounded.has(item.value) || !rounded.has(other.value) || item.value >= other.value)
    return false;
  const ahead = items.slice(Math.max(0, i - 4), i);
  return ahead.some(({ text }) => /^(?:line|lines|pipe|pipes|copper|lineset|tube)$/.test(text));
}

const tubeWords =
  /^(?:suction|suct|suc|liquid|liq|gas|discharge|hot gas|vapou?r|lines?|pipes?|piping|pipework|tubes?|tubing|copper|lineset)$/;

/** "28 mm suction", "liquid line 12 mm, 34 degrees": what a tube is called by, nothing that is measured at it. */
function tubeOfMillimetres(items: readonly Item[], i: number): boolean {
  if (items[i]?.unit?.figure !== "mm") return false;
  return items.slice(Math.max(0, i - 3), i + 3).some(({ text }) => tubeWords.test(text));
}

const tubes =
  /^(?:pipes?|copper|pvc|cpvc|conduit|emt|hose|tubing|duct|flex|vent|sheave|pulley|valve|tee|elbow)$/;

/** `2" condensate pipe`, `10" duct off at the boot`: inches of what is named behind, none of water. */
function inchesOf({ items, plain }: Note, i: number): boolean {
  const item = items[i];
  if (
    item?.unit?.figure !== "in wc" ||
    !/^(?:"|''|inch|in)$/.test(plain.slice(item.unitFrom, item.to))
  )
    return false;
  const eighth = Number.isInteger(item.value * 8);
  if (!eighth || items.some(({ label }) => label?.quantity === "static_pressure")) return false;
  const [next, after] = [items[i + 1], items[i + 2]];
  if (tubes.test(next?.text ?? "")) return true;
  return next?.kind === itemKind.word && next.roles === 0 && tubes.test(after?.text ?? "");
}

export function pipe(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  if (inchesOf(note, i)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (twoDiameters(items, i)) {
    state(note, SIZE, [i, i + 3], { kind: "note", about: "size" });
    return true;
  }
  if (isDiameter(note, i, item)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (tubeOfMillimetres(items, i)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  const article = textAt(items, i - 1);
  if (
    item.fraction &&
    item.unit === undefined &&
    item.value < 3 &&
    (!item.spoken || eighths(item)) &&
    (article === "a" || article === "the" || article === "new" || spokenPipe(items, i, item))
  ) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  // "line set is 3/4 and 3/8"
  const set =
    items[i - 1]?.text === "and" || items[i - 1]?.text === "," || items[i - 1]?.text === "x";
  const first = set && items[i - 2]?.owner === SIZE && items[i - 2]?.fraction === true;
  const lineSet = items
    .slice(Math.max(0, i - 4), i)
    .some(({ label }) => label?.quantity === "length");
  if (item.fraction && !item.spoken && item.unit === undefined && (first || lineSet)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (sizeOfLine(items, i, item)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (!small(item)) return false;
  const said = item.fraction || item.unit?.figure === "in" || item.unit?.figure === "mm";
  if (!said) return false;
  const behind = wordBehind(items, i, sized, 2);
  if (behind < 0 && item.fraction && !item.spoken && item.unit === undefined && item.value < 4.2) {
    const before = wordBefore(items, i, sized, 2);
    if (before >= 0) {
      state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
      return true;
    }
  }
  if (behind < 0) return twin(note, i, item);
  if (item.unit === undefined && item.value >= 5) return false;
  if (
    items[behind]?.label?.place !== undefined &&
    textAt(items, behind + 1) !== "line" &&
    textAt(items, behind + 1) !== "pipe" &&
    !item.fraction
  )
    return false;
  if (textAt(items, i + 1) === "at" || textAt(items, i + 1) === "on") return false;
  state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
  return true;
}

/** "3/8 liq line warm to touch 101F, 7/8 suct 58F": the pipe's size before it, its value behind. */
function sizeOfLine(items: readonly Item[], i: number, item: Item): boolean {
  if (!item.fraction || item.spoken || item.unit !== undefined || item.value >= 4.2) return false;
  const place = items[i + 1]?.label?.place;
  if (place !== "suction" && place !== "liquid" && place !== "discharge") return false;
  for (let at = i + 2; at < Math.min(items.length, i + 8); at++) {
    const next = items[at];
    if (next === undefined || isStrongBreak(next) || next.text === ",") return false;
    if (next.kind === itemKind.number) return true;
  }
  return false;
}

/** "3/8 and 7/8 lines": two fractions before what they are the sizes of. */
function twin(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const other = items[i + 2];
  if (!item.fraction || item.spoken || other?.fraction !== true || other.owner !== undefined)
    return false;
  if (!/^(?:and|&|,|x|n|or|to|\/)$/.test(textAt(items, i + 1))) return false;
  if (wordBehind(items, i + 2, sized, 2) < 0) return false;
  state(note, SIZE, [i, i + 3], { kind: "note", about: "size" });
  return true;
}

/** AWG of control and branch wiring. Source: NFPA 70 table 310.16 and article 725, from memory. */
const gauges: ReadonlySet<number> = new Set([6, 8, 10, 12, 14, 16, 18, 20, 22]);
const drawn = /\b(?:pulled|pulling|ran|run|strung|new|replaced|rewired)\b/;

export function gauge(note: Note, i: number, item: Item): boolean {
  const { items } = note;
  const next = textAt(items, i + 1);
  const wire =
    next === "ga" ||
    next === "awg" ||
    ((next === "gauge" || next === "gage") && item.unit === undefined);
  if (wire && Number.isInteger(item.value)) {
    state(note, SIZE, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  const { plain } = note;
  const numbered = plain.slice(Math.max(0, item.from - 1), item.to).startsWith("#");
  if (numbered && wordBefore(items, i, new Set(["wire", "wires", "thhn", "conductors"]), 3) >= 0) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  const wired = textAt(items, i + 1) === "wire" || textAt(items, i + 1) === "thhn";
  // "wire is #6"
  const hash = textAt(items, i - 1) === "#" && item.unit === undefined;
  if (hash && wordBefore(items, i, new Set(["wire", "wires", "conductor", "conductors"]), 4) >= 0) {
    state(note, SIZE, [i - 1, i + 1], { kind: "note", about: "size" });
    return true;
  }
  // "pulled new wire, 2 conductor 18"
  const behind = /^(?:conductors?|cond|wire|cable|stranded)$/.test(textAt(items, i - 1));
  if (behind && gauges.has(item.value) && item.unit === undefined && drawn.test(plain)) {
    state(note, SIZE, [i, i + 1], { kind: "note", about: "size" });
    return true;
  }
  if (item.unit === undefined && wired) {
    state(note, SIZE, [i, i + 2], { kind: "note", about: "size" });
    return true;
  }
  return false;
}
