import type { Item } from "../item.ts";

/** What people wait for that is no person. */
export const awaited =
  /^(?:part|parts|trap|strainer|igniter|ignitor|accumulator|distributor|gasket|switch|block|separator|harness|board|bd|motor|compressor|comp|valve|txv|contactor|cap|capacitor|coil|drive|inverter|vfd|fan|belt|sensor|thermistor|delivery|order|blower|transformer|pump|filter|drier|module|replacement|control|bearing|bearings|fuse|fuses|heater|core|gasket|shipment|ups|new|freight|pcb|eev|actuator|relay|thermostat|stat|evap|condenser|ecm|wheel|lineset|cable|cord|wire|wiring|breaker|seal|kit|tubing|fitting|fittings|glass)$/;

const between = /^(?:[-/.#]|has|have|had|just|finally|all|both|is|are|now|s|ve|number|no)$/;

/** "part 60-12E4 arrived", "the 40 A contactor has arrived": a thing came, nobody did. */
export function thingCame(items: readonly Item[], i: number): boolean {
  if (!/^(?:just|arrived)$/.test(items[i]?.text ?? "")) return false;
  let at = i - 1;
  while (between.test(items[at]?.text ?? "") || /\d/.test(items[at]?.text ?? "")) at--;
  return awaited.test(items[at]?.text ?? "");
}
