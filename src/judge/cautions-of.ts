import type { Caution } from "../model.ts";
import { cautions } from "./cautions/list.ts";
import type { Scene } from "./scene.ts";

/** Cautions in one judgement. */
const most = 2;
const gravity = { danger: 3, warning: 2, notice: 1 } as const;
/** What the last message brings up counts more than what was said before. */
const fresh = 0.5;

/**
 * The cautions nearest to what is done now, at most two and one of an id; of those the most
 * serious stands first.
 */
export function cautionsOf(all: Scene, last: Scene): Caution[] {
  const fitting = cautions
    .map((rule) => {
      const now = rule.fits(last);
      return { rule, near: nearness(rule.fits(all), now), now: now !== undefined };
    })
    .filter((one) => one.near > 0)
    .sort((a, b) => b.near - a.near || gravity[b.rule.severity] - gravity[a.rule.severity]);
  return fitting
    .filter((one, at) => fitting.findIndex((other) => other.rule.id === one.rule.id) === at)
    .slice(0, most)
    .sort((a, b) => gravity[b.rule.severity] - gravity[a.rule.severity])
    .map(({ rule: { id, says, source, severity }, now }) => ({
      id,
      says,
      source,
      severity,
      ...(now ? { now: true as const } : {}),
    }));
}

function nearness(ever: number | undefined, now: number | undefined): number {
  return Math.max(ever ?? 0, now === undefined ? 0 : now + fresh);
}
