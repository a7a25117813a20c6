import type { Job, Level, Machine, Suspect } from "../model.ts";
import type { FaultName, Status } from "../vocabulary.ts";

/** The four verdicts, and the only words that give one. */
export const verdictWords = {
  good: "GOOD",
  watch: "WATCH",
  bad: "BAD",
  unknown: "NOT JUDGED",
} as const satisfies Record<Level, string>;

/** Status as people say it, after "Job 4 RTU-1:". */
export const statusWords = {
  open: "open",
  on_the_way: "on the way",
  on_site: "on site",
  left_site: "left",
  waiting_for_parts: "waiting for parts",
  no_access: "no access",
  done: "done",
} as const satisfies Record<Status | "open", string>;

/** The name to say for a person's id. Platform ids that nobody named are said as typed. */
export function personName(id: string, names: Readonly<Record<string, string>>): string {
  const known = names[id];
  if (known !== undefined) return known;
  return /^[a-z]+$/.test(id) ? id.charAt(0).toUpperCase() + id.slice(1) : id;
}

/** Whose, before a thing: "your" of who types in the terminal, "Petrov's" of anybody else. */
export function personsOwn(id: string, names: Readonly<Record<string, string>>): string {
  const name = personName(id, names);
  return name === "You" ? "your" : `${name}'s`;
}

/** "Bram's lock"; where no more than a tag was told, "Bram's tag, no lock told". */
export function ownLock(
  lock: Machine["locks"][number],
  names: Readonly<Record<string, string>>,
): string {
  const own = personsOwn(lock.who, names);
  return lock.tag === true ? `${own} tag, no lock told` : `${own} lock`;
}

const spelled = "zero one two three four five six seven eight nine ten eleven twelve".split(" ");

function plainTag(tag: string): string {
  const words = tag.toLowerCase().split(/[^a-z0-9]+/);
  return words.map((word) => (spelled.includes(word) ? spelled.indexOf(word) : word)).join("");
}

/** Whether two tags name one unit however they were typed or said: "rtu2", "RTU 2", "RTU-2", "rtu two". */
export function sameTag(one: string, other: string): boolean {
  return plainTag(one) === plainTag(other);
}

/** "RTU-1"; the site where no unit is known; else "job 4". */
export function unitName(job: Job): string {
  return job.equipment ?? job.site ?? `job ${job.job}`;
}

/** "job 4 RTU-1". */
export function jobName(job: Job): string {
  const unit = job.equipment ?? job.site;
  return unit === null ? `job ${job.job}` : `job ${job.job} ${unit}`;
}

/** "comp 1" for "compressor 1"; the rest as it is. */
export function componentName(subject: string): string {
  return subject.replace(/^compressor (?=\S)/, "comp ");
}

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items[items.length - 1]}`;
}

/** ".2" as "0.2": a point alone is overlooked and not read aloud. */
export function leadingZero(text: string): string {
  return text.replaceAll(/(?<![\d.])\.(?=\d)/g, "0.");
}

export function wordCount(text: string): number {
  return text.split(/\s+/).filter((w) => w !== "").length;
}

/** The first `most` words, with "..." where some were left out. */
export function clipped(text: string, most: number): string {
  const words = text.split(/\s+/).filter((w) => w !== "");
  return words.length <= most ? words.join(" ") : `${words.slice(0, most).join(" ")} ...`;
}

/** Ends a sentence with one full stop, unless it ends already. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return trimmed === "" || /[.?!]$/.test(trimmed) ? trimmed : `${trimmed}.`;
}

/** A fault in the words of the trade. */
export function faultWords(fault: FaultName): string {
  return faultPhrases[fault] ?? fault.replaceAll("_", " ");
}

const faultPhrases: Partial<Record<FaultName, string>> = {
  compressor_rotor_locked: "compressor locked",
  compressor_winding_grounded: "compressor grounded",
  compressor_winding_shorted: "compressor winding shorted",
  compressor_winding_open: "compressor winding open",
  compressor_insulation_degraded: "compressor insulation going down",
  compressor_valves_leaking: "compressor not pumping as it should",
  compressor_overload_open: "internal overload open",
  compressor_reversed: "compressor running backward",
  drive_output_failed: "drive output",
  drive_rectifier_failed: "drive rectifier",
  drive_control_failed: "drive control",
  supply_phase_lost: "supply leg missing",
  supply_voltage_unbalanced: "supply unbalanced",
  supply_voltage_low: "supply low",
  supply_voltage_high: "supply high",
  connection_loose: "loose connection",
  capacitor_failed: "capacitor",
  contactor_failed: "contactor",
  fan_motor_failed: "fan motor",
  sensor_failed: "sensor",
  communication_failed: "communication",
  control_board_failed: "control board",
  refrigerant_undercharge: "low charge",
  refrigerant_overcharge: "overcharge",
  noncondensables: "air in the circuit",
  liquid_line_restricted: "liquid line restricted",
  condenser_airflow_low: "low airflow outdoors",
  evaporator_airflow_low: "low airflow indoors",
  expansion_valve_underfeeding: "expansion valve feeding too little",
  expansion_valve_overfeeding: "expansion valve feeding too much",
  reversing_valve_leaking: "reversing valve leaking",
  branch_valve_stuck: "branch valve stuck",
  system_leaking: "a leak",
  system_wet: "moisture in the circuit",
  control_voltage_lost: "control voltage missing",
  defrost_failed: "defrost",
  refrigerant_wrong_or_mixed: "wrong or mixed refrigerant",
  other: "something not on the list",
  no_fault: "no fault found",
};

/** From here on one cause is called likely; common practice, no source. */
const likelyFrom = 0.6;
/** Below this a cause is called ruled out; common practice, no source. */
const ruledOutBelow = 0.02;

/** People are told "likely", "possible" or "ruled out", never a percentage. */
export function likelihood(suspect: Suspect): "likely" | "possible" | "ruled out" {
  if (suspect.probability >= likelyFrom) return "likely";
  return suspect.probability < ruledOutBelow ? "ruled out" : "possible";
}

/** "likely failed contactor"; once it was mended "failed contactor, put right", "possible" where it never was proven. */
export function causeWords(suspect: Suspect): string {
  const words = faultWords(suspect.fault);
  if (suspect.mended !== true) return `${likelihood(suspect)} ${words}`;
  return likelihood(suspect) === "likely" ? `${words}, put right` : `possible ${words}, put right`;
}

/** For a sheet's cell, "likely: failed contactor"; once it was mended "put right: failed contactor". */
export function causeCell(suspect: Suspect): string {
  const likely = likelihood(suspect);
  const mended = likely === "likely" ? "put right" : `${likely}, put right`;
  return `${suspect.mended === true ? mended : likely}: ${faultWords(suspect.fault)}`;
}

/** "Cause likely: failed contactor"; once it was mended "Cause, put right: failed contactor". */
export function causeSentence(suspect: Suspect): string {
  const likely = likelihood(suspect);
  if (suspect.mended !== true) return `Cause ${likely}: ${faultWords(suspect.fault)}`;
  const how = likely === "likely" ? ", put right" : " possible, put right";
  return `Cause${how}: ${faultWords(suspect.fault)}`;
}
