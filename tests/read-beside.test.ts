import { expect, test } from "vitest";
import {
  clock,
  drawn,
  ofFahrenheit,
  ofMicrons,
  ofPounds,
  ofPsi,
  type Piece,
  report,
  type Voice,
} from "./support/drawn-notes.ts";

/** Notes of each kind, and the share of them that may be read otherwise with no question. */
const NOTES = 200;
const MOST_SILENT = 0.04;

/** How people tell it; common practice, no source. */
type Way = (voice: Voice) => Piece;

const minutes = (voice: Voice): string => `${voice.n(voice.pick(10, 15, 20, 25, 40))} minutes`;
const hours = ({ typed, pick }: Voice): string =>
  typed ? pick("2.5 hrs", "3 hrs", "1h 30m", "45 min") : pick("two hours", "an hour and a half");

const statuses: readonly Way[] = [
  (voice) => {
    const { text, is } = clock(voice);
    const came = voice.pick(
      "on site at",
      "got here at",
      "arrived at",
      "pulled up at",
      "here since",
    );
    return { way: "came at", text: `${came} ${text}`, reads: [], status: "on_site", time: is };
  },
  (voice) => {
    const came = voice.pick("on site", "got here", "here about", "pulled up");
    return { way: "came ago", text: `${came} ${minutes(voice)} ago`, reads: [], status: "on_site" };
  },
  (voice) => {
    const { text, is } = clock(voice);
    const left = voice.pick("left at", "leaving at", "left site at", "out of here at");
    return { way: "left at", text: `${left} ${text}`, reads: [], status: "left_site", time: is };
  },
  (voice) => {
    const { text, is } = clock(voice);
    const after = `left at ${text}, ${hours(voice)} total`;
    return { way: "left after", text: after, reads: [], status: "left_site", time: is };
  },
  (voice) => {
    const done = `done, ${hours(voice)} on site`;
    return { way: "done after", text: done, reads: [], status: "done" };
  },
  (voice) => {
    const way = voice.pick("headed there now,", "on my way,");
    return {
      way: "on the way",
      text: `${way} ${minutes(voice)} away`,
      reads: [],
      status: "on_the_way",
    };
  },
  (voice) => {
    const ran = voice.pick("let it run", "been running", "ran it");
    return { way: "ran for", text: `${ran} ${hours(voice)}`, reads: [] };
  },
  (voice) => {
    const { text } = clock(voice);
    return { way: "since", text: `been at it since ${text}`, reads: [] };
  },
];

const parts: readonly Way[] = [
  (voice) => {
    const { n, typed, pick, int } = voice;
    const [a, b, c] = [pick(16, 20, 24), pick(20, 25), pick(1, 2, 4)];
    const size = typed ? `${a}x${b}x${c}` : `${n(a)} by ${n(b)} by ${n(c)}`;
    return { way: "filters", text: `need ${n(int(2, 12))} ${size} filters`, reads: [] };
  },
  (voice) => {
    const { n, pick } = voice;
    const gear = pick("contactor", "breaker", "disconnect");
    const order = pick("need", "order", "gonna need");
    return { way: "gear", text: `${order} a ${n(pick(30, 40, 60))} amp ${gear}`, reads: [] };
  },
  ({ typed, pick }) => {
    const drier = typed ? pick("3/8", "5/8") : pick("three eighths", "half inch");
    return { way: "drier", text: `${pick("need", "ordered")} a ${drier} drier`, reads: [] };
  },
  ({ n, typed, pick }) => {
    const feet = typed ? "ft" : "feet";
    const wire = typed ? "18/5 wire" : "eighteen five wire";
    return { way: "wire", text: `need ${n(pick(25, 50, 100))} ${feet} of ${wire}`, reads: [] };
  },
];

const rooms: readonly Way[] = [
  ({ n, typed, pick, int }) => {
    const degrees = int(72, 88);
    const room = typed
      ? pick("room 204", "suite 310", "zone 2", "floor 3", "kitchen")
      : pick("room two oh four", "zone two", "the kitchen");
    const verb = pick("is at", "is", "reads", "came down to");
    const reads = [{ quantity: "temperature", value: ofFahrenheit(degrees) }];
    return { way: "room", text: `${room} ${verb} ${n(degrees)}`, reads };
  },
  ({ n, typed, pick, int }) => {
    const degrees = int(74, 88);
    const list = typed
      ? pick("rooms 204, 206 and 210", "rms 204 206 210", "suites 204, 206, 210")
      : pick("rooms two oh four two oh six and two ten");
    const one = typed ? "206" : "two oh six";
    const reads = [{ quantity: "temperature", value: ofFahrenheit(degrees) }];
    const text = `${list} are ${pick("warm", "not cooling", "hot")}`;
    return typed
      ? { way: "list and one", text: `${text}, ${one} is at ${n(degrees)}`, reads }
      : { way: "list", text, reads: [] };
  },
];

