import type { Reading, Understood, UnitHabit } from "../model.ts";
import type { Context } from "../read/context.ts";
import { read } from "../read/read.ts";
import type { Entry } from "../record/entry.ts";
import { standingOf } from "../record/standing.ts";
import type { Memory } from "./memory.ts";
import { entriesAt } from "./rest.ts";

const opener = String.raw`^(?:(?:it'?s|its|it is|still|now|reads?|reading|at)\s+)*`;
const figure = String.raw`(\d{1,3}(?:,\d{3})+|\d+(?:\.\d+)?)`;
const one = new RegExp(String.raw`${opener}${figure}(?:\s+now)?\s*\.?$`, "i");
const pair = new RegExp(
  String.raw`${opener}${figure}\s*(?:(?:at|@|and|pipe|with|,|/)\s*)+${figure}(?:\s+now)?\s*\.?$`,
  "i",
);

/** A clock that asks for one value, and how a bare number is that value. */
interface Asks {
  readonly kind: string;
  readonly quantity: Reading["quantity"];
  readonly form: RegExp;
  readonly words: (figures: readonly string[], known: Known) => string;
}

/** What fills in the unit. */
interface Known {
  readonly units: UnitHabit;
  /** as the vacuum was read last, "micron" where it was not */
  readonly gauge: string;
}

const tenth = new RegExp(
  String.raw`${opener}${figure}(?:\s+(?:megs?|megohms?))?\s+(?:at|after)\s+(?:the\s+)?(?:ten|10)(?:\s*(?:minutes?|mins?|minute mark))?\s*\.?$`,
  "i",
);

/** Vacuums are told in microns in both habits, unless they were not; nitrogen with the pipe's temperature. */
const asking: readonly Asks[] = [
  {
    kind: "vacuum_hold",
    quantity: "vacuum",
    form: tenth,
    words: ([a], { gauge }) => `${a} ${gauge} after 10 minutes`,
  },
  {
    kind: "vacuum_hold",
    quantity: "vacuum",
    form: one,
    words: ([a], { gauge }) => `${a} ${gauge}`,
  },
  {
    kind: "insulation_10min",
    quantity: "insulation_resistance",
    form: tenth,
    words: ([a]) => `insulation ${a} megohm at 10 minutes`,
  },
  {
    kind: "insulation_10min",
    quantity: "insulation_resistance",
    form: one,
    words: ([a]) => `insulation ${a} megohm`,
  },
  { kind: "bus_wait", quantity: "voltage", form: one, words: ([a]) => `dc bus ${a} V` },
  {
    kind: "nitrogen_hold",
    quantity: "pressure",
    form: pair,
    words: ([a, b], { units }) =>
      units === "us" ? `nitrogen ${a} psi, pipe ${b} F` : `nitrogen ${a} bar, pipe ${b} C`,
  },
];

/** An answer later than this after the question may be of something else; our choice, no source. */
const answeredWithinMs = { here: 60 * 60_000, overnight: 4 * 3600_000 } as const;

/** "610", when the clock asks for the microns or is about to: the number is what it asks for. */
export function withClockAnswer(
  memory: Memory,
  message: { readonly text: string; readonly at: string },
  known: { readonly job: number; readonly understood: Understood; readonly context: Context },
): Understood {
  const { job, understood, context } = known;
  if (understood.readings.length > 0 || understood.statements.length > 0) return understood;
  if (understood.unread.length === 0) return understood;
  for (const { kind, quantity, form, words } of asking) {
    const figures = form.exec(message.text.trim())?.slice(1);
    if (figures === undefined || !waits(memory, job, { kind, quantity, at: message.at })) continue;
    const known = { units: context.units, gauge: gaugeOf(context) };
    const whole = read(words(figures, known), context);
    if (whole.readings.length !== figures.length || whole.ask.length > 0) continue;
    if (kind === "vacuum_hold" && !nearGauge(context, whole.readings)) continue;
    return told(understood, whole.readings, message.text);
  }
  return understood;
}

function gaugeOf({ readings }: Context): string {
  const unit = readings.findLast(({ quantity }) => quantity === "vacuum")?.figure.unit;
  return unit === undefined || unit === "" ? "micron" : unit;
}

/** A held vacuum moves no farther than this in the time of its clock; common practice, no source. */
const holdsWithin = { lower: 0.5, higher: 100 } as const;

/** "13.8" after a vacuum of 330 is none of it. */
function nearGauge({ readings }: Context, [told]: readonly Reading[]): boolean {
  const last = readings.findLast(({ quantity }) => quantity === "vacuum");
  const [was, is] = [Number(last?.value), Number(told?.value)];
  if (!(was > 0)) return true;
  return is >= was * holdsWithin.lower && is <= was * holdsWithin.higher;
}

/** The readings as said here: the words are his, the unit and what it is were filled in. */
function told(understood: Understood, readings: readonly Reading[], text: string): Understood {
  const { open: _, ...rest } = understood;
  return {
    ...rest,
    readings: readings.map((reading) => ({
      ...reading,
      said: text,
      spans: [[0, text.length]],
      assumed: ["unit", "quantity"],
      rule: "<answer to a clock>",
    })),
    unread: [],
    unread_spans: [],
    ask: [],
    skipped: [],
  };
}

/** Whether a clock of the kind runs, or asked a while ago and got no value since. */
function waits(
  memory: Memory,
  job: number,
  what: { readonly kind: string; readonly quantity: string; readonly at: string },
): boolean {
  const instant = Date.parse(what.at);
  const runs = (memory.clocks.get(job) ?? []).some(
    ({ kind, since }) => kind === what.kind && Date.parse(since) <= instant,
  );
  if (runs) return true;
  const entries = entriesAt(memory, job);
  const asked = entries.findLast((entry) => isAsked(entry, what.kind));
  const since = asked === undefined ? Number.NaN : Date.parse(asked.at);
  const overnight = asked?.message.endsWith(":overnight") === true;
  const within = answeredWithinMs[overnight ? "overnight" : "here"];
  if (!(instant >= since && instant - since <= within)) return false;
  return !standingOf(entries).some(
    ({ fate, note, instant: then }) =>
      fate === "stands" &&
      then >= since &&
      then < instant &&
      note.readings.some(({ quantity }) => quantity === what.quantity),
  );
}

const isAsked = ({ facts }: Entry, kind: string): boolean =>
  facts.kind === "clock" && facts.outcome === "asked" && facts.clock.startsWith(`${kind}:`);
