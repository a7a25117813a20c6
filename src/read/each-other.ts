import { airPairs } from "./air-pairs.ts";
import { atFrequencies } from "./at-frequencies.ts";
import { rateBoth } from "./beside.ts";
import { clockBehind, opensCloses } from "./clock-behind.ts";
import { differenceBehind } from "./difference-behind.ts";
import type { Draft } from "./draft.ts";
import { dryBeside } from "./dry-beside.ts";
import { gaugeLetters, lettered, lineTemperatures } from "./gauge-letters.ts";
import {
  againAt,
  lineBetween,
  liquidLine,
  liquidThen,
  sidePairs,
  strokeDegrees,
} from "./gauges.ts";
import { inThenOut } from "./in-then-out.ts";
import type { Item } from "./item.ts";
import { lookedAgain } from "./looked-again.ts";
import { rowOfMegohms } from "./made-of-megohms.ts";
import { micronsTimed, pulledAgain } from "./pulled-again.ts";
import { rowUnit } from "./row-unit.ts";
import { slashed } from "./slashed-labels.ts";
import { timesFirst } from "./times-first.ts";
import { waterWay } from "./water-way.ts";
import { plates } from "./what-words.ts";
import { inAndOut, waterPairs, waterSides } from "./where-words.ts";
import { wideOpen } from "./wide-open.ts";

/** What two values that stand together say of one another. */
export function besideEachOther(items: readonly Item[], drafts: readonly Draft[]): void {
  slashed(items, drafts);
  clockBehind(drafts, items);
  opensCloses(drafts, items);
  rateBoth(items, drafts);
  sidePairs(items, drafts);
  lineBetween(items, drafts);
  liquidLine(items, drafts);
  liquidThen(items, drafts);
  strokeDegrees(items, drafts);
  againAt(items, drafts);
  micronsTimed(drafts, items);
  lookedAgain(drafts, items);
  rowUnit(drafts, items);
  timesFirst(drafts, items);
  pulledAgain(drafts, items);
  gaugeLetters(items, drafts);
  lineTemperatures(items, drafts);
  lettered(items, drafts);
  plates(items, drafts);
  rowOfMegohms(items, drafts);
  atFrequencies(drafts, items);
  dryBeside(items, drafts);
  inAndOut(items, drafts);
  inThenOut(items, drafts);
  airPairs(drafts, items);
  waterSides(items, drafts);
  waterPairs(items, drafts);
  differenceBehind(drafts, items);
  wideOpen(items, drafts);
  waterWay(items, drafts);
}
