import type { Draft } from "./draft.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { mayBeOhms } from "./may-be-ohms.ts";
import { type Note, state } from "./note.ts";
import type { Setting } from "./settle.ts";
import {
  beforeColon,
  behindRow,
  behindTold,
  setBeforeOhms,
  setThenRead,
  testAnnounced,
  testThen,
} from "./test-announced.ts";
import { testerVolts } from "./tester-volts.ts";
import { voltsColon } from "./volts-colon.ts";
import { handOn } from "./volts-handed-on.ts";
import { ofCoil, ofHold, warmWindings } from "./winding-warm.ts";
import { role } from "./word.ts";

/** Test voltages that insulation testers have. */
const testVoltages: readonly number[] = [
  25, 50, 100, 125, 250, 500, 600, 1000, 1500, 2000, 2500, 3000, 5000, 10000, 15000,
];

/** The machine that a figure was megged of, with nothing between: "comp 1 megs out at 500". */
function meggedOf(items: readonly Item[], index: number): string | undefined {
  let at = index - 1;
  while (/^(?:at|out|to|is|:|=|@)$/.test(items[at]?.text ?? "")) at--;
  if (!/^meg(?:s|ged)?$/.test(items[at]?.text ?? "")) return undefined;
  const machine = items[at - 1];
  return machine?.kind === itemKind.subject ? machine.subject : undefined;
}

/** "comp 1 megs 500 comp 2 megs 480": of two machines each has its own figure, and one is no tester's voltage. */
function ofEachMachine(draft: Draft, items: readonly Item[]): boolean {
  const own = meggedOf(items, draft.index);
  if (own === undefined) return false;
  return items.some((item, at) => {
    if (item.kind !== itemKind.number || testVoltages.includes(item.value)) return false;
    const other = meggedOf(items, at);
    return other !== undefined && other !== own;
  });
}

function isTestVoltage(draft: Draft, items: readonly Item[], setting: Setting): boolean {
  if (ofEachMachine(draft, items)) {
    // "comp 1 meg at 500 comp 2 meg at 480": megohms, or a meg at so many volts
    if (/^meg (?:at|@)$/.test(wordsFrom(items, draft.index - 2, draft.index)))
      draft.question = "quantity";
    return false;
  }
  if (ofTheTester(draft, items)) return besidesPoints(items) || testThen(draft, items);
  if (testerAt(draft, items) || voltsColon(draft, items)) return true;
  // "lead 2. 52 meg. test voltage 500"
  if (setting.insulation && testVoltageSaid(draft, items)) return true;
  if (settingOfTester(draft, items) && (setting.insulation || megohmsIn(items))) return true;
  if (setting.insulation && (testAnnounced(draft, items) || testThen(draft, items))) return true;
  if (setting.insulation && setThenRead(draft, items)) return true;
  if ((setting.insulation || megohmsIn(items)) && setBeforeOhms(draft, items)) return true;
  if (behindMeg(draft, items) || behindTold(draft, items)) return true;
  if (behindRow(draft, items) || (setting.insulation && beforeColon(draft, items))) return true;
  const factor = draft.unit?.dimension === "voltage" ? draft.unit.factor : Number.NaN;
  const volts = draft.value * (draft.unit === undefined ? 1 : factor);
  if (!testVoltages.includes(volts)) return false;
  const prepared =
    /^(?:at|@|with)$/.test(items[draft.index - 1]?.text ?? "") || headsTest(draft, items);
  if (
    !prepared &&
    !ohmsBehind(draft, items) &&
    draft.points !== undefined &&
    draft.before.some((index) => items[index]?.kind === itemKind.points)
  )
    return false;
  if (draft.place !== undefined || draft.rating !== undefined || draft.over) return false;
  if (draft.unit !== undefined) return setting.insulation || megohmsIn(items);
  const before = items[draft.index - 1];
  if (before?.text === "@" || (before?.roles ?? 0) & role.preposition)
    return setting.insulation && onlyTime(draft, items);
  return (
    setting.insulation &&
    testerVolts.has(draft.value) &&
    !(before?.kind === itemKind.word || before?.text === "/") &&
    draft.before.length === 0 &&
    items[draft.index + 1] === undefined
  );
}

function testVoltageSaid(draft: Draft, items: readonly Item[]): boolean {
  if (draft.unit !== undefined && draft.unit.dimension !== "voltage") return false;
  const [test, volts] = [items[draft.index - 2]?.text ?? "", items[draft.index - 1]?.text ?? ""];
  return /^(?:test|testing|tester)$/.test(test) && /^(?:voltage|volts|volt)$/.test(volts);
}

