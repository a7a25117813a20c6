import {
  atSwitch,
  chargeTaken,
  eachPair,
  endOfMachine,
  justLow,
  lineToLine,
  lowOnGas,
  mixedAir,
  ofAPart,
  onItsCoil,
  pointsClose,
  pulledAmps,
  pulledIn,
  pullsDown,
  satThere,
  speedWord,
  standing,
  warmthOnly,
  whenDone,
} from "./beside.ts";
import { bulbIn } from "./bulb-in.ts";
import { countOf } from "./count-words.ts";
import type { Draft } from "./draft.ts";
import { besideEachOther } from "./each-other.ts";
import { bothSides, gaugePair, gaugesBesideHeat } from "./gauges.ts";
import { type Item, itemKind } from "./item.ts";
import type { Label } from "./label.ts";
import { coldLine, lineThenLiquid } from "./line-then-liquid.ts";
import { nitrogenBehind } from "./nitrogen-behind.ts";
import { boxAhead, namesToday, noLabel, withOther } from "./no-label.ts";
import { ofTheWait, plateTold } from "./of-the-wait.ts";
import { take, type Values } from "./pass.ts";
import { inRow } from "./relate.ts";
import { ofItsRail } from "./row-unit.ts";
import { leavingSide, saturationOf } from "./side-told.ts";
import { drewLocked } from "./starts-draw.ts";
import { isAhead } from "./still-ahead.ts";
import { takePoints } from "./take-points.ts";
import { tookOut } from "./took-out.ts";
import { boxOfWires, degreeDrop, inOrOut, isA, legToLeg, plateVolts } from "./what-words.ts";
import { otherSide, sameLine, saturation, weather } from "./where-words.ts";
import { role } from "./word.ts";

/** A named rating outweighs a plate's "rated" beside it. */
function takeRating(draft: Draft, label: Label): void {
  if (label.rating === undefined) return;
  // "stat calling, 24v at W": what a thermostat is set to are degrees
  const degrees = label.rating === "setpoint" && label.hint === "temperature";
  if (degrees && draft.ownUnit && draft.unit?.dimension !== "temperature") return;
  if (label.plate === true && draft.rating === "expected") draft.plate = true;
  if (label.rating === "expected" && draft.rating === "nominal") {
    draft.rating = "expected";
    return;
  }
  if (label.plate === true && draft.action !== undefined && !draft.chargeNoun) return;
  if (label.plate === true && draft.chargeNoun) {
    draft.action = undefined;
    draft.rating = "nameplate_charge";
    return;
  }
  if (draft.rating === undefined || draft.rating === "nominal") {
    draft.rating = label.rating;
    draft.plate = label.plate === true || draft.plate;
  }
}

function takeLabel(draft: Draft, label: Label): void {
  takeRating(draft, label);
  draft.place ??= label.place;
  draft.named ??= label.quantity;
  draft.hint ??= label.hint;
  draft.state ??= label.state;
  draft.stat ??= label.stat;
  draft.kind ??= label.kind;
  draft.reference ??= label.reference;
  draft.action ??= label.action;
  draft.thing ??= label.thing;
  if (label.component === true) draft.component = true;
  if (label.earlier === true) draft.earlier = true;
}

/** "suction … saturation 43" is the saturation of the suction, "temp at the suction 43" its line's temperature. */
function joinPlaces(draft: Draft, { text }: Item, label: Label): boolean {
  if (label.quantity !== "temperature" || label.place !== undefined) return false;
  if (/^te?mp/.test(text)) return false;
  if (draft.place === "suction") draft.place = "suction_saturation";
  else if (draft.place === "discharge" || draft.place === "liquid")
    draft.place = "discharge_saturation";
  else return false;
  draft.named = "temperature";
  return true;
}

function takeTime(draft: Draft, items: readonly Item[], index: number): void {
  const item = items[index];
  if (item?.unit === undefined || isAhead(items, index)) return;
  const seconds = item.value * item.unit.factor;
  const before = items[index - 1];
  const held =
    /^(?:for|there|held|holds|holding)$/.test(before?.text ?? "") ||
    ((before?.roles ?? 0) & role.about && items[index - 2]?.text === "for");
  const lasts =
    index > draft.index &&
    draft.unit?.dimension === "current" &&
    item.unit.factor === 1 &&
    !/^(?:after|at|@|in|within|every|by|then)$/.test(before?.text ?? "");
  if (held || lasts) draft.lasting ??= seconds;
  else draft.after ??= seconds;
}

