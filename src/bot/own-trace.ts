import type { Message, Understood } from "../model.ts";
import { isDirect } from "../record/direct.ts";
import type { Route } from "../record/route.ts";
import { mayComeOff } from "../vocabulary.ts";
import { allJobs, type Memory } from "./memory.ts";

/**
 * "Jumper off", "my lock is off", said by who has no job in hand any more: the one job where his
 * jumper or his lock still is, or a question where it is several.
 */
export function ownTrace(memory: Memory, message: Message, said: Understood): Route | undefined {
  const done = said.statements.flatMap((one) =>
    one.kind === "action" && one.planned !== true ? [one] : [],
  );
  const jumper = done.some(({ bypass }) => bypass === "off");
  const lock = done.some((one) => one.lock === "off" || one.what === mayComeOff);
  if ((!jumper && !lock) || message.role !== "tech") return undefined;
  const jobs = allJobs(memory).filter(
    ({ channel, machine }) =>
      (channel === message.channel || isDirect(message.channel)) &&
      [...(jumper ? machine.bypasses : []), ...(lock ? machine.locks : [])].some(
        ({ who }) => who === message.person,
      ),
  );
  const [only, ...others] = jobs;
  if (only === undefined) return undefined;
  if (others.length === 0) return { kind: "job", job: only.job, by: "hand" };
  return { kind: "ask", candidates: jobs.map(({ job }) => job) };
}
