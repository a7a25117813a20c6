import { clauseAround } from "./breaks.ts";
import { carryEarlier } from "./carry-earlier.ts";
import { carryMachine } from "./carry-machine.ts";
import { carryPlace } from "./carry-place.ts";
import { carryPoints } from "./carry-points.ts";
import { carryRow } from "./carry-row.ts";
import { columns, timedRows } from "./columns.ts";
import { conditions } from "./conditions.ts";
import { describe } from "./describe.ts";
import { doubts } from "./doubt-passes.ts";
import type { Draft } from "./draft.ts";
import { gather } from "./gather.ts";
import { infer } from "./infer.ts";
import { itThen } from "./it-then.ts";
import { itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { make } from "./make.ts";
import type { Note } from "./note.ts";
import { byParts } from "./part-passes.ts";
import { take, type Values } from "./pass.ts";
import { beforeTest, byWords } from "./passes.ts";
import { related } from "./related-passes.ts";
import { settingOf } from "./setting.ts";
import { share } from "./share.ts";
import { shareRows } from "./share-rows.ts";
import { setFirst, testerFirst } from "./tester-first.ts";
import { type Found, isPegged, valuesOf } from "./values.ts";

function begin(note: Note, draft: Draft, found: Found): void {
  const item = note.items[draft.index];
  if (item === undefined) return;
  draft.over = item.kind === itemKind.over || isPegged(note.items, draft.index);
  draft.same = found.zero === undefined && !draft.over && item.kind !== itemKind.number;
  draft.subject = item.kind === itemKind.number ? item.subject : undefined;
  draft.unit = item.kind === itemKind.number ? item.unit : undefined;
  draft.ownUnit = draft.unit !== undefined;
  if (draft.ownUnit && item.to === item.unitFrom + 1)
    draft.letter = note.text.charAt(item.unitFrom);
  else if (
    draft.unit?.figure === "milliohm" &&
    /^m(?:ohms?|ω)/.test(note.plain.slice(item.unitFrom, item.unitFrom + 5))
  )
    draft.letter = "m";
  if (
    draft.unit?.figure === "microfarad" &&
    /^mi(?:cs?|kes?|cros?)$/.test(note.plain.slice(item.unitFrom, item.to))
  )
    draft.letter = "mic";
  // "inches of water column" is no mercury, whatever stands beside it
  const unitText = note.plain.slice(item.unitFrom, item.to);
  if (draft.unit?.figure === "in wc" && /w|h2/.test(unitText)) draft.letter = "wc";
  if (item.unit?.settles !== undefined) draft.hint = undefined;
  if (found.zero === undefined) return;
  draft.zero = true;
  draft.value = 0;
  if (found.zero !== "?") draft.unit = unitCalled(found.zero);
}

/** The test in hand goes on: its voltage holds for the leads behind. */
function carryTest(note: Note, drafts: readonly Draft[]): void {
  const { test, readings } = note.context;
  const last = readings[readings.length - 1];
  const other = last !== undefined && last.quantity !== "insulation_resistance";
  if (test === undefined || (other && test.ahead !== true)) return;
  for (const draft of drafts) {
    if (
      draft.quantity !== "insulation_resistance" ||
      draft.testVoltage !== undefined ||
      draft.earlier ||
      draft.rating !== undefined
    )
      continue;
    draft.testVoltage = test.voltage;
    draft.assumedTest = true;
  }
}

/** "9:40 suction 61, 10:10 suction 67": of several times the one that the value goes with. */
function timeOf(note: Note, drafts: readonly Draft[], draft: Draft): string | undefined {
  const times = note.measuredAt;
  const [only] = times;
  // "n2 400 at 8am 396 now": the hour is of what was read before it
  const before = only !== undefined && drafts.some(({ index }) => index < only.index);
  if (times.length === 1 && before && draft.now && draft.index > only.index) return undefined;
  if (only === undefined || times.length === 1) return only?.time;
  const [from, to] = clauseAround(note.items, draft.index);
  const [own, ...rivals] = times.filter(({ index }) => index >= from && index < to);
  if (own !== undefined && rivals.length === 0) return own.time;
  if ((drafts[0]?.index ?? 0) < only.index)
    return (times.find((one) => one.index > draft.index) ?? times[times.length - 1])?.time;
  return times.filter((one) => one.index < draft.index).pop()?.time;
}

/** The values that the items hold, each with what is said of it. */
function draftsOf(note: Note): Draft[] {
  const { items } = note;
  const found = valuesOf(items);
  const drafts = gather(
    items,
    found.map((value) => value.index),
  );
  drafts.forEach((draft, order) => {
    const value = found[order];
    if (value !== undefined) begin(note, draft, value);
  });
  return drafts;
}

/** What the message before says of the values: its test goes on, its points, its place, its machine. */
function carry(drafts: readonly Draft[], note: Note): void {
  carryTest(note, drafts);
  carryPoints(drafts, note.context);
  carryRow(drafts, note.context);
  carryEarlier(drafts, note.context);
  carryPlace(drafts, note.items, note.context);
  if (note.ask.length === 0) carryMachine(drafts, note.context);
}

/** All values of the message, read: what they are goes into `note.readings`, the rest is asked or unread. */
export function measure(note: Note): void {
  const { items, context } = note;
  const tester = testerFirst(items);
  const drafts = draftsOf(note);
  if (drafts.length === 0) return;
  const values: Values = { note, drafts, items, context, several: drafts.length > 1 };
  describe(values);
  take(byWords, values);
  take(byParts, values);
  const placeless = columns(drafts, items);
  if (values.several) timedRows(drafts, items);
  if (values.several) shareRows(drafts, items);
  const setting = settingOf(items, drafts, context);
  take(beforeTest, values);
  conditions(drafts, note, setting);
  take(related, values);
  infer(values, setting);
  share(drafts, items);
  itThen(drafts, items);
  for (const draft of placeless) draft.place = undefined;
  take(doubts, values);
  for (const draft of drafts) draft.measuredAt = timeOf(note, drafts, draft);
  setFirst(tester, drafts);
  carry(drafts, note);
  for (const draft of drafts) if (!draft.gone) note.readings.push(...make(note, draft));
  const doubtful = note.readings.find((reading) => reading.doubtful === true);
  if (doubtful !== undefined && note.ask.length === 0)
    note.ask.push(`${doubtful.said}: is that right?`);
}
