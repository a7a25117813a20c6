import type { ExportScope } from "../../src/bot/export-scope.ts";
import { plainTag } from "../../src/record/names.ts";
import { type Given, textOption } from "./command.ts";

/** A calendar day that exists, "2026-05-12"; undefined for anything else. */
export function realDay(text: string | undefined): string | undefined {
  if (text === undefined || !/^\d{4}-\d\d-\d\d$/.test(text)) return undefined;
  const date = new Date(`${text}T00:00:00Z`);
  return Number.isNaN(date.getTime()) || date.toISOString().slice(0, 10) !== text
    ? undefined
    : text;
}

/** What the options ask an export of, or the sentence that says what is missing. */
export function scopeOf(given: Given): ExportScope | string {
  const asked = ["day", "from", "job", "site", "unit"].filter((name) => textOption(given, name));
  const only = asked.join(" ") === "site unit" ? "unit" : asked.length === 1 ? asked[0] : undefined;
  const text = (name: string): string => textOption(given, name) ?? "";
  switch (only) {
    case "day": {
      const day = realDay(text("day"));
      return day === undefined ? "Which day? Say --day YYYY-MM-DD." : { kind: "day", day };
    }
    case "from":
      return rangeOf(text("from"), text("to"));
    case "job":
      return /^#?\d{1,9}$/.test(text("job"))
        ? { kind: "job", job: Number(text("job").replace("#", "")) }
        : "Which job? Say --job NUMBER.";
    case "site":
      return { kind: "site", site: text("site") };
    case "unit":
      if (plainTag(text("unit")) === "") return "Which unit? Say --unit TAG.";
      return text("site") === ""
        ? { kind: "unit", unit: text("unit") }
        : { kind: "unit", unit: text("unit"), site: text("site") };
    default:
      return asked.length === 0
        ? "Which day? Say --day YYYY-MM-DD, or --from and --to, --job, --site or --unit."
        : "Say one of --day, --from and --to, --job, --site, --unit; only --site and --unit go together.";
  }
}

/** Some days in a row, or the sentence that says what is wrong with them. */
export function rangeOf(first: string, last: string): ExportScope | string {
  const [from, to] = [realDay(first), realDay(last)];
  if (from === undefined || to === undefined)
    return "Which days? Say --from YYYY-MM-DD --to YYYY-MM-DD.";
  return from > to
    ? "The days are the wrong way round: --from comes first."
    : { kind: "range", day: from, to };
}
