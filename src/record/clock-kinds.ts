import type { ClockKindName, EquipmentFacts, JobReading, Statement } from "../model.ts";

/** What one message said, as the clocks see it. */
export interface ClockEvent {
  /** ISO, when it was so */
  readonly at: string;
  readonly message: string;
  readonly who: string;
  /** where it was said */
  readonly channel?: string;
  readonly readings: readonly JobReading[];
  readonly statements: readonly Statement[];
  /** the words, lower case; "" once erased */
  readonly text: string;
}

/** One kind of clock: what starts it, how long it runs, what makes asking needless. */
export interface ClockKind {
  readonly kind: ClockKindName;
  /** seconds until it asks; undefined where the event does not start it */
  readonly startedBy: (event: ClockEvent, equipment: EquipmentFacts) => number | undefined;
  readonly endedBy: (event: ClockEvent) => boolean;
  /** runs on when its people leave the site */
  readonly outlivesLeaving?: true;
}

const minute = 60;
const hour = 3600;

/** Insulation is read 60 s after the voltage is on, and for the index at 10 min (IEEE 43-2013, 12.2). */
const insulationSeconds = { insulation_1min: minute, insulation_10min: 10 * minute };
/** Isolated vacuum is watched for 10 min; common practice, no source. */
const vacuumHoldSeconds = 10 * minute;
/** Nitrogen on a packaged repair stands an hour; common practice, no source. */
const nitrogenHoldSeconds = hour;
/** Drive labels name 5 to 15 min of waiting; common practice, no source. */
const busWaitSeconds = 10 * minute;
/** Fire watch after hot work: 60 min since the 2019 edition of NFPA 51B, 30 min in 29 CFR 1910.252(a)(2)(iii)(B). */
const fireWatchSeconds = hour;
/** A crankcase heater drives refrigerant out of the oil over hours; common practice, no source. */
const heaterSeconds = 8 * hour;

type Action = Extract<Statement, { kind: "action" }>;

function actions(event: ClockEvent): readonly Action[] {
  return event.statements.filter((said) => said.kind === "action").filter(isDone);
}

const isDone = (said: Action): boolean => said.planned !== true;

function did({ statements }: ClockEvent, ...names: readonly Action["action"][]): boolean {
  for (const said of statements)
    if (said.kind === "action" && isDone(said) && names.includes(said.action)) return true;
  return false;
}

const circuitIs = (event: ClockEvent, ...states: readonly string[]): boolean =>
  actions(event).some(({ circuit }) => circuit !== undefined && states.includes(circuit));

const reads = (event: ClockEvent, quantity: JobReading["quantity"]): boolean =>
  event.readings.some((reading) => reading.quantity === quantity && reading.rating === undefined);

const beginning =
  /\bmeg(?:ger|ging|ohmmeter)?\b[^.]*\b(?:now|starting|started|going)\b|\b(?:starting|started)\b[^.]*\bmeg/i;

/** "Meg on comp 1 going now": words that begin a timed test and hold no value yet. */
export const beginsTest = (text: string): boolean => beginning.test(text);

function beginsInsulation(event: ClockEvent): boolean {
  return (
    !reads(event, "insulation_resistance") &&
    (beginsTest(event.text) ||
      actions(event).some(
        ({ action, what }) =>
          (action === "tested" || action === "started") && /insul|meg/i.test(what ?? ""),
      ))
  );
}

function insulation(kind: "insulation_1min" | "insulation_10min"): ClockKind {
  const seconds = insulationSeconds[kind];
  return {
    kind,
    startedBy: (event) => (beginsInsulation(event) ? seconds : undefined),
    endedBy: (event) =>
      event.readings.some(
        ({ quantity, after_s }) =>
          quantity === "insulation_resistance" && (after_s === undefined || after_s >= seconds),
      ) || did(event, "power_on", "leads_landed"),
  };
}

/** Whether a pressure is of test gas: nobody says where on the machine it was taken. */
const isTestPressure = ({ quantity, at }: JobReading): boolean =>
  quantity === "pressure" && at === undefined;

/** Every clock; a new one is an object here and its words in `show`. */
export const clockKinds: readonly ClockKind[] = [
  insulation("insulation_1min"),
  insulation("insulation_10min"),
  {
    kind: "vacuum_hold",
    startedBy: (event) => (did(event, "vacuum_isolated") ? vacuumHoldSeconds : undefined),
    endedBy: (event) =>
      reads(event, "vacuum") ||
      did(event, "vacuum_started", "vacuum_broken", "charged", "circuit_opened") ||
      event.readings.some(({ action }) => action === "charged"),
  },
  {
    kind: "nitrogen_hold",
    startedBy: (event) =>
      circuitIs(event, "nitrogen") || did(event, "nitrogen_in") ? nitrogenHoldSeconds : undefined,
    endedBy: (event) =>
      event.readings.some(isTestPressure) ||
      event.statements.some(
        (said) =>
          said.kind === "observation" &&
          ["holding_steady", "dropping", "leak_found", "no_leak_found"].includes(said.observation),
      ) ||
      reads(event, "vacuum") ||
      did(event, "nitrogen_out", "vacuum_started", "charged", "circuit_opened"),
    outlivesLeaving: true,
  },
  {
    kind: "bus_wait",
    startedBy: (event, equipment) =>
      equipment.drive === "inverter" && did(event, "power_off", "locked")
        ? busWaitSeconds
        : undefined,
    endedBy: (event) =>
      event.readings.some(
        ({ quantity, at }) =>
          (quantity === "voltage" && at === "dc_bus") || quantity === "diode_drop",
      ) || did(event, "power_on", "started", "proved_dead"),
  },
  {
    kind: "fire_watch",
    startedBy: (event) => (did(event, "brazed") ? fireWatchSeconds : undefined),
    endedBy: () => false,
  },
  {
    kind: "heater",
    startedBy: (event) =>
      actions(event).some(
        ({ action, what }) =>
          /crankcase|heater/i.test(what ?? "") &&
          ["power_on", "started", "replaced", "repaired"].includes(action),
      )
        ? heaterSeconds
        : undefined,
    endedBy: (event) => reads(event, "current") || did(event, "started"),
    outlivesLeaving: true,
  },
];
