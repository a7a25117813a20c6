import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";
import { role } from "./word.ts";

const flame = /^(?:flame|ionization|ionisation)$/;
const cap = /^(?:cap|caps|capacitor|capacitors|can|run|start|herm)$/;
/** Microamps of a flame rod at most, that a bare figure is believed to be. Common practice, no source. */
const mostMicroamps = 30;

const isCurrent = ({ named, quantity }: Draft): boolean => (named ?? quantity) === "current";

/** "flame signal 2.8 micro", "flame current is 2.8": what a flame carries is microamps; so is "3.1 micro" behind it. */
export function flameCurrent(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const last = readings.at(-1);
  const again = last?.quantity === "current" && Number(last.value) < 1e-3 && last.value !== 0;
  const capped = items.some(({ text }) => cap.test(text));
  for (const draft of drafts) {
    if (draft.gone || draft.value > mostMicroamps) continue;
    const led = items.slice(Math.max(0, draft.index - 5), draft.index);
    const told = led.some(({ text }) => flame.test(text));
    if (!told && !(again && !capped)) continue;
    // "down to .9 after 10 min" behind 2.8 microamps
    const goes = items.some(({ roles }) => (roles & (role.now | role.change)) !== 0);
    const moved = again && goes && drafts.length === 1 && isUntold(draft);
    const micro = draft.unit?.figure === "microfarad" && draft.letter === "mic";
    const bare = told && draft.unit === undefined && isCurrent(draft);
    if (micro || bare || moved) takeFor(draft, "current", "microamp");
  }
}
