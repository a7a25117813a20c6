import { type Item, isOneWord, itemKind } from "../item.ts";
import { isNitrogen } from "../nitrogen-name.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, textAt } from "./near.ts";
import { changedBy, isLost, makesTotal, withTime } from "./told-amount.ts";

const short: ReadonlySet<string> = new Set([
  "low",
  "short",
  "light",
  "heavy",
  "over",
  "overcharged",
  "undercharged",
  "shy",
]);
const moved: ReadonlySet<string> = new Set([
  "lost",
  "gained",
  "dropped",
  "rose",
  "fell",
  "loses",
  "drops",
  "drop",
  "loss",
]);

/** Degrees at most that "rose 4 degrees" tells the change of: more is where it stands; common practice, no source. */
const mostChange = 30;

const rate =
  /^(?:at a time|each time|a pop|(?:a|per) (?:hour|time|month|year|ft|foot|inch|day|week|meter|metre)|(?:each|per) m\b|\/ ?(?:ft|foot|m|meter|metre|month|yr|year|h|hr)\b)/;

const marks =
  /^(?:sp|setpoint|set|target|normal|spec|design|nameplate|usual|plate|rated|max|expected|stat|where|what)$/;

const pace =
  /^(?:an?|per|every) (?:minute|min|second|sec|hour|hr)\b(?! (?:later|after|ago|in|into|apart)\b)/;
const paced: ReadonlySet<string> = new Set(["pressure", "low_pressure", "temperature"]);

/** "680 microns and dropping about fifty a minute": how fast, not where it stands. */
function howFast(note: Note, item: Item, i: number): boolean {
  const { unit } = item;
  if (unit !== undefined && !paced.has(unit.dimension)) return false;
  const before = note.items.slice(Math.max(0, i - 3), i);
  if (!before.some(({ text }) => /^(?:drop|ris|climb|fall|los|gain|leak|creep|mov|com)/.test(text)))
    return false;
  return pace.test(note.plain.slice(item.to, item.to + 24).trimStart());
}

/** "10 deg lower", "30 psi higher than normal", "box 4 over sp": beside another figure, none of its own. */
function offBy(items: readonly Item[], i: number): boolean {
  const next = textAt(items, i + 1);
  const after = textAt(items, i + 2);
  const named =
    after === "the" || after === "its" || after === "than" ? textAt(items, i + 3) : after;
  const side =
    /^(?:over|above|below|under|higher|lower|off|warmer|colder|hotter|cooler|more|less)$/;
  if (!side.test(next)) return false;
  if (marks.test(named)) return true;
  // "12 F colder than its inlet": a difference that was measured
  if (after === "than" && /^(?:colder|warmer|hotter|cooler)$/.test(next)) return false;
  if (after === "than" && items[i + 3]?.kind !== itemKind.number) return true;
  const unit = items[i]?.unit?.dimension;
  const sized = unit === "temperature" || unit === "pressure";
  if (unit === "temperature" && after === "" && next === "off") return true;
  return sized && after === "" && !/^(?:over|above|below|under|off|more|less)$/.test(next);
}

/** "all zones within 1 F of each other": how near they are, not where they stand. */
function nearEachOther(items: readonly Item[], i: number): boolean {
  if (items[i]?.unit?.dimension === "time") return false;
  const before = textAt(items, i - 1);
  if (before === "within") return true;
  // "within half an amp", "within about 2 volts"
  return /^(?:about|a|an|half|roughly)$/.test(before) && textAt(items, i - 2) === "within";
}

/** "off by about a pound", "low by 2 lb", "3 psi off" said of a gauge: by how much. */
function offByIt(items: readonly Item[], i: number): boolean {
  const step = /^(?:about|like|only|maybe|around|half|a|an)$/;
  let at = i - 1;
  while (step.test(textAt(items, at))) at--;
  if (textAt(items, at) === "by")
    return /^(?:off|low|high|over|under|short|up|down|light|heavy|out|overcharged|undercharged)$/.test(
      textAt(items, at - 1),
    );
  const gauge = /^(?:reads|reading|gauge|clamp|meter|sensor)$/.test(textAt(items, at));
  return gauge && textAt(items, i + 1) === "off" && textAt(items, i + 2) === "";
}

