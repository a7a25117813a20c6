import type { Job, JobReading, Message, Reading, Understood } from "../model.ts";
import { kilogramPerPound } from "../physics/constants.ts";
import { isCurrent } from "../record/readings.ts";
import { cylindersIn } from "./cylinder.ts";

const ouncesToPound = 16;
/** kg that a scale shows the difference of at least, and that one bottle holds at most. Our choice, no source. */
const leastKg = 0.04;
const mostKg = 60;
/** A bottle's weight is compared with one of the same day alone; our choice, no source. */
const sameDayMs = 16 * 60 * 60_000;

const weight = String.raw`(\d{1,3}(?:\.\d{1,2})?)(?:\s*(lbs?|pounds?|kgs?|kilos?)(?:\s*(\d{1,2}(?:\.\d)?)(?:\s*(?:oz|ounces?))?(?![.\d]))?)?`;
const bottle = String.raw`\b(?:bottle|cylinder|cyl|jug|drum|tank)\.?\s*(?:#?\d{1,3}(?=[\s,:]+\D*\d)[\s,:]+)?`;
const shows = String.raw`(?:(?:was|is|at|from|weighed|weighs|says|reads|read|started|sits|it['’]?s)\s+)*`;

const both = new RegExp(
  String.raw`${bottle}${shows}${weight}\s*(?:before|to start|going on|at the start)?[,;]?\s*(?:and |then )?(?:now|after|down to|up to|to|ended at|finished at)\s+${shows}${weight}`,
  "i",
);
const fromTo = new RegExp(
  String.raw`\bfrom\s+${weight}\s+(?:down |up )?to\s+${weight}\s+(?:on|in|off) (?:the )?(?:recovery )?(?:bottle|cylinder|cyl|jug|drum|tank)\b`,
  "i",
);
const alone = new RegExp(
  String.raw`^\s*(?:the )?(?:recovery )?${bottle}${shows}(?:now |after )?${weight}\s*(?:before|now|after|to start|going on)?[.!]?\s*$`,
  "i",
);
const recovery = /\b(?:recover\w*|recov|reclaim\w*)\b/i;

/** The rule's name of what two weights of one bottle come to. */
export const bottleRule = "<bottle> before and now";

interface Scene {
  readonly job: Job;
  readonly units: "us" | "si";
}

/**
 * "Bottle 15 was 24.1, now 18.6", or one after the other: what left the bottle is charged, what came into it
 * recovered. The weights of the bottle itself stay what they are, and no gas that was moved.
 */
export function withBottle(
  understood: Understood,
  message: Pick<Message, "text" | "at">,
  { job, units }: Scene,
): Understood {
  const { text, at } = message;
  if (text.length > 160 || understood.statements.some(({ kind }) => kind === "question"))
    return understood;
  const pair = both.exec(text) ?? fromTo.exec(text);
  const one = pair === null ? alone.exec(text) : null;
  if (pair === null && one === null) return understood;
  const own = understood.readings
    .filter((reading) => pair === null || reading.quantity === "mass" || !within(reading, pair))
    .map((reading) => shown(reading, pair !== null));
  const now = pair === null ? kilos(one?.slice(1) ?? [], units) : kilos(pair.slice(4), units);
  const before = pair === null ? weightBefore(job, message) : kilos(pair.slice(1), units);
  // what was told as charged or recovered beside them is that gas
  const told = own.some(({ quantity, action }) => quantity === "mass" && action !== undefined);
  const plain = { ...understood, readings: own };
  if (now === undefined || before === undefined || told) return plain;
  const moved = Math.abs(before - now);
  const action = now < before ? "charged" : "recovered";
  if (moved < leastKg || moved > mostKg) return plain;
  if (recovery.test(text) && action === "charged") return plain;
  if (pair === null && countedSince(job, { action, bottle: text, at })) return plain;
  const isMetric = units === "si" || /\bk(?:g|ilo)/i.test(text);
  const figure = {
    number: shortly(isMetric ? moved : moved / kilogramPerPound),
    unit: isMetric ? "kg" : "lb",
  };
  const base = {
    said: text.trim(),
    spans: [[0, text.length] as const],
    assumed: [],
    rule: bottleRule,
  };
  const mass = { quantity: "mass", relation: "=", unit: "kg", ...base } as const;
  const difference: Reading = { ...mass, value: round(moved), action, figure };
  // "from 18.6 to 17 on bottle 15": what it stands at now is kept for the next
  const stands: readonly Reading[] =
    pair !== null && !own.some(({ quantity }) => quantity === "mass")
      ? [
          {
            ...mass,
            value: round(now),
            figure: { number: shortly(isMetric ? now : now / kilogramPerPound), unit: figure.unit },
          },
        ]
      : [];
  return {
    ...plain,
    readings: [...own, ...stands, difference],
    unread: [],
    unread_spans: [],
    ask: [],
  };
}

/** "went from 18.6 to 17 on bottle 15" behind a box's warmth: both are the bottle's. */
function within({ spans }: Reading, pair: RegExpExecArray): boolean {
  const end = pair.index + pair[0].length;
  return spans.every(([from, to]) => from >= pair.index && to <= end);
}

/** Of a pair each weight is the bottle's own, whatever word stood before it. */
function shown(reading: Reading, pair: boolean): Reading {
  if (!pair || reading.quantity !== "mass" || reading.action === undefined) return reading;
  const { action: _, ...rest } = reading;
  return rest;
}

function kilos(
  [number, unit = "", ounces]: readonly (string | undefined)[],
  units: "us" | "si",
): number | undefined {
  if (number === undefined) return undefined;
  const value = Number(number);
  if (/^k/i.test(unit) || (unit === "" && units === "si")) return value;
  return (value + Number(ounces ?? 0) / ouncesToPound) * kilogramPerPound;
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6;
const shortly = (value: number): string => String(Math.round(value * 100) / 100);

/** What the same bottle stood at last, told on this job the same day. */
function weightBefore(job: Job, { text, at }: Pick<Message, "text" | "at">): number | undefined {
  const last = lastOf(job, { bottle: text, at });
  return typeof last?.value === "number" ? last.value : undefined;
}

function lastOf(
  job: Job,
  { bottle: text, at }: { readonly bottle: string; readonly at: string },
): JobReading | undefined {
  const [number] = cylindersIn(text);
  return job.readings.findLast((one) => {
    if (one.quantity !== "mass" || one.action !== undefined || one.rating !== undefined)
      return false;
    const age = Date.parse(at) - Date.parse(one.taken);
    if (!isCurrent(one) || age <= 0 || age > sameDayMs) return false;
    const named = job.statements.flatMap(({ message, statement }) =>
      message === one.message && statement.kind === "note" && statement.about === "cylinder"
        ? cylindersIn(statement.said)
        : [],
    );
    return number === undefined ? named.length === 0 : named.includes(number);
  });
}

/** Was gas of that kind told since the bottle was weighed? Then the difference is that gas again. */
function countedSince(
  job: Job,
  told: { readonly action: Reading["action"]; readonly bottle: string; readonly at: string },
): boolean {
  const last = lastOf(job, told);
  return job.readings.some(
    (one) =>
      one.quantity === "mass" &&
      one.action === told.action &&
      isCurrent(one) &&
      last !== undefined &&
      one.message !== last.message &&
      Date.parse(one.taken) >= Date.parse(last.taken),
  );
}
