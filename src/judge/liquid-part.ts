import type { Reading } from "../model.ts";
import { clauseOf } from "./clause.ts";
import { partWords } from "./part-words.ts";
import type { Scene } from "./scene.ts";

/** "74 F after the drier": of the liquid line, whatever place the words before it gave it. */
export function isAtLiquidPart(scene: Scene, reading: Reading): boolean {
  if (reading.quantity !== "temperature") return false;
  const air = reading.at === "supply_air" || reading.at === "return_air";
  return air && partWords.test(clauseOf(scene, reading)) && !/air|duct|grille/.test(reading.said);
}
