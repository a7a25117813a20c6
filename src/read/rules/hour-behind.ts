import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { testerVolts } from "../tester-volts.ts";
import { freeNumber, textAt } from "./near.ts";

/** What is told at a speed, a flow or a frequency: "60 hz at 1750", "static .6 at 1200". */
const flows =
  /^(?:frequency|rotational_speed|airflow|static_pressure|water_flow|power|resistance)$/;
const turns: ReadonlySet<string> = new Set(["frequency", "speed", "airflow", "inches_of_water"]);

function isFace(item: Item | undefined): item is Item {
  if (!freeNumber(item) || item.unit !== undefined || item.fraction) return false;
  const hour = Math.floor(item.value / 100);
  return Number.isInteger(item.value) && hour >= 1 && hour < 24 && item.value % 100 < 60;
}

/** 1430 as typed: four digits and no comma. */
function isTyped(item: Item): boolean {
  return !item.spoken && item.to - item.from === 4 && item.value >= 600;
}

/** Share above its first figure that gas in a closed circuit doesn't climb to; our choice, no source. */
const tooFar = 1.3;

/** "ten forty five", from ten on: no gauge that was read as three figures climbs to four. */
function isSpoken(item: Item): boolean {
  return item.spoken && item.value > 1000 && item.value < 1300 && item.value % 100 !== 0;
}

/** "still 180 at 1245", "three fifty on it at ten fifteen": behind a figure the hour that it was read at. */
function atHour({ items, context, plain }: Note, i: number): boolean {
  const item = items[i];
  if (
    !isFace(item) ||
    !(isTyped(item) || isSpoken(item)) ||
    !/^(?:at|@)$/.test(textAt(items, i - 1))
  )
    return false;
  if (items.some(({ label }) => flows.test(label?.quantity ?? ""))) return false;
  if (items.some(({ unit }) => turns.has(unit?.dimension ?? ""))) return false;
  const tests =
    items.some(({ kind }) => kind === itemKind.points || kind === itemKind.ground) ||
    /\b(?:meg|insul|iso|hipot)/.test(plain) ||
    context.readings.at(-1)?.quantity === "insulation_resistance";
  if (tests && testerVolts.has(item.value)) return false;
  let before = i - 2;
  while (
    /^(?:psi|psig|nitrogen|nitro|n2|on|it|there|still|holding|held|holds|steady|good|solid|sitting|,)$/.test(
      textAt(items, before),
    )
  )
    before--;
  const figure = items[before];
  if (item.spoken && (figure?.value ?? 0) * tooFar > item.value) return false;
  return freeNumber(figure) && before >= i - 5;
}

/** "Chiller 1 log 1400": at the end of its line the hour that the figures below were read at. */
function logHour({ items }: Note, i: number): boolean {
  const [item, next] = [items[i], items[i + 1]];
  if (!isFace(item) || !isTyped(item) || next?.kind !== itemKind.line) return false;
  return /^(?:log|logs|logged|readings|rounds|taken)$/.test(textAt(items, i - 1));
}

