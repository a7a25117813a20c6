import { describe, expect, test } from "vitest";
import type { CaseNote, Job, JobReading, Reading, Span } from "../src/model.ts";
import { hostsOf, withCorrections } from "../src/record/corrected-notes.ts";
import { correctedBy, deniedIn, inherit } from "../src/record/corrections.ts";
import { r } from "./case-builder.ts";
import { kept, minuteOf } from "./support/job-lines.ts";

/** Which reading "no, it was 12" means, what it keeps of it, and where the two are judged together. */

let count = 0;
/** A standing reading of minute `minute`, with an id of its own. */
function stands(minute: number, reading: Reading, more: Partial<JobReading> = {}): JobReading {
  count += 1;
  return kept(minute, reading, { id: `1.${minute}.${count}`, ...more });
}
const meant = (reading: Reading, standing: readonly JobReading[], denied?: string) =>
  correctedBy(reading, "bram", standing, denied);

/** A word that a reading may carry, and another of its kind. */
const words: readonly (readonly [Partial<Reading>, Partial<Reading>])[] = [
  [{ at: "suction" }, { at: "discharge" }],
  [{ subject: "fan 1" }, { subject: "fan 2" }],
  [{ action: "charged" }, { action: "recovered" }],
  [{ rating: "RLA" }, { rating: "LRA" }],
  [{ state: "start" }, { state: "running" }],
  [{ kind: "ac" }, { kind: "dc" }],
  [{ points: ["T1", "T2"] }, { points: ["T2", "T3"] }],
];

