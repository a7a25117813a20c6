import type {
  Case,
  CaseNote,
  EquipmentFacts,
  FaultCode,
  Limits,
  PastCase,
  Reading,
  SiteFacts,
  Statement,
} from "../model.ts";
import { factsFrom } from "./facts.ts";
import { pairPlaces } from "./pairs.ts";
import { sidesByHeight } from "./sides-by-height.ts";

type Of<K extends Statement["kind"]> = Extract<Statement, { kind: K }>;

/** The case laid out for the checks: measurements apart from ratings, history and remarks. */
export interface Scene {
  /** the plate, outweighed by what the notes say */
  readonly facts: EquipmentFacts;
  readonly site: SiteFacts;
  /** measurements that count: no rating, nothing from an earlier visit, nothing doubtful */
  readonly readings: readonly Reading[];
  /** numbers that are no measurement: RLA, nominal, expected */
  readonly ratings: readonly Reading[];
  /** an earlier visit's values, said in the notes */
  readonly earlier: readonly Reading[];
  /** what was seen; denied remarks ("no burnt smell") apart */
  readonly seen: readonly Of<"observation">[];
  readonly denied: readonly Of<"observation">[];
  readonly done: readonly Of<"action">[];
  readonly parts: readonly Of<"part">[];
  readonly complaints: readonly Of<"complaint">[];
  /** the notes themselves, oldest first, for what depends on time */
  readonly notes: readonly CaseNote[];
  /** the note that a reading stands in */
  readonly noteOf: ReadonlyMap<Reading, CaseNote>;
  /** all words, lower case, one note a line */
  readonly words: string;
  readonly history: readonly PastCase[];
  readonly codes: readonly FaultCode[];
  /** the company's own */
  readonly limits: Limits;
  readonly at?: string;
}

/** Events that lie before the call by their nature, and still are its cause. */
const pastCauses: readonly string[] = [
  "line_work_done",
  "struck_by_storm",
  "was_without_power",
  "crankcase_heater_off",
  "shell_cold",
];

/** Lays out a case; `some` may be a part of its notes, plates and ratings come from all of them. */
export function sceneOf(whole: Case, some: readonly CaseNote[] = whole.notes): Scene {
  const facts = factsOf(whole);
  const notes = sidesByHeight(some.map(pairPlaces), facts.refrigerant);
  const readings = notes.flatMap((note) => note.readings);
  const statements = notes.flatMap((note) => note.statements);
  const guessed = new Set(notes.filter(isGuessOfCharge).flatMap((note) => note.statements));
  const shown = new Set(notes.filter(isShownOnly).flatMap((note) => note.statements));
  const remarks = of(statements, "observation")
    .filter(
      (one) =>
        !(one.observation === "sensor_reads_wrong" && /\bsays$/i.test(one.said) && shown.has(one)),
    )
    .map(soundJoints)
    .filter(
      (one) =>
        (one.earlier !== true || pastCauses.includes(one.observation)) &&
        !(one.observation === "low_charge_said" && guessed.has(one)),
    );
  return {
    facts,
    site: whole.site,
    readings: readings.filter(isMeasurement),
    ratings: whole.notes.flatMap((note) => note.readings).filter((one) => one.rating !== undefined),
    earlier: readings.filter((one) => one.earlier === true && one.rating === undefined),
    seen: remarks.filter((one) => one.denied !== true),
    denied: remarks.filter((one) => one.denied === true),
    done: of(statements, "action").filter((one) => one.planned !== true),
    parts: of(statements, "part"),
    complaints: of(statements, "complaint"),
    notes,
    noteOf: new Map(notes.flatMap((note) => note.readings.map((one) => [one, note] as const))),
    words: notes.map((note) => (note.text ?? "").toLowerCase()).join("\n"),
    history: whole.history,
    codes: whole.codes,
    limits: whole.limits ?? {},
    ...(whole.at === undefined ? {} : { at: whole.at }),
  };
}

/** "bubbles on the flares, nothing": a leak that was looked for and not found. */
function soundJoints(one: Of<"observation">): Of<"observation"> {
  if (one.observation !== "leak_found" || one.denied !== true) return one;
  const { denied: _, ...rest } = one;
  return { ...rest, observation: "no_leak_found" };
}

/** "customer thinks it's low": what a layman supposes is no sign of the charge. */
function isGuessOfCharge(note: CaseNote): boolean {
  return /\b(?:customer|owner|tenant|manager|client|cook|guest|office|he|she|they)\b[^.]{0,12}\b(?:thinks?|thought|guess\w*|believes?|suspects?|figures?|reckons?|wonders?|asks?|asked|says|said|swears?)\b[^.]{0,24}\blow\b/i.test(
    note.text ?? "",
  );
}

/** "stator sensor says 58 C": what it shows, where nothing in the note is set against it. */
function isShownOnly(note: CaseNote): boolean {
  const degrees = note.readings.filter(({ quantity }) => quantity === "temperature");
  return (
    degrees.length === 1 &&
    !/\b(?:but|actual\w*|really|though|while|wrong|meter|probe|versus|vs|against|room|can'?t)\b/i.test(
      note.text ?? "",
    )
  );
}

function isMeasurement(reading: Reading): boolean {
  return reading.rating === undefined && reading.earlier !== true && reading.doubtful !== true;
}

function of<K extends Statement["kind"]>(statements: readonly Statement[], kind: K): Of<K>[] {
  return statements.filter((one): one is Of<K> => one.kind === kind);
}

/** Works out something of a scene once, however many checks ask for it; what is worked out must follow from the scene alone. */
export function perScene<T>(work: (scene: Scene) => T): (scene: Scene) => T {
  return once(work);
}

/** The same of each reading of a scene. */
export function perReading<T>(
  work: (scene: Scene, reading: Reading) => T,
): (scene: Scene, reading: Reading) => T {
  const found = perScene(() => new Map<Reading, { readonly is: T }>());
  return (scene, reading) => {
    const known = found(scene);
    const had = known.get(reading) ?? { is: work(scene, reading) };
    known.set(reading, had);
    return had.is;
  };
}

/** A judgement goes back and forth between two: what was worked out for the last two is kept. */
function once<K extends object, T>(work: (of: K) => T): (of: K) => T {
  let last: { readonly of: K; readonly found: T } | undefined;
  let before: typeof last;
  return (of) => {
    if (last?.of === of) return last.found;
    if (before?.of === of) return before.found;
    const found = work(of);
    before = last;
    last = { of, found };
    return found;
  };
}

// the scenes of a judgement share the plate
const factsOf = once(factsFrom);
