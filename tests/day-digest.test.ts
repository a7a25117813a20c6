import { expect, test } from "vitest";
import { dayDigest } from "../adapters/serve/day-digest.ts";
import { makeLog } from "../adapters/serve/log.ts";
import { serve } from "../adapters/serve.ts";
import { relearn } from "../src/bot/memory.ts";
import { type Bot, openBot, receive, work } from "../src/bot.ts";
import { digestOf, faultsAgainstDigest } from "../src/record/chain.ts";
import { readLinks } from "../src/record/entries-table.ts";
import { readCursor } from "../src/record/inbox.ts";
import { unsent } from "../src/record/outbox.ts";
import { writeSetting } from "../src/record/settings.ts";
import { openStore, type Store } from "../src/record/store.ts";
import { storeDigest } from "../src/record/store-digest.ts";
import { paperPlatform } from "./support/paper-platform.ts";
import { until } from "./support/slack-crew.ts";
import { stopSignal } from "./support/stop-signal.ts";

const post = { platform: "slack", channel: "dispatch", at: "18:00" };
/** The company's clock stands five hours behind: 18:00 there is 23:00. */
const at = (day: number, utc: string): number => Date.parse(`2026-05-${day}T${utc}:00Z`);

function fresh(): Store {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  writeSetting(opened.store, "time_zone", "America/Chicago");
  return opened.store;
}

let salts = 0;
function botOn(store: Store): Bot {
  const bot = openBot(store, () => `salt ${salts++}`);
  relearn(bot.memory, store);
  return bot;
}

let count = 0;
function say(bot: Bot, text: string): void {
  receive(bot, {
    message: {
      ...{ platform: "slack", id: `m${++count}`, at: "2026-05-12T10:00:00-05:00" },
      ...{ channel: "south", person: "maren", role: "dispatcher", text, files: [] },
    },
  });
  work(bot);
}

const posted = ({ store }: Bot): readonly string[] =>
  unsent(store, "slack").flatMap(({ id, text }) => (id.startsWith("digest:") ? [text] : []));

test("at the day's end the digest stands in the channel once, also after a restart", () => {
  const store = fresh();
  const bot = botOn(store);
  say(bot, "New job: Gull Wharf OU-3, not cooling");
  say(bot, "New job: Saltbox Lofts RTU-7, no heat");
  const look = dayDigest(bot, post);
  expect(look(at(12, "17:00"))).toBe(false);
  expect(look(at(12, "22:59"))).toBe(false);
  expect(look(at(12, "23:00"))).toBe(true);
  expect(look(at(12, "23:01"))).toBe(false);
  expect(dayDigest(botOn(store), post)(at(12, "23:02"))).toBe(false);
  // nor does a clock that was set back
  expect(dayDigest(botOn(store), post)(at(12, "12:00"))).toBe(false);
  expect(dayDigest(botOn(store), post)(at(12, "23:30"))).toBe(false);
  const digest = digestOf(readLinks(store));
  expect(posted(bot)).toEqual([
    `Digest of the record, end of 2026-05-12: ${digest}\nIt proves later what was written by now.`,
  ]);
});

test("a day on which nothing was written has none; one that was slept through is told later", () => {
  const bot = botOn(fresh());
  const look = dayDigest(bot, post);
  expect(look(at(10, "15:00"))).toBe(false);
  expect(look(at(10, "23:10"))).toBe(false);
  say(bot, "New job: Gull Wharf OU-3, not cooling");
  expect(look(at(11, "23:10"))).toBe(true);
  expect(look(at(12, "23:10"))).toBe(false);
  say(bot, "New job: Saltbox Lofts RTU-7, no heat");
  expect(dayDigest(botOn(bot.store), post)(at(14, "12:00"))).toBe(true);
  expect(posted(bot).map((text) => text.slice(0, 43))).toEqual([
    "Digest of the record, end of 2026-05-11: 1-",
    "Digest of the record, end of 2026-05-13: 2-",
  ]);
});

test("switched on for a store with years in it, it says nothing of the days before", () => {
  const bot = botOn(fresh());
  say(bot, "New job: Gull Wharf OU-3, not cooling");
  expect(dayDigest(bot, post)(at(20, "15:00"))).toBe(false);
  expect(posted(bot)).toEqual([]);
});

test("made from last entries alone it is the digest of the whole chain, and verify holds it against that", () => {
  const bot = botOn(fresh());
  expect(storeDigest(bot.store)).toBeUndefined();
  for (const unit of ["OU-3", "RTU-7", "WIC-2"]) say(bot, `New job: Gull Wharf ${unit}, warm`);
  say(bot, "OU-3 suction 118 psi");
  const digest = storeDigest(bot.store) ?? "";
  const links = readLinks(bot.store);
  expect(digest).toBe(digestOf(links));
  expect(faultsAgainstDigest(links, digest)).toEqual([]);
  const rewritten = links.map((link) => ({ ...link, hash: link.hash.replaceAll("a", "b") }));
  expect(faultsAgainstDigest(rewritten, digest)).toHaveLength(1);
});

test("the program posts it by itself; started again it says none twice", async () => {
  const store = fresh();
  let ms = at(12, "22:50");
  const digestsUntil = async (end: number): Promise<readonly string[]> => {
    const paper = paperPlatform({ boardChannel: "dispatch" });
    const { stop, end: stopNow } = stopSignal();
    const log = makeLog(
      () => {},
      () => [],
      Date.now,
    );
    const digest = { platform: "paper", channel: "dispatch", at: "18:00" };
    const bot = botOn(store);
    const ended = serve(bot, {
      ...{ platforms: [paper.platform], log, stop, digest },
      now: () => ms,
    });
    await until("it has looked", () => readCursor(store, "serve", "digest") !== undefined);
    say(bot, `New job: Gull Wharf OU-${count}, not cooling`);
    ms = end;
    const digests = (): readonly string[] =>
      paper.sent.flatMap(({ part }) => (part.text.startsWith("Digest") ? [part.text] : []));
    await until("the digest is out", () => digests().length > 0);
    stopNow();
    await ended;
    return digests().map((text) => text.slice(0, 40));
  };
  expect(await digestsUntil(at(12, "23:05"))).toEqual(["Digest of the record, end of 2026-05-12:"]);
  expect(await digestsUntil(at(13, "23:05"))).toEqual(["Digest of the record, end of 2026-05-13:"]);
});
