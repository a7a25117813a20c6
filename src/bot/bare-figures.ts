import type { Message, Understood } from "../model.ts";

/** A value with no more than its unit: 345, 62.5, 118psi. */
const figure =
  /^\d+(?:[.,]\d+)?(?:psig?|psia|bar|kpa|f|c|v|vac|vdc|a|amps?|meg|microns?|in|oz|lbs?)?$/;
const between =
  /^(?:at|@|and|over|on|to|then|by|with|a|is|of|degrees?|deg|psig?|psi|bar|kpa|f|c|volts?|v|amps?|a|meg|megohms?|microns?|ohms?|lbs?|oz|head|low|high|side)$/;
/** "10 4", "24/7", a date, a score: numbers that people say to one another. */
const talk =
  /^\s*(?:10[- ]?4|24\s*\/\s*7|\d{1,2}\s*[-:]\s*\d{1,2}|\d{1,2}\/\d{1,2}(?:\/\d{2,4})?)\s*[.!]?\s*$/;

const thing =
  /\b(?:receiver|accumulator|sight ?glass|oil|sump|tank|pump|fan|valve|damper|economi[sz]er|blower|belt|coil|heater|drain|float|louver|crankcase|compressor|comp|condenser|evaporator|evap|unloader|slide|vfd|drive)\b/i;
const unit = /\d\s*(?:%|percent|pct|hz|rpm|turns?|clicks?|inch(?:es)?|in\b)/i;

/** "sp .9 before .55 after": nobody counts in tenths, so it was measured. */
const decimal = /^-?\d{0,3}[.,]\d{1,3}$/;

/** "receiver at 10 percent": a figure of the machine for which there is no quantity, so it is told as not read. */
export function isUnreadReport({ role, text }: Message, { unread }: Understood): boolean {
  if (role !== "tech") return false;
  return (
    (thing.test(text) && unread.some((one) => unit.test(one))) ||
    unread.some((one) => decimal.test(one))
  );
}

/** "345 at 74": two or more values and nothing else, so a report though nobody can say of what. */
export function isBareFigures(text: string): boolean {
  if (talk.test(text)) return false;
  const words = text
    .toLowerCase()
    .split(/[\s,/;]+|\.(?=\s|$)/)
    .filter((word) => word !== "");
  const figures = words.filter((word) => figure.test(word));
  // "5 and 6" is a count of something
  const measured = figures.some((word) => /\d\d|[.,]\d|[a-z]$/.test(word));
  return (
    figures.length >= 2 &&
    measured &&
    words.every((word) => figure.test(word) || between.test(word))
  );
}
