import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import { rolldown } from "rolldown";
import { folderOf } from "./folders.mjs";

/** Words and patterns are data: what they stand for is tested by the notes that use them. */
const excludedMutations = ["StringLiteral", "Regex"];

const quiet = { debug() {}, info() {}, warn() {}, isDebugEnabled: () => false };

/** The source files of a folder or of a part of one, tables left out. */
const filesOf = (part) =>
  readdirSync(`src/${part.split("/")[0]}`, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && file.name.endsWith(".ts") && !file.name.endsWith(".d.ts"))
    .map((file) => join(file.parentPath, file.name))
    .filter((file) => file === `src/${part}` || file.startsWith(`src/${part}/`))
    .filter((file) => !folderOf(part).leftOut.some((out) => file.includes(`/${out}`)))
    .sort();

async function instrument(files) {
  const options = { plugins: null, excludedMutations, ignorers: [], noHeader: false };
  const done = await new Instrumenter(quiet).instrument(files, options);
  return { ...done, mutants: done.mutants.filter(({ status }) => status === undefined) };
}

/** What a mutant is, whichever number it got. */
const keyOf = ({ fileName, location: { start, end }, mutatorName, replacement }) =>
  [fileName, start.line, start.column, end.line, end.column, mutatorName, replacement].join("|");

/** Every mutant of a part of src. */
export async function mutantsOf(part) {
  const all = filesOf(part).map((name) => ({
    ...{ name, mutate: true, content: readFileSync(name, "utf8") },
  }));
  return (await instrument(all)).mutants;
}

/**
 * Builds the tests with some mutants in them, each asleep until its number is called; nothing else is
 * touched, so that the tests run about as fast as without any. Gives these mutants by their numbers
 * there; the bundle stands at `out`.
 */
export async function build({ drawn, tests, out }) {
  const names = [...new Set(drawn.map(({ fileName }) => fileName))];
  const files = names.map((name) => ({
    name,
    mutate: drawn.filter(({ fileName }) => fileName === name).map(({ location }) => location),
    content: readFileSync(name, "utf8"),
  }));
  const done = await instrument(files);
  const changed = new Map(done.files.map(({ name, content }) => [name, content]));
  await bundle(changed, tests, out);
  const found = new Map(done.mutants.map((mutant) => [keyOf(mutant), mutant]));
  return drawn.map((mutant) => {
    const same = found.get(keyOf(mutant));
    if (same === undefined) throw new Error(`not found again: ${keyOf(mutant)}`);
    return same;
  });
}

async function bundle(changed, tests, out) {
  const standIn = `${process.cwd()}/tests/mutation/stand-in.mjs`;
  const entry = "\0tests";
  const source = [
    `import { files, openFile } from ${JSON.stringify(standIn)};`,
    "export { files };",
    ...tests.flatMap(({ name, path }) => [
      `openFile(${JSON.stringify(name)});`,
      `await import(${JSON.stringify(`${process.cwd()}/${path}`)});`,
    ]),
  ].join("\n");
  const made = await rolldown({
    input: entry,
    platform: "node",
    logLevel: "silent",
    plugins: [
      {
        name: "mutants",
        resolveId: (id) => {
          if (id === entry) return id;
          if (id === "vitest") return standIn;
          return /^[./]/.test(id) ? undefined : { id, external: true };
        },
        load: (id) => (id === entry ? source : changed.get(relative(process.cwd(), id))),
        // files are found from where the source stood
        transform: (code, id) =>
          code.includes("import.meta.url")
            ? code.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href))
            : undefined,
      },
    ],
  });
  await made.write({ dir: out, format: "esm", entryFileNames: "tests.mjs" });
}
