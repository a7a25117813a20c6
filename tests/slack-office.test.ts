import { readFileSync } from "node:fs";
import { afterEach, expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import { verifyStore } from "../src/record/verify.ts";
import { closeScene, openScene, type Scene, south, startBot, until } from "./support/slack-crew.ts";

const scenes: Scene[] = [];
async function scene(): Promise<Scene> {
  const made = await openScene({ board: false });
  scenes.push(made);
  return made;
}
afterEach(async () => {
  for (const one of scenes.splice(0)) expect(await closeScene(one)).toEqual([]);
});
const said = ({ standIn }: Scene): readonly string[] => standIn.bot(south).map(({ text }) => text);

test("the office gets the day's files in the chat, once; nobody else does", async () => {
  const made = await scene();
  const { standIn } = made;
  standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling. Sorrel");
  await until("the job is opened", () => said(made).length === 1);
  standIn.say("U0SORREL", south, "export today");
  await until("he is told", () => said(made)[1]?.includes("office") === true);
  let lost = 1;
  standIn.fault = (method) =>
    method === "files.completeUploadExternal" && lost-- > 0
      ? { kind: "cut", afterStoring: true }
      : undefined;
  standIn.say("U0IBSEN", south, "export today");
  const shared = () =>
    standIn.bot(south).flatMap(({ files }) => files?.map(({ name }) => name) ?? []);
  await until("the workbook is there", () => shared().some((name) => name.endsWith(".xlsx")));
  await until(
    "all is sent",
    () =>
      Number(
        made.bot.bot.store.db
          .prepare("SELECT count(*) FROM outbox WHERE state <> 'sent'")
          .pluck()
          .get(),
      ) === 0,
  );
  expect(shared().some((name) => /jobs.*\.csv$/.test(name))).toBe(true);
  expect(new Set(shared()).size).toBe(shared().length);
  expect(allJobs(made.bot.bot.memory)).toHaveLength(1);
  // what is out is let go of: it can be made again
  const kept = made.bot.bot.store.db.prepare("SELECT count(*) FROM words WHERE key LIKE 'sent:%'");
  await until("nothing of it is kept", () => kept.pluck().get() === 0);
  // the digest stands where nobody can rewrite it, and is the one that verify names
  const digest = /^Digest of the record: (\d+-[0-9a-f]{64})$/m.exec(said(made).join("\n"))?.[1];
  expect(digest).toBe(verifyStore(made.bot.bot.store).digest);
  expect(said(made).join("\n")).toMatch(/The files of \d{4}-\d\d-\d\d, 1 job, revision 1\./);
});

test("the office's sheets are taken in from the chat, with each refused row named; nobody else's are", async () => {
  const made = await scene();
  const { standIn } = made;
  const sheet = readFileSync("fixtures/days/day-a/equipment.csv");
  const file = standIn.addFile("equipment.csv", "text/csv", sheet);
  standIn.say("U0SORREL", south, "import", { subtype: "file_share", files: [file] });
  await until("he is told", () => said(made)[0]?.includes("office") === true);
  expect(made.bot.bot.memory.registry.equipment).toEqual([]);
  standIn.say("U0IBSEN", south, "import", { subtype: "file_share", files: [file] });
  await until("it is taken in", () => said(made)[1]?.includes("added") === true);
  expect(made.bot.bot.memory.registry.equipment.length).toBeGreaterThan(0);
});

test("a late answer says so; one that is in time does not", async () => {
  const made = await scene();
  const { standIn } = made;
  standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling. Sorrel");
  await until("the job is opened", () => said(made).length === 1);
  expect(said(made)[0]).not.toContain("Late");
  await made.bot.stop();
  standIn.sayUnheard("U0SORREL", south, "OU-3 comp 1 lead 2 to ground 84 megohm at 500 V");
  const hour = 3_600_000;
  made.bot = startBot(made.folder, made.settings, { now: () => Date.now() + hour });
  await until("it is answered", () => said(made).length === 2);
  expect(said(made)[1]).toMatch(/\nLate answer: you wrote this at \d\d:\d\d/);
});
