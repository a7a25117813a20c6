import type { Building } from "./items.ts";
import type { PointsSaid } from "./point-words.ts";
import { tokenKind } from "./token.ts";

/** "U+ .45 V+ .45 W- .44": a module's output against the rail whose sign stands behind its letter. */
export function railSigned(build: Building, i: number): PointsSaid | undefined {
  const [letter, sign, joint, behind] = build.tokens.slice(i, i + 4);
  if (letter === undefined || !/^[uvw]$/.test(letter.text) || sign?.glued !== true)
    return undefined;
  if (sign.text !== "+" && sign.text !== "-") return undefined;
  const value = joint?.text === ":" || joint?.text === "=" ? behind : joint;
  const figure = value?.kind === tokenKind.number && !(value === joint && value.glued);
  if (!figure && !/^(?:ol|open|short|shorted)$/.test(value?.text ?? "")) return undefined;
  const rail = sign.text === "+" ? "DC+" : "DC-";
  return { list: [[rail, letter.text.toUpperCase()]], end: i + 2 };
}
