import { againstSet, heldAgain } from "./against-set.ts";
import { announced, staticsAnnounced } from "./announced.ts";
import { behindContactor } from "./behind-contactor.ts";
import { belowMicron } from "./below-micron.ts";
import { bothLines, linesOfLetters } from "./both-lines.ts";
import { bottlesRow, bottleWeight } from "./bottle-weight.ts";
import { voltsOverCap } from "./by-capacitor.ts";
import { byProbe } from "./by-probe.ts";
import { cableAlone } from "./cable-alone.ts";
import { degreesOver } from "./degrees-over.ts";
import { draftPort } from "./draft-port.ts";
import { drawsAmps, farFromSize } from "./draws-amps.ts";
import { evapCond } from "./evap-cond.ts";
import { fallsAtStart } from "./falls-at-start.ts";
import { groundAtPins } from "./ground-at-pins.ts";
import { heatBehind } from "./heat-behind.ts";
import { asExpected } from "./kelvin-clips.ts";
import { lettersOfGauges, outOfGear, rowAgain } from "./like-others.ts";
import { lineTooHot } from "./line-too-hot.ts";
import { linesBehindGauges, metricLines } from "./lines-behind-gauges.ts";
import { machineRow } from "./machine-row.ts";
import { allThreeAgain, megAgain } from "./meg-again.ts";
import { ofTheOthers } from "./of-the-others.ts";
import { onARated } from "./on-a-rated.ts";
import { linesOfSide, onASupply, voltsAtTerminals } from "./on-a-supply.ts";
import { overItsLine } from "./over-its-line.ts";
import { pairAgain } from "./pair-again.ts";
import { motorByPlate, pairByPlate } from "./pair-by-plate.ts";
import { boxVolts, pairVolts } from "./pair-volts.ts";
import { pairsAgain } from "./pairs-again.ts";
import { passes } from "./pass.ts";
import { pinAgain } from "./pin-again.ts";
import { pipesAt } from "./pipes-at.ts";
import { poleDrops } from "./pole-drops.ts";
import { coilOutlets, pressureAndLine } from "./pressure-and-line.ts";
import {
  gaugeOfSaturation,
  gaugesWithLines,
  liquidOverHead,
  pressureAtWarmth,
  turnedLikeLiquid,
  warmthAtPressure,
  warmthOnPipe,
} from "./pressure-at-warmth.ts";
import { capThenReads } from "./rated-then-reads.ts";
import { risingRows } from "./rising-rows.ts";
import { roomsBlow } from "./rooms-blow.ts";
import { legsByPlate, legsByRating, rowAsBefore } from "./row-as-before.ts";
import { rowToEnd } from "./row-to-end.ts";
import { otherEnd, setAndActual, setOfGauge } from "./set-actual.ts";
import { heatsAgain, heatsOfNext, sidesAgain } from "./sides-again.ts";
import { sidesOfCap } from "./sides-of-cap.ts";
import { splitOfAirs } from "./split-of-airs.ts";
import { startRange } from "./start-range.ts";
import { strokeSides } from "./stroke-sides.ts";
import { systemHolds } from "./system-holds.ts";
import { atValveBody, besidePart } from "./through-part.ts";
import { timedAgain } from "./timed-again.ts";
import { underLoad } from "./under-load.ts";
import { voltsOfClause } from "./volts-of-clause.ts";
import { testAgain, warmthBehindBar, warmthsOfHold } from "./warmth-behind-gauge.ts";

