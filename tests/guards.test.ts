import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { officeOrder } from "../adapters/serve/office-order.ts";
import { everyJob } from "../src/bot/rest.ts";
import type { JobReading, Message, Role } from "../src/model.ts";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { isCurrent } from "../src/record/readings.ts";
import { playConversation } from "./support/conversation.ts";

/** What a reply must never do, whatever figures are thrown at it: each failure has its guard. */

const opened = `# A job
08:00 maren: New job: Tollgate Dental RTU-2, trips. Bram
08:20 bram: on site tollgate
`;

function play(lines: readonly string[]): {
  readonly replies: readonly string[];
  readonly readings: readonly JobReading[];
} {
  const said = lines.map(
    (line, index) => `08:${String(30 + index).padStart(2, "0")} bram: ${line}`,
  );
  const { replies, bot } = playConversation(`${opened}${said.join("\n")}\n`);
  return { replies, readings: [...everyJob(bot.memory)].flatMap((job) => job.readings) };
}

describe("a point that reads twofold otherwise, no compressor named", () => {
  const megohms = fc.integer({ min: 20, max: 400 });
  const factor = fc.double({ min: 0.1, max: 10, noNaN: true });

  test("is asked about once, and nothing is overwritten", () => {
    fc.assert(
      fc.property(megohms, factor, (first, by) => {
        const second = Math.max(6, Math.round(first * by));
        const ratio = Math.max(first, second) / Math.min(first, second);
        const { replies, readings } = play([
          `comp 1 lead 1 ${first} meg at 500 volts`,
          `lead 1 ${second} meg at 500 volts`,
        ]);
        const asked = replies.filter((reply) => reply.includes("again, or another one?"));
        expect(asked.length).toBe(ratio >= 2 ? 1 : 0);
        expect(readings.map(({ value }) => value)).toEqual([first * 1e6, second * 1e6]);
        expect(readings.every((one) => one.replaced_by === undefined)).toBe(true);
      }),
      { numRuns: 15 },
    );
  });

  test("is not asked about once work was done in between, or where it is named", () => {
    const work = play([
      "comp 1 lead 1 8 meg at 500 volts",
      "comp 1 replaced",
      "lead 1 480 meg at 500 volts",
    ]);
    const named = play(["comp 1 lead 1 8 meg at 500 volts", "comp 2 lead 1 480 meg at 500 volts"]);
    for (const { replies } of [work, named])
      expect(replies.join("\n")).not.toContain("again, or another one?");
  });
});

/** As they stand on a sound machine with R-410A, each in the words that name it. */
const usual = [
  { says: "suction", number: 118, unit: "psi", of: 6894.757, above: 0, impossible: true },
  { says: "head", number: 318, unit: "psi", of: 6894.757, above: 0, impossible: true },
  { says: "suction line", number: 54, unit: "F", of: 5 / 9, above: 32, impossible: true },
  { says: "liquid line", number: 93, unit: "F", of: 5 / 9, above: 32, impossible: true },
  { says: "supply air", number: 57, unit: "F", of: 5 / 9, above: 32, impossible: true },
  { says: "return air", number: 76, unit: "F", of: 5 / 9, above: 32, impossible: true },
  { says: "outdoor air", number: 88, unit: "F", of: 5 / 9, above: 32, impossible: true },
  { says: "running", number: 14, unit: "amps", of: 1, above: 0, impossible: false },
  { says: "L1-L2", number: 208, unit: "volts", of: 1, above: 0, impossible: false },
] as const;

describe("a figure times ten", () => {
  test.each(usual)(
    "$says: an impossible one is asked about, a possible one stands as said",
    (one) => {
      const said = one.number * 10;
      const { replies, readings } = play([`${one.says} ${said} ${one.unit}`]);
      const stands = readings.filter(isCurrent);
      const reply = replies.at(-1) ?? "";
      expect(reply).toContain(String(said));
      // never mended in silence
      for (const { value } of stands)
        expect(Number(value)).toBeCloseTo(
          (said - one.above) * one.of,
          -Math.log10(one.of * said) + 4,
        );
      const trusted = stands.filter(({ doubtful }) => doubtful !== true);
      if (one.impossible)
        expect([one.says, trusted.length, reply.includes("?")]).toEqual([one.says, 0, true]);
    },
  );
});

describe("teens and tens", () => {
  const pairs = [
    ["thirteen", 13, "thirty", 30],
    ["fourteen", 14, "forty", 40],
    ["fifteen", 15, "fifty", 50],
    ["sixteen", 16, "sixty", 60],
    ["seventeen", 17, "seventy", 70],
    ["eighteen", 18, "eighty", 80],
    ["nineteen", 19, "ninety", 90],
  ] as const;

  test("each is what was said and is read back so, never the other", () => {
    for (const [teen, low, ten, high] of pairs)
      for (const [word, figure] of [
        [teen, low],
        [ten, high],
      ] as const) {
        for (const text of [`suction one ${word} psi`, `head three ${word} psi`]) {
          const hundreds = text.startsWith("head") ? 300 : 100;
          const [reading] = read(text, startContext("us")).readings;
          expect([text, Math.round(Number(reading?.value) / 6894.757)]).toEqual([
            text,
            hundreds + figure,
          ]);
        }
        const { replies } = play([`suction one ${word} psi`]);
        expect(replies.at(-1)).toContain(`${100 + figure}`);
      }
  });
});

