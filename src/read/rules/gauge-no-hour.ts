import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { role } from "../word.ts";
import { textAt } from "./near.ts";

/** "410 this morning" behind 300 microns: what the gauge shows today, no hour. */
/** "vacuum is at 700 and going down", "head's at 225": the name that stands before "at", past its verb. */
export function shownAt(items: readonly Item[], at: number): Item["label"] {
  const is = ((items[at - 1]?.roles ?? 0) & role.is) !== 0 ? 2 : 1;
  return items[at - is]?.label;
}

/** "it's 4:15 on the high side": what a gauge of that side shows. */
export function onSide(items: readonly Item[], i: number): boolean {
  if (!/^(?:on|at)$/.test(items[i + 1]?.text ?? "")) return false;
  const side = items[items[i + 2]?.text === "the" ? i + 3 : i + 2];
  return /^(?:suction|discharge|liquid)$/.test(side?.label?.place ?? "");
}

export function likeTheLast({ items, context }: Note, item: Item, end: number): boolean {
  const last = context.readings.at(-1);
  if (last?.quantity !== "vacuum" && last?.quantity !== "pressure") return false;
  if (item.colon || item.value < 100 || items[end - 1]?.text !== "this") return false;
  const far = item.value / Number(last.figure.number);
  return far > 0.5 && far < 2;
}

/** "gauges equal at 242": what they show, no time. */
export function ofGauges(items: readonly Item[], i: number): boolean {
  const [at, item] = [items[i - 1], items[i]];
  if (item?.kind !== itemKind.number || item.colon || !/^(?:at|@)$/.test(at?.text ?? ""))
    return false;
  return items
    .slice(Math.max(0, i - 5), i)
    .some(({ text }) =>
      /^(?:gauges?|gages?|hoses?|needles?|pressures?|equal|equali[sz]ed)$/.test(text),
    );
}

/** Share by which a hold's next figure differs at most from the one before; our choice, no source. */
const nearPressure = 0.25;

/** "429 this morning" behind "450 psi of nitrogen last night": the gauge again, no half past four. */
export function gasAgain({ items, context }: Note, i: number): boolean {
  const item = items[i];
  const gas = context.readings.findLast(({ quantity }) => quantity === "pressure");
  if (item?.kind !== itemKind.number || item.colon || item.value < 100) return false;
  if (gas === undefined || gas.at !== undefined || gas.figure.unit !== "psi") return false;
  if (/^(?:at|@|by|till|until|since|before|around)$/.test(textAt(items, i - 1))) return false;
  const before = Number(gas.figure.number);
  return Math.abs(item.value - before) <= nearPressure * before;
}

const takesBack =
  /^(?:i|mean|meant|no|nope|wait|sorry|oops|thats|its|it|is|was|make|that|should|be|actually|correction|[,.])$/;

/** "I meant 1:42" behind a suction of 124: the phone's colon in what replaces a gauge's figure, no hour. */
export function correctsFigure({ items, context }: Note, i: number): boolean {
  const [item, last] = [items[i], context.readings.at(-1)];
  if (item?.colon !== true || last === undefined || last.measured_at !== undefined) return false;
  if (i === 0 || items.length > i + 2 || last.rating !== undefined) return false;
  if (!items.slice(0, i).every(({ text }) => takesBack.test(text))) return false;
  const share = item.value / Number(last.figure.number);
  return share > 0.3 && share < 3;
}

/** "hp switch opens 610 closes 420", "… opened at 425 and closed back at 305": a switch has no hours. */
export function ofSwitch(items: readonly Item[], i: number): boolean {
  // "pump down test cut out at 8 cut in at 24"
  if (items[i - 1]?.text === "at" && isCut(items[i - 2])) return true;
  if (isCut(items[i - 1]) && items[i]?.colon !== true) return true;
  const verb = items
    .slice(Math.max(0, i - 3), i)
    .some(({ text }) => /^(?:re)?(?:open|close|made|makes|trip|cut)(?:s|ed|d|ped)?$/.test(text));
  if (!verb) return false;
  return items
    .slice(0, i)
    .some(
      (item) =>
        /^(?:hps|lps|hpc|lpc|switch|cutout|control|sw|hpco|lpco|pressure|stat|klixon|termination|limit)$/.test(
          item.text,
        ) || /switch/.test(item.text),
    );
}

