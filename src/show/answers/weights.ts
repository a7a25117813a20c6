import type { Job, ReplyInput } from "../../model.ts";
import { chargeTarget, leftToGo } from "../charge-line.ts";
import { massUnits, massWords } from "../mass-words.ts";
import { findingSentence, needs } from "../verdict.ts";
import { sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

/** What went in and came out so far, against what the plate and the line ask for. */
export const weights: Answer = (input, question) => {
  const { job } = input;
  const asked = question.about ?? question.said;
  if (job === undefined) return ofToday(input) || whichJob(input);
  if (/^\W*what (?:gas|refrigerant)\b/i.test(asked)) return gasOf(input, job);
  const units = massUnits(job, input.units);
  const { recovered_kg: out, charged_kg: charged } = job.refrigerant;
  const moved = [
    charged > 0 ? `${massWords(charged, units)} charged in all` : "",
    out > 0 ? `${massWords(out, units)} recovered` : "",
  ].filter((part) => part !== "");
  const said = question.about ?? question.said;
  if (/\bleak rate\b/i.test(said)) return leakRate(input);
  const head = moved.length === 0 ? "nothing weighed in or out yet" : moved.join(", ");
  const lines = [sentence(`${unitName(job)}: ${head}`), targetLine()];
  const over = /\b(?:over|under|above|below|short)\b/i.test(said) ? againstPlate() : "";
  return over === "" ? lines.join("\n") : over;

  function againstPlate(): string {
    const target = chargeTarget(input);
    if (job === undefined || target === undefined || charged <= 0) return "";
    const apart = charged - target.kg;
    const side = apart > 0 ? "over" : "under";
    return sentence(
      `${unitName(job)}: ${massWords(charged, units)} in, ${massWords(Math.abs(apart), units)} ${side} the ${massWords(target.kg, units)} (${target.from})`,
    );
  }

  function targetLine(): string {
    const target = chargeTarget(input);
    if (target === undefined) return "No plate charge is on file: read it off the plate.";
    const full = `${massWords(target.kg, units)} (${target.from})`;
    const rest = leftToGo(input);
    if (rest === undefined) return `Full charge ${full}.`;
    return rest === "reached" ? `Target ${full} reached.` : `Target ${full}: ${rest}.`;
  }
};

/** Jobs of one day that an answer goes through. */
const mostJobs = 6;

/** Where no job is meant: what was weighed today, job by job. */
function ofToday(input: ReplyInput): string {
  const jobs = (input.routing?.candidates ?? input.jobs).filter(
    ({ refrigerant: { charged_kg, recovered_kg } }) => charged_kg + recovered_kg > 0,
  );
  return jobs
    .slice(0, mostJobs)
    .map((job) => {
      const units = massUnits(job, input.units);
      const { recovered_kg: out, charged_kg: charged } = job.refrigerant;
      const parts = [
        charged > 0 ? `${massWords(charged, units)} in` : "",
        out > 0 ? `${massWords(out, units)} out` : "",
      ].filter((part) => part !== "");
      const place = [job.site, job.equipment].filter((word) => word !== null).join(" ");
      return sentence(`${place}: ${parts.join(", ")}`);
    })
    .join("\n");
}

/** "What gas is in HP-4": as the office lists it. */
function gasOf({ equipment, units }: ReplyInput, job: Job): string {
  const { refrigerant, charge_kg: charge } = equipment;
  if (refrigerant === undefined)
    return `${unitName(job)}: no gas is on file, read it off the plate.`;
  const plate =
    charge === undefined ? "no plate charge on file" : `plate ${massWords(charge, units)}`;
  return sentence(`${unitName(job)}: ${refrigerant}, ${plate}`);
}

/** What judging worked out of what went in since the last time, or what is missing for it. */
function leakRate(input: ReplyInput): string {
  const { job, judgement } = input;
  if (job === undefined) return whichJob(input);
  const found = judgement.findings.find(({ check }) => check === "leak_rate");
  if (found === undefined || found.level === "unknown") {
    const why =
      found === undefined ? "what went in, the full charge and when it was last added to" : "";
    const lacks = found === undefined ? `needs ${why}` : needs(found);
    return sentence(
      `${unitName(job)}: leak rate not judged, ${lacks.replace(/^NOT JUDGED: /, "")}`,
    );
  }
  return findingSentence(found, 30);
}
