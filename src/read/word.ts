import type { Unit } from "../quantities/quantity.ts";
import type { Label } from "./label.ts";

/** What a word does in a sentence, as bits: a word may do several things. */
export const role = {
  is: 1,
  preposition: 2,
  conjunction: 4,
  not: 8,
  over: 16,
  same: 32,
  about: 64,
  greater: 128,
  less: 256,
  or: 512,
  to: 1024,
  ground: 2048,
  article: 4096,
  all: 8192,
  each: 16384,
  now: 32768,
  earlier: 65536,
  change: 131072,
  plan: 262144,
  only: 524288,
  zero: 1048576,
  atLeast: 2097152,
  atMost: 4194304,
  next: 8388608,
  correct: 16777216,
  between: 33554432,
  clock: 67108864,
  after: 134217728,
} as const;

/** What a word may begin. */
export const opens = { points: 1, noun: 2, number: 4 } as const;

/** How a number word counts. */
export interface NumberWord {
  readonly kind:
    | "ones"
    | "teen"
    | "tens"
    | "zero"
    | "oh"
    | "hundred"
    | "thousand"
    | "point"
    | "half"
    | "part"
    | "minus";
  readonly value: number;
}

/** Everything the dictionary knows of one word or phrase. Built once, never changed after. */
export interface Word {
  readonly text: string;
  roles: number;
  number: NumberWord | undefined;
  unit: Unit | undefined;
  /** the spelling of the unit counts only directly behind a number */
  beside: boolean;
  /** the unit is a mishearing */
  heard: boolean;
  label: Label | undefined;
  /** electrical point it names where a point is expected */
  point: string | undefined;
  /** noun that takes a number or letter: "compressor", "lead", "room" */
  noun: Noun | undefined;
  /** signs for statements, as indexes */
  signs: number[] | undefined;
  /** what may begin with this word, as bits of `opens` */
  opens: number;
  /** it or a phrase that begins with it carries signs */
  signed: boolean;
  /** longer phrases that begin with this one */
  next: Map<string, Word> | undefined;
}

export interface Noun {
  readonly kind: "subject" | "point" | "tag" | "aside";
  /** spelled out: "compressor", "lead", "phase" */
  readonly name: string;
  /** may take a single letter: "phase A", "comp B" */
  readonly letters?: boolean;
  /** greatest number it takes */
  readonly upTo: number;
}
