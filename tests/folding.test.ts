import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job, JobStatement, Reading, Statement } from "../src/model.ts";
import type { Entry, Facts } from "../src/record/entry.ts";
import { gripsOf } from "../src/record/grips.ts";
import { foldJob } from "../src/record/job.ts";
import { foldVisits, laborHours } from "../src/record/labor.ts";
import { foldParts, waitedFor } from "../src/record/parts.ts";
import { isCurrent } from "../src/record/readings.ts";
import { foldStatus } from "../src/record/status.ts";
import type { Status } from "../src/vocabulary.ts";
import { type Part, r, seen } from "./case-builder.ts";
import { act, entryOf, line, minuteOf } from "./support/job-lines.ts";

/** How a job's entries become the job: what stands, who did what, what is waited for. */

const base = { said: "", spans: [], rule: "test" } as const;
type StatusSaid = Extract<Statement, { kind: "status" }>;
const said = (status: Status, more: Partial<StatusSaid> = {}): StatusSaid => ({
  ...{ kind: "status", status, ...base, ...more },
});

describe("hours on site", () => {
  const people = ["bram", "ife"] as const;
  const words = fc.array(
    fc.tuple(
      fc.constantFrom(...people),
      fc.constantFrom<Status>("on_site", "left_site", "done", "waiting_for_parts", "no_access"),
      fc.integer({ min: 1, max: 90 }),
    ),
    { maxLength: 12 },
  );
  test("are those between arriving and the next word that ends it, summed over people", () => {
    fc.assert(
      fc.property(words, (all) => {
        let minute = 0;
        const lines: JobStatement[] = [];
        const since = new Map<string, number>();
        let minutes = 0;
        for (const [who, status, later] of all) {
          minute += later;
          lines.push(line(minute, said(status), who));
          const from = since.get(who);
          if (status === "on_site") since.set(who, from ?? minute);
          else {
            minutes += from === undefined ? 0 : minute - from;
            since.delete(who);
          }
        }
        const visits = foldVisits(lines);
        expect(laborHours(visits)).toBeCloseTo(Math.round((minutes / 60) * 100) / 100, 9);
        // who has not left is still there
        expect(
          visits
            .filter(({ to }) => to === undefined)
            .map(({ person }) => person)
            .sort(),
        ).toEqual([...since.keys()].sort());
        const begun = visits.map(({ from }) => Date.parse(from));
        expect(begun).toEqual([...begun].sort((a, b) => a - b));
      }),
    );
  });
  test("are without the way there and back", () => {
    const visits = foldVisits([
      ...[line(0, said("on_the_way", { where: "Gull Wharf" })), line(30, said("on_site"))],
      ...[line(90, said("on_the_way", { where: "shop" })), line(120, said("done"))],
    ]);
    expect(visits.map(({ kind }) => kind)).toEqual(["travel", "site", "travel"]);
    expect(laborHours(visits)).toBe(1);
  });
});

