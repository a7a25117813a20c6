import { type Draft, isUntold } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** How far a gauge moves between two looks at most, as a factor. Common practice, no source. */
const farthest = 3;

const goes = /^(?:now|after|afterward|afterwards|later|then|since|aft)$/;

const moved = (one: Draft, other: Draft): boolean =>
  other.value / one.value < farthest && one.value / other.value < farthest;

/** "before: 62 suct 240 head. after: 88 and 295": the same two gauges in the same order. */
export function gaugesAgain(drafts: readonly Draft[], items: readonly Item[]): void {
  for (let at = 0; at + 3 < drafts.length; at++) {
    const [low, high, lowNow, highNow] = drafts.slice(at, at + 4);
    if (low === undefined || high === undefined || lowNow === undefined || highNow === undefined)
      return;
    if (low.place !== "suction" || high.place !== "discharge") continue;
    const told = items.slice(high.index + 1, lowNow.index);
    if (!told.some(({ text }) => goes.test(text)) || told.length > 4) continue;
    const joint = items.slice(lowNow.index + 1, highNow.index);
    const joined = joint.every(
      ({ text, kind }) => kind !== itemKind.line && /^(?:and|&|n|\/|over|,)$/.test(text),
    );
    if (!joined || joint.length > 1) continue;
    const gauges = [low, high].every(
      (one) => one.named !== "temperature" && one.unit?.dimension !== "temperature",
    );
    const bare = [lowNow, highNow].every((one) => isUntold({ ...one, hint: undefined }));
    if (!gauges || !bare || lowNow.value >= highNow.value) continue;
    if (!moved(low, lowNow) || !moved(high, highNow)) continue;
    for (const [one, like] of [
      [lowNow, low],
      [highNow, high],
    ] as const) {
      one.place = like.place;
      one.named = "pressure";
      one.unit = like.unit;
      one.hint = undefined;
    }
  }
}