/** "add 4 to everything", "take 2 off all of those": what is to be added to figures, no gas. */
function toAll(items: readonly Item[], i: number): boolean {
  if (items[i]?.unit?.dimension === "mass") return false;
  if (!/^(?:add|subtract|take|knock)$/.test(textAt(items, i - 1))) return false;
  const joint = textAt(items, i + 1);
  const all = textAt(items, i + 2);
  return (
    /^(?:to|from|off|on)$/.test(joint) &&
    (/^(?:every\w*|those|them|these|each|all|any)$/.test(all) ||
      ((items[i + 2]?.roles ?? 0) & (role.all | role.each)) !== 0)
  );
}

/** "was low 2lb", "up 60 microns": what it lacked, what it rose by. */
function byHowMuch(note: Note, i: number): boolean {
  const { items } = note;
  const dimension = items[i]?.unit?.dimension;
  if (offByIt(items, i)) return true;
  const [first, second] = [textAt(items, i - 2), textAt(items, i - 1)];
  if (dimension === "mass")
    return (
      // "for an hour lost two pounds"
      /^(?:lost|loses|gained)$/.test(second) ||
      // "low side 75 pounds": a gauge
      (/^(?:low|short|light)$/.test(second) &&
        !/\bside(?:'?s)?$/.test(note.plain.slice(0, items[i - 1]?.to)) &&
        /^(?:|was|is|its|were|been|still|unit|system|charge|it)$/.test(first))
    );
  if (dimension !== "pressure" && dimension !== "low_pressure") return false;
  if (((items[i - 1]?.roles ?? 0) & role.to) !== 0) return false;
  const begins =
    i < 2 ||
    items[i - 2]?.label?.place !== undefined ||
    /^(?:,|\.|is|its|was|still|only|went|gone)$/.test(first);
  return /^(?:up|down)$/.test(second) && begins && textAt(items, i + 1) !== "to";
}

/** "38 bar n2 24h drop 0.2": by how much, beside the pressure itself. */
function dropped(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.unit !== undefined || !/^(?:drop|loss|lost|rise|rose)$/.test(textAt(items, i - 1)))
    return false;
  if (textAt(items, i + 1) === "to") return false;
  const gas = items.some(isNitrogen);
  return items.some(
    (other, at) =>
      at < i &&
      other.kind === itemKind.number &&
      (other.unit === undefined
        ? gas && other.value >= 20
        : other.unit.dimension === "pressure" || other.unit.dimension === "low_pressure") &&
      (item?.value ?? 0) < other.value / 5,
  );
}

/** "head drops 15 every time fan 2 kicks on": by how much it moves, not where it stands. */
function eachTime(items: readonly Item[], i: number): boolean {
  const moves = /^(?:drops?|dropped|falls|fell|rises|rose|jumps|jumped|climbs|bounces|swings)$/;
  const before = items[i - 1];
  // "drops to 19" is where it stands
  if (before === undefined || !moves.test(before.text)) return false;
  if (!isOneWord(before)) return false;
  if ((before.roles & role.to) !== 0) return false;
  return /^(?:every|each|when|whenever|as|if)$/.test(textAt(items, i + 1));
}

