import { createHash } from "node:crypto";

/** An entry as it is kept: facts without words, and the hashes that tie it to its neighbours. */
export interface Link {
  readonly job: number;
  readonly place: number;
  readonly version: number;
  readonly at: string;
  readonly person: number;
  readonly platform: string;
  readonly message: string;
  readonly facts: string;
  /** salted hash of the words */
  readonly words: string;
  readonly hash: string;
}

/** What `words` was made from; absent where it was erased. */
export interface Spoken {
  readonly salt: string;
  readonly text: string;
  readonly strings: string;
}

function sha256(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex");
}

export function hashWords(spoken: Spoken): string {
  return sha256(JSON.stringify([spoken.salt, spoken.text, spoken.strings]));
}

/** The hash of an entry, given the hash before it in its job ("" for the first). */
export function hashLink(link: Omit<Link, "hash">, before: string): string {
  return sha256(
    JSON.stringify([
      link.version,
      link.job,
      link.place,
      link.at,
      link.person,
      link.platform,
      link.message,
      link.facts,
      link.words,
      before,
    ]),
  );
}

/** What is wrong with one job's record, oldest first; empty where it is intact. */
export function faultsInChain(links: readonly Link[]): readonly string[] {
  const faults: string[] = [];
  let before = "";
  let place = 1;
  for (const link of links) {
    const name = `job ${link.job}, entry ${link.place}`;
    if (link.place !== place) {
      faults.push(`${name}: entry ${place} is missing before it`);
    } else if (hashLink(link, before) !== link.hash) {
      faults.push(`${name} (${link.at}): was altered after it was written`);
    }
    before = link.hash;
    place = link.place + 1;
  }
  return faults;
}

/**
 * A fingerprint of everything written so far: "<entries>-<sha256>". Kept outside the store, it
 * shows a missing last entry, a missing job or a chain that was rewritten as a whole.
 */
export function digestOf(
  links: readonly Pick<Link, "job" | "place" | "hash">[],
  /** last entries of jobs whose links are not at hand: job, place, hash */
  others: readonly (readonly [job: number, place: number, hash: string])[] = [],
): string {
  const heads = new Map<number, readonly [job: number, place: number, hash: string]>();
  for (const head of others) heads.set(head[0], head);
  for (const { job, place, hash } of links) {
    const head = heads.get(job);
    if (head === undefined || place > head[1]) heads.set(job, [job, place, hash]);
  }
  const lines = [...heads.values()].sort((a, b) => a[0] - b[0]).map((head) => head.join(" "));
  const count = others.reduce((sum, [, place]) => sum + place, links.length);
  return `${count}-${sha256(lines.join("\n"))}`;
}

/** Whether the store's first entries still give a digest that was kept elsewhere. */
export function faultsAgainstDigest(links: readonly Link[], digest: string): readonly string[] {
  const parts = /^(\d+)-([0-9a-f]{64})$/.exec(digest.trim());
  if (parts === null) return [`"${digest}" is not a digest of this program`];
  const count = Number(parts[1]);
  if (links.length < count) {
    return [`the digest was made over ${count} entries, only ${links.length} are left`];
  }
  return digestOf(links.slice(0, count)) === digest.trim()
    ? []
    : ["the digest does not match: an entry or a job was changed, removed or replaced"];
}
