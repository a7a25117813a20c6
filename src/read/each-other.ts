import { againAt } from "./again-at.ts";
import { airPairs } from "./air-pairs.ts";
import { atFrequencies } from "./at-frequencies.ts";
import { rateBoth } from "./beside.ts";
import { clockBehind, opensCloses } from "./clock-behind.ts";
import { differenceBehind } from "./difference-behind.ts";
import { dryBeside } from "./dry-beside.ts";
import { gaugeLetters, lettered, lineTemperatures } from "./gauge-letters.ts";
import { lineBetween, liquidLine, liquidThen, sidePairs } from "./gauges.ts";
import { inThenOut } from "./in-then-out.ts";
import { lookedAgain } from "./looked-again.ts";
import { rowOfMegohms } from "./made-of-megohms.ts";
import { outThenIn } from "./out-then-in.ts";
import { passes } from "./pass.ts";
import { plates } from "./plates.ts";
import { micronsTimed, pulledAgain } from "./pulled-again.ts";
import { rowUnit } from "./row-unit.ts";
import { slashed } from "./slashed-labels.ts";
import { strokeDegrees } from "./stroke-degrees.ts";
import { throughPart } from "./through-part.ts";
import { timesFirst } from "./times-first.ts";
import { waterPairs, waterSides } from "./water-sides.ts";
import { airWay, outOfCoil, waterWay } from "./water-way.ts";
import { inAndOut } from "./where-words.ts";
import { wideOpen } from "./wide-open.ts";

/** What two values that stand together say of one another. */
export const besideEachOther = passes(
  { look: ({ drafts, items }) => slashed(items, drafts), heads: "/" },
  { look: ({ drafts, items }) => clockBehind(drafts, items) },
  { look: ({ drafts, items }) => opensCloses(drafts, items), heads: "closes|cuts|makes" },
  { look: ({ drafts, items }) => rateBoth(items, drafts) },
  { look: ({ drafts, items }) => sidePairs(items, drafts), several: true },
  { look: ({ drafts, items }) => lineBetween(items, drafts) },
  { look: ({ drafts, items }) => liquidLine(items, drafts), heads: "line" },
  {
    look: ({ drafts, items }) => liquidThen(items, drafts),
    heads: "at|leaving|into|entering|by|before|after",
  },
  { look: ({ drafts, items }) => strokeDegrees(items, drafts), heads: "/" },
  { look: ({ drafts, items, context }) => againAt(items, drafts, context), heads: "at|@|it's|its" },
  { look: ({ drafts, items }) => micronsTimed(drafts, items) },
  { look: ({ drafts, items }) => lookedAgain(drafts, items) },
  { look: ({ drafts, items }) => rowUnit(drafts, items) },
  { look: ({ drafts, items }) => timesFirst(drafts, items) },
  {
    look: ({ drafts, items }) => pulledAgain(drafts, items),
    heads: "vac|vacuum|evac|evacuated|micron|microns|broke",
  },
  { look: ({ drafts, items }) => gaugeLetters(items, drafts), heads: "sub|subs|lo|lp|sp" },
  { look: ({ drafts, items }) => lineTemperatures(items, drafts), heads: "td|ts|tl" },
  {
    look: ({ drafts, items }) => lettered(items, drafts),
    heads: "a|b|c|1|2|ab|bc|cd|12|23",
  },
  { look: ({ drafts, items }) => plates(items, drafts) },
  { look: ({ drafts, items }) => rowOfMegohms(items, drafts) },
  { look: ({ drafts, items }) => atFrequencies(drafts, items) },
  { look: ({ drafts, items }) => dryBeside(items, drafts), heads: "dry|db" },
  { look: ({ drafts, items }) => inAndOut(items, drafts), heads: "out" },
  { look: ({ drafts, items }) => outThenIn(drafts, items), heads: "out", several: true },
  {
    look: ({ drafts, items }) => inThenOut(items, drafts),
    heads: "out|outlet|going|coming|entering|air",
  },
  { look: ({ drafts, items }) => airPairs(drafts, items), heads: "/" },
  {
    look: ({ drafts, items, context }) => waterSides(items, drafts, context),
    heads: "out",
  },
  { look: ({ drafts, items }) => waterPairs(items, drafts), heads: "/" },
  {
    look: ({ drafts, items, context }) => throughPart(drafts, items, context.units === "us"),
    heads: "out|outlet|leaving",
    several: true,
  },
  {
    look: ({ drafts, items }) => differenceBehind(drafts, items),
    heads: "=|so|thats|what|call|makes|its|about",
  },
  { look: ({ drafts, items }) => wideOpen(items, drafts), heads: "is|being" },
  { look: ({ drafts, items }) => waterWay(items, drafts), heads: "return|supply" },
  {
    look: ({ drafts, items }) => outOfCoil(items, drafts),
    heads: "out|leaving",
    several: true,
  },
  {
    look: ({ drafts, items }) => airWay(items, drafts),
    heads: "entering|leaving|ent|lvg",
    several: true,
  },
);
