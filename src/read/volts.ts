import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { nearSupply } from "./guard.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { between } from "./relate.ts";
import type { Setting } from "./settle.ts";
import { shapeOf } from "./shape.ts";

/** What volts between legs, and to ground or neutral, can be; common practice, no source. */
const LOW = 90;
const HIGH = 700;

const supplyWords =
  /^(?:line|lines|leg|legs|lug|lugs|disconnect|disco|breaker|breakers|fuse|fuses|feed|feeder|phase|phases|overvoltage|undervoltage|unbalance|imbalance|load|panel|utility|meter|volts|voltage|supply|power|mains|incoming|contactor)$/;

/** Words that speak of the supply; the drive's output is told by its own. */
function speaksOfSupply(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      (item.kind !== itemKind.number && supplyWords.test(item.text)) ||
      item.points?.some((points) =>
        points.some((point) => /^(?:L\d|phase [A-C1-3])$/.test(point)),
      ) === true,
  );
}

function bare(draft: Draft): boolean {
  return (
    draft.unit === undefined &&
    !draft.over &&
    !draft.same &&
    draft.named === undefined &&
    draft.action === undefined &&
    draft.question === undefined &&
    (draft.rating === undefined || draft.rating === "nominal")
  );
}

function isVolts(value: number): boolean {
  return value >= LOW && value <= HIGH;
}

function make(draft: Draft): void {
  draft.quantity = "voltage";
  draft.unit = unitCalled("V");
  draft.assumedUnit = true;
  draft.assumedQuantity = draft.hint !== "voltage";
  if (draft.place === "supply_air") draft.place = "supply";
}

/** "line reads 521": no line is that warm. */
function hotLine(draft: Draft, items: readonly Item[]): boolean {
  if (draft.hint !== "temperature" || draft.value < 170) return false;
  if (draft.place !== undefined && draft.place !== "supply_air") return false;
  return [...draft.before, ...draft.behind].some((index) =>
    /^(?:line|lines|ln|supply)$/.test(items[index]?.text ?? ""),
  );
}

function legPair(draft: Draft): boolean {
  const points = draft.points?.[0];
  return points?.every((point) => /^(?:L\d|phase [A-C1-3])$/.test(point)) === true;
}

/** "A to ground 278": a leg to ground or neutral, where no insulation is in hand. */
function legToGround(draft: Draft): boolean {
  const points = draft.points?.[0];
  if (points === undefined || !/^(?:L\d|phase [A-C1-3])$/.test(points[0] ?? "")) return false;
  return draft.grounded || points[1] === "ground" || points[1] === "N";
}

function ofNeutral({ points }: Draft): boolean {
  const pair = points?.[0] ?? [];
  return pair.length === 2 && pair.includes("N") && !pair.includes("ground");
}

function near(value: number): boolean {
  return (
    (value >= 105 && value <= 132) ||
    (value >= 198 && value <= 218) ||
    (value >= 225 && value <= 295) ||
    (value >= 330 && value <= 360)
  );
}

/** Three or two values of one row that only volts have. */
function inRow(list: readonly Draft[], items: readonly Item[], at: number): Draft[] {
  const row: Draft[] = [];
  for (let i = at; i < list.length; i++) {
    const draft = list[i];
    const left = row[row.length - 1];
    if (draft === undefined || !bare(draft)) break;
    if (left !== undefined) {
      const gap = between(items, left, draft);
      if (!gap.list && !gap.empty) break;
    } else if (!isVolts(draft.value)) break;
    row.push(draft);
  }
  return row;
}

/** "189 V at the contactor …, 197 sitting idle": a figure of the size of volts said in full. */
function alone(row: readonly Draft[], known: Draft | undefined, items: readonly Item[]): boolean {
  const [one] = row;
  if (one === undefined || row.length > 1 || known === undefined || !known.ownUnit) return false;
  if (one.quantity !== undefined || shapeOf(one) !== "" || !Number.isInteger(one.value))
    return false;
  if (
    items[one.index + 1]?.kind === itemKind.word &&
    items[one.index + 1]?.roles === 0 &&
    !/^(?:sitting|idle|running)$/.test(items[one.index + 1]?.text ?? "")
  )
    return false;
  return one.value > known.value * 0.8 && one.value < known.value * 1.25;
}

