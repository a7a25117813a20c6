import fc from "fast-check";
import { expect, test } from "vitest";
import { everyJob } from "../src/bot/rest.ts";
import { type Bot, openBot, receive, work } from "../src/bot.ts";
import type { Message } from "../src/model.ts";
import { isCurrent } from "../src/record/readings.ts";
import { openStore } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";

/**
 * Three people on three jobs in one channel. However their messages are delayed, doubled and
 * mixed, the same records must come out, and no reading on a job that its author was not at.
 */

const channel = "south";
const sites = ["Gull Wharf", "Cinder School", "Saltbox Lofts"] as const;
const tags = ["OU-3", "AC-5", "RTU-2"] as const;
const people = ["bram", "ife", "odo"] as const;
const start = Date.parse("2026-05-12T12:00:00Z");

interface Told {
  readonly message: Message;
  /** index of the job that it is about */
  readonly job: number;
}

function message(id: string, minute: number, fields: Partial<Message>): Message {
  return {
    platform: "test",
    id,
    at: new Date(start + minute * 60_000).toISOString(),
    channel,
    person: "maren",
    role: "tech",
    text: "",
    files: [],
    ...fields,
  };
}

/** The day as it happened: each person visits jobs in an order of their own and reads values there. */
function dayOf(orders: readonly (readonly number[])[]): readonly Told[] {
  const told: Told[] = sites.map((site, job) => ({
    job,
    message: message(`open-${job}`, job, {
      role: "dispatcher",
      text: `New job: ${site} ${tags[job]}, not cooling. ${people[job]}`,
    }),
  }));
  for (const [index, order] of orders.entries()) {
    const person = people[index] ?? "bram";
    let minute = 10 + index;
    const say = (job: number, text: string, more: Partial<Message> = {}): string => {
      const id = `${person}-${minute}`;
      told.push({ job, message: message(id, minute, { person, text, ...more }) });
      minute += 3;
      return id;
    };
    for (const job of order) {
      const word = (sites[job] ?? "").split(" ")[0]?.toLowerCase() ?? "";
      say(job, `on my way to ${word}`);
      say(job, `on site ${word}`);
      const first = say(job, `suction ${100 + job * 10 + index} psig`);
      say(job, `suction ${104 + job * 10 + index} psig`, { edits: first });
      const wrong = say(job, `liquid line ${90 + job} F`);
      say(job, "", { deletes: wrong });
      say(job, `discharge ${300 + job * 10 + index} psig`);
      say(job, `leaving ${word}`);
    }
  }
  return told;
}

function play(messages: readonly Message[]): Bot {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  for (const one of messages) {
    receive(bot, { message: one });
    for (const { error } of work(bot)) if (error !== undefined) throw new Error(error);
  }
  return bot;
}

/** What matters of the records, whatever numbers the jobs got. */
function recordsOf(bot: Bot): object {
  const jobs = [...everyJob(bot.memory)].map((job) => ({
    opened_by: job.opened_by,
    site: job.site,
    equipment: job.equipment,
    status: job.status,
    status_at: job.status_at,
    person: job.person,
    people: [...job.people].sort(),
    hours: job.labor_hours,
    readings: job.readings
      .filter(isCurrent)
      .map(({ message: id, quantity, value, at, who }) => ({ id, quantity, value, at, who }))
      .sort((a, b) => (a.id < b.id ? -1 : 1)),
  }));
  return jobs.sort((a, b) => (a.opened_by < b.opened_by ? -1 : 1));
}

const order = fc.shuffledSubarray([0, 1, 2], { minLength: 1 });
/** How late each message comes, minutes; most come at once. */
const delays = fc.infiniteStream(
  fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.nat(30) }),
);

test("delayed, doubled and mixed messages end in the same records", () => {
  fc.assert(
    fc.property(fc.tuple(order, order, order), delays, fc.nat(), (orders, late, seed) => {
      const told = dayOf(orders);
      const inOrder = told
        .map((one) => one.message)
        .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
      const quiet = recordsOf(play(inOrder));
      const arrivals = inOrder
        .map((one) => ({ one, when: Date.parse(one.at) + (late.next().value ?? 0) * 60_000 }))
        .sort((a, b) => a.when - b.when)
        .flatMap(({ one }, index) => ((index * 7 + seed) % 5 === 0 ? [one, one] : [one]));
      const bot = play([...arrivals, ...arrivals.slice(0, 5)]);
      expect(recordsOf(bot)).toEqual(quiet);
      expect(verifyStore(bot.store).faults).toEqual([]);
    }),
    { numRuns: 40, seed: 20260512 },
  );
});

test("no reading stands on a job that its author was not at", () => {
  fc.assert(
    fc.property(fc.tuple(order, order, order), delays, (orders, late) => {
      const told = dayOf(orders);
      const arrivals = told
        .map(({ message: one }) => ({
          one,
          when: Date.parse(one.at) + (late.next().value ?? 0) * 60_000,
        }))
        .sort((a, b) => a.when - b.when)
        .map(({ one }) => one);
      const bot = play(arrivals);
      const about = new Map(told.map((one) => [one.message.id, one.job]));
      for (const job of [...everyJob(bot.memory)]) {
        for (const reading of job.readings.filter(isCurrent)) {
          const wanted = about.get(reading.message) ?? -1;
          expect(job.opened_by).toBe(`open-${wanted}`);
        }
      }
    }),
    { numRuns: 40, seed: 12052026 },
  );
});
