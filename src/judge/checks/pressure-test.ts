import type { Finding, Reading } from "../../model.ts";
import { kelvinPerFahrenheit, pascalPerPsi, zeroCelInK } from "../../physics/constants.ts";
import {
  allowedChangePa,
  compensatedDropPa,
  type HoldPoint,
  provenDropPa,
} from "../../physics/nitrogen-hold.ts";
import type { Check } from "../check.ts";
import { absolutePaOf, ambientPaAt } from "../circuit.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { filledNotes } from "../standing.ts";
import { told } from "./told.ts";

/** Pa, a hold is a test pressure, not a trickle: 4 bar. Common practice, no source. */
const leastTestPa = 400_000;

/** A nitrogen hold: what is missing once the temperature is taken out, gas law of real nitrogen. */
export const pressureTest: Check = {
  name: "pressure_test",
  examples: [
    {
      level: "good",
      notes: ["nitrogen 500 psig with pipes at 70 F, next day 489 psig with pipes at 59 F"],
    },
    {
      level: "bad",
      notes: ["nitrogen 500 psig with pipes at 70 F, next day 470 psig with pipes at 70 F"],
    },
    { level: "unknown", notes: ["nitrogen 500 psig last night, 489 psig this morning"] },
  ],
  signs: ["hold:drops", "hold:holds", "leak_traces:leak_found", "leak_traces:oil_stain"],
  judge: (scene) => [...holdFindings(scene), ...told(scene, "pressure_test")],
};

function holdFindings(scene: Scene): Finding[] {
  if (!isTest(scene)) return [];
  const points = holdOf(scene);
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined) return [];
  if (last === undefined || first === last) return remark(scene);
  return [compare(first, last, scene)];
}

function isTest(scene: Scene): boolean {
  if (scene.done.some((one) => one.action === "nitrogen_in")) return true;
  return (
    /\b(nitrogen|n2|ofn|pressure test|standing test)\b/.test(scene.words) || isOvernight(scene)
  );
}

/** "600 psig last night, 568 this morning": two placeless pressures that no running circuit was read at. */
function isOvernight(scene: Scene): boolean {
  return (
    /\b(?:last night|yesterday|overnight)\b[^.]*\b(?:this morning|today)\b/.test(scene.words) &&
    !/\b(?:suction|head|liquid|discharge|micron)/.test(scene.words) &&
    holdOf(scene).length > 1
  );
}

interface Held {
  readonly pa: number;
  readonly cel?: number;
  /** smallest step that the number as said shows */
  readonly stepPa: number;
  readonly stepK: number;
}

/** Pressures of the test in order, each with the temperature said nearest after it in its note. */
function holdOf(scene: Scene): Held[] {
  const ambientPa = ambientPaAt(scene);
  return wholeNotes(scene).flatMap((readings) => {
    const pressures = readings.filter((one) => isHoldPressure(one));
    return pressures.flatMap((one, at) => {
      const pa = absolutePaOf(one, ambientPa);
      if (pa === undefined || pa < leastTestPa) return [];
      const pipe = temperatureFor(one, pressures[at + 1], readings, pressures.length === 1);
      const cel = pipe === undefined ? undefined : numberOf(pipe);
      const stepK = pipe === undefined ? 0 : stepOf(pipe);
      return [{ pa, stepPa: stepOf(one), stepK, ...(cel === undefined ? {} : { cel }) }];
    });
  });
}

/** Readings by message: filling in nitrogen cuts its note in two, but its pipe's temperature belongs to it. */
function wholeNotes(scene: Scene): (readonly Reading[])[] {
  const whole: { text: string | undefined; readings: readonly Reading[] }[] = [];
  for (const note of scene.notes) {
    const last = whole.at(-1);
    if (last !== undefined && note.text !== undefined && last.text === note.text)
      last.readings = [...last.readings, ...note.readings];
    else whole.push({ text: note.text, readings: note.readings });
  }
  return whole.map((one) => one.readings);
}

function isHoldPressure(reading: Reading): boolean {
  const running = reading.at !== undefined;
  return reading.quantity === "pressure" && !running && reading.rating === undefined;
}

/** The temperature between this pressure and the next; the note's only one where it stands before. */
function temperatureFor(
  pressure: Reading,
  next: Reading | undefined,
  readings: readonly Reading[],
  only: boolean,
): Reading | undefined {
  const temperatures = readings.filter((one) => one.quantity === "temperature");
  const from = startOf(pressure);
  const to = next === undefined ? Number.POSITIVE_INFINITY : startOf(next);
  const between = temperatures.find((one) => startOf(one) > from && startOf(one) < to);
  return between ?? (only ? temperatures[0] : ofBoth(temperatures));
}

/** "both at 70 F pipe": one temperature, said for each of them. */
function ofBoth(temperatures: readonly Reading[]): Reading | undefined {
  const [first] = temperatures;
  const same = temperatures.every((one) => first !== undefined && startOf(one) === startOf(first));
  return same && temperatures.length > 1 ? first : undefined;
}

function startOf(reading: Reading): number {
  return reading.spans[0]?.[0] ?? 0;
}

/** The last digit's worth, in the canonical unit: "38.9" bar was read to a tenth, "71" F to one. */
function stepOf(reading: Reading): number {
  const decimals = reading.figure.number.split(".")[1]?.length ?? 0;
  return (unitSize[reading.figure.unit] ?? 0) * 10 ** -decimals;
}

/** Pa or K for one of the unit. */
const unitSize: Readonly<Record<string, number>> = {
  psi: pascalPerPsi,
  psig: pascalPerPsi,
  psia: pascalPerPsi,
  bar: 1e5,
  kPa: 1e3,
  MPa: 1e6,
  F: kelvinPerFahrenheit,
  C: 1,
  K: 1,
};

