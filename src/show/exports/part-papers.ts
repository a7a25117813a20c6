import type { Job, JobPart } from "../../model.ts";

/** What a claim for one part asks for beside its name. */
export interface PartPapers {
  readonly old: string | undefined;
  readonly fresh: string | undefined;
  readonly both: boolean;
  readonly invoice: string | undefined;
}

/** Letters before a serial in which "old" or "new", or the part's name, counts for it. */
const ahead = 28;
const outWords = /\b(?:old|failed|bad|removed|out|original)\b(?!.*\bnew\b)/i;
const inWords = /\b(?:new|replacement|fitted)\b(?!.*\bold\b)/i;
const invoiceWords =
  /\binvoice\b[\s:]*(?:(?:no|nr|num|number)\b\.?)?[\s:#]*([a-z]{0,5}-?\d[\w-]*)/gi;

/** Serials and the invoice that were said for a part; nothing where it could be of another part. */
export function partPapers(job: Job, part: JobPart): PartPapers {
  const serials = serialsOf(job).filter((one) => isOf(one, job, part));
  const old = serials.findLast(({ side }) => side === "old")?.value;
  const fresh = serials.findLast(
    ({ side, message }) => side === "new" || (side === undefined && message === part.message),
  )?.value;
  const invoices = job.timeline.flatMap(({ says, message }) =>
    [...says.matchAll(invoiceWords)].map(([, value = ""]) => ({ value, message, words: says })),
  );
  const invoice = invoices.findLast((one) => isOf(one, job, part))?.value;
  return { old, fresh, both: old !== undefined && fresh !== undefined, invoice };
}

interface Paper {
  readonly value: string;
  readonly message: string;
  /** in which a part may be named */
  readonly words: string;
}

function serialsOf(job: Job): readonly (Paper & { readonly side: "old" | "new" | undefined })[] {
  return job.statements.flatMap(({ statement, message, undone, deleted }) => {
    if (statement.kind !== "nameplate" || statement.field !== "serial") return [];
    if (undone === true || deleted === true) return [];
    const says = job.timeline.find((row) => row.message === message)?.says ?? "";
    const from = statement.spans[0]?.[0] ?? 0;
    const before = says.slice(Math.max(0, from - ahead), from);
    const side = outWords.test(before) ? "old" : inWords.test(before) ? "new" : undefined;
    return [{ value: statement.value, message, words: `${before} ${statement.said}`, side }];
  });
}

const noun = (name: string): string =>
  (name.toLowerCase().split(" ").pop() ?? "").replace(/s$/, "");

/** Its name stands with it, it came in the part's own message, or there is no other part. */
function isOf({ message, words }: Paper, job: Job, part: JobPart): boolean {
  const fitted = job.parts.filter(({ state }) => state === "fitted");
  const text = words.toLowerCase();
  const named = fitted.filter((one) => text.includes(noun(one.part)));
  if (named.length > 0) return named.includes(part);
  return fitted.length === 1 || message === part.message;
}