describe("a correction", () => {
  test.each(words)("that says %j means no reading of %j", (said, other) => {
    const correction = r("current", 12, said);
    const [mine, bare, theirs] = [said, {}, other].map((more, at) =>
      stands(at, r("current", 11, more)),
    );
    if (mine === undefined || bare === undefined || theirs === undefined) throw new Error("none");
    expect(meant(correction, [theirs])).toBeUndefined();
    expect(meant(correction, [mine, theirs])).toBe(mine);
    // what one of the two leaves out is no difference
    expect(meant(correction, [bare])).toBe(bare);
    expect(meant(r("current", 12), [theirs])).toBe(theirs);
  });
  test("means points in whatever order they were said, and none where a list is empty", () => {
    const old = stands(1, r("voltage", 460, { points: ["L2", "L1"] }));
    expect(meant(r("voltage", 462, { points: ["L1", "L2"] }), [old])).toBe(old);
    expect(meant(r("voltage", 462, { points: [] }), [old])).toBe(old);
  });
  test("means nothing that was taken back, replaced, or of an earlier day", () => {
    for (const gone of [
      { undone: true as const },
      { deleted: true as const },
      { replaced_by: "1.9.0" },
      { earlier: true as const },
    ])
      expect(meant(r("current", 12), [stands(1, r("current", 11), gone)])).toBeUndefined();
  });
  test("means the newest message, whatever the order of the record", () => {
    const [old, young] = [stands(1, r("current", 11.9)), stands(5, r("current", 30))];
    expect(meant(r("current", 12), [old, young])).toBe(young);
    expect(meant(r("current", 12), [young, old])).toBe(young);
  });
  test("means of one message the nearest by ratio that is not the same already", () => {
    const [one, two, three] = [stands(1, r("current", 5)), stands(1, r("current", 30))].concat(
      stands(1, r("current", 12)),
    );
    const all = [one, two, three].flatMap((each) => each ?? []);
    // 12 stands there already; 5 is 2.4 times off, 30 2.5 times
    expect(meant(r("current", 12), all)).toBe(one);
    expect(meant(r("current", 13), all)).toBe(three);
    expect(meant(r("current", 29), all)).toBe(two);
    expect(
      meant(
        r("current", 12),
        [three].flatMap((each) => each ?? []),
      ),
    ).toBe(three);
  });
  test("means the figure that it denies, though another is nearer, newer or his own", () => {
    const denied = stands(1, r("current", 12.3), { who: "ife" });
    const near = stands(5, r("current", 11.2));
    expect(meant(r("current", 11.3), [denied, near], "12.3")).toBe(denied);
    expect(meant(r("current", 11.3), [denied, near], "99")).toBe(near);
  });
  test("of a leg means that one of three in a row that has no names", () => {
    const row = [18.2, 18.4, 12.1].map((amps) => stands(1, r("current", amps)));
    for (const [at, name] of ["L1", "T2", "lead 3", "phase 2"].entries()) {
      const nth = [0, 1, 2, 1][at] ?? 0;
      expect(meant(r("current", 18.1, { points: [name] }), row)).toBe(row[nth]);
    }
    // of two figures, or with one that has its name, the nearest
    expect(meant(r("current", 18.1, { points: ["L3"] }), row.slice(0, 2))).toBe(row[0]);
    const named = [...row.slice(0, 2), stands(1, r("current", 12, { points: ["L3"] }))];
    expect(meant(r("current", 18.1, { points: ["L3"] }), named)).toBe(named[2]);
    expect(meant(r("current", 18.1, { points: ["L4"] }), row)).toBe(row[0]);
  });
  test("of the name alone means the figure under the name that it was filed by", () => {
    const wrong = stands(1, r("pressure", 8e5, { at: "suction" }));
    const other = stands(2, r("pressure", 9e5, { at: "suction" }));
    const renamed = (value: number, instead: NonNullable<Reading["instead"]>) =>
      r("pressure", value, { at: "discharge", instead });
    expect(meant(renamed(8e5, { at: "suction" }), [wrong, other])).toBe(wrong);
    expect(meant(renamed(8e5, { at: "liquid" }), [wrong, other])).toBeUndefined();
    expect(meant(renamed(7e5, { at: "suction" }), [wrong, other])).toBeUndefined();
    const asHeat = r("superheat", 8, { instead: { quantity: "subcooling" } });
    const cold = stands(1, r("subcooling", 8));
    expect(meant(asHeat, [cold, stands(2, r("superheat", 8))])).toBe(cold);
    for (const [said, filed] of [
      [{ subject: "fan 1" }, { subject: "fan 2" }],
      [{ points: ["L1", "L2"] }, { points: ["L1", "L3"] }],
    ] as const) {
      const old = stands(1, r("current", 8, filed));
      expect(meant(r("current", 8, { instead: filed }), [old])).toBe(old);
      expect(meant(r("current", 8, { instead: said }), [old])).toBeUndefined();
    }
  });
  test("between a figure and none at all chooses the figure", () => {
    const [open, low] = [stands(1, r("resistance", "OL")), stands(1, r("resistance", 2))];
    expect(meant(r("resistance", 3), [open, low])).toBe(low);
  });
});

test("what was wrong is named in one way or another, once", () => {
  const denied = (text: string) => deniedIn(text, r("current", 11.3));
  for (const text of [
    ...[
      "11.3 not 12.3",
      "instead of 12.3 it is 11.3",
      "i typed 12.3, 11.3",
      "12.3 was wrong, 11.3",
    ],
    ...["12.3 should have been 11.3", "rather than 12.3: 11.3", "I said 12.3 meant 11.3"],
  ])
    expect([text, denied(text)]).toEqual([text, "12.3"]);
  for (const text of ["not 12.3, not 12.4, 11.3", "not 11.3", "11.3 and 12.3", ""])
    expect([text, denied(text)]).toEqual([text, undefined]);
});

