import { busBehind } from "./bus-behind.ts";
import { fedWith } from "./fed-with.ts";
import { flameCurrent } from "./flame-current.ts";
import { gaugeThenLine } from "./gauge-then-line.ts";
import { gaugesAgain } from "./gauges-again.ts";
import { leastOpening } from "./least-opening.ts";
import { limitOpened } from "./limit-opened.ts";
import { motorBehindModule } from "./motor-behind-module.ts";
import {
  betweenRails,
  calledSo,
  dcPlug,
  filterDrop,
  mainDc,
  riseOfFires,
  standsAtIt,
  staticSides,
  threeEach,
} from "./parts-told.ts";
import { passes } from "./pass.ts";
import { railRow } from "./rail-row.ts";
import { tapOut } from "./tap-of-transformer.ts";

/** What words beside the values make of them on parts of a machine: coils, flames, modules, dampers, taps. */
export const byParts = passes(
  {
    look: ({ drafts, items }) => fedWith(drafts, items),
    heads:
      "applied|on|at|to|across|gets|getting|got|has|having|sees|seeing|fed|with|and|plus|receives|receiving",
    several: true,
  },
  { look: ({ drafts, items, context }) => flameCurrent(drafts, items, context) },
  {
    look: ({ drafts, items }) => leastOpening(drafts, items),
    heads: "economizer|economiser|econ|econo|damper|dampers|oad|actuator|oa",
    several: true,
  },
  { look: ({ drafts, items, context }) => railRow(drafts, items, context), several: true },
  {
    look: ({ drafts, items, context }) => motorBehindModule(drafts, items, context),
    several: true,
  },
  {
    look: ({ drafts, items, context }) => gaugeThenLine(drafts, items, context.units),
    heads: "gauge|gauges|gage",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => limitOpened(drafts, items, context.units),
    heads: "limit|rollout|hi-limit|klixon|snap disc|disc|overtemp",
  },
  { look: ({ drafts, items }) => tapOut(drafts, items), heads: "out" },
  { look: ({ drafts, items }) => busBehind(drafts, items), heads: "bus|dc" },
  {
    look: ({ drafts, items }) => gaugesAgain(drafts, items),
    heads: "now|after|afterward|afterwards|later|then|since|aft",
    several: true,
  },
  { look: ({ drafts, items }) => staticSides(drafts, items), heads: "static|statics|esp" },
  { look: ({ drafts, items }) => filterDrop(drafts, items), heads: "filter|filters" },
  { look: ({ drafts, items }) => betweenRails(drafts, items), heads: "plus|positive|pos|dc" },
  { look: ({ drafts, items }) => dcPlug(drafts, items), heads: "vcc|vsp|vm|vdc" },
  { look: ({ drafts, items }) => standsAtIt(drafts, items), heads: "it" },
  {
    look: ({ drafts, items }) => calledSo(drafts, items),
    heads: "need|needs|order|ordering|ordered|model",
  },
  { look: ({ drafts, items }) => mainDc(drafts, items), heads: "dc" },
  { look: ({ drafts, items }) => riseOfFires(drafts, items), heads: "rise", several: true },
  { look: ({ drafts, items }) => threeEach(drafts, items), several: true },
);
