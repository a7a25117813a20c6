import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const goesOut = /^(?:cuts?|kicks?|trips?|opens?|hp|lp|hi|lo|high|low|head|suction|discharge)\b/;
const went = /^(?:off|out|down|tripped|trips|tripping|went|goes|locked|kicked|shut)$/;
const who =
  /^(?:it|she|he|the|unit|comp|compressor|fans?|blower|pump|motor|heaters?|drive|switch|hps|lps|hpc|lpc|breaker)$/;

/** "612 when it cuts out": what was read at that moment. */
function atThatMoment(items: readonly Item[], from: number, index: number): boolean {
  let at = index - 1;
  while (at > from && who.test(items[at]?.text ?? "")) at--;
  const led = at < index - 1;
  const text = items[at]?.text ?? "";
  return (
    /^(?:when|then|once|as|till?|until|before)$/.test(text) || (led && /^(?:and|n|&)$/.test(text))
  );
}

/** "went off on the LP cutout, suct 11": what stopped it, and then a gauge of its own. */
function stoppedIt(items: readonly Item[], index: number, to: number): boolean {
  const at = items[index - 1]?.text === "the" ? index - 2 : index - 1;
  if (!/^(?:on|by|from)$/.test(items[at]?.text ?? "") || !went.test(items[at - 1]?.text ?? ""))
    return false;
  return items.slice(index + 1, to).some(({ label }) => label?.place !== undefined);
}

/** A word of cutting out that tells when it was read, so that nothing was set to the figure. */
export function whenItTrips(draft: Draft, index: number, items: readonly Item[]): boolean {
  const item = items[index];
  if (item?.label?.rating !== "setpoint" || !goesOut.test(item.text)) return false;
  // "breaker trips at start, inrush 121 A"
  if (index < draft.index)
    return items[index + 1]?.label?.state === "start" || stoppedIt(items, index, draft.index);
  return atThatMoment(items, draft.index, index);
}