/** "3 lbs low", "lost 2 psi overnight", "total now 9 lb" behind another mass: by how much, not how much. */
export const differences: Rule = {
  name: "<amount> low|lost",
  heads: [
    ...short,
    ...moved,
    "up",
    "down",
    "above",
    "below",
    "under",
    "higher",
    "lower",
    "warmer",
    "colder",
    "hotter",
    "cooler",
    "more",
    "less",
    "off",
    "within",
    "falls",
    "rise",
    "rises",
    "jumps",
    "jumped",
    "climbs",
    "bounces",
    "swings",
    "total",
    "missing",
    "leaked",
    "totals",
    "makes",
    "brings",
    "puts",
    "thats",
    "climbed",
    "gained",
    "picked",
    "came",
    "went",
    "crept",
    "increased",
    "decreased",
    "rose",
    "fell",
    "per",
    "a",
    "an",
    "every",
    "add",
    "subtract",
    "take",
    "by",
    "at",
    "/",
  ].join("|"),
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (freeNumber(item) && (dropped(items, i) || eachTime(items, i) || toAll(items, i))) {
        state(note, differences.name, [i - 1, i + 1], { kind: "note", about: "difference" });
        return;
      }
      if (freeNumber(item) && changedBy(note, item, i)) {
        state(note, differences.name, [i, withTime(items, i)], {
          kind: "note",
          about: "difference",
        });
        return;
      }
      if (freeNumber(item) && nearEachOther(items, i)) {
        const end = textAt(items, i + 1) === "of" && items[i + 2] !== undefined ? i + 3 : i + 1;
        state(note, differences.name, [i - 1, end], { kind: "note", about: "difference" });
        return;
      }
      if (freeNumber(item) && howFast(note, item, i)) {
        const end = items[i + 1]?.unit?.dimension === "time" ? i + 2 : i + 1;
        state(note, differences.name, [i, end], { kind: "note", about: "rate" });
        return;
      }
      if (freeNumber(item) && offBy(items, i)) {
        state(note, differences.name, [i, i + 2], { kind: "note", about: "difference" });
        return;
      }
      if (!freeNumber(item) || item.unit === undefined) return;
      const { dimension } = item.unit;
      if (byHowMuch(note, i)) {
        state(note, differences.name, [i - 1, i + 1], { kind: "note", about: "difference" });
        return;
      }
      const before = textAt(items, i - 1);
      const grams = note.plain.slice(item.unitFrom, item.to) === "g";
      if (
        (dimension === "mass" || grams) &&
        short.has(textAt(items, i + 1)) &&
        // "22 pounds low temp 11"
        !/^(?:side|temp|pressure|stage|fan|speed)$/.test(textAt(items, i + 2)) &&
        // "65# low side": a gauge's
        !note.plain.slice(0, items[i + 1]?.to).endsWith(" side")
      )
        state(note, differences.name, [i, i + 2], { kind: "note", about: "difference" });
      else if (dimension === "mass" && isLost(items, i))
        state(note, differences.name, [i, i + 2], { kind: "note", about: "difference" });
      else if (
        (dimension === "pressure" ||
          dimension === "low_pressure" ||
          (dimension === "temperature" && item.value <= mostChange)) &&
        !note.plain.slice(0, item.from).trimEnd().endsWith(" to") &&
        textAt(items, i + 1) !== "to" &&
        moved.has(
          before === "of" || before === "about" || before === "only"
            ? textAt(items, i - 2)
            : before,
        )
      )
        state(note, differences.name, [i, i + 1], { kind: "note", about: "difference" });
      else if (
        (dimension === "mass" || note.plain.charAt(item.unitFrom) === "g") &&
        rate.test(note.plain.slice(item.to, item.to + 12).trimStart())
      )
        state(note, differences.name, [i, i + 1], { kind: "note", about: "rate" });
      else if (dimension === "mass" && makesTotal(note, i))
        state(note, differences.name, [i, i + 1], { kind: "note", about: "total" });
      else if (
        dimension === "mass" &&
        /^(?:total|totals|totaling)$/.test(
          textAt(items, i - 1) === "now" ||
            textAt(items, i - 1) === "is" ||
            textAt(items, i - 1) === "of"
            ? textAt(items, i - 2)
            : before,
        ) &&
        items.some((other, at) => at < i && other.unit?.dimension === "mass")
      )
        state(note, differences.name, [i - 1, i + 1], { kind: "note", about: "total" });
    });
  },
};
