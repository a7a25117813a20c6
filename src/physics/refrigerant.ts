import type { saturationTables } from "./tables/saturation.ts";

/** A refrigerant that the tables know, by its ASHRAE 34 number: "R-410A". */
export type Refrigerant = keyof typeof saturationTables;

export const refrigerants = [
  "R-22",
  "R-32",
  "R-134a",
  "R-290",
  "R-404A",
  "R-407C",
  "R-410A",
  "R-448A",
  "R-449A",
  "R-454B",
] as const satisfies readonly Refrigerant[];

/**
 * The refrigerant meant by "R-410A", "r410a", "410" or "HFC-32".
 * Undefined for one that the tables lack. A blend's letter may be left out where only one blend
 * of that number is known.
 */
export function refrigerantNamed(text: string): Refrigerant | undefined {
  const found = text.toUpperCase().match(/(\d{2,4})([A-Z]?)/);
  if (found === null) return undefined;
  const [, number = "", letter = ""] = found;
  const exact = refrigerants.find((name) => name.slice(2).toUpperCase() === number + letter);
  if (exact !== undefined || letter !== "") return exact;
  const sameNumber = refrigerants.filter((name) => name.slice(2).match(/\d+/)?.[0] === number);
  return sameNumber.length === 1 ? sameNumber[0] : undefined;
}
