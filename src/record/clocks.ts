import type { EquipmentFacts, Job, JobReading, RunningClock } from "../model.ts";
import { SENT } from "../vocabulary.ts";
import { type ClockEvent, clockKinds } from "./clock-kinds.ts";
import { isDirect } from "./direct.ts";
import type { Entry } from "./entry.ts";
import { isCurrent } from "./readings.ts";
import { standingOf } from "./standing.ts";
import { takesOver } from "./takes-over.ts";

/** An overnight clock asks when the next day's work begins; our choice, no source. */
const morning = "07:00";
/** Past this a hold that is left behind is asked for in the morning. */
const leavingStatuses: ReadonlySet<string> = new Set([
  "left_site",
  "waiting_for_parts",
  "no_access",
]);

/** The clocks that run on a job and were not asked yet, next due first. */
export function clocksOf(
  job: Job,
  entries: readonly Entry[],
  equipment: EquipmentFacts,
): readonly RunningClock[] {
  const asked = new Set(
    entries.flatMap(({ facts }) => (facts.kind === "clock" ? [facts.clock] : [])),
  );
  let running: readonly RunningClock[] = [];
  // until somebody says that he is there, a clock is of who began it
  let holder: string | undefined;
  /** who has taken the job over, or was sent to */
  let taker: string | undefined;
  for (const event of eventsOf(job, entries)) {
    const statuses = event.statements.flatMap((said) =>
      said.kind === "status" ? [said.status] : [],
    );
    if (statuses.includes("on_site")) holder = event.who;
    taker = sentBy(event) ?? (event.statements.some(takesOver) ? event.who : taker);
    running = running.filter(
      (clock) => !clockKinds.some((kind) => kind.kind === clock.kind && kind.endedBy(event)),
    );
    running = [
      ...running.filter(({ kind }) => !startsAgain(kind, event, equipment)),
      ...started(event, job, equipment),
    ];
    if (statuses.includes("done")) running = [];
    else if (statuses.some((status) => leavingStatuses.has(status))) {
      running = running.flatMap((clock) => atLeaving(clock, event));
    }
  }
  return running
    .filter(({ id }) => !asked.has(id))
    .map((clock) => heldBy(clock, taker ?? ownerOf(clock, holder, job), job))
    .sort((a, b) => Date.parse(a.due) - Date.parse(b.due));
}

/** Where a clock asks: where its job is talked of, or in the chat of its own that it was begun in. */
function placeOf(
  { channel }: Pick<ClockEvent, "channel">,
  job: Job,
): Pick<RunningClock, "channel" | "thread"> {
  if (channel !== undefined && isDirect(channel)) return { channel };
  return { channel: job.channel, ...(job.thread === undefined ? {} : { thread: job.thread }) };
}

/** Whom the desk sends, he is asked from then on. */
function sentBy({ statements }: ClockEvent): string | undefined {
  const sent = statements.find((said) => said.kind === "note" && said.about.startsWith(SENT));
  return sent?.kind === "note" ? sent.about.slice(SENT.length) : undefined;
}

/** Who began it and has not gone is asked himself, whoever came to help. */
function ownerOf({ holder: own }: RunningClock, last: string | undefined, { visits }: Job): string {
  const isThere = visits.some(
    ({ person, kind, to }) => person === own && kind === "site" && to === undefined,
  );
  return isThere ? own : (last ?? own);
}

/** A clock follows whoever holds the job; one begun alone with the bot is then asked before the crew. */
function heldBy(clock: RunningClock, holder: string, job: Job): RunningClock {
  if (clock.holder === holder || !isDirect(clock.channel)) return { ...clock, holder };
  const { channel: _alone, ...rest } = clock;
  return { ...rest, ...placeOf({}, job), holder };
}

function startsAgain(kind: string, event: ClockEvent, equipment: EquipmentFacts): boolean {
  return clockKinds.some(
    (one) => one.kind === kind && one.startedBy(event, equipment) !== undefined,
  );
}

function started(event: ClockEvent, job: Job, equipment: EquipmentFacts): readonly RunningClock[] {
  return clockKinds.flatMap(({ kind, startedBy }) => {
    const seconds = startedBy(event, equipment);
    if (seconds === undefined) return [];
    return [
      {
        id: `${kind}:${job.job}:${event.message}`,
        kind,
        since: event.at,
        due: later(event.at, seconds),
        job: job.job,
        ...placeOf(event, job),
        holder: event.who,
      },
    ];
  });
}

/** Gas left in overnight is asked for in the morning; what needs a person there ends. */
function atLeaving(clock: RunningClock, event: ClockEvent): readonly RunningClock[] {
  const kind = clockKinds.find((one) => one.kind === clock.kind);
  if (kind?.outlivesLeaving !== true) return [];
  if (clock.kind !== "nitrogen_hold") return [clock];
  const day = event.at.slice(0, 10);
  const offset = /(?:Z|[+-]\d{2}:?\d{2})$/.exec(event.at)?.[0] ?? "Z";
  const today = `${day}T${morning}:00${offset}`;
  const due = Date.parse(today) > Date.parse(event.at) ? today : later(today, 24 * 3600);
  return [{ ...clock, id: `${clock.id}:overnight`, due }];
}

/** ISO in the same offset, some seconds later. */
function later(at: string, seconds: number): string {
  const offset = /(?:Z|[+-]\d{2}:?\d{2})$/.exec(at)?.[0] ?? "Z";
  const [sign, hours, minutes] = /([+-])(\d{2}):?(\d{2})/.exec(offset)?.slice(1) ?? ["+", "0", "0"];
  const shift = (Number(hours) * 60 + Number(minutes)) * (sign === "-" ? -60_000 : 60_000);
  const local = new Date(Date.parse(at) + seconds * 1000 + shift).toISOString().slice(0, 19);
  return `${local}${offset}`;
}

/** What each standing message said, in order of time. */
function eventsOf(job: Job, entries: readonly Entry[]): readonly ClockEvent[] {
  const readings = new Map<string, JobReading[]>();
  for (const one of job.readings.filter(isCurrent)) {
    const same = readings.get(one.message);
    if (same === undefined) readings.set(one.message, [one]);
    else same.push(one);
  }
  return standingOf(entries)
    .filter(({ fate }) => fate === "stands")
    .map(({ entry, note, at }) => ({
      at,
      message: entry.message,
      who: entry.who,
      ...(entry.channel === undefined ? {} : { channel: entry.channel }),
      readings: readings.get(entry.message) ?? [],
      statements: note.statements,
      text: (entry.text ?? "").toLowerCase(),
    }));
}
