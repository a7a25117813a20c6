import { z } from "zod";
import type { FileNote, OpenQuestion, Reading, Statement } from "../model.ts";
import { actions, observations, places, questions, ratings, statuses } from "../vocabulary.ts";
import type { Facts } from "./entry.ts";

/** The shapes of what the store keeps as JSON; what does not fit is a damaged store. */
const span = z.tuple([z.number(), z.number()]);
const isText = (value: unknown): boolean => typeof value === "string";
const text = z.string().exactOptional();
const number = z.number().exactOptional();
const flag = z.literal(true).exactOptional();

const reading = z.object({
  quantity: z.custom<Reading["quantity"]>(isText),
  relation: z.enum(["=", "~", "<", "<=", ">", ">=", "in"]),
  value: z.union([z.number(), z.string(), z.null()]),
  unit: z.string().nullable(),
  high: number,
  over_range: flag,
  series: z.array(z.number()).exactOptional(),
  after_s: number,
  for_s: number,
  points: z.array(z.string()).exactOptional(),
  at: z.enum(places).exactOptional(),
  state: z.enum(["start", "running"]).exactOptional(),
  stat: z.enum(["peak", "minimum", "average"]).exactOptional(),
  kind: z.enum(["ac", "dc"]).exactOptional(),
  reference: z.enum(["gauge", "absolute"]).exactOptional(),
  test_voltage: number,
  temperature: number,
  action: z.enum(["recovered", "charged"]).exactOptional(),
  rating: z.enum(ratings).exactOptional(),
  subject: text,
  earlier: flag,
  corrects: flag,
  nth: number,
  instead: z
    .object({
      quantity: z.custom<Reading["quantity"]>(isText).exactOptional(),
      points: z.array(z.string()).exactOptional(),
      at: z.enum(places).exactOptional(),
      subject: text,
    })
    .exactOptional(),
  measured_at: text,
  doubtful: flag,
  said: z.string(),
  spans: z.array(span),
  assumed: z.array(z.enum(["unit", "quantity", "points", "test_voltage"])),
  figure: z.object({ number: z.string(), unit: z.string() }),
  rule: z.string(),
}) satisfies z.ZodType<Reading>;

const base = { said: z.string(), spans: z.array(span), rule: z.string() };
const circuit = z.enum(["charged", "recovered", "open", "nitrogen", "vacuum"]);

const statement = z.discriminatedUnion("kind", [
  z.object({
    ...base,
    kind: z.literal("status"),
    status: z.enum(statuses),
    time: text,
    where: text,
    errand: flag,
  }),
  z.object({
    ...base,
    kind: z.literal("complaint"),
    places: z.array(z.string()),
    symptom: z.string(),
    fine: z.array(z.string()),
  }),
  z.object({
    ...base,
    kind: z.literal("action"),
    action: z.enum(actions),
    what: text,
    lock: z.enum(["on", "off"]).exactOptional(),
    bypass: z.enum(["on", "off"]).exactOptional(),
    leads: z.enum(["lifted", "landed"]).exactOptional(),
    circuit: circuit.exactOptional(),
    planned: flag,
    time: text,
  }),
  z.object({
    ...base,
    kind: z.literal("part"),
    part: z.string(),
    number: text,
    quantity: number,
    state: z.enum(["needed", "ordered", "fitted"]),
    due: text,
    due_on: text,
    arrived: flag,
    decided: z.enum(["approved", "declined"]).exactOptional(),
  }),
  z.object({
    ...base,
    kind: z.literal("labor"),
    hours: z.number(),
    overtime: flag,
    whose: z.string().exactOptional(),
  }),
  z.object({
    ...base,
    kind: z.literal("observation"),
    observation: z.enum(observations),
    subject: text,
    denied: flag,
    earlier: flag,
  }),
  z.object({
    ...base,
    kind: z.literal("tree"),
    nodes: z.array(
      z.object({
        tag: z.string(),
        parent: text,
        kind: text,
        places: z.array(z.string()).exactOptional(),
      }),
    ),
  }),
  z.object({ ...base, kind: z.literal("undo"), count: number, taken: text }),
  z.object({
    ...base,
    kind: z.literal("question"),
    question: z.enum(questions),
    about: text,
  }),
  z.object({
    ...base,
    kind: z.literal("open_job"),
    site: text,
    equipment: text,
    complaint: text,
    assigned: text,
  }),
  z.object({
    ...base,
    kind: z.literal("nameplate"),
    field: z.enum(["refrigerant", "model", "serial", "metering", "drive", "phases"]),
    value: z.string(),
    subject: text,
  }),
  z.object({ ...base, kind: z.literal("confirm"), answer: z.enum(["yes", "no"]) }),
  z.object({ ...base, kind: z.literal("note"), about: z.string() }),
]) satisfies z.ZodType<Statement>;

const file = z.object({
  name: z.string(),
  type: z.string(),
  size: z.number(),
  sha256: z.string(),
}) satisfies z.ZodType<FileNote>;

const openQuestion = z.object({
  missing: z.enum(["unit", "quantity", "choice"]),
  drafts: z.array(
    z.object({
      number: z.number(),
      figure: z.string(),
      quantity: z.custom<Reading["quantity"]>(isText).exactOptional(),
      unit: text,
      points: z.array(z.string()).exactOptional(),
      at: z.enum(places).exactOptional(),
      subject: text,
      action: z.enum(["recovered", "charged"]).exactOptional(),
    }),
  ),
}) satisfies z.ZodType<OpenQuestion>;

export const filesSchema = z.array(file);

export const factsSchema = z.discriminatedUnion("kind", [
  z.object({
    kind: z.literal("note"),
    role: z.enum(["tech", "dispatcher", "office"]),
    opens: z
      .object({
        site: z.string().nullable(),
        equipment: z.string().nullable(),
        complaint: text,
        assigned: text,
        second: text,
        channel: z.string(),
        thread: text,
        listed: z.literal(true).exactOptional(),
      })
      .exactOptional(),
    readings: z.array(reading),
    statements: z.array(statement),
    unread: z.array(span),
    asked: text,
    open: openQuestion.exactOptional(),
    files: filesSchema,
    replaces: z.array(
      z.object({ was: z.string(), by: z.union([z.number(), z.string()]).exactOptional() }),
    ),
    edits: text,
  }),
  z.object({ kind: z.literal("delete"), message: z.string() }),
  z.object({ kind: z.literal("undo"), places: z.array(z.number()) }),
  z.object({ kind: z.literal("answer"), readings: z.array(z.string()), stands: z.boolean() }),
  z.object({ kind: z.literal("move"), message: z.string(), to: z.number() }),
  z.object({
    kind: z.literal("clock"),
    clock: z.string(),
    outcome: z.enum(["asked", "missed"]),
  }),
]) satisfies z.ZodType<Facts>;
