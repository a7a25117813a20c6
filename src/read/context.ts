import type { Reading, Understood, UnitHabit } from "../model.ts";
import { type QuantityName, quantities } from "../quantities/list.ts";
import { IN_HAND } from "../vocabulary.ts";
import { readNumber } from "./numbers.ts";
import { testerVolts } from "./tester-volts.ts";

/**
 * What earlier messages of the same job leave behind for the next one. Folded from what was
 * understood, never from text, so a correction or an undo changes it too.
 */
export interface Context {
  readonly units: UnitHabit;
  /** ISO, the moment of the message being read; without it a time stays as said */
  readonly at?: string;
  /** readings that stand, oldest first, no more than the last few messages' */
  readonly readings: readonly Reading[];
  /** how many of `readings` each message added, oldest first: what an undo takes back */
  readonly counts: readonly number[];
  /** the last message's readings are these last ones */
  readonly latest: number;
  /** an insulation test that was announced: "megging at 500 volts", "… on lead 1" */
  readonly test?: {
    readonly voltage: number;
    readonly point?: string;
    /** nothing was read since it was announced, so what was read before it does not end it */
    readonly ahead?: true;
  };
  /** a test that was announced without values: "winding test on comp 1" */
  readonly testing?: QuantityName;
  /** microfarads of a capacitor's two sides, told without a value: "dual cap 45/5" */
  readonly twin?: readonly number[];
  /** the kind of machine that a test was announced of: "checking amps on the compressors" */
  readonly kind?: string;
  /** what was asked and is not answered yet */
  readonly open?: Understood["open"];
  /** the action in hand: "charging off the scale now" */
  readonly action?: "recovered" | "charged";
  /** numbers and names of the rooms of the job's site, as the office lists them or as they were told */
  readonly rooms?: ReadonlySet<string>;
  /** the job's unit is one that water goes through: a chiller, a boiler, a tower */
  readonly wet?: true;
  /** the job's unit runs on carbon dioxide */
  readonly co2?: true;
  /** the machine that was turned to without a value: "moving to circuit 2" */
  readonly machine?: string;
  /** power was put on, and no motor was tested since */
  readonly live?: true;
  /** the point that was turned to without a value: "okay lead two now" */
  readonly pointed?: string;
}

const KEPT = 60;

/** The context of a job's first message. */
export function startContext(units: UnitHabit, time?: string): Context {
  const start = { units, readings: [], counts: [], latest: 0 };
  return time === undefined ? start : { ...start, at: time };
}

/** The same context at the moment of another message. */
export function at(context: Context, iso: string | undefined): Context {
  if (iso === undefined) {
    const { at: _, ...rest } = context;
    return rest;
  }
  return { ...context, at: iso };
}

/** Does the new reading replace this one: same quantity, and the same place where one was said? */
export function replaces(next: Reading, old: Reading): boolean {
  const { instead } = next;
  if ((instead?.quantity ?? next.quantity) !== old.quantity) return false;
  if ((next.rating ?? "") !== (old.rating ?? "")) return false;
  if (instead !== undefined)
    return (
      old.at === instead.at &&
      old.subject === instead.subject &&
      old.points?.join() === instead.points?.join()
    );
  if (next.points !== undefined && !samePoints(next.points, old.points)) return false;
  if (next.at !== undefined && next.at !== old.at) return false;
  return next.subject === undefined || next.subject === old.subject;
}

function samePoints(a: readonly string[], b: readonly string[] | undefined): boolean {
  if (b === undefined || a.length !== b.length) return false;
  return a.every((point) => b.includes(point));
}

function corrected(readings: readonly Reading[], next: Reading): readonly Reading[] {
  for (let i = readings.length - 1; i >= 0; i--) {
    const old = readings[i];
    if (old !== undefined && replaces(next, old)) return readings.filter((_, at) => at !== i);
  }
  return readings;
}

