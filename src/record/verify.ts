import { digestOf, faultsAgainstDigest, faultsInChain, hashWords, type Link } from "./chain.ts";
import { readLinks, spokenFor } from "./entries-table.ts";
import type { Store } from "./store.ts";

export interface Verdict {
  readonly entries: number;
  readonly jobs: number;
  readonly digest: string;
  /** in plain sentences; empty where the record is as it was written */
  readonly faults: readonly string[];
  /** what was not proven, and what would prove it */
  readonly open?: string;
}

/** Checks every chain, and against a digest kept elsewhere where one is given. */
export function verifyLinks(links: readonly Link[], digest?: string): Verdict {
  const jobs = new Map<number, Link[]>();
  for (const link of links) {
    const known = jobs.get(link.job);
    if (known === undefined) jobs.set(link.job, [link]);
    else known.push(link);
  }
  const chains = [...jobs.values()].flatMap((chain) => faultsInChain(chain));
  const kept = digest === undefined ? [] : faultsAgainstDigest(links, digest);
  return {
    entries: links.length,
    jobs: jobs.size,
    digest: digestOf(links),
    faults: [...chains, ...kept],
  };
}

/** Checks a store: the chains, and the words that still exist against their hashes. */
export function verifyStore(store: Store, digest?: string): Verdict {
  const links = readLinks(store);
  const verdict = verifyLinks(links, digest);
  const words: string[] = [];
  for (const link of links) {
    const spoken = spokenFor(store, link);
    if (spoken === "erased") continue;
    const name = `job ${link.job}, entry ${link.place} (${link.at})`;
    if (spoken === "missing") words.push(`${name}: its words are gone without a mark of erasure`);
    else if (hashWords(spoken) !== link.words) words.push(`${name}: its words were altered`);
  }
  return { ...verdict, faults: [...verdict.faults, ...words] };
}
