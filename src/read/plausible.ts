import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { isLineVolts } from "./line-volts.ts";
import { between } from "./relate.ts";
import type { Setting } from "./settle.ts";
import { isPair } from "./shape.ts";
import { signIndex } from "./signs.ts";

const isolated: readonly number[] = [signIndex("do:vacuum_isolated")];

/** "defrost heaters 21.4 21.2 and one open": beside an open one, ohms are meant. */
export function byOpen(list: readonly Draft[]): void {
  const open = list.find((draft) => draft.over && draft.quantity === "resistance");
  if (open === undefined) return;
  for (const draft of list)
    if (
      draft.quantity === undefined &&
      draft.unit === undefined &&
      (draft.component || (draft.points === undefined && draft.place === undefined))
    ) {
      draft.quantity = "resistance";
      draft.unit = unitCalled("ohm");
      draft.assumedUnit = true;
    }
}

/** A test was announced and its first values come: "one minute 45", "lead 1 84". */
export function byTest(draft: Draft, list: readonly Draft[], context: Context): void {
  if (
    (context.test === undefined && draft.testVoltage === undefined) ||
    draft.quantity !== undefined ||
    draft.unit !== undefined ||
    draft.question !== undefined
  )
    return;
  const last = context.readings[context.readings.length - 1];
  const ahead = context.test?.ahead === true;
  if (last !== undefined && last.quantity !== "insulation_resistance" && !ahead) return;
  const pair = isPair(draft);
  const row =
    (last === undefined || ahead || draft.testVoltage !== undefined) &&
    list.length > 1 &&
    list.length <= 3 &&
    list.every((one) => one.unit === undefined || (ahead && isMegohm(one)));
  // "500 V test all three leads over 2000"
  const counted = draft.count > 1 && draft.testVoltage !== undefined;
  if (pair || (draft.points === undefined && draft.after === undefined && !row && !counted)) return;
  draft.quantity = "insulation_resistance";
  draft.assumedQuantity = true;
  // "340, 63, 192 megohm": said behind the last of the row
  const unit = row ? list.find(isMegohm)?.unit : undefined;
  if (unit === undefined) return;
  draft.unit = unit;
  draft.assumedUnit = true;
}

function isMegohm({ unit }: Draft): boolean {
  return unit?.dimension === "resistance" && unit.factor >= 1e6;
}

const valvedOff =
  /^(?:at (?:\d{1,2}:\d\d )?|when |just |and )?(?:i )?(?:valved? (?:it )?off|blank(?:ed)? off|shut the core)\b/;

/** "valved off at 1100", "290 at valve off" */
function shutAt(draft: Draft, items: readonly Item[]): boolean {
  const behind = items.slice(draft.index + 1, draft.index + 5).map(({ text }) => text);
  if (valvedOff.test(behind.join(" "))) return true;
  if (isBlanked(draft, items)) return true;
  if (items[draft.index - 1]?.text !== "at") return false;
  return items
    .slice(Math.max(0, draft.index - 4), draft.index)
    .some((item) => item.signs?.some((sign) => isolated.includes(sign)));
}

/** "480 mic, blank off 612": behind microns, right behind what shut the pump off. */
function shutBefore(draft: Draft, list: readonly Draft[], items: readonly Item[]): boolean {
  const microns = list.some((one) => one.ownUnit && one.quantity === "vacuum");
  const shut = [items[draft.index - 1], items[draft.index - 2]].some((item) =>
    item?.signs?.some((sign) => isolated.includes(sign)),
  );
  return microns && shut;
}

/** Only a pump is blanked off, whatever a gauge showed before. */
const blanked = /\bblank(?:ed)?(?: it)? off$/;

const isBlanked = ({ index }: Draft, items: readonly Item[]): boolean =>
  blanked.test(wordsFrom(items, index - 3, index).replace(/ at$/, ""));

/**
 * "280 isolated, 310 after ten minutes": values told by the clock once the pump is shut off. With a
 * context only where no gauge was read last: volts or megohms have no say in this vacuum.
 */
export function byIsolation(
  list: readonly Draft[],
  items: readonly Item[],
  context?: Context,
): void {
  const before = context?.readings.at(-1)?.quantity;
  const pumped = context?.testing === "vacuum";
  const shown = before === "pressure" && !pumped && !list.some((one) => isBlanked(one, items));
  if (before === "vacuum" || shown) return;
  if (!list.some((draft) => draft.quantity === undefined && draft.unit === undefined)) return;
  const shut = items.some((item) => item.signs?.some((sign) => isolated.includes(sign)));
  if (!shut) return;
  const timed = list.some((draft) => draft.after !== undefined);
  for (const draft of list)
    if (
      (timed || shutAt(draft, items) || shutBefore(draft, list, items)) &&
      draft.quantity === undefined &&
      draft.unit === undefined &&
      draft.place === undefined &&
      draft.points === undefined &&
      draft.value >= 50 &&
      draft.value <= 20000
    ) {
      draft.quantity = "vacuum";
      draft.assumedQuantity = true;
    }
}

/** Words of pressures that are watched as they stand. */
const standing =
  /^(?:leak|leaking|n2|nitrogen|nitro|psi|gauge|gauges|micron|microns|vacuum|decay|isolated)$/;

