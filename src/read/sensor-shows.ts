import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { alive } from "./inherit.ts";
import type { Item } from "./item.ts";

const sensors = /^(?:sensor|sensors|thermistor|thermister|snsr)$/;
const shows = /^(?:shows?|showing|says?|saying|displays?|thinks|reports?|reporting)$/;
const own = /^(?:probe|clamp|thermometer|stick|thermocouple)$/;
/** F that a display can show of a machine; no thermistor of that place has so many kilohms. Common practice, no source. */
const shownF = { from: 25, to: 260 } as const;

/** "my probe says 75.8": the technician's own thermometer right before the figure. */
function byThermometer(draft: Draft, items: readonly Item[]): boolean {
  return items.slice(Math.max(0, draft.index - 3), draft.index).some(({ text }) => own.test(text));
}

function bySensor(draft: Draft, items: readonly Item[]): boolean {
  const warm = draft.before.some((index) => items[index]?.label?.hint === "temperature");
  const free = draft.unit === undefined && draft.points === undefined && !draft.over;
  if (!warm || !free) return false;
  return items
    .slice(Math.max(0, draft.index - 3), draft.index)
    .some(({ text }) => sensors.test(text));
}

function warmth(draft: Draft): void {
  draft.component = false;
  draft.named = "temperature";
  draft.hint = undefined;
}

const boards = /^(?:board|controller|display|screen)$/;

/** "new thermistor reads 10.2k and the board says 76": what a board makes of a sensor are degrees, no kilohms. */
function byBoard(draft: Draft, items: readonly Item[]): boolean {
  const near = items.slice(Math.max(0, draft.index - 3), draft.index);
  const at = near.findIndex(({ text }) => boards.test(text));
  const told =
    at >= 0 && near.slice(at + 1).some(({ text }) => shows.test(text) || text === "reads");
  const sensor = items.slice(0, draft.index).some(({ text }) => sensors.test(text));
  const free = draft.unit === undefined && draft.points === undefined && !draft.over;
  return told && sensor && free && draft.value >= shownF.from && draft.value <= shownF.to;
}

/** "rat sensor shows 71.3, my probe says 75.8": what a sensor makes of the air, beside a thermometer, are degrees. */
export function sensorShows(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const list = alive(drafts);
  list.forEach((draft, order) => {
    if (units === "us" && byBoard(draft, items)) warmth(draft);
    if (!bySensor(draft, items)) return;
    const next = list[order + 1];
    const beside = next !== undefined && next.unit === undefined && byThermometer(next, items);
    const verb = shows.test(items[draft.index - 1]?.text ?? "");
    const shown = draft.value >= shownF.from && draft.value <= shownF.to;
    if (!beside && !(verb && shown && units === "us")) return;
    warmth(draft);
    if (!beside) return;
    warmth(next);
    if (next.place === "product") next.place = undefined;
  });
}
