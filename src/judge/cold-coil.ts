import type { CaseNote } from "../model.ts";
import { applicationOf } from "./application.ts";
import type { Scene } from "./scene.ts";

/** Letters about the remark that tell how much of the coil is meant. */
const near = 40;
/** Ice where the refrigerant enters is a starved coil, not one that nobody thaws. */
const partial =
  /\b(?:first|inlet|distributor|partial\w*|half|one (?:circuit|corner|end|row)|few|couple|bottom|only|rest (?:is )?(?:warm|dry|bare))\b/;

/**
 * A cold room's coil that is iced over: there the defrost comes before airflow and charge, since
 * every such coil frosts and only the defrost clears it. Common practice, no source.
 */
export function isIcedColdCoil(
  one: Scene["seen"][number],
  note: CaseNote | undefined,
  scene: Scene,
): boolean {
  if (one.observation !== "ice_on_indoor_coil") return false;
  if (!/^(?:cooler|freezer)$/.test(applicationOf(scene))) return false;
  const [from, to] = one.spans[0] ?? [0, 0];
  const text = (note?.text ?? one.said).slice(Math.max(0, from - near), to + near);
  return !partial.test(text.toLowerCase());
}