describe("the status of a job", () => {
  const statusAfter = (...lines: readonly JobStatement[]) => foldStatus(lines, minuteOf(0));
  test("is open, and nobody's, until somebody says one", () => {
    expect(statusAfter()).toEqual({ status: "open", status_at: minuteOf(0), person: null });
    expect(statusAfter(line(3, act("locked")))).toEqual({
      ...{ status: "open", status_at: minuteOf(0), person: null },
    });
  });
  test("is the last by the time that it was said for", () => {
    const early = line(9, said("on_site", { time: minuteOf(2) }), "ife");
    expect(statusAfter(line(5, said("done")), early)).toEqual({
      ...{ status: "done", status_at: minuteOf(5), person: "bram" },
    });
    expect(statusAfter(line(5, said("on_site")), line(7, said("left_site"), "ife"))).toEqual({
      ...{ status: "left_site", status_at: minuteOf(7), person: "ife" },
    });
  });
  test.each(["done", "waiting_for_parts", "no_access"] as const)(
    "stays %s for who goes home after it",
    (status) => {
      expect(statusAfter(line(5, said(status)), line(6, said("left_site"))).status).toBe(status);
      expect(statusAfter(line(5, said(status)), line(6, said("on_site"))).status).toBe("on_site");
    },
  );
  test("is left by who rolls off without saying where to, from where he was", () => {
    const rolls = said("on_the_way");
    for (const status of ["on_site", "waiting_for_parts", "no_access"] as const)
      expect(statusAfter(line(1, said(status)), line(2, rolls)).status).not.toBe("on_the_way");
    expect(statusAfter(line(1, said("on_site")), line(2, rolls)).status).toBe("left_site");
    // another's way, a way with a place, and the first way are ways
    expect(statusAfter(line(1, said("on_site")), line(2, rolls, "ife")).status).toBe("on_the_way");
    expect(statusAfter(line(1, said("on_site")), line(2, { ...rolls, where: "shop" })).status).toBe(
      "on_the_way",
    );
    const onward = { ...rolls, where: "the next one" };
    expect(statusAfter(line(1, said("on_site")), line(2, onward)).status).toBe("left_site");
    expect(statusAfter(line(1, rolls), line(2, rolls)).status).toBe("on_the_way");
    expect(statusAfter(line(1, said("left_site")), line(2, rolls)).status).toBe("on_the_way");
  });
  test("is not changed by an errand of who is not there yet", () => {
    const errand = said("left_site", { errand: true });
    expect(statusAfter(line(1, errand)).status).toBe("open");
    expect(statusAfter(line(1, said("on_site")), line(2, errand)).status).toBe("left_site");
    expect(statusAfter(line(1, said("on_site")), line(2, errand, "ife")).status).toBe("on_site");
  });
});

