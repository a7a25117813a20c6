import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const isBare = ({ unit, points, rating, gone }: Draft): boolean =>
  unit === undefined && points === undefined && rating === undefined && !gone;

const textAt = (items: readonly Item[], at: number): string => items[at]?.text ?? "";

/** "return static minus .42 supply plus .61": each side's own name stands before its figure. */
export function staticSides(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text }) => /^(?:static|statics|esp)$/.test(text))) return;
  for (const draft of drafts) {
    const named = draft.named === "static_pressure" || draft.unit?.dimension === "inches_of_water";
    const bare = draft.unit === undefined && Math.abs(draft.value) < 3;
    if (draft.gone || !(named || bare)) continue;
    const before = textAt(items, draft.index - 1);
    const side = /^(?:return|ret|rtn)$/.test(before) ? "return_air" : "supply_air";
    if (side === "supply_air" && !/^(?:supply|sup|sply)$/.test(before)) continue;
    draft.named = "static_pressure";
    draft.hint = undefined;
    draft.place = side;
  }
}

/** "filters …, drop across em .38": what a filter loses is no warmth. */
export function filterDrop(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text }) => /^(?:filter|filters)$/.test(text))) return;
  for (const draft of drafts) {
    if (!isBare(draft) || draft.value <= 0 || draft.value >= 2) continue;
    const led = items.slice(Math.max(0, draft.index - 4), draft.index);
    if (led.some(({ text }) => /^(?:drop|dp)$/.test(text)))
      takeFor(draft, "static_pressure", "in wc");
  }
}

/** "between dc plus and minus 688": both rails, and no sign of the figure. */
export function betweenRails(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.gone || draft.value > -50 || draft.unit !== undefined) continue;
    const led = items.slice(Math.max(0, draft.index - 4), draft.index);
    const plus = led.some((item) => /^(?:plus|positive|pos|dc)$/.test(item.text));
    if (!plus || textAt(items, draft.index - 1) !== "and") continue;
    draft.value = -draft.value;
    takeFor(draft, "voltage", "V");
    draft.points = undefined;
    draft.place = "dc_bus";
    draft.kind = "dc";
  }
}

const wires = /^(?:vcc|vsp|vm|vdc)$/;

/** "head 4 fan dc 318 vcc 15 command 3.4": volts at the plug of a fan that is fed with direct current. */
export function dcPlug(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text }) => wires.test(text))) return;
  for (const draft of drafts) {
    if (!isBare(draft) || draft.value < 0 || draft.value > 420) continue;
    const led = items.slice(Math.max(0, draft.index - 3), draft.index);
    const told = /^(?:vcc|vsp|vm|vdc|dc|command|cmd|signal|speed)$/;
    if (!led.some(({ text }) => told.test(text))) continue;
    takeFor(draft, "voltage", "V");
    draft.place = undefined;
    draft.kind = "dc";
  }
}

/** V that a motor is fed with, at least; common practice, no source. */
const leastFeed = 100;

/** "fan isnt spinning, 240 at it": what stands there are volts. */
export function standsAtIt(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (!isBare(draft) || draft.value < leastFeed || draft.value > 620) continue;
    const [at, it] = [textAt(items, draft.index + 1), textAt(items, draft.index + 2)];
    const next = items[draft.index + 3];
    const ends = next === undefined || isStrongBreak(next) || next.text === ",";
    if (at === "at" && it === "it" && ends) takeFor(draft, "voltage", "V");
  }
}

const supplies: ReadonlySet<number> = new Set([208, 230, 240, 460, 480, 575, 600]);

/** "need vfd 10 hp 480, 14 amp output", "480 volt 24 kw model": what is to be bought is called so. */
export function calledSo(drafts: readonly Draft[], items: readonly Item[]): void {
  const need = items.some(({ text }) => /^(?:need|needs|order|ordering|ordered)$/.test(text));
  const model = items.findLastIndex(({ text }) => text === "model");
  for (const draft of drafts) {
    if (draft.gone || draft.rating !== undefined) continue;
    const horses = need && textAt(items, draft.index - 1) === "hp" && supplies.has(draft.value);
    if (horses && items[draft.index - 2]?.kind !== itemKind.sign) takeFor(draft, "voltage", "V");
    const ahead = model > draft.index && model - draft.index <= 3 && draft.ownUnit;
    if (!horses && !ahead) continue;
    draft.place = undefined;
    draft.rating = "nominal";
  }
}

/** "main dc is 640" behind a test of windings: a drive's bus. */
export function mainDc(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (!isBare(draft) || draft.value < leastFeed || draft.value > 900) continue;
    const is = /^(?:is|at|reads|was|[:=])$/.test(textAt(items, draft.index - 1));
    const dc = is ? draft.index - 2 : draft.index - 1;
    if (textAt(items, dc) !== "dc" || textAt(items, dc - 1) !== "main") continue;
    takeFor(draft, "voltage", "V");
    draft.place = "dc_bus";
    draft.kind = "dc";
  }
}

/** K or F that a furnace warms the air; common practice, no source. */
const rise = { from: 15, to: 110 } as const;

/** "rise 48 on low 57 on high limit is 30 to 60": the same of both fires, and what the plate allows. */
export function riseOfFires(drafts: readonly Draft[], items: readonly Item[]): void {
  const first = drafts.findIndex(({ named }) => named === "temperature_difference");
  const start = drafts[first];
  if (start === undefined || !items.some(({ text }) => text === "rise")) return;
  const fire = (one: Draft): boolean => {
    const next = textAt(items, one.index + 1);
    return /^(?:low|high|lo|hi)$/.test(next === "on" ? textAt(items, one.index + 2) : next);
  };
  if (!fire(start)) return;
  for (const draft of drafts.slice(first + 1)) {
    const most = Number.isNaN(draft.high) ? draft.value : draft.high;
    if (draft.unit !== undefined || draft.gone || most < rise.from || most > rise.to) continue;
    const led = items.slice(Math.max(0, draft.index - 4), draft.index);
    const limit = led.some(({ text }) => /^(?:limit|plate|max|range|allowed)$/.test(text));
    if (!fire(draft) && !limit) continue;
    draft.named = "temperature_difference";
    draft.hint = undefined;
    draft.place = undefined;
    draft.stat = undefined;
    draft.rating = limit ? "nominal" : undefined;
  }
}

/** "u v w to earth 250 M 260 M 255 M": three points, and three figures that each have their unit. */
export function threeEach(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((first, order) => {
    const row = drafts.slice(order, order + 3);
    const { points } = first;
    const led = items[first.index - 1]?.kind;
    if (led !== itemKind.points && led !== itemKind.ground) return;
    if (points?.length !== 3 || row.length < 3 || !first.ownUnit) return;
    const like = row
      .slice(1)
      .every(
        (one, at) =>
          one.points === undefined &&
          one.before.length === 0 &&
          (one.unit === undefined || one.unit.dimension === first.unit?.dimension) &&
          one.index - (row[at]?.index ?? 0) <= 2,
      );
    if (!like) return;
    row.forEach((one, leg) => {
      one.points = [points[leg] ?? []];
      one.grounded = first.grounded;
    });
  });
}
