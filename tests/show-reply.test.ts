import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { figureWords } from "../src/show/figure-words.ts";
import { replyTo } from "../src/show/reply.ts";
import { lintReply } from "./support/lint-reply.ts";
import { finding, input, job, reading, statement } from "./support/reply-input.ts";

const lead = (n: number, figure: string) =>
  reading(figure, {
    quantity: "insulation_resistance",
    points: [`lead ${n}`, "ground"],
    subject: "compressor 1",
    test_voltage: 500,
  });
const insulation = finding({
  check: "insulation",
  level: "watch",
  says: "84 megohm against 655 megohm earlier: down by a factor of 8",
  basis: "own history",
});
const next = [{ check: "winding", why: "it tells the windings from the drive", minutes: 5 }];

describe("a reading's reply", () => {
  it("says back unit, component and figures, then verdict with source, then the next check", () => {
    const text = replyTo(
      input({ readings: [lead(2, "84 megohm")], judgement: { findings: [insulation], next } }),
    );
    expect(text).toMatchInlineSnapshot(`
      "OU-3 comp 1: lead 2 84 megohm to ground at 500 V.
      WATCH: 84 megohm against 655 megohm earlier: down by a factor of 8 (own history).
      Next: it tells the windings from the drive."
    `);
    expect(lintReply(text ?? "", { readings: 1, head: "OU-3 comp 1", figures: ["84"] })).toEqual(
      [],
    );
  });

  it("says a shared unit, test voltage and point once", () => {
    const three = [lead(1, "84 megohm"), lead(2, "91 megohm"), lead(3, "90 megohm")];
    expect(replyTo(input({ readings: three }))).toMatchInlineSnapshot(
      `"OU-3 comp 1: lead 1 84, lead 2 91, lead 3 90 megohm to ground at 500 V. Filed."`,
    );
    const alike = [lead(1, "505 megohm"), lead(2, "505 megohm"), lead(3, "505 megohm")];
    expect(replyTo(input({ readings: alike }))).toMatchInlineSnapshot(
      `"OU-3 comp 1: leads 1, 2, 3 each 505 megohm to ground at 500 V. Filed."`,
    );
  });

  it("keeps his digits, relations, series and places", () => {
    const mixed = [
      reading("0.30 ohm", { quantity: "winding_resistance", points: ["T1", "T2"] }),
      reading("OL", {
        quantity: "winding_resistance",
        points: ["T2", "T3"],
        over_range: true,
        relation: ">",
      }),
      reading("101 psig", { quantity: "pressure", at: "suction" }),
      reading("70 F", { quantity: "temperature", at: "suction" }),
      reading("12.6 A", { quantity: "current", series: [4, 8, 12.6], said: "4, 8, 12.6 A" }),
      reading("550 megohm", { quantity: "insulation_resistance", relation: ">" }),
      reading("50 microfarad", { quantity: "capacitance", rating: "nominal" }),
      reading("31.5 microfarad", { quantity: "capacitance" }),
    ];
    const text = replyTo(input({ readings: mixed })) ?? "";
    expect(text).toMatchInlineSnapshot(
      `"OU-3: T1-T2 0.30 ohm; T2-T3 OL; suction 101 psig, 70 F; 4, 8, 12.6 A; insulation over 550 megohm; rated 50 microfarad; 31.5 microfarad."`,
    );
    expect(
      lintReply(text, { readings: 8, figures: ["0.30", "OL", "101", "70", "12.6", "4", "31.5"] }),
    ).toEqual([]);
  });

  it("puts a caution first that this person was not given yet today", () => {
    const caution = {
      id: "stored_energy",
      says: "Measure the bus before touching it",
      source: "s",
      severity: "danger",
    } as const;
    const given = { readings: [lead(1, "0.4 megohm")], judgement: { cautions: [caution] } };
    expect(replyTo(input(given))?.split("\n")[0]).toBe("Measure the bus before touching it.");
    expect(replyTo(input({ ...given, cautioned: ["stored_energy"] }))).not.toContain("bus");
  });

  it("groups many readings by component in at most twelve lines", () => {
    const many = [1, 2, 3, 4, 5, 6, 7].flatMap((n) =>
      [1, 2, 3].map((l) =>
        reading(`${n}${l}0 megohm`, {
          quantity: "insulation_resistance",
          points: [`lead ${l}`, "ground"],
          subject: `compressor ${n}`,
        }),
      ),
    );
    const findings = many.map((r) =>
      finding({ check: "insulation", level: "good", about: r.subject ?? "" }),
    );
    const text = replyTo(input({ readings: many, judgement: { findings, next } })) ?? "";
    expect(text).toMatchInlineSnapshot(`
      "OU-3 comp 1: lead 1 110, lead 2 120, lead 3 130 megohm to ground.
      comp 2: lead 1 210, lead 2 220, lead 3 230 megohm to ground.
      comp 3: lead 1 310, lead 2 320, lead 3 330 megohm to ground.
      comp 4: lead 1 410, lead 2 420, lead 3 430 megohm to ground.
      comp 5 lead 1 510, lead 2 520, lead 3 530 megohm to ground; comp 6 lead 1 610, lead 2 620, lead 3 630 megohm to ground; comp 7 lead 1 710, lead 2 720, lead 3 730 megohm to ground.
      GOOD: comp 1 a plain sentence; comp 2 a plain sentence; comp 3 a plain sentence; comp 4 a plain sentence; comp 5 a plain sentence (IEEE 43); also insulation.
      Next: it tells the windings from the drive."
    `);
    expect(
      lintReply(text, {
        readings: 21,
        head: "OU-3 comp 1",
        figures: many.map((r) => r.figure.number),
      }),
    ).toEqual([]);
  });

  it("names each number that was not read, and stays silent to talk outside a job", () => {
    const unread = { unread: ["14"], ask: [] };
    expect(replyTo(input({ understood: unread }))).toMatchInlineSnapshot(
      `"OU-3: 14 not read, not filed."`,
    );
    const spoken = { unread: ["eight point nine", "one", "five minutes"], ask: [] };
    expect(replyTo(input({ understood: spoken }))).toBe(
      "OU-3: eight point nine not read, not filed.",
    );
    const { job: _, ...loose } = input({ understood: unread, addressed: false });
    expect(replyTo(loose)).toBeUndefined();
  });

  it("asks about a value that is hardly possible, and does not judge it", () => {
    const doubtful = reading("1240 psi", { quantity: "pressure", at: "suction", doubtful: true });
    const text = replyTo(input({ readings: [doubtful] }));
    expect(text).toMatchInlineSnapshot(
      `"OU-3: suction 1240 psi is hardly possible: kept, not used. Is it right?"`,
    );
  });

  it("says a correction with the old value and takes the old verdict back", () => {
    const by = reading("91 megohm", {
      quantity: "insulation_resistance",
      points: ["lead 2", "ground"],
      subject: "compressor 1",
      corrects: true,
    });
    const text = replyTo(
      input({
        readings: [by],
        replaced: [{ old: lead(2, "9.1 megohm"), by }],
        before: { findings: [finding({ check: "insulation", level: "bad" })] },
        judgement: {
          findings: [
            finding({
              check: "insulation",
              level: "watch",
              says: "below the earlier test of 655 megohm",
            }),
          ],
        },
      }),
    );
    expect(text).toMatchInlineSnapshot(`
      "OU-3 comp 1, changed: lead 2 91 megohm to ground, was 9.1 megohm.
      BAD on insulation is taken back. WATCH: below the earlier test of 655 megohm (IEEE 43)."
    `);
    expect(
      lintReply(text ?? "", { readings: 1, head: "OU-3 comp 1", figures: ["91", "9.1"] }),
    ).toEqual([]);
  });

  it("says what a deletion or an undo took out", () => {
    const old = reading("800 micron", { quantity: "vacuum" });
    expect(replyTo(input({ message: { deletes: "m9" }, replaced: [{ old }] }))).toBe(
      "OU-3: taken out: vacuum 800 micron.",
    );
  });

  it("asks which job where it could be two, and says that nothing is filed yet", () => {
    const { job: _, ...loose } = input({
      understood: { readings: [reading("318 psi", { quantity: "pressure" })] },
      routing: { candidates: [job, { ...job, job: 7, equipment: "RTU-2" }], again: false },
    });
    expect(replyTo(loose)).toMatchInlineSnapshot(
      `"pressure 318 psi: which job, 4 OU-3 or 7 RTU-2? Kept, not filed yet."`,
    );
    const again = { ...loose, routing: { candidates: [job], again: true } };
    expect(replyTo(again)).toBe("pressure 318 psi: kept too, for job 4 OU-3 on your yes.");
  });

  it("answers a status in about four words and names what stays behind", () => {
    const here = statement({ kind: "status", status: "on_site", said: "here" });
    expect(replyTo(input({ understood: { statements: [here] } }))).toMatchInlineSnapshot(
      `"Job 4 OU-3: on site 10:00."`,
    );
    const done = statement({ kind: "status", status: "done", said: "done" });
    const left = {
      ...job,
      machine: {
        ...job.machine,
        circuit: "nitrogen" as const,
        locks: [{ who: "tamsin", since: "2026-05-12T09:00:00-05:00" }],
        bypasses: [
          { what: "high pressure switch", who: "bram", since: "2026-05-12T09:00:00-05:00" },
        ],
      },
      file: { state: "open" as const, gaps: ["three running amps", "cylinder number"] },
    };
    const text = replyTo(input({ job: left, understood: { statements: [done] } }));
    expect(text).toMatchInlineSnapshot(`
      "Job 4 OU-3: done 10:00.
      Left there: nitrogen in the circuit and Tamsin's lock.
      The file lacks: three running amps; cylinder number.
      Is the high pressure switch bypass off? The file stays open until then."
    `);
    expect(lintReply(text ?? "", { lines: 5 })).toEqual([]);
  });

  it("files remarks in at most fifteen words", () => {
    const seen = statement({
      kind: "observation",
      observation: "oil_stain",
      said: "oil on the suction stub",
    });
    const text = replyTo(input({ understood: { statements: [seen] } }));
    expect(text).toMatchInlineSnapshot(`"OU-3: filed, oil on the suction stub."`);
    expect(lintReply(text ?? "", { words: 15, lines: 1 })).toEqual([]);
  });

  it("never grows past twelve lines, a caution not counted, whatever comes together", () => {
    const component = fc.integer({ min: 1, max: 12 });
    const level = fc.constantFrom(
      "good" as const,
      "watch" as const,
      "bad" as const,
      "unknown" as const,
    );
    const check = fc.constantFrom("insulation", "winding", "supply", "start_current");
    const left = {
      ...job,
      machine: { ...job.machine, bypasses: [{ what: "limit", who: "bram", since: job.opened }] },
      file: { state: "open" as const, gaps: ["one", "two", "three", "four"] },
    };
    const done = statement({ kind: "status", status: "done", said: "done" });
    fc.assert(
      fc.property(
        fc.array(component, { minLength: 1, maxLength: 40 }),
        fc.array(fc.tuple(component, level, check), { maxLength: 30 }),
        fc.array(fc.stringMatching(/^[0-9]{1,4}$/), { maxLength: 6 }),
        fc.boolean(),
        (components, found, unread, leaving) => {
          const text = replyTo(
            input({
              job: left,
              readings: components.map((n) =>
                reading(`${n}0 megohm`, {
                  quantity: "insulation_resistance",
                  points: ["lead 1", "ground"],
                  subject: `compressor ${n}`,
                }),
              ),
              understood: { unread, statements: leaving ? [done] : [] },
              judgement: {
                next,
                findings: found.map(([n, verdict, name]) =>
                  finding({ check: name, level: verdict, about: `compressor ${n}`, missing: "x" }),
                ),
              },
            }),
          );
          const faults = lintReply(text ?? "", {
            lines: 12,
            words: 2000,
            head: "OU-3",
            figures: components.map((n) => `${n}0`),
            unread,
          });
          expect(faults).toEqual([]);
        },
      ),
    );
  });
});

describe("a range", () => {
  it.each([
    ["suct 118-122", { number: "118", unit: "psi" }, 813581.3606, 841160.3898, "118 to 122"],
    ["thirty to sixty", { number: "30", unit: "F" }, 16.6666667, 33.3333333, "30 to 60"],
    ["92 to 95 out", { number: "92", unit: "F" }, 33.3333333, 35, "92 to 95"],
    ["point nine to one point one", { number: "0.9", unit: "ohm" }, 0.9, 1.1, "0.9 to 1.1"],
  ])("%s", (said, figure, value, high, words) => {
    const quantity = figure.unit === "psi" ? "pressure" : "resistance";
    const row = {
      ...reading(said, { quantity }),
      relation: "in" as const,
      value,
      high,
      figure,
      said,
    };
    expect(figureWords(row).number).toBe(words);
  });
});
