import type { Job, ReplyInput } from "../../model.ts";
import { openParts, partName } from "../open-parts.ts";
import { listed, sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";
import { whichJob } from "./which-job.ts";

/** What a check needs that is not in every bag. */
const toolsOf: Readonly<Record<string, readonly string[]>> = {
  insulation: ["insulation tester"],
  polarization: ["insulation tester"],
  start_current: ["clamp meter with peak hold"],
  evacuation: ["vacuum pump", "micron gauge"],
  pressure_test: ["nitrogen and regulator", "soap"],
  charge: ["scale", "refrigerant"],
  airflow: ["manometer", "filters"],
  temperature_split: ["wet bulb thermometer"],
};

/** The parts that the job waits for, and the tools that its open steps ask for. */
export function thingsToBring(input: ReplyInput, job: Job): readonly string[] {
  const parts = openParts(job).map(partName);
  const gas = input.equipment.refrigerant ?? "refrigerant";
  const tools = input.judgement.next
    .slice(0, 2)
    .flatMap((n) => toolsOf[n.check] ?? [])
    .map((tool) => (tool === "refrigerant" ? gas : tool));
  return [...new Set([...parts, ...tools, ...circuitTools(input, job)])];
}

function circuitTools(input: ReplyInput, job: Job): readonly string[] {
  const { circuit } = job.machine;
  const gas = input.equipment.refrigerant ?? "refrigerant";
  if (circuit === "nitrogen") return ["vacuum pump", "micron gauge", "scale", gas];
  if (circuit === "vacuum") return ["micron gauge", "scale", gas];
  if (circuit === "open" || circuit === "recovered")
    return ["nitrogen and regulator", "vacuum pump"];
  return [];
}

export const bring: Answer = (input) => {
  const { job } = input;
  if (job === undefined) return whichJob(input);
  const things = thingsToBring(input, job);
  if (things.length === 0) return `${unitName(job)}: nothing beyond the usual bag.`;
  return sentence(`${unitName(job)}: bring ${listed(things)}`);
};
