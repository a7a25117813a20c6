import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { tellsDrops } from "./drops-told.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import type { Setting } from "./settle.ts";
import { signIndex } from "./signs.ts";
import { testerVolts } from "./tester-volts.ts";

/** What the words of a message say about the test in hand. */
interface Words {
  insulation: boolean;
  winding: boolean;
  resistance: boolean;
  component: boolean;
  leads: boolean;
  diode: boolean;
  vacuum: boolean;
  ground: boolean;
  rails: boolean;
  pipes: boolean;
  capacitor: boolean;
}

const isolation = signIndex("do:vacuum_isolated");

/** Words beside which "35 m" is a length. */
const pipeWords: ReadonlySet<string> = new Set([
  "pipe",
  "pipes",
  "piping",
  "pipework",
  "lineset",
  "copper",
  "tubing",
]);

function lookAtPoints(words: Words, item: Item): void {
  for (const points of item.points ?? [])
    for (const point of points) {
      if (point === "ground") words.ground = true;
      else if (point.startsWith("DC")) words.rails = true;
    }
}

/** "500 V test": nothing but insulation is tested at such a voltage. */
function isTestVoltage({ kind, unit, value }: Item): boolean {
  return (
    kind === itemKind.number &&
    unit?.dimension === "voltage" &&
    testerVolts.has(value * unit.factor)
  );
}

/** "OL at 500 volts": what has no end at a tester's voltage was tested by one. */
function overAt(items: readonly Item[], at: number): boolean {
  const behind = items.slice(at + 1, at + 6);
  const volts = behind.findIndex((item) => isTestVoltage(item));
  return volts > 0 && behind[volts - 1]?.text === "at";
}

/** "u-v .45 fwd, OL rev", "U to V .45 one way": only a junction is told by its way. */
function bothWays(items: readonly Item[], at: number): boolean {
  const text = items[at]?.text ?? "";
  const way = text === "way" && /^(?:one|1|other|both)$/.test(items[at - 1]?.text ?? "");
  const told = way || /^(?:fwd|rev|forward|reverse)$/.test(text);
  return (
    told &&
    items.some((item) => item.points?.some((one) => /^(?:[UVW]|DC[+-])$/.test(one[0] ?? "")))
  );
}

/** "ohmed .8 .8 .8 phase to phase": what lies between phases of a motor is its winding. */
function phaseToPhase(items: readonly Item[], at: number): boolean {
  const first = items[at]?.text ?? "";
  if (!first.startsWith("ph") && !first.startsWith("leg")) return false;
  const said = items.slice(at, at + 3).map(({ text }) => text);
  if (!/^(?:phase|ph|leg) to (?:phase|ph|leg)$/.test(said.join(" "))) return false;
  return items.some(({ text, label }) => /^ohm/.test(text) || label?.quantity === "resistance");
}

const meters: ReadonlySet<string> = new Set([
  "meter",
  "ohmmeter",
  "bridge",
  "milliohmmeter",
  "clip",
  "clips",
  "leads",
  "probes",
]);

/** "4 wire meter: 0.702 0.488 0.699", "4 wire at the stubs": whoever measures so measures windings. */
function fourWire(items: readonly Item[], at: number): boolean {
  const text = items[at]?.text ?? "";
  const place = /^(?:at|on|across) (?:the )?(?:stubs?|pins?|terminals?|plate|studs?|comp\w*)\b/;
  if (/^wire$/.test(text) && /^(?:4|four)$/.test(items[at - 1]?.text ?? ""))
    return place.test(wordsFrom(items, at + 1, at + 4));
  if (!meters.has(text)) return false;
  const before = wordsFrom(items, at - 3, at);
  return /\b(?:4|four)[ -]*wire$|\b(?:milli|micro)[ -]*ohm$|\blow[ -]*ohm$|\bmilliohm$|\bkelvin$/.test(
    before,
  );
}

/** "red on N: U .43", "black on DC+": the meter's leads are named where a bridge is tried by its diodes. */
function probesOnRail(items: readonly Item[], at: number): boolean {
  const lead = items[at]?.text;
  if ((lead !== "red" && lead !== "black") || items[at + 1]?.text !== "on") return false;
  const rail = items.slice(at + 2, at + 5);
  return rail.some(
    ({ text, points }) =>
      /^(?:n|p|minus|plus|negative|positive)$/.test(text) ||
      points?.some(([point = ""]) => point.startsWith("DC") || point === "N") === true,
  );
}

/** "meg ohms with the can at 75": the unit alone names the test. */
function megsNamed({ kind, text, unit }: Item): boolean {
  return kind === itemKind.unit && /^meg/.test(text) && (unit?.factor ?? 0) >= 1e6;
}

/** "2.2g on each lead": nobody weighs leads. */
function gigsOfLead(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.kind !== itemKind.number || item.unit?.figure !== "gigohm") return false;
  return items.slice(at + 1, at + 6).some(({ text }) => /^(?:leads?|windings?)$/.test(text));
}

