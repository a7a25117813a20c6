import { boxBehind } from "./branch-boxes.ts";
import { coilGauges } from "./coil-gauges.ts";
import { dropTold } from "./drop-told.ts";
import type { Pass } from "./pass.ts";
import { suctionGroups } from "./suction-groups.ts";

/** What the gauges of racks, vessels and strainers show by their words. */
export const ofVessels: readonly Pass[] = [
  { look: ({ drafts, items }) => boxBehind(drafts, items), heads: "box" },
  {
    look: ({ drafts, items, context }) => suctionGroups(drafts, items, context),
    heads: "group|grp",
  },
  {
    look: ({ drafts, items }) => coilGauges(drafts, items),
    heads: "cond|condenser|condensing",
    several: true,
  },
  {
    look: ({ drafts, items, context }) =>
      dropTold(drafts, items, context.units === "us", context.wet === true),
    heads: "dp|d/p|deltap",
  },
];
