import type { Case, CaseNote, Reading, Statement } from "../src/model.ts";
import { ambientPaFromAltitude } from "../src/physics/ambient-pressure.ts";
import type { QuantityName } from "../src/quantities/list.ts";
import {
  actions,
  type ObservationName,
  observations,
  type Place,
  places,
} from "../src/vocabulary.ts";

/** Test support: readings by hand, so that judging is tested apart from reading. */

const units: Readonly<Record<string, readonly [canonical: string, (value: number) => number]>> = {
  psi: ["Pa", (value) => value * 6894.757],
  bar: ["Pa", (value) => value * 1e5],
  psia: ["Pa", (value) => value * 6894.757],
  F: ["Cel", (value) => (value - 32) / 1.8],
  C: ["Cel", (value) => value],
  dF: ["K", (value) => value / 1.8],
  K: ["K", (value) => value],
  micron: ["Pa", (value) => value * 0.133322],
  kg: ["kg", (value) => value],
  lb: ["kg", (value) => value * 0.45359237],
  cfm: ["m3/s", (value) => value * 4.719474e-4],
  in: ["Pa", (value) => value * 249.089],
  kW: ["W", (value) => value * 1000],
  V: ["V", (value) => value],
  A: ["A", (value) => value],
  "%": ["%", (value) => value],
};
const quantityOf: Readonly<Record<string, QuantityName>> = {
  p: "pressure",
  t: "temperature",
  wb: "wet_bulb_temperature",
  vac: "vacuum",
  m: "mass",
  flow: "airflow",
  static: "static_pressure",
  sh: "superheat",
  sc: "subcooling",
  dt: "temperature_difference",
  power: "power",
  volt: "voltage",
  amp: "current",
  rh: "relative_humidity",
  open: "valve_opening",
};

export interface HandNote {
  readonly text: string;
  /** "p suction 106 psi", "vac - 1150 micron after=180", "m - 9.8 kg charged", "sc - 10 dF expected" */
  readonly readings?: readonly string[];
  /** "see bulb_loose", "do nitrogen_in" */
  readonly said?: readonly string[];
  readonly at?: string;
}

export function noteOf(hand: HandNote): CaseNote {
  let cursor = 0;
  const readings = (hand.readings ?? []).map((spec) => {
    const number = spec.split(" ")[2] ?? "";
    const from = Math.max(cursor, hand.text.indexOf(number, cursor));
    cursor = from + number.length;
    return readingOf(spec, from, hand.text);
  });
  return {
    text: hand.text,
    readings,
    statements: (hand.said ?? []).map((spec) => statementOf(spec, hand.text)),
    ...(hand.at === undefined ? {} : { at: hand.at }),
  };
}

function readingOf(spec: string, from: number, text: string): Reading {
  const [kind = "", place = "-", number = "", unit = "", ...extra] = spec.split(" ");
  const quantity = quantityOf[kind];
  const row = units[unit];
  if (quantity === undefined || row === undefined) throw new Error(`cannot build "${spec}"`);
  const at = places.find((one): one is Place => one === place);
  const to = from + number.length;
  const after = extra.find((one) => one.startsWith("after="))?.slice(6);
  const subject = extra.find((one) => one.startsWith("on="))?.slice(3);
  const action = extra.includes("charged") ? "charged" : "recovered";
  return {
    quantity,
    relation: "=",
    value: row[1](Number(number)),
    unit: row[0],
    said: text.slice(from, to),
    spans: [[from, to]],
    assumed: [],
    figure: { number, unit },
    rule: "by hand",
    ...(at === undefined ? {} : { at }),
    ...(after === undefined ? {} : { after_s: Number(after) }),
    ...(extra.includes("charged") || extra.includes("recovered") ? { action } : {}),
    ...(extra.includes("expected") ? { rating: "expected" as const } : {}),
    ...(subject === undefined ? {} : { subject: subject.replace("_", " ") }),
    ...(unit === "psia" ? { reference: "absolute" as const } : {}),
  };
}

function statementOf(spec: string, text: string): Statement {
  const [kind, name = ""] = spec.split(" ");
  const base = { said: name, spans: [[text.length, text.length] as const], rule: "by hand" };
  const observation = observations.find((one): one is ObservationName => one === name);
  if (kind === "see" && observation !== undefined)
    return { ...base, kind: "observation", observation };
  const action = actions.find((one) => one === name);
  if (kind === "do" && action !== undefined) return { ...base, kind: "action", action };
  throw new Error(`cannot build "${spec}"`);
}

export function caseOf(
  equipment: Case["equipment"],
  notes: readonly HandNote[],
  site: Case["site"] = {},
): Case {
  return { equipment, site, notes: notes.map(noteOf), history: [], codes: [] };
}

export const seaLevelPa = ambientPaFromAltitude(0) ?? Number.NaN;
