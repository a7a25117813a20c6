import type { RowFacts } from "../file-kind.ts";

/** Rows of one unit, a circuit each: the first row's plate, every circuit's gas and charge. */
export function joinCircuits(rows: readonly RowFacts[]): RowFacts {
  const [first = {}] = rows;
  const { circuit: _circuit, charge_kg: _charge, ...plate } = first;
  const circuits = rows.map(({ circuit, refrigerant, charge_kg }) => ({
    circuit,
    ...(refrigerant === undefined ? {} : { refrigerant }),
    ...(charge_kg === undefined ? {} : { charge_kg }),
  }));
  // one full charge stands for each circuit only where all have the same
  const charges = new Set(circuits.map(({ charge_kg }) => charge_kg));
  const [charge] = charges;
  const same = charges.size === 1 && charge !== undefined ? { charge_kg: charge } : {};
  return { ...plate, ...same, circuits };
}
