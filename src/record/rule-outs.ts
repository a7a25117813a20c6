import type { Job, JobReading } from "../model.ts";
import { isCurrent } from "./readings.ts";

interface RuleOut {
  /** what is measured before the part is ordered, in a few words */
  readonly name: string;
  readonly held: (readings: readonly JobReading[]) => boolean;
}

const points = (some: readonly JobReading[]): number =>
  new Set(some.map((one) => one.points?.join() ?? one.id)).size;
const ofKind = (some: readonly JobReading[], ...names: readonly string[]): readonly JobReading[] =>
  some.filter(({ quantity }) => names.includes(quantity));

const leads: RuleOut = {
  name: "three leads to ground",
  held: (some) => points(ofKind(some, "insulation_resistance")) >= 3,
};
const pairs: RuleOut = {
  name: "three winding pairs",
  held: (some) => points(ofKind(some, "winding_resistance")) >= 3,
};
const volts: RuleOut = {
  name: "supply volts",
  held: (some) => ofKind(some, "voltage").some(({ at }) => at === undefined || at === "supply"),
};
/** Ohm; below it nobody starts a motor to see; common practice, no source. */
const startsFromOhm = 1e6;
const isLow = ({ value }: JobReading): boolean =>
  typeof value === "number" && value < startsFromOhm;

/** Never asked for where a winding reads low: it is not started once more. */
const start: RuleOut = {
  name: "start amps",
  held: (some) =>
    ofKind(some, "insulation_resistance").some(isLow) ||
    ofKind(some, "current").some(({ state, stat }) => state === "start" || stat === "peak"),
};
const bus: RuleOut = {
  name: "bus volts",
  held: (some) => ofKind(some, "voltage").some(({ at }) => at === "dc_bus"),
};
const bridge: RuleOut = {
  name: "diode readings of the bridge",
  held: (some) => ofKind(some, "diode_drop").length >= 6,
};

/** What speaks for ordering a dear part; common practice, no source. */
const table: readonly { readonly part: RegExp; readonly before: readonly RuleOut[] }[] = [
  { part: /^(?:compressor|comp)\b/i, before: [leads, pairs, volts, start] },
  { part: /\b(?:drive|inverter|vfd)\b/i, before: [bus, bridge, leads, pairs] },
];

/** What the record of a job does not hold yet of what is looked at before such a part is ordered. */
export function openRuleOuts(job: Job, part: string): readonly string[] {
  const measured = job.readings.filter(
    (one) => isCurrent(one) && one.doubtful !== true && one.earlier !== true && !one.rating,
  );
  const row = table.find((one) => one.part.test(part));
  return (row?.before ?? []).filter(({ held }) => !held(measured)).map(({ name }) => name);
}
