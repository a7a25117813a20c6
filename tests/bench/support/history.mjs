import { appendEntry } from "../../../dist/src/record/entries-table.js";
import { putToRest } from "../../../dist/src/record/rest-table.js";
import { transact } from "../../../dist/src/record/store.js";
import { botOn, close, crewAt, say, siteAt, visit } from "./store.mjs";

export const dayMs = 86_400_000;
const begin = Date.parse("2023-01-02T13:00:00Z");
/** The unit that is measured: four earlier visits in every store, so that only the store differs. */
export const measured = { site: "Measured Hall", unit: "RTU-99" };
const measuredVisits = 4;

/** Jobs a day of a company of 45 calls. */
const perDay = 45;

/**
 * A store with so many readings, 20 a job, written as the program writes them: one job is played,
 * the others are its entries, messages and answers again on units and days of their own. The last
 * `open` jobs are not done.
 */
export function history(path, readings, open) {
  const bot = botOn(path);
  const jobs = Math.ceil(readings / visit.length);
  const template = play(bot);
  const end = begin + Math.ceil(jobs / perDay) * dayMs;
  for (let from = 1; from < jobs; from += 500) {
    transact(bot.store, () => {
      for (let nth = from; nth < Math.min(jobs, from + 500); nth++)
        copy(bot, template, nth, { jobs, open, end });
    });
  }
  close(bot);
  return { jobs, end };
}

function play(bot) {
  say(bot, {
    id: "j0",
    at: new Date(begin).toISOString(),
    role: "dispatcher",
    person: "maren",
    text: `New job: ${measured.site} ${measured.unit}, not cooling`,
  });
  visit.forEach((text, n) => {
    say(bot, {
      id: `j0.${n}`,
      at: new Date(begin + (n + 1) * 120_000).toISOString(),
      thread: "j0",
      text,
    });
  });
  say(bot, {
    id: "j0.done",
    at: new Date(begin + 3600_000).toISOString(),
    thread: "j0",
    text: "done, leaving",
  });
  const replies = new Map(
    bot.store.db
      .prepare("SELECT answers, text, detail FROM outbox WHERE kind = 'reply'")
      .all()
      .map((row) => [row.answers, row]),
  );
  return { entries: bot.memory.entries.get(1), replies };
}

function copy(bot, { entries, replies }, nth, { jobs, open, end }) {
  const { db } = bot.store;
  const job = nth + 1;
  const at = begin + Math.floor(nth / perDay) * dayMs + (nth % perDay) * 10 * 60_000;
  const isMeasured = nth < measuredVisits;
  const site = isMeasured ? measured.site : siteAt(nth % 200);
  const equipment = isMeasured ? measured.unit : `RTU-${1 + (Math.floor(nth / 200) % 5)}`;
  const stays = nth >= jobs - open;
  const person = crewAt(nth);
  db.prepare("INSERT OR IGNORE INTO person (platform, handle) VALUES ('bench', ?)").run(person);
  let last = at;
  for (const { place: _, ...entry } of entries) {
    const id = entry.message.replace("j0", `j${nth}`);
    const opens = entry.facts.opens;
    if (stays && id.endsWith(".done")) continue;
    const when = new Date(at + (Date.parse(entry.at) - begin)).toISOString();
    last = Date.parse(when);
    const who = opens === undefined ? person : "maren";
    const thread = opens === undefined ? `j${nth}` : null;
    const text = opens === undefined ? entry.text : `New job: ${site} ${equipment}, not cooling`;
    db.prepare(
      `INSERT INTO inbox (platform, id, at, instant, channel, thread, person, role, files, state, job)
       SELECT 'bench', ?, ?, ?, 'south', ?, id, ?, '[]', 'done', ? FROM person WHERE platform = 'bench' AND handle = ?`,
    ).run(id, when, last, thread, opens === undefined ? "tech" : "dispatcher", job, who);
    db.prepare("INSERT INTO words (key, salt, content) VALUES (?, 'salt', ?)").run(
      `message:bench:${id}`,
      JSON.stringify({ text, names: [] }),
    );
    const facts =
      opens === undefined
        ? entry.facts
        : {
            ...entry.facts,
            opens: { ...opens, site, equipment, thread: `j${nth}` },
            statements: [],
          };
    appendEntry(
      bot.store,
      {
        ...entry,
        job,
        at: when,
        who,
        message: id,
        text,
        facts,
        ...(thread === null ? {} : { thread }),
      },
      "salt",
    );
    const reply = replies.get(entry.message);
    if (reply !== undefined) {
      db.prepare(
        `INSERT INTO outbox (id, seq, platform, channel, thread, kind, answers, text, detail, state)
         VALUES (?, (SELECT coalesce(max(seq), 0) + 1 FROM outbox), 'bench', 'south', ?, 'reply', ?, ?, ?, 'sent')`,
      ).run(
        `reply:bench:${id}:0`,
        `j${nth}`,
        id,
        reply.text,
        JSON.stringify({ ...JSON.parse(reply.detail), job, person: who, day: when.slice(0, 10) }),
      );
    }
  }
  if (!stays && last < end - 3 * dayMs) {
    putToRest(bot.store, {
      job,
      site,
      equipment,
      opened: new Date(at).toISOString(),
      people: [person],
      first: at,
      last,
      compressor: false,
      gas: [],
    });
  }
}
