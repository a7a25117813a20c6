import type { JobReading, JobStatement, Machine } from "../model.ts";
import { mayComeOff } from "../vocabulary.ts";
import { isCurrent } from "./readings.ts";

type Event =
  | { readonly at: string; readonly who: string; readonly statement: JobStatement["statement"] }
  | { readonly at: string; readonly who: string; readonly readings: readonly JobReading[] };

const procedure = "by procedure: lock since ";

/** What an office's note takes off: the lock that hangs since a moment (ISO). */
export const byProcedure = (since: string): string => `${procedure}${since}`;

const unknownMachine: Machine = {
  power: "unknown",
  locks: [],
  leads: "unknown",
  circuit: "unknown",
  bypasses: [],
};

/** What the machine is now: every word and reading folded in order of time. */
export function foldMachine(
  statements: readonly JobStatement[],
  readings: readonly JobReading[],
): Machine {
  const byMessage = new Map<string, JobReading[]>();
  for (const reading of readings) {
    if (!isCurrent(reading) || reading.rating !== undefined || reading.earlier === true) continue;
    const known = byMessage.get(reading.message);
    if (known === undefined) byMessage.set(reading.message, [reading]);
    else known.push(reading);
  }
  const events: Event[] = [
    ...[...byMessage.values()].flatMap((group): readonly Event[] => {
      const first = group[0];
      return first === undefined ? [] : [{ at: first.taken, who: first.who, readings: group }];
    }),
    // words after numbers of the same moment: "0 V, locked" ends locked
    ...statements.map(({ at, who, statement }) => ({ at, who, statement })),
  ];
  events.sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  return events.reduce(
    (machine, event) =>
      "statement" in event
        ? afterStatement(machine, event)
        : afterReadings(machine, event.readings),
    unknownMachine,
  );
}

function afterStatement(
  machine: Machine,
  event: {
    readonly at: string;
    readonly who: string;
    readonly statement: JobStatement["statement"];
  },
): Machine {
  const { statement, who, at } = event;
  if (statement.kind !== "action" || statement.planned === true) return machine;
  let next = machine;
  if (statement.lock === "on" || (statement.lock === undefined && statement.action === "locked")) {
    next = {
      ...next,
      power: next.power === "proven_dead" ? "proven_dead" : "locked",
      locks: withLock(
        next.locks,
        { who: ownerIn(statement.what) ?? who, since: at },
        placeOf(statement.what),
      ),
    };
  }
  if (
    statement.lock === "off" ||
    (statement.lock === undefined && statement.action === "unlocked")
  ) {
    // only its owner takes a lock off, or the office's procedure the one that it names
    const locks =
      statement.what === mayComeOff
        ? next.locks.map((old) => (old.who === who ? { ...old, free: true as const } : old))
        : next.locks.filter((old) => !takenOff(old, who, statement.what));
    // where power was put on before, the lock that comes off now takes nothing away
    const stays = locks.length > 0 || next.power === "live";
    next = { ...next, locks, power: stays ? next.power : "off" };
  }
  if (statement.action === "tagged") {
    const tag = { who, since: at, tag: true } as const;
    next = {
      ...next,
      power: offOr(next),
      locks: withLock(next.locks, tag, placeOf(statement.what)),
    };
  }
  if (statement.action === "power_off") next = { ...next, power: offOr(next) };
  if (statement.action === "power_on" || statement.action === "started") {
    next = { ...next, power: "live", locks: withoutOwn(next.locks, who, placeOf(statement.what)) };
  }
  if (statement.action === "proved_dead") next = { ...next, power: "proven_dead" };
  if (statement.leads !== undefined) next = { ...next, leads: statement.leads };
  // "valved it off", and nothing was pumped: a valve was shut, no vacuum stands in it
  const shut = statement.action === "vacuum_isolated" && next.circuit !== "vacuum";
  if (statement.circuit !== undefined && !shut) next = { ...next, circuit: statement.circuit };
  return afterBypass(next, event);
}

type Lock = Machine["locks"][number];