/** "1.4 gig with the 500 volt setting" */
function settingOfTester(draft: Draft, items: readonly Item[]): boolean {
  if (draft.unit?.figure !== "V" || !testVoltages.includes(draft.value)) return false;
  return /^(?:setting|range|scale|test)$/.test(items[draft.index + 1]?.text ?? "");
}

/** "lead 1 .9g lead 2 1.1g 1000v": only a tester reads so many ohms. */
function megohmsIn(items: readonly Item[]): boolean {
  return items.some(
    ({ unit, owner }) =>
      owner === undefined && unit?.dimension === "resistance" && unit.factor >= 1e6,
  );
}

/** "megger 500": the tester's name and a voltage that testers have, or what it read? */
export function ofTheTester(draft: Draft, items: readonly Item[]): boolean {
  const alone = items.length === 2 && items[0]?.text === "meg";
  return (
    (alone || /^megg(?:er|ers|ed|ing)$/.test(items[draft.index - 1]?.text ?? "")) &&
    items[draft.index]?.unit === undefined &&
    draft.points === undefined &&
    testerVolts.has(draft.value)
  );
}

/** "meg @ 1000: all three > 4G", "meg 500 - L1 2.2G L2 2.1G": the test's name, its voltage, then the ohms. */
function behindMeg(draft: Draft, items: readonly Item[]): boolean {
  if (items[draft.index]?.unit !== undefined || draft.points !== undefined) return false;
  if (!testerVolts.has(draft.value)) return false;
  const at = /^(?:@|at)$/.test(items[draft.index - 1]?.text ?? "");
  const head = items[draft.index - (at ? 2 : 1)];
  if (head?.kind !== itemKind.unit || !/^meg(?:s|ohms?)?$/.test(head.text)) return false;
  const last = items[draft.index - (at ? 3 : 2)]?.kind;
  if (last === itemKind.number || (at && last === itemKind.over)) return last === itemKind.over;
  // "megohms at 500", and nothing measured yet
  if (at && items.filter(({ kind }) => kind === itemKind.number).length === 1) return true;
  const behind = items.slice(draft.index + 1);
  // "meg 500 u 310 v 295 w 300": its points are named, and each has a value without it
  if (behind[0]?.kind === itemKind.points && besidesPoints(items)) return true;
  return behind.some(
    (item) =>
      item.owner === undefined &&
      (item.kind === itemKind.over ||
        (item.unit?.dimension === "resistance" && item.unit.factor >= 1e6)),
  );
}

/** "lead 1 500v 350 meg": between the point and its megohms stands what they were measured with. */
function ohmsBehind(draft: Draft, items: readonly Item[]): boolean {
  // "lead 1 500v 60 sec 310M": the minute between them
  const paced = items[draft.index + 1]?.unit?.dimension === "time";
  const next = items[draft.index + (paced ? 2 : 1)];
  if (draft.unit?.figure !== "V" || next?.kind !== itemKind.number || next.owner !== undefined)
    return false;
  const lone = draft.points?.every((one) => one.length === 1 || one[1] === "ground") === true;
  return lone && next.unit?.dimension === "resistance" && next.unit.factor >= 1e6;
}

/** "megger at five hundred, lead one nine hundred": what the tester was set to. */
function testerAt(draft: Draft, items: readonly Item[]): boolean {
  if (!/^(?:at|@)$/.test(items[draft.index - 1]?.text ?? "")) return false;
  return (
    /^megg(?:er|ers|ed|ing)$/.test(items[draft.index - 2]?.text ?? "") &&
    items[draft.index]?.unit === undefined &&
    draft.points === undefined &&
    testerVolts.has(draft.value)
  );
}

/** "L1G 3.1m L2G 3.3m megger 500", "megger 500 lead 1 84 lead 2 81": as many values as points without it. */
function besidesPoints(items: readonly Item[]): boolean {
  const free = items.filter((item) => item.owner === undefined);
  const values = free.filter(
    (item) => item.kind === itemKind.number && item.unit?.dimension !== "time",
  ).length;
  const points = free.filter((item) => item.kind === itemKind.points).length;
  return points > 0 && values > points;
}