/** The context after one more message. */
export function follow(context: Context, understood: Understood): Context {
  let { readings, counts } = context;
  for (const statement of understood.statements)
    if (statement.kind === "undo" && statement.taken !== undefined) {
      const figure = statement.taken;
      const at = readings.findLastIndex((reading) => reading.figure.number === figure);
      readings = readings.filter((_, order) => order !== at);
    } else if (statement.kind === "undo" && counts.length > 0) {
      readings = readings.slice(0, readings.length - (counts[counts.length - 1] ?? 0));
      counts = counts.slice(0, -1);
    }
  for (const reading of understood.readings)
    if (reading.corrects === true) readings = corrected(readings, reading);
  const added = understood.readings.length;
  const {
    open: _,
    testing: __,
    machine: ___,
    pointed: ____,
    live: was,
    twin: _____,
    ...rest
  } = context;
  const machine = machineOf(understood, context.machine);
  const pointed = added > 0 ? undefined : (toldAfter(understood, AT_POINT) ?? context.pointed);
  const testing = added > 0 ? pumpedBehind(understood) : (testingOf(understood) ?? context.testing);
  const kind = added > 0 ? undefined : (kindOf(understood) ?? context.kind);
  const twin = added > 0 ? undefined : (twinOf(understood) ?? context.twin);
  const action = actionOf(understood) ?? context.action;
  const rooms = roomsOf(understood, context.rooms);
  const said = testOf(understood);
  // a test that is announced is made with the power off, whether that was said or not
  const live = said === undefined ? liveNow(understood, was) : undefined;
  const test = said === undefined ? stillAhead(context.test, added) : ahead(said, added);
  return {
    ...rest,
    readings: [...readings, ...understood.readings].slice(-KEPT),
    counts: added > 0 ? [...counts, added].slice(-KEPT) : counts,
    latest: added > 0 ? added : context.latest,
    ...(understood.open === undefined ? {} : { open: understood.open }),
    ...(testing === undefined ? {} : { testing }),
    ...(twin === undefined ? {} : { twin }),
    ...(kind === undefined ? {} : { kind }),
    ...(action === undefined ? {} : { action }),
    ...(machine === undefined ? {} : { machine }),
    ...(pointed === undefined ? {} : { pointed }),
    ...(test === undefined ? {} : { test }),
    ...(rooms === undefined ? {} : { rooms }),
    ...(live === undefined ? {} : { live }),
  };
}

const toPower: ReadonlySet<string> = new Set(["power_on", "started"]);
const fromPower: ReadonlySet<string> = new Set([
  "power_off",
  "locked",
  "tagged",
  "proved_dead",
  "leads_lifted",
]);

function liveNow(understood: Understood, was: true | undefined): true | undefined {
  if (understood.readings.some(({ quantity }) => quantity === "insulation_resistance"))
    return undefined;
  const acts = understood.statements.flatMap((one) =>
    one.kind === "action" && one.planned !== true ? [one.action] : [],
  );
  const last = acts.findLast((action) => toPower.has(action) || fromPower.has(action));
  return last === undefined ? was : toPower.has(last) ? true : undefined;
}

/** "rooms 204 205 out", "box B feeds 204 and 206": numbers of rooms, from here on. */
function roomsOf(understood: Understood, before: Context["rooms"]): Context["rooms"] {
  const told = understood.statements.flatMap((statement) => {
    if (statement.kind === "complaint") return [...statement.places, ...statement.fine];
    return statement.kind === "tree" ? statement.nodes.flatMap(({ places = [] }) => places) : [];
  });
  const numbers = told.flatMap((place) => /^(?:\D* )?(\d{3,4})$/.exec(place)?.[1] ?? []);
  return numbers.length === 0 ? before : new Set([...(before ?? []), ...numbers]);
}

type Test = NonNullable<Context["test"]>;

/** A test that was announced and not begun yet. */
function ahead(test: Test, added: number): Test {
  return added > 0 ? test : { ...test, ahead: true };
}

