import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { expect, test } from "vitest";

/** Reads the imports of every file and holds them to the architecture. */

function filesIn(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((file) => file.isFile() && file.name.endsWith(".ts") && !file.name.endsWith(".d.ts"))
    .map((file) => normalize(join(file.parentPath, file.name)));
}

const src = filesIn("src");
const adapters = filesIn("adapters");
const texts = new Map([...src, ...adapters].map((file) => [file, readFileSync(file, "utf8")]));

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

function importsOf(file: string): readonly Import[] {
  const text = texts.get(file) ?? "";
  const pattern = /^(?:import|export)\s+(type\s+)?(?:[^"';]*?\sfrom\s+)?"([^"]+)"/gm;
  return [...text.matchAll(pattern)].map(([, type, name = ""]) => ({
    from: file,
    to: name.startsWith(".") ? normalize(join(dirname(file), name)) : name,
    typeOnly: type !== undefined,
  }));
}

const imports = [...texts.keys()].flatMap(importsOf);

/** The part of the program that a file belongs to: "read", "record", "model", "bot", "adapters"... */
function partOf(file: string): string {
  const [root, second = ""] = file.split("/");
  if (root === "adapters") return "adapters";
  if (root !== "src") return `package ${file.startsWith("node:") ? file : file.split("/")[0]}`;
  return second.replace(/\.ts$/, "");
}

const nouns = ["model", "vocabulary"];
const allowed: Readonly<Record<string, readonly string[]>> = {
  quantities: ["quantities"],
  physics: ["physics", "package psychrolib"],
  vocabulary: [],
  model: ["quantities", "vocabulary"],
  read: ["read", ...nouns, "quantities", "package chrono-node"],
  record: ["record", ...nouns, "package zod", "package better-sqlite3", "package node:crypto"],
  judge: ["judge", ...nouns, "quantities", "physics"],
  show: [
    "show",
    ...nouns,
    "quantities",
    // what writes files, and where the fonts in them lie
    ...["write-excel-file", "pdfkit", "d3-scale", "@resvg", "node:module"].map(
      (name) => `package ${name}`,
    ),
  ],
  bot: ["bot", "read", "record", "judge", "show", ...nouns, "quantities", "physics", "package zod"],
};

test("each folder imports only what it may", () => {
  const breaches = imports
    .filter(({ from }) => from.startsWith("src/"))
    .filter(({ from, to, typeOnly }) => {
      const may = allowed[partOf(from)];
      const part = partOf(to);
      // the bytes of a file are a type of Node's alone
      if (typeOnly && part.startsWith("package node:")) return false;
      return may === undefined || !may.includes(part);
    })
    .map(({ from, to }) => `${from} imports ${to}`);
  expect(breaches).toEqual([]);
});

test("only the store knows the database driver, only times.ts the date library", () => {
  const users = (name: string): readonly string[] =>
    imports
      .filter(
        ({ to, from, typeOnly }) =>
          (to === name || to.startsWith(`${name}/`)) && !typeOnly && from.startsWith("src/"),
      )
      .map(({ from }) => from);
  expect(users("better-sqlite3")).toEqual(["src/record/store.ts"]);
  for (const user of users("chrono-node")) expect(user).toMatch(/^src\/read\/.*times?\.ts$/);
});

test("src never imports an adapter, and chat platforms never each other", () => {
  const platform = (file: string): string =>
    /^adapters\/(terminal|matrix|slack)\//.exec(file)?.[1] ?? "";
  const breaches = imports.filter(
    ({ from, to }) =>
      (from.startsWith("src/") && to.startsWith("adapters/")) ||
      (platform(from) !== "" && platform(to) !== "" && platform(from) !== platform(to)),
  );
  expect(breaches).toEqual([]);
});

test("a command loads the reader, the judge and what makes files only when it needs them", () => {
  const loaded = new Set<string>();
  const visit = (file: string): void => {
    if (loaded.has(file)) return;
    loaded.add(file);
    for (const { to, typeOnly } of importsOf(file)) if (!typeOnly && texts.has(to)) visit(to);
  };
  visit("adapters/command-line/export.ts");
  visit("adapters/command-line/import.ts");
  expect(loaded).toContain("src/bot/open-bot.ts");
  expect([...loaded].filter((file) => /^src\/(?:read|judge)\/|\/pdf\.ts$|xlsx/.test(file))).toEqual(
    [],
  );
  visit("adapters/command-line/commands.ts");
  expect([...loaded].filter((file) => /^src\/read\/|\/pdf\.ts$|xlsx/.test(file))).toEqual([]);
});

test("no file imports itself by a detour", () => {
  const edges = new Map<string, readonly string[]>();
  for (const file of texts.keys()) {
    edges.set(
      file,
      importsOf(file)
        .filter(({ typeOnly }) => !typeOnly)
        .map(({ to }) => to)
        .filter((to) => texts.has(to)),
    );
  }
  const done = new Set<string>();
  const cycles: string[] = [];
  const visit = (file: string, path: readonly string[]): void => {
    if (path.includes(file)) {
      cycles.push([...path.slice(path.indexOf(file)), file].join(" -> "));
      return;
    }
    if (done.has(file)) return;
    for (const next of edges.get(file) ?? []) visit(next, [...path, file]);
    done.add(file);
  };
  for (const file of texts.keys()) visit(file, []);
  expect(cycles).toEqual([]);
});

test("src asks for no clock, chance, environment, console or network, and waits for nothing", () => {
  const forbidden =
    /\b(?:Date\.now\(|new Date\(\)|Math\.random\(|process\.|console\.|fetch\(|setTimeout\(|setInterval\()/;
  const waits = /\b(?:async|await)\b/;
  const code = (file: string): string =>
    (texts.get(file) ?? "")
      .replace(/\/\*[\s\S]*?\*\//g, "")
      .replace(/(^|\s)\/\/.*$/gm, "")
      .replace(/"(?:[^"\\\n]|\\.)*"/g, '""');
  const breaches = src.filter(
    (file) =>
      forbidden.test(code(file)) ||
      (waits.test(code(file)) && !file.startsWith("src/show/exports/")),
  );
  expect(breaches).toEqual([]);
});

test("no cast, no any, no class but errors, no non-null mark in src", () => {
  const breaches = src.flatMap((file) => {
    const code = (texts.get(file) ?? "").replace(/\/\*[\s\S]*?\*\//g, "").replace(/\/\/.*$/gm, "");
    const found = [
      ...code.matchAll(/(?<!import type \{[^}]*)(?<!import \{[^}]*)\)?\s as (?!const\b)[A-Za-z]/g),
      ...code.matchAll(/: any\b|<any>/g),
      ...code.matchAll(/^(?:export )?class (?!\w+ extends Error)/gm),
    ].filter(
      (match) =>
        !/^\s*(?:import|export)\b/.test(lineAt(code, match.index)) && !inString(code, match.index),
    );
    return found.map((match) => `${file}: ${lineAt(code, match.index).trim()}`);
  });
  expect(breaches).toEqual([]);
});

function lineAt(text: string, index: number): string {
  const start = text.lastIndexOf("\n", index) + 1;
  const end = text.indexOf("\n", index);
  return text.slice(start, end < 0 ? text.length : end);
}

/** Whether a place stands inside quotes or an import's braces on its line. */
function inString(text: string, index: number): boolean {
  const start = text.lastIndexOf("\n", index) + 1;
  const before = text.slice(start, index);
  const quotes = (before.match(/["`]/g) ?? []).length;
  return quotes % 2 === 1 || /import\s*\{[^}]*$/.test(text.slice(0, index));
}

const tables =
  /(?:^src\/(?:model|vocabulary)\.ts$|\/tables\/|words\/|-table\.ts$|odds\/table\.ts$|kinds\.ts$)/;

test("files are small: half of them 60 lines or fewer, none over 300 but tables of data", () => {
  const sizes = [...texts].map(([file, text]) => ({ file, lines: text.split("\n").length - 1 }));
  const sorted = sizes.map(({ lines }) => lines).sort((a, b) => a - b);
  expect(sizes.filter(({ file, lines }) => lines > 300 && !tables.test(file))).toEqual([]);
  expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(65);
});
