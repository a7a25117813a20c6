import { groupOf } from "./evidence.ts";
import type { Fault } from "./fault.ts";
import { faults } from "./faults/list.ts";
import type { SignGroup } from "./sign.ts";
import { signGroups } from "./signs/list.ts";

/** Nothing seen in the field is stronger than this, for or against. Common practice, no source. */
const strongest = 400;

/**
 * How much likelier a sign is under each fault that it speaks for or against than where the cause
 * lies elsewhere; for every other fault it is 1.
 */
export function likelihoodRatios(sign: string): ReadonlyMap<Fault, number> {
  return ratios.get(sign) ?? none;
}

const none: ReadonlyMap<Fault, number> = new Map();

const usuals: ReadonlyMap<string, number> = new Map(
  [...signGroups.values()].flatMap(({ group, background }) =>
    Object.entries(background).map(([outcome, usual]) => [`${group}:${outcome}`, usual] as const),
  ),
);

/** How a test's outcomes are distributed, each row summing to 1, in the order of the background. */
export interface Outcomes {
  /** where the fault does not touch the group */
  readonly usual: readonly number[];
  readonly byFault: ReadonlyMap<string, readonly number[]>;
}

/** The outcomes of one test; undefined for remarks and for what is no group. */
export function outcomesOf(group: string): Outcomes | undefined {
  return outcomes.get(group);
}

/** What each fault shows, by sign, for the groups that it touches. */
const tables: ReadonlyMap<Fault, ReadonlyMap<string, number>> = new Map(
  faults.map((fault) => [fault, tableOf(fault)]),
);

/** The tables never change: every ratio is worked out once. */
const ratios: ReadonlyMap<string, ReadonlyMap<Fault, number>> = new Map(
  [...usuals].map(([sign, usual]) => [sign, ratiosOf(sign, usual)]),
);

function ratiosOf(sign: string, usual: number): ReadonlyMap<Fault, number> {
  return new Map(
    faults.flatMap((fault) => {
      const shown = tables.get(fault)?.get(sign);
      if (shown === undefined) return [];
      return [[fault, Math.min(strongest, Math.max(1 / strongest, shown / usual))] as const];
    }),
  );
}

function tableOf(fault: Fault): ReadonlyMap<string, number> {
  const touched = new Set(Object.keys(fault.shows).map(groupOf));
  const rows = [...touched].flatMap((name) => {
    const group = signGroups.get(name);
    return group === undefined ? [] : rowsOf(fault, group);
  });
  return new Map(rows);
}

function rowsOf(fault: Fault, group: SignGroup): (readonly [sign: string, chance: number])[] {
  const outcomes = Object.entries(group.background);
  const named = outcomes.map(([name]) => fault.shows[`${group.group}:${name}`]);
  const taken = named.reduce<number>((sum, one) => sum + (one ?? 0), 0);
  const free = outcomes.reduce(
    (sum, [, usual], at) => sum + (named[at] === undefined ? usual : 0),
    0,
  );
  const share = free > 0 && group.remarks !== true ? Math.max(0.004, 1 - taken) / free : 1;
  return outcomes.map(([name, usual], at) => [
    `${group.group}:${name}`,
    named[at] ?? usual * Math.min(1, share),
  ]);
}

const outcomes: ReadonlyMap<string, Outcomes> = new Map(
  [...signGroups.values()]
    .filter((one) => one.remarks !== true)
    .map((one) => [one.group, distribution(one)]),
);

function distribution(group: SignGroup): Outcomes {
  const signs = Object.keys(group.background).map((outcome) => `${group.group}:${outcome}`);
  const touching = faults.filter((fault) => signs.some((sign) => tables.get(fault)?.has(sign)));
  return {
    usual: summingToOne(signs.map((sign) => usuals.get(sign) ?? 0)),
    byFault: new Map(
      touching.map((fault) => [
        fault.fault,
        summingToOne(signs.map((sign) => tables.get(fault)?.get(sign) ?? 0)),
      ]),
    ),
  };
}

function summingToOne(shares: readonly number[]): number[] {
  const all = shares.reduce((sum, one) => sum + one, 0);
  return shares.map((one) => one / all);
}
