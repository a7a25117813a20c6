import { type Item, itemKind } from "../item.ts";

/** What may stand behind hours that close a message. */
export const closing =
  /^(?:[.,!]|each|total|on|it|this|that|there|here|one|job|labor|today|site|onsite|on site)$/;

/** "two hours fifteen": minutes that were said behind the hours without their name, h. */
export function minutesBehind(items: readonly Item[], i: number): number {
  const [minutes, next] = [items[i + 1], items[i + 2]];
  if (
    minutes?.kind !== itemKind.number ||
    minutes.unit !== undefined ||
    minutes.owner !== undefined
  )
    return 0;
  const rounded = minutes.value > 0 && minutes.value < 60 && minutes.value % 5 === 0;
  const ends = next === undefined || next.kind === itemKind.line || closing.test(next.text);
  return rounded && ends ? minutes.value / 60 : 0;
}