function compare(first: Held, last: Held, scene: Scene): Finding {
  const figures = figuresOf(scene);
  const compensated = first.cel !== undefined && last.cel !== undefined;
  const start: HoldPoint = { absolutePa: first.pa, cel: first.cel ?? last.cel ?? usualCel };
  const end: HoldPoint = {
    absolutePa: last.pa,
    cel: compensated ? (last.cel ?? usualCel) : start.cel,
  };
  const dropPa = compensatedDropPa(start, end);
  const allowedPa = allowedChangePa(first.pa, gaugeStepPa(first, last));
  if (dropPa === undefined) return outside();
  if (!compensated && Math.abs(dropPa) > allowedPa) return uncompensated(dropPa, figures);
  return finding(dropPa, provenDropPa(dropPa, uncertainPa(first, last)), allowedPa, figures);
}

/** "35 bar, then 33.4": one gauge, read as finely as it was read once. */
function gaugeStepPa(first: Held, last: Held): number {
  return Math.min(first.stepPa, last.stepPa);
}

/** What rounding can hide: half a step of each gauge reading, and of each temperature by the gas law. */
function uncertainPa(first: Held, last: Held): number {
  const paPerK = first.pa / ((first.cel ?? usualCel) + zeroCelInK);
  return (2 * gaugeStepPa(first, last) + (first.stepK + last.stepK) * paPerK) / 2;
}

/** Cel, only where both temperatures are the same or unknown, so that it cancels. */
const usualCel = 20;

function finding(dropPa: number, provenPa: number, allowedPa: number, figures: Figures): Finding {
  const leaks = provenPa > allowedPa;
  const short = !leaks && dropPa > allowedPa;
  return {
    about: "system",
    check: "pressure_test",
    level: leaks ? "bad" : short ? "watch" : "good",
    says: holdWords(dropPa, { provenPa, allowedPa }, figures),
    brief: short
      ? "a little short, hold longer"
      : leaks
        ? `${figures.gauge(dropPa)} lost, a leak`
        : "nitrogen holds",
    values: { compensated_drop_Pa: leaks ? dropPa : provenPa },
    basis: "real gas law",
    source:
      "nitrogen at constant volume, absolute values, compressibility fitted to Span et al. 2000; 2 psi, two gauge steps or half a percent: common practice, no source; of a hold that is tight the figure is the part that the readings' last digits prove",
    signs: short ? [] : [leaks ? "hold:drops" : "hold:holds"],
  };
}

function holdWords(
  dropPa: number,
  { provenPa, allowedPa }: { readonly provenPa: number; readonly allowedPa: number },
  figures: Figures,
): string {
  const allowed = figures.gauge(allowedPa);
  if (dropPa > allowedPa && provenPa <= allowedPa)
    return `${figures.gauge(dropPa)} short after the temperature is taken out, little more than what the figures' rounding hides: hold it longer and read pressure and pipe again`;
  if (dropPa > allowedPa)
    return `${figures.gauge(dropPa)} are missing after the temperature is taken out, more than the ${allowed} that gauge and weather explain: a leak`;
  if (dropPa < -allowedPa)
    return `${figures.gauge(-dropPa)} more than the temperature explains, so nothing is lost; the pipe may be warmer than its clamp`;
  return `With the temperature taken out it is within the ${allowed} that gauge and weather explain: it holds`;
}

function uncompensated(dropPa: number, figures: Figures): Finding {
  return {
    about: "system",
    check: "pressure_test",
    level: "unknown",
    says: `The gauge ${dropPa > 0 ? "fell" : "rose"} ${figures.gauge(Math.abs(dropPa))}; without the pipe's temperature at both ends no one can say whether that is weather or a leak`,
    brief: "pipe temperatures missing",
    values: {},
    basis: "real gas law",
    missing: "pipe temperature at the start and at the end",
  };
}

function outside(): Finding {
  return {
    about: "system",
    check: "pressure_test",
    level: "unknown",
    says: "Pressure or temperature lies outside what the nitrogen formula covers, so no figure",
    brief: "outside the nitrogen formula",
    values: {},
    basis: "real gas law",
    missing: "pressure to 60 bar and temperatures of -40 to 80 C",
  };
}

/** "it is dropping", without a second figure. */
function drops(scene: Scene): Finding[] {
  // a box that falls is no test that leaks
  const told = [...filledNotes(scene)].some(({ statements }) =>
    statements.some(
      (one) => one.kind === "observation" && one.observation === "dropping" && one.denied !== true,
    ),
  );
  if (!told) return [];
  return [
    {
      about: "system",
      check: "pressure_test",
      level: "watch",
      says: "The nitrogen drops, as said; a second pressure with both pipe temperatures tells a leak from a colder pipe",
      brief: "nitrogen drops, as said",
      values: {},
      basis: "as said",
      signs: ["hold:drops"],
    },
  ];
}

/** Only one pressure: what was said of it afterwards counts. */
function remark(scene: Scene): Finding[] {
  const holds =
    scene.seen.some((one) => one.observation === "holding_steady") ||
    /\b(no drop|held|holding|hasn'?t moved|didn'?t move|rock solid|no loss)\b/.test(scene.words);
  if (!holds) return drops(scene);
  return [
    {
      about: "system",
      check: "pressure_test",
      level: "good",
      says: "The nitrogen held, as said; a second reading with both pipe temperatures would put a figure to it",
      brief: "nitrogen held, as said",
      values: {},
      basis: "as said",
      signs: ["hold:holds"],
    },
  ];
}
