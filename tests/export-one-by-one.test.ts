import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { anonymousRecord } from "../src/bot/anonymous-record.ts";
import { exportRecord } from "../src/bot/export-record.ts";
import { openBot } from "../src/bot.ts";
import { openStore } from "../src/record/store.ts";
import { daySheets } from "../src/show/exports/day.ts";
import { exportFiles } from "../src/show/exports/export-files.ts";
import { playOfficeDay } from "./support/office-day.ts";

const path = join(mkdtempSync(join(tmpdir(), "one-by-one-")), "day.db");
playOfficeDay({ path, played: 2, times: 2, messages: 3 });
const opened = openStore(path);
if (!opened.ok) throw new Error(opened.problem);
const record = exportRecord(
  openBot(opened.store, () => "salt"),
  { kind: "day", day: "2026-05-12" },
);

test("files of an export are made one after the other, as they are taken", async () => {
  let set = 0;
  const reports = record.reports.map((make) => () => {
    set++;
    return make();
  });
  const files = exportFiles({ ...record, reports });
  expect((await files.next()).value?.name).toBe("2026-05-12-jobs.csv");
  expect(set).toBe(0);
  const names: string[] = [];
  for await (const { name } of files) names.push(name);
  expect(names.slice(-3)).toEqual(["2026-05-12.xlsx", "2026-05-12-reports.pdf", "2026-05-12.json"]);
  expect(set).toBeGreaterThanOrEqual(4);
});

test("the sheets that the revision is counted by are those that are written", () => {
  const made = record.sheets ?? [];
  for (const sheet of daySheets(record, made)) {
    const same = made.find(({ name }) => name === sheet.name);
    if (sheet.name === "about") expect(sheet.rows).toContainEqual(["revision", "1"]);
    if (["about", "changes"].includes(sheet.name)) expect(sheet).not.toBe(same);
    else expect(sheet).toBe(same);
  }
});

test("an anonymous export makes its own sheets", () => {
  expect(JSON.stringify(record.sheets)).toContain("Gull Wharf");
  const { sheets } = anonymousRecord(record);
  expect(sheets).toBeUndefined();
});