describe("parts", () => {
  type PartSaid = Extract<Statement, { kind: "part" }>;
  const part = (
    name: string,
    state: PartSaid["state"],
    more: Partial<PartSaid> = {},
  ): PartSaid => ({
    ...{ kind: "part", part: name, state, ...base, ...more },
  });
  const rows = (...all: readonly Statement[]) => foldParts(all.map((one, at) => line(at, one)));
  const waits = (...all: readonly Statement[]) => waitedFor(rows(...all)).map((one) => one.part);
  test("are a row for each state, not for each word", () => {
    expect(
      rows(
        part("contactor", "needed"),
        part("contactors", "needed"),
        part("the contactor", "ordered"),
      ).map((row) => `${row.part} ${row.state} ${row.at.slice(14, 16)}`),
    ).toEqual(["contactor needed 00", "contactor ordered 02"]);
  });
  test("are known by their number before their name", () => {
    const two = rows(
      part("motor", "ordered", { number: "AB-12" }),
      part("motor", "ordered", { number: "ab 13" }),
      part("fan motor", "ordered", { number: "ab12", quantity: 2 }),
    );
    expect(two.map(({ part: name, number, quantity }) => [name, number, quantity])).toEqual([
      ["motor", "ab12", 2],
      ["motor", "ab 13", undefined],
    ]);
    expect(rows(part("motor", "needed"), part("", "ordered", { number: "7" })).at(-1)?.part).toBe(
      "part",
    );
    expect(
      rows(part("motor", "needed", { number: "7" }), part("", "ordered", { number: "7" })).at(-1)
        ?.part,
    ).toBe("motor");
  });
  test("are waited for until they are fitted, here or declined", () => {
    expect(waits(part("contactor", "needed"))).toEqual(["contactor"]);
    expect(waits(part("contactor", "ordered"), part("contactor", "needed"))).toEqual(["contactor"]);
    expect(waits(part("contactor", "needed"), part("contactor", "fitted"))).toEqual([]);
    expect(
      waits(part("contactor", "ordered"), part("contactor", "ordered", { arrived: true })),
    ).toEqual([]);
    expect(waits(part("contactor", "needed", { decided: "declined" }))).toEqual([]);
    expect(
      waits(part("contactor", "needed"), part("contactor", "needed", { decided: "declined" })),
    ).toEqual([]);
    expect(waits(part("contactor", "needed", { decided: "approved" }))).toEqual(["contactor"]);
    // who orders it after all wants it again
    expect(
      waits(part("contactor", "needed", { decided: "declined" }), part("contactor", "ordered")),
    ).toEqual(["contactor"]);
    expect(waits(part("belt", "needed"), part("contactor", "fitted"))).toEqual(["belt"]);
  });
  test("fitted under a shorter name are the one that was waited for under a fuller", () => {
    const motor = part("condenser fan motor", "ordered");
    expect(waits(motor, part("motor", "fitted"))).toEqual([]);
    expect(rows(motor, part("new motor", "fitted")).at(-1)?.part).toBe("condenser fan motor");
    expect(waits(part("motor", "ordered"), part("condenser fan motor", "fitted"))).toEqual([]);
    // of two nobody knows which
    expect(waits(motor, part("blower motor", "ordered"), part("motor", "fitted"))).toEqual([
      "condenser fan motor",
      "blower motor",
    ]);
    // other numbers are other parts; half a word is none
    expect(waits({ ...motor, number: "7" }, part("motor", "fitted", { number: "8" }))).toEqual([
      "condenser fan motor",
    ]);
    expect(waits(motor, part("otor", "fitted"))).toEqual(["condenser fan motor"]);
  });
  test("replaced are fitted, unless it was planned, or no thing was named", () => {
    const states = (...all: readonly Statement[]) =>
      rows(...all).map((row) => `${row.part} ${row.state}`);
    expect(states(act("replaced", { what: "belt" }))).toEqual(["belt fitted"]);
    expect(states(act("replaced", { what: "belt", planned: true }))).toEqual([]);
    expect(states(act("replaced"), act("cleaned", { what: "coil" }))).toEqual([]);
    for (const what of ["it", "that", "both", "one", "everything"])
      expect(states(act("replaced", { what }))).toEqual([]);
    expect(states(act("replaced", { what: "one relay" }))).toEqual(["one relay fitted"]);
  });
  test("that the utility fitted are none of the job's", () => {
    const theirs = seen("line_work_done");
    const both = (name: PartSaid["state"]) =>
      foldParts([
        line(1, theirs),
        line(1, part("transformer", name)),
        line(2, part("fuse", "fitted")),
      ]);
    expect(both("fitted").map((row) => row.part)).toEqual(["fuse"]);
    expect(both("needed").map((row) => row.part)).toEqual(["transformer", "fuse"]);
  });
  test("keep all that was told of them, and say nothing that was not", () => {
    const full = part("board", "ordered", {
      ...{ number: "B-7", quantity: 2, due: "friday", due_on: "2026-05-15" },
      ...{ arrived: true, decided: "approved" },
    });
    expect(rows(full)[0]).toMatchObject({
      ...{ number: "B-7", quantity: 2, due: "friday", due_on: "2026-05-15" },
      ...{ arrived: true, decided: "approved" },
    });
    expect(Object.keys(rows(part("board", "needed"))[0] ?? {}).sort()).toEqual([
      ...["at", "message", "part", "state", "who"],
    ]);
    // "the part is here" without a name is no other part
    expect(waits(part("board", "needed"), part("", "needed"))).toEqual(["board", "part"]);
    expect(waits(part("board", "needed", { decided: "declined" }), part("belt", "needed"))).toEqual(
      ["belt"],
    );
  });
  test("told again with a day keep what was told before", () => {
    const [row, ...more] = rows(
      part("board", "ordered", { number: "B-7" }),
      part("board", "ordered", { due: "thursday", due_on: "2026-05-14" }),
      part("board", "ordered"),
    );
    expect(more).toEqual([]);
    expect(row).toMatchObject({ number: "B-7", due: "thursday", due_on: "2026-05-14" });
  });
});

const opens = { site: "Gull Wharf", equipment: "OU-3", channel: "south" };

interface Told {
  readonly parts?: readonly Part[];
  readonly facts?: Partial<Extract<Facts, { kind: "note" }>>;
  readonly who?: string;
  readonly text?: string;
}

const note = (place: number, { parts = [], facts = {}, ...more }: Told = {}): Entry =>
  entryOf(place, {
    readings: parts.flatMap((one) => ("figure" in one ? [one] : [])),
    statements: parts.flatMap((one) => ("figure" in one ? [] : [one])),
    ...more,
    ...facts,
  });
