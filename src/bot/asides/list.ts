import type { Aside } from "./aside.ts";
import { leaveIt } from "./leave-it.ts";
import { lockByProcedure } from "./lock-by-procedure.ts";
import { nearMiss } from "./near-miss.ts";
import { partArrived } from "./part-arrived.ts";
import { plot } from "./plot.ts";
import { quiet } from "./quiet.ts";
import { secondLook } from "./second-look.ts";
import { whichStands } from "./which-stands.ts";

/** Every aside, the most private first; a new one is its file and a line here. */
export const asides: readonly Aside[] = [
  nearMiss,
  quiet,
  leaveIt,
  lockByProcedure,
  whichStands,
  partArrived,
  secondLook,
  plot,
];
