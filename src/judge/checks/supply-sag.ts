import type { Finding, Reading } from "../../model.ts";
import { wordsNear } from "../near.ts";
import { numberOf, numbersOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, plain } from "../words.ts";
import { isAtStart } from "./at-start.ts";
import { controlBelowV } from "./volts.ts";

/** Start over rest: below the first it sags, below the second a motor may not start. Common practice, no source. */
const sagShares = { watch: 0.9, bad: 0.85 } as const;

/** What the voltage does while the motor tries, and whether it holds further upstream. */
export function supplySag(all: readonly Reading[], scene: Scene): Finding[] {
  const atStart = all.filter(
    (one) => isAtStart(scene, one) && (numberOf(one) ?? 0) >= controlBelowV,
  );
  // "dropped from 468 to 441": the first of a row is what it stood at before
  const rest = [
    ...numbersOf(all.filter((one) => !isAtStart(scene, one))),
    ...atStart.flatMap((one) => one.series?.[0] ?? []),
  ].filter((one) => one >= controlBelowV);
  const lowest = Math.min(...numbersOf(atStart));
  const restV = rest.length > 0 ? Math.max(...rest) : scene.facts.supply_V;
  if (!Number.isFinite(lowest) || restV === undefined) return [];
  const share = lowest / restV;
  if (share >= sagShares.watch)
    return [
      found("good", `${plain(lowest)} V while it tries: the supply holds`, "supply:holds_at_start"),
    ];
  const upstream = all.some((one) => holdsUpstream(one, scene, restV));
  const drop = `${plain(restV)} V falls to ${plain(lowest)} V while it tries`;
  const level = share < sagShares.bad ? "bad" : "watch";
  if (everywhere.test(scene.words))
    return [
      found(level, `${drop}, and not here alone: the supply is weak`, "supply:sags_everywhere"),
    ];
  return upstream
    ? [
        found(
          level,
          `${drop} but holds upstream: a poor connection between the two`,
          "supply:sags_behind_connection",
        ),
      ]
    : [
        found(
          level,
          `${drop}: a weak supply, a poor connection or a motor that does not turn`,
          "supply:sags",
        ),
      ];
}

/** More than this unit feels it. */
const everywhere =
  /(?:other units?|whole (?:building|street)|all over|everything|lights?|at the (?:main|meter|panel|service))\b.{0,24}\b(?:dips?|dim|sags?|drops?|too|as well|also|building)\b|\b(?:at the unit|here) and (?:also )?(?:at )?the (?:main|meter|panel|service)\b|\bsame (?:(?:dip|sag|drop)\b.{0,12}\b)?at the (?:main|meter|panel|service)\b/;

/** A point ahead of it that keeps its volts at the same moment. */
function holdsUpstream(one: Reading, scene: Scene, restV: number): boolean {
  const held = (numberOf(one) ?? 0) > 0.95 * restV;
  return (
    held &&
    /still|same moment|line (?:side|lugs)|ahead|upstream|main|\bpanel\b|breaker/.test(
      wordsNear(scene, one),
    )
  );
}

const briefs: Readonly<Record<string, string>> = {
  "supply:holds_at_start": "the supply holds at start",
  "supply:sags": "sags at start",
  "supply:sags_everywhere": "the supply sags at start",
  "supply:sags_behind_connection": "sags behind a poor connection",
};

function found(level: Finding["level"], says: string, sign: string): Finding {
  return {
    about: "supply",
    check: "supply",
    level,
    brief: briefs[sign] ?? gist(says),
    says,
    values: {},
    basis: "common practice",
    source: "common practice, no source: 10 and 15 percent at start",
    signs: [sign],
  };
}
