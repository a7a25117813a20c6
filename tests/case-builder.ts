import type {
  Case,
  CaseNote,
  EquipmentFacts,
  PastCase,
  Reading,
  Span,
  Statement,
} from "../src/model.ts";
import type { QuantityName } from "../src/quantities/list.ts";
import { quantities } from "../src/quantities/list.ts";
import type { ActionName, ObservationName } from "../src/vocabulary.ts";

/** Builds cases by hand, so that judging is tested apart from reading. */

type Extra = Partial<Omit<Reading, "quantity" | "value" | "unit">>;
export type Part = Reading | Statement;

const nowhere: readonly Span[] = [[0, 0]];

/** A reading as the reader would give it; "OL" is over range. */
export function r(quantity: QuantityName, value: number | "OL", extra: Extra = {}): Reading {
  const unit = quantities.find((one) => one.name === quantity)?.unit ?? null;
  const open = value === "OL";
  return {
    quantity,
    relation: open ? ">" : "=",
    value: open ? null : value,
    unit,
    ...(open ? { over_range: true as const } : {}),
    said: String(value),
    spans: nowhere,
    assumed: [],
    figure: { number: String(value), unit: "" },
    rule: "by hand",
    ...extra,
  };
}

/** Three leads to ground, Ohm. */
export function megs(leads: readonly (number | "OL")[], extra: Extra = {}): Reading[] {
  return leads.map((ohm, at) =>
    r("insulation_resistance", ohm, { points: [`lead ${at + 1}`, "ground"], ...extra }),
  );
}

/** Three pairs, Ohm. */
export function pairs(ohms: readonly (number | "OL")[], extra: Extra = {}): Reading[] {
  const names = [
    ["T1", "T2"],
    ["T2", "T3"],
    ["T1", "T3"],
  ] as const;
  return ohms.map((ohm, at) => r("winding_resistance", ohm, { points: names[at] ?? [], ...extra }));
}

/** Volts between lines. */
export function volts(values: readonly number[], extra: Extra = {}): Reading[] {
  const names = [
    ["L1", "L2"],
    ["L2", "L3"],
    ["L1", "L3"],
  ] as const;
  return values.map((one, at) => r("voltage", one, { points: names[at] ?? [], ...extra }));
}

export function amps(values: readonly number[], extra: Extra = {}): Reading[] {
  return values.map((one) => r("current", one, extra));
}

export function seen(observation: ObservationName, subject?: string): Statement {
  return {
    kind: "observation",
    observation,
    ...(subject === undefined ? {} : { subject }),
    said: observation.replaceAll("_", " "),
    spans: nowhere,
    rule: "by hand",
  };
}

export function did(action: ActionName, what?: string): Statement {
  return {
    kind: "action",
    action,
    ...(what === undefined ? {} : { what }),
    said: `${action} ${what ?? ""}`.trim(),
    spans: nowhere,
    rule: "by hand",
  };
}

/** Where its words stand in the text, else its order. */
function placeOf(text: string, said: string, at: number): Span {
  const from = text.indexOf(said);
  return from < 0 ? [at, at + 1] : [from, from + said.length];
}

/** One message; its parts stand where their words do, else in their order. */
export function note(text: string, ...parts: readonly (Part | readonly Part[])[]): CaseNote {
  const all = parts.flat().map((one, at) => ({ ...one, spans: [placeOf(text, one.said, at)] }));
  return {
    readings: all.filter((one): one is typeof one & Reading => "figure" in one),
    statements: all.filter((one): one is typeof one & Statement => !("figure" in one)),
    text,
  };
}

export function caseOf(
  equipment: EquipmentFacts,
  notes: readonly CaseNote[],
  history: readonly PastCase[] = [],
): Case {
  return { equipment, site: {}, notes, history, codes: [] };
}
