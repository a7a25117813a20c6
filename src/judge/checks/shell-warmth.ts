import { numbersOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";

/** Cel of a shell on which an internal overload can be open. Common practice, no source. */
const hotShellCel = 55;

/** Whether the shell of that compressor is hot or cold, where either was said of it or of none by name. */
export function shellWarmth(scene: Scene, about: string): "hot" | "cold" | undefined {
  const isOwn = ({ subject }: { readonly subject?: string }): boolean =>
    subject === undefined || subject === about || !/\d|\b[a-z]$/i.test(about);
  const said = scene.seen.filter(isOwn).map((one) => one.observation);
  if (said.includes("shell_hot")) return "hot";
  const shells = ofQuantity(scene.readings, "temperature").filter(
    (one) => one.at === "shell" && isOwn(one),
  );
  const warmest = Math.max(...numbersOf(shells));
  if (warmest >= hotShellCel) return "hot";
  return said.includes("shell_cold") || Number.isFinite(warmest) ? "cold" : undefined;
}
