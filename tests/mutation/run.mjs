import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { draw, excludedMutations, keyOf } from "./draw.mjs";
import { folders } from "./folders.mjs";

/**
 * Mutation testing by sample: `npm run mutate -- FOLDER [COUNT] [SEED]`. Draws mutants of src/FOLDER,
 * tries each with the tests that reach it, and prints the share that was killed with its 95 % interval
 * and every survivor. Minutes to an hour a folder.
 */
const [folder = "", count = "100", seed = "1"] = process.argv.slice(2);
if (!(folder in folders)) {
  console.error(`FOLDER is one of ${Object.keys(folders).join(", ")}.`);
  process.exit(2);
}
const cache = "node_modules/.cache/mutation";
mkdirSync(cache, { recursive: true });
const { all, drawn } = await draw(folder, Number(count), Number(seed));
const drawnFile = `${process.cwd()}/${cache}/${folder}-drawn.json`;
writeFileSync(drawnFile, JSON.stringify(drawn.map((mutant) => keyOf(mutant))));
const reportFile = `${cache}/${folder}-report.json`;
const config = {
  testRunner: "vitest",
  vitest: { configFile: "tests/mutation/vitest.config.ts", related: false },
  mutate: drawn.map(({ fileName, location: { start, end } }) => {
    const from = `${start.line + 1}:${start.column}`;
    return `${fileName}:${from}-${end.line + 1}:${end.column}`;
  }),
  mutator: { excludedMutations },
  // what is evaluated once, when its file is loaded, is a table
  ignoreStatic: true,
  coverageAnalysis: "perTest",
  checkers: ["drawn-only"],
  plugins: ["@stryker-mutator/vitest-runner", `${process.cwd()}/tests/mutation/drawn-only.mjs`],
  concurrency: 1,
  // the compiler at hand has no interface that the tool could ask; it needs none
  tsconfigFile: "none.json",
  tempDirName: `${cache}/sandbox`,
  reporters: ["json", "dots"],
  jsonReporter: { fileName: reportFile },
  dryRunTimeoutMinutes: 30,
  timeoutMS: 60_000,
};
const configFile = `${cache}/${folder}.json`;
writeFileSync(configFile, JSON.stringify(config, null, 2));
const { status } = spawnSync("npx", ["stryker", "run", configFile], {
  stdio: "inherit",
  env: {
    ...process.env,
    READBACK_MUTANTS: drawnFile,
    READBACK_MUTATION_TESTS: JSON.stringify(
      folders[folder].tests.map((name) => `tests/${name}.test.ts`),
    ),
    READBACK_RUNS: "100",
  },
});
if (status !== 0) process.exit(status ?? 1);

/** 95 % interval of a share, after Wilson (1927), in percent. */
function interval(killed, tried) {
  const z = 1.96;
  const share = killed / tried;
  const middle = (share + (z * z) / (2 * tried)) / (1 + (z * z) / tried);
  const half =
    (z / (1 + (z * z) / tried)) *
    Math.sqrt((share * (1 - share)) / tried + (z * z) / (4 * tried * tried));
  return [middle - half, middle + half].map((part) => (100 * part).toFixed(0)).join(" to ");
}

const wanted = new Set(drawn.map((mutant) => keyOf(mutant)));
const { files } = JSON.parse(readFileSync(reportFile, "utf8"));
const results = Object.entries(files)
  .flatMap(([fileName, file]) =>
    file.mutants.map((mutant) => ({ ...mutant, fileName: `/${fileName}`, source: file.source })),
  )
  // the report counts lines and columns from 1
  .filter((mutant) => {
    const { start, end } = mutant.location;
    const back = ({ line, column }) => ({ line: line - 1, column: column - 1 });
    return wanted.has(keyOf({ ...mutant, location: { start: back(start), end: back(end) } }));
  });
const of = (...states) => results.filter(({ status: state }) => states.includes(state));
const killed = of("Killed", "Timeout").length;
const alive = of("Survived", "NoCoverage");
for (const { fileName, location, mutatorName, replacement, status: state, source } of alive) {
  const line = source.split("\n")[location.start.line - 1]?.trim();
  console.log(`${state} ${fileName.slice(1)}:${location.start.line} ${mutatorName}`);
  console.log(`  ${line}\n  -> ${replacement.replaceAll(/\s+/g, " ").slice(0, 160)}`);
}
const tried = killed + alive.length;
console.log(
  `${folder}: ${all} mutants, ${results.length} drawn (seed ${seed}), ${results.length - tried} in tables or void; ` +
    `${killed} of ${tried} killed, ${((100 * killed) / tried).toFixed(0)} % (${interval(killed, tried)} %)`,
);
