import { expect } from "vitest";
import type { Reading, UnitHabit } from "../../src/model.ts";
import { follow, startContext } from "../../src/read/context.ts";
import { read } from "../../src/read/read.ts";
import type { Want } from "./drawn-notes.ts";
import { randomFrom } from "./random.ts";

/** A drawn message, what was said before it, and what it has to be read as. */
export interface Drawn<W extends Want> {
  readonly before?: string;
  readonly text: string;
  readonly wanted: readonly W[];
}

interface Draws<W extends Want> {
  readonly name: string;
  readonly units: UnitHabit;
  readonly draws: number;
  /** share that may be read otherwise, and silently so */
  readonly mostOtherwise: number;
  readonly mostSilent: number;
  readonly draw: (random: () => number) => Drawn<W>;
  /** what a reading has to fit beside quantity, value and place */
  readonly also: (reading: Reading, wanted: W) => boolean;
}

/** Are these the readings that were meant, each once and none beside them? */
function asMeant<W extends Want>(
  readings: readonly Reading[],
  wanted: readonly W[],
  also: Draws<W>["also"],
): boolean {
  const left = [...readings];
  const missed = wanted.filter((want) => {
    const found = left.findIndex(
      (one) =>
        one.quantity === want.quantity &&
        Math.abs(Number(one.value) - want.value) <= 1e-6 * Math.abs(want.value) + 1e-9 &&
        (want.at === undefined || one.at === want.at) &&
        also(one, want),
    );
    if (found >= 0) left.splice(found, 1);
    return found < 0;
  });
  return missed.length === 0 && left.length === 0;
}

/** Reads what is drawn, with a seed that is printed, and holds how much of it is read otherwise to its bounds. */
export function expectAsMeant<W extends Want>(given: Draws<W>): void {
  const { name, units, draws, mostOtherwise, mostSilent, draw, also } = given;
  const seed = Number(process.env.READBACK_SEED ?? Date.now() % 100000);
  const random = randomFrom(seed);
  const [otherwise, silent]: [string[], string[]] = [[], []];
  for (let turn = 0; turn < draws; turn++) {
    const { before = "", text, wanted } = draw(random);
    const start = startContext(units);
    const context = before === "" ? start : follow(start, read(before, start));
    const { readings, ask, unread } = read(text, context);
    if (asMeant(readings, wanted, also)) continue;
    const line = before === "" ? text : `${before} || ${text}`;
    otherwise.push(line);
    if (ask.length === 0 && unread.length === 0) silent.push(line);
  }
  console.log(
    `seed ${seed}: of ${draws} ${name} ${otherwise.length} otherwise, ${silent.length} silently`,
  );
  expect(silent.length, silent.slice(0, 9).join("\n---\n")).toBeLessThanOrEqual(draws * mostSilent);
  expect(otherwise.length, otherwise.slice(0, 9).join("\n---\n")).toBeLessThanOrEqual(
    draws * mostOtherwise,
  );
}