/** Three values of one size between 180 and 620: the legs of a supply. */
export function byThree(
  list: readonly Draft[],
  items: readonly Item[],
  setting: Setting,
  { test }: Context,
): void {
  // what comes behind "megging at 500" are its megohms
  if (test?.ahead === true) return;
  if (setting.insulation && list.some((draft) => draft.testVoltage !== undefined)) return;
  if (list.some((draft) => draft.after !== undefined || draft.lasting !== undefined)) return;
  if (items.some((item) => standing.test(item.text))) return;
  for (let i = 0; i + 2 < list.length; i++) {
    const row = list.slice(i, i + 3);
    const bare = row.every(
      (draft) =>
        (draft.quantity === undefined || supplyAir(draft)) &&
        draft.unit === undefined &&
        draft.rating === undefined &&
        !draft.over &&
        draft.value >= 180 &&
        draft.value <= 620,
    );
    const legs = row.every(
      (draft) =>
        /^(?:L\d|phase [A-C1-3])$/.test(draft.points?.[0]?.[0] ?? "") &&
        draft.points?.[0]?.length === 1,
    );
    const plainRow = row.every(
      (draft, at) => draft.points === undefined && (at === 0 || rowGap(items, row[at - 1], draft)),
    );
    const joined = legs || plainRow;
    const low = Math.min(...row.map((draft) => draft.value));
    const high = Math.max(...row.map((draft) => draft.value));
    if (!bare || !joined || high > low * 1.3) continue;
    for (const draft of row) {
      if (supplyAir(draft)) draft.place = "supply";
      draft.quantity = "voltage";
      draft.assumedQuantity = true;
    }
  }
}

/** "comp 0.71 0.71 0.72 and 820 meg": three small values of one size before its insulation. */
export function byPairs(
  list: readonly Draft[],
  items: readonly Item[],
  context: Context,
  setting: Setting,
): void {
  if (list.length < 3 || !list.some((draft) => draft.quantity === undefined)) return;
  const last = context.readings[context.readings.length - 1]?.quantity;
  const beside =
    list.some((draft) => draft.quantity === "insulation_resistance") ||
    last === "insulation_resistance" ||
    setting.winding ||
    items.some((item) => /^(?:pins|terminals|zeroed|ohmed|ohms)$/.test(item.text));
  if (!beside) return;
  for (let i = 0; i + 2 < list.length; i++) {
    const row = list.slice(i, i + 3);
    const bare = row.every(
      (draft) =>
        draft.quantity === undefined &&
        draft.unit === undefined &&
        draft.points === undefined &&
        draft.value > 0 &&
        draft.value < 30,
    );
    const joined = row.every((draft, at) => at === 0 || rowGap(items, row[at - 1], draft));
    if (!bare || !joined || !pairLike(row)) continue;
    for (const draft of row) {
      draft.quantity = "winding_resistance";
      draft.assumedQuantity = true;
    }
  }
}

/** "1.1 1.1 1.1 and a gig": three pairs of pins, then what they have to ground. */
export function pinsBeforeGround(list: readonly Draft[], items: readonly Item[]): void {
  for (let at = 0; at + 3 < list.length; at++) {
    const [a, b, c, ground] = list.slice(at, at + 4);
    if (a === undefined || b === undefined || c === undefined || ground === undefined) return;
    if (ground.unit?.dimension !== "resistance" || ground.unit.factor < 1e6) continue;
    const row = [a, b, c];
    const bare = row.every(
      (one) =>
        (one.quantity === undefined || one.quantity === "diode_drop") &&
        one.unit === undefined &&
        one.points === undefined &&
        one.value < 30 &&
        !one.over,
    );
    const spaced = b.index === a.index + 1 && c.index === b.index + 1;
    const begins = list[at - 1]?.index !== a.index - 1;
    const joint = items[c.index + 1]?.text;
    if (!bare || !spaced || !begins || ground.index !== c.index + 2) continue;
    if (joint !== "and" && joint !== ",") continue;
    for (const one of row) {
      one.quantity = "winding_resistance";
      one.assumedQuantity = true;
    }
  }
}

/** Pins' values are of one size, and small where they are told with one or two decimals. */
function pairLike(row: readonly Draft[]): boolean {
  if (row[0]?.thing === "compressor") return true;
  const values = row.map((draft) => draft.value);
  return Math.max(...values) < Math.min(...values) * 3 && values.some((one) => one < 10);
}

function rowGap(items: readonly Item[], left: Draft | undefined, right: Draft): boolean {
  if (left === undefined) return false;
  const gap = between(items, left, right);
  return gap.list || gap.empty;
}

function supplyAir(draft: Draft): boolean {
  return draft.quantity === "temperature" && draft.place === "supply_air" && !draft.ownUnit;
}

/** Legs with a value that only volts have: "L1-L2 481". */
export function byPlausibility(draft: Draft): void {
  if (draft.quantity !== undefined || draft.unit !== undefined || draft.over) return;
  const pair = draft.points?.[0];
  if (pair === undefined || pair.length !== 2) return;
  const legs =
    pair.every((point) => /^(?:L\d|N|phase [A-C1-3]|ground)$/.test(point)) &&
    !pair.includes("ground");
  if (/^[GWOY]$/.test(pair[0] ?? "") && pair[1] === "C" && (draft.value < 1 || draft.value >= 16)) {
    draft.quantity = "voltage";
    draft.assumedQuantity = true;
    return;
  }
  const thermostat = pair.includes("R") && pair.includes("C");
  if (thermostat && draft.value >= 18 && draft.value <= 32) draft.quantity = "voltage";
  const pins =
    !(thermostat && draft.value < 0.1) &&
    pair.every((point) => /^(?:[CSRTUVW]|T\d|lead \d)$/.test(point));
  // "R-S 481 S-T 479": the legs of a supply by their letters
  const lettered = pair.every((point) => /^[RST]$/.test(point));
  if ((legs || lettered) && isLineVolts(draft.value)) draft.quantity = "voltage";
  else if (draft.quantity === undefined && pins && draft.value < 60)
    draft.quantity = "winding_resistance";
  if (draft.quantity !== undefined) draft.assumedQuantity = true;
}
