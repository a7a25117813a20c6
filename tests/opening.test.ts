import { describe, expect, test } from "vitest";
import { openingFrom, opensJob } from "../src/record/opening.ts";

const world = {
  sites: ["Millrace Dental", "Pinder Hall School", "Old Ferry Bakery", "Harbor Point Hotel"],
  equipment: [
    { tag: "RTU-1", site: "Millrace Dental" },
    { tag: "RTU-2", site: "Millrace Dental" },
    { tag: "RTU-1", site: "Pinder Hall School" },
    { tag: "WIC-1", site: "Old Ferry Bakery" },
    { tag: "OU-4", site: "Harbor Point Hotel" },
  ],
  people: ["tarn", "juno", "gwen"],
};
const nothing = { sites: [], equipment: [], people: ["gwen"] };

function opening(text: string, known: typeof world | typeof nothing = world): object {
  const message = {
    platform: "test",
    id: "1",
    at: "2026-05-12T08:00:00-05:00",
    channel: "south",
    person: "gwen",
    role: "dispatcher" as const,
    text,
    files: [],
  };
  const { channel: _, ...opens } = openingFrom(message, undefined, known);
  return opens;
}

describe("a new job is told apart into place, unit, complaint and person", () => {
  test.each([
    [
      "New job: Pinder Hall School RTU-1 not cooling, Quill with Marla",
      {
        site: "Pinder Hall School",
        equipment: "RTU-1",
        complaint: "not cooling",
        assigned: "quill",
        second: "marla",
      },
    ],
    [
      "New job: Pinder Hall School RTU-1, gym not cooling. Tarn after the dentist",
      {
        site: "Pinder Hall School",
        equipment: "RTU-1",
        complaint: "gym not cooling",
        assigned: "tarn",
      },
    ],
    [
      "new job harbor point hotel OU-4: rooms 101 and 102 warm, 103 fine. Lio",
      {
        site: "Harbor Point Hotel",
        equipment: "OU-4",
        complaint: "rooms 101 and 102 warm, 103 fine",
        assigned: "lio",
      },
    ],
    [
      "New job: Quay Hotel HP-2, rooms warm, no heat, Ife",
      { site: "Quay Hotel", equipment: "HP-2", complaint: "rooms warm, no heat", assigned: "ife" },
    ],
    [
      "New job at the bakery, WIC-1 icing up. Juno",
      {
        site: "Old Ferry Bakery",
        equipment: "WIC-1",
        complaint: "WIC-1 icing up",
        assigned: "juno",
      },
    ],
    [
      "New job: RTU-2 at Millrace Dental, trips on start",
      { site: "Millrace Dental", equipment: "RTU-2", complaint: "trips on start" },
    ],
    [
      "New job - Old Ferry Bakery: walk in warm",
      { site: "Old Ferry Bakery", equipment: null, complaint: "walk in warm" },
    ],
    [
      "New job: Millrace rtu 2, no heat. Juno, Tarn helps",
      { site: "Millrace Dental", equipment: "RTU-2", complaint: "no heat", assigned: "juno" },
    ],
  ])("%s", (text, expected) => {
    expect(opening(text)).toEqual(expected);
  });
});

describe("and where nothing is known beforehand, by where things stand", () => {
  test.each([
    [
      "New job: Hazelport Savings House RTU-1, tellers are cold, comp 1 dead. Sorrel",
      {
        site: "Hazelport Savings House",
        equipment: "RTU-1",
        complaint: "tellers are cold, comp 1 dead",
        assigned: "sorrel",
      },
    ],
    [
      "New job: Norrow Chapel HP-2, spring check. Dov when you can",
      { site: "Norrow Chapel", equipment: "HP-2", complaint: "spring check", assigned: "dov" },
    ],
    [
      "New job: Thornbury Lodge OU-1, dead since the storm",
      { site: "Thornbury Lodge", equipment: "OU-1", complaint: "dead since the storm" },
    ],
    [
      "New job: Lamp Street Deli, reach-in at 50 F. Kip",
      { site: "Lamp Street Deli", equipment: null, complaint: "reach-in at 50 F", assigned: "kip" },
    ],
  ])("%s", (text, expected) => {
    expect(opening(text, nothing)).toEqual(expected);
  });
});

test("only the opening words open a job", () => {
  for (const text of ["New job: x", "new job x", "NEW CALL: x", "New ticket - x"]) {
    expect([text, opensJob(text)]).toEqual([text, true]);
  }
  for (const text of ["done with that job", "new compressor in", "is this a new job?", ""]) {
    expect([text, opensJob(text)]).toEqual([text, false]);
  }
});

test("a machine's number in words is no part of the site's name", () => {
  const text = "New job: Cinder School rooftop three, gym is hot";
  const said = { site: "Cinder School", equipment: "rooftop unit 3", complaint: "gym is hot" };
  const message = {
    ...{ platform: "test", id: "1", at: "2026-05-12T08:00:00-05:00", channel: "south" },
    ...{ person: "gwen", role: "dispatcher" as const, text, files: [] },
  };
  const statement = { kind: "open_job" as const, ...said, said: text, spans: [], rule: "" };
  expect(openingFrom(message, statement, nothing)).toMatchObject(said);
});

test("a person read behind the sentence is the one the chat knows, whether a comma stood there or not", () => {
  const text = "New job: Cinder School RTU-3 gym is hot. Gwen";
  const said = {
    site: "Cinder School",
    equipment: "RTU-3",
    complaint: "gym is hot",
    assigned: "Gwen",
  };
  const message = {
    ...{ platform: "test", id: "1", at: "2026-05-12T08:00:00-05:00", channel: "south" },
    ...{ person: "oda", role: "dispatcher" as const, text, files: [] },
  };
  const statement = { kind: "open_job" as const, ...said, said: text, spans: [], rule: "" };
  expect(openingFrom(message, statement, nothing).assigned).toBe("gwen");
  const known = { ...nothing, people: ["Gwen"] };
  expect(openingFrom(message, statement, known).assigned).toBe("Gwen");
});

test.each([
  ["New job: Alder Foundry RTU-1, no cooling", "Alder Foundry"],
  ["New job: Alder Wharf RTU-1, no cooling", "Alder Wharf"],
  ["New job: alder RTU-1, no cooling", "Alder Wharf"],
  ["New job: Alder Wharf dock office RTU-1, no cooling", "Alder Wharf"],
])("%s is at %s, where the Alder Wharf is known", (text, site) => {
  const known = { ...nothing, sites: ["Alder Wharf"] };
  expect(opening(text, known)).toMatchObject({ site, equipment: "RTU-1" });
});
