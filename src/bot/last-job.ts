import type { Message, Understood } from "../model.ts";
import { type Grip, holdsForMs } from "../record/hand.ts";
import type { Route } from "../record/route.ts";
import { gripsIn, type Memory } from "./memory.ts";

/**
 * "Summary", "what was the superheat?", asked by who has just left: of the job that he had last,
 * since asking files nothing and the answer names the job.
 */
export function lastJobOf(memory: Memory, message: Message, said: Understood): Route | undefined {
  const asks = said.statements.some(({ kind }) => kind === "question");
  if (!asks || said.readings.length > 0 || message.role !== "tech") return undefined;
  if (!said.statements.every(({ kind }) => kind === "question" || kind === "note"))
    return undefined;
  const now = Date.parse(message.at);
  const recent = gripsIn(memory, message.channel, message.person).filter(
    ({ instant }) => instant <= now && now - instant <= holdsForMs,
  );
  const last = recent.reduce<Grip | undefined>(
    (newest, grip) => (newest === undefined || grip.instant >= newest.instant ? grip : newest),
    undefined,
  );
  return last === undefined ? undefined : { kind: "job", job: last.job, by: "hand" };
}
