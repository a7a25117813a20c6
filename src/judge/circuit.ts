import type { Reading } from "../model.ts";
import { absolutePaFromGauge } from "../physics/absolute-pressure.ts";
import { ambientPaFromAltitude } from "../physics/ambient-pressure.ts";
import { standardAtmospherePa } from "../physics/constants.ts";
import { type Refrigerant, refrigerantNamed } from "../physics/refrigerant.ts";
import { saturationCel } from "../physics/saturation-temperature.ts";
import type { QuantityName } from "../quantities/list.ts";
import type { Place } from "../vocabulary.ts";
import { applicationOf, isHeating, isWaterCooled, isWaterSide } from "./application.ts";
import { clauseOf } from "./clause.ts";
import { given } from "./given.ts";
import { isAtReversingValve, noteOf } from "./near.ts";
import { isBound, numberOf } from "./pick.ts";
import { isPumpingDown } from "./pumping-down.ts";
import { perScene, type Scene } from "./scene.ts";
import { isAtRest, isNitrogen } from "./standing.ts";
import { standsStill } from "./standing-still.ts";
import { standsLevel } from "./stands-level.ts";
import { areTogether, hasMovedOn, latestPair } from "./together.ts";

/** One running refrigerant circuit as it was last read; pressures absolute. */
export interface Circuit {
  readonly about: string;
  readonly refrigerant?: Refrigerant;
  readonly ambientPa: number;
  readonly suctionPa?: number;
  readonly suctionCel?: number;
  /** at the liquid line where it was read there, else at the discharge */
  readonly highPa?: number;
  readonly highPlace?: "liquid" | "discharge";
  /** suction and high pressure that were read together */
  readonly lift?: { readonly suctionPa: number; readonly highPa: number };
  readonly liquidCel?: number;
  readonly dischargeCel?: number;
  /** dew point at the suction pressure, or the gauge's own reading of it */
  readonly evaporatingCel?: number;
  /** bubble point and dew point at the high pressure */
  readonly bubbleCel?: number;
  readonly dewCel?: number;
  /** as the technician worked it out */
  readonly saidSuperheatK?: number;
  readonly saidDischargeSuperheatK?: number;
  readonly saidSubcoolingK?: number;
  /** the same, where the pressure that it goes with stands in the same note */
  readonly besideSuperheatK?: number;
  readonly besideSubcoolingK?: number;
  /** what somebody else is said to have worked out */
  readonly toldSuperheatK?: number;
  readonly toldSubcoolingK?: number;
}

/** Air pressure at the site; sea level where the site's altitude is not known. */
export const ambientPaAt: (scene: Scene) => number = perScene(
  (scene) => ambientPaFromAltitude(scene.site.altitude_m ?? 0) ?? standardAtmospherePa,
);

/** Absolute pressure of a reading, by its own reference. */
export function absolutePaOf(reading: Reading, ambientPa: number): number | undefined {
  const value = numberOf(reading);
  if (value === undefined) return undefined;
  return reading.reference === "absolute" ? value : absolutePaFromGauge(value, ambientPa);
}

/** The refrigerant in it; undefined where it is not known or not in the tables. */
export function refrigerantOf(scene: Scene): Refrigerant | undefined {
  return scene.facts.refrigerant === undefined
    ? undefined
    : refrigerantNamed(scene.facts.refrigerant);
}

const circuitSubject = /circuit|compressor|system|stage|unit|^group |(?:low|medium) temp$/;
/** What moves water has a suction and a discharge of its own. */
const movesWater = /^(?:pump|tower|boiler)\b/;

/** The circuits that the readings speak of; one, "system", where no circuit is named. */
export const circuitsOf: (scene: Scene) => readonly Circuit[] = perScene(circuitsIn);

function circuitsIn(scene: Scene): Circuit[] {
  const gas = scene.readings.filter(
    (one) => isGas(one, scene) && !isBound(one) && isRunning(scene, one),
  );
  const named = [...new Set(gas.flatMap((one) => one.subject ?? []))].filter((one) =>
    circuitSubject.test(one),
  );
  if (named.length === 0) return gas.length === 0 ? [] : [circuitFrom("system", gas, scene)];
  return named.map((about) =>
    circuitFrom(
      about,
      gas.filter((one) => one.subject === about || (named.length === 1 && !one.subject)),
      scene,
    ),
  );
}

function isRunning(scene: Scene, reading: Reading): boolean {
  if (isAtRest(scene, reading) || isNitrogen(scene, reading)) return false;
  if (isPumpingDown(scene, reading) || standsLevel(scene, reading)) return false;
  if (standsStill(scene, reading)) return false;
  return reading.quantity !== "pressure" || !notAsItRuns.test(clauseOf(scene, reading));
}

