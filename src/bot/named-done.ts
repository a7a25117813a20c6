import type { Job, Span, Statement, Understood } from "../model.ts";
import { sameWord, wordsOf } from "../record/names.ts";
import { namesSite } from "./names-site.ts";

const done = /([\p{L}\p{N}-]+)(?:\s+job)?(?:\s+is|\s+all)?\s+done\b/giu;

/** "gym's wrapped", "marram all good, on my way out": words for a whole job, of the site alone. */
const wrapped =
  /([\p{L}\p{N}-]+)(?:['’]s)?(?:\s+is)?(?:\s+all)?\s+(?:wrapped(?: up)?|buttoned up|squared away|finished|complete|sorted|all (?:good|set))(?=\s*(?:$|[,.;!\n]|and\b|[-–]|leaving|heading|headed|rolling|on my way))/giu;

/** "done with quarry ln", "that's it for the clinic": the name behind it. */
const doneWith =
  /\b(?:(?:all )?(?:done|finished|through) with|that(?:['’]?s| is) (?:it|all|everything) (?:for|at)) (?:the )?([\p{L}\p{N}'’-]+(?: [\p{L}\p{N}'’-]+){0,3})(?=[.,;!]|$)/giu;

/** "Hazelport done, leaving": only who knows the job's name can tell that this is its status. */
export function withNamedDone(understood: Understood, text: string, job: Job): Understood {
  const known = [...wordsOf(job.site ?? ""), ...wordsOf(job.equipment ?? "")];
  const match =
    [...text.matchAll(done)].find(([, word = ""]) =>
      wordsOf(word).some((part) => part.length > 2 && known.some((name) => sameWord(part, name))),
    ) ??
    [...text.matchAll(wrapped)].find(([, word = ""]) =>
      namesSite(word.replace(/['’]s$/, ""), job),
    ) ??
    [...text.matchAll(doneWith)].find(([, words = ""]) => namesSite(words, job));
  if (match === undefined) return understood;
  const already = understood.statements.some(
    (said) => said.kind === "status" && said.status === "done",
  );
  const asked = understood.statements.some(({ kind }) => kind === "question");
  if (already || asked) return understood;
  const span: Span = [match.index, match.index + match[0].length];
  const statement: Statement = {
    kind: "status",
    status: "done",
    said: match[0],
    spans: [span],
    rule: "<site> done",
  };
  return { ...understood, statements: [statement, ...understood.statements] };
}
