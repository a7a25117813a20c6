import type {
  Finding,
  Job,
  JobReading,
  Judgement,
  Message,
  ReplyInput,
  Statement,
  Understood,
} from "../../src/model.ts";

const nothingJudged: Judgement = { findings: [], diagnosis: [], next: [], cautions: [] };
const nothingRead: Understood = {
  readings: [],
  statements: [],
  unread: [],
  unread_spans: [],
  ask: [],
  skipped: [],
};

export const message: Message = {
  platform: "terminal",
  id: "m1",
  at: "2026-05-12T10:00:00-05:00",
  channel: "south",
  person: "bram",
  role: "tech",
  text: "",
  files: [],
};

export const job: Job = {
  job: 4,
  channel: "south",
  opened_by: "m0",
  opened: "2026-05-12T07:00:00-05:00",
  site: "Gull Wharf",
  equipment: "OU-3",
  status: "on_site",
  status_at: "2026-05-12T08:00:00-05:00",
  person: "bram",
  people: ["bram"],
  timeline: [],
  readings: [],
  statements: [],
  parts: [],
  visits: [],
  labor_hours: 0,
  refrigerant: { recovered_kg: 0, charged_kg: 0 },
  machine: { power: "unknown", locks: [], leads: "unknown", circuit: "unknown", bypasses: [] },
  clocks: [],
  file: { state: "open", gaps: [] },
  files: [],
  unread: [],
};

let made = 0;

/** A reading with what a test cares about; the rest is filled in plausibly. */
export function reading(
  figure: string,
  fields: Partial<Omit<JobReading, "figure">> & Pick<JobReading, "quantity">,
): JobReading {
  made += 1;
  const [number = "", ...unit] = figure.split(" ");
  const value = Number(number);
  return {
    relation: "=",
    value: Number.isNaN(value) ? null : value,
    unit: "1",
    said: figure,
    spans: [],
    assumed: [],
    figure: { number, unit: unit.join(" ") },
    rule: "test",
    id: `r${made}`,
    message: "m1",
    taken: message.at,
    received: message.at,
    who: "bram",
    ...fields,
  };
}

export function finding(fields: Partial<Finding> & Pick<Finding, "check" | "level">): Finding {
  return {
    about: "compressor 1",
    says: "a plain sentence",
    values: {},
    basis: "IEEE 43",
    ...fields,
  };
}

/** What a message said beside its readings. */
export function statement<K extends Statement["kind"]>(
  fields: Omit<Extract<Statement, { kind: K }>, "spans" | "rule"> & { readonly kind: K },
): Omit<Extract<Statement, { kind: K }>, "spans" | "rule"> & {
  readonly kind: K;
  readonly spans: readonly [];
  readonly rule: string;
} {
  return { ...fields, spans: [], rule: "test" };
}

/** A reply's input with only what a test cares about. */
export function input(
  fields: Partial<Omit<ReplyInput, "judgement" | "before" | "understood" | "message">> & {
    readonly judgement?: Partial<Judgement>;
    readonly before?: Partial<Judgement>;
    readonly understood?: Partial<Understood>;
    readonly message?: Partial<Message>;
  },
): ReplyInput {
  const readings = fields.readings ?? [];
  return {
    job,
    readings,
    replaced: [],
    equipment: {},
    site: {},
    earlier: [],
    jobs: [job],
    box_limits: {},
    opened: false,
    late: false,
    addressed: true,
    cautioned: [],
    withdrawn: [],
    confirmed: [],
    released: [],
    codes: [],
    units: "us",
    time_zone: "-05:00",
    names: { bram: "Bram", tamsin: "Tamsin" },
    ...fields,
    message: { ...message, ...fields.message },
    understood: { ...nothingRead, readings, ...fields.understood },
    judgement: { ...nothingJudged, ...fields.judgement },
    before: { ...nothingJudged, ...fields.before },
  };
}
