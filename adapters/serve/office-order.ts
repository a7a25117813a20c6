import type { Message } from "../../src/model.ts";
import { type Asked, exportAsked } from "./export-words.ts";

/** What the office may ask of the bot in a chat, beside what everybody may. */
export type OfficeOrder =
  | { readonly kind: "export"; readonly asked: Asked }
  | { readonly kind: "import"; readonly dry: boolean }
  | { readonly kind: "refused" };

const importPattern = /^\s*(?:@?readback[\s,:]+)?(?:please\s+)?import\b/i;

const dryPattern = /\b(?:dry[- ]?run|dry)\b/i;

const isSheet = ({ files }: Message): boolean =>
  files.length > 0 &&
  files.every(
    ({ name, type }) =>
      /\.(?:csv|tsv|xls[xm]?)$/i.test(name) ||
      type === "text/csv" ||
      /spreadsheet|excel/.test(type),
  );

/** By its words; or by its files' names, where a chat lets nobody write words with a file. */
function saysImport({ text, files }: Message): boolean {
  if (text.trim() !== "") return importPattern.test(text);
  return files.every(({ name }) => /^import(?![a-z])/i.test(name));
}

/**
 * Whether a message is such an order; `zone` says which day is today. Others than the office are
 * refused; "import" without a sheet is talk, and a sheet without "import" a file of a job.
 */
export function officeOrder(message: Message, zone: string): OfficeOrder | undefined {
  if (message.edits !== undefined || message.deletes !== undefined) return undefined;
  const asked = exportAsked(message.text, message.at, zone);
  const imports = isSheet(message) && saysImport(message);
  if (asked === undefined && !imports) return undefined;
  if (message.role !== "office") return { kind: "refused" };
  return asked === undefined
    ? {
        kind: "import",
        dry: [message.text, ...message.files.map(({ name }) => name)].some((one) =>
          dryPattern.test(one),
        ),
      }
    : { kind: "export", asked };
}
