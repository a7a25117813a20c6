import type { Item } from "../item.ts";

const partOfMachine =
  /^(?:contactor|board|compressor|comp|coil|motor|switch|transformer|xfmr|panel|disconnect|fuse|fuses|relay|valve|drive|inverter|terminal|terminals|strip|sensor|evap|evaporator|condenser|fan|heater|thermostat|stat|breaker|capacitor|cap)$/;

/** Behind "on the way": "to the contactor". */
export function leadsToPart(items: readonly Item[], after: number): boolean {
  let at = after;
  while (/^(?:to|from|the|its|that|up|down|back)$/.test(items[at]?.text ?? "")) at++;
  return at > after && partOfMachine.test(items[at]?.text ?? "");
}
