import type { FileKind } from "../file-kind.ts";
import { codes } from "./codes.ts";
import { cylinders } from "./cylinders.ts";
import { equipment } from "./equipment.ts";
import { limits } from "./limits.ts";
import { people } from "./people.ts";
import { sites } from "./sites.ts";
import { stockParts } from "./stock-parts.ts";

/** Every kind of office file. Where headings fit two kinds equally well the earlier one is meant. */
export const fileKinds: readonly FileKind[] = [
  cylinders,
  codes,
  limits,
  stockParts,
  equipment,
  sites,
  people,
];