/** "lead 1 to gnd 1000v: 1 min 210M": the voltage between the points and the first value. */
function headsTest(draft: Draft, items: readonly Item[]): boolean {
  if (draft.unit?.figure !== "V" || !draft.points?.every((one) => one[1] === "ground"))
    return false;
  if (items[draft.index + 1]?.text !== ":" && items[draft.index + 1]?.text !== ",") return false;
  return items.some(
    (item, at) =>
      at > draft.index && item.unit?.dimension === "resistance" && item.unit.factor >= 1e3,
  );
}

function onlyTime(draft: Draft, items: readonly Item[]): boolean {
  return draft.before.every(
    (index) =>
      items[index]?.unit?.dimension === "time" ||
      items[index]?.kind === itemKind.subject ||
      items[index]?.label?.quantity === "insulation_resistance",
  );
}

function isTestTemperature(draft: Draft, items: readonly Item[], setting: Setting): boolean {
  if (!setting.insulation && !setting.winding) return false;
  // "winding 1.8 / 1.8 / 1.9 ohm at 24 C"
  const bare =
    (setting.insulation || /^(?:at|@)$/.test(items[draft.index - 1]?.text ?? "")) &&
    draft.place === undefined &&
    draft.named === undefined &&
    draft.unit?.dimension === "temperature" &&
    draft.hint === undefined &&
    draft.rating === undefined;
  if (bare) return !ofCoil(draft, items) && !ofHold(draft, items);
  const winding =
    draft.named === "winding_resistance" ||
    draft.named === "insulation_resistance" ||
    (draft.thing === "compressor" && draft.place === undefined);
  const warm =
    draft.unit?.dimension === "temperature" ||
    (draft.unit === undefined && draft.points === undefined && draft.place === "shell");
  return warm && (draft.place === "shell" || winding);
}

function celsius(draft: Draft, units: "us" | "si"): number {
  const figure = draft.unit?.figure;
  const si = figure === "C" || ((figure === undefined || figure === "degrees") && units === "si");
  const value = figure === "K" ? draft.value - 273.15 : si ? draft.value : (draft.value - 32) / 1.8;
  return Number(value.toPrecision(12));
}

/** "megging at 500 volts": the test is announced, nothing is measured yet. */
function announce(drafts: readonly Draft[], setting: Setting, note: Note): void {
  for (const draft of drafts) {
    if (draft.gone || !isTestVoltage(draft, note.items, setting)) continue;
    draft.gone = true;
    const volts = draft.value * (draft.unit?.dimension === "voltage" ? draft.unit.factor : 1);
    const lead = draft.points?.length === 1 ? draft.points[0] : undefined;
    const on = lead === undefined || lead[1] === "N" ? "" : ` on ${lead[0]}`;
    state(note, "test voltage", [draft.index, draft.index + 1], {
      kind: "note",
      about: `insulation test ${volts}${on}`,
    });
  }
}

/** Takes the test voltage and the winding's temperature out of the row of values. */
export function conditions(drafts: readonly Draft[], note: Note, setting: Setting): void {
  const { items } = note;
  const { units } = note.context;
  const tests = drafts.filter(
    (draft) =>
      !draft.gone &&
      !isTestVoltage(draft, items, setting) &&
      !isTestTemperature(draft, items, setting),
  );
  if (tests.length === 0) {
    announce(drafts, setting, note);
    return;
  }
  const shared: number[] = [];
  let voltage: number | undefined;
  let temperature: number | undefined;
  const warm = drafts.find((draft) => !draft.gone && warmWindings(draft, drafts, items));
  for (const draft of drafts) {
    const item = items[draft.index];
    if (draft.gone || item === undefined) continue;
    if (isTestVoltage(draft, items, setting)) {
      voltage = draft.value * (draft.unit?.dimension === "voltage" ? draft.unit.factor : 1);
      draft.gone = true;
      item.owner = "test voltage";
      shared.push(draft.index);
      handOn(drafts, draft, items);
    } else if (
      draft === warm ||
      (tests.some(mayBeOhms) && isTestTemperature(draft, items, setting))
    ) {
      temperature = celsius(draft, units);
      draft.gone = true;
      item.owner = "test temperature";
      shared.push(draft.index);
    }
  }
  // "…, oil 48 psi": another unit says that it is none of the test's
  const otherwise = ({ unit }: Draft): boolean =>
    unit !== undefined && unit.dimension !== "resistance";
  const none = tests.every(otherwise);
  for (const draft of tests) {
    draft.testVoltage = voltage;
    if (none || !otherwise(draft)) draft.shared.push(...shared);
    draft.temperature = temperature;
  }
}
