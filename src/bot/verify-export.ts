import { z } from "zod";
import { faultsAgainstDigest, hashWords, type Spoken } from "../record/chain.ts";
import type { Entry } from "../record/entry.ts";
import { factsSchema } from "../record/entry-schema.ts";
import { foldJob } from "../record/job.ts";
import { faultsInSelection, sealHolds, sealOf } from "../record/sealed.ts";
import type { Verdict } from "../record/verify.ts";
import { unpackWords } from "../record/words.ts";
import { exportShape } from "./export-shape.ts";
import { shownFacts } from "./show-job.ts";

type Exported = z.infer<typeof exportShape>;

/** Whether a text is an exported file, whole or altered: it says so at its beginning and at its end. */
export function looksExported(text: string): boolean {
  return /"format": ?"readback export"/.test(text) || /"seal": ?"[0-9a-f]{16}/.test(text);
}

/** What was kept outside of a file when it was made. */
export interface Kept {
  /** of the store: proves the entries */
  readonly digest?: string | undefined;
  /** of the file: proves all of it, verdicts and the files that it lists too */
  readonly seal?: string | undefined;
}

/**
 * Checks an exported file by itself: its seal, every job's chain, the store's digest, the words, and
 * that its readings are those which its entries tell. Verdicts are no entries: who alters them can
 * seal the file again, and only a seal that was kept elsewhere shows it.
 */
export function verifyExport(text: string, { digest, seal: keptSeal }: Kept = {}): Verdict {
  const found = parse(text);
  if (typeof found === "string") return altered([found]);
  const { parsed, jobs } = found;
  const { entries = [], other_heads = [] } = parsed;
  const chain =
    parsed.entries === undefined ? [] : faultsInSelection(entries, other_heads, parsed.digest);
  const faults = [
    ...chain,
    ...wordFaults(parsed),
    ...jobFaults(parsed, jobs),
    ...digestFaults(parsed, digest),
  ];
  const seal = sealHolds(text)
    ? []
    : ["the file was altered after it was written: its seal does not fit what stands in it"];
  return {
    entries: entries.length,
    jobs: parsed.jobs.length,
    digest: parsed.digest,
    faults: [...faults, ...seal, ...otherSeal(text, keptSeal)],
    ...(keptSeal === undefined ? { open: openOf(parsed) } : {}),
  };
}

/** What a file cannot prove by itself. */
const openOf = ({ entries }: Exported): string =>
  entries === undefined
    ? "It holds no entries, and its seal can be made anew by whoever alters it: give the seal that was told when it was made (--seal)."
    : "Verdicts and the list of files are no entries: their seal can be made anew by whoever alters them. Give the seal that was told when the export was made (--seal) to prove them too.";

function otherSeal(text: string, kept: string | undefined): readonly string[] {
  return kept === undefined || kept.trim().toLowerCase() === sealOf(text)
    ? []
    : [
        "the seal that was kept is not this file's: it was altered and sealed again, or is another export",
      ];
}

const altered = (faults: readonly string[]): Verdict => ({
  entries: 0,
  jobs: 0,
  digest: "",
  faults,
});

interface Parsed {
  readonly parsed: Exported;
  /** the jobs as they stand in the text, with every field */
  readonly jobs: readonly z.infer<typeof anyJob>[];
}

const anyJob = z.record(z.string(), z.unknown());
const anyJobs = z.object({ jobs: z.array(anyJob) });

function parse(text: string): Parsed | string {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return "the file is no whole JSON any more";
  }
  const { success, data, error } = exportShape.safeParse(json);
  if (success) return { parsed: data, jobs: anyJobs.parse(json).jobs };
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

/** What the file says of its jobs must be what their entries fold into. */
function jobFaults(exported: Exported, jobs: Parsed["jobs"]): readonly string[] {
  const { entries } = exported;
  if (entries === undefined) return [];
  const spoken = spokenOf(exported);
  return exported.jobs.flatMap((job, index) => {
    const own = entries.filter((link) => link.job === job.job);
    const essence = essenceWith(own.every((link) => spoken.has(keyOf(link))) ? [] : erasable);
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
    const facts = folded === undefined ? {} : shownFacts(folded);
    const stands = jobs[index] ?? {};
    const other = Object.keys(facts)
      .filter((name) => !apart.includes(name) && essence(facts[name]) !== essence(stands[name]))
      .map((name) => `job ${job.job}, ${name.replaceAll("_", " ")}: is not what its entries tell`);
    return [...missing, ...wrong, ...other];
  });
}

/** Readings are named one by one; what a file lacks and which clock has rung is not in entries alone. */
const apart: readonly string[] = ["readings", "file", "clocks"];

/** Words that may have been erased since, and who said them. */
const erasable: readonly string[] = ["said", "who", "says", "text"];

/** What a fact says, whatever the order of its fields; some fields are left out. */
const essenceWith =
  (without: readonly string[]) =>
  (fact: unknown): string =>
    JSON.stringify(fact, (name, value: unknown) => {
      if (without.includes(name)) return undefined;
      if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
      return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
    });

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
