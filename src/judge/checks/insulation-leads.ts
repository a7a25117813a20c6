import type { Reading } from "../../model.ts";
import { halvingFactor, thermosettingFactor } from "../../physics/insulation.ts";
import { beside } from "../near.ts";
import { hasPoint, isBound, numberOf, ofQuantity, setsOf } from "../pick.ts";
import { perScene, type Scene } from "../scene.ts";
import { ohmWords } from "../words.ts";

/** One compressor's leads to ground, at one minute. */
export interface Leads {
  readonly about: string;
  readonly lowestOhm: number;
  readonly highestOhm: number;
  /** the lowest is only a lower bound */
  readonly bound: boolean;
  readonly count: number;
  /** Cel, of the winding */
  readonly windingCel?: number;
  readonly testV?: number;
}

/** "it was 2 gig at startup": an earlier value, told beside today's. */
export function isSaidOfBefore(scene: Scene, reading: Reading): boolean {
  if (!maySpeakOfBefore(scene)) return false;
  return /\bit was\b|used to (?:be|read|meg)|originally|at (?:start-?up|commissioning)|when (?:it was )?new|last (?:year|spring|summer|fall|winter|time|visit)/.test(
    beside(scene, reading, [16, 20]),
  );
}

/** "fans and the wiring with nothing on it, both over 550": filled in from the test before, of other things. */
function isOfWiring(scene: Scene, reading: Reading): boolean {
  if (!reading.assumed.includes("quantity")) return false;
  return /\b(?:wiring|cable|conductors?|harness|fans?|heaters?|ipm|(?:drive|board|inverter|module) side)\b/.test(
    beside(scene, reading, [wiringAhead, 0]),
  );
}

/** Letters before a figure that may name what it is of. */
const wiringAhead = 60;

/** One look at all words spares a look about every reading. */
const maySpeakOfBefore: (scene: Scene) => boolean = perScene(
  (scene) =>
    scene.notes.some(({ text }) => text === undefined) ||
    /it was|used to |originally|at (?:start|commissioning)|when |last /.test(scene.words),
);

/** Readings to ground, by the insulation tester or the ohmmeter. */
export function toGround(scene: Scene): Reading[] {
  const megohms = ofQuantity(scene.readings, "insulation_resistance").filter(
    (one) =>
      (one.points === undefined || hasPoint(one, "ground")) &&
      !isSaidOfBefore(scene, one) &&
      !isOfWiring(scene, one),
  );
  const ohms = ofQuantity(scene.readings, "winding_resistance", "resistance").filter(
    (one) =>
      one.over_range !== true &&
      (hasPoint(one, "ground") || /^[\d.]+ ?(?:each |all )?meg/.test(beside(scene, one, [0, 9]))),
  );
  return [...megohms, ...ohms];
}

/** A retest that climbs by more, once warmed or dried, decides. Common practice, no source. */
const climbs = 3;

/**
 * Of several tests the lowest counts; where the winding was warmed or dried between them, the
 * highest: what climbed was refrigerant or water.
 */
export function decisiveLeads(
  about: string,
  readings: readonly Reading[],
  scene: Scene,
): Leads | undefined {
  const oneMinute = readings.filter((one) => one.after_s === undefined || isOneMinute(one.after_s));
  const used = oneMinute.length > 0 ? oneMinute : readings;
  const all = leadsOf(about, used, scene);
  const tests = setsOf(scene.notes, used)
    .flatMap((set) => leadsOf(about, set, scene) ?? [])
    .sort((a, b) => a.lowestOhm - b.lowestOhm);
  const low = tests[0];
  const high = tests[tests.length - 1];
  if (low === undefined || high === undefined || all === undefined) return all;
  if (isWiringAside(low, high, scene)) return high;
  const warmed =
    /heat(?:ers?)? (?:was |were |has been |have been |back )?on|warm(?:ed)? (?:it|up)|dried|hours? later/.test(
      scene.words,
    );
  const asMany = high.count >= Math.min(low.count, fewLeads);
  if (warmed && asMany && high.lowestOhm > climbs * low.lowestOhm) return high;
  return repeated(about, used, scene) ?? all;
}

/** A full test that was done again, as told, with the winding's temperature: the repeat stands. */
function repeated(about: string, used: readonly Reading[], scene: Scene): Leads | undefined {
  const holds = scene.notes.filter((note) => note.readings.some((one) => used.includes(one)));
  const last = holds.at(-1);
  if (last === undefined || holds.length < 2 || !again.test(last.text ?? "")) return undefined;
  const own = used.filter((one) => last.readings.includes(one));
  return own.length < fewLeads ? undefined : leadsOf(about, own, scene);
}

/** Joined leads read alike: two of them stand for a test. */
const fewLeads = 2;
const again = /\b(?:again|repeat\w*|re-?test\w*|re-?megg?\w*|second (?:test|time)|now)\b/i;

/** The test that held wiring, where one without it read higher. */
export function withWiring(
  about: string,
  readings: readonly Reading[],
  scene: Scene,
): Leads | undefined {
  const tests = setsOf(scene.notes, readings)
    .flatMap((set) => leadsOf(about, set, scene) ?? [])
    .sort((a, b) => a.lowestOhm - b.lowestOhm);
  const [low, high] = [tests[0], tests[tests.length - 1]];
  if (low === undefined || high === undefined || low === high) return undefined;
  if (!high.bound && high.lowestOhm < leastMore * low.lowestOhm) return undefined;
  return isWiringAside(low, high, scene) ? low : undefined;
}