/** A pressure while it is pumped down, or what a board believes, is not what the gauges show as it runs. */
const notAsItRuns =
  /\b(?:jump(?:s|ed)|spike[sd]?|shot up|kick(?:s|ed) up|pop(?:s|ped) up)\b.{0,24}\b(?:for a (?:second|sec|minute|moment|bit)|(?:then|and) (?:right )?(?:back|fell|dropped|came back|went back))|\b(?:pull(?:s|ed)|pump(?:s|ed)) (?:it |right |straight )?down (?:to|and)\b|\b(?:board|controller|display|transducer|screen)\b.{0,8}\b(?:says|reads|shows|thinks|sees)\b/;

const gasPlaces: readonly (Place | undefined)[] = [
  "suction",
  "discharge",
  "liquid",
  "suction_saturation",
  "discharge_saturation",
  "evaporator_out",
  "condenser_out",
];

function isGas(reading: Reading, scene: Scene): boolean {
  if (isWaterSide(scene)) return false;
  // on a chiller what leaves the evaporator or the condenser may be water
  if (/_out$/.test(reading.at ?? "") && applicationOf(scene) === "chiller") return false;
  if (reading.at === "condenser_out" && isWaterCooled(scene)) return false;
  if (movesWater.test(reading.subject ?? "")) return false;
  if (reading.quantity === "superheat" || reading.quantity === "subcooling") return true;
  const kinds: readonly QuantityName[] = ["pressure", "temperature"];
  return kinds.includes(reading.quantity) && gasPlaces.includes(reading.at);
}

function circuitFrom(about: string, gas: readonly Reading[], scene: Scene): Circuit {
  const ambientPa = ambientPaAt(scene);
  const refrigerant = refrigerantOf(scene);
  const suction = last(gas, "pressure", "suction") ?? last(gas, "pressure", "evaporator_out");
  const high = highSide(gas, scene);
  const suctionPa = paOf(suction, ambientPa);
  const highPa = paOf(high, ambientPa);
  const cel = (...at: Place[]) => numberAt(lastAt(gas, "temperature", at));
  /** a line's temperature, unless work was done between it and the pressure it goes with, or one of both has moved on */
  const beside = (pressure: Reading | undefined, line: Reading | undefined) =>
    pressure === undefined ||
    line === undefined ||
    (areTogether(scene, pressure, line) && !hasMovedOn(scene, gas, [pressure, line]))
      ? numberAt(line)
      : undefined;
  const saidSuperheat = gas.findLast((one) => one.quantity === "superheat" && !isOfDischarge(one));
  const saidSubcooling = gas.findLast((one) => one.quantity === "subcooling");
  const inNoteOf = (pressure: Reading | undefined, said: Reading | undefined) =>
    pressure !== undefined && said !== undefined && noteOf(scene, pressure) === noteOf(scene, said)
      ? numberAt(said)
      : undefined;
  const hot = last(gas, "temperature", "discharge");
  const bubbleCel = saturation(refrigerant, "bubble", highPa);
  const isLiquid = isLiquidLine(hot, bubbleCel);
  return {
    about,
    ambientPa,
    ...given({
      refrigerant,
      suctionPa,
      highPa,
      highPlace: high === undefined ? undefined : high.at === "liquid" ? "liquid" : "discharge",
      lift: liftOf(gas, scene, ambientPa),
      suctionCel: beside(suction, suctionLine(gas, scene)),
      liquidCel: beside(high, liquidLine(gas, scene) ?? (isLiquid ? hot : undefined)),
      dischargeCel: isLiquid ? undefined : beside(high, hot),
      evaporatingCel: saturation(refrigerant, "dew", suctionPa) ?? cel("suction_saturation"),
      bubbleCel: bubbleCel ?? cel("discharge_saturation"),
      dewCel: saturation(refrigerant, "dew", highPa) ?? cel("discharge_saturation"),
      saidSuperheatK: numberAt(saidSuperheat),
      besideSuperheatK: inNoteOf(suction, saidSuperheat),
      saidDischargeSuperheatK: numberAt(
        gas.findLast((one) => one.quantity === "superheat" && isOfDischarge(one)),
      ),
      saidSubcoolingK: numberAt(saidSubcooling),
      besideSubcoolingK: inNoteOf(high, saidSubcooling),
      toldSuperheatK: numberAt(told(scene, "superheat")),
      toldSubcoolingK: numberAt(told(scene, "subcooling")),
    }),
  };
}

/** The high pressure at the liquid line, unless work was done since and the discharge alone was read again. */
function highSide(gas: readonly Reading[], scene: Scene): Reading | undefined {
  const liquid = last(gas, "pressure", "liquid");
  const discharge = last(gas, "pressure", "discharge");
  if (liquid === undefined || discharge === undefined) return liquid ?? discharge;
  const at = (one: Reading): number => scene.notes.findIndex((note) => note.readings.includes(one));
  const again = at(discharge) > at(liquid) && !areTogether(scene, liquid, discharge);
  return again ? discharge : liquid;
}

