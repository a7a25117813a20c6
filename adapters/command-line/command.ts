import type { Readable } from "node:stream";

/** Where a command reads and writes; the whole of its world. */
export interface Io {
  readonly input: Readable;
  readonly line: (text: string) => void;
  readonly complain: (text: string) => void;
}

/** 0 done, 1 some line was refused or nothing could be done, 2 wrong usage, 3 a chat platform refuses the token. */
export type Exit = 0 | 1 | 2 | 3;

export interface Option {
  readonly type: "string" | "boolean";
  /** one letter that means the same */
  readonly short?: string;
  readonly about: string;
}

export interface Given {
  /** words that are no option */
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
}

/** One command of the program: a file and a line in `commands.ts`. */
export interface Command {
  readonly name: string;
  /** after the name: "FILE --db DB" */
  readonly usage: string;
  readonly about: string;
  readonly options: Readonly<Record<string, Option>>;
  /** fewest and most words that it takes */
  readonly words: readonly [number, number];
  readonly run: (given: Given, io: Io) => Promise<Exit>;
}

/** A text option, or undefined. */
export function textOption(given: Given, name: string): string | undefined {
  const value = given.options[name];
  return typeof value === "string" ? value : undefined;
}