function stillAhead(test: Context["test"], added: number): Context["test"] {
  if (test?.ahead !== true || added === 0) return test;
  const { ahead: _, ...begun } = test;
  return begun;
}

/** The test that a message announces, by what it measures. */
function testingOf(understood: Understood): QuantityName | undefined {
  for (const statement of understood.statements) {
    if (statement.kind === "action" && statement.action === "vacuum_started") return "vacuum";
    if (statement.kind !== "note" || !statement.about.startsWith("testing ")) continue;
    const [name] = statement.about.slice("testing ".length).split(" of ");
    return quantities.find((quantity) => quantity.name === name)?.name;
  }
  return undefined;
}

/** "broke it with nitro to 2 psi, back on pump": behind what was read the pump was put on. */
function pumpedBehind({ statements, readings }: Understood): QuantityName | undefined {
  const read = Math.max(...readings.flatMap(({ spans }) => spans.map(([, to]) => to)));
  const pumped = statements.some(
    ({ kind, spans, ...rest }) =>
      kind === "action" &&
      "action" in rest &&
      rest.action === "vacuum_started" &&
      (spans[0]?.[0] ?? 0) > read,
  );
  return pumped ? "vacuum" : undefined;
}

/** "testing current of compressor" */
function kindOf(understood: Understood): string | undefined {
  return / of ([a-z]+)$/.exec(toldAfter(understood, "testing ") ?? "")?.[1];
}

/** "dual cap 45/5": the two sizes of the note. */
function twinOf(understood: Understood): Context["twin"] {
  const sizes = /^(\d[\d.]*)\/(\d[\d.]*)$/.exec(toldAfter(understood, "size ") ?? "");
  return sizes === null ? undefined : sizes.slice(1).map(Number);
}

/** What the note of a message that turns to a point is about. */
export const AT_POINT = "at point ";

function toldAfter(understood: Understood, head: string): string | undefined {
  for (const statement of understood.statements)
    if (statement.kind === "note" && statement.about.startsWith(head))
      return statement.about.slice(head.length);
  return undefined;
}

/** What a message turns to; a reading of another machine, or of none, ends it. */
function machineOf(understood: Understood, before: string | undefined): string | undefined {
  const told = toldAfter(understood, IN_HAND);
  if (told !== undefined) return told;
  return understood.readings.every(({ subject }) => subject === before) ? before : undefined;
}

/** "going to meg it at 500": the test that comes next. */
const plannedTest = /\bmegg?(?:er)?\b.* (?:at|@) ?([a-z0-9 ]{3,24}?)(?: ?v| volts?)?[.!]*$/i;

/** The test voltage that a message gives, with its readings or before them. */
function testOf(understood: Understood): Context["test"] {
  for (const reading of understood.readings)
    if (reading.test_voltage !== undefined) return { voltage: reading.test_voltage };
  for (const statement of understood.statements) {
    if (statement.kind !== "note") continue;
    const meant = statement.about === "plan" ? plannedTest.exec(statement.said)?.[1] : undefined;
    const planned = meant === undefined ? undefined : readNumber(meant);
    if (planned !== undefined && testerVolts.has(planned)) return { voltage: planned };
    const [, volts, point] = /^insulation test ([\d.]+)(?: on (.+))?$/.exec(statement.about) ?? [];
    if (volts === undefined) continue;
    return point === undefined ? { voltage: Number(volts) } : { voltage: Number(volts), point };
  }
  return undefined;
}

function actionOf(understood: Understood): Context["action"] {
  for (const reading of understood.readings)
    if (reading.action !== undefined) return reading.action;
  for (const statement of understood.statements)
    if (statement.kind === "note" && statement.about.startsWith("gas "))
      return statement.about === "gas recovered" ? "recovered" : "charged";
  for (const statement of understood.statements)
    if (
      statement.kind === "action" &&
      (statement.action === "charged" || statement.action === "recovered")
    )
      return statement.action;
  return undefined;
}
