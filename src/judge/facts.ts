import type { Case, EquipmentFacts, Reading, Statement } from "../model.ts";
import { lockedByLetterA } from "./plate-letter.ts";

/** The plate as the office has it, outweighed by what the notes say. */
export function factsFrom(whole: Case): EquipmentFacts {
  let facts: EquipmentFacts = whole.equipment;
  for (const note of whole.notes) {
    for (const one of note.statements)
      if (one.kind === "nameplate") facts = { ...facts, ...plate(one) };
    for (const one of note.readings)
      if (one.rating !== undefined)
        facts = { ...facts, ...rating(one), ...nominalAmps(one, facts) };
    for (const one of note.statements)
      if (one.kind === "note" && one.about === "supply") facts = { ...facts, ...calledBy(one) };
  }
  if (facts.drive === undefined && showsDrive(whole)) facts = { ...facts, drive: "inverter" };
  const lra_A = facts.lra_A ?? lockedByLetterA(facts, textOf(whole));
  return lra_A === undefined ? facts : { ...facts, lra_A };
}

/** A DC bus that was measured is a drive's: the compressor's, where none of a fan or a pump is spoken of. */
function showsDrive(whole: Case): boolean {
  const bus = whole.notes.some(({ readings }) =>
    readings.some(
      (one) =>
        one.at === "dc_bus" && (one.subject === undefined || /^comp|^inverter/.test(one.subject)),
    ),
  );
  return bus && !/\b(?:vfds?|fans?|blowers?|pumps?|tower|ahu)\b/.test(textOf(whole));
}

const textOf = ({ notes }: Case): string =>
  notes.map(({ text = "" }) => text.toLowerCase()).join("\n");

const nothing: EquipmentFacts = {};

/** "amps 7 of 19": the compressor's rated amps, where no plate gave them. */
function nominalAmps(reading: Reading, facts: EquipmentFacts): EquipmentFacts {
  const amps = reading.quantity === "current" && reading.rating === "nominal";
  const own = reading.subject === undefined || /^comp/.test(reading.subject);
  return amps && own && facts.rla_A === undefined && typeof reading.value === "number"
    ? { rla_A: reading.value }
    : nothing;
}

/** "on a 208 unit": the plate's volts; of two ("208/230") the office's word stands. */
function calledBy(one: Extract<Statement, { kind: "note" }>): EquipmentFacts {
  const volts = /^\s*(\d{3})\s*v?\s*$/i.exec(one.said)?.[1];
  return volts === undefined ? nothing : { supply_V: Number(volts) };
}

function plate(statement: Statement): EquipmentFacts {
  if (statement.kind !== "nameplate") return nothing;
  const { field, value } = statement;
  if (field === "refrigerant") return { refrigerant: value };
  if (field === "metering" && (value === "expansion_valve" || value === "fixed_orifice"))
    return { metering: value };
  if (field === "drive" && (value === "inverter" || value === "line")) return { drive: value };
  if (field === "phases" && Number(value) > 0) return { phases: Number(value) };
  return nothing;
}

function rating(reading: Reading): EquipmentFacts {
  const value = reading.value;
  if (typeof value !== "number") return nothing;
  if (reading.quantity === "current" && reading.rating === "RLA") return { rla_A: value };
  if (reading.quantity === "current" && reading.rating === "LRA") return { lra_A: value };
  if (reading.quantity === "current" && reading.rating === "MOC") return { moc_A: value };
  if (reading.quantity === "mass" && reading.rating === "nameplate_charge")
    return { charge_kg: value };
  const plateVolts = reading.quantity === "voltage" && reading.rating === "nominal";
  if (plateVolts && reading.kind !== "dc" && reading.at === undefined && value > 100)
    return { supply_V: value };
  return nothing;
}
