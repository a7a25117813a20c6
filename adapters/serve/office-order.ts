import type { Message } from "../../src/model.ts";
import { localTime } from "../../src/show/local-time.ts";

/** What the office may ask of the bot in a chat, beside what everybody may. */
export type OfficeOrder =
  | { readonly kind: "export"; readonly day: string }
  | { readonly kind: "import" }
  | { readonly kind: "refused" };

const exportPattern =
  /^\s*(?:@?readback[\s,:]+)?(?:please\s+)?export(?:\s+(today|yesterday|\d{4}-\d\d-\d\d))?\s*[.!]?\s*$/i;
const importPattern = /^\s*(?:@?readback[\s,:]+)?(?:please\s+)?import\b/i;

const isSheet = ({ files }: Message): boolean =>
  files.length > 0 && files.every((file) => /\.csv$/i.test(file.name) || file.type === "text/csv");

/**
 * Whether a message is such an order; `zone` says which day is today. Others than the office are
 * refused; "import" without a sheet is talk, and a sheet without "import" a file of a job.
 */
export function officeOrder(message: Message, zone: string): OfficeOrder | undefined {
  if (message.edits !== undefined || message.deletes !== undefined) return undefined;
  const asked = exportPattern.exec(message.text);
  const imports = importPattern.test(message.text) && isSheet(message);
  if (asked === null && !imports) return undefined;
  if (message.role !== "office") return { kind: "refused" };
  if (asked === null) return { kind: "import" };
  return { kind: "export", day: dayOf(asked[1]?.toLowerCase(), message.at, zone) };
}

const dayMs = 24 * 3600_000;

function dayOf(said: string | undefined, at: string, zone: string): string {
  if (said !== undefined && /^\d/.test(said)) return said;
  const moment = said === "yesterday" ? Date.parse(at) - dayMs : Date.parse(at);
  return localTime(new Date(moment).toISOString(), zone)?.date ?? at.slice(0, 10);
}