const isCut = (item: Item | undefined): boolean =>
  /^cuts?$/.test(item?.text ?? "") && item?.label?.rating === "setpoint";

/** "closed the valve at sixteen twenty": in hundreds and minutes, as no valve opens. */
export function shutAt(items: readonly Item[], i: number): boolean {
  const item = items[i];
  const value = item?.value ?? 0;
  if (item?.unit !== undefined || value < 1300 || value >= 2400 || value % 100 > 59) return false;
  return items
    .slice(Math.max(0, i - 5), i)
    .some(({ text }) => /^(?:close|shut|isolate)d?$/.test(text));
}

/** "pulling vac 2pm", "amps 3pm 12.1": glued to its half of the day a figure is an hour, whatever stands before it. */
export function halfTold(items: readonly Item[], i: number): boolean {
  const next = items[i + 1];
  return next?.glued === true && /^[ap]m$/.test(next.text) && items[i]?.spoken !== true;
}

/** "we started at four hundred this morning": a figure in hundreds, no hour. */
export function startedAt(items: readonly Item[], i: number): boolean {
  const item = items[i];
  return (
    item?.spoken === true &&
    item.value % 100 === 0 &&
    item.value < 1000 &&
    (/^(?:started|began|left)$/.test(textAt(items, i - 1)) ||
      (/^(?:started|was|began|left|set)$/.test(textAt(items, i - 2)) &&
        textAt(items, i - 1) === "at"))
  );
}

/** psi at which a high pressure switch opens. Common practice, no source. */
const tripPsi = [250, 700] as const;

/** "off since 6am, tripped the hp switch at 610": what opened has its psi, whatever hour was told. */
export function tripsAt(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.kind !== itemKind.number || item.unit !== undefined || item.colon) return false;
  if (item.value < tripPsi[0] || item.value > tripPsi[1] || items[i - 1]?.text !== "at")
    return false;
  if (/^[ap]m?$/.test(items[i + 1]?.text ?? "") || /^0/.test(item.text)) return false;
  const near = items.slice(Math.max(0, i - 6), i - 1);
  const opened = near.some(({ text }) => /^(?:trip|open|lock|kick)(?:s|ed|ped)?$/.test(text));
  const high = near.some(
    ({ text, label }) => /^(?:hps?|hpc|hpco)$/.test(text) || label?.place === "discharge",
  );
  return opened && high && near.some(({ text }) => /^(?:hp|high|hi|head)/.test(text));
}

/** "gc out 79 at 1050": behind how warm the gas left its cooler stands its pressure. */
export function ofCooler(items: readonly Item[], i: number): boolean {
  const [name, warm, at, item] = items.slice(Math.max(0, i - 3), i + 1);
  if (i < 3 || item?.colon === true || item?.unit !== undefined) return false;
  if (at?.text !== "at" || warm?.kind !== itemKind.number) return false;
  return name?.label?.hint === "temperature" && /^(?:gas|gc|gascooler|gcot)$/.test(name.text);
}

/** psi of nitrogen that no pipe of this trade is tested at. Common practice, no source. */
const overTest = 700;

/** "n2 550 1140 41 out": behind what was put on, as many hundreds and minutes as no test has psi. */
export function ofHold(items: readonly Item[], i: number): boolean {
  const [gas, value, item] = items.slice(Math.max(0, i - 2), i + 1);
  if (i < 2 || item?.kind !== itemKind.number || item.unit !== undefined || item.colon)
    return false;
  if (!/^(?:n2|nitro|nitrogen|ofn)$/.test(gas?.text ?? "") || value?.kind !== itemKind.number)
    return false;
  if (!/^\d{3,4}$/.test(item.text) || value.value >= overTest) return false;
  return item.value > overTest && item.value < 2400 && item.value % 100 < 60;
}
