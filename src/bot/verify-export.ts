import type { z } from "zod";
import { faultsAgainstDigest, hashWords, type Spoken } from "../record/chain.ts";
import type { Entry } from "../record/entry.ts";
import { factsSchema } from "../record/entry-schema.ts";
import { foldJob } from "../record/job.ts";
import { faultsInSelection, sealHolds } from "../record/sealed.ts";
import type { Verdict } from "../record/verify.ts";
import { unpackWords } from "../record/words.ts";
import { exportShape } from "./export-shape.ts";

type Exported = z.infer<typeof exportShape>;

/** Whether a text is an exported file, whole or altered: it says so at its beginning and at its end. */
export function looksExported(text: string): boolean {
  return /"format": ?"readback export"/.test(text) || /"seal": ?"[0-9a-f]{16}/.test(text);
}

/**
 * Checks an exported file by itself: its seal, every job's chain, the store's digest, the words, and
 * that its readings are those which its entries tell. With a digest kept elsewhere also against that.
 */
export function verifyExport(text: string, digest?: string): Verdict {
  const parsed = parse(text);
  if (typeof parsed === "string") return altered([parsed]);
  const { entries = [], other_heads = [] } = parsed;
  const chain =
    parsed.entries === undefined ? [] : faultsInSelection(entries, other_heads, parsed.digest);
  const faults = [
    ...chain,
    ...wordFaults(parsed),
    ...readingFaults(parsed),
    ...digestFaults(parsed, digest),
  ];
  const seal = sealHolds(text)
    ? []
    : ["the file was altered after it was written: its seal does not fit what stands in it"];
  return {
    entries: entries.length,
    jobs: parsed.jobs.length,
    digest: parsed.digest,
    faults: [...faults, ...seal],
  };
}

const altered = (faults: readonly string[]): Verdict => ({
  entries: 0,
  jobs: 0,
  digest: "",
  faults,
});

function parse(text: string): Exported | string {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return "the file is no whole JSON any more";
  }
  const { success, data, error } = exportShape.safeParse(json);
  if (success) return data;
  const [issue] = error.issues;
  return `the file has not the shape of an export: ${issue?.path.join(".")} ${issue?.message}`;
}

type Link = NonNullable<Exported["entries"]>[number];

const keyOf = ({ job, place }: Pick<Link, "job" | "place">): string => `${job}.${place}`;
const nameOf = ({ job, place, at }: Link): string => `job ${job}, entry ${place} (${at})`;

function spokenOf({ words = [] }: Exported): ReadonlyMap<string, Spoken> {
  return new Map(words.map((one) => [keyOf(one), one]));
}

function wordFaults(exported: Exported): readonly string[] {
  const spoken = spokenOf(exported);
  const known = new Set((exported.entries ?? []).map(keyOf));
  const stray = [...spoken.keys()].filter((key) => !known.has(key));
  const twice =
    spoken.size === (exported.words ?? []).length ? [] : ["an entry has its words twice"];
  const changed = (exported.entries ?? []).flatMap((link) => {
    const words = spoken.get(keyOf(link));
    return words === undefined || hashWords(words) === link.words
      ? []
      : [`${nameOf(link)}: its words were altered`];
  });
  return [
    ...changed,
    ...twice,
    ...stray.map((key) => `words stand for entry ${key}, which is not here`),
  ];
}

/** The jobs' readings must be what the entries fold into. */
function readingFaults(exported: Exported): readonly string[] {
  const { entries } = exported;
  if (entries === undefined) return [];
  const spoken = spokenOf(exported);
  return exported.jobs.flatMap((job) => {
    const own = entries.filter((link) => link.job === job.job);
    let folded: ReturnType<typeof foldJob>;
    try {
      folded = foldJob(own.map((link) => toEntry(link, spoken.get(keyOf(link)), exported)));
    } catch {
      return [`job ${job.job}: its entries cannot be read`];
    }
    const told = new Map(folded?.readings.map((reading) => [reading.id, essence(reading)]));
    const missing =
      told.size === job.readings.length
        ? []
        : [`job ${job.job}: its readings are not as many as its entries tell`];
    const wrong = job.readings
      .filter((reading) => told.get(reading.id) !== essence(reading))
      .map(({ id }) => `job ${job.job}, reading ${id}: is not what its entry tells`);
    return [...missing, ...wrong];
  });
}

/** What a reading says, without the words that may have been erased. */
function essence(reading: object): string {
  const { said: _said, who: _who, ...rest }: Readonly<Record<string, unknown>> = { ...reading };
  return JSON.stringify(Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function toEntry(link: Link, spoken: Spoken | undefined, { people = {} }: Exported): Entry {
  const facts = factsSchema.parse(unpackWords(link.facts, spoken));
  return {
    job: link.job,
    place: link.place,
    at: link.at,
    who: people[link.person] ?? `person ${link.person}`,
    platform: link.platform,
    message: link.message,
    ...(spoken === undefined ? {} : { text: spoken.text }),
    facts,
  };
}

function digestFaults(exported: Exported, digest: string | undefined): readonly string[] {
  if (digest === undefined || digest.trim() === exported.digest) return [];
  const whole = (exported.other_heads ?? []).length === 0;
  if (whole && exported.entries !== undefined) return faultsAgainstDigest(exported.entries, digest);
  const [asked = 0, stands = 0] = [digest, exported.digest].map((one) => Number(one.split("-")[0]));
  return asked < stands
    ? ["the digest is of an earlier moment than this file; hold it against the store"]
    : ["the digest does not match: an entry or a job was changed, removed or replaced"];
}
