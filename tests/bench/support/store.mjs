import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openBot, receive, work } from "../../../dist/src/bot.js";
import { closeStore, openStore } from "../../../dist/src/record/store.js";

/** A folder on a real disk (READBACK_BENCH_FOLDER chooses which), gone when the measurement ends. */
export function folder() {
  const base = process.env.READBACK_BENCH_FOLDER ?? tmpdir();
  mkdirSync(base, { recursive: true });
  const made = mkdtempSync(join(base, "bench-"));
  process.on("exit", () => rmSync(made, { recursive: true, force: true }));
  return made;
}

export function opened(path) {
  const made = openStore(path);
  if (!made.ok) throw new Error(made.problem);
  return made.store;
}

export function botOn(path) {
  let count = 0;
  return openBot(opened(path), () => `salt ${count++}`);
}

export const close = (bot) => closeStore(bot.store);

const places =
  "Alder Birch Cedar Damson Elder Fennel Gorse Hazel Iris Juniper Kestrel Larch Mallow Nettle Osier Poplar Quince Rowan Sorrel Tansy".split(
    " ",
  );
const kinds = "Wharf Dairy School Chapel Foundry Market Library Clinic Depot Mill".split(" ");
/** 200 sites of invented names, each told by two words. */
export const siteAt = (n) => `${places[n % 20]} ${kinds[Math.floor(n / 20) % 10]}`;
/** 25 technicians. */
export const crewAt = (n) => `tech${n % 25}`;

/** What a technician says on one job: 20 messages with a reading each. */
export const visit = [
  "lead 1 to ground 84 megohm at 500 V",
  "lead 2 to ground 81 megohm at 500 V",
  "lead 3 to ground 88 megohm at 500 V",
  "T1 to T2 1.2 ohm",
  "T2 to T3 1.2 ohm",
  "T1 to T3 1.3 ohm",
  "L1 to L2 208 V",
  "L2 to L3 209 V",
  "L1 to L3 207 V",
  "comp 1 L1 14.2 A",
  "comp 1 L2 14.0 A",
  "comp 1 L3 14.4 A",
  "suction 118 psi",
  "head 340 psi",
  "suction line 55 F",
  "liquid line 98 F",
  "outside 90 F",
  "return air 76 F",
  "supply air 57 F",
  "fan cap 38.2 uF",
];

export function say(bot, message) {
  receive(bot, {
    message: {
      platform: "bench",
      channel: "south",
      person: "sorrel",
      role: "tech",
      text: "",
      files: [],
      ...message,
    },
  });
  for (const { error } of work(bot)) if (error !== undefined) throw new Error(error);
}

/** The value below which a share of sorted numbers lies. */
export const quantile = (sorted, share) => sorted[Math.floor(sorted.length * share)] ?? 0;

export const numerically = (a, b) => a - b;

export function tell(rows) {
  for (const row of rows) console.log(JSON.stringify(row));
}
