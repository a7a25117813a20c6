import { chargeTarget, leftToGo } from "../charge-line.ts";
import { massUnits, massWords } from "../mass-words.ts";
import { sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

/** What went in and came out so far, against what the plate and the line ask for. */
export const weights: Answer = (input) => {
  const { job } = input;
  if (job === undefined) return whichJob(input);
  const units = massUnits(job, input.units);
  const { recovered_kg: out, charged_kg: charged } = job.refrigerant;
  const moved = [
    charged > 0 ? `${massWords(charged, units)} charged in all` : "",
    out > 0 ? `${massWords(out, units)} recovered` : "",
  ].filter((part) => part !== "");
  const head = moved.length === 0 ? "nothing weighed in or out yet" : moved.join(", ");
  return [sentence(`${unitName(job)}: ${head}`), targetLine()].join("\n");

  function targetLine(): string {
    const target = chargeTarget(input);
    if (target === undefined) return "No plate charge is on file: read it off the plate.";
    const full = `${massWords(target.kg, units)} (${target.from})`;
    const rest = leftToGo(input);
    if (rest === undefined) return `Full charge ${full}.`;
    return rest === "reached" ? `Target ${full} reached.` : `Target ${full}: ${rest}.`;
  }
};
