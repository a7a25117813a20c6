import { z } from "zod";
import type { ExportRecord } from "../show/exports/export-record.ts";
import type { ExportJob } from "../show/exports/sheet-source.ts";

/**
 * An export that can be shared: people, sites and messages get numbers, days move so that the first
 * is 1 January 2000, words, serial numbers, files and the chain go. What was measured stays.
 */
export function anonymousRecord(record: ExportRecord): ExportRecord {
  const shift = shiftOf(record);
  const masks: Masks = { names: new Map(), shift };
  const { chain: _chain, certificates: _certificates, supplierOf: _supplier, ...known } = record;
  // what was put into sheets already names everybody
  const { sheets: _sheets, ...rest } = known;
  const jobs = record.jobs.map((entry) => maskedJob(entry, masks));
  const shown = record.shown.map((job) => objectShape.parse(masked(job, "", masks)));
  const first = jobs[0]?.job.opened.slice(0, 10);
  return {
    ...rest,
    jobs,
    shown,
    names: {},
    ...(record.day === undefined ? {} : { day: first ?? "2000-01-01" }),
    ...(record.to === undefined ? {} : { to: "2099-12-31" }),
    due: [],
    changes: [],
    reports: [],
    about: {
      scope: "anonymous",
      file: `anonymous-${
        jobs
          .map(({ job }) => job.job)
          .slice(0, 3)
          .join("-") || "empty"
      }`,
      revision: 1,
      asOf: "",
      digest: "",
    },
  };
}

const objectShape = z.record(z.string(), z.unknown());

interface Masks {
  readonly names: Map<string, string>;
  /** ms */
  readonly shift: number;
}

function shiftOf({ jobs }: ExportRecord): number {
  const first = Math.min(...jobs.map(({ job }) => Date.parse(job.opened)));
  if (!Number.isFinite(first)) return 0;
  const days = Math.floor(first / 86_400_000);
  return (Date.parse("2000-01-01T00:00:00Z") / 86_400_000 - days) * 86_400_000;
}

/** Fields that name a person, a place or a message, and what their stand-ins are called. */
const named: Readonly<Record<string, string>> = {
  who: "person",
  person: "person",
  people: "person",
  assigned: "person",
  second: "person",
  site: "site",
  channel: "channel",
  thread: "message",
  message: "message",
  opened_by: "message",
  contact: "person",
  places: "place",
  fine: "place",
};

/** Fields that are somebody's own words, or tell which machine it is. */
const dropped: ReadonlySet<string> = new Set([
  ...["said", "says", "complaint", "symptom", "about_place", "notes", "serial", "model"],
  ...["street", "town", "phone", "contact", "files", "text", "rule", "spans", "installed", "where"],
]);

/** Fields whose sentences the program made itself: they hold figures, no names. */
const ownSentences: ReadonlySet<string> = new Set(["findings", "next", "diagnosis", "cautions"]);

function masked(value: unknown, field: string, masks: Masks): unknown {
  if (ownSentences.has(field)) return withoutQuotes(value);
  if (Array.isArray(value)) {
    if (dropped.has(field)) return [];
    return value.map((item) => masked(item, field, masks));
  }
  if (typeof value === "object" && value !== null) {
    const own = ownOf(value);
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => [
        key,
        own.includes(key) ? "" : masked(item, key, masks),
      ]),
    );
  }
  if (typeof value !== "string") return value;
  if (dropped.has(field)) return "";
  if (/^\d{4}-\d\d-\d\dT/.test(value)) return shifted(value, masks.shift);
  const kind = named[field];
  return kind === undefined ? value : standIn(masks.names, kind, value);
}

/** What speaks for or against a fault may be a remark in somebody's words: that there was one stays. */
function withoutQuotes(value: unknown): unknown {
  if (typeof value === "string") return value.replace(/^(said|done): .*$/s, "$1");
  if (Array.isArray(value)) return value.map(withoutQuotes);
  return typeof value === "object" && value !== null
    ? Object.fromEntries(Object.entries(value).map(([key, item]) => [key, withoutQuotes(item)]))
    : value;
}

/** Of a statement what was read off a plate, or is a note in somebody's words: a serial, an invoice, a telephone. */
function ownOf(value: object): readonly string[] {
  const { kind, field, lock } = plateShape.parse(value);
  if (kind === "note") return ["about"];
  // where a lock hangs
  if (kind === "action" && lock !== undefined) return ["what"];
  return kind === "nameplate" && (field === "serial" || field === "model") ? ["value"] : [];
}

const plateShape = z.object({
  kind: z.unknown().optional(),
  field: z.unknown().optional(),
  lock: z.unknown().optional(),
});

function standIn(names: Map<string, string>, kind: string, value: string): string {
  const key = `${kind} ${value}`;
  const known = names.get(key);
  if (known !== undefined) return known;
  const count = [...names.keys()].filter((one) => one.startsWith(`${kind} `)).length + 1;
  const made = `${kind} ${count}`;
  names.set(key, made);
  return made;
}

/** The same clock on another day; its offset stays. */
function shifted(iso: string, shift: number): string {
  const wall = Date.parse(`${iso.slice(0, 19)}Z`);
  return Number.isNaN(wall)
    ? iso
    : `${new Date(wall + shift).toISOString().slice(0, 19)}${iso.slice(19).replace(/^\.\d+/, "")}`;
}

const jobShape = z.custom<ExportJob["job"]>((value) => typeof value === "object" && value !== null);
const unitShape = z.custom<ExportJob["equipment"]>(
  (value) => typeof value === "object" && value !== null,
);

function maskedJob({ job, equipment, judgement, beforeWork }: ExportJob, masks: Masks): ExportJob {
  const { complaint: _complaint, ...rest } = job;
  return {
    job: jobShape.parse(
      masked({ ...rest, timeline: [], files: [], unread: [], statements: [] }, "", masks),
    ),
    equipment: unitShape.parse(masked(withoutPlate(equipment), "", masks)),
    judgement,
    ...(beforeWork === undefined
      ? {}
      : { beforeWork: { ...beforeWork, at: shifted(beforeWork.at, masks.shift) } }),
  };
}

function withoutPlate(equipment: ExportJob["equipment"]): ExportJob["equipment"] {
  const { serial: _serial, notes: _notes, places: _places, ...rest } = equipment;
  return rest;
}
