import { expect, test } from "vitest";
import { jobAt } from "../src/bot/rest.ts";
import { openBot, receive, tick, work } from "../src/bot.ts";
import type { FileNote, Message } from "../src/model.ts";
import { findOut } from "../src/record/outbox.ts";
import { isCurrent } from "../src/record/readings.ts";
import { openStore } from "../src/record/store.ts";

/** What is rewritten or removed before anybody said whose it is: only the last words are filed, once. */
function crew() {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  let salts = 0;
  const bot = openBot(opened.store, () => `salt ${salts++}`);
  let count = 0;
  const say = (
    text: string,
    change: Partial<Pick<Message, "edits" | "deletes" | "person" | "files">> = {},
  ): string => {
    const id = `m${++count}`;
    const at = `2026-05-12T09:${String(count).padStart(2, "0")}:00Z`;
    const message = { platform: "chat", id, at, channel: "south", person: "bram", text };
    const role = change.person === undefined ? "tech" : "dispatcher";
    receive(bot, { message: { ...message, role, files: [], ...change } });
    tick(bot, at);
    work(bot);
    return id;
  };
  const stand = (): readonly string[] =>
    (jobAt(bot.memory, 1)?.readings ?? [])
      .filter(isCurrent)
      .map(({ figure, taken }) => `${figure.number} ${figure.unit} ${taken.slice(11, 16)}`);
  const answer = (id: string) => findOut(bot.store, `reply:chat:${id}:0`);
  return { bot, say, stand, answer };
}

const opening = "New job: Gull Wharf OU-3, second floor warm. Bram";

test("a message that waits for its job and is rewritten is filed once, with its last words", () => {
  const { say, stand, answer } = crew();
  say(opening, { person: "maren" });
  const first = say("comp 1 lead 2 to ground 84 megohm at 500 V");
  say("comp 1 lead 2 to ground 49 megohm at 500 V", { edits: first });
  const last = say("comp 1 lead 2 to ground 48 megohm at 500 V", { edits: first });
  expect(answer(last)?.text).toBe(
    "lead 2 48 megohm to ground at 500 V: for job 1 OU-3? Kept, not filed yet.",
  );
  expect(answer(last)?.edits).toBe(`reply:chat:${first}:0`);
  const named = say("1");
  expect(stand()).toEqual(["48 megohm 09:02"]);
  expect(answer(named)?.text).toContain("lead 2 48 megohm");
  expect(answer(named)?.text).not.toMatch(/84|49/);
  say("comp 1 lead 2 to ground 47 megohm at 500 V", { edits: first });
  expect(stand()).toEqual(["47 megohm 09:02"]);
  say("", { deletes: first });
  expect(stand()).toEqual([]);
});

test("an edit that names the job files the message; the next edit and a removal find it there", () => {
  const { say, stand } = crew();
  say(opening, { person: "maren" });
  const first = say("comp 1 lead 2 to ground 84 megohm at 500 V");
  say("OU-3 comp 1 lead 2 to ground 48 megohm at 500 V", { edits: first });
  expect(stand()).toEqual(["48 megohm 09:02"]);
  say("OU-3 comp 1 lead 2 to ground 47 megohm at 500 V", { edits: first });
  expect(stand()).toEqual(["47 megohm 09:02"]);
  say("", { deletes: first });
  expect(stand()).toEqual([]);
});

test("talk that becomes a reading by its edits is filed once", () => {
  const { say, stand } = crew();
  say(opening, { person: "maren" });
  const talk = say("hang on, typing");
  say("comp 1 lead 2 to ground 48 megohm at 500 V", { edits: talk });
  say("comp 1 lead 2 to ground 47 megohm at 500 V", { edits: talk });
  say("1");
  expect(stand()).toEqual(["47 megohm 09:02"]);
  say("comp 1 lead 2 to ground 46 megohm at 500 V", { edits: talk });
  expect(stand()).toEqual(["46 megohm 09:02"]);
});

test("a mistyped opening that is mended twice opens one job, as it reads last", () => {
  const { bot, say } = crew();
  const first = say("nwe jb Gull Wharf OU-3", { person: "maren" });
  say("New job: Gull Wharf OU-3, warm", { person: "maren", edits: first });
  say("New job: Gull Wharf OU-4, warm", { person: "maren", edits: first });
  expect(jobAt(bot.memory, 1)?.equipment).toBe("OU-4");
  expect(jobAt(bot.memory, 2)).toBeUndefined();
});

test("the photo of a message that waits is kept with the job that its new caption names", () => {
  const { bot, say } = crew();
  say(opening, { person: "maren" });
  const photo: FileNote = { name: "a.jpg", type: "image/jpeg", size: 3, sha256: "ab".repeat(32) };
  const first = say("suction 60 psi", { files: [photo] });
  say("OU-3 suction 61 psi", { edits: first });
  expect(jobAt(bot.memory, 1)?.files.map(({ sha256 }) => sha256)).toEqual([photo.sha256]);
});

test("what is taken back while it waits leaves no question behind", () => {
  const { say, stand, answer } = crew();
  say(opening, { person: "maren" });
  const first = say("comp 1 lead 2 to ground 84 megohm at 500 V");
  const gone = say("", { deletes: first });
  expect(answer(gone)).toMatchObject({
    text: "Taken back before it was filed.",
    edits: `reply:chat:${first}:0`,
  });
  say("1");
  expect(stand()).toEqual([]);
});

test("a photo without a word is asked about by what it is", () => {
  const { say, answer } = crew();
  say(opening, { person: "maren" });
  const photo: FileNote = { name: "a.jpg", type: "image/jpeg", size: 3, sha256: "ab".repeat(32) };
  const one = say("", { files: [photo] });
  expect(answer(one)?.text).toBe("Your photo: for job 1 OU-3? Kept, not filed yet.");
  const two = say(" ", { files: [photo, { ...photo, type: "application/pdf" }] });
  expect(answer(two)?.text).toBe("Your 2 files: kept too, for job 1 OU-3 on your yes.");
});

test("a hardly possible value among what waited is asked about when its job is known", () => {
  const { bot, say, answer } = crew();
  say(opening, { person: "maren" });
  say("suction 1240 psi, R-410A");
  const named = say("1");
  expect(answer(named)?.text).toContain("1240 psi is hardly possible: kept, not used.");
  say("yes");
  expect(jobAt(bot.memory, 1)?.readings.map(({ doubtful }) => doubtful)).toEqual([undefined]);
});
