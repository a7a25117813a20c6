import { airOrWater } from "./air-or-water.ts";
import { ofNamedPart } from "./announced.ts";
import { approaches } from "./approaches.ts";
import { atEach } from "./at-each.ts";
import { beforeAfter } from "./before-after.ts";
import { behindWarmth } from "./behind-warmth.ts";
import { bothPlaces } from "./both-places.ts";
import { isStrongBreak } from "./breaks.ts";
import { byOdds } from "./by-odds.ts";
import { carryAction } from "./carry-action.ts";
import { carryEarlier } from "./carry-earlier.ts";
import { carryMachine } from "./carry-machine.ts";
import { carryPlace } from "./carry-place.ts";
import { carryPoints } from "./carry-points.ts";
import { chain } from "./chain.ts";
import { columns, timedRows } from "./columns.ts";
import { conditions } from "./conditions.ts";
import { correct } from "./correct.ts";
import { countOfRow } from "./count-of-row.ts";
import { degreesThen } from "./degrees-then.ts";
import { deniedAgain } from "./denied-again.ts";
import { describe } from "./describe.ts";
import type { Draft } from "./draft.ts";
import { enteringBulb } from "./entering-bulb.ts";
import { gasTrain } from "./gas-train.ts";
import { gasWatched } from "./gas-watched.ts";
import { gather } from "./gather.ts";
import { gaugePair } from "./gauge-pair.ts";
import { gaugesOfEach } from "./gauges-of-each.ts";
import { groundOfPairs } from "./ground-of-pairs.ts";
import { guard } from "./guard.ts";
import { pulledTo } from "./guard-pull.ts";
import {
  leadsToGround,
  numberedBox,
  pressureThenDegrees,
  spotTwice,
  standing,
} from "./guard-spot.ts";
import { heldFor } from "./held-for.ts";
import { inThere } from "./in-there.ts";
import { infer } from "./infer.ts";
import { itThen } from "./it-then.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { lettersAlone, lowOfLeg } from "./letters-alone.ts";
import { make } from "./make.ts";
import { markedThenRead } from "./marked-then-read.ts";
import { minutesAfter } from "./minutes-after.ts";
import type { Note } from "./note.ts";
import { oilSides } from "./oil-sides.ts";
import { otherOfPair } from "./other-of-pair.ts";
import { outOf } from "./out-of.ts";
import { outAtEnd, outsideBehind } from "./outside-behind.ts";
import { outsideColon } from "./outside-colon.ts";
import { peakThen } from "./peak-then.ts";
import { question } from "./question.ts";
import { relate } from "./relate.ts";
import { repeat } from "./repeat.ts";
import { sameAgain } from "./same-again.ts";
import { settingOf } from "./setting.ts";
import { share } from "./share.ts";
import { shareRows } from "./share-rows.ts";
import { speeds } from "./speeds.ts";
import { stages } from "./stages.ts";
import { statLetters } from "./stat-letters.ts";
import { statSet } from "./stat-set.ts";
import { statsOfOne } from "./stats-of-one.ts";
import { swings } from "./swings.ts";
import { switchSet } from "./switch-set.ts";
import { setFirst, testerFirst } from "./tester-first.ts";
import { toldByWords } from "./told-by-words.ts";
import { trips } from "./trips.ts";
import { twoUnits } from "./two-units.ts";
import { type Found, isPegged, valuesOf } from "./values.ts";
import { ofWarmDay } from "./warm-day.ts";
import { withIt } from "./with-it.ts";
import { zeros } from "./zeros.ts";

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

/** "head was 314 not 340": the second is what it was not, where nothing was corrected by it. */
function dropNots(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const left = drafts[order - 1];
    const item = items[draft.index];
    if (left === undefined || item === undefined || draft.gone || left.gone) return;
    if (items[draft.index - 1]?.text !== "not") return;
    const joint = /^[,.]$/.test(items[draft.index - 2]?.text ?? "");
    if (left.index !== draft.index - (joint ? 3 : 2)) return;
    draft.gone = true;
    item.owner = "not <value>";
    if (left.unit === undefined && draft.unit !== undefined) {
      left.unit = draft.unit;
      left.ownUnit = true;
    }
    left.behind = [...left.behind, draft.index];
  });
}

/** "thats unit 2 not 1", "at 250v not 500", "was 72 typo": a name or a figure that is denied, no value. */
function dropDenied(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const [order, draft] of drafts.entries()) {
    const item = items[draft.index];
    if (draft.gone || item === undefined || item.kind !== itemKind.number) continue;
    const [word, left, behind] = [-1, -2, 1].map((step) => items[draft.index + step]);
    const name = left?.kind === itemKind.subject && item.unit === undefined && draft.value <= 40;
    const tester = left?.unit?.dimension === "voltage" && item.unit === undefined;
    const typo = word?.text === "was" && /^(?:typo|wrong|mistake)$/.test(behind?.text ?? "");
    const first = drafts[0] !== draft && /^[(,]$/.test(left?.text ?? "");
    if (!(word?.text === "not" && (name || tester)) && !(typo && first)) continue;
    draft.gone = true;
    item.owner = "not <value>";
    const next = drafts[order + 1];
    if (name && next?.sentence === draft.sentence) next.subject ??= left.subject;
  }
}