/** "line reads 521 519 522", "legs 464 465 231": figures of volts behind a word of the supply. */
function rows(list: readonly Draft[], items: readonly Item[]): void {
  const known = list.find(
    (draft) => draft.quantity === "voltage" && draft.points === undefined && isVolts(draft.value),
  );
  for (let at = 0; at < list.length; at++) {
    const draft = list[at];
    if (draft === undefined || !bare(draft)) continue;
    const row = inRow(list, items, at);
    if (row.length === 0) continue;
    const same =
      known !== undefined &&
      row.length > 1 &&
      row.some((one) => one.value > known.value * 0.85 && one.value < known.value * 1.15);
    const free = row.every((one) => one.quantity === undefined && shapeOf(one) === "");
    if (row.some((one) => hotLine(one, items)) || (same && free) || alone(row, known, items))
      for (const one of row) make(one);
    at += row.length - 1;
  }
}

/** "sags from 239 to 188", "230 to 171 when it starts": a supply that gives way. */
function sags(list: readonly Draft[], items: readonly Item[]): void {
  const said = items.some((item) =>
    /^(?:sag|sags|sagged|sagging|dips|dipped|dip)$/.test(item.text),
  );
  for (const draft of list) {
    const from = draft.series?.[0];
    if (!bare(draft) || draft.quantity !== undefined || from === undefined) continue;
    const start = draft.state === "start" || items.some((item) => item.label?.state === "start");
    if (!nearSupply(from) || !isVolts(draft.value) || draft.value >= from || !(said || start))
      continue;
    make(draft);
    if (start) draft.state = "start";
  }
}

const gear =
  /^(?:motor|contactor|unit|disconnect|disco|panel|breaker|board|compressor|comp|lugs|terminals|load|drive|heater|plug|receptacle|outlet|connector|molex|socket|inducer|igniter|ignitor|whip)$/;

/** "every leg 480", "480 on both legs" */
function ofEachLeg(draft: Draft, items: readonly Item[]): boolean {
  const near = items.slice(Math.max(0, draft.index - 3), draft.index + 4).map(({ text }) => text);
  return (
    /\b(?:leg|legs|phase|phases)\b/.test(near.join(" ")) &&
    near.some((text) => /^(?:all|each|every|both|per|a)\b/.test(text))
  );
}

/** "235 at the motor", "unit 238": a supply's figure, and where it was measured. */
function atGear(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (!bare(draft) || draft.quantity !== undefined || shapeOf(draft) === "L") continue;
    if (!nearSupply(draft.value) || !Number.isInteger(draft.value)) continue;
    const legs = ofEachLeg(draft, items);
    if ((draft.count === 3 || legs) && !draft.grounded && items[draft.index]?.relation === "=") {
      make(draft);
      continue;
    }
    const joint = items[draft.index + 1]?.text;
    let at = draft.index + 2;
    while (/^(?:the|its|outdoor|indoor|fan|blower)$/.test(items[at]?.text ?? "")) at++;
    const behind = (joint === "at" || joint === "on") && gear.test(items[at]?.text ?? "");
    if (behind || stays(items, draft.index)) make(draft);
  }
}

/** "panel stays at 229": gear, a verb, the figure. */
function stays(items: readonly Item[], index: number): boolean {
  let at = index - 1;
  if (items[at]?.text === "at") at--;
  if (!/^(?:is|has|reads|stays|stayed|holds|shows|sees|gets)$/.test(items[at]?.text ?? ""))
    return false;
  const gearAt = items[at - 1]?.text === "base" ? at - 2 : at - 1;
  return /^(?:panel|breaker|disconnect|disco|meter|feed|lugs|utility)$/.test(
    items[gearAt]?.text ?? "",
  );
}

/** "in 481/479/482 out 455/457/300", "xfmr 208 in 26.1 out": the other side of volts, told as in and out. */
function inAndOut(list: readonly Draft[], items: readonly Item[]): void {
  const way = (index: number): string => /^(?:in|out)$/.exec(items[index]?.text ?? "")?.[0] ?? "";
  const transformer = items.some(({ label }) => label?.thing === "transformer");
  list.forEach((draft, order) => {
    if (!bare(draft) || draft.quantity !== undefined || draft.value > HIGH) return;
    const other = list.find((one) => one.quantity === "voltage" && one.value >= LOW);
    if (other === undefined || draft.points !== undefined) return;
    const behind = transformer && way(draft.index + 1) !== "" && way(other.index + 1) !== "";
    const ahead = way(draft.index - 1) !== "" && way(other.index - 1) !== "";
    if (!behind && !ahead) return;
    const sides = [draft.index, other.index].map((index) => way(index + (behind ? 1 : -1)));
    if (sides[0] === sides[1]) return;
    for (const one of inRow(list, items, order)) make(one);
    make(draft);
  });
}

