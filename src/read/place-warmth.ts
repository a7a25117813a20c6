import type { Place } from "../vocabulary.ts";

const air: readonly [number, number] = [-60, 95];
const line: readonly [number, number] = [-75, 130];

/** Cel: what can be measured at a place, with a wide margin; beyond it a point or a digit slipped. Common practice, no source. */
const ranges: Partial<Readonly<Record<Place, readonly [number, number]>>> = {
  return_air: air,
  supply_air: air,
  outdoor_air: [-60, 70],
  indoor_air: air,
  box: air,
  suction: line,
  liquid: line,
  suction_saturation: line,
};

/** Whether so many Cel can be at a place; true where nothing is known of it. */
export function warmthFits(place: Place | undefined, degreesCel: number): boolean {
  const range = place === undefined ? undefined : ranges[place];
  return range === undefined || (degreesCel >= range[0] && degreesCel <= range[1]);
}
