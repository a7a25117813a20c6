import { createHash } from "node:crypto";
import { digestOf, faultsInChain, type Link } from "./chain.ts";
import type { Mark } from "./entries-table.ts";
import { fingerprint } from "./fingerprint.ts";

/**
 * An exported file ends in a line that holds the fingerprint of all that stands before it: a byte
 * altered anywhere shows. The chain and the digest show what somebody altered and sealed again.
 */
const sealLine = /,\n"seal": "([0-9a-f]{64})"\n\}\n$/;

/** The text of an object, made so far without its last brace, in pieces, with its seal as the last. */
export function* sealed(pieces: Iterable<string>): Generator<string> {
  const seal = createHash("sha256");
  for (const piece of pieces) {
    seal.update(piece);
    yield piece;
  }
  yield `,\n"seal": "${seal.digest("hex")}"\n}\n`;
}

/** The seal that a text ends in; undefined where it ends in none. */
export function sealOf(text: string): string | undefined {
  return sealLine.exec(text)?.[1];
}

/** The same of a file's bytes, of which only the end is looked at. */
export function sealOfBytes(bytes: Uint8Array): string | undefined {
  return sealOf(new TextDecoder().decode(bytes.subarray(-128)));
}

/** Whether a text ends in its own seal. */
export function sealHolds(text: string): boolean {
  const found = sealLine.exec(text);
  return found !== null && fingerprint(text.slice(0, found.index)) === found[1];
}

/** Of a job that is not in the file: its number, its last entry and that entry's hash. */
export type Head = readonly [job: number, place: number, hash: string];

/** Last entries of the jobs outside a selection, so that the store's digest can be made from the file alone. */
export function headsOutside(links: readonly Mark[], jobs: ReadonlySet<number>): readonly Head[] {
  const heads = new Map<number, Mark>();
  for (const link of links) {
    const head = heads.get(link.job);
    if (!jobs.has(link.job) && link.place > (head?.place ?? 0)) heads.set(link.job, link);
  }
  return [...heads.values()]
    .sort((a, b) => a.job - b.job)
    .map(({ job, place, hash }): Head => [job, place, hash]);
}

/** What is wrong with the chains of an exported file and with its digest. */
export function faultsInSelection(
  links: readonly Link[],
  heads: readonly Head[],
  stated: string,
): readonly string[] {
  const jobs = new Map<number, Link[]>();
  for (const link of links) {
    const known = jobs.get(link.job);
    if (known === undefined) jobs.set(link.job, [link]);
    else known.push(link);
  }
  const chains = [...jobs.values()].flatMap((chain) => faultsInChain(chain));
  return digestOf(links, heads) === stated
    ? chains
    : [...chains, "the digest in the file does not match its entries"];
}
