import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

/**
 * Runs the bundled tests in this process: once to see which test reaches which mutant, then for each
 * mutant that it is told, those tests that reach it until one fails.
 */
const state = { mutantCoverage: { static: {}, perTest: {} } };
globalThis.__stryker__ = state;
const { files } = await import(pathToFileURL(process.argv[2]).href);
const out = (message) => process.send(message);
console.log = () => {};

const hooksOf = (group, kind) =>
  group === undefined
    ? []
    : [
        ...hooksOf(group.parent, kind),
        ...group.hooks.filter((one) => one.kind === kind).map(({ run }) => run),
      ];

async function runOne({ run, group }) {
  for (const hook of hooksOf(group, "beforeEach")) await hook();
  try {
    await run();
  } finally {
    for (const hook of hooksOf(group, "afterEach")) await hook();
  }
}

async function allHooks(file, kind) {
  for (const { hooks } of file.groups) {
    for (const hook of hooks) if (hook.kind === kind) await hook.run();
  }
}

/** What is tried at once: a test, or a whole file where its tests stand on what was made before them. */
function unitsOf(file) {
  const prepared = file.groups.some(({ hooks }) => hooks.some(({ kind }) => kind === "beforeAll"));
  if (!prepared) return file.tests.map((one) => ({ name: file.name, run: () => runOne(one) }));
  const run = async () => {
    await allHooks(file, "beforeAll");
    for (const one of file.tests) await runOne(one);
  };
  return [{ name: file.name, run }];
}

const failure = async (unit) => {
  try {
    await unit.run();
    return undefined;
  } catch (error) {
    return error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
};

/** ms; what takes longer would be run for hours over all mutants */
const slowest = Number(process.env.READBACK_SLOWEST ?? 3000);

/** Once through all, unless a process before this one has: which mutants each reaches, and how often. */
async function lookedThrough(all, file) {
  if (existsSync(file)) {
    return JSON.parse(readFileSync(file, "utf8")).map((one) => ({ ...one, ...all[one.index] }));
  }
  const kept = [];
  for (const [index, unit] of all.entries()) {
    state.currentTestId = `u${index}`;
    const began = performance.now();
    const why = await failure(unit);
    const ms = performance.now() - began;
    const { name } = unit;
    if (why !== undefined) out({ dropped: name, why });
    else if (ms > slowest) out({ dropped: name, why: `takes ${Math.round(ms)} ms` });
    else kept.push({ index, name, ms, hits: state.mutantCoverage.perTest[`u${index}`] ?? {} });
  }
  writeFileSync(file, JSON.stringify(kept));
  return kept.map((one) => ({ ...one, ...all[one.index] }));
}

const units = await lookedThrough(files.flatMap(unitsOf), process.argv[3]);
state.currentTestId = "later";
units.sort((a, b) => a.ms - b.ms);
const inTables = Object.keys(state.mutantCoverage.static);
out({ ready: units.length, ms: units.reduce((sum, { ms }) => sum + ms, 0), inTables });

/** ms that a mutant is tried for: what is reached by every conversation would be tried for minutes */
const budget = Number(process.env.READBACK_BUDGET ?? 15_000);

async function killerOf(mutant, reached) {
  const began = performance.now();
  for (const unit of reached) {
    if (performance.now() - began > budget) return undefined;
    out({ trying: unit.name });
    state.activeMutant = mutant;
    state.hitCount = 0;
    state.hitLimit = 1000 + 100 * unit.hits[mutant];
    const why = await failure(unit);
    state.activeMutant = undefined;
    if (why === undefined) continue;
    // a test that fails when it is run once more, with no mutant awake, tells nothing
    if (unit.again !== true && (await failure(unit)) !== undefined) {
      units.splice(units.indexOf(unit), 1);
      out({ dropped: unit.name, why: "passes but once" });
      continue;
    }
    unit.again = true;
    return unit;
  }
  return undefined;
}

process.on("message", async ({ mutant }) => {
  const reached = units.filter(({ hits }) => hits[mutant] !== undefined);
  const killer = await killerOf(mutant, reached);
  // what killed once is likely to kill again
  if (killer !== undefined) {
    units.splice(units.indexOf(killer), 1);
    units.unshift(killer);
  }
  out({ mutant, reached: reached.length, killedBy: killer?.name });
});
