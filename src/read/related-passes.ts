import { ofNamedPart } from "./announced.ts";
import { beforeAfter } from "./before-after.ts";
import { behindWarmth } from "./behind-warmth.ts";
import { boardThenGauge } from "./board-then-gauge.ts";
import { carryAction } from "./carry-action.ts";
import { chain } from "./chain.ts";
import { correct } from "./correct.ts";
import { dropDenied, dropNots } from "./denied.ts";
import { deniedAgain } from "./denied-again.ts";
import { eitherPoint } from "./either-point.ts";
import { fittedReads } from "./fitted-reads.ts";
import { gasPairAgain } from "./gas-pair-again.ts";
import { gasWatched } from "./gas-watched.ts";
import { groundOfPairs } from "./ground-of-pairs.ts";
import { nameRow } from "./name-row.ts";
import { passes } from "./pass.ts";
import { repeat } from "./repeat.ts";
import { sameAgain } from "./same-again.ts";
import { swings } from "./swings.ts";
import { cutAtPumpDown, switchSet } from "./switch-set.ts";
import { inTank, recoveryBottle } from "./tank-fill.ts";
import { sagsAtStart } from "./two-states.ts";
import { withIt } from "./with-it.ts";

/** What one value is to another, and to what was read before. */
export const related = passes(
  {
    look: ({ drafts, items }) => boardThenGauge(drafts, items),
    heads: "gauge|gauges|manifold",
    several: true,
  },
  { look: ({ drafts, items }) => behindWarmth(drafts, items), several: true },
  { look: ({ drafts, items, context }) => gasPairAgain(drafts, items, context), several: true },
  {
    look: ({ drafts, items }) => beforeAfter(drafts, items),
    heads: "after|aftr|afterward|afterwards|aft|later|since|then|clean|now",
    several: true,
  },
  { look: ({ drafts, items }) => sagsAtStart(drafts, items), several: true },
  {
    look: ({ drafts, items, note }) => switchSet(drafts, items, note.plain),
    heads: "sw|switch|switches|cutout|hps|lps|hpc|lpc|hpco|lpco|control|controls|ctrl|ctl",
  },
  {
    look: ({ drafts, items, note }) => cutAtPumpDown(drafts, items, note.plain),
    heads: "cut|cuts",
  },
  { look: ({ drafts, items }) => swings(drafts, items), heads: "-|to|and|n|&", several: true },
  { look: ({ drafts, items }) => eitherPoint(drafts, items) },
  {
    look: ({ drafts, items, context }) => deniedAgain(drafts, items, context),
    heads:
      "not|change|wasnt|isnt|aint|that|instead|undo|scratch|strike|forget|ignore|delete|disregard",
  },
  { look: ({ drafts, items, note }) => chain(drafts, items, note.plain), several: true },
  { look: ({ drafts, note }) => correct(note, drafts) },
  { look: ({ drafts, items }) => dropNots(drafts, items), heads: "not", several: true },
  { look: ({ drafts, items }) => dropDenied(drafts, items), heads: "not|was" },
  { look: ({ drafts, items }) => groundOfPairs(drafts, items) },
  { look: ({ drafts, note }) => repeat(note, drafts) },
  { look: ({ drafts, items }) => nameRow(drafts, items) },
  { look: ({ drafts, note }) => carryAction(note, drafts) },
  {
    look: ({ drafts, items }) => recoveryBottle(drafts, items),
    heads: "tank|tanks|cylinder|cylinders|cyl|bottle|bottles|drum|jug",
  },
  {
    look: ({ drafts, items, note }) => inTank(drafts, items, note.plain),
    heads: "tank|tanks|cylinder|cylinders|cyl|bottle|bottles|drum|jug",
  },
  { look: ({ drafts, items, context }) => sameAgain(drafts, items, context) },
  { look: ({ drafts, items, context }) => withIt(drafts, items, context) },
  { look: ({ drafts, context }) => ofNamedPart(drafts, context) },
  { look: ({ drafts, note }) => gasWatched(drafts, note) },
  { look: ({ drafts, note }) => fittedReads(drafts, note), heads: "new|a|an|another" },
);
