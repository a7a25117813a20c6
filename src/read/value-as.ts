import type { Reading } from "../model.ts";
import type { QuantityName } from "../quantities/list.ts";
import type { Unit } from "../quantities/quantity.ts";
import { quantityOf } from "./kinds.ts";

/** The figure of a reading as a value of another quantity or unit, canonical; undefined where that can't be. */
export function valueAs(reading: Reading, name: QuantityName, unit: Unit): number | undefined {
  const figure = Number(reading.figure.number);
  const quantity = quantityOf(name);
  if (Number.isNaN(figure) || !quantity.dimensions.includes(unit.dimension)) return undefined;
  const offset = quantity.difference === true ? 0 : (unit.offset ?? 0);
  return Number((figure * unit.factor + offset).toPrecision(12));
}