const other = (place: number, facts: Facts): Entry => ({ ...entryOf(place), facts });
const first = entryOf(0, { who: "maren", role: "dispatcher", text: "New job", opens });
const idOf = (place: number): string => entryOf(place).message;

function jobOf(...entries: readonly Entry[]): Job {
  const job = foldJob([first, ...entries]);
  if (job === undefined) throw new Error("no job");
  return job;
}

const standing = (job: Job): readonly unknown[] =>
  job.readings.filter(isCurrent).map(({ value }) => value);

describe("a reading stands", () => {
  const amps = (value: number, more: Partial<Reading> = {}) => r("current", value, more);
  test("until its message is edited, deleted, undone or moved", () => {
    const said12 = note(1, { parts: [amps(12)] });
    expect(standing(jobOf(said12))).toEqual([12]);
    const edit = note(2, { parts: [amps(13)], facts: { edits: idOf(1) } });
    expect(standing(jobOf(said12, edit))).toEqual([13]);
    expect(jobOf(said12, edit).readings[0]?.replaced_by).toBe("1.2.0");
    for (const facts of [
      { kind: "delete", message: idOf(1) },
      { kind: "undo", places: [1] },
    ] as const)
      expect(standing(jobOf(said12, other(2, facts)))).toEqual([]);
    // a deleted undo undoes nothing; a deleted edit leaves the first words
    const undo = other(2, { kind: "undo", places: [1] });
    expect(standing(jobOf(said12, undo, other(3, { kind: "delete", message: idOf(2) })))).toEqual([
      12,
    ]);
    expect(standing(jobOf(said12, edit, other(3, { kind: "delete", message: idOf(2) })))).toEqual([
      12,
    ]);
    expect(standing(jobOf(said12, edit, other(3, { kind: "delete", message: idOf(1) })))).toEqual(
      [],
    );
  });
  test("in the time of its message, edited or not", () => {
    const all = jobOf(
      ...[note(1, { parts: [amps(12)] }), note(2, { parts: [amps(20)] })],
      note(3, { parts: [amps(13)], facts: { edits: idOf(1) } }),
    );
    expect(standing(all)).toEqual([13, 20]);
    expect(all.readings.find(({ value }) => value === 13)?.taken).toBe(minuteOf(1));
  });
  test("whatever order its entries were written in", () => {
    const entries = [
      ...[note(1, { parts: [amps(12)] }), note(2, { parts: [amps(20)] })],
      note(3, { parts: [amps(13)], facts: { edits: idOf(1) } }),
      note(4, { parts: [amps(14)], facts: { edits: idOf(1) } }),
      ...[other(5, { kind: "delete", message: idOf(2) }), note(6, { parts: [amps(21)] })],
    ];
    const straight = jobOf(...entries);
    expect(standing(straight)).toEqual([14, 21]);
    fc.assert(
      fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (mixed) => {
        expect(jobOf(...mixed)).toEqual(straight);
      }),
    );
  });
  test("in the order of its messages' names where they are of one moment, however they arrived", () => {
    const at = minuteOf(1);
    const entries = [1, 2, 3, 4].map((place) => ({
      ...note(place, { parts: [amps(place)], facts: place === 4 ? { edits: idOf(9) } : {} }),
      at,
      message: `m${5 - place}`,
    }));
    const values = (some: readonly Entry[]) => jobOf(...some).readings.map(({ value }) => value);
    expect(values(entries)).toEqual([4, 3, 2, 1]);
    expect(values([...entries].reverse())).toEqual([4, 3, 2, 1]);
    // of two edits of one moment the one with the later name stands
    const edits = [2, 3].map((place) => ({
      ...note(place, { parts: [amps(place)], facts: { edits: idOf(1) } }),
      at,
    }));
    const original = note(1, { parts: [amps(1)] });
    expect(standing(jobOf(original, ...edits))).toEqual([3]);
    expect(standing(jobOf(original, ...edits.reverse()))).toEqual([3]);
  });
  test("beside its like: an edit replaces each by the one of its kind and place", () => {
    const edited = jobOf(
      note(1, { parts: [amps(1), r("voltage", 460), amps(2), amps(3, { at: "control" })] }),
      note(2, {
        parts: [r("voltage", 470), amps(4), amps(5)],
        facts: { edits: idOf(1) },
      }),
    );
    const by = new Map(edited.readings.map(({ value, replaced_by }) => [value, replaced_by]));
    expect([by.get(1), by.get(460), by.get(2), by.get(3)]).toEqual([
      ...["1.2.1", "1.2.0", "1.2.2", "1.2"],
    ]);
  });
  test("beside what was read elsewhere: an edit's reading of another place, point or plate is another", () => {
    const successor = (was: Partial<Reading>, is: Partial<Reading>) =>
      jobOf(
        note(1, { parts: [amps(1, was)] }),
        note(2, { parts: [amps(2, is)], facts: { edits: idOf(1) } }),
      ).readings.find(({ value }) => value === 1)?.replaced_by;
    const others = [{ at: "control" }, { rating: "RLA" }, { points: ["L1"] }] as const;
    for (const more of others) {
      expect(successor(more, more)).toBe("1.2.0");
      expect(successor(more, {})).toBe("1.2");
      expect(successor({}, more)).toBe("1.2");
    }
  });
  test("or falls, as its author answers whether it is right", () => {
    const doubted = note(1, { parts: [amps(120, { doubtful: true }), amps(9)] });
    const ids = jobOf(doubted).readings.map(({ id }) => id);
    const answered = (stands: boolean) =>
      jobOf(doubted, other(2, { kind: "answer", readings: ids.slice(0, 1), stands }));
    expect(jobOf(doubted).readings[0]?.doubtful).toBe(true);
    expect(answered(true).readings[0]).not.toHaveProperty("doubtful");
    expect(standing(answered(true))).toEqual([120, 9]);
    expect(standing(answered(false))).toEqual([9]);
  });
  test("until a correction that itself stands replaces it", () => {
    const wrong = note(1, { parts: [amps(12)] });
    const right = note(2, {
      parts: [amps(13)],
      facts: { replaces: [{ was: "1.1.0", by: 0 }] },
    });
    expect(standing(jobOf(wrong, right))).toEqual([13]);
    expect(jobOf(wrong, right).readings[0]?.replaced_by).toBe("1.2.0");
    expect(standing(jobOf(wrong, right, other(3, { kind: "undo", places: [2] })))).toEqual([12]);
    const back = note(3, { facts: { replaces: [{ was: "1.1.0", by: "1.1.0" }] } });
    expect(standing(jobOf(wrong, right, back))).toEqual([12, 13]);
  });
});

