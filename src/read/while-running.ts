import type { Draft } from "./draft.ts";

/** What a message ends with where all of it was measured while the machine ran. */
const ends =
  /(?:^|[ ,])(?:(?:with|while|when) )?(?:the |both |all )?(?:comps?|compressors?|unit|motors?|pumps?|system|machine|it|everything)(?: [\da-c])?(?:'?s| is| are| was)? running[.!]?\s*$/;

/** "483 on L1-L2, 481 on L2-L3 with the compressor running": said once behind all legs, it holds for each. */
export function whileRunning(drafts: readonly Draft[], plain: string): void {
  const at = ends.exec(plain)?.index;
  if (at === undefined) return;
  const alive = drafts.filter(({ gone, rating }) => !gone && rating === undefined);
  if (alive.some(({ state }) => state === "start")) return;
  for (const draft of alive)
    if (draft.quantity === "voltage" || draft.quantity === "current") draft.state = "running";
}
