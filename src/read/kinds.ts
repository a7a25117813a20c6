import { type QuantityName, quantities } from "../quantities/list.ts";
import type { Dimension, Quantity, Unit } from "../quantities/quantity.ts";

const byName = new Map<QuantityName, Quantity>(
  quantities.map((quantity) => [quantity.name, quantity]),
);
const nothing: Quantity = { name: "", unit: null, dimensions: [], units: [], words: "" };

export function quantityOf(name: QuantityName): Quantity {
  return byName.get(name) ?? nothing;
}

const byFigure = new Map<string, Unit>();
for (const quantity of quantities)
  for (const unit of quantity.units)
    if (!byFigure.has(unit.figure)) byFigure.set(unit.figure, unit);

/** The unit that a read-back calls so. */
export function unitCalled(figure: string): Unit | undefined {
  return byFigure.get(figure);
}

/** The quantity that a dimension means where nothing else is said. */
const usual: Readonly<Record<Dimension, QuantityName | undefined>> = {
  resistance: undefined,
  current: "current",
  voltage: "voltage",
  frequency: "frequency",
  capacitance: "capacitance",
  power: "power",
  apparent_power: "apparent_power",
  pressure: "pressure",
  inches_of_mercury: "pressure",
  inches_of_water: "static_pressure",
  low_pressure: "vacuum",
  temperature: "temperature",
  percent: undefined,
  mass: "mass",
  airflow: "airflow",
  speed: "rotational_speed",
  length: undefined,
  waterflow: "water_flow",
  concentration: "concentration",
  time: "duration",
  steps: "valve_steps",
  ratio: undefined,
};

export function usualQuantity(dimension: Dimension): QuantityName | undefined {
  return usual[dimension];
}

/** Can the quantity be measured in this dimension? */
export function fits(name: QuantityName, dimension: Dimension): boolean {
  const { dimensions } = quantityOf(name);
  return dimensions.includes(dimension);
}

/** "psi" and "psig" measure alike. */
export function isSameUnit(one: string, other: string): boolean {
  if (one === other) return true;
  const [first, second] = [unitCalled(one), unitCalled(other)];
  return (
    first !== undefined &&
    first.dimension === second?.dimension &&
    first.factor === second.factor &&
    (first.reference ?? "gauge") === (second.reference ?? "gauge")
  );
}
