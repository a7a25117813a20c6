import { type Item, itemKind } from "./item.ts";

/** A time of day in a text: minutes since midnight, and whether morning or afternoon was said. */
export interface Clock {
  readonly minutes: number;
  /** "am", "pm", a 24 hour time: nothing to guess */
  readonly sure: boolean;
  readonly from: number;
  readonly end: number;
}

function half(text: string | undefined): "am" | "pm" | undefined {
  return text === "am" || text === "pm" ? text : undefined;
}

function withHalf(minutes: number, said: "am" | "pm"): number {
  const hour = Math.floor(minutes / 60) % 12;
  return (said === "pm" ? hour + 12 : hour) * 60 + (minutes % 60);
}

/** "am", "pm", "o'clock", "ish" behind a time: where it ends and what it says. */
function ending(
  items: readonly Item[],
  i: number,
): { end: number; said: "am" | "pm" | undefined; marked: boolean } {
  const item = items[i];
  const text = item?.text;
  const said = half(text);
  if (said !== undefined) return { end: i + 1, said, marked: true };
  if (text === "this" && item !== undefined && item.to - item.from === 12)
    return { end: i + 1, said: "am", marked: true };
  if (text === "this" && item !== undefined && item.to - item.from === 14)
    return { end: i + 1, said: "pm", marked: true };
  if (text === "tonight") return { end: i + 1, said: "pm", marked: true };
  if (text === "in" && items[i + 1]?.text === "the" && items[i + 2]?.text === "morning")
    return { end: i + 3, said: "am", marked: true };
  if (text === "oclock" || text === "o'clock") return { ...ending(items, i + 1), marked: true };
  if (text === "ish" || text === "hrs" || text === "sharp")
    return { end: i + 1, said: undefined, marked: text === "ish" && item?.glued === true };
  if ((text === "a" || text === "p") && items[i + 1]?.text === "m")
    return { end: i + 2, said: text === "a" ? "am" : "pm", marked: true };
  if (text === "p" && item?.glued === true) return { end: i + 1, said: "pm", marked: true };
  return { end: i, said: undefined, marked: false };
}

/** A number that can be a clock's: 735, 1415, 9. */
function minutesOf(item: Item, loose: boolean): number | undefined {
  if (item.kind !== itemKind.number || item.value < 0 || item.fraction) return undefined;
  if (item.unit !== undefined && item.unit.figure !== "A") return undefined;
  const { value } = item;
  if (item.colon || value >= 100 || /^\d{4}$/.test(item.text)) {
    if (!Number.isInteger(value)) return undefined;
    const hours = Math.floor(value / 100);
    return hours < 24 && value % 100 < 60 ? hours * 60 + (value % 100) : undefined;
  }
  if (item.loose) return undefined;
  return loose && Number.isInteger(value) && value >= 1 && value <= 12 ? value * 60 : undefined;
}

/** "ten to eight", "quarter past nine" */
function toThe(items: readonly Item[], i: number): Clock | undefined {
  const first = items[i];
  const joint = items[i + 1]?.text;
  const hour = items[i + 2];
  if (first?.kind !== itemKind.number || hour?.kind !== itemKind.number || hour.unit !== undefined)
    return undefined;
  if (!Number.isInteger(hour.value) || hour.value < 1 || hour.value > 12) return undefined;
  const minutes = first.fraction || first.value === 0.5 ? first.value * 60 : first.value;
  if (minutes < 1 || minutes > 45 || (first.unit !== undefined && first.unit.figure !== "min"))
    return undefined;
  const before =
    joint === "to" || joint === "til" || joint === "till" || joint === "before" || joint === "of";
  if (!before && joint !== "past" && joint !== "after") return undefined;
  const total = hour.value * 60 + (before ? -minutes : minutes);
  const tail = ending(items, i + 3);
  return {
    minutes: tail.said === undefined ? total : withHalf(total, tail.said),
    sure: tail.said !== undefined,
    from: i,
    end: tail.end,
  };
}

/** "at ten after two", "at quarter past": the joint alone says that it is a time. */
function pastHour(items: readonly Item[], i: number): boolean {
  const joint = items[i + 1]?.text;
  const before = items[i - 1]?.text;
  if (items[i]?.unit !== undefined || items[i + 2]?.unit !== undefined) return false;
  if (!/^(?:at|around|about|its)$/.test(before ?? "") && i > 0) return false;
  return (
    joint === "past" ||
    ((joint === "after" || joint === "til" || joint === "till") && items[i]?.spoken === true)
  );
}