describe("what a correction leaves out", () => {
  const all: Partial<Reading> = {
    ...{ at: "suction", points: ["T1", "T2"], subject: "compressor 1", action: "charged" },
    ...{ state: "running", kind: "dc", test_voltage: 500, after_s: 60, rating: "RLA" },
  };
  test.each(Object.entries(all))("stays as it was: %s", (name, value) => {
    const old = stands(1, r("current", 11, { [name]: value }));
    expect(inherit(r("current", 12), old)).toStrictEqual(r("current", 12, { [name]: value }));
  });
  test("is nothing where the old said no more, and is not taken where it says so itself", () => {
    const bare = stands(1, r("current", 11));
    expect(inherit(r("current", 12), bare)).toStrictEqual(r("current", 12));
    const old = stands(1, r("current", 11, { at: "suction", for_s: 9, stat: "peak" }));
    expect(inherit(r("current", 12, { at: "discharge" }), old)).toStrictEqual(
      r("current", 12, { at: "discharge" }),
    );
  });
});

describe("figures of a correction are judged where the corrected ones were said", () => {
  const span: Span = [2, 5];
  const noteOf = (text: string | undefined, ...values: readonly number[]): CaseNote => ({
    ...(text === undefined ? {} : { text }),
    readings: values.map((value) => r("current", value, { spans: [span] })),
    statements: [
      { kind: "labor", hours: values.length, said: "", spans: [span], rule: "test" } as const,
    ],
  });
  const timeline = (...messages: readonly string[]): Job["timeline"] =>
    messages.map((message, at) => ({
      ...{ message, at: minuteOf(at), who: "bram", kind: "reading", says: "" },
    }));
  const of = (message: string, id: string, replaced_by?: string): JobReading =>
    stands(1, r("current", 1), {
      ...{ message, id },
      ...(replaced_by === undefined ? {} : { replaced_by }),
    });

  test("one message's host is the one message that all its readings correct", () => {
    const readings = [of("a", "1", "3"), of("a", "2"), of("b", "3"), of("c", "4")];
    expect([...hostsOf(readings)]).toEqual([["b", "a"]]);
    // of two messages, or partly something new: it stands for itself
    expect(hostsOf([of("a", "1", "3"), of("b", "2", "4"), of("c", "3"), of("c", "4")]).size).toBe(
      0,
    );
    expect(hostsOf([of("a", "1", "3"), of("b", "3"), of("b", "4")]).size).toBe(0);
    expect(hostsOf([of("a", "1", "2"), of("a", "2")]).size).toBe(0);
  });
  test("its words, readings and statements stand behind those of its host, a row of them too", () => {
    const readings = [of("a", "1", "2"), of("b", "2", "3"), of("c", "3"), of("d", "4")];
    const notes = [noteOf("first", 1), noteOf("second", 2), noteOf("third", 3), noteOf("else", 4)];
    const job = { readings, timeline: timeline("a", "b", "c", "d") };
    const [joined, other, ...more] = withCorrections(job, notes);
    expect(more).toEqual([]);
    expect(other).toBe(notes[3]);
    expect(joined?.text).toBe("first. second. third");
    expect(joined?.readings.map(({ value, spans }) => [value, spans])).toEqual([
      [1, [[2, 5]]],
      [2, [[9, 12]]],
      [3, [[17, 20]]],
    ]);
    expect(joined?.statements.map(({ spans }) => spans)).toEqual([[[2, 5]], [[9, 12]], [[17, 20]]]);
  });
  test("nothing is moved where nothing was corrected, or its host is gone", () => {
    const notes = [noteOf("first", 1), noteOf("second", 2)];
    const job = { readings: [of("a", "1"), of("b", "2")], timeline: timeline("a", "b") };
    expect(withCorrections(job, notes)).toBe(notes);
    const away = { readings: [of("gone", "1", "2"), of("b", "2")], timeline: timeline("a", "b") };
    expect(withCorrections(away, notes)).toEqual(notes);
    const [joined] = withCorrections(
      { readings: [of("a", "1", "2"), of("b", "2")], timeline: timeline("a", "b") },
      [noteOf(undefined, 1), noteOf("x", 2)],
    );
    expect(joined?.text).toBe(". x");
  });
});
