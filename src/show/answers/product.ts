import type { Job, ReplyInput } from "../../model.ts";
import { hoursAndMinutes } from "../days.ts";
import { figures } from "../figures.ts";
import { type WarmStretch, warmStretches } from "../product.ts";
import { stands } from "../standing-reading.ts";
import { toldWhen } from "../told-when.ts";
import { sentence, unitName } from "../wording.ts";
import type { Answer } from "./answer.ts";

const mostLines = 12;

/** How long a box or its product was outside its limit: between readings, nobody knows it closer. */
export const product: Answer = (input) => {
  const { job } = input;
  const jobs = job === undefined ? input.jobs : [job];
  const lines = jobs.flatMap((one) => linesOf(input, one));
  if (lines.length > 0) return lines.slice(0, mostLines).join("\n");
  return job === undefined
    ? "No box or product temperature was read."
    : sentence(`${unitName(job)}: no box or product temperature was read`);
};

function linesOf(input: ReplyInput, job: Job): readonly string[] {
  const warm = warmStretches(job, input.box_limits[job.job]);
  const now =
    warm.length > 0 && warm.every(({ back }) => back !== undefined) ? lastIn(input, job) : "";
  if (warm.length > 0)
    return [
      ...(now === "" ? [] : [sentence(`${unitName(job)}: within the limit now, ${now}`)]),
      ...warm.map((one) => sentence(`${unitName(job)}: ${spell(input, one)}`)),
    ];
  const read = lastIn(input, job);
  if (read === "") return [];
  return [sentence(`${unitName(job)}: no reading outside the limit, last ${read}`)];
}

function lastIn(input: ReplyInput, job: Job): string {
  const last = job.readings.findLast(
    (one) =>
      stands(one) && one.quantity === "temperature" && /^(?:box|product)$/.test(one.at ?? ""),
  );
  return last === undefined ? "" : `${figures([last])} at ${toldWhen(input, last.taken)}`;
}

function spell(input: ReplyInput, { figure, limit, since, back }: WarmStretch): string {
  const until = Date.parse(back?.at ?? input.message.at) - Date.parse(since);
  const long = hoursAndMinutes(until);
  return back === undefined
    ? `${figure}, ${limit} since ${toldWhen(input, since)}, ${long} so far`
    : `${figure}, ${limit} from ${toldWhen(input, since)} until ${back.figure} at ${toldWhen(input, back.at)}, ${long} by the readings`;
}