/** What a way of saying settles, before each value is taken by its own words. */
export const bySaying = passes(
  { look: ({ drafts, items, context }) => megAgain(drafts, items, context), several: true },
  { look: ({ drafts, items }) => pinAgain(drafts, items), heads: "run|start", several: true },
  { look: ({ drafts, context }) => timedAgain(drafts, context), several: true },
  { look: ({ drafts, items, context }) => againstSet(drafts, items, context) },
  {
    look: ({ drafts, items, context }) => heldAgain(drafts, items, context),
    heads: "holds|held|holding|at",
  },
  { look: ({ drafts, context }) => testAgain(drafts, context), several: true },
  {
    look: ({ drafts, items, context }) => warmthsOfHold(drafts, items, context),
    heads: "now|today",
    several: true,
  },
  { look: ({ drafts, items, context }) => warmthBehindBar(drafts, items, context), several: true },
  { look: ({ drafts, items }) => machineRow(drafts, items), several: true },
  { look: ({ drafts, items, context }) => allThreeAgain(drafts, items, context), heads: "all" },
  { look: ({ drafts, items }) => startRange(drafts, items), several: true },
  { look: ({ drafts, items, context }) => sidesAgain(drafts, items, context), several: true },
  { look: ({ drafts, items, context }) => heatsAgain(drafts, items, context), several: true },
  { look: ({ drafts, items, context }) => sidesOfCap(drafts, items, context), several: true },
  {
    look: ({ drafts, items }) => behindContactor(drafts, items),
    heads: "contactor",
    several: true,
  },
  { look: ({ drafts }) => asExpected(drafts), several: true },
  { look: ({ drafts, items, context }) => ofTheOthers(drafts, items, context) },
  {
    look: ({ drafts, items, context }) => {
      for (const draft of drafts) outOfGear(draft, items, context);
    },
  },
  {
    look: ({ drafts, items }) => pairVolts(drafts, items),
    heads: "pair|comm|comms|network|f1|f1f2",
  },
  {
    look: ({ drafts, items }) => drawsAmps(drafts, items),
    heads: "pulls|draws|pulling|drawing|pulled|drew|runs|running|ran",
  },
  {
    look: ({ drafts, items, context }) => farFromSize(drafts, items, context),
    heads: "new|replaced|swapped",
  },
  { look: ({ drafts, items, context }) => boxVolts(drafts, items, context), heads: "box" },
  { look: ({ drafts, context }) => lineTooHot(drafts, context.units) },
  {
    look: ({ drafts, items }) => onARated(drafts, items),
    heads:
      "of|a|an|on|new|blown|bad|old|weak|swapped|replaced|changed|installed|fitted|need|needs|ordered|for|the|out|to|had|found|installed|was|in|failed",
  },
  { look: ({ drafts, items }) => poleDrops(drafts, items), heads: "v|volt|drop|drops|across" },
  {
    look: ({ drafts, items, context }) => pipesAt(drafts, items, context),
    heads: "pipe|pipes|piping|tubing|lineset|copper|gas|line|lines",
  },
  {
    look: ({ drafts, items, context }) => bottleWeight(drafts, items, context.units),
    heads: "bottle|jug|cylinder|drum",
  },
  {
    look: ({ drafts, items, context }) => bottlesRow(drafts, items, context),
    heads: "bottles|jugs|cylinders|cyls|tanks|drums|cans",
    several: true,
  },
  {
    look: ({ drafts, items }) => capThenReads(drafts, items),
    heads: "cap|caps|capacitor",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => splitOfAirs(drafts, items, context.units),
    heads: "split|delta|dt|td",
    several: true,
  },
  { look: ({ drafts, items }) => heatsOfNext(drafts, items), several: true },
  { look: ({ drafts, items, note }) => draftPort(drafts, items, note.plain), heads: "port" },
  {
    look: ({ drafts, items, note }) => voltsOfClause(drafts, items, note.plain),
    heads: "coil|legs|leg|pairs|phases",
  },
  { look: ({ drafts, items }) => risingRows(drafts, items), several: true },
  { look: ({ drafts }) => rowToEnd(drafts), several: true },
  {
    look: ({ drafts, items }) => cableAlone(drafts, items),
    heads: "cable|cables|feeder|wire|wires|wiring|harness|whip|conductor|conductors|run",
  },
  {
    look: ({ drafts, items }) => systemHolds(drafts, items),
    heads: "system|unit|machine|circuit|charge|plate|nameplate|split|rack|chiller",
  },
  { look: ({ drafts, items }) => degreesOver(drafts, items), heads: "over|above|apart" },
  { look: ({ drafts, items }) => atValveBody(drafts, items), heads: "reversing|4|four|rev" },
  { look: ({ drafts, items }) => pressureAtWarmth(drafts, items), several: true },
  { look: ({ drafts, items }) => heatBehind(drafts, items), heads: "vac|vacuum" },
  { look: ({ drafts, items }) => warmthAtPressure(drafts, items), heads: "at", several: true },
  {
    look: ({ drafts, items }) => warmthOnPipe(drafts, items),
    heads: "pipe|line|tube",
    several: true,
  },
  { look: ({ drafts, items }) => gaugesWithLines(drafts, items), several: true },
  {
    look: ({ drafts, items }) => voltsOverCap(drafts, items),
    heads: "across|over",
  },
  {
    look: ({ drafts, context }) => liquidOverHead(drafts, context.units),
    heads: "liquid|liq",
    several: true,
  },
  {
    look: ({ drafts }) => gaugeOfSaturation(drafts),
    heads: "condensing|evaporating|condenses|saturation|saturated",
  },
  { look: ({ drafts, items }) => belowMicron(drafts, items), heads: "below|under|past|beneath" },
  {
    look: ({ drafts, items }) => byProbe(drafts, items),
    heads: "probe|thermometer|thermocouple|thermistor",
  },
  {
    look: ({ drafts, items, note }) => besidePart(drafts, items, note.plain),
    heads: "drier|dryer|strainer|solenoid",
  },
  { look: ({ drafts, items }) => coilOutlets(drafts, items), heads: "suction|receiver" },
  { look: ({ drafts, items }) => onASupply(drafts, items), several: true },
  { look: ({ drafts, items }) => linesOfSide(drafts, items), several: true },
  {
    look: ({ drafts, items }) => voltsAtTerminals(drafts, items),
    heads: "terminals|terminal|lugs",
  },
  {
    look: ({ drafts, items, context }) => {
      pressureAndLine(drafts, items, context.units);
      turnedLikeLiquid(drafts, items);
    },
    several: true,
  },
  {
    look: ({ drafts, items, context }) => overItsLine(drafts, items, context.units),
    heads: "over",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => strokeSides(drafts, items, context.units),
    heads: "/",
    several: true,
  },
  { look: ({ drafts, items }) => linesBehindGauges(drafts, items), several: true },
  { look: ({ drafts, items, context }) => metricLines(drafts, items, context.units) },
  {
    look: ({ drafts, items }) => roomsBlow(drafts, items),
    heads: "blows|blowing|blow|discharging",
  },
  {
    look: ({ drafts, items, context }) => {
      if (context.units === "si") linesOfLetters(drafts, items);
    },
    heads: "lp",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => bothLines(drafts, items, context),
    heads: "line|lines|pipe|pipes",
    several: true,
  },
  {
    look: ({ drafts, items }) => fallsAtStart(drafts, items),
    heads: "falls|fell|drops|dropped|dips|dipped|sags|sagged|down",
    several: true,
  },
  { look: ({ drafts, items }) => rowAgain(drafts, items), several: true },
  { look: ({ drafts, items }) => pairByPlate(drafts, items), several: true },
  {
    look: ({ drafts, items }) => motorByPlate(drafts, items),
    heads: "plate|nameplate|tag",
    several: true,
  },
  { look: ({ drafts, items }) => legsByPlate(drafts, items), heads: "plate|nameplate|np" },
  { look: ({ drafts, items }) => legsByRating(drafts, items), several: true },
  { look: ({ drafts, items, context }) => rowAsBefore(drafts, items, context), several: true },
  { look: ({ drafts }) => pairsAgain(drafts), several: true },
  {
    look: ({ drafts, items, context }) => setAndActual(items, drafts, context.units),
    several: true,
  },
  { look: ({ drafts }) => setOfGauge(drafts), several: true },
  { look: ({ drafts, items }) => otherEnd(items, drafts), several: true },
  { look: ({ drafts, items }) => lettersOfGauges(drafts, items), several: true },
  { look: ({ drafts, items }) => underLoad(drafts, items), heads: ":" },
  {
    look: ({ drafts, items }) => evapCond(drafts, items),
    heads: "cond|condenser|condensing",
    several: true,
  },
  { look: ({ drafts, items }) => pairAgain(drafts, items), several: true },
  { look: ({ drafts, items, context }) => announced(drafts, items, context) },
  { look: ({ drafts, context }) => staticsAnnounced(drafts, context) },
  {
    look: ({ drafts, items, context }) => groundAtPins(drafts, items, context),
    heads: "pins|terminals|studs",
    several: true,
  },
);