/** What speaks for a dead compressor, each proof in a message of its own. */
const proofs: Readonly<Record<string, readonly string[]>> = {
  "three leads to ground": [
    "comp 1 lead 1 0.2 meg at 500 volts",
    "comp 1 lead 2 0.2 meg at 500 volts",
    "comp 1 lead 3 0.3 meg at 500 volts",
  ],
  "three winding pairs": ["comp 1 T1-T2 0.71 T2-T3 0.72 T1-T3 0.71 ohm"],
  "supply volts": ["supply L1-L2 208 L2-L3 209 L1-L3 207 volts"],
};

describe("a compressor is not condemned before its proof is whole", () => {
  test("with any part of the proof dropped, in any order, that part is asked for and nothing is final", () => {
    const names = Object.keys(proofs);
    const messages = names.flatMap((name) => (proofs[name] ?? []).map((text) => ({ name, text })));
    fc.assert(
      fc.property(
        fc.shuffledSubarray(messages, { minLength: messages.length, maxLength: messages.length }),
        fc.integer({ min: 0, max: messages.length - 1 }),
        (shuffled, drop) => {
          const dropped = shuffled[drop];
          const rest = shuffled.filter((one) => one !== dropped);
          const { replies } = play([...rest.map(({ text }) => text), "need a compressor"]);
          const last = replies.at(-1) ?? "";
          expect(last).toContain("Before it is ordered:");
          expect(last).toContain(dropped?.name);
          for (const reply of replies) {
            expect(reply.toLowerCase()).not.toMatch(
              /replace (?:it|the compressor)|condemned|\bdead compressor/,
            );
          }
        },
      ),
      { numRuns: 15 },
    );
  });

  test("with all of it nothing more is asked for", () => {
    const all = Object.values(proofs).flat();
    const { replies } = play([...all, "need a compressor"]);
    expect(replies.at(-1)).not.toContain("Before it is ordered:");
  });
});

const roles = ["tech", "dispatcher", "office"] as const satisfies readonly Role[];

describe("who may ask for what", () => {
  const message = (role: Role, text: string, files: Message["files"] = []): Message => ({
    id: "m1",
    platform: "test",
    channel: "south",
    person: "pat",
    role,
    at: "2026-05-12T08:00:00-05:00",
    text,
    files,
  });
  const sheet = [{ name: "sites.csv", type: "text/csv", size: 3, sha256: "0" }];

  test.each(roles)("%s: the day's files and an import are the office's", (role) => {
    for (const order of [message(role, "export today"), message(role, "import", sheet)]) {
      expect(officeOrder(order, "America/Chicago")?.kind === "refused").toBe(role !== "office");
    }
  });

  const questions = [
    "status?",
    "history of RTU-2",
    "summary of tollgate",
    "who is at tollgate?",
    "whose lock is on RTU-2?",
    "what's left?",
    "next?",
    "why?",
    "when does the drive come?",
    "help",
  ];
  const people: Readonly<Record<Role, string>> = {
    tech: "ife",
    dispatcher: "maren",
    office: "ibsen",
  };

  test.each(roles)("%s: every question is answered, and files nothing", (role) => {
    const said = questions.map(
      (text, index) => `09:${String(10 + index)} ${people[role]} (t): ${text}`,
    );
    const start =
      "08:00 maren (t): New job: Tollgate Dental RTU-2, trips. Bram\n08:20 bram (t): on site\n08:30 bram (t): suction 118 line 54\n";
    const before = playConversation(`# q\n${start}`);
    const { replies, bot } = playConversation(`# q\n${start}${said.join("\n")}\n`);
    expect(replies.length - before.replies.length).toBeGreaterThanOrEqual(questions.length);
    const jobs = [...everyJob(bot.memory)];
    expect(
      jobs.map(({ status, readings, parts }) => [status, readings.length, parts.length]),
    ).toEqual([["on_site", 2, 0]]);
    expect(replies.join("\n")).not.toMatch(/\bnear miss/i);
  });

  test.each(roles)(
    "%s: a near miss told alone reaches no job, no channel, no answer to others",
    (role) => {
      const start =
        "08:00 maren: New job: Tollgate Dental RTU-2, trips. Bram\n08:20 bram: on site tollgate\n";
      const secret = "ladder slid while I was on it";
      const { replies, bot } = playConversation(
        `# near miss\n${start}09:00 ${people[role]} (alone): near miss: ${secret}\n09:05 maren: summary of tollgate\n09:06 maren: status?\n`,
      );
      const shown = [
        ...replies,
        ...[...everyJob(bot.memory)].flatMap(({ timeline }) => timeline.map(({ says }) => says)),
      ];
      expect(shown.join("\n")).not.toContain(secret);
    },
  );
});
