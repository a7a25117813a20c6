import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import { folders } from "./folders.mjs";

/** Words and patterns are data: what they stand for is tested by the notes that use them. */
export const excludedMutations = ["StringLiteral", "Regex"];

const quiet = { debug() {}, info() {}, warn() {}, isDebugEnabled: () => false };

/** Every mutant of a folder: file, place (lines and columns from 0) and what stands there instead. */
async function mutantsOf(folder) {
  const files = readdirSync(`src/${folder}`, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && file.name.endsWith(".ts") && !file.name.endsWith(".d.ts"))
    .map((file) => join(file.parentPath, file.name))
    .filter((file) => !folders[folder].leftOut.some((part) => file.includes(`/${part}`)))
    .sort();
  const whole = files.map((name) => ({
    name,
    mutate: true,
    content: readFileSync(name, "utf8"),
  }));
  const options = { plugins: null, excludedMutations, ignorers: [], noHeader: true };
  const { mutants } = await new Instrumenter(quiet).instrument(whole, options);
  return mutants.filter(({ status }) => status === undefined);
}

/** A number from 0 to below 1 after another, the same ones for the same seed. */
function chanceFrom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** So many of a folder's mutants, each with the same chance, and how many there are. */
export async function draw(folder, count, seed) {
  const mutants = [...(await mutantsOf(folder))];
  const all = mutants.length;
  const next = chanceFrom(seed);
  for (let at = 0; at < Math.min(count, all); at++) {
    const other = at + Math.floor(next() * (all - at));
    [mutants[at], mutants[other]] = [mutants[other], mutants[at]];
  }
  return { all, drawn: mutants.slice(0, count) };
}

/** The one name of a mutant, whoever tells of it. */
export const keyOf = ({ fileName, location: { start, end }, replacement }) =>
  [
    fileName.slice(fileName.lastIndexOf("/src/") + 1),
    start.line,
    start.column,
    end.line,
    end.column,
    replacement,
  ].join("|");
