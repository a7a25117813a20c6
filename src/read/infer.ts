import { alongLists } from "./along-lists.ts";
import { byCapacitor } from "./by-capacitor.ts";
import { byState } from "./by-state.ts";
import { conditioned } from "./conditioned.ts";
import type { Draft } from "./draft.ts";
import { drains } from "./drains.ts";
import { hashes } from "./gauge-letters.ts";
import { habitUnit, plusKilograms, scaleBeside, unitBefore } from "./habit.ts";
import { subjects } from "./hold-subject.ts";
import { atPointInHand } from "./in-hand.ts";
import { bySaying } from "./infer-passes.ts";
import { inherit } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";
import { legAmongPairs } from "./leg-among-pairs.ts";
import {
  ampsAtVolts,
  copyKind,
  falls,
  legsDraw,
  legsOfMachine,
  nearRating,
  ofAnother,
  ofComponent,
  ofItsSize,
  otherSize,
  pulledOnLeg,
  pulledOnNext,
  rowAgain,
  wanted,
} from "./like-others.ts";
import { nextPoint } from "./next-point.ts";
import { ofClauseBefore } from "./of-clause-before.ts";
import { notOfTheOne, onTheOthers } from "./on-the-others.ts";
import { likeLeft, oilIsWarm, own } from "./own-words.ts";
import { pairsInRow } from "./pairs-in-row.ts";
import { take, type Values } from "./pass.ts";
import { pinsBehindGround } from "./pins-behind-ground.ts";
import {
  byIsolation,
  byOpen,
  byPairs,
  byPlausibility,
  byTest,
  byThree,
  pinsBeforeGround,
} from "./plausible.ts";
import { ratedBefore } from "./rated-before.ts";
import { fromContext, inOrder, thatLine } from "./recall.ts";
import { between } from "./relate.ts";
import { rowNoBus } from "./row-no-bus.ts";
import { peaksAndRuns, runsOn } from "./runs-on.ts";
import type { Setting } from "./settle.ts";
import { alike, family, likeBefore, likeBehind, shapeOf, wordBefore } from "./shape.ts";
import { behindStart, startsDraw } from "./starts-draw.ts";
import { subjectsBehind } from "./subject-behind.ts";
import { nounOf } from "./subject-noun.ts";
import { byVolts } from "./volts.ts";
import { betweenWires } from "./wire-pair.ts";
import { role } from "./word.ts";

/** Bare figures right behind one another, and the unit behind the last of them. */
function endsWithUnit(list: readonly Draft[], order: number): boolean {
  let at = order;
  while (list[at]?.unit === undefined && list[at + 1]?.index === (list[at]?.index ?? 0) + 1) at++;
  const last = list[at];
  return at > order && last?.ownUnit === true && last.before.length === 0;
}

/** Is it the next one of the same kind, told with its unit right behind? */
function nextOfNoun(draft: Draft, next: Draft): boolean {
  const { subject } = draft;
  if (subject === undefined || next.subject === undefined || !next.ownUnit) return false;
  if (next.quantity === undefined || next.named !== undefined || !alike(draft, next)) return false;
  const plain = draft.hint === undefined && draft.named === undefined && draft.rating === undefined;
  return plain && subject !== next.subject && nounOf(subject) === nounOf(next.subject);
}

