import type { Job, Statement, Understood } from "../model.ts";
import { namesSite } from "./names-site.ts";

const how =
  /^\s*(?:(?:so|and|ok(?:ay)?|hey)[ ,]+)*how(?:['’]?s| is| are)\s+(?:the\s+)?([\p{L}'’ -]+?)\s*\?*\s*$/iu;

/** "How is tannery": only who knows the site's name can tell that its whole story is asked for. */
export function withNamedStory(understood: Understood, text: string, job: Job): Understood {
  const match = how.exec(text);
  if (match === null || !namesSite(match[1] ?? "", job)) return understood;
  if (understood.statements.some(({ kind }) => kind !== "note")) return understood;
  const statement: Statement = {
    kind: "question",
    question: "summary",
    about: text,
    said: text,
    spans: [[0, text.length]],
    rule: "how is <site>",
  };
  return { ...understood, statements: [statement], skipped: [] };
}