/** "line 240 load 0": the other side of what was just read in volts. */
function loadSide(list: readonly Draft[], items: readonly Item[]): void {
  if (!list.some((draft) => draft.quantity === "voltage" && draft.value >= LOW)) return;
  inAndOut(list, items);
  for (const draft of list) {
    const free = draft.quantity === undefined || draft.hint === "temperature";
    if (!bare(draft) || !free || draft.value > HIGH || draft.points !== undefined) continue;
    if (/^(?:load|secondary|primary)$/.test(items[draft.index - 1]?.text ?? "")) make(draft);
  }
}

/** Bare figures that are volts by where they were measured. */
export function byVolts(
  list: readonly Draft[],
  items: readonly Item[],
  setting: Setting,
  context: Context,
): void {
  if (!list.some((draft) => draft.value >= LOW && draft.value <= HIGH)) return;
  if (!list.some((draft) => bare(draft))) return;
  if (items.some((item) => item.unit?.dimension === "pressure")) {
    legs(list, setting, context);
    return;
  }
  if (speaksOfSupply(items)) rows(list, items);
  legs(list, setting, context);
  output(list, items);
  loadSide(list, items);
  atGear(list, items);
  sags(list, items);
}

function legs(list: readonly Draft[], setting: Setting, context: Context): void {
  const pairs = list.filter((draft) => bare(draft) && legPair(draft));
  if (
    pairs.length > 1 &&
    pairs.some((draft) => isVolts(draft.value) && draft.points?.[0]?.length === 2)
  )
    for (const draft of pairs) if (draft.points?.[0]?.length === 2) make(draft);
  const neutral = list.filter((draft) => bare(draft) && ofNeutral(draft));
  const unlike = list.some((draft) => ofNeutral(draft) && !neutral.includes(draft));
  const likelyNeutral = neutral.filter(({ value }) => near(value)).length > 1;
  // "insulation 118/262/625 Mohm. L1-N 235 L2-N 237": a leg's volts to neutral, whatever was tested
  if (likelyNeutral && !unlike) for (const draft of neutral) make(draft);
  const grounds = list.filter((draft) => bare(draft) && (legToGround(draft) || legPair(draft)));
  const last = context.readings[context.readings.length - 1]?.quantity;
  const tested =
    context.test !== undefined ||
    last === "insulation_resistance" ||
    list.some((draft) => draft.unit?.dimension === "resistance" || draft.testVoltage !== undefined);
  if (tested || setting.winding || grounds.length < 2) return;
  const toGround = grounds.some((draft) => legToGround(draft));
  const said = list.some((draft) => draft.hint === "voltage");
  if (!toGround && !said) return;
  const likely = (value: number): boolean => near(value) || (!toGround && nearSupply(value));
  if (grounds.filter((draft) => likely(draft.value)).length < 2) return;
  for (const draft of grounds) {
    make(draft);
    if (toGround) draft.grounded = true;
  }
}

/** "output is U-V 210, V-W 95": pairs of the motor's leads with figures that no winding has. */
function output(list: readonly Draft[], items: readonly Item[]): void {
  const pairs = list.filter(
    (draft) =>
      bare(draft) &&
      draft.points?.[0]?.length === 2 &&
      draft.points[0].every((point) => /^(?:[UVW]|T[123])$/.test(point)),
  );
  if (pairs.length === 0 || !pairs.some((draft) => isVolts(draft.value))) return;
  const drive = items.some((item) => /^(?:output|outputs|drive|inverter|vfd|bus)$/.test(item.text));
  const live = pairs.filter((draft) => isVolts(draft.value)).length;
  const other =
    pairs.length > 1 &&
    (live > 1 || pairs.every((draft) => draft.value === 0 || draft.value >= 40));
  if (!drive && !other) return;
  for (const draft of pairs) {
    make(draft);
    if (drive) draft.place = "drive_output";
  }
}
