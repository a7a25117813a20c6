import { acrossBreaks } from "./across-breaks.ts";
import { airOrWater } from "./air-or-water.ts";
import { anotherOne } from "./another-one.ts";
import { behindPair } from "./behind-pair.ts";
import { ownWeight } from "./bottle-weight.ts";
import { busOnce } from "./bus-once.ts";
import { byOdds } from "./by-odds.ts";
import { degreesThen } from "./degrees-then.ts";
import { enteringBulb } from "./entering-bulb.ts";
import { farFromWindings } from "./far-from-windings.ts";
import { guard } from "./guard.ts";
import { pulledTo } from "./guard-pull.ts";
import {
  coldLine,
  leadsToGround,
  numberedBox,
  pressureThenDegrees,
  spotTwice,
  standing,
} from "./guard-spot.ts";
import { percentOrSteps } from "./guard-valve.ts";
import { heaterRow, heaterUnits } from "./heater-row.ts";
import { lineOfGauge, lineOfGauges } from "./line-of-gauge.ts";
import { behindLowHead, boxTwice } from "./low-head.ts";
import { lowThenHigh } from "./low-then-high.ts";
import { tooManyGigs } from "./megs-or-gigs.ts";
import { numberedRow } from "./numbered-row.ts";
import { passes } from "./pass.ts";
import { poundsAgain } from "./pounds-again.ts";
import { question } from "./question.ts";
import { rowBeforePlace } from "./row-before-place.ts";
import { busAgain } from "./two-states.ts";
import { twoUnits } from "./two-units.ts";
import { ampsThenVolts, voltsInVacuum, voltsThenAmps } from "./volts-then-amps.ts";
import { whileRunning } from "./while-running.ts";

/** What was read is doubted: what it can't be, what it may be as well, what is asked about. */
export const doubts = passes(
  { look: ({ drafts, items }) => busAgain(drafts, items), several: true },
  { look: ({ drafts, items }) => busOnce(drafts, items), heads: "bus", several: true },
  {
    look: ({ drafts, items }) => {
      heaterRow(drafts, items);
      heaterUnits(drafts);
    },
    heads: "heater|heaters|htr|htrs|element|elements|strip|heating|def",
    several: true,
  },
  { look: ({ drafts, note }) => whileRunning(drafts, note.plain), heads: "running" },
  { look: ({ drafts }) => enteringBulb(drafts) },
  { look: ({ drafts, items }) => degreesThen(drafts, items) },
  { look: ({ drafts, items, context }) => airOrWater(drafts, items, context) },
  {
    look: ({ drafts, items }) => ownWeight(drafts, items),
    heads: "bottle|jug|cylinder|cyl|tank|drum",
  },
  { look: ({ drafts, items }) => numberedRow(drafts, items), several: true },
  { look: ({ drafts, items }) => rowBeforePlace(drafts, items), several: true },
  { look: ({ drafts }) => ampsThenVolts(drafts), several: true },
  { look: ({ drafts, items, context }) => voltsInVacuum(drafts, items, context) },
  {
    look: ({ drafts, items }) => voltsThenAmps(drafts, items),
    heads: "amps|amp|a|current",
    several: true,
  },
  { look: ({ drafts, items, context }) => guard(drafts, items, context) },
  { look: ({ drafts, items }) => boxTwice(drafts, items), heads: "box", several: true },
  { look: ({ drafts }) => behindLowHead(drafts), heads: "head|hd", several: true },
  {
    look: ({ drafts, items, context }) => percentOrSteps(drafts, items, context),
    heads: "eev|eevs|exv|exvs|lev|levs",
  },
  { look: ({ drafts, items, context }) => pulledTo(drafts, items, context) },
  { look: ({ drafts, items }) => twoUnits(drafts, items), heads: "or" },
  { look: ({ drafts, items }) => spotTwice(drafts, items) },
  { look: ({ drafts, items }) => leadsToGround(drafts, items), heads: "lead|leads" },
  { look: ({ drafts, items, context }) => pressureThenDegrees(drafts, items, context) },
  { look: ({ drafts }) => standing(drafts) },
  { look: ({ drafts, items, context }) => coldLine(drafts, items, context.units), heads: "line" },
  {
    look: ({ drafts, items }) => numberedBox(drafts, items),
    heads: "cold|cool|chill|coldroom|coolroom",
  },
  { look: ({ drafts, note }) => byOdds(drafts, note) },
  {
    look: ({ drafts, items }) => anotherOne(drafts, items),
    heads: "third|last|other|second|fourth|next|rest",
    several: true,
  },
  { look: ({ drafts, items }) => acrossBreaks(drafts, items), several: true },
  { look: ({ drafts, items }) => lineOfGauge(drafts, items), heads: "line|pipe", several: true },
  {
    look: ({ drafts, items, context }) => lineOfGauges(drafts, items, context.units),
    heads: "line|pipe",
    several: true,
  },
  { look: ({ drafts }) => tooManyGigs(drafts), several: true },
  { look: ({ drafts, items }) => lowThenHigh(drafts, items), several: true },
  { look: ({ drafts, items, note }) => poundsAgain(drafts, items, note.plain), several: true },
  { look: ({ drafts, note }) => farFromWindings(drafts, note) },
  { look: ({ drafts, items }) => behindPair(drafts, items), heads: "/|over", several: true },
  { look: ({ drafts, note }) => question(note, drafts) },
);