/** "RTU 4, ckt A 104/416": of a unit and its circuit the circuit is what was measured. */
function isFiner(subject: string | undefined, told: string | undefined): boolean {
  if (told === undefined) return true;
  const part = /^(?:compressor|circuit|system|stage) /;
  return part.test(subject ?? "") && /^(?:RTU|AHU|OU|ODU|unit)[- ]/i.test(told);
}

function tell(draft: Draft, items: readonly Item[], index: number): void {
  const item = items[index];
  if (item === undefined) return;
  switch (item.kind) {
    case itemKind.points:
      takePoints(draft, items, index);
      return;
    case itemKind.ground:
      draft.grounded = true;
      return;
    case itemKind.subject:
      if (item.subject !== "" && isFiner(item.subject, draft.subject)) draft.subject = item.subject;
      if (item.label?.quantity !== undefined) draft.named ??= item.label.quantity;
      if (item.label?.place === "box" && draft.named === undefined && draft.hint === undefined) {
        draft.place ??= item.label.place;
        draft.hint = item.label.hint;
      }
      return;
    case itemKind.number:
      takeTime(draft, items, index);
      return;
    case itemKind.unit:
      if (item.text === "ma" && mixedAir(draft, items)) {
        draft.hint = "temperature";
        return;
      }
      // "supply 98 with the blower watts inside": what else is in it
      if (index > draft.index && withOther(items, draft.index, index)) return;
      if (item.label !== undefined) takeLabel(draft, item.label);
      // "lps 20/45": a switch, no litres
      // "pls fix suct to 66": please, no pulses
      if (item.text === "pls" && index < draft.index) return;
      if (item.text === "lps" && index !== draft.index + 1 && draft.named === undefined) return;
      if (!draft.ownUnit && draft.unit === undefined) draft.unit = item.unit;
      return;
    default:
      if (index === 0 && item.text === "that" && item.label?.rating === "expected") return;
      if (item.text === "sat" && satThere(items, index)) return;
      if (noLabel(draft, index, items)) return;
      // "20 minutes in": so far along, nothing was charged
      if (item.text === "in" && items[index - 1]?.unit?.dimension === "time") return;
      if (index > draft.index && whenDone(items, index)) return;
      // "running warm": how it is, nothing was measured while it ran
      if (/^runn/.test(item.text) && hotOrCold.test(items[index + 1]?.text ?? "")) return;
      // "holds 412" beside minutes: no charge of a plate
      if (/^holds?$/.test(item.text) && items.some((one) => one.unit?.dimension === "time")) return;
      // "walk-in holds 36": how cold it is
      if (/^holds?$/.test(item.text) && draft.unit === undefined && boxAhead(items, index)) return;
      // "it's starting to clear": something begins, no motor starts
      if (/^start/.test(item.text) && items[index + 1]?.text === "to") return;
      if (index > draft.index && /^pull/.test(item.text) && item.label?.hint === "current") return;
      if (pullsDown(draft, items, index)) return;
      if (justLow(items, index)) return;
      if (endOfMachine(items, index) || speedWord(items, draft, index)) return;
      if (lowOnGas(items, index) || onItsCoil(items, index)) return;
      if (index > draft.index && atSwitch(items, index)) return;
      // "valves move, cassettes blow 55": the nearer word says what it is
      if (item.label?.quantity === "valve_opening" && draft.place !== undefined) return;
      if (ofAPart(items, index)) {
        draft.named ??= "temperature";
        return;
      }
      if ((item.text === "ll" || item.text === "ln") && lineToLine(draft, items, item)) {
        draft.hint ??= "voltage";
        return;
      }
      if (item.label !== undefined) {
        if (item.label.rating === "nominal" && ofTheWait(items, index)) return;
        if (item.label.rating === "nominal" && plateTold(items, index, draft.index)) return;
        if (chargeTaken(items, index)) {
          draft.action ??= "recovered";
          return;
        }
        if (item.text === "charge") draft.chargeNoun = true;
        if (pulledAmps(items, draft, index)) {
          draft.hint ??= "current";
          return;
        }
        if (item.label.action !== undefined && warmthOnly(items, draft, index)) return;
        if (item.text === "pulled" && pulledIn(items, index)) return;
        if (!joinPlaces(draft, item, item.label)) takeLabel(draft, item.label);
      }
      if (
        (item.roles & role.earlier) !== 0 &&
        !namesToday(items, draft.index, index) &&
        !standing(items, index) &&
        !ofLastTime(items, draft, index)
      )
        draft.earlier = true;
      if ((item.roles & role.now) !== 0) draft.now = true;
  }
}

