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

/**
 * Builds the tests with all mutants of a part of src in them, each asleep until its number is called.
 * Gives the mutants; the bundle stands at `out`.
 */
export async function build({ part, tests, out }) {
  const whole = filesOf(part).map((name) => ({
    ...{ name, mutate: true, content: readFileSync(name, "utf8") },
  }));
  const options = { plugins: null, excludedMutations, ignorers: [], noHeader: false };
  const { files, mutants } = await new Instrumenter(quiet).instrument(whole, options);
  const changed = new Map(files.map(({ name, content }) => [name, content]));
  const standIn = `${process.cwd()}/tests/mutation/stand-in.mjs`;
  const entry = "\0tests";
  const source = [
    `import { files, openFile } from ${JSON.stringify(standIn)};`,
    "export { files };",
    ...tests.flatMap((name) => [
      `openFile(${JSON.stringify(name)});`,
      `await import(${JSON.stringify(`${process.cwd()}/tests/${name}.test.ts`)});`,
    ]),
  ].join("\n");
  const bundle = await rolldown({
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
  await bundle.write({ dir: out, format: "esm", entryFileNames: "tests.mjs" });
  return mutants.filter(({ status }) => status === undefined);
}
