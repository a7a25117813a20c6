import { numbersOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";

/** Cel of a shell on which an internal overload can be open. Common practice, no source. */
const hotShellCel = 55;

/** Whether the shell is hot or cold, where either was said. */
export function shellWarmth(scene: Scene): "hot" | "cold" | undefined {
  const said = scene.seen.map((one) => one.observation);
  if (said.includes("shell_hot")) return "hot";
  const shells = ofQuantity(scene.readings, "temperature").filter((one) => one.at === "shell");
  const warmest = Math.max(...numbersOf(shells));
  if (warmest >= hotShellCel) return "hot";
  return said.includes("shell_cold") || Number.isFinite(warmest) ? "cold" : undefined;
}
