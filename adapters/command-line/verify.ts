import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { z } from "zod";
import { type Kept, looksExported, verifyExport } from "../../src/bot/verify-export.ts";
import type { Link } from "../../src/record/chain.ts";
import { fingerprint } from "../../src/record/fingerprint.ts";
import { closeStore, openStore } from "../../src/record/store.ts";
import { type Verdict, verifyLinks, verifyStore } from "../../src/record/verify.ts";
import { type Command, type Exit, type Given, type Io, textOption } from "./command.ts";
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

const sealShape = /^[0-9a-f]{64}$/i;

/** The options; a seal that is given as a digest is one all the same. */
function keptOf(given: Given): Kept {
  const [digest, seal] = [textOption(given, "digest")?.trim(), textOption(given, "seal")];
  return digest !== undefined && sealShape.test(digest) ? { seal: digest } : { digest, seal };
}

function verdictOf(path: string, kept: Kept): Verdict | string {
  const { digest } = kept;
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch {
    return `${path} cannot be read.`;
  }
  if (bytes.subarray(0, 16).toString("latin1") === sqliteMark) {
    if (kept.seal !== undefined)
      return "A seal is of an exported file; a store is held against a digest, such as 41-9f….";
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
  const text = bytes.toString("utf8");
  if (looksExported(text)) return withFilesBeside(path, text, verifyExport(text, kept));
  const sheet = listedBeside(path, bytes, kept);
  if (sheet !== undefined) return sheet;
  const links: Link[] = [];
  const unread: string[] = [];
  for (const [index, line] of text.split("\n").entries()) {
    if (line.trim() === "") continue;
    const parsed = parseLine(line, linkShape);
    if (parsed.ok) links.push(parsed.value);
    else unread.push(`line ${index + 1} cannot be read: ${parsed.error}`);
  }
  if (links.length === 0) return `${path} holds no record.`;
  const verdict = verifyLinks(links, digest);
  return { ...verdict, faults: [...unread, ...verdict.faults] };
}

const listing = z.looseObject({
  files: z.array(z.object({ name: z.string(), sha256: z.string() })),
});

/** A sheet or a report holds no chain; the JSON file of its export, beside it, knows its fingerprint. */
function listedBeside(path: string, bytes: Buffer, kept: Kept): Verdict | undefined {
  const folder = dirname(path);
  for (const name of readdirSync(folder).filter((one) => one.endsWith(".json"))) {
    const text = readFileSync(join(folder, name), "utf8");
    if (!looksExported(text)) continue;
    const parsed = parseLine(text, listing);
    const found = parsed.ok && parsed.value.files.find((file) => file.name === basename(path));
    if (!found) continue;
    const verdict = verifyExport(text, kept);
    const faults =
      fingerprint(bytes) === found.sha256
        ? []
        : [`${basename(path)} is not the file that ${name} lists`];
    return { ...verdict, faults: [...faults, ...verdict.faults] };
  }
  return undefined;
}

/** The sheets and reports that lie beside an export's JSON must be those that it lists; none need be there. */
function withFilesBeside(path: string, text: string, verdict: Verdict): Verdict {
  const parsed = parseLine(text, listing);
  const faults = (parsed.ok ? parsed.value.files : []).flatMap(({ name, sha256 }) => {
    const beside = join(dirname(path), basename(name));
    const isSame = !existsSync(beside) || fingerprint(readFileSync(beside)) === sha256;
    return isSame ? [] : [`${name} beside it is not the file that it lists`];
  });
  return { ...verdict, faults: [...verdict.faults, ...faults] };
}

function tell(verdict: Verdict, io: Io): Exit {
  if (verdict.faults.length === 0) {
    io.line(
      `Intact: ${verdict.entries} entries of ${verdict.jobs} ${verdict.jobs === 1 ? "job" : "jobs"}. Digest ${verdict.digest}`,
    );
    if (verdict.open !== undefined) io.complain(verdict.open);
    return 0;
  }
  for (const fault of verdict.faults) io.line(`Altered: ${fault}`);
  return 1;
}

/** Whether a record was altered since it was written. */
export const verifyCommand: Command = {
  name: "verify",
  usage: "FILE-or-DB [--digest DIGEST] [--seal SEAL]",
  about: "checks every job's chain; exit 0 intact, 1 altered",
  options: {
    digest: {
      type: "string",
      about: "a digest kept elsewhere: also finds what is missing at the end",
    },
    seal: {
      type: "string",
      about:
        "an export's seal kept elsewhere: also finds verdicts that were altered and sealed again",
    },
  },
  words: [1, 1],
  run: async (given, io) => {
    const [path = ""] = given.words;
    const kept = keptOf(given);
    const verdict = verdictOf(path, kept);
    if (typeof verdict !== "string") return tell(verdict, io);
    io.complain(verdict);
    return 2;
  },
};
