import { fork } from "node:child_process";
import { readdirSync, readFileSync, rmSync } from "node:fs";
import { build, mutantsOf } from "./build.mjs";
import { draw } from "./draw.mjs";
import { folderOf, folders } from "./folders.mjs";

/**
 * Mutation testing by sample: `npm run mutate -- FOLDER [COUNT] [SEED] [TESTS]`. Draws mutants of
 * src/FOLDER, tries each with the tests that reach it, all in one process, and prints the share that
 * was killed with its 95 % interval and every survivor. FOLDER may be a part of one ("record/import",
 * "record/clocks.ts"); TESTS, commas between, stand in for the folder's own.
 */
const [part = "", count = "100", seed = "1", only] = process.argv.slice(2);
if (folderOf(part) === undefined) {
  console.error(`FOLDER is one of ${Object.keys(folders).join(", ")}, or a part of one.`);
  process.exit(2);
}
const out = `node_modules/.cache/mutation-${process.pid}`;
process.on("exit", () => rmSync(out, { recursive: true, force: true }));

const fileOf = (name) => ({
  name,
  path: name.startsWith("each-") ? `tests/mutation/${name}.ts` : `tests/${name}.test.ts`,
});
const all = readdirSync("tests").flatMap((file) => /^(.*)\.test\.ts$/.exec(file)?.[1] ?? []);
const named = only === undefined ? folderOf(part).tests : only.split(",");
const tests = [
  ...new Set(
    named
      .filter((name) => !name.startsWith("!"))
      .flatMap((name) =>
        name.endsWith("*") ? all.filter((one) => one.startsWith(name.slice(0, -1))) : [name],
      ),
  ),
]
  .filter((name) => !named.includes(`!${name}`))
  .map(fileOf);
const mutants = await mutantsOf(part);
const drawn = await build({ drawn: draw(mutants, Number(count), Number(seed)), tests, out });

/** ms for one test; beyond it a mutant hangs */
const patience = 60_000;

/** A process that has gone once through all tests. */
function start() {
  const child = fork("tests/mutation/worker.mjs", [`${out}/tests.mjs`, `${out}/reached.json`], {
    stdio: ["ignore", "ignore", "inherit", "ipc"],
    env: {
      ...process.env,
      READBACK_RUNS: process.env.READBACK_RUNS ?? "100",
      READBACK_MUTANTS: "1",
    },
  });
  return new Promise((resolve, reject) => {
    child.once("exit", (code) => reject(new Error(`the tests ended with ${code}`)));
    child.on("message", (message) => {
      if (message.dropped !== undefined) child.dropped = [...(child.dropped ?? []), message];
      if (message.ready !== undefined) resolve({ child, ...message });
    });
  });
}

/** What became of a mutant; "hung" where no answer came. */
function ask(child, mutant) {
  return new Promise((resolve) => {
    const done = (answer) => {
      clearTimeout(timer);
      child.removeAllListeners("message");
      child.removeAllListeners("exit");
      resolve(answer);
    };
    const timer = setTimeout(() => done("hung"), patience);
    child.removeAllListeners("message");
    child.removeAllListeners("exit");
    child.once("exit", () => done("hung"));
    child.on("message", (message) => {
      if (message.trying !== undefined) timer.refresh();
      else if (message.dropped === undefined) done(message);
      else console.log(`left out, ${message.dropped}: ${message.why}`);
    });
    child.send({ mutant });
  });
}

function tellSurvivor({ fileName, location, mutatorName, replacement }, reached) {
  const source = readFileSync(fileName, "utf8").split("\n")[location.start.line]?.trim();
  const fate = reached === 0 ? "not reached" : "survived";
  console.log(`${fate} ${fileName}:${location.start.line + 1} ${mutatorName}`);
  console.log(`  ${source}\n  -> ${replacement.replaceAll(/\s+/g, " ").slice(0, 160)}`);
}

let { child, ready, ms, inTables } = await start();
console.log(`${ready} tests, ${(ms / 1000).toFixed(0)} s once through`);
const dropped = new Map();
for (const { dropped: name, why } of child.dropped ?? []) {
  const line = `left out, ${name}: ${name.startsWith("each-") ? "fails with no mutant" : why.split("\n")[0]}`;
  dropped.set(line, (dropped.get(line) ?? 0) + 1);
}
for (const [line, times] of dropped) console.log(times > 1 ? `${line} (${times} times)` : line);
const tables = new Set(inTables);
const results = [];
for (const mutant of drawn) {
  const answer = await ask(child, mutant.id);
  if (answer === "hung") {
    child.kill("SIGKILL");
    ({ child } = await start());
  }
  const killed = answer === "hung" || answer.killedBy !== undefined;
  // what no test reaches but the loading of its file is a table
  const table = answer.reached === 0 && tables.has(mutant.id);
  results.push({ killed, table });
  if (!killed && !table) tellSurvivor(mutant, answer.reached);
}
child.disconnect();

/** 95 % interval of a share, after Wilson (1927), in percent. */
function interval(killed, tried) {
  const z = 1.96;
  const share = killed / tried;
  const middle = (share + (z * z) / (2 * tried)) / (1 + (z * z) / tried);
  const half =
    (z / (1 + (z * z) / tried)) *
    Math.sqrt((share * (1 - share)) / tried + (z * z) / (4 * tried * tried));
  return [middle - half, middle + half].map((end) => (100 * end).toFixed(0)).join(" to ");
}

const tried = results.filter(({ table }) => !table);
const killed = tried.filter((one) => one.killed).length;
console.log(
  `${part}: ${mutants.length} mutants, ${results.length} drawn (seed ${seed}), ${results.length - tried.length} in tables; ` +
    `${killed} of ${tried.length} killed, ${((100 * killed) / tried.length).toFixed(0)} % (${interval(killed, tried.length)} %)`,
);
