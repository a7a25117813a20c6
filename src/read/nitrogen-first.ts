import { endsClause } from "./breaks.ts";
import type { Context } from "./context.ts";
import { type Item, itemKind, newItem } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { isNitrogen } from "./nitrogen-name.ts";

/** psi, bar that a test or a purge is put up to. Common practice, no source. */
const test = { us: [20, 1200], si: [1, 60] } as const;

const isBare = (item: Item | undefined): item is Item =>
  item?.kind === itemKind.number &&
  item.unit === undefined &&
  !item.colon &&
  item.series === undefined;

/** "600 n2 at 2:15 88 out": the gas is named behind its own pressure, whatever figure follows. */
export function nitrogenFirst(items: Item[], units: Context["units"]): void {
  const [least, most] = test[units];
  items.forEach((item, i) => {
    const gas = items[i + 1];
    const before = items[i - 1];
    if (!isBare(item) || !isNitrogen(gas) || gas === undefined) return;
    if (
      before !== undefined &&
      !endsClause(before) &&
      !/^(?:with|got|has|have|put|at)$/.test(before.text)
    )
      return;
    if (item.value < least || item.value > most) return;
    if (!figureBehind(items, i + 2)) return;
    spacedHour(items, i + 2);
    item.unit = unitCalled(units === "us" ? "psi" : "bar");
    gas.kind = itemKind.word;
    gas.label = undefined;
  });
}

/** "n2 at 2:15 88", "nitrogen 10 40": a figure that goes without a name, right behind or past the hour. */
function figureBehind(items: readonly Item[], from: number): boolean {
  let at = from;
  while (/^(?:at|@|,)$/.test(items[at]?.text ?? "") || items[at]?.colon === true) at++;
  return items[at]?.kind === itemKind.number;
}

/** "550 nitrogen 10 40 and 84 degrees": a phone leaves the colon out of the hour. */
function spacedHour(items: Item[], at: number): void {
  const [hour, minute, next] = items.slice(at, at + 3);
  if (!isBare(hour) || !isBare(minute)) return;
  const told = /^\d{1,2}$/.test(hour.text) && /^[0-5]\d$/.test(minute.text) && hour.value <= 24;
  const ends =
    next === undefined || endsClause(next) || /^(?:and|with|w|pipe|out|it)$/.test(next.text);
  if (!told || !ends || hour.value < 1) return;
  const clock = newItem(itemKind.number, hour.from, minute.to, `${hour.text}:${minute.text}`);
  clock.value = hour.value * 100 + minute.value;
  clock.colon = true;
  clock.numberTo = minute.to;
  items.splice(at, 2, clock);
}
