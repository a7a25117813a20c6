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
const slowest = 3000;

/** Twice through all: what fails already, or the second time, can tell nothing. */
const units = [];
for (const [index, unit] of files.flatMap(unitsOf).entries()) {
  state.currentTestId = `u${index}`;
  const began = performance.now();
  const first = await failure(unit);
  const ms = performance.now() - began;
  state.currentTestId = "again";
  const second = first ?? (ms > slowest ? undefined : await failure(unit));
  if (second !== undefined) out({ dropped: unit.name, why: second.slice(0, 600) });
  else if (ms > slowest) out({ dropped: unit.name, why: `takes ${Math.round(ms)} ms` });
  else units.push({ ...unit, ms, hits: state.mutantCoverage.perTest[`u${index}`] ?? {} });
}
state.currentTestId = "later";
units.sort((a, b) => a.ms - b.ms);
const inTables = Object.keys(state.mutantCoverage.static);
out({ ready: units.length, ms: units.reduce((sum, { ms }) => sum + ms, 0), inTables });

process.on("message", async ({ mutant }) => {
  const reached = units.filter(({ hits }) => hits[mutant] !== undefined);
  let killer;
  for (const unit of reached) {
    state.activeMutant = mutant;
    state.hitCount = 0;
    state.hitLimit = 1000 + 100 * unit.hits[mutant];
    const why = await failure(unit);
    state.activeMutant = undefined;
    if (why !== undefined) {
      killer = unit;
      break;
    }
  }
  // what killed once is likely to kill again
  if (killer !== undefined)
    units.splice(0, units.length, killer, ...units.filter((one) => one !== killer));
  out({ mutant, reached: reached.length, killedBy: killer?.name });
});