/** "still two fifty at eleven ten": behind a figure two teens are an hour and its minutes, no third and fourth figure. */
function hourOfTeens(items: readonly Item[], i: number): Clock | undefined {
  const [lead, hour, minute, after] = items.slice(i - 1, i + 3);
  // "three fifty of nitrogen in, it's eleven ten"
  const held =
    /^(?:is|its|it's)$/.test(lead?.text ?? "") &&
    items.slice(0, i).some(({ text }) => /^(?:nitrogen|nitro|n2)$/.test(text));
  if (lead === undefined || (!held && !/^(?:at|since|until|till|by)$/.test(lead.text)))
    return undefined;
  const teen = (item: Item | undefined, most: number): item is Item =>
    item?.kind === itemKind.number &&
    item.spoken &&
    item.owner === undefined &&
    item.unit === undefined &&
    Number.isInteger(item.value) &&
    item.value >= 10 &&
    item.value <= most;
  if (!teen(hour, 12) || !teen(minute, 19) || minute.from - hour.to !== 1) return undefined;
  if (after !== undefined && after.kind !== itemKind.sign && after.kind !== itemKind.line)
    return undefined;
  const told = items.slice(0, i - 1).some(({ kind }) => kind === itemKind.number);
  const minutes = hour.value * 60 + minute.value;
  return told ? { minutes, sure: false, from: i, end: i + 2 } : undefined;
}

/**
 * The time of day at item `i`. `loose` where the words around speak of times: then "nine ten",
 * "255" and "ten to eight" count too, else only what is written as a time.
 */
export function clockAt(items: readonly Item[], i: number, loose: boolean): Clock | undefined {
  const item = items[i];
  if (item === undefined) return undefined;
  const teens = hourOfTeens(items, i);
  if (teens !== undefined) return teens;
  if (item.text === "noon") return { minutes: 720, sure: true, from: i, end: i + 1 };
  if (item.kind !== itemKind.number || item.owner !== undefined) return undefined;
  const pointed = loose || pastHour(items, i) ? toThe(items, i) : undefined;
  if (pointed !== undefined) return pointed;
  const tail = ending(items, i + 1);
  const minutes = minutesOf(item, loose || tail.marked);
  if (minutes === undefined) return undefined;
  const military =
    /^0\d{3}$/.test(item.text) ||
    (item.colon && item.value >= 1300) ||
    (item.colon && /^0/.test(item.text));
  if (!item.colon && !tail.marked && !loose && !military) return undefined;
  const sure = tail.said !== undefined || military || minutes >= 780;
  return {
    minutes: tail.said === undefined ? minutes : withHalf(minutes, tail.said),
    sure,
    from: i,
    end: tail.end,
  };
}

function two(number: number): string {
  return String(number).padStart(2, "0");
}

function offsetMinutes(iso: string): number {
  const match = /([+-])(\d\d):?(\d\d)$/.exec(iso);
  if (match === null) return 0;
  const size = Number(match[2]) * 60 + Number(match[3]);
  return match[1] === "-" ? -size : size;
}

/** An instant as ISO in the offset of another. */
function isoLike(instant: number, like: string): string {
  const offset = offsetMinutes(like);
  const local = new Date(instant + offset * 60_000).toISOString().slice(0, 19);
  const size = Math.abs(offset);
  return `${local}${offset < 0 ? "-" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** "14:05" as said; ISO where the message's own moment is known: the nearest such time, not far ahead, and hardly ahead of what `been` says has been. */
export function timeText(clock: Clock, at: string | undefined, been = false): string {
  const plain = `${two(Math.floor(clock.minutes / 60) % 24)}:${two(((clock.minutes % 60) + 60) % 60)}`;
  const moment = at === undefined ? Number.NaN : Date.parse(at);
  if (at === undefined || Number.isNaN(moment)) return plain;
  const offset = offsetMinutes(at);
  const local = new Date(moment + offset * 60_000);
  const midnight =
    moment -
    (((local.getUTCHours() * 60 + local.getUTCMinutes()) * 60 + local.getUTCSeconds()) * 1000 +
      local.getUTCMilliseconds());
  let best = Number.NaN;
  for (const shift of clock.sure ? [-1440, 0, 1440] : [-1440, -720, 0, 720, 1440]) {
    const instant = midnight + (clock.minutes + shift) * 60_000;
    const [far, least] = [instant, best].map((one) => distance(one, moment, been));
    if (Number.isNaN(best) || (far ?? 0) < (least ?? 0)) best = instant;
  }
  return isoLike(best, at);
}

/** How much farther off a time ahead counts, as times are said of what has been; and where it surely has. Our choice, no source. */
const ahead = { mostly: 1.5, been: 12 } as const;

function distance(instant: number, moment: number, been: boolean): number {
  const factor = been ? ahead.been : ahead.mostly;
  return instant > moment ? (instant - moment) * factor : moment - instant;
}

/** So many seconds before the message. */
export function ago(seconds: number, at: string | undefined): string | undefined {
  const moment = at === undefined ? Number.NaN : Date.parse(at);
  return at === undefined || Number.isNaN(moment)
    ? undefined
    : isoLike(moment - seconds * 1000, at);
}