describe("the job tells", () => {
  test("who worked on it: technicians that did, read or sent something that stands", () => {
    const worked = (told: Told) => jobOf(note(1, told)).people;
    expect(worked({ parts: [r("current", 3)] })).toEqual(["bram"]);
    expect(worked({ parts: [act("cleaned")] })).toEqual(["bram"]);
    expect(
      worked({ facts: { files: [{ name: "a", type: "image/png", size: 1, sha256: "0" }] } }),
    ).toEqual(["bram"]);
    expect(worked({ text: "hello" })).toEqual([]);
    const talk = [
      { kind: "question", question: "why", ...base },
      { kind: "note", about: "room", ...base },
      { kind: "open_job", ...base },
    ] as const;
    for (const one of talk) expect(worked({ parts: [one] })).toEqual([]);
    expect(worked({ parts: [r("current", 3)], facts: { role: "dispatcher" } })).toEqual([]);
    expect(
      jobOf(note(1, { parts: [act("cleaned")] }), other(2, { kind: "undo", places: [1] })).people,
    ).toEqual([]);
    expect(
      jobOf(
        ...[note(1, { parts: [act("cleaned")], who: "ife" }), note(2, { parts: [act("locked")] })],
        note(3, { parts: [act("locked")], who: "ife" }),
      ).people,
    ).toEqual(["ife", "bram"]);
  });
  test("the words that stand, in order, each by what it is", () => {
    const job = jobOf(
      note(1, { text: "12 A", parts: [act("cleaned"), r("current", 12)] }),
      note(2, { text: "cleaned", parts: [act("cleaned")] }),
      note(3, { facts: { files: [{ name: "a", type: "image/png", size: 1, sha256: "0" }] } }),
      ...[note(4, { text: "hm" }), note(5, { text: "gone" })],
      other(6, { kind: "delete", message: idOf(5) }),
    );
    expect(job.timeline.map(({ kind, says }) => `${kind}: ${says}`)).toEqual([
      ...["opened: New job", "reading: 12 A", "action: cleaned", "file: ", "note: hm"],
    ]);
    const { text: _, ...silent } = note(7);
    expect(jobOf(silent).timeline.at(-1)?.says).toBe("[erased]");
  });
  test("the opening as it stands now", () => {
    const moved = { site: "Hazelport School", equipment: null, channel: "south" };
    const edit = note(1, { who: "maren", facts: { opens: moved, edits: first.message } });
    expect(jobOf(edit)).toMatchObject({
      site: "Hazelport School",
      equipment: null,
      opened: first.at,
    });
    expect(jobOf(edit, other(2, { kind: "delete", message: edit.message })).site).toBe(
      "Gull Wharf",
    );
    expect(foldJob([note(1)])).toBeUndefined();
  });
  test("nothing of what was taken back or removed", () => {
    const words = note(1, {
      parts: [
        ...[said("on_site"), act("locked"), act("charged", { circuit: "charged" })],
        act("replaced", { what: "belt" }),
      ],
    });
    const untouched = jobOf();
    expect(jobOf(words)).toMatchObject({
      ...{ status: "on_site", machine: { power: "locked" }, parts: [{}], visits: [{}] },
    });
    const gone: readonly Facts[] = [
      { kind: "undo", places: [1] },
      { kind: "delete", message: idOf(1) },
      { kind: "move", message: idOf(1), to: 2 },
    ];
    for (const facts of gone) {
      const { status, machine, parts, visits, labor_hours, person } = jobOf(words, other(2, facts));
      const { status: open, machine: unknown } = untouched;
      expect({ status, machine, parts, visits, labor_hours, person }).toEqual({
        ...{ status: open, machine: unknown, parts: [], visits: [], labor_hours: 0, person: null },
      });
    }
  });
  test("what its opening said, and nothing that it did not say", () => {
    const all = { ...opens, complaint: "warm", assigned: "ife", thread: "t1" };
    expect(foldJob([entryOf(0, { opens: all })])).toMatchObject({
      ...{ complaint: "warm", assigned: "ife", thread: "t1", clocks: [], file: { gaps: [] } },
    });
    for (const field of ["complaint", "assigned", "thread"])
      expect(jobOf()).not.toHaveProperty(field);
  });
  test("the weights of gas that stand, and no other weights", () => {
    const kg = (value: number, more: Partial<Reading>) => r("mass", value, more);
    const job = jobOf(
      note(1, {
        parts: [
          ...[
            kg(3, { action: "recovered" }),
            kg(1.5, { action: "recovered" }),
            kg(4, { action: "charged" }),
          ],
          ...[kg(9, {}), kg(9, { action: "charged", rating: "nameplate_charge" })],
          ...[
            kg(9, { action: "charged", earlier: true }),
            kg(9, { action: "charged", doubtful: true }),
          ],
          r("mass", "OL", { action: "charged" }),
        ],
      }),
    );
    expect(job.refrigerant).toEqual({ recovered_kg: 4.5, charged_kg: 4 });
    expect(
      jobOf(note(1, { parts: [kg(0.1, { action: "charged" }), kg(0.2, { action: "charged" })] }))
        .refrigerant.charged_kg,
    ).toBe(0.3);
  });
  test("the files that were not deleted, and the numbers that nobody understood", () => {
    const file = { name: "a", type: "image/png", size: 1, sha256: "0" };
    const one = note(1, { text: "see 47 here", facts: { files: [file], unread: [[4, 6]] } });
    expect(jobOf(one)).toMatchObject({
      files: [{ name: "a", message: idOf(1), who: "bram" }],
      unread: [{ message: idOf(1), text: "47" }],
    });
    expect(jobOf(one, other(2, { kind: "delete", message: idOf(1) }))).toMatchObject({
      files: [],
      unread: [],
    });
    expect(jobOf(one, other(2, { kind: "undo", places: [1] }))).toMatchObject({
      files: [{}],
      unread: [],
    });
  });
  test("statements with what became of them", () => {
    const fates = (entry: Entry) =>
      jobOf(note(1, { parts: [act("cleaned")] }), entry).statements.map(({ undone, deleted }) => [
        undone,
        deleted,
      ])[0];
    expect(fates(note(2))).toEqual([undefined, undefined]);
    expect(fates(other(2, { kind: "undo", places: [1] }))).toEqual([true, undefined]);
    expect(fates(note(2, { facts: { edits: idOf(1) } }))).toEqual([true, undefined]);
    expect(fates(other(2, { kind: "move", message: idOf(1), to: 2 }))).toEqual([true, undefined]);
    expect(fates(other(2, { kind: "delete", message: idOf(1) }))).toEqual([undefined, true]);
  });
});