function wordsOf(items: readonly Item[]): Words {
  const words: Words = {
    insulation: false,
    winding: false,
    resistance: false,
    component: false,
    leads: false,
    diode: false,
    vacuum: false,
    ground: false,
    rails: false,
    pipes: false,
    capacitor: false,
  };
  words.winding = items.some((_, at) => fourWire(items, at));
  if (!words.winding && tellsDrops(items)) words.diode = true;
  for (const [at, item] of items.entries()) {
    if (isTestVoltage(item) && items[at + 1]?.text === "test") words.insulation = true;
    if (item.text === "timed" && items[at + 1]?.text === "test") words.insulation = true;
    if (item.kind === itemKind.ground) words.ground = true;
    else if (item.kind === itemKind.points) lookAtPoints(words, item);
    const line = item.label?.place === "liquid" || item.label?.place === "suction";
    if (line || pipeWords.has(item.text)) words.pipes = true;
    if (bothWays(items, at)) words.diode = true;
    if (item.kind === itemKind.over && overAt(items, at)) words.insulation = true;
    if (gigsOfLead(items, at)) words.insulation = true;
    if (phaseToPhase(items, at)) words.winding = true;
    if (probesOnRail(items, at)) words.diode = true;
    if (megsNamed(item)) words.insulation = true;
    if (item.text === "leads") words.leads = true;
    else if (item.text === "tester" || item.text === "megger") words.insulation = true;
    const quantity = item.label?.quantity;
    if (item.label?.component === true && quantity === "resistance") words.component = true;
    if (quantity === "insulation_resistance" || quantity === "polarization_index")
      words.insulation = true;
    else if (quantity === "winding_resistance") words.winding = true;
    else if (quantity === "resistance") words.resistance = true;
    else if (quantity === "diode_drop") words.diode = true;
    else if (quantity === "capacitance") words.capacitor = true;
    else if (
      quantity === "vacuum" ||
      /^(?:vac|pump|evac|evacuated|evacuating|evacuation)$/.test(item.text) ||
      item.signs?.includes(isolation) === true
    )
      words.vacuum = true;
    // "29 in hg then 480 mic"
    if (item.unit?.figure === "inHg") words.vacuum = true;
  }
  return words;
}

/** Which units the values have. */
function unitsOf(drafts: readonly Draft[]): {
  mega: boolean;
  ohms: boolean;
  volts: boolean;
  onlyTests: boolean;
  over: boolean;
} {
  const seen = { mega: false, ohms: false, volts: false, onlyTests: true, over: false };
  for (const draft of drafts) {
    if (draft.over) seen.over = true;
    const { unit } = draft;
    if (unit === undefined || draft.zero) continue;
    if (unit.dimension === "resistance") {
      if (unit.factor >= 1e6 && draft.letter !== "g") seen.mega = true;
      else if (unit.factor <= 1) seen.ohms = true;
    } else if (unit.dimension === "voltage") {
      seen.volts = true;
      if (!testerVolts.has(draft.value * unit.factor)) seen.onlyTests = false;
    }
  }
  return seen;
}

/** "meg test on comp 2 at 1000v", then "2.2g": a test is in hand, and nobody weighs gas in. */
function testAnnounced(context: Context, last: string | undefined): boolean {
  return context.test !== undefined && context.action === undefined && last === undefined;
}

/** "9.5mm line 22m", "0,03 kg per m, 26 m": in a metric house a line has metres, and so it has beside tubes of so many mm. */
function metres(items: readonly Item[], context: Context): boolean {
  const measured = items.some(
    ({ unit, owner }) =>
      unit?.figure === "ft" || unit?.figure === "mm" || owner === "<liquid size> <gas size>",
  );
  const per = items.some(
    ({ text }, at) =>
      /^(?:per|\/)$/.test(text) && /^(?:m|meter|metre)$/.test(items[at + 1]?.text ?? ""),
  );
  if (context.units !== "si" && !measured) return false;
  return per || items.some(({ text }) => /^(?:lines?|run|height|rise|lift)$/.test(text));
}

/** How many bare figures or ohms stand in a row, nothing but commas and strokes between them. */
function longestRow(items: readonly Item[]): number {
  let row: Item[] = [];
  let best = 0;
  for (const item of items) {
    const ohms = item.kind === itemKind.number && (item.unit?.factor ?? 1) <= 1;
    if (ohms || item.kind === itemKind.over) row.push(item);
    else if (!/^(?:[,/&]|and|n)$/.test(item.text)) row = [];
    const figures = row.filter(
      ({ kind, owner }) => kind === itemKind.number && owner === undefined,
    );
    best = Math.max(best, figures.length > 1 ? row.length : figures.length);
  }
  return best;
}

/** Ohms by themselves are anything's: a winding's where pins or a motor are named, in a row, or behind another winding. */
function ofMotor(items: readonly Item[], last: string | undefined): boolean {
  if (/^(?:winding|insulation)_resistance$/.test(last ?? "")) return true;
  if (longestRow(items) >= 3) return true;
  return items.some(
    ({ kind, label, text }) =>
      kind === itemKind.points ||
      label?.thing === "compressor" ||
      /^(?:motor|motors|comp|compressor|blower|fan|fans|leads?|legs?|pins?|phase|phases|wound|terminals?|uvw)$/.test(
        text,
      ),
  );
}

/** Which tests the message, or else the one before it, is about. */
export function settingOf(
  items: readonly Item[],
  drafts: readonly Draft[],
  context: Context,
): Setting {
  const words = wordsOf(items);
  const { mega, ohms, volts, onlyTests, over } = unitsOf(drafts);
  const last = context.testing ?? context.readings[context.readings.length - 1]?.quantity;
  const silent = !mega && !ohms && (!volts || onlyTests);
  return {
    insulation:
      mega ||
      words.insulation ||
      (over && words.leads && !ohms) ||
      (words.ground && (!volts || over || onlyTests)) ||
      (silent && (last === "insulation_resistance" || testAnnounced(context, last))),
    winding:
      words.winding ||
      (ohms && !words.resistance && ofMotor(items, last)) ||
      (silent && last === "winding_resistance"),
    vacuum: words.vacuum || last === "vacuum",
    capacitor: words.capacitor || last === "capacitance",
    component: words.component,
    compressor: items.some(({ subject }) => /^compressor\b/.test(subject ?? "")),
    pipes:
      (words.pipes || metres(items, context)) && !words.insulation && !words.ground && !words.leads,
    diode: words.diode || (words.rails && !mega) || (silent && last === "diode_drop"),
  };
}