/** Same shape in the same message: what the one is, the other is. */
function alongShapes(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((draft, order) => {
    if (draft.quantity !== undefined || draft.unit !== undefined) return;
    ofClauseBefore(list, order, items);
    if (draft.quantity !== undefined) return;
    const shape = shapeOf(draft);
    const before = likeBefore(list, order, shape);
    const behind = likeBehind(list, order, shape);
    if (shape === "P") {
      const word = wordBefore(list, order);
      // "L1 17.4 L2 17.6 amps lead 1 251 lead 2 262 meg": the row goes with its own unit
      const own =
        behind?.sentence === draft.sentence &&
        behind.ownUnit &&
        family(behind) === family(draft) &&
        before !== undefined &&
        family(before) !== family(draft);
      const source = (own ? behind : before) ?? behind ?? wanted(list, order);
      if (source === undefined && word === undefined) nearRating(draft, list);
      if (source !== undefined && otherSize(source, draft)) return;
      if (source !== undefined) {
        if (source === before && draft.rating === undefined) draft.state ??= source.state;
        copyKind(source, draft);
        return;
      }
      if (word !== undefined && !otherSize(word, draft)) copyKind(word, draft);
      return;
    }
    const next = list[order + 1];
    // "comp 1 SH 8, fan 1 4.7 fan 2 3.9 A": the next of its kind tells the unit of both
    if (shape === "S" && next !== undefined && nextOfNoun(draft, next)) {
      copyKind(next, draft);
      return;
    }
    if (shape === "S" && before !== undefined && otherSize(before, draft)) return;
    if (shape === "S" && before !== undefined && ofAnother(items, before, draft)) {
      copyKind(before, draft);
      return;
    }
    if (shape === "S" && behind !== undefined && ofAnother(items, behind, draft)) {
      copyKind(behind, draft);
      return;
    }
    // "pump 1. 12.1 11.9 12.0, FLA 12.4"
    if (shape === "S") nearRating(draft, list);
    if (draft.quantity !== undefined) return;
    const left = list[order - 1];
    if (draft.over && left?.quantity === "resistance") {
      draft.quantity = "resistance";
      return;
    }
    // "80 Hz 15,3 15,4 15,2 amps": said behind the last of its row
    if (shape === "" && endsWithUnit(list, order)) return;
    if (shape === "" && left?.quantity !== undefined && continues(draft, left, items)) {
      const like = ofItsSize(list, order);
      if (like === undefined) return;
      copyKind(like, draft);
      if (like !== left) return;
      if (left.rating === "expected" || left.rating === "setpoint" || draft.rating === "expected") {
        draft.points ??= left.points;
        const set =
          draft.rating === undefined || left.rating === undefined || draft.rating === left.rating;
        if (left.place !== undefined && set) draft.place ??= left.place;
      }
      if (draft.earlier || left.earlier || draft.after !== undefined || draft.now)
        inherit(left, draft);
    }
    if (draft.quantity === undefined && shape === "") nearRating(draft, list);
    const right = list[order + 1];
    if (
      draft.quantity === undefined &&
      shape === "" &&
      right?.quantity !== undefined &&
      draft.named === undefined &&
      contrasts(draft, right, items)
    )
      copyKind(right, draft);
  });
}

function continues(draft: Draft, left: Draft, items: readonly Item[]): boolean {
  if (conditioned(draft, left, items)) return true;
  if (betweenWires(items, left) && betweenWires(items, draft)) return alike(draft, left);
  const gap = between(items, left, draft);
  // "superheat 2, should be 10": what a difference should be is no multiple of what it is
  const aim = draft.rating === "expected" && draft.unit === undefined && draft.value <= 40;
  if (aim && (left.quantity === "superheat" || left.quantity === "subcooling")) return true;
  if (draft.rating !== undefined || left.rating !== undefined)
    return (
      alike(draft, left) || left.quantity === "insulation_resistance" || falls(left, draft, gap)
    );
  if (
    (gap.strong || !gap.calm) &&
    !draft.now &&
    !draft.earlier &&
    draft.after === undefined &&
    !left.earlier
  )
    return false;
  for (let i = left.index + 1; i < draft.index; i++)
    if (items[i]?.text === "still") return alike(draft, left);
  if (left.unit?.dimension === "voltage" && left.value >= 90 && !alike(draft, left)) return false;
  if (draft.earlier || draft.now || left.earlier || draft.after !== undefined) return true;
  if (draft.state !== undefined && alike(draft, left)) {
    draft.place ??= left.place;
    draft.kind ??= left.kind;
    return true;
  }
  return (
    (gap.roles & (role.next | role.is | role.correct | role.change)) !== 0 &&
    (!gap.carriers ||
      draft.before.every(
        (index) =>
          (items[index]?.label?.thing !== undefined && items[index]?.label?.component !== true) ||
          items[index]?.label?.reference !== undefined,
      ))
  );
}