/** Superheat of the discharge gas, which is not the suction's. */
function isOfDischarge(reading: Reading): boolean {
  return reading.at === "discharge" || /\b(?:disch(?:arge)?|hot gas|dsh)\b/i.test(reading.said);
}

/** A figure of an earlier visit, or one that a chart or another man gave. */
function told(scene: Scene, quantity: QuantityName): Reading | undefined {
  return [...scene.earlier, ...scene.ratings].findLast((one) => one.quantity === quantity);
}

/** "high side temp 100": gas is never colder than it condenses, so that is the liquid line. */
function isLiquidLine(hot: Reading | undefined, bubbleCel: number | undefined): boolean {
  if (hot === undefined || bubbleCel === undefined || /discharge/i.test(hot.said)) return false;
  return (numberOf(hot) ?? bubbleCel) < bubbleCel;
}

/** Both pressures as they were read together; of several sets the latest whole one. */
function liftOf(
  gas: readonly Reading[],
  scene: Scene,
  ambientPa: number,
): Circuit["lift"] | undefined {
  const liquid = last(gas, "pressure", "liquid");
  const pressures = gas.filter(
    (one) => one.quantity === "pressure" && !isBelowLiquid(one, liquid, scene),
  );
  const pair = latestPair(
    scene,
    pressures.filter((one) => one.at === "suction" || one.at === "evaporator_out"),
    pressures.filter((one) => one.at === "liquid" || one.at === "discharge"),
  );
  const suctionPa = paOf(pair?.[0], ambientPa);
  const highPa = paOf(pair?.[1], ambientPa);
  return suctionPa === undefined || highPa === undefined ? undefined : { suctionPa, highPa };
}

/** Gas is pushed into the condenser: a "discharge 165" far under the liquid's pressure beside it is no pressure. */
function isBelowLiquid(one: Reading, liquid: Reading | undefined, scene: Scene): boolean {
  if (one.at !== "discharge" || liquid === undefined) return false;
  if (noteOf(scene, one) !== noteOf(scene, liquid)) return false;
  return (numberOf(one) ?? 0) < leastOfLiquid * (numberOf(liquid) ?? 0);
}

/** Share of the liquid's pressure that a discharge has at least. Common practice, no source. */
const leastOfLiquid = 0.8;

function paOf(reading: Reading | undefined, ambientPa: number): number | undefined {
  return reading === undefined ? undefined : absolutePaOf(reading, ambientPa);
}

function saturation(
  refrigerant: Refrigerant | undefined,
  line: "bubble" | "dew",
  pa: number | undefined,
): number | undefined {
  return refrigerant === undefined || pa === undefined
    ? undefined
    : saturationCel(refrigerant, line, pa);
}

function numberAt(reading: Reading | undefined): number | undefined {
  return reading === undefined ? undefined : numberOf(reading);
}

function last(gas: readonly Reading[], quantity: QuantityName, at: Place): Reading | undefined {
  return gas.findLast((one) => one.quantity === quantity && one.at === at);
}

function lastAt(
  gas: readonly Reading[],
  quantity: QuantityName,
  places: readonly Place[],
): Reading | undefined {
  for (const at of places) {
    const found = last(gas, quantity, at);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The suction line, at the compressor where both ends were read; not inside a reversing valve. */
function suctionLine(gas: readonly Reading[], scene: Scene): Reading | undefined {
  const lines = gas.filter((one) => !isAtReversingValve(scene, one));
  return lastAt(lines, "temperature", ["suction", "evaporator_out"]);
}

/** Past a component the liquid has lost pressure, and its temperature speaks of that instead. */
export const pastComponent =
  /\b(after|past|downstream|leaving(?! (?:the )?(?:cond|outdoor))|out of(?! (?:the )?(?:cond|outdoor))|outlet|other side|at the (valve|txv|indoor|evap)|valve inlet|before the (valve|txv))\b/;

/** The liquid line at the condenser: of several, the latest note's first that is not past something. */
function liquidLine(gas: readonly Reading[], scene: Scene): Reading | undefined {
  const liquids = gas.filter((one) => one.quantity === "temperature" && one.at === "liquid");
  const near = liquids.filter((one) => !pastComponent.test(clauseOf(scene, one)));
  const usable = near.length > 0 ? near : liquids;
  const note = scene.notes.findLast((each) => usable.some((one) => each.readings.includes(one)));
  return (
    usable.find((one) => note?.readings.includes(one) === true) ??
    // while it heats the outdoor coil boils: what comes off it is suction gas
    (isHeating(scene) ? undefined : last(gas, "temperature", "condenser_out"))
  );
}