const hotOrCold = /^(?:warm|hot|cold|cool|rough|loud|long|backwards)$/;

/** "6.2 lb added, previous top-up 35 days ago": behind the comma the visit before is told, not this figure. */
function ofLastTime(items: readonly Item[], draft: Draft, index: number): boolean {
  if (draft.unit?.dimension !== "mass" || index < draft.index) return false;
  const behind = items.slice(draft.index, index);
  // "topped up 9.8 kg, it was 402 days since the last time"
  const since = behind.some(({ text }) => /^(?:since|after|from)$/.test(text));
  if (since && behind.some((item) => item.unit?.dimension === "time")) return true;
  const comma = behind.some(({ text }) => text === ",");
  return comma && items.slice(index + 1).some((item) => item.unit?.dimension === "time");
}

/** Earlier and now: of two in one draft the nearer counts. */
function settleTime(draft: Draft): void {
  // "should be over 100 per the startup sheet"
  if (draft.rating === "expected") draft.earlier = false;
  if (draft.earlier && draft.now) draft.earlier = false;
}

/** Fills a draft from the items that speak of it: the nearest first, those before ahead of those behind. */
export function describe(values: Values): void {
  const { drafts, items } = values;
  const { plain } = values.note;
  drafts.forEach((draft, order) => {
    const pointed = pointsClose(items, draft);
    for (let at = draft.before.length - 1; at >= 0; at--) {
      const index = draft.before[at];
      if (pointed && items[index ?? -1]?.kind === itemKind.points) continue;
      if (index !== undefined) tell(draft, items, index);
    }
    for (const index of draft.behind) tell(draft, items, index);
    draft.action ??= inOrOut(items, draft);
    tookOut(items, draft);
    settleTime(draft);
    if (draft.rating === "LRA" && (draft.lasting !== undefined || drewLocked(items, draft))) {
      // "locked rotor 96 amps 3 sec": what it drew, no plate
      draft.rating = undefined;
      draft.state ??= "start";
    }
    const previous = drafts[order - 1];
    const next = drafts[order + 1];
    const from =
      previous === undefined
        ? 0
        : (previous.behind[previous.behind.length - 1] ?? previous.index) + 1;
    const to = next === undefined ? items.length : (next.before[0] ?? next.index);
    if (
      items[draft.index + 1]?.text === "/" &&
      items[draft.index + 1]?.owner !== undefined &&
      items[draft.index]?.unit?.figure === "V"
    )
      draft.rating ??= "nominal";
    isA(items, draft, values.context);
    plateVolts(items, draft);
    legToLeg(items, draft);
    boxOfWires(draft);
    saturation(items, draft, previous);
    saturationOf(items, draft, previous);
    leavingSide(items, draft, previous);
    otherSide(items, draft, previous);
    degreeDrop(items, draft);
    weather(items, draft);
    bulbIn(items, draft);
    sameLine(items, draft, previous);
    ofItsRail(draft, items);
    nitrogenBehind(draft, items);
    const pairs = eachPair(items, draft);
    const row =
      (previous !== undefined && inRow(items, previous, draft)) ||
      // "all three 1.1 ohms and nothing to ground": what there is none of is no other of the row
      (next !== undefined && items[next.index]?.text !== "nothing" && inRow(items, draft, next));
    draft.count = pairs ? 3 : row ? 1 : countOf(items, draft, [from, to], plain);
  });
  lineThenLiquid(items, drafts);
  coldLine(items, drafts, values.context.units);
  gaugePair(items, drafts);
  bothSides(items, drafts);
  gaugesBesideHeat(items, drafts);
  if (values.several) take(besideEachOther, values);
}