/** "Vada's": another's lock, which comes off by his word alone. */
const ownerIn = (what: string | undefined): string | undefined =>
  /^([\p{L}-]+)['’]s$/u.exec(what ?? "")?.[1]?.toLowerCase();

function takenOff(old: Lock, who: string, what: string | undefined): boolean {
  if (what?.startsWith(procedure) === true) return what === byProcedure(old.since);
  const owner = ownerIn(what);
  // "took her lock off": another's, by his word alone
  if (/^(?:his|her|hers|their|theirs)$/i.test(what ?? ""))
    return old.who !== who && old.free === true;
  if (owner === undefined) return old.who === who;
  return old.who.toLowerCase() === owner && (old.who === who || old.free === true);
}

/** "still locked out" names no place. */
const placeOf = (what: string | undefined): string | undefined =>
  what === undefined ||
  ownerIn(what) !== undefined ||
  /^(?:still|all|now|it|too|also|again|already|here|myself|as well|tags?|tagged|locks?|locked(?: out)?|out|off)$/i.test(
    what,
  )
    ? undefined
    : what;

/** His lock once more is the one that hangs, with its place if he says it now; another place, another lock. */
function withLock(locks: readonly Lock[], lock: Lock, where: string | undefined): readonly Lock[] {
  const own = locks.findLast(
    (old) =>
      old.who === lock.who &&
      (old.where === where || old.where === undefined || where === undefined),
  );
  if (own === undefined) return [...locks, where === undefined ? lock : { ...lock, where }];
  const place = own.where ?? where;
  // a lock behind a tag is more than the tag
  const { tag, ...bare } = own;
  const kept = lock.tag === true && tag === true ? own : bare;
  return locks.map((old) =>
    old === own ? { ...kept, ...(place === undefined ? {} : { where: place }) } : old,
  );
}

/** Who powers up has taken his own lock off, of the place that he names; another's lock hangs on. */
function withoutOwn(
  locks: readonly Lock[],
  who: string,
  where: string | undefined,
): readonly Lock[] {
  return locks.filter(
    (lock) =>
      lock.who !== who || (where !== undefined && lock.where !== undefined && lock.where !== where),
  );
}

function offOr(machine: Machine): Machine["power"] {
  return machine.power === "locked" || machine.power === "proven_dead" ? machine.power : "off";
}

function afterBypass(
  machine: Machine,
  event: {
    readonly at: string;
    readonly who: string;
    readonly statement: JobStatement["statement"];
  },
): Machine {
  const { statement, who, at } = event;
  if (statement.kind !== "action" || statement.bypass === undefined) return machine;
  // "jumped the high pressure switch to see it start"
  const what = (statement.what ?? "a safety").replace(/\s+(?:to|for|so|and|while|just)$/i, "");
  const others = machine.bypasses.filter((old) => old.what !== what);
  if (statement.bypass === "on") {
    return { ...machine, bypasses: [...others, { what, who, since: at }] };
  }
  // "jumper off" without a name takes off the only one
  const one = machine.bypasses.length === 1 && statement.what === undefined;
  if (one || others.length < machine.bypasses.length)
    return { ...machine, bypasses: one ? [] : others };
  // "jumper off the float": the float switch, where no other is called so
  const [called, ...more] = machine.bypasses.filter((old) => isCalled(old.what, what));
  const left = machine.bypasses.filter((old) => old !== called);
  return { ...machine, bypasses: more.length > 0 ? machine.bypasses : left };
}

/** All words of the shorter name stand in the longer. */
function isCalled(a: string, b: string): boolean {
  const wordsIn = (name: string): readonly string[] => name.toLowerCase().match(/[a-z0-9]+/g) ?? [];
  const [left, right] = [wordsIn(a), wordsIn(b)];
  const [short, long] = left.length <= right.length ? [left, right] : [right, left];
  return short.length > 0 && short.every((word) => long.includes(word));
}

/** So far apart both sides stand only while it runs; common practice, no source. */
const leastLift = 1.5;

/** A suction and a head, gauge, that no standing circuit shows. */
function pumps(readings: readonly JobReading[]): boolean {
  const at = (places: readonly (string | undefined)[]): number | undefined => {
    const found = readings.find(
      (one) => one.quantity === "pressure" && places.includes(one.at) && one.doubtful !== true,
    );
    return typeof found?.value === "number" ? found.value : undefined;
  };
  const [low, high] = [at(["suction"]), at(["discharge", "liquid"])];
  return low !== undefined && high !== undefined && low > 1e5 && high > low * leastLift;
}

function afterReadings(machine: Machine, readings: readonly JobReading[]): Machine {
  let next = machine;
  const value = (reading: JobReading): number =>
    typeof reading.value === "number" ? Math.abs(reading.value) : 0;
  if (isLiveDeadLive(readings)) next = { ...next, power: "proven_dead" };
  else if (readings.some((reading) => reading.quantity === "current" && value(reading) > 0.5)) {
    next = { ...next, power: "live" };
  } else if (
    readings.some((reading) => value(reading) > 50 && isLive(reading, next)) &&
    next.power !== "locked" &&
    next.power !== "proven_dead"
  ) {
    next = { ...next, power: "live" };
  }
  // both sides apart: it pumps gas, whatever was told before
  if (pumps(readings)) next = { ...next, circuit: "charged" };
  for (const reading of readings) {
    if (reading.quantity === "vacuum") next = { ...next, circuit: "vacuum" };
    if (reading.quantity === "mass" && reading.action === "recovered") {
      next = { ...next, circuit: "recovered" };
    }
    if (reading.quantity === "mass" && reading.action === "charged") {
      next = { ...next, circuit: "charged" };
    }
    if (reading.quantity === "pressure" && next.circuit === "unknown" && value(reading) > 1e5) {
      next = { ...next, circuit: "charged" };
    }
  }
  return next;
}

/** With the power off the line side and a bus that drains have their volts all the same. */
function isLive(reading: JobReading, { power }: Machine): boolean {
  const before = reading.at === "supply" || reading.at === "dc_bus";
  return reading.quantity === "voltage" && !(power === "off" && before);
}

/** A known live source, then dead at the work, then the live source again, in one message. */
function isLiveDeadLive(readings: readonly JobReading[]): boolean {
  const volts = readings
    .filter((reading) => reading.quantity === "voltage")
    .map((reading) => (typeof reading.value === "number" ? Math.abs(reading.value) : 0));
  const [first, last] = [volts[0] ?? 0, volts.at(-1) ?? 0];
  const between = volts.slice(1, -1);
  return first > 50 && last > 50 && between.length > 0 && between.every((volt) => volt < 5);
}
