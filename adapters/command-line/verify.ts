import { readFileSync } from "node:fs";
import { z } from "zod";
import type { Link } from "../../src/record/chain.ts";
import { closeStore, openStore } from "../../src/record/store.ts";
import { type Verdict, verifyLinks, verifyStore } from "../../src/record/verify.ts";
import { type Command, type Exit, type Io, textOption } from "./command.ts";
import { parseLine } from "./lines.ts";

const linkShape = z.object({
  job: z.number(),
  place: z.number(),
  version: z.number(),
  at: z.string(),
  person: z.number(),
  platform: z.string(),
  message: z.string(),
  facts: z.string(),
  words: z.string(),
  hash: z.string(),
}) satisfies z.ZodType<Link>;

const sqliteMark = "SQLite format 3\0";

function verdictOf(path: string, digest: string | undefined): Verdict | string {
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch {
    return `${path} cannot be read.`;
  }
  if (bytes.subarray(0, 16).toString("latin1") === sqliteMark) {
    const opened = openStore(path, { readonly: true });
    if (!opened.ok) return opened.problem;
    try {
      return verifyStore(opened.store, digest);
    } catch (error) {
      // what no longer fits its shape was altered
      const says = error instanceof Error ? (error.message.split("\n")[0] ?? "") : String(error);
      return { entries: 0, jobs: 0, digest: "", faults: [`the store is damaged: ${says}`] };
    } finally {
      closeStore(opened.store);
    }
  }
  const links: Link[] = [];
  for (const [index, line] of bytes.toString("utf8").split("\n").entries()) {
    if (line.trim() === "") continue;
    const parsed = parseLine(line, linkShape);
    if (!parsed.ok)
      return `${path}, line ${index + 1}: ${parsed.error} A record file holds the lines of "show --all --record".`;
    links.push(parsed.value);
  }
  if (links.length === 0) return `${path} holds no record.`;
  return verifyLinks(links, digest);
}

function tell(verdict: Verdict, io: Io): Exit {
  if (verdict.faults.length === 0) {
    io.line(`Intact: ${verdict.entries} entries of ${verdict.jobs} jobs. Digest ${verdict.digest}`);
    return 0;
  }
  for (const fault of verdict.faults) io.line(`Altered: ${fault}`);
  return 1;
}

/** Whether a record was altered since it was written. */
export const verifyCommand: Command = {
  name: "verify",
  usage: "FILE-or-DB [--digest DIGEST]",
  about: "checks every job's chain; exit 0 intact, 1 altered",
  options: {
    digest: {
      type: "string",
      about: "a digest kept elsewhere: also finds what is missing at the end",
    },
  },
  words: [1, 1],
  run: async (given, io) => {
    const [path = ""] = given.words;
    const verdict = verdictOf(path, textOption(given, "digest"));
    if (typeof verdict !== "string") return tell(verdict, io);
    io.complain(verdict);
    return 2;
  },
};
