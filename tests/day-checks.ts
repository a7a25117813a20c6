import { existsSync, readFileSync } from "node:fs";
import { z } from "zod";
import { rowsOf } from "../adapters/command-line/csv-rows.ts";
import { messageOf, replayShape } from "../adapters/command-line/replay-line.ts";
import { lastJudgement } from "../src/bot/judge-job.ts";
import { relearn } from "../src/bot/memory.ts";
import { everyJob } from "../src/bot/rest.ts";
import { type Bot, jobOf, openBot, receive, tick, work } from "../src/bot.ts";
import type { Job, JobReading } from "../src/model.ts";
import { importRows } from "../src/record/import/import-rows.ts";
import { answersTo } from "../src/record/outbox.ts";
import { isCurrent } from "../src/record/readings.ts";
import { openStore } from "../src/record/store.ts";

/** Plays an example day and counts how many of what its file expects holds. */

const keyReading = z.looseObject({
  quantity: z.string(),
  value: z.number().nullable(),
  unit: z.string(),
  points: z.array(z.string()).optional(),
  at: z.string().optional(),
  kind: z.string().optional(),
  action: z.string().optional(),
  test_voltage: z.number().optional(),
  over_range: z.boolean().optional(),
  relation: z.string().optional(),
  from: z.string(),
});

const expectShape = z.object({
  jobs: z.record(
    z.string(),
    z.object({
      opened_by: z.string(),
      site: z.string(),
      equipment: z.string(),
      final_status: z.string(),
      people: z.array(z.string()),
      current_readings: z.number(),
      replaced_or_removed: z.number().optional(),
      key_readings: z.array(keyReading),
      refrigerant: z.object({ recovered_kg: z.number(), charged_kg: z.number() }),
      labor_hours: z.number().optional(),
      parts: z.array(z.object({ part: z.string(), state: z.string() })),
      files: z.number(),
      top_fault: z.string().optional(),
      top_fault_any: z.array(z.string()).optional(),
    }),
  ),
  board: z.array(
    z.object({
      after_line: z.number(),
      jobs: z.record(z.string(), z.object({ status: z.string(), person: z.string().optional() })),
    }),
  ),
  filed: z.record(z.string(), z.string()),
  no_reading: z.array(z.string()),
  replies: z.array(z.object({ to: z.string(), any: z.array(z.string()) })),
  /** talk: no answer at all */
  silent: z.array(z.string()).optional(),
  /** the message settles it: answered without a question */
  unasked: z.array(z.string()).optional(),
  must_not: z.array(
    z.object({
      job: z.string(),
      quantity: z.string().optional(),
      value: z.number().optional(),
      times: z.number().optional(),
      unless_rating: z.boolean().optional(),
      status: z.string().optional(),
      text: z.string().optional(),
      as_reading: z.boolean().optional(),
      why: z.string(),
    }),
  ),
});
type Expected = z.infer<typeof expectShape>;

export interface Score {
  readonly total: number;
  readonly failed: readonly string[];
}

const folder = (day: string): string => `fixtures/days/${day}`;

export function linesOfDay(day: string): readonly string[] {
  return readFileSync(`${folder(day)}/day.jsonl`, "utf8")
    .split("\n")
    .filter((line) => line !== "");
}

export function expectationsOf(day: string): Expected {
  return expectShape.parse(JSON.parse(readFileSync(`${folder(day)}/expect.json`, "utf8")));
}

/** A bot on an empty store in memory that knows the day's office files. */
export function botFor(day: string): Bot {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  // a metric house has its settings
  const settings = existsSync(`${folder(day)}/settings.csv`) ? ["settings"] : [];
  for (const file of [...settings, "sites", "equipment", "fault-codes"]) {
    const rows = rowsOf(readFileSync(`${folder(day)}/${file}.csv`, "utf8"));
    if (typeof rows === "string") throw new Error(rows);
    importRows(opened.store, rows);
  }
  relearn(bot.memory, opened.store);
  return bot;
}

export function playLine(bot: Bot, line: string): void {
  const { message, bytes } = messageOf(replayShape.parse(JSON.parse(line)));
  tick(bot, message.at);
  receive(bot, { message, bytes });
  for (const result of work(bot)) if (result.error !== undefined) throw new Error(result.error);
}

