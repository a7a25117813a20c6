import { expect, test } from "vitest";
import { judgeNotes } from "../src/bot/judge-notes.ts";
import type { CheckExample } from "../src/judge/check.ts";
import { checks } from "../src/judge/checks/list.ts";
import type { Finding, Suspect } from "../src/model.ts";

/** What each check says of its own examples, word for word and figure for figure, on one page. */

const figures = (values: Finding["values"]): string =>
  Object.entries(values)
    .map(([name, value]) => `${name} ${Number(value.toPrecision(4))}`)
    .join(", ");

/** Causes that are worth a word, the likeliest first. */
const likely = (diagnosis: readonly Suspect[]): string =>
  diagnosis
    .filter(({ probability }) => probability > 0.1)
    .map(({ fault }) => fault)
    .join(", ");

function linesOf(example: CheckExample): readonly string[] {
  const judged = judgeNotes({
    equipment: example.equipment ?? {},
    site: example.site ?? {},
    notes: example.notes,
    ...(example.limits === undefined ? {} : { limits: example.limits }),
    units: "us",
  });
  const found = judged.findings.flatMap((one) => [
    `- **${one.level}** ${one.about}, ${one.check}: ${one.says}. (${one.basis}) ${one.signs?.join(" ") ?? ""}`.trimEnd(),
    ...(one.brief === undefined ? [] : [`  - in short: ${one.brief}`]),
    ...(one.missing === undefined ? [] : [`  - missing: ${one.missing}`]),
    ...(Object.keys(one.values).length === 0 ? [] : [`  - ${figures(one.values)}`]),
  ]);
  const next = judged.next.map(({ check, minutes }) => `${check} ${minutes} min`).join(", ");
  return [
    ...[`> ${example.notes.join(" / ")}`, "", ...found],
    `- causes: ${likely(judged.diagnosis)}`,
    `- next: ${next}`,
    `- cautions: ${judged.cautions.map(({ id }) => id).join(", ")}`,
    "",
  ];
}

test("every verdict on an example stands on one page", async () => {
  const page = [
    "# What the checks say",
    "",
    "Made by the tests from the code: each check's own examples, judged. A change here is a change of",
    "what people are told; read it as one of them.",
    "",
    ...checks.flatMap(({ name, examples }) => [
      ...[`## ${name.replaceAll("_", " ")}`, "", ...examples.flatMap(linesOf)],
    ]),
  ];
  await expect(page.join("\n")).toMatchFileSnapshot("../fixtures/verdicts/examples.md");
});
