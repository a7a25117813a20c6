import type { Message, Statement } from "../model.ts";
import { SENT } from "../vocabulary.ts";
import type { Plan } from "./file-note.ts";
import { draftFor, noteFacts, nothingRead } from "./filing.ts";
import { locate, locateWords } from "./locate.ts";
import type { Memory } from "./memory.ts";
import { namesSite } from "./names-site.ts";
import { namesOf, personSaid } from "./people.ts";
import { jobAt } from "./rest.ts";

/** Letters of such an order at most. Our choice, no source. */
const longest = 160;

const takes =
  /^\s*(?:(?:ok|okay|hey|so|change of plan)[\s,.:-]+)*(?:[^,;.]{3,40}[,;.] )?@?(\p{L}[\p{L}'-]+)[\s,:-]+(?:(?:you|please|pls|can you|could you|go|will you)\s+)*(?:take over|takes over|take|takes|has|have|cover|covers|handle|pick up)\s+(.{2,40}?)\s*(?:now|from here|please|pls)?[.!?]*\s*$/iu;
const gives =
  /^\s*(?:give|hand|send|move)\s+(.{2,30}?)\s+(?:over )?to\s+@?(\p{L}[\p{L}'-]+)[.!]*\s*$/iu;
const thisOne =
  /^(?:over )?(?:it|this|that|here|over|this one|that one|this job|the job|it over)$/i;

/**
 * "Hedda take over goslin", "give this to pia" from who sits at a desk: the job is hers from here on. What she is
 * told to do there is talk.
 */
export function planSending(memory: Memory, message: Message): Plan | undefined {
  if (message.role === "tech" || message.text.length > longest) return undefined;
  const taken = takes.exec(message.text);
  const given = gives.exec(message.text);
  const name = taken?.[1] ?? given?.[2];
  const what = (taken?.[2] ?? given?.[1] ?? "").trim();
  const who = name === undefined ? undefined : (personSaid(memory, name) ?? newcomer(name));
  if (who === undefined || memory.roles.get(who) === "dispatcher") return undefined;
  const job = jobMeant(memory, message, what);
  const known = job === undefined ? undefined : jobAt(memory, job);
  if (job === undefined || known === undefined) return undefined;
  const statement: Statement = {
    kind: "note",
    about: `${SENT}${who}`,
    said: message.text,
    spans: [[0, message.text.length]],
    rule: "<who> takes over",
  };
  const understood = { ...nothingRead, statements: [statement] };
  const named = namesOf(memory)[who] ?? name ?? who;
  return {
    understood,
    job,
    opened: false,
    drafts: [draftFor(message, job, noteFacts(memory, message, { understood, job }))],
    says: `Job ${job} ${known.equipment ?? known.site ?? ""}: ${named} from here on.`,
  };
}

const noName =
  /^(?:please|somebody|someone|anyone|anybody|everyone|who|can|could|will|would|we|you|they|he|she|it|let|then|dont|do|must|should|to|and|or)$/i;

/** Who has not written yet, under the name that the desk calls him by. */
function newcomer(name: string): string | undefined {
  return /^\p{Lu}\p{Ll}+$/u.test(name) && !noName.test(name) ? name.toLowerCase() : undefined;
}

/** The job that is given: that of the thread, or the one that the words name and nothing else. */
function jobMeant(memory: Memory, message: Message, what: string): number | undefined {
  if (thisOne.test(what)) {
    const place = locate(memory, message);
    return place.kind === "job" ? place.job : undefined;
  }
  const named = locateWords(memory, message, { words: what, job: -1 });
  if (named?.kind !== "job") return undefined;
  const job = jobAt(memory, named.job);
  const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");
  const tag = plain(job?.equipment ?? "-");
  const rest = what.replace(/^over /i, "").replace(/^(?:job|the)\s+/i, "");
  const whole = rest.split(/\s+/).length <= 2 && plain(rest) === tag;
  const number = new RegExp(`^(?:job|#)?\\s*${named.job}$`, "i").test(rest);
  return job !== undefined && (namesSite(rest, job) || whole || number) ? named.job : undefined;
}