/** "put two fifty of nitrogen on it, it's nine forty now": what is held never climbs so far. */
function hourOfHold({ items }: Note, i: number): boolean {
  const [its, item] = [items[i - 1], items[i]];
  if (!isFace(item) || item.value % 100 === 0) return false;
  const told = /^(?:its|it's)$/.test(its?.text ?? "");
  const apart = its?.text === "is" && /^(?:it|time)$/.test(textAt(items, i - 2));
  // "forty bar of nitrogen, started at ten fifteen"
  const begun = /^(?:started|starting|began|begun)$/.test(
    its?.text === "at" ? textAt(items, i - 2) : (its?.text ?? ""),
  );
  if (!told && !apart && !begun) return false;
  const gas = items.slice(0, i).some(({ text }) => /^(?:nitrogen|nitro|n2)$/.test(text));
  if (!gas && !(begun && items.some(({ unit }) => unit?.dimension === "pressure"))) return false;
  const held = items.slice(0, i).filter(freeNumber);
  return held.length === 1 && item.value > (held[0]?.value ?? 0) * tooFar;
}

/** "nitrogen was 480 at eleven oh five and it's 478 now": behind what is held, a figure that it never climbs to. */
function hourSpoken({ items }: Note, i: number): boolean {
  const [item, next] = [items[i], textAt(items, i + 1)];
  if (!isFace(item) || !item.spoken || item.value % 100 === 0) return false;
  const warm = items[i + 1]?.unit?.dimension === "temperature";
  const goesOn = warm || /^(?:and|its|it's|it|now|then|pipe|pipes|,|\.|)$/.test(next);
  if (textAt(items, i - 1) !== "at" || !goesOn) return false;
  const ahead = items.slice(0, i);
  if (!ahead.some(({ text }) => /^(?:nitrogen|nitro|n2)$/.test(text.replace("'s", ""))))
    return false;
  const held = ahead.filter((one) => one.kind === itemKind.number && one.owner === undefined);
  const last = held.at(-1);
  const near = last !== undefined && items.indexOf(last) >= i - 4;
  const far = item.value / (last?.value ?? Number.NaN);
  return near && (far > tooFar || far < 1 / tooFar);
}

/** "nitrogen in at two fifty ten twenty": right behind what is held the hour, where the message ends. */
function hourAtEnd({ items }: Note, i: number): boolean {
  const [held, item, next] = [items[i - 1], items[i], items[i + 1]];
  if (!isFace(item) || !item.spoken || item.value % 5 !== 0 || item.value % 100 === 0) return false;
  const warm = items.slice(i + 1, i + 5).some(({ unit }) => unit?.dimension === "temperature");
  if (!freeNumber(held) || !(next === undefined || warm || /^[,.]$/.test(next.text))) return false;
  const gas = items.slice(0, i).some(({ text }) => /^(?:nitrogen|nitro|n2)$/.test(text));
  const others = items.filter(
    ({ kind, unit }) => kind === itemKind.number && unit?.dimension !== "temperature",
  );
  const alone = others.length === 2;
  return gas && alone && item.value > held.value * tooFar;
}

const leads = /^(?:at|and|now|so|okay|ok|its|it's|it|is|was|then|[,.])$/;
const stands =
  /^(?:and|now|so|then|its|it's|it|is|was|were|we|still|at|holding|holds|sitting|there|only|about|down|up|to|[,.])$/;

/** "twelve thirty five and it's still at four fifty" behind 450 psi: what the gauge shows is like the last, so the first is the hour. */
function hourAhead({ items, context }: Note, i: number): boolean {
  const item = items[i];
  const last = context.readings.at(-1);
  if (last?.quantity !== "pressure" && last?.quantity !== "vacuum") return false;
  if (!isFace(item) || !item.spoken || item.value % 100 === 0) return false;
  if (!items.slice(0, i).every(({ text }) => leads.test(text))) return false;
  const next = items.findIndex((one, at) => at > i && one.kind === itemKind.number);
  const figure = items[next];
  if (!freeNumber(figure) || figure.unit?.dimension === "time" || next === i + 1) return false;
  if (!items.slice(i + 1, next).every(({ text }) => stands.test(text))) return false;
  const far = (value: number): number => {
    const share = value / Number(last.figure.number);
    return Math.max(share, 1 / share);
  };
  // "one twenty five and 324 now" behind both gauges: the other one of them
  const other = context.readings.slice(-2)[0];
  const share = item.value / Number(other?.figure.number);
  if (other?.quantity === "pressure" && share < tooFar && share > 1 / tooFar) return false;
  return far(figure.value) < tooFar && far(item.value) > tooFar;
}

/** Before or behind what was read stands when it was read. */
export function hourBehind(note: Note, i: number): boolean {
  return (
    atHour(note, i) ||
    logHour(note, i) ||
    hourSpoken(note, i) ||
    hourAtEnd(note, i) ||
    hourOfHold(note, i) ||
    hourAhead(note, i)
  );
}
