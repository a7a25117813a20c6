import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { splitText } from "../adapters/serve/split-text.ts";
import { boardBlocks } from "../adapters/slack/board-blocks.ts";
import { reactionSays } from "../adapters/slack/emoji.ts";
import { envelopeSchema } from "../adapters/slack/events.ts";
import { escaped, plainText } from "../adapters/slack/plain-text.ts";
import { translate } from "../adapters/slack/translate.ts";

const naming = {
  user: (id: string) => (id === "U0SORREL" ? "sorrel" : undefined),
  channel: (id: string) => (id === "C0SOUTH" ? "southside" : undefined),
};

describe("what Slack marks up reads as it was typed", () => {
  test.each([
    ["suction &lt; 60 &amp; falling", "suction < 60 & falling"],
    ["&amp;lt;", "&lt;"],
    ["<@U0SORREL> lead 2", "@sorrel lead 2"],
    ["<@U024BE7LH> lead 2", "@someone lead 2"],
    ["<@U024BE7LH|Ife>", "@Ife"],
    ["<#C0SOUTH>", "#southside"],
    ["<#C0X|north &amp; west>", "#north & west"],
    ["<!here> <!channel>", "@here @channel"],
    ["<!subteam^S0123|@crew>", "@crew"],
    ["<!date^1392734382^{date}|Feb 18>", "Feb 18"],
    ["<tel:5550177|555-0177>", "555-0177"],
    ["<tel:5550177>", "5550177"],
    ["<mailto:a@b.example|a@b.example>", "a@b.example"],
    ["<https://chat.example/a?b=1&amp;c=2|the plate>", "the plate"],
    ["<https://chat.example/a?b=1&amp;c=2>", "chat.example/a?b=1&c=2"],
    ["`84 meg` and ```lead 2```", "84 meg and lead 2"],
    ["*lead 2* is _dry_, 2*3*4 and a_b_c stay", "lead 2 is dry, 2*3*4 and a_b_c stay"],
    ["good :+1: :100:", "good 👍 💯"],
    ["back at 10:30:45 :clock10: :clock1030:", "back at 10:30:45 🕙 🕥"],
    ["start:stop ratio 4:1:2", "start:stop ratio 4:1:2"],
  ])("%s", (marked, typed) => {
    expect(plainText(marked, naming)).toBe(typed);
  });

  test("whatever is typed comes back from its escaped form, but for marks of bold, code and emoji", () => {
    const typed = fc
      .string({ unit: "grapheme", maxLength: 200 })
      .filter((text) => !/[`*_:]/.test(text));
    fc.assert(
      fc.property(typed, (text) => {
        expect(plainText(escaped(text), naming)).toBe(text);
      }),
    );
  });

  test("nothing that is said can mention, link or call", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        expect(escaped(text)).not.toMatch(/[<>]/);
      }),
    );
  });
});

test.each([
  ["+1", "yes"],
  ["thumbsup", "yes"],
  ["+1::skin-tone-5", "yes"],
  ["x", "no"],
  ["heavy_multiplication_x", "no"],
  ["eyes", undefined],
] as const)("the reaction %s says %s", (name, says) => {
  expect(reactionSays(name)).toBe(says);
});

const caseShape = z.object({
  about: z.string(),
  body: z.unknown(),
  means: z.looseObject({ kind: z.string() }),
});

test.each(
  readFileSync("fixtures/platforms/slack/events.jsonl", "utf8")
    .trim()
    .split("\n")
    .map((line) => caseShape.parse(JSON.parse(line)))
    .map((one) => [one.about, one] as const),
)("%s", (_, { body, means }) => {
  expect(translate(envelopeSchema.parse(body))).toMatchObject(means);
});

describe("a long text in pieces", () => {
  test("loses nothing but blanks, keeps each piece within its length, and ends", () => {
    fc.assert(
      fc.property(
        fc.lorem({ mode: "sentences", maxCount: 30 }),
        fc.integer({ min: 20, max: 300 }),
        (text, longest) => {
          const pieces = splitText(text, longest);
          for (const piece of pieces) expect(piece.length).toBeLessThanOrEqual(longest);
          expect(pieces.join("").replace(/\s/g, "")).toBe(text.replace(/\s/g, ""));
        },
      ),
    );
  });

  test("ends pieces after sentences, not inside a figure", () => {
    const text = `${"Lead 2 reads 8.4 megohm. ".repeat(20)}Done.`;
    for (const piece of splitText(text, 120)) expect(piece).toMatch(/\.$/);
  });

  test("counts as the platform counts", () => {
    const pieces = splitText("&".repeat(100), 50, (piece) => piece.length * 5);
    expect(pieces.every((piece) => piece.length === 10)).toBe(true);
  });
});

describe("the board in blocks", () => {
  const jobs = (count: number): string =>
    [
      `Open jobs: ${count}. State of Tue 12 May, 10:42`,
      `Crew at work: ${count}`,
      ...Array.from(
        { length: count },
        (_, i) =>
          `${i} Gull Wharf WIC-${i}  Bram, here 1:35\n   BAD low charge; box 46 F, "over" since 9:12`,
      ),
    ].join("\n");

  test.each([0, 1, 40, 400])("%i jobs keep within Slack's limits", (count) => {
    const blocks = boardBlocks(jobs(count), "board:dispatch:1");
    expect(blocks.length).toBeLessThanOrEqual(50);
    expect(JSON.stringify(blocks).length).toBeLessThanOrEqual(13_000);
    for (const block of blocks) {
      if (block.type === "section") expect(block.text?.text.length).toBeLessThanOrEqual(3000);
    }
    const shown = JSON.stringify(blocks).match(/WIC-\d+ /g) ?? [];
    const left = /(\d+) more jobs do not fit/.exec(JSON.stringify(blocks))?.[1] ?? 0;
    expect(shown.length + Number(left)).toBe(count);
    if (count <= 40) expect(left).toBe(0);
  });
});
