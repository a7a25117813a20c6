import type { Job, Message, Span, Statement, Understood } from "../model.ts";
import type { Route } from "../record/route.ts";
import { lastStatus } from "./back-again.ts";
import { lastOf } from "./beside-colleague.ts";
import { gripsIn, type Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";

/** Hours told alone are of the job just left; later they may be the day's. Our choice, no source. */
const justLeftMs = 60 * 60_000;
const mostHours = 24;

const alone =
  /^\s*(?:(?:that(?:'s|s| was| is)|was|took|total|about|call it|put(?: me)? down(?: for)?|log|i was there)\s+)*(?:(\d{1,2})\s+)?(\d{1,2}(?:[.,]\d{1,2})?|\d\/\d)\s*(?:h|hr|hrs|hours?)(?:\s+(?:total|there|labor|on (?:it|that|that one)|on ?site))?\s*[.!]?\s*$/i;

/** How many hours a message tells and nothing else: "3.5 hrs", "1 1/2 h". */
function hoursIn(text: string): number | undefined {
  const match = alone.exec(text);
  if (match === null) return undefined;
  const [, whole, said = ""] = match;
  const [over, under] = said.split("/").map((part) => Number(part.replace(",", ".")));
  // "3 1/2" is whole and part, "3 2 hrs" nothing
  if (whole !== undefined && under === undefined) return undefined;
  const hours = Number(whole ?? 0) + (over ?? 0) / (under ?? 1);
  return hours > 0 && hours <= mostHours ? hours : undefined;
}

function hasLeft(job: Job, { person, at }: Pick<Message, "person" | "at">): boolean {
  const status = lastStatus(job, person)?.status;
  if (status === undefined || status === "on_site" || status === "on_the_way") return false;
  const since = Date.parse(at) - Date.parse(job.status_at);
  return since >= 0 && since <= justLeftMs;
}

/** "3.5 hrs" of who has just left: of the job that he left. */
export function hoursAt(memory: Memory, message: Message): Route | undefined {
  if (message.role !== "tech" || hoursIn(message.text) === undefined) return undefined;
  const job = lastOf(gripsIn(memory, message.channel, message.person), Date.parse(message.at));
  const known = job === undefined ? undefined : jobAt(memory, job);
  if (job === undefined || known === undefined || !hasLeft(known, message)) return undefined;
  return { kind: "job", job, by: "hand" };
}

/** Hours alone behind a farewell are how long he was there, no reading of the machine. */
export function withHoursLeft(
  understood: Understood,
  message: Pick<Message, "text" | "person" | "at" | "role">,
  job: Job,
): Understood {
  const hours = hoursIn(message.text);
  if (hours === undefined || message.role !== "tech" || !hasLeft(job, message)) return understood;
  if (understood.statements.some(({ kind }) => kind === "labor")) return understood;
  const from = message.text.search(/\S/);
  const said = message.text.trim();
  const span: Span = [from, from + said.length];
  const labor: Statement = { kind: "labor", hours, said, spans: [span], rule: "<hours> alone" };
  return {
    readings: [],
    statements: [labor],
    unread: [],
    unread_spans: [],
    ask: [],
    skipped: [],
  };
}
