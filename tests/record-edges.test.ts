import { describe, expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import type { Job, JobReading, Reading } from "../src/model.ts";
import { equipmentOf, siteOf } from "../src/record/case.ts";
import { faultsInChain, hashLink, type Link } from "../src/record/chain.ts";
import { correctedBy, deniedIn, inherit } from "../src/record/corrections.ts";
import { inches } from "../src/record/import/column.ts";
import { foldMachine } from "../src/record/machine.ts";
import type { Registry } from "../src/record/registry.ts";
import { saidTime } from "../src/record/said-time.ts";
import { r } from "./case-builder.ts";
import { linesOfDay } from "./day-checks.ts";
import { botAt, bring, workAll } from "./support/store-on-disk.ts";

/** Small parts of the record, each at the edge where it turns. */

let count = 0;
function kept(reading: Reading, more: Partial<JobReading> = {}): JobReading {
  count += 1;
  const at = `2026-05-12T09:${String(count % 60).padStart(2, "0")}:00Z`;
  return {
    ...reading,
    id: `1.${count}.0`,
    message: `m${count}`,
    taken: at,
    received: at,
    who: "bram",
    ...more,
  };
}

describe("a correction means", () => {
  const suction = kept(r("pressure", 8e5, { at: "suction" }), {
    message: "a",
    received: "2026-05-12T09:00:00Z",
  });
  const amps = kept(r("current", 8, { subject: "fan" }), {
    message: "b",
    received: "2026-05-12T09:01:00Z",
  });
  test("a reading of its own quantity, however much newer another is", () => {
    expect(correctedBy(r("pressure", 8.1e5), "bram", [suction, amps])).toBe(suction);
    expect(correctedBy(r("voltage", 8), "bram", [suction, amps])).toBeUndefined();
  });
  test("his own before another's, and of one message the nearest in value", () => {
    const theirs = kept(r("pressure", 8.1e5), { who: "ife", received: "2026-05-12T10:00:00Z" });
    expect(correctedBy(r("pressure", 8.1e5), "bram", [suction, theirs])).toBe(suction);
    const near = kept(r("pressure", 7e5), { message: "a", received: "2026-05-12T09:00:00Z" });
    expect(correctedBy(r("pressure", 7.1e5), "bram", [suction, near])).toBe(near);
  });
  test("not what stands at other points", () => {
    const lead = (n: number) =>
      kept(r("insulation_resistance", 84e6, { points: [`lead ${n}`, "ground"] }), { message: "c" });
    const [one, two] = [lead(1), lead(2)];
    const said = r("insulation_resistance", 82e6, { points: ["ground", "lead 2"] });
    expect(correctedBy(said, "bram", [one, two])).toBe(two);
  });
  test("the figure that it says was wrong", () => {
    expect(deniedIn("11.3, not 12.3", r("current", 11.3))).toBe("12.3");
    expect(deniedIn("12.3 should be 11.3", r("current", 11.3))).toBe("12.3");
    expect(deniedIn("11.3", r("current", 11.3))).toBeUndefined();
  });
  test("and keeps the place, points, subject and volts of what it corrects", () => {
    const old = kept(
      r("insulation_resistance", 84e6, {
        ...{ points: ["lead 1", "ground"], subject: "compressor 1", test_voltage: 500 },
      }),
    );
    expect(inherit(r("insulation_resistance", 8.4e6), old)).toMatchObject({
      ...{ value: 8.4e6, points: ["lead 1", "ground"], subject: "compressor 1" },
      test_voltage: 500,
    });
    const other = r("insulation_resistance", 8.4e6, { points: ["lead 3", "ground"] });
    expect(inherit(other, old).points).toEqual(["lead 3", "ground"]);
  });
});

test("a time is the message's day and offset, the day before's where it were in the future", () => {
  const at = "2026-05-12T14:05:00-05:00";
  expect(saidTime(undefined, at)).toBe(at);
  expect(saidTime("13:50", at)).toBe("2026-05-12T13:50:00-05:00");
  expect(saidTime("15:05", at)).toBe("2026-05-12T15:05:00-05:00");
  expect(saidTime("15:06", at)).toBe("2026-05-11T15:06:00-05:00");
  expect(saidTime("24:00", at)).toBe(at);
  expect(saidTime("9:60", at)).toBe(at);
  expect(saidTime("noon", at)).toBe(at);
  expect(saidTime("2026-05-10T08:00:00-05:00", at)).toBe("2026-05-10T08:00:00-05:00");
  expect(saidTime("2026-05-10T99:00:00-05:00", at)).toBe(at);
});

test("a chain tells which entry is missing, and which was altered", () => {
  const links: Link[] = [];
  for (let place = 1; place <= 4; place++) {
    const link = {
      ...{ version: 1, job: 7, place, at: `2026-05-12T09:0${place}:00Z`, person: 1 },
      ...{ platform: "test", message: `m${place}`, facts: "{}", words: "" },
    };
    links.push({ ...link, hash: hashLink(link, links.at(-1)?.hash ?? "") });
  }
  expect(faultsInChain(links)).toEqual([]);
  expect(faultsInChain(links.filter(({ place }) => place !== 2))).toEqual([
    "job 7, entry 3: entry 2 is missing before it",
  ]);
  expect(faultsInChain(links.slice(1))).toEqual(["job 7, entry 2: entry 1 is missing before it"]);
  expect(
    faultsInChain(links.map((link) => (link.place === 3 ? { ...link, facts: "[]" } : link))),
  ).toEqual(["job 7, entry 3 (2026-05-12T09:03:00Z): was altered after it was written"]);
});

describe("the circuit", () => {
  const circuitAfter = (...readings: Reading[]): string =>
    foldMachine(
      [],
      readings.map((one) => kept(one)),
    ).circuit;
  test("is charged where more than the air's pressure is read, and nothing is known yet", () => {
    expect(circuitAfter(r("pressure", 8e5))).toBe("charged");
    expect(circuitAfter(r("pressure", 0))).toBe("unknown");
    expect(circuitAfter(r("voltage", 200_000))).toBe("unknown");
  });
  test("under vacuum, recovered, charged: the last word counts, and a pressure does not undo it", () => {
    const recovered = r("mass", 3, { action: "recovered" });
    expect(circuitAfter(r("pressure", 8e5), recovered)).toBe("recovered");
    expect(circuitAfter(recovered, r("vacuum", 50))).toBe("vacuum");
    expect(circuitAfter(recovered, r("pressure", 3e6))).toBe("recovered");
    expect(circuitAfter(r("vacuum", 50), r("mass", 3, { action: "charged" }))).toBe("charged");
  });
});

describe("what the office knows", () => {
  const registry: Registry = {
    ...{ codes: [], people: [], cylinders: [], parts: [], limits: [] },
    sites: [{ name: "Gull Wharf" }, { name: "North Pier" }],
    equipment: [
      { tag: "OU-3", site: "Gull Wharf", kind: "outdoor unit" },
      { tag: "BC-1", site: "Gull Wharf", kind: "branch box", parent: "OU-3", places: ["101"] },
      { tag: "OU-3", site: "North Pier", refrigerant: "R-32" },
    ],
  };
  const bot = botAt(":memory:");
  const [line = ""] = linesOfDay("day-a");
  bring(bot, line, 0);
  workAll(bot);
  const [some] = allJobs(bot.memory);
  const job = (site: string | null, equipment: string | null): Job => {
    if (some === undefined) throw new Error("no job");
    return { ...some, site, equipment };
  };
  test("of a unit is told of the one at the job's own site", () => {
    expect(equipmentOf(job("North Pier", "ou 3"), registry).refrigerant).toBe("R-32");
    expect(equipmentOf(job("Gull Wharf", "OU3"), registry).kind).toBe("outdoor unit");
    expect(equipmentOf(job("Old Mill", "OU-3"), registry)).toEqual({
      tag: "OU-3",
      site: "Old Mill",
    });
  });
  test("of a site is its own units and rooms alone", () => {
    expect(siteOf(job("Gull Wharf", null), registry)).toEqual({
      name: "Gull Wharf",
      tree: [
        { tag: "OU-3", kind: "outdoor unit" },
        { tag: "BC-1", parent: "OU-3", kind: "branch box", places: ["101"] },
      ],
    });
    expect(siteOf(job(null, null), registry)).toEqual({});
  });
});

test("inches are read as fractions, whole and broken, and never by nothing", () => {
  const read = (cell: string) => inches(cell, { heading: "size", decimal: "." });
  expect(read("3/8")).toMatchObject({ value: 0.375 });
  expect(read('1 1/8"')).toMatchObject({ value: 1.125 });
  expect(read("1-5/8 in")).toMatchObject({ value: 1.625 });
  expect(read("0.375")).toMatchObject({ value: 0.375 });
  expect(read("3/0")).not.toHaveProperty("value");
});
