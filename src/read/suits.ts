import { type Item, itemKind } from "./item.ts";
import { electrical } from "./points-behind.ts";

/** Can a value in this unit carry the label? */
export function suits(item: Item, dimension: string | undefined): boolean {
  const { label } = item;
  if (item.kind === itemKind.points || item.kind === itemKind.unit)
    return dimension === undefined || electrical(dimension);
  if (label === undefined || dimension === undefined)
    return label !== undefined && label.quantity === undefined && label.hint !== undefined;
  if (label.action !== undefined) return dimension === "mass";
  if (label.rating !== undefined)
    return label.quantity === undefined || label.quantity === dimension;
  if (label.state !== undefined || label.stat !== undefined) return electrical(dimension);
  if (label.place !== undefined || label.hint !== undefined)
    return (
      dimension === "pressure" ||
      dimension === "temperature" ||
      // "20# suction": pounds of a gauge
      (dimension === "mass" && label.place !== undefined && label.hint === "pressure") ||
      (dimension === "voltage" && label.hint === "voltage") ||
      (dimension === "voltage" && label.place === "dc_bus")
    );
  if (label.quantity !== undefined) return namesDimension(label.quantity, dimension);
  return false;
}

function namesDimension(quantity: string, dimension: string): boolean {
  if (
    quantity === "superheat" ||
    quantity === "subcooling" ||
    quantity === "temperature_difference" ||
    quantity === "wet_bulb_temperature"
  )
    return dimension === "temperature";
  if (quantity === "relative_humidity" || quantity === "valve_opening")
    return dimension === "percent";
  if (quantity === "static_pressure")
    return dimension === "inches_of_water" || dimension === "length";
  if (quantity === "vacuum") return dimension === "low_pressure";
  if (quantity === "insulation_resistance" || quantity === "winding_resistance")
    return dimension === "resistance";
  return quantity === dimension;
}
