import { type PlotName, plotAnswer, plotOfWhat } from "../../show/plot-answer.ts";
import { pictureOf } from "../../show/plots/picture.ts";
import { nothingRead } from "../filing.ts";
import { locate } from "../locate.ts";
import { jobPlots } from "../reports-of.ts";
import { jobAt } from "../rest.ts";
import type { Aside } from "./aside.ts";

const names: readonly (readonly [PlotName | "all", string])[] = [
  ["vacuum", "vacuum|vac|microns?|evacuation|decay|vacuum decay|vacuum hold"],
  ["insulation", "insulation|megs?|megohms?|meg ?ohm test|insulation test|leads"],
  ["start", "start|start(?:ing)? (?:current|amps)|inrush|amps at start"],
  ["nitrogen", "nitrogen|nitro|nitrogen (?:hold|test)|pressure test"],
  ["all", "job|readings|everything|all|it|that|them"],
];

const asked =
  /^\s*(?:@?readback[\s,:]+)?(?:please\s+|(?:can|could) you\s+)?(?:plot|graph|chart)\s*(?:me\s+)?(?:(?:the|this|a|my|our)\s+)?(.*?)(?:\s+(?:of|for|on|at|from)\s+\D.{0,80}?)?(?:,?\s+please)?[\s.!?]*$/i;

function plotNamed(text: string): PlotName | "all" | undefined {
  const words = asked.exec(text)?.[1]?.trim().toLowerCase();
  if (words === undefined) return undefined;
  if (words === "") return "all";
  return names.find(([, said]) => new RegExp(`^(?:${said})$`).test(words))?.[0];
}

/** "Plot the vacuum": the picture as the report has it, in the chat. */
export const plot: Aside = ({ memory }, message) => {
  const name = plotNamed(message.text);
  if (name === undefined) return undefined;
  const base = { understood: nothingRead, opened: false, drafts: [] };
  const found = locate(memory, message);
  const job = found.kind === "job" ? jobAt(memory, found.job) : undefined;
  if (job === undefined) return { ...base, says: plotOfWhat };
  const plots = jobPlots(memory, job).filter(
    (one) => name === "all" || one.name === name || one.name.startsWith(`${name}-`),
  );
  return {
    ...base,
    job: job.job,
    says: plotAnswer(job.equipment ?? job.site ?? `Job ${job.job}`, plots, name),
    pictures: plots.map((one) => pictureOf(one, `job-${job.job}`)),
  };
};
