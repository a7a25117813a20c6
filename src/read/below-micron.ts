import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

/** micron; no compressor pumps down to so many psi. Common practice, no source. */
const leastMicron = 800;

/** "can't get below 1800", "won't pull under 1500": so many of what a vacuum pump is told by. */
export function belowMicron(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit !== undefined || draft.points !== undefined || draft.value > 30_000) continue;
    if (draft.named !== undefined && (draft.named !== "current" || draft.value >= leastMicron))
      continue;
    const [verb, joint] = [items[draft.index - 2]?.text ?? "", items[draft.index - 1]?.text ?? ""];
    if (!/^(?:below|under|past|beneath)$/.test(joint)) continue;
    if (!/^(?:get|gets|go|goes|pull|pulls|pulling|got|down|drop|drops)$/.test(verb)) continue;
    if (draft.value < leastMicron) {
      pumpedTo(draft, items, verb);
      continue;
    }
    takeFor(draft, "vacuum", "micron");
  }
}

/** psi; where a compressor that pumps down stays. Common practice, no source. */
const mostPumpedPsi = 150;
const shuts =
  /^(?:closed|close|closing|shut|shutting|frontseated|front-seated|seated|king|pumped|pumpdown)$/;

/** "closed the king valve and it won't pull below 70": the suction, and no amps that it pulls. */
function pumpedTo(draft: Draft, items: readonly Item[], verb: string): void {
  if (!verb.startsWith("pull") && verb !== "down") return;
  const shut = items.slice(0, draft.index).some(({ text }) => shuts.test(text));
  if (!shut || draft.value > mostPumpedPsi) {
    if (draft.named === "current" || draft.hint === "current") draft.question = "quantity";
    return;
  }
  takeFor(draft, "pressure", "psi");
  draft.place = "suction";
}
