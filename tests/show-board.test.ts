import { describe, expect, it } from "vitest";
import type { Job } from "../src/model.ts";
import { boardText } from "../src/show/board.ts";
import { job, reading } from "./support/reply-input.ts";

const now = "2026-05-12T10:42:00-05:00";
const at = (time: string) => `2026-05-12T${time}:00-05:00`;

const jobs: readonly Job[] = [
  {
    ...job,
    job: 41,
    site: "Saltbox Lofts",
    equipment: "OU-3",
    status: "waiting_for_parts",
    status_at: at("09:30"),
    person: "tamsin",
    parts: [
      {
        part: "drive board",
        number: "60-12E4",
        state: "needed",
        who: "tamsin",
        at: at("09:20"),
        message: "a",
      },
      {
        part: "drive board",
        number: "60-12E4",
        state: "ordered",
        due: "Thu",
        who: "ife",
        at: at("09:40"),
        message: "b",
      },
    ],
    machine: { ...job.machine, locks: [{ who: "tamsin", since: at("09:00") }] },
  },
  {
    ...job,
    job: 42,
    readings: [38, 46, 49].map((f, index) =>
      reading(`${f} F`, {
        quantity: "temperature",
        at: "box",
        value: (f - 32) / 1.8,
        taken: at(["08:40", "09:12", "10:05"][index] ?? ""),
      }),
    ),
    site: "Gull Wharf",
    equipment: "WIC-4",
    status: "on_site",
    status_at: at("09:07"),
    person: "bram",
    clocks: [{ id: "c", due: at("10:52"), job: 42, channel: "south", text: "" }],
  },
  {
    ...job,
    job: 44,
    site: "Cinder School with a very long name indeed",
    equipment: "AC-5",
    status: "no_access",
    status_at: at("10:20"),
    person: "ife",
  },
  {
    ...job,
    job: 45,
    site: "Saltbox Lofts",
    equipment: "OU-1",
    status: "on_the_way",
    status_at: at("10:22"),
    person: "odo",
  },
  {
    ...job,
    job: 47,
    site: "Tollgate Dental",
    equipment: "RTU-2",
    status: "open",
    opened: at("10:20"),
    status_at: at("10:20"),
    person: null,
  },
  {
    ...job,
    job: 48,
    site: "Tollgate Dental",
    equipment: "RTU-3",
    status: "open",
    opened: at("10:40"),
    status_at: at("10:40"),
    person: null,
    assigned: "odo",
  },
  {
    ...job,
    job: 39,
    status: "done",
    status_at: at("08:50"),
    file: { state: "open", gaps: ["cylinder number"] },
  },
];

describe("board", () => {
  const text = boardText(jobs, now, { names: { ife: "Ife" } });

  it("puts first whoever must move, one line a job and at most two more", () => {
    expect(text).toMatchInlineSnapshot(`
      "Open jobs: 6. State of Tue 12 May, 10:42
      Office to act: 2
      44 AC-5 Cinder School..., Ife no access 22 min
         call the site for a time
      47 RTU-2 Tollgate Dental, nobody new 22 min
         name somebody
      Crew at work: 3
      42 WIC-4 Gull Wharf, Bram there 1 h 35
         box 49 F, over 41 F since 09:12
         value due 10:52
      45 OU-1 Saltbox Lofts, Odo driving 20 min
      48 RTU-3 Tollgate Dental, Odo new 2 min
      Waiting: 1
      41 OU-3 Saltbox Lofts, Tamsin parts 1 h 12
         ordered: 60-12E4 drive board, due Thu
         locked by Tamsin
      Done today: 1
        39 lacks cylinder number"
    `);
  });

  it("holds every open job once, in lines that fit a phone", () => {
    for (const { job: number } of jobs.filter((j) => j.status !== "done")) {
      expect(text.split("\n").filter((line) => line.startsWith(`${number} `))).toHaveLength(1);
    }
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(46);
  });

  it("calls a job the office's after a quarter of an hour without a name", () => {
    const fresh = boardText(jobs, at("10:30"));
    expect(fresh.split("\n").slice(1, 3).join()).not.toContain("47");
    expect(text).toContain("name somebody");
  });

  it("cuts a long name before the unit's tag: who reads it must know where", () => {
    const person = "Maximiliana Featherstonehaugh";
    const long = jobs.map((one) => ({ ...one, person, site: "Saint Bartholomew's Hospital" }));
    const lines = boardText(long, now).split("\n");
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(46);
    expect(lines).toContain("44 AC-5 Sain..., Maximilia... no access 22 min");
    for (const { job: number, equipment } of long.filter((one) => one.status !== "done"))
      expect(lines.some((line) => line.startsWith(`${number} ${equipment} `))).toBe(true);
  });

  it("says so when nothing is open", () => {
    expect(boardText([], now)).toBe("Open jobs: 0. State of Tue 12 May, 10:42");
  });
});
