import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

export interface Found {
  readonly file: string;
  readonly source: string;
  readonly flags: string;
}

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"))
    .map((name) => join(folder, name));

/** Every regular expression written in the files of a folder. */
export function regexesIn(folder: string): readonly Found[] {
  return filesIn(folder).flatMap((file) =>
    regexesOf(readFileSync(file, "utf8")).map((found) => ({ file, ...found })),
  );
}

/** Where a value may begin, a slash begins a regular expression; elsewhere it divides. */
const before = /(?:^|[(,=:[!&|?{};>~+*%<-]|\b(?:return|typeof|case|of|in))\s*$/;

export function regexesOf(code: string): readonly Omit<Found, "file">[] {
  const found: Omit<Found, "file">[] = [];
  let at = 0;
  while (at < code.length) {
    const two = code.slice(at, at + 2);
    const one = code[at];
    if (two === "//") at = endOf(code, at, "\n");
    else if (two === "/*") at = endOf(code, at + 2, "*/");
    else if (one === '"' || one === "'") at = quoteEnd(code, at);
    else if (one === "/" && before.test(code.slice(Math.max(0, at - 60), at))) {
      const end = regexEnd(code, at);
      const flags = /^[a-z]*/.exec(code.slice(end, end + 10))?.[0] ?? "";
      found.push({ source: code.slice(at + 1, end - 1), flags });
      at = end + flags.length;
    } else at++;
  }
  return found;
}

function endOf(code: string, from: number, mark: string): number {
  const end = code.indexOf(mark, from);
  return end < 0 ? code.length : end + mark.length;
}

function quoteEnd(code: string, from: number): number {
  const quote = code[from];
  let at = from + 1;
  while (at < code.length && code[at] !== quote && code[at] !== "\n") {
    at += code[at] === "\\" ? 2 : 1;
  }
  return at + 1;
}

function regexEnd(code: string, from: number): number {
  let inClass = false;
  let at = from + 1;
  for (; at < code.length && code[at] !== "\n"; at++) {
    if (code[at] === "\\") at++;
    else if (code[at] === "[") inClass = true;
    else if (code[at] === "]") inClass = false;
    else if (code[at] === "/" && !inClass) return at + 1;
  }
  return at;
}