function weight({ n, typed, pick, int }: Voice): { readonly text: string; readonly kg: number } {
  const [pounds, ounces] = [int(2, 24), int(2, 15)];
  const [lb, oz] = typed ? [pick(" lb", "#", "lb"), pick(" oz", "oz")] : [" pounds", " ounces"];
  const both = { text: `${n(pounds)}${lb} ${n(ounces)}${oz}`, kg: ofPounds(pounds + ounces / 16) };
  return pick(both, { text: `${n(pounds)}${lb}`, kg: ofPounds(pounds) });
}

const gas: readonly Way[] = [
  (voice) => {
    const { text, kg } = weight(voice);
    const reads = [{ quantity: "mass", value: kg, action: "recovered" }];
    const { pick } = voice;
    return {
      way: "out",
      text: pick(`recovered ${text}`, `got ${text} out`, `gas out ${text}`),
      reads,
    };
  },
  (voice) => {
    const { text, kg } = weight(voice);
    const reads = [{ quantity: "mass", value: kg, action: "charged" }];
    const charged = voice.pick("charged", "added", "put in", "weighed in");
    return { way: "in", text: `${charged} ${text}`, reads };
  },
  (voice) => {
    const [out, back] = [weight(voice), weight(voice)];
    const reads = [
      { quantity: "mass", value: out.kg, action: "recovered" },
      { quantity: "mass", value: back.kg, action: "charged" },
    ];
    return { way: "out and in", text: `recovered ${out.text} and charged ${back.text}`, reads };
  },
  (voice) => {
    const { text, kg } = weight(voice);
    const reads = [{ quantity: "mass", value: kg, action: "recovered" }];
    const { n, tenths, int, pick } = voice;
    const tank = pick(`cylinder tare ${n(tenths(24, 29))}`, `cylinder ${n(int(11, 99))}`);
    return { way: "cylinder", text: `recovered ${text} ${pick("into ", "")}${tank}`, reads };
  },
];

const held: readonly Way[] = [
  (voice) => {
    const { n, int, pick } = voice;
    const [from, to] = [int(20, 40) * 10, int(41, 60) * 10];
    const reads = [from, to].map((one) => ({ quantity: "vacuum", value: ofMicrons(one) }));
    const later = pick(`${minutes(voice)} later ${n(to)}`, `${n(to)} after ${minutes(voice)}`);
    return { way: "rise", text: `pulled to ${n(from)} microns, ${later}`, reads };
  },
  (voice) => {
    const microns = voice.int(60, 95) * 10;
    const reads = [{ quantity: "vacuum", value: ofMicrons(microns) }];
    const { text } = clock(voice);
    const on = voice.pick("pump on since", "started the pump at");
    return { way: "pump since", text: `${on} ${text}, it's at ${voice.n(microns)} microns`, reads };
  },
  (voice) => {
    const psi = voice.int(20, 60) * 10;
    const reads = [{ quantity: "pressure", value: ofPsi(psi) }];
    const { n, pick } = voice;
    const still = pick("no drop in", "held for", "steady for");
    return {
      way: "nitrogen",
      text: `nitrogen at ${n(psi)} psi, ${still} ${minutes(voice)}`,
      reads,
    };
  },
];

test.each([
  { name: "statuses with times", ways: statuses },
  { name: "parts with sizes", ways: parts },
  { name: "rooms with degrees", ways: rooms },
  { name: "gas by weight", ways: gas },
  { name: "what holds and rises", ways: held },
])("$name beside what was measured are read as meant, or asked about", ({ name, ways }) => {
  const seed = Number(process.env.READBACK_SEED ?? 47);
  const notes = drawn(ways, NOTES, seed);
  console.info(report(name, seed, notes));
  const silent = notes.filter(({ is }) => is === "silently");
  const meant = notes.filter(({ is }) => is === "as meant");
  expect(silent.length).toBeLessThanOrEqual(NOTES * MOST_SILENT);
  expect(meant.length).toBeGreaterThanOrEqual(NOTES * 0.85);
});