function contrasts(draft: Draft, right: Draft, items: readonly Item[]): boolean {
  // "118 = 40 F": what a chart sets side by side
  if (items[draft.index + 1]?.text === "=") return false;
  if (!alike(draft, right)) return false;
  if (draft.rating !== undefined || draft.earlier || draft.after !== undefined) return true;
  const gap = between(items, draft, right);
  // "isolated at 360, ten minutes later 395 microns"
  if (right.after !== undefined && right.ownUnit && !gap.strong) return true;
  if (right.rating !== undefined) return true;
  // "running 32.9 33.3 32.6, 126/381": the last of a row of its own
  const ofRow = items[draft.index - 1]?.kind === itemKind.number;
  if (ofRow && items[draft.index + 1]?.text === "," && right.place !== undefined) return false;
  const sides = items.slice(draft.index + 1, right.index);
  return gap.bare && !sides.some((item) => /^(?:in|out|up|down|at|@)$/.test(item.text));
}

/** "30 sec 380, 1 minute 560, ten minutes 1310 meg": one of the row's own says what all of it is. */
function rowTells(draft: Draft, list: readonly Draft[]): boolean {
  if (draft.after === undefined || draft.unit !== undefined) return false;
  return list.some(
    (other) => other.after !== undefined && other.ownUnit && other.quantity !== undefined,
  );
}

/** Gives each draft its quantity and its unit, from itself, its neighbours, the message, the job. */
export function infer(values: Values, setting: Setting): void {
  const { items, context } = values;
  const alive = (): Draft[] => values.drafts.filter((draft) => !draft.gone);
  nextPoint(alive(), items, context);
  atPointInHand(alive(), context);
  const list = alive();
  // most of it carries what one value is to another
  const several = list.length > 1;
  take(bySaying, { ...values, drafts: list, several });
  list.forEach((draft, order) => {
    pulledOnLeg(draft, items);
    pulledOnNext(draft, list[order - 1], items);
    ampsAtVolts(draft, list[order - 1], items);
    likeLeft(draft, list[order - 1], items);
    ofComponent(list, order, items);
    if (oilIsWarm(draft, list, items)) draft.hint = "temperature";
    own(draft, items, setting, context);
    ofClauseBefore(list, order, items);
  });
  if (several) drains(list, items);
  if (several) subjectsBehind(list, items);
  byVolts(list, items, setting, context);
  if (several) {
    pinsBeforeGround(list, items);
    legsDraw(list, setting, context);
    legsOfMachine(list, items);
    pairsInRow(list, items);
    legAmongPairs(list);
    rowAgain(list, items);
    onTheOthers(list, items);
    alongLists(list, items);
  }
  alongShapes(list, items);
  if (several) alongLists(list, items);
  if (several) onTheOthers(list, items);
  subjects(list, items);
  if (several) notOfTheOne(list, items);
  if (several) rowAgain(list, items);
  thatLine(list, items, context);
  if (several) inOrder(list, items, context);
  startsDraw(list, items);
  if (peaksAndRuns(list)) for (const draft of list) byState(draft, list, items);
  byIsolation(list, items, context);
  for (const draft of list)
    if (draft.quantity === undefined && !rowTells(draft, list) && !behindStart(draft, list))
      fromContext(draft, items, context);
  for (const draft of list) ratedBefore(draft, items, context);
  if (several) byCapacitor(list, items);
  byIsolation(list, items);
  if (several) byThree(list, items, setting, context);
  byVolts(list, items, setting, context);
  if (several) byPairs(list, items, context, setting);
  if (several) byOpen(list);
  for (const draft of list) byState(draft, list, items);
  if (several) runsOn(list, items);
  for (const draft of list) byTest(draft, list, context);
  for (const draft of list) byPlausibility(draft);
  pinsBehindGround(list);
  if (several) onTheOthers(list, items);
  alongShapes(list, items);
  if (several) hashes(list);
  if (several) rowNoBus(list, items);
  list.forEach((draft, order) => {
    if (draft.unit === undefined && draft.quantity !== undefined) unitBefore(draft, list, order);
    scaleBeside(draft, list);
    habitUnit(draft, context, items);
    if (draft.place === "dc_bus" && draft.quantity === "voltage") draft.kind ??= "dc";
    plusKilograms(draft, list[order - 1], items);
    const plate = draft.rating === "nominal" || (draft.rating === "expected" && draft.plate);
    if (draft.quantity === "mass" && plate) draft.rating = "nameplate_charge";
  });
}
