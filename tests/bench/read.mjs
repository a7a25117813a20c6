/**
 * Our reader and two general libraries on the same labelled notes, each in a process of its own:
 * recall and precision of readings (value in its canonical unit), whole messages, notes a second.
 * Run `npm run build` first, then `node tests/bench/read.mjs`.
 */
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

const folder = new URL("../../fixtures/notes/", import.meta.url);
const require = createRequire(import.meta.url);
const lines = readdirSync(folder)
  .filter((name) => name.endsWith(".jsonl"))
  .flatMap((name) => readFileSync(new URL(name, folder), "utf8").trim().split("\n"))
  .map((line) => JSON.parse(line))
  .filter((line) => line.before === undefined && line.units !== "si" && line.expect.ask !== true);

/** Unit words of the libraries: canonical unit, factor, offset. */
const units = {
  volt: ["V", 1],
  volts: ["V", 1],
  ampere: ["A", 1],
  amp: ["A", 1],
  amps: ["A", 1],
  ohm: ["Ohm", 1],
  ohms: ["Ohm", 1],
  f: ["Cel", 1 / 1.8, -32 / 1.8],
  fahrenheit: ["Cel", 1 / 1.8, -32 / 1.8],
  degree: ["Cel", 1 / 1.8, -32 / 1.8],
  degrees: ["Cel", 1 / 1.8, -32 / 1.8],
  c: ["Cel", 1],
  celsius: ["Cel", 1],
  pound: ["kg", 0.45359237],
  pounds: ["kg", 0.45359237],
  lb: ["kg", 0.45359237],
  ounce: ["kg", 0.028349523125],
  kilogram: ["kg", 1],
  kg: ["kg", 1],
  bar: ["Pa", 1e5],
  psi: ["Pa", 6894.757293168361],
  percentage: ["%", 1],
  percent: ["%", 1],
  hertz: ["Hz", 1],
  hz: ["Hz", 1],
  rpm: ["1/min", 1],
};
function canonical(number, unit) {
  const found = units[String(unit ?? "").toLowerCase()];
  return found === undefined
    ? { value: number, unit: "" }
    : { value: number * found[1] + (found[2] ?? 0), unit: found[0] };
}

const readers = {
  ours: async () => {
    const { read } = await import("../../dist/src/read/read.js");
    const { startContext } = await import("../../dist/src/read/context.js");
    const context = startContext("us");
    return (text) => read(text, context).readings.map(({ value, unit }) => ({ value, unit }));
  },
  recognizers: async () => {
    const suite = require("@microsoft/recognizers-text-suite");
    const culture = suite.Culture.English;
    return (text) =>
      [suite.recognizeDimension(text, culture), suite.recognizeTemperature(text, culture)]
        .flat()
        .map(({ resolution }) => canonical(Number(resolution?.value), resolution?.unit));
  },
  compromise: async () => {
    const { default: nlp } = await import("compromise");
    return (text) =>
      nlp(text)
        .numbers()
        .json()
        .map(({ number }) => canonical(number?.num ?? Number.NaN, number?.unit));
  },
};

const near = (a, b) =>
  a === b ||
  (typeof a === "number" &&
    typeof b === "number" &&
    Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b)));
function matches(got, want) {
  return (
    near(got.value, want.value) &&
    (got.unit === want.unit ||
      (got.unit === "Cel" && want.unit === "K") ||
      want.unit === undefined ||
      (want.unit === null && got.unit === null))
  );
}

async function measure(name) {
  const reader = await readers[name]();
  let found = 0;
  let wanted = 0;
  let given = 0;
  let whole = 0;
  for (const { text, expect } of lines) {
    const left = [...reader(text)];
    given += left.length;
    wanted += expect.readings.length;
    let good = 0;
    for (const want of expect.readings) {
      const at = left.findIndex((got) => matches(got, want));
      if (at < 0) continue;
      left.splice(at, 1);
      good++;
    }
    found += good;
    if (good === expect.readings.length && left.length === 0) whole++;
  }
  const rounds = name === "ours" ? 20 : 1;
  for (const { text } of lines) reader(text);
  const times = [];
  const before = process.cpuUsage();
  for (let round = 0; round < rounds; round++)
    for (const { text } of lines) {
      const start = process.hrtime.bigint();
      reader(text);
      times.push(Number(process.hrtime.bigint() - start) / 1000);
    }
  const used = process.cpuUsage(before);
  times.sort((a, b) => a - b);
  return {
    name,
    recall: found / wanted,
    precision: found / Math.max(1, given),
    whole: whole / lines.length,
    notesPerSecond: Math.round((times.length / (used.user + used.system)) * 1e6),
    p99us: Math.round(times[Math.floor(times.length * 0.99)]),
  };
}

const [only] = process.argv.slice(2);
if (only !== undefined) console.log(JSON.stringify(await measure(only)));
else {
  const rows = Object.keys(readers).map((name) =>
    JSON.parse(
      execFileSync(process.execPath, [fileURLToPath(import.meta.url), name], { encoding: "utf8" }),
    ),
  );
  const ours = rows[0].notesPerSecond;
  console.log(`${lines.length} notes`);
  for (const row of rows)
    console.log(
      `${row.name.padEnd(12)} recall ${(100 * row.recall).toFixed(1)} %  precision ${(100 * row.precision).toFixed(1)} %  whole ${(100 * row.whole).toFixed(1)} %  ${row.notesPerSecond} notes/s (ours ${(ours / row.notesPerSecond).toFixed(1)} x)  p99 ${row.p99us} us`,
    );
}
