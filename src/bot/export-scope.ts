import type { Job } from "../model.ts";
import { plainTag } from "../record/names.ts";
import { listed } from "../show/wording.ts";

/** What an export is of. Days are "2026-05-12" in the company's zone. */
export type ExportScope =
  | { readonly kind: "day"; readonly day: string }
  | { readonly kind: "range"; readonly day: string; readonly to: string }
  | { readonly kind: "job"; readonly job: number }
  | { readonly kind: "site"; readonly site: string }
  | { readonly kind: "unit"; readonly unit: string; readonly site?: string };

/** The days that a scope is limited to; none for a job, a site or a unit. */
export function daysOf(scope: ExportScope): { readonly day?: string; readonly to?: string } {
  if (scope.kind === "day") return { day: scope.day };
  return scope.kind === "range" ? { day: scope.day, to: scope.to } : {};
}

export type Scoped = Pick<Job, "job" | "site" | "equipment">;

/** Whether a job is of a scope; days are not looked at here. */
export function inScope(scope: ExportScope, job: Scoped): boolean {
  switch (scope.kind) {
    case "day":
    case "range":
      return true;
    case "job":
      return job.job === scope.job;
    case "site":
      return same(job.site, scope.site);
    case "unit":
      return (
        job.equipment !== null &&
        plainTag(job.equipment) === plainTag(scope.unit) &&
        (scope.site === undefined || same(job.site, scope.site))
      );
  }
}

/** The scope as the record spells its names; a sentence where the store holds nothing of that name. */
export function knownScope(all: readonly Scoped[], scope: ExportScope): ExportScope | string {
  if (scope.kind === "day" || scope.kind === "range") return scope;
  const jobs = all.filter((job) => inScope(scope, job));
  const [first] = jobs;
  if (scope.kind === "job") return first === undefined ? `There is no job ${scope.job}.` : scope;
  if (scope.kind === "site") {
    return first === undefined || first.site === null
      ? `There is no job at "${scope.site}". ${known(all.map(({ site }) => site))}`
      : { kind: "site", site: first.site };
  }
  if (first === undefined || first.equipment === null) {
    return `There is no job on a unit "${scope.unit}". ${known(all.map(({ equipment }) => equipment))}`;
  }
  const sites = [...new Set(jobs.map(({ site }) => site))];
  if (sites.length > 1) {
    return `${first.equipment} stands at ${listed(sites.map((site) => site ?? "an unknown site"))}: say which site.`;
  }
  const named = { kind: "unit" as const, unit: first.equipment };
  return first.site === null ? named : { ...named, site: first.site };
}

const same = (a: string | null, b: string): boolean =>
  a?.trim().toLowerCase() === b.trim().toLowerCase();

const mostNames = 12;

function known(names: readonly (string | null)[]): string {
  const some = [...new Set(names)].filter((name) => name !== null).sort();
  if (some.length === 0) return "The store holds none.";
  const more = some.length > mostNames ? " and others" : "";
  return `Known: ${some.slice(0, mostNames).join(", ")}${more}.`;
}

/** "day 2026-05-12", "job 14": what revisions are counted by, and what people read. */
export function scopeName(scope: ExportScope): string {
  switch (scope.kind) {
    case "day":
      return `day ${scope.day}`;
    case "range":
      return `days ${scope.day} to ${scope.to}`;
    case "job":
      return `job ${scope.job}`;
    case "site":
      return `site ${scope.site}`;
    case "unit":
      return scope.site === undefined
        ? `unit ${scope.unit}`
        : `unit ${scope.unit} at ${scope.site}`;
  }
}

/** The beginning of its files' names: "2026-05-12", "job-14", "unit-gull-wharf-ou-3". */
export function scopeFile(scope: ExportScope): string {
  if (scope.kind === "day") return scope.day;
  if (scope.kind === "range") return `${scope.day}-to-${scope.to}`;
  if (scope.kind === "job") return `job-${scope.job}`;
  const words = scope.kind === "site" ? ["site", scope.site] : ["unit", scope.site, scope.unit];
  return words
    .filter((word) => word !== undefined)
    .map(fileWord)
    .join("-");
}

/** Letters and digits of any script; all else would have to be escaped somewhere. */
function fileWord(text: string): string {
  const word = text
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return word === "" ? "unnamed" : word.slice(0, 60);
}
