// Times of p(T), T(p) and of a full judgement.
import { judgeNotes } from "../../dist/src/bot/judge-notes.js";
import { refrigerants } from "../../dist/src/physics/refrigerant.js";
import { saturationPa } from "../../dist/src/physics/saturation-pressure.js";
import { saturationCel } from "../../dist/src/physics/saturation-temperature.js";
import { tell } from "./support/store.mjs";

/** Nanoseconds of processor a call, after a round of warming up. */
function each(count, call) {
  for (let n = 0; n < count / 4; n++) call(n);
  const cpu = process.cpuUsage();
  for (let n = 0; n < count; n++) call(n);
  const { user, system } = process.cpuUsage(cpu);
  return ((user + system) * 1000) / count;
}

const name = (n) => refrigerants[n % refrigerants.length] ?? "R-410A";
let sum = 0;
const pressure = each(2_000_000, (n) => {
  sum += saturationPa(name(n), "dew", -30 + (n % 1000) / 12) ?? 0;
});
const temperature = each(2_000_000, (n) => {
  sum += saturationCel(name(n), "dew", 300_000 + 1_500 * (n % 1000)) ?? 0;
});
const given = {
  equipment: {
    kind: "rooftop unit",
    refrigerant: "R-410A",
    metering: "expansion_valve",
    drive: "line",
  },
  site: {},
  notes: ["low side 106, line 77. head 334, liquid 102. outside 95"],
  units: "us",
};
const judged = each(2_000, () => {
  sum += judgeNotes(given).findings.length;
});
if (!Number.isFinite(sum)) throw new Error("a figure that is no number");
tell([
  { what: "p(T), all refrigerants in turn", value: Math.round(pressure), unit: "ns" },
  {
    what: "T(p), all refrigerants in turn",
    value: Math.round(temperature),
    unit: "ns",
    target: "< 1000",
  },
  {
    what: "five readings read, folded and judged in full",
    value: Math.round(judged / 1000),
    unit: "us",
  },
]);
