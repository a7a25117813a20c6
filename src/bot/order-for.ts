import type { Message, Understood } from "../model.ts";
import { isDirect } from "../record/direct.ts";
import { isSamePart, waitedFor } from "../record/parts.ts";
import type { Route } from "../record/route.ts";
import { allJobs, type Memory } from "./memory.ts";
import { isBare } from "./named-order.ts";

/**
 * The office orders what a job needs without naming the job: the one in that channel that needs
 * that part, or any where none is named, or a question where several do.
 */
export function orderFor(memory: Memory, message: Message, said: Understood): Route | undefined {
  if (message.role === "tech") return undefined;
  const ordered = said.statements.filter((one) => one.kind === "part" && one.state === "ordered");
  const bare = ordered.some(isBare);
  if (ordered.length === 0) return undefined;
  const jobs = allJobs(memory).filter(
    ({ status, channel, parts }) =>
      status !== "done" &&
      (channel === message.channel || isDirect(message.channel)) &&
      waitedFor(parts).some(
        (part) =>
          part.state === "needed" &&
          (bare || ordered.some((one) => one.kind === "part" && isSamePart(part, one))),
      ),
  );
  const [only, ...others] = jobs;
  if (only === undefined) return undefined;
  if (others.length === 0) return { kind: "job", job: only.job, by: "hand" };
  return { kind: "ask", candidates: jobs.map(({ job }) => job) };
}
