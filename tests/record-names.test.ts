import { describe, expect, test } from "vitest";
import type { Message } from "../src/model.ts";
import { withoutAddress } from "../src/record/address.ts";
import { namesIn, plainTag, sameWord, wordsOf } from "../src/record/names.ts";
import { openingFrom } from "../src/record/opening.ts";

/** What a message names, and what the words that open a job say. */

const world = {
  sites: [
    ...["Millrace Dental", "Pinder Hall School", "Upper Brook Court", "Lower Brook Court"],
    ...["Brook Field Court", "12 Quay"],
  ],
  equipment: [
    { tag: "RTU-1", site: "Millrace Dental", places: ["Map Room", "12", "12a"] },
    { tag: "AC 5B", site: "Pinder Hall School", places: ["Room 14"] },
    { site: "Pinder Hall School", places: ["Gym", "-"] },
  ],
};
const named = (text: string) => namesIn(text, world);

describe("a site is named by", () => {
  test.each([
    ["Millrace Dental is warm", ["Millrace Dental"]],
    ["millrace's filter is in", ["Millrace Dental"]],
    ["at the dentist", ["Millrace Dental"]],
    ["milrace is cold", ["Millrace Dental"]],
    ["pinder called", ["Pinder Hall School"]],
    // words that others share tell only in their row
    ["upper brook court, no heat", ["Upper Brook Court"]],
    ["brook is flooded", []],
    ["lower the setpoint", []],
    ["brook and upper", []],
    ["the hall light is on", []],
    ["12 psi", []],
    ["brook court", ["Upper Brook Court", "Lower Brook Court"]],
    ["brook field", ["Brook Field Court"]],
    ["nothing at all", []],
    ["", []],
    ["millrace dental and pinder hall school", ["Pinder Hall School"]],
  ])("%j", (text, sites) => {
    expect(named(text).sites).toEqual(sites);
  });
});

test("a word is another by its stem, or by a slip of one letter in seven or more", () => {
  for (const [said, meant] of [
    ...[
      ["dentist", "dental"],
      ["clinical", "clinic"],
      ["hospitl", "hospital"],
    ],
    ...[
      ["hospitaal", "hospital"],
      ["hospitel", "hospital"],
      ["hospital", "hospital"],
    ],
  ])
    expect([said, meant, sameWord(said ?? "", meant ?? "")]).toEqual([said, meant, true]);
  for (const [said, meant] of [
    ...[
      ["harbor", "hardor"],
      ["house", "mouse"],
      ["hosp", "hospital"],
      ["hospiatl", "hospital"],
    ],
    ...[
      ["cars", "care"],
      ["hxspitel", "hospital"],
      ["hospitalxx", "hospital"],
      ["", "hospital"],
    ],
  ])
    expect([said, meant, sameWord(said ?? "", meant ?? "")]).toEqual([said, meant, false]);
});

test("words are small, without possessives and signs; a tag is the same however it is spaced", () => {
  expect(wordsOf("Hazelport's RTU-1, 3.4 A — café")).toEqual([
    "hazelport",
    "rtu",
    "1",
    "3",
    "4",
    "a",
    "café",
  ]);
  expect(wordsOf("  ")).toEqual([]);
  for (const tag of ["RTU-1", "rtu 1", "Rtu_1", "rtu1"]) expect(plainTag(tag)).toBe("rtu1");
});

describe("a unit, a room, a job is named by", () => {
  test.each([
    ["rtu 1 suction 118", { tags: ["RTU-1"] }],
    ["RTU#1", { tags: ["RTU-1"] }],
    ["rtu 11", {}],
    ["xrtu1", {}],
    ["ac-5b is down", { tags: ["AC 5B"] }],
    ["map room warm", { places: ["Map Room"] }],
    ["the map", {}],
    ["room 14 hot", { places: ["Room 14"] }],
    ["gym hot", { places: ["Gym"] }],
    // a bare number is a room only where the words make it one
    ["room 12 is cold", { places: ["12"] }],
    ["12 warm", { places: ["12"] }],
    ["12, 12a and 15 warm", { places: ["12", "12a"] }],
    ["in 12 and 15", { places: ["12"] }],
    ["12 psi", {}],
    ["in 12 minutes", {}],
    ["back in 12", {}],
    ["3.12 amps", {}],
    ["job 14 done", { jobs: [14] }],
    ["ticket no. 7", { jobs: [7] }],
    ["#14 done", { jobs: [14] }],
    ["#14: warm again", { jobs: [14] }],
    ["status of #14", { jobs: [14] }],
    ["move that to #14", { jobs: [14] }],
    // a wire, a compressor, a gate, a time
    ["wire is #6", {}],
    ["#10 wire, 40 amp fuse", {}],
    ["comp #2 18 amps", {}],
    ["#1: 18.2 #2: 18.4", {}],
    ["gate #3316", {}],
    ["topped 1#6oz", {}],
    ["call 8 am", {}],
    ["last call 2 days ago", {}],
    ["call 9:30", {}],
    ["job is done", {}],
  ])("%j", (text, found) => {
    expect(named(text)).toEqual({ ...{ jobs: [], sites: [], tags: [], places: [] }, ...found });
  });
});