export function scoreDay(day: string): Score {
  const expected = expectationsOf(day);
  const lines = linesOfDay(day);
  const bot = botFor(day);
  const failed: string[] = [];
  let total = 0;
  const check = (name: string, holds: boolean): void => {
    total += 1;
    if (!holds) failed.push(name);
  };
  for (const [index, line] of lines.entries()) {
    playLine(bot, line);
    for (const board of expected.board) {
      if (board.after_line === index + 1) checkBoard(bot, expected, board, check);
    }
  }
  checkJobs(bot, expected, check);
  checkFiling(bot, expected, check);
  checkMustNot(bot, expected, check);
  return { total, failed };
}

type Check = (name: string, holds: boolean) => void;

function jobOpenedBy(bot: Bot, message: string): Job | undefined {
  return [...everyJob(bot.memory)].find((job) => job.opened_by === message);
}

function checkBoard(
  bot: Bot,
  expected: Expected,
  board: Expected["board"][number],
  check: Check,
): void {
  for (const [key, wanted] of Object.entries(board.jobs)) {
    const job = jobOpenedBy(bot, expected.jobs[key]?.opened_by ?? "");
    check(
      `board ${board.after_line} ${key} status ${wanted.status}, is ${job?.status}`,
      job?.status === wanted.status,
    );
    if (wanted.person !== undefined) {
      check(
        `board ${board.after_line} ${key} person ${wanted.person}, is ${job?.person}`,
        job?.person === wanted.person,
      );
    }
  }
}

/** The counting rule of the examples. */
function counts(reading: JobReading): boolean {
  return (
    isCurrent(reading) &&
    reading.rating === undefined &&
    reading.earlier !== true &&
    !["fault_code", "duration", "length"].includes(reading.quantity)
  );
}

function matches(reading: JobReading, wanted: z.infer<typeof keyReading>): boolean {
  if (reading.quantity !== wanted.quantity || reading.message !== wanted.from) return false;
  if (
    wanted.points !== undefined &&
    [...wanted.points].sort().join() !== [...(reading.points ?? [])].sort().join()
  )
    return false;
  if (wanted.at !== undefined && reading.at !== wanted.at) return false;
  if (wanted.action !== undefined && reading.action !== wanted.action) return false;
  if (wanted.kind !== undefined && reading.kind !== wanted.kind) return false;
  if (wanted.test_voltage !== undefined && reading.test_voltage !== wanted.test_voltage)
    return false;
  if (wanted.over_range === true) return reading.over_range === true && reading.value === null;
  if (typeof reading.value !== "number" || wanted.value === null) return false;
  const slack = wanted.quantity === "temperature" ? 0.3 : Math.abs(wanted.value) * 0.01;
  return Math.abs(reading.value - wanted.value) <= slack;
}

