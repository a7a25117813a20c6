import type { CautionRule } from "../caution.ts";
import { nearest, said, seenAny } from "./fits.ts";

export const breaker: CautionRule = {
  id: "breaker",
  severity: "warning",
  says: "Find what tripped it before it is closed again; only an overload may simply be reset.",
  source: "29 CFR 1910.334(b)(2)",
  fits: (scene) =>
    nearest([
      2,
      seenAny(scene, "breaker_trips", "fuse_blown") ||
        said(
          scene,
          /breaker (?:was )?trip|tripp(?:ed|ing) (?:the )?breaker|blown fuse|blew .*fuse|keeps tripping|reset (?:the )?breaker|breaker let go|re-?close/,
        ),
    ]),
};
