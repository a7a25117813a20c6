import type { SignGroup } from "../sign.ts";
import { electricalSigns } from "./electrical.ts";
import { gasSigns } from "./gas.ts";
import { remarkSigns } from "./remarks.ts";

/** Every group of signs with its background, by name. */
export const signGroups: ReadonlyMap<string, SignGroup> = new Map(
  [...electricalSigns, ...gasSigns, ...remarkSigns].map((one) => [one.group, one]),
);