function checkJobs(bot: Bot, expected: Expected, check: Check): void {
  for (const [key, wanted] of Object.entries(expected.jobs)) {
    const job = jobOpenedBy(bot, wanted.opened_by);
    check(`${key} opened`, job !== undefined);
    if (job === undefined) continue;
    const current = job.readings.filter(counts);
    check(`${key} site ${job.site}`, job.site === wanted.site);
    check(`${key} equipment ${job.equipment}`, job.equipment === wanted.equipment);
    check(`${key} status ${job.status}`, job.status === wanted.final_status);
    check(
      `${key} people ${job.people.join()}`,
      [...job.people].sort().join() === [...wanted.people].sort().join(),
    );
    check(
      `${key} current readings ${current.length}, not ${wanted.current_readings}`,
      current.length === wanted.current_readings,
    );
    const gone = job.readings.filter((reading) => !isCurrent(reading)).length;
    check(
      `${key} replaced ${gone}, not ${wanted.replaced_or_removed}`,
      wanted.replaced_or_removed === undefined || gone === wanted.replaced_or_removed,
    );
    for (const reading of wanted.key_readings) {
      check(
        `${key} ${JSON.stringify(reading)}`,
        current.some((one) => matches(one, reading)),
      );
    }
    const near = (is: number, should: number): boolean =>
      Math.abs(is - should) <= Math.max(0.002, should * 0.01);
    check(
      `${key} recovered ${job.refrigerant.recovered_kg}`,
      near(job.refrigerant.recovered_kg, wanted.refrigerant.recovered_kg),
    );
    check(
      `${key} charged ${job.refrigerant.charged_kg}`,
      near(job.refrigerant.charged_kg, wanted.refrigerant.charged_kg),
    );
    if (wanted.labor_hours !== undefined) {
      check(
        `${key} hours ${job.labor_hours}`,
        Math.abs(job.labor_hours - wanted.labor_hours) <= 0.1,
      );
    }
    const parts = job.parts.map(
      ({ part, number, state }) => `${part}${number === undefined ? "" : ` ${number}`} ${state}`,
    );
    check(
      `${key} parts ${parts.join("; ")}`,
      parts.sort().join() ===
        wanted.parts
          .map(({ part, state }) => `${part} ${state}`)
          .sort()
          .join(),
    );
    check(`${key} files ${job.files.length}`, job.files.length === wanted.files);
    const top = lastJudgement(bot.memory, job).diagnosis[0]?.fault;
    const faults =
      wanted.top_fault_any ?? (wanted.top_fault === undefined ? [] : [wanted.top_fault]);
    if (faults.length > 0)
      check(
        `${key} fault ${top}, not ${faults.join()}`,
        faults.some((fault) => fault === top),
      );
  }
}

function checkFiling(bot: Bot, expected: Expected, check: Check): void {
  for (const [message, key] of Object.entries(expected.filed)) {
    const job = jobOpenedBy(bot, expected.jobs[key]?.opened_by ?? "")?.job;
    const filed = jobOf(bot, { platform: "replay", id: message });
    check(`${message} filed on ${key}, is ${filed}`, job !== undefined && filed === job);
  }
  for (const message of expected.no_reading) {
    const readings = [...everyJob(bot.memory)].flatMap((job) =>
      job.readings.filter((one) => one.message === message && counts(one)),
    );
    check(
      `${message} no reading, is ${readings.map(({ said }) => said).join("; ")}`,
      readings.length === 0,
    );
  }
  const answerTo = (id: string): string =>
    answersTo(bot.store, "replay", id)
      .map((row) => row.text)
      .join("\n");
  for (const id of expected.silent ?? []) {
    check(`${id} silent, is ${answerTo(id)}`, answerTo(id) === "");
  }
  for (const id of expected.unasked ?? []) {
    const text = answerTo(id);
    check(`${id} not asked, is ${text}`, text !== "" && !text.includes("?"));
  }
  for (const { to, any } of expected.replies) {
    const text = answerTo(to).toLowerCase();
    check(
      `${to} answered with ${any.join("|")}, is ${text}`,
      any.some((word) => text.includes(word.toLowerCase())),
    );
  }
}

function checkMustNot(bot: Bot, expected: Expected, check: Check): void {
  for (const rule of expected.must_not) {
    const jobs =
      rule.job === "any"
        ? [...everyJob(bot.memory)]
        : [jobOpenedBy(bot, expected.jobs[rule.job]?.opened_by ?? "")];
    const found = jobs.flatMap((job) =>
      (job?.readings ?? []).filter((reading) => {
        if (!isCurrent(reading)) return false;
        if (rule.text !== undefined) return reading.said.includes(rule.text);
        if (rule.quantity !== undefined && reading.quantity !== rule.quantity) return false;
        if (rule.unless_rating === true && reading.rating !== undefined) return false;
        if (rule.value === undefined) return true;
        return (
          typeof reading.value === "number" &&
          Math.abs(reading.value - rule.value) <=
            Math.max(Math.abs(rule.value) * 0.001, rule.quantity === "temperature" ? 0.06 : 0)
        );
      }),
    );
    const broken =
      rule.status !== undefined
        ? jobs.some((job) => job?.status === rule.status)
        : found.length >= (rule.times ?? 1);
    check(`must not: ${rule.why}`, !broken);
  }
}