/** How many times as much the winding alone reads at least, where its wiring leaks. Our choice, no source. */
const leastMore = 2;

/** The lower test held wiring that the higher one had off: the lower tells of the wiring. */
function isWiringAside(low: Leads, high: Leads, scene: Scene): boolean {
  const wordsOf = (ohm: number) =>
    scene.notes
      .filter((note) => note.readings.some((one) => numberOf(one) === ohm))
      .map((note) => note.text ?? "")
      .join(" ");
  return off.test(wordsOf(high.lowestOhm)) && !off.test(wordsOf(low.lowestOhm));
}

const off =
  /at the (?:pins|compressor|comp)\b|(?:leads?|wires?|cable|plug) (?:is |are )?(?:off|pulled|lifted)|(?:pulled|took|taking|lifting|pulling) (?:off )?(?:the |its |both |all )?(?:\w+ )?(?:leads?|wires?|cable|plug)\b|lifted|unplugged/i;

const machinery = "(?:inverter|drive|vfd|board|module|contactor|starter|panel)";
const wired = new RegExp(
  [
    String.raw`leads? (?:still )?(?:landed|connected|on\b)|still (?:landed|wired|connected)`,
    String.raw`\b(?:hooked|plugged|wired|connected|landed)(?: up)?(?: in)? ?(?:to|into|on) (?:the |its )?(?:\w+ )?${machinery}\b`,
    String.raw`\bmegg?\w*\b[^.;]{0,24}\b(?:from|at|through) (?:the )?${machinery}\b`,
    String.raw`\b(?:did ?n'?t|have ?n'?t|not|without) (?:un|dis)?(?:pull|lift|connect|plug|take|tak)\w*\b[^.;]{0,16}\b(?:plugs?|leads?|wires?|it|comp\w*|harness)\b`,
  ].join("|"),
  "i",
);
const notOff = /\b(?:not|never|without|\w+n'?t)(?: been| yet)? (?:lifted|unplugged|pulled|off)\b/gi;

/** The test went through wiring, a contactor or a drive that was never taken off: they lie in parallel. */
export const isThroughWiring: (scene: Scene) => boolean = perScene((scene) => {
  const words = scene.words.replace(notOff, "not off");
  const apart = words.replace(/not off/g, "");
  const said = wired.test(words) || /\bnot off\b/.test(words);
  return said && !off.test(apart) && !/\b(?:dis|un)connected\b/.test(apart);
});

function leadsOf(about: string, all: readonly Reading[], scene: Scene): Leads | undefined {
  const values = all.flatMap((one) => numberOf(one) ?? (isBound(one) ? Infinity : []));
  if (values.length === 0) return;
  const lowestOhm = Math.min(...values);
  const lowest = all.find((one) => (numberOf(one) ?? Infinity) === lowestOhm);
  const windingCel = windingCelOf(all, scene);
  const testV = all.find((one) => one.test_voltage !== undefined)?.test_voltage;
  return {
    about,
    lowestOhm,
    highestOhm: Math.max(...values),
    bound: lowest === undefined || isBound(lowest),
    count: values.length,
    ...(windingCel === undefined ? {} : { windingCel }),
    ...(testV === undefined ? {} : { testV }),
  };
}

/** s; the value that counts is read at 60 s. Source: IEEE 43-2013, 5.2. */
function isOneMinute(afterS: number): boolean {
  return afterS >= 45 && afterS <= 90;
}

function windingCelOf(readings: readonly Reading[], scene: Scene): number | undefined {
  const own = readings.find((one) => one.temperature !== undefined)?.temperature;
  if (own !== undefined) return own;
  const shell = ofQuantity(scene.readings, "temperature").find(
    (one) =>
      one.at === "shell" ||
      /winding|shell|motor|dome/.test(beside(scene, one, [18, 12])) ||
      /\b(?:stator|winding) (?:sensor|probe|rtd|thermistor)\b/.test(beside(scene, one, [30, 0])),
  );
  return shell === undefined ? undefined : numberOf(shell);
}

export function highestWords(leads: Leads): string {
  return Number.isFinite(leads.highestOhm) ? ohmWords(leads.highestOhm) : "over range";
}

export function lowestWords(leads: Leads): string {
  if (!Number.isFinite(leads.lowestOhm)) return "over range";
  return `${leads.bound ? "more than " : ""}${ohmWords(leads.lowestOhm)}`;
}

export interface Corrected {
  readonly values: Readonly<Record<string, number>>;
  readonly lowOhm: number;
  readonly highOhm: number;
}

/** The lowest lead at 40 C by both rules; without a temperature as it was read. */
export function corrected(leads: Leads): Corrected {
  const { lowestOhm, windingCel } = leads;
  if (windingCel === undefined || !Number.isFinite(lowestOhm))
    return { values: {}, lowOhm: lowestOhm, highOhm: lowestOhm };
  const halving = lowestOhm * halvingFactor(windingCel);
  const factor = thermosettingFactor(windingCel);
  if (factor === undefined)
    return {
      values: { at_40C_Ohm: halving },
      lowOhm: Math.min(halving, lowestOhm),
      highOhm: Math.max(halving, lowestOhm),
    };
  const flat = lowestOhm * factor;
  return {
    values: { at_40C_Ohm: halving, at_40C_thermosetting_Ohm: flat },
    lowOhm: Math.min(halving, flat),
    highOhm: Math.max(halving, flat),
  };
}
