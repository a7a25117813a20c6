import type { JobReading, Message } from "../../model.ts";
import { stoodText } from "../../show/which-stands.ts";
import { conflictsOf } from "../conflict.ts";
import { draftFor, nothingRead } from "../filing.ts";
import { locate } from "../locate.ts";
import type { Memory } from "../memory.ts";
import { personSaid } from "../people.ts";
import { jobAt } from "../rest.ts";
import type { Aside } from "./aside.ts";

/** Answered soon or at the closing check; our choice, no source. */
const bindsForMs = 60 * 60_000;

/** "Mine", "his", "Bram's", "the 84": which of two people's values on one point stands. */
export const whichStands: Aside = ({ memory }, message) => {
  const words = message.text.trim().split(/\s+/);
  if (words.length > 4) return undefined;
  const found = locate(memory, message);
  const job = found.kind === "job" ? jobAt(memory, found.job) : undefined;
  if (job === undefined) return undefined;
  const instant = Date.parse(message.at);
  const pair = conflictsOf(job).findLast(
    ({ later }) =>
      instant - Date.parse(later.received) <= bindsForMs && instant >= Date.parse(later.received),
  );
  if (pair === undefined) return undefined;
  const both: readonly JobReading[] = [pair.earlier, pair.later];
  const kept = keptOf(memory, message, both);
  const gone = both.find((one) => one !== kept);
  if (kept === undefined || gone === undefined) return undefined;
  const draft = draftFor(message, job.job, {
    kind: "note",
    role: message.role,
    readings: [],
    statements: [],
    unread: [],
    files: [],
    replaces: [{ was: gone.id, by: kept.id }],
  });
  return {
    understood: nothingRead,
    job: job.job,
    opened: false,
    drafts: [draft],
    says: stoodText(job, kept, gone),
  };
};

function keptOf(
  memory: Memory,
  message: Message,
  both: readonly JobReading[],
): JobReading | undefined {
  const text = message.text.toLowerCase();
  const own = both.find(({ who }) => who === message.person);
  const other = both.find(({ who }) => who !== message.person);
  if (/\bmine\b|\bmy (?:one|value|number|reading)\b/.test(text)) return own;
  if (/\b(?:his|hers|theirs|the other)\b/.test(text)) return own === undefined ? undefined : other;
  const name = /([\p{L}-]+)(?:['’]s)\b/u.exec(text)?.[1];
  const person = name === undefined ? undefined : personSaid(memory, name);
  if (person !== undefined) return both.find(({ who }) => who === person);
  const numbers: readonly string[] = text.match(/\d+(?:\.\d+)?/g) ?? [];
  const named = both.filter(({ figure }) => numbers.includes(figure.number));
  return named.length === 1 && /^(?:the\s+)?\d/.test(text) ? named[0] : undefined;
}