test("what is said to the bot is blanked out where it stood, and nothing else", () => {
  for (const [text, rest] of [
    ["@readback lead 2", "          lead 2"],
    ["hey readback, status", "              status"],
    ["what next, readback?", "what next          ?"],
    ["bot: why", "     why"],
  ] as const)
    expect(withoutAddress(text)).toEqual({ text: rest, toBot: true });
  expect(withoutAddress("does readback know it")).toMatchObject({
    ...{ text: "does readback know it", toBot: true },
  });
  expect(withoutAddress("bottom lead 2")).toEqual({ text: "bottom lead 2", toBot: false });
});

describe("the words that open a job", () => {
  const opening = (text: string, more: Partial<Message> = {}, said?: object) => {
    const message: Message = {
      ...{ platform: "test", id: "1", at: "2026-05-12T08:00:00-05:00", channel: "south" },
      ...{ person: "gwen", role: "dispatcher", text, files: [], ...more },
    };
    const statement = {
      ...({ kind: "open_job", said: text, spans: [], rule: "", ...said } as const),
    };
    return openingFrom(message, said === undefined ? undefined : statement, {
      ...{ ...world, people: ["Tarn", "juno"] },
    });
  };
  test("name the place that stands in front, though another is named behind", () => {
    expect(
      opening("New job: Pinder Hall School AC-5B, no heat. Juno after Millrace"),
    ).toStrictEqual({
      ...{ site: "Pinder Hall School", equipment: "AC 5B", complaint: "no heat" },
      ...{ assigned: "juno", channel: "south" },
    });
  });
  test("are of the thread they stand in, and send a technician who sends nobody", () => {
    const tech = { role: "tech", person: "bram" } as const;
    expect(opening("new job: Millrace Dental, warm", { ...tech, thread: "t1" })).toMatchObject({
      ...{ assigned: "bram", thread: "t1" },
    });
    expect(opening("new job: Millrace Dental, warm. Tarn", tech).assigned).toBe("Tarn");
    expect(opening("new job: Millrace Dental, warm")).not.toHaveProperty("assigned");
    expect(opening("new job: Millrace Dental, warm")).not.toHaveProperty("thread");
    expect(opening("new job for tomorrow: Millrace Dental, warm", tech)).not.toHaveProperty(
      "assigned",
    );
  });
  test("name somebody unknown only in a short last sentence of its own", () => {
    expect(opening("New job: Millrace Dental, warm. Dov when free").assigned).toBe("dov");
    expect(opening("New job: Millrace Dental, warm - Dov").assigned).toBe("dov");
    expect(opening("New job: Millrace Dental, warm, Dov.")).toMatchObject({
      ...{ complaint: "warm", assigned: "dov" },
    });
    for (const text of [
      "New job: Millrace Dental, warm. Tenant says that it was cold",
      "New job: Millrace Dental, warm. please hurry",
      "New job: Millrace Dental, Tenants are hot",
    ])
      expect([text, opening(text).assigned]).toEqual([text, undefined]);
    // who is known may say more
    expect(opening("New job: Millrace Dental, warm. tarn as soon as he gets out").assigned).toBe(
      "Tarn",
    );
  });
  test("that the lists don't know say the site before the unit, as long as it is a name", () => {
    const site = (text: string, said?: object) => opening(text, {}, said).site;
    expect(site("New job at the Gull Wharf RTU-9, warm")).toBe("Gull Wharf");
    expect(site("New job: site: Gull Wharf - RTU-9, warm")).toBe("Gull Wharf");
    expect(site("New job: RTU-9, warm")).toBeNull();
    expect(site("New job: RTU-9, warm", { site: "Gull Wharf" })).toBe("Gull Wharf");
    expect(site("New job: they called and said that it is too warm again")).toBeNull();
    // its kind is a known site's, the name before it is another
    expect(site("New job: Quay school RTU-9, warm")).toBe("Quay school");
    expect(site("New job: the school RTU-9, warm")).toBe("Pinder Hall School");
  });
  test("say the unit as it is written, else as the reader understood it, never a gas", () => {
    const unit = (text: string, said?: object) => opening(text, {}, said).equipment;
    expect(unit("New job: Gull Wharf HP 7, warm")).toBe("HP 7");
    expect(unit("New job: Gull Wharf, R-410A low", { equipment: "OU-2" })).toBe("OU-2");
    expect(unit("New job: Gull Wharf, R-410A low")).toBeNull();
    expect(unit("New job: Millrace rtu1 warm")).toBe("RTU-1");
  });
  test("say the complaint behind the place, else what the reader understood", () => {
    const said = { complaint: "no cooling" };
    expect(opening("New job: Millrace Dental", {}, said).complaint).toBe("no cooling");
    expect(opening("New job: Millrace Dental, warm.", {}, said).complaint).toBe("warm");
    expect(opening("New job: Millrace Dental")).not.toHaveProperty("complaint");
  });
});
