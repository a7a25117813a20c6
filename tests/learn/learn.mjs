// Learns src/read/odds/table.ts from the labelled notes, and from what the rules read in cases and
// on days: how likely each kind of thing is for a number among such words. A softmax regression over
// the traits of src/read/odds/traits.ts; the same notes give the same table. Usage: npm run learn;
// LEAVE_OUT=name,name leaves files out, to measure the reader on notes that it has not seen.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { quantities } from "../../dist/src/quantities/list.js";
import { follow, startContext } from "../../dist/src/read/context.js";
import { itemKind } from "../../dist/src/read/item.js";
import { fits, quantityOf } from "../../dist/src/read/kinds.js";
import { kindName } from "../../dist/src/read/odds/odds.js";
import { look, traits } from "../../dist/src/read/odds/traits.js";
import { read, understand } from "../../dist/src/read/read.js";

const folders = ["fixtures/notes", "fixtures/learn"];
const leftOut = (process.env.LEAVE_OUT ?? "").split(",").filter(Boolean);
const units = quantities.flatMap((quantity) => quantity.units);

/** May the number, in any unit that fits, be this value? ("35 m" may be metres, "mic" microns.) */
function isValue(item, { quantity, value }) {
  const { difference } = quantityOf(quantity);
  return units.some((unit) => {
    if (!fits(quantity, unit.dimension)) return false;
    const offset = difference ? 0 : (unit.offset ?? 0);
    // "eight below zero"
    return [item.value, -item.value].some((number) => {
      const given = number * unit.factor + offset;
      return Math.abs(given - value) <= 1e-3 * Math.abs(value) + 1e-9;
    });
  });
}

/** What each number of a note is, by its label: the next expected reading of its value. */
function kindsOf(items, expect) {
  const left = [...(expect.readings ?? [])];
  let last;
  return items.map((item) => {
    if (item.kind !== itemKind.number) return undefined;
    const holds = (one) =>
      [one.value, one.high, ...(one.series ?? [])].some(
        (value) => typeof value === "number" && isValue(item, { ...one, value }),
      );
    const found = left.findIndex(holds);
    // the upper end of a range, a step of a series
    const again = last !== undefined && holds(last);
    const one = found < 0 ? (again ? last : undefined) : left[found];
    if (found >= 0) left.splice(found, 1);
    last = one ?? last;
    if (one !== undefined) return { quantity: one.quantity, place: one.at };
    return { quantity: expect.ask ? "ask" : "none", place: undefined };
  });
}

const kinds = [];
const names = new Map();
const seen = [];
const cases = [];
const count = new Map();
let notes = 0;
const files = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".jsonl") && !leftOut.some((out) => name.startsWith(out)))
    .map((name) => `${folder}/${name}`),
);
for (const file of files) {
  for (const line of readFileSync(file, "utf8").split("\n").filter(Boolean)) {
    const { text, expect, before = [], units: habit = "us", at } = JSON.parse(line);
    if (typeof text !== "string" || expect === undefined) continue;
    notes++;
    let context = startContext(habit, at);
    for (const earlier of before) context = follow(context, read(earlier, context));
    const { items } = understand(text, context).note;
    const looked = look(items, context);
    let previous = "^";
    kindsOf(items, expect).forEach((kind, at) => {
      if (kind === undefined) return;
      const name = kindName(kind.quantity, kind.place);
      if (!names.has(name)) {
        names.set(name, kinds.length);
        const placed = name.includes("@") ? { place: kind.place } : {};
        kinds.push({ quantity: kind.quantity, ...placed });
        seen.push(0);
      }
      seen[names.get(name)]++;
      const given = [...new Set(traits(looked, at, previous))];
      for (const trait of given) count.set(trait, (count.get(trait) ?? 0) + 1);
      cases.push({ given, kind: names.get(name) });
      previous = name;
    });
  }
}

// a trait seen once says nothing about the next note
const index = new Map();
for (const [trait, times] of count) if (times > 1) index.set(trait, index.size);
const many = kinds.length;
const data = cases.map(({ given, kind }) => ({
  given: given.map((trait) => index.get(trait)).filter((at) => at !== undefined),
  kind,
}));

// AdaGrad, a share of the traits hidden at each step so that no single one is relied on
const PASSES = 14;
const RATE = 0.15;
const HIDDEN = 0.4;
// the mean of the last passes is kept: surer where it is right, less sure where it is not
const KEPT = 7;
let state = 7;
function random() {
  state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
  return state / 0x7fffffff;
}
const weights = new Float32Array(index.size * many);
const steps = new Float32Array(index.size * many);
const sums = new Float64Array(many);
const means = new Float64Array(index.size * many);
for (let pass = 0; pass < PASSES; pass++) {
  for (let i = data.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [data[i], data[j]] = [data[j], data[i]];
  }
  for (const { given, kind } of data) {
    const shown = given.filter(() => random() > HIDDEN);
    sums.fill(0);
    for (const at of shown) for (let k = 0; k < many; k++) sums[k] += weights[at * many + k];
    const top = Math.max(...sums);
    let whole = 0;
    for (let k = 0; k < many; k++) whole += sums[k] = Math.exp(sums[k] - top);
    for (let k = 0; k < many; k++) {
      const error = sums[k] / whole - (k === kind ? 1 : 0);
      if (Math.abs(error) < 1e-3) continue;
      for (const at of shown) {
        const w = at * many + k;
        steps[w] += error * error;
        weights[w] -= (RATE * error) / Math.sqrt(steps[w] + 0.1);
      }
    }
  }
  if (pass >= PASSES - KEPT) for (let w = 0; w < means.length; w++) means[w] += weights[w] / KEPT;
}

// packed: four bytes of trait, one of how many, then pairs of kind and weight; small weights left out
const SCALE = 40;
const SMALL = 0.1;
const bytes = [];
for (const [trait, at] of index) {
  const pairs = [];
  for (let k = 0; k < many; k++) {
    const weight = means[at * many + k];
    if (Math.abs(weight) < SMALL) continue;
    const small = Math.max(-127, Math.min(127, Math.round(weight * SCALE)));
    pairs.push(k, small & 255);
  }
  if (pairs.length === 0) continue;
  bytes.push(trait & 255, (trait >> 8) & 255, (trait >> 16) & 255, (trait >> 24) & 255);
  bytes.push(pairs.length / 2, ...pairs);
}
const lines = kinds.map(({ quantity, place }, i) => {
  const where = place === undefined ? "undefined" : `"${place}"`;
  return `  { quantity: "${quantity}", place: ${where}, seen: ${seen[i]} },`;
});
writeFileSync(
  "src/read/odds/table.ts",
  `// Learnt from the labelled notes by \`npm run learn\`; not written by hand.
import type { QuantityName } from "../../quantities/list.ts";
import type { Place } from "../../vocabulary.ts";

/** What a number can be, in the order of the weights. */
export const kinds: readonly {
  readonly quantity: QuantityName | "none" | "ask";
  readonly place: Place | undefined;
  /** how many such numbers the labelled notes held */
  readonly seen: number;
}[] = [
${lines.join("\n")}
];

/** A weight of 1 as it stands in the rows. */
export const SCALE = ${SCALE};

/** Weights of each trait, packed as \`odds.ts\` unpacks them. */
export const rows =
  "${Buffer.from(bytes).toString("base64")}";
`,
);
console.log(`${notes} notes, ${cases.length} numbers, ${many} kinds, ${index.size} traits`);
