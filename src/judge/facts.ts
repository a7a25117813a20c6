import type { Case, EquipmentFacts, Reading, Statement } from "../model.ts";

/** The plate as the office has it, outweighed by what the notes say. */
export function factsFrom(whole: Case): EquipmentFacts {
  let facts: EquipmentFacts = whole.equipment;
  for (const note of whole.notes) {
    for (const one of note.statements)
      if (one.kind === "nameplate") facts = { ...facts, ...plate(one) };
    for (const one of note.readings)
      if (one.rating !== undefined) facts = { ...facts, ...rating(one) };
  }
  return facts;
}

const nothing: EquipmentFacts = {};

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
