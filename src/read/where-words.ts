import { ambientBehind } from "./ambient-behind.ts";
import { endsClause, isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { role } from "./word.ts";

/** "suct 68 sat 43": where no return air is spoken of, it is the saturation of the side before. */
export function saturation(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
  const word = [...draft.before, ...draft.behind].find(
    (index) => items[index]?.text === "sat" && items[index]?.label?.place === "supply_air",
  );
  if (word === undefined || draft.place !== "supply_air") return;
  // "discharge line 153, SAT 55 RAT 72": both airs
  if (items.some(({ text }) => /^(?:rat|ra)$/.test(text))) return;
  if (left === undefined || left.place === undefined) {
    const side = sideOfWords(items);
    if (side === undefined) return;
    draft.place = side === "?" ? undefined : side;
    draft.named = "temperature";
    return;
  }
  if (left.place === "suction" || left.place === "suction_saturation")
    draft.place = "suction_saturation";
  else if (left.place === "discharge" || left.place === "liquid")
    draft.place = "discharge_saturation";
  else return;
  draft.named = "temperature";
}

/** "sat 40 line 56 sh 16", "340 psi / 105 sat": beside lines and gauges it is a saturation, of which side the rest says. */
function sideOfWords(
  items: readonly Item[],
): "suction_saturation" | "discharge_saturation" | "?" | undefined {
  const says = (pattern: RegExp): boolean => items.some((item) => pattern.test(item.text));
  if (says(/^(?:return|ra|rat|ret|rtn|td|split|air|supply|da|oat|oa|dt|delta)$/)) return undefined;
  const gauges = items.some((item) => item.unit?.dimension === "pressure");
  if (!gauges && !says(/^(?:line|sh|sc|superheat|subcool|subcooling|suction|liquid|head)$/))
    return undefined;
  const low = says(/^(?:sh|superheat|suction)$/);
  const high = says(/^(?:sc|subcool|subcooling|liquid|head)$/);
  if (low === high) return "?";
  return low ? "suction_saturation" : "discharge_saturation";
}

/** "its 99 out", "95 degrees outside": the weather. */
export function weather(items: readonly Item[], draft: Draft): void {
  const item = items[draft.index];
  if (
    item?.kind !== itemKind.number ||
    draft.place !== undefined ||
    draft.named !== undefined ||
    draft.action !== undefined
  )
    return;
  if (item.unit !== undefined && item.unit.dimension !== "temperature") return;
  // "9.2 kg plate, got 6.85 out"
  const got = items[draft.index - 1]?.text === "got";
  if (got && items.some(({ unit }) => unit?.dimension === "mass")) return;
  const next = items[draft.index + 1];
  const after = items[draft.index + 2];
  const first = items[draft.index - 1];
  const out =
    ambientBehind(items, draft.index) ||
    (next?.text === "out" && next.to - next.from === 3) ||
    next?.text === "outdoors";
  if (!out && first?.text !== "out") return;
  if (items.some(({ text }) => /^(?:gas|manifold|burner|regulator)$/.test(text))) return;
  const ahead = items[draft.index - 2];
  if (first?.text === "out" && goesOnFromIn(items, draft.index)) return;
  const airs = items
    .slice(0, draft.index)
    .some((one) => one.label?.place === "supply_air" || one.label?.place === "return_air");
  if (
    first?.text === "out" &&
    (ahead === undefined ||
      isStrongBreak(ahead) ||
      ahead.text === "," ||
      (airs && ahead.kind === itemKind.number)) &&
    draft.value > -40 &&
    draft.value < 130
  ) {
    draft.place = "outdoor_air";
    draft.hint = "temperature";
    return;
  }
  const begins =
    first === undefined ||
    first.text === "its" ||
    first.text === "it" ||
    (first.roles & (role.is | role.about)) !== 0 ||
    /^(?:at|@|w|with)$/.test(first.text) ||
    item.unit !== undefined ||
    isStrongBreak(first) ||
    first.text === ",";
  if (after?.text === "of") return;
  if (out && endsAfterIn(items, draft.index)) return;
  if (out && leavesPart(items, draft.index)) {
    draft.place = "liquid";
    draft.hint = "temperature";
    return;
  }
  if (!out || !begins || draft.value < -40 || draft.value > 130) return;
  if (
    after !== undefined &&
    after.kind === itemKind.word &&
    !/^(?:here|there|and|today|now|right|side)$/.test(after.text)
  )
    return;
  draft.place = "outdoor_air";
  draft.hint = "temperature";
}

/** "drier in 94 F, out 79 F": the other end of what the first was told of, no weather. */
function goesOnFromIn(items: readonly Item[], at: number): boolean {
  const before = items.slice(Math.max(0, at - 5), at);
  const into = before.findIndex(
    ({ text }, i) => text === "in" && before[i + 1]?.kind === itemKind.number,
  );
  return into >= 0 && items.slice(0, at).some(movesNoAir);
}

/** "liquid 97 into the drier, 79 out": what it enters it comes out of. */
const intoPart =
  /\b(?:into|entering)(?: the| a| its)?(?: \w+)? (?:drier|dryer|strainer|solenoid|valve) ,$/;

function leavesPart(items: readonly Item[], at: number): boolean {
  const behind = items[at + 2];
  const ends = behind === undefined || endsClause(behind);
  // "into the drier" is one item where the dictionary knows it
  const known = items[at - 1]?.text === "," ? items[at - 2] : undefined;
  const named = known?.label?.place === "liquid" && /^(?:into|in)$/.test(known.text);
  return ends && (named || intoPart.test(wordsFrom(items, Math.max(0, at - 6), at)));
}

/** "drier 92 F in 74 F out": both ends of one part, told behind their figures. */
function endsAfterIn(items: readonly Item[], at: number): boolean {
  const into = items[at - 1]?.text === "in" || items[at - 2]?.text === "in";
  return into && items.slice(0, at).some(movesNoAir);
}

const noAir =
  /^(?:capillary|captube|eprs?|glycol|brine|rv|reversing|sol|pump|pumps|strainer|valve|drier|dryer|transformer|contactor|tower|loop|exchanger|hx|subcooler|breaker|switch)$/;

const noAirSubject = /^(?:branch box|pump|tower|boiler|chiller|bb)[ -]/i;

/** What has an "in" and an "out" and moves no air; a "filter drier" is no filter. */
export const movesNoAir = (item: Item): boolean =>
  noAir.test(item.text) || noAirSubject.test(item.subject ?? "") || isFilterDrier(item);

/** It is cut as one label; "filter's" is a filter. */
export const isFilterDrier = ({ text, from, to }: Item): boolean =>
  text === "filter" && to - from >= "filter drier".length;

/** "76 in, 57 out": air into and out of the unit. */
export function inAndOut(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((draft, order) => {
    const next = drafts[order + 1];
    if (
      next === undefined ||
      items[draft.index + 1]?.text !== "in" ||
      items[draft.index + 2]?.text === "the" ||
      items[next.index + 1]?.text !== "out"
    )
      return;
    const plainOnes = [draft, next].every(
      (one) =>
        // after a comma "57 out" was taken for the weather
        (one.place === undefined || (one === next && one.place === "outdoor_air")) &&
        one.named === undefined &&
        one.points === undefined &&
        one.action === undefined &&
        (one.unit === undefined || one.unit.dimension === "temperature"),
    );
    if (!plainOnes || draft.value < 4 || draft.value > 110) return;
    if (items.some((item) => movesNoAir(item) || /^psig?$/.test(item.text))) return;
    const winter = isWinter(draft, next);
    draft.place = winter ? "indoor_air" : "return_air";
    next.place = winter ? "outdoor_air" : "supply_air";
    draft.hint = "temperature";
    next.hint = "temperature";
  });
}

/** F, Cel of a room, and under which no coil blows into one. Common practice, no source. */
const comfort = { F: { room: 55, supply: 40 }, C: { room: 13, supply: 4.5 } } as const;

/** "68 in 31 out": so cold it is in the street, since a coil would be ice. */
function isWinter(into: Draft, out: Draft): boolean {
  const told = (into.unit ?? out.unit)?.figure;
  const scale = told === "C" || (told === undefined && into.value < 40) ? comfort.C : comfort.F;
  return into.value >= scale.room && out.value < scale.supply;
}

/** "line temperature's 48", "52 degree line": of the side that was spoken of last. */
export function sameLine(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
  if (draft.place !== undefined || left?.place === undefined) return;
  if (
    ![...draft.before, ...draft.behind].some(
      (index) => items[index]?.text === "line" || items[index]?.text === "pipe",
    ) &&
    items[draft.index + 1]?.text !== "line" &&
    items[draft.index - 1]?.text !== "line"
  )
    return;
  if (draft.unit !== undefined && draft.unit.dimension !== "temperature") return;
  const side = {
    suction: "suction",
    suction_saturation: "suction",
    discharge: "liquid",
    liquid: "liquid",
    discharge_saturation: "liquid",
  } as const;
  const found = Object.entries(side).find(([place]) => place === left.place)?.[1];
  if (found === undefined) return;
  // "SST 41 SCT 115 line temp 52": so far below it no liquid is
  if (left.place === "discharge_saturation" && left.value - draft.value > farthest) return;
  draft.place = found;
  draft.hint = "temperature";
}

/** Degrees Fahrenheit at most that liquid is below its saturation; common practice, no source. */
const farthest = 40;

/** "cond in 85 out 94": the other side of the same thing. */
export function otherSide(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
  if (
    draft.place === undefined &&
    (draft.named ?? "temperature") === "temperature" &&
    draft.points === undefined &&
    items[draft.index - 1]?.text === "in" &&
    !(
      items[draft.index - 2]?.kind === itemKind.number && items[draft.index - 2]?.unit === undefined
    ) &&
    draft.action === undefined
  ) {
    const side = items
      .slice(0, draft.index)
      .reverse()
      .find((item) =>
        /^(?:evap|evaporator|barrel|chiller|cond|condenser|tower|water|cdw|cdwtr|cndw)$/.test(
          item.text,
        ),
      )?.text;
    if (
      side !== undefined &&
      items.slice(draft.index, draft.index + 3).some((item) => item.text === "out")
    ) {
      draft.place =
        side === "water"
          ? "water_in"
          : /^(?:cond|tower|cdw|cndw)/.test(side)
            ? "condenser_in"
            : "evaporator_in";
      draft.hint = "temperature";
      return;
    }
  }
  if (left?.place === undefined || draft.place !== undefined || draft.points !== undefined) return;
  let out = false;
  for (let i = left.index + 1; i < draft.index; i++)
    if (items[i]?.text === "out" || items[i]?.text === "leaving" || items[i]?.text === "coming")
      out = true;
  const back = items
    .slice(left.index + 1, draft.index)
    .some(({ text }) => /^(?:back|returning|returns|entering)$/.test(text));
  if (!out && !back) return;
  if (draft.named !== undefined) return;
  const { place } = left;
  if (place === "condenser_in") draft.place = "condenser_out";
  else if (place === "evaporator_in") draft.place = "evaporator_out";
  else if (place === "water_in") draft.place = "water_out";
  else if (place === "water_out" && back) draft.place = "water_in";
  else return;
  draft.hint = "temperature";
}