/** Where the clause begins and ends that an item stands in. */
function clauseOf(items: readonly Item[], index: number): readonly [number, number] {
  const ends = (item: Item): boolean => item.text === "," || isStrongBreak(item);
  const from = items.slice(0, index).findLastIndex(ends) + 1;
  const to = items.findIndex((item, at) => at > index && ends(item));
  return [from, to < 0 ? items.length : to];
}

/** "9:40 suction 61, 10:10 suction 67": of several times the one that the value goes with. */
function timeOf(note: Note, drafts: readonly Draft[], draft: Draft): string | undefined {
  const times = note.measuredAt;
  const [only] = times;
  if (only === undefined || times.length === 1) return only?.time;
  const [from, to] = clauseOf(note.items, draft.index);
  const [own, ...rivals] = times.filter(({ index }) => index >= from && index < to);
  if (own !== undefined && rivals.length === 0) return own.time;
  if ((drafts[0]?.index ?? 0) < only.index)
    return (times.find((one) => one.index > draft.index) ?? times[times.length - 1])?.time;
  return times.filter((one) => one.index < draft.index).pop()?.time;
}

/** All values of the message, read: what they are goes into `note.readings`, the rest is asked or unread. */
export function measure(note: Note): void {
  const { items } = note;
  const tester = testerFirst(items);
  const found = valuesOf(items);
  if (found.length === 0) return;
  const drafts = gather(
    items,
    found.map((value) => value.index),
  );
  drafts.forEach((draft, order) => {
    const value = found[order];
    if (value !== undefined) begin(note, draft, value);
  });
  describe(drafts, items, note.plain);
  // one value alone is no pair, row or list: what looks from one to the next finds nothing there
  const several = drafts.length > 1;
  outsideColon(drafts, items);
  ofWarmDay(drafts, items, note.plain);
  if (several) gaugesOfEach(items, drafts);
  approaches(items, drafts);
  if (several) markedThenRead(items, drafts);
  if (several) outOf(items, drafts);
  zeros(drafts, note);
  lettersAlone(drafts, items, note.context.units);
  outsideBehind(drafts, items, note.context.units);
  outAtEnd(drafts, items, note.context.units);
  inThere(drafts, items, note.context.units);
  if (several) minutesAfter(drafts, items);
  atEach(drafts, items);
  statsOfOne(drafts);
  if (several) gaugePair(drafts, items, note.context.units);
  statLetters(drafts, items);
  if (several) stages(drafts, items);
  if (several) statSet(drafts, items, note.context.units);
  lowOfLeg(drafts, items);
  if (several) {
    otherOfPair(drafts, items);
    oilSides(drafts, items);
    speeds(drafts, items);
    trips(drafts, items);
  }
  gasTrain(drafts, items, note.context.units);
  if (several) countOfRow(drafts, items);
  const placeless = columns(drafts, items);
  if (several) timedRows(drafts, items);
  if (several) shareRows(drafts, items);
  const setting = settingOf(items, drafts, note.context);
  heldFor(drafts, items);
  relate(drafts, items);
  peakThen(items, drafts);
  toldByWords(drafts, note);
  conditions(drafts, note, setting);
  if (several) behindWarmth(drafts, items);
  if (several) beforeAfter(drafts, items);
  switchSet(drafts, items);
  if (several) swings(drafts, items);
  deniedAgain(drafts, items, note.context);
  if (several) chain(drafts, items);
  correct(note, drafts);
  if (several) dropNots(drafts, items);
  dropDenied(drafts, items);
  if (several) groundOfPairs(drafts, items);
  repeat(note, drafts);
  bothPlaces(drafts, items);
  carryAction(note, drafts);
  sameAgain(drafts, items, note.context);
  withIt(drafts, items, note.context);
  ofNamedPart(drafts, note.context);
  gasWatched(drafts, note);
  infer(drafts, items, setting, note.context);
  share(drafts, items);
  itThen(drafts, items);
  for (const draft of placeless) draft.place = undefined;
  enteringBulb(drafts);
  degreesThen(drafts, items);
  airOrWater(drafts, items, note.context);
  guard(drafts, items, note.context.units);
  pulledTo(drafts, items, note.context);
  twoUnits(drafts, items);
  spotTwice(drafts, items);
  leadsToGround(drafts, items);
  pressureThenDegrees(drafts, items, note.context);
  standing(drafts);
  numberedBox(drafts, items);
  byOdds(drafts, note);
  question(note, drafts);
  for (const draft of drafts) draft.measuredAt = timeOf(note, drafts, draft);
  setFirst(tester, drafts);
  carryTest(note, drafts);
  carryPoints(drafts, note.context);
  carryEarlier(drafts, note.context);
  carryPlace(drafts, items, note.context);
  if (note.ask.length === 0) carryMachine(drafts, note.context);
  for (const draft of drafts) if (!draft.gone) note.readings.push(...make(note, draft));
  const doubtful = note.readings.find((reading) => reading.doubtful === true);
  if (doubtful !== undefined && note.ask.length === 0)
    note.ask.push(`${doubtful.said}: is that right?`);
}
