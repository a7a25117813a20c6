import { describe, expect, it } from "vitest";
import { cautions } from "../src/judge/cautions/list.ts";
import { faults as faultList } from "../src/judge/faults/list.ts";
import { steps } from "../src/judge/steps/list.ts";
import { boardText } from "../src/show/board.ts";
import { checkWords } from "../src/show/check-words.ts";
import { howToLines } from "../src/show/how-to.ts";
import { replyTo } from "../src/show/reply.ts";
import { faultWords, statusWords, verdictWords } from "../src/show/wording.ts";
import { checkNames, faults } from "../src/vocabulary.ts";
import { lintReply } from "./support/lint-reply.ts";
import { replyCases } from "./support/reply-cases.ts";
import { job } from "./support/reply-input.ts";

/** Whole sentences that judging hands to replies. */
const checksTold = [...steps, ...faultList.flatMap((fault) => fault.proof)].map((step) => step.why);
const sayings = [...new Set([...cautions.map((caution) => caution.says), ...checksTold])];

describe("everything the bot can say", () => {
  it.each(replyCases)("keeps the rules: $title", ({ input, context, silent }) => {
    const text = replyTo(input);
    if (silent === true) expect(text).toBeUndefined();
    else expect(lintReply(text ?? "", context)).toEqual([]);
  });

  it.each(sayings)("keeps the rules: %s", (text) => {
    expect(lintReply(text, { lines: 1, words: 90 })).toEqual([]);
  });

  it("stands on one page", async () => {
    await expect(page()).toMatchFileSnapshot("../fixtures/said.md");
  });
});

function page(): string {
  const replies = replyCases.flatMap(({ title, input }) => [
    `### ${title}`,
    "",
    quoted(replyTo(input) ?? "(silence)"),
    "",
  ]);
  const rows = (pairs: readonly (readonly [string, string])[]) => [
    "| name | said as |",
    "| --- | --- |",
    ...pairs.map(([name, words]) => `| ${name} | ${words} |`),
    "",
  ];
  return [
    "# What the bot says",
    "",
    "Made by the tests from the code; read it as the person who gets it. A change here is a change of",
    "what people read on a roof.",
    "",
    "## Replies",
    "",
    ...replies,
    "## The board",
    "",
    quoted(boardText([job], "2026-05-12T10:00:00-05:00", { names: { bram: "Bram" } })),
    "",
    "## Verdicts and statuses",
    "",
    ...rows([...Object.entries(verdictWords), ...Object.entries(statusWords)]),
    "## Causes",
    "",
    ...rows(faults.map((fault) => [fault, faultWords(fault)])),
    "## The next check",
    "",
    ...rows(checkNames.map((name) => [name, `Next: ${checkWords[name].act}.`])),
    "## Cautions",
    "",
    ...[...new Set(cautions.map((caution) => `- ${caution.says}`))],
    "",
    "## Checks in full, as what next tells them",
    "",
    ...[...new Set(checksTold.map((why) => `- ${why}`))],
    "",
    "## How it is done",
    "",
    ...checkNames.flatMap((name) => [`### ${name}`, "", quoted(howToLines(name).join("\n")), ""]),
  ].join("\n");
}

const quoted = (text: string): string =>
  text
    .split("\n")
    .map((line) => `> ${line}  `.trimEnd())
    .join("\n>\n");
