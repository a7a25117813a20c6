import type { Context } from "./context.ts";
import { digitOf } from "./digit-pairs.ts";
import { isNumber, type Token } from "./token.ts";

/** The row of legs or leads that is being gone through, and the number told last of it. */
export interface RowInHand {
  readonly noun: "lead" | "leg";
  readonly last?: number;
  /** all three were told, of the machine that is in hand */
  readonly full?: boolean;
}

/** Is a row of three being measured: a test that was announced, or one whose last point had a number? */
export function rowInHand({ test, testing, readings, machine }: Context): RowInHand | undefined {
  if (test?.ahead === true) return { noun: "lead" };
  if (testing === "winding_resistance" || testing === "insulation_resistance")
    return { noun: "lead" };
  if (testing === "current") return { noun: "leg" };
  const last = readings[readings.length - 1];
  if (last === undefined || last.rating !== undefined) return undefined;
  if (last.points !== undefined && last.points.length > 1 && last.points[1] !== "ground")
    return undefined;
  const [, family, number] = /^(lead |L)([123])$/.exec(last.points?.[0] ?? "") ?? [];
  if (family === undefined) return undefined;
  if (!/^(?:current|winding_resistance|insulation_resistance)$/.test(last.quantity))
    return undefined;
  const told = readings
    .slice(-3)
    .filter((one) => one.quantity === last.quantity && one.subject === last.subject);
  const turned = machine !== undefined && machine !== last.subject;
  return {
    noun: family === "L" ? "leg" : "lead",
    ...(turned ? {} : { last: Number(number) }),
    full: !turned && new Set(told.map(({ points }) => points?.[0])).size === 3,
  };
}

const opening = /^(?:and|ok|okay|so|then|now|,|\.|on|alright|um|uh)$/;
const verb = /^(?:'|s|'s|is|reads|reading|:|=|at|,|-|was|got|came)$/;

/**
 * "2 2.74 ohm", "and 3 is 12", "202 on 1": in a row that is gone through message by message one leg's number and its
 * value, and nothing else that is a number; where the leg's number stands, or -1.
 */
export function legAlone(tokens: readonly Token[], row: RowInHand): number {
  const numbers = tokens.flatMap((token, i) => (isNumber(token) ? [i] : []));
  const [first = -1, second = -1] = numbers;
  if (numbers.length !== 2 || row.full === true) return -1;
  const isLeg = (at: number): boolean => {
    const digit = digitOf(tokens[at]);
    return digit >= 1 && digit <= 3 && digit !== row.last && tokens[at]?.text.length !== 0;
  };
  const between = tokens.slice(first + 1, second);
  if (
    isLeg(first) &&
    tokens.slice(0, first).every(({ text }) => opening.test(text)) &&
    between.every(({ text }) => verb.test(text)) &&
    (between.length > 0 || tokens[second]?.glued !== true)
  )
    return first;
  const on = tokens[second - 1]?.text === "on";
  return on && isLeg(second) && second === tokens.length - 1 ? second : -1;
}