describe("a job comes into somebody's hand", () => {
  const held = (...told: readonly Told[]) =>
    gripsOf([first, ...told.map((one, at) => note(at + 1, one))]).map(
      ({ who, kind }) => `${who} ${kind}`,
    );
  const status = (name: Status, more: Partial<StatusSaid> = {}) => ({ parts: [said(name, more)] });
  test("by going there, being there, or taking it over", () => {
    expect(held(status("on_site"))).toEqual(["bram take"]);
    expect(held(status("on_the_way"))).toEqual(["bram take"]);
    const takes = {
      kind: "question",
      question: "handover",
      about: "taking it from ife",
      ...base,
    } as const;
    expect(held({ parts: [takes] })).toEqual(["bram take"]);
    expect(held({ parts: [{ ...takes, about: "what should ife know" }] })).toEqual(["bram name"]);
  });
  test("and out of it by leaving, not by an errand", () => {
    expect(held(status("left_site"))).toEqual(["bram drop"]);
    expect(held(status("left_site", { errand: true }))).toEqual(["bram name"]);
    expect(held({ ...status("done"), text: "done, leaving" })).toEqual(["bram drop"]);
    expect(held({ ...status("done"), text: "done" })).toEqual(["bram done"]);
    expect(held({ parts: [said("done"), said("on_the_way")] })).toEqual(["bram drop"]);
    expect(held(status("on_site"), status("on_the_way"))).toEqual(["bram take", "bram drop"]);
    expect(held(status("on_site"), status("on_the_way", { where: "shop" }))).toEqual([
      "bram take",
      "bram take",
    ]);
    expect(held({ parts: [said("left_site"), said("on_site")] })).toEqual(["bram take"]);
    expect(held({ parts: [said("on_site"), said("left_site")] })).toEqual(["bram drop"]);
  });
  test("by a technician's own opening, unless it is for another or for later", () => {
    const opening = (more: object, text = "New job", thread?: string): readonly string[] =>
      gripsOf([
        entryOf(0, {
          text,
          opens: { ...opens, ...more, ...(thread === undefined ? {} : { thread }) },
        }),
      ]).map(({ kind }) => kind);
    expect(opening({})).toEqual(["take"]);
    expect(opening({ assigned: "bram" })).toEqual(["take"]);
    expect(opening({ assigned: "ife" })).toEqual([]);
    expect(opening({}, "New job tomorrow")).toEqual(["name"]);
    expect(opening({}, "New job", "t1")).toEqual(["name"]);
  });
  test("by technicians alone, and by what stands", () => {
    expect(held({ ...status("on_site"), facts: { role: "dispatcher" } })).toEqual([]);
    expect(held({ text: "hello" })).toEqual(["bram name"]);
    const entries = [first, note(1, status("on_site")), other(2, { kind: "undo", places: [1] })];
    expect(gripsOf(entries)).toEqual([]);
  });
});
