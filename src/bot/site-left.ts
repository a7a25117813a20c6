import type { Message, Span, Statement, Understood } from "../model.ts";
import { lastStatus } from "./back-again.ts";
import { nothingRead } from "./filing.ts";
import { locateWords } from "./locate.ts";
import { allJobs, type Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";

const goes = /\b(?:leaving|left|out|off site|offsite|gone|outta here|heading|headed|rolling)\b/i;

/**
 * "Both running, leaving": who leaves a site leaves every unit of it that he had in hand there, so no visit
 * stays open; "the clinic is done, out" closes what he worked on there.
 */
export function siteLeft(
  memory: Memory,
  message: Message,
  told: { readonly understood: Understood; readonly job: number },
): readonly { readonly job: number; readonly understood: Understood }[] {
  const { understood, job } = told;
  const ends = understood.statements.find(
    (one) => one.kind === "status" && (one.status === "left_site" || one.status === "done"),
  );
  if (ends?.kind !== "status" || message.role !== "tech") return [];
  const leaves = ends.status === "left_site" || goes.test(message.text);
  const here = jobAt(memory, job);
  if (!leaves || here === undefined || here.site === null) return [];
  const whole = ends.status === "done" && namesSiteAlone(memory, message, job);
  return allJobs(memory).flatMap((other) => {
    if (other.job === job || other.site !== here.site || other.status === "done") return [];
    const last = lastStatus(other, message.person)?.status;
    const worked = other.people.includes(message.person);
    const closes = whole && worked && (last === undefined || last === "on_site");
    const untold = worked && last === undefined && other.status === "open";
    if (!closes && !untold && last !== "on_site") return [];
    const span: Span = ends.spans[0] ?? [0, message.text.length];
    const statement: Statement = {
      kind: "status",
      status: closes ? "done" : "left_site",
      ...(ends.time === undefined ? {} : { time: ends.time }),
      said: ends.said,
      spans: [span],
      rule: "leaves the site",
    };
    return [{ job: other.job, understood: { ...nothingRead, statements: [statement] } }];
  });
}

/** "Clinic is done": the site by its name, or all of it, and no unit of it. */
function namesSiteAlone(memory: Memory, message: Message, job: number): boolean {
  if (/^\s*(?:both|all|everything)\b/i.test(message.text)) return true;
  const site = jobAt(memory, job)?.site ?? "";
  const tag = jobAt(memory, job)?.equipment ?? "";
  const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");
  if (tag !== "" && plain(message.text).includes(plain(tag))) return false;
  const named = locateWords(memory, message, { words: message.text, job });
  const words = site.toLowerCase().split(/[^\p{L}\p{N}]+/u);
  return (
    named !== undefined &&
    words.some((word) => word.length > 3 && message.text.toLowerCase().includes(word))
  );
}
