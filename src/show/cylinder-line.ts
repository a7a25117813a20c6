import type { ReplyInput } from "../model.ts";
import { massWords } from "./mass-words.ts";

/** How far a recovery cylinder is from its 80 percent, at each weight put in; "" where it is not known. */
export function cylinderLine({ cylinder, units }: ReplyInput): string {
  if (cylinder === undefined) return "";
  const { number, in_kg, limit_kg } = cylinder;
  const held = `Cylinder ${number}: ${massWords(Math.max(0, in_kg), units)}`;
  const limit = `of ${massWords(limit_kg, units)} at 80 percent`;
  const left = limit_kg - in_kg;
  const rest =
    left > 0
      ? `${massWords(left, units)} to go`
      : `${massWords(-left, units)} over: take none more`;
  return `${held} ${limit}, ${rest}.`;
}
