import type { Message } from "../../src/model.ts";
import { type Asked, exportAsked } from "./export-words.ts";

/** What the office may ask of the bot in a chat, beside what everybody may. */
export type OfficeOrder =
  | { readonly kind: "export"; readonly asked: Asked }
  | { readonly kind: "import" }
  | { readonly kind: "refused" };

const importPattern = /^\s*(?:@?readback[\s,:]+)?(?:please\s+)?import\b/i;

const isSheet = ({ files }: Message): boolean =>
  files.length > 0 && files.every((file) => /\.csv$/i.test(file.name) || file.type === "text/csv");

/**
 * Whether a message is such an order; `zone` says which day is today. Others than the office are
 * refused; "import" without a sheet is talk, and a sheet without "import" a file of a job.
 */
export function officeOrder(message: Message, zone: string): OfficeOrder | undefined {
  if (message.edits !== undefined || message.deletes !== undefined) return undefined;
  const asked = exportAsked(message.text, message.at, zone);
  const imports = importPattern.test(message.text) && isSheet(message);
  if (asked === undefined && !imports) return undefined;
  if (message.role !== "office") return { kind: "refused" };
  return asked === undefined ? { kind: "import" } : { kind: "export", asked };
}
