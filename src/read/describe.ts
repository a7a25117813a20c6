import { classOf } from "./carrier.ts";
import type { Draft } from "./draft.ts";
import { isStrongBreak } from "./gather.ts";
import { type Item, itemKind } from "./item.ts";
import type { Label } from "./label.ts";
import { between } from "./relate.ts";
import { role } from "./word.ts";

/** A named rating outweighs a plate's "rated" beside it. */
function takeRating(draft: Draft, label: Label): void {
  if (label.rating === undefined) return;
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

/** "suction … saturation 43" is the saturation of the suction. */
function joinPlaces(draft: Draft, label: Label): boolean {
  if (label.quantity !== "temperature" || label.place !== undefined) return false;
  if (draft.place === "suction") draft.place = "suction_saturation";
  else if (draft.place === "discharge" || draft.place === "liquid")
    draft.place = "discharge_saturation";
  else return false;
  draft.named = "temperature";
  return true;
}

function takeTime(draft: Draft, items: readonly Item[], index: number): void {
  const item = items[index];
  if (item?.unit === undefined) return;
  const seconds = item.value * item.unit.factor;
  const before = items[index - 1];
  const held =
    before?.text === "for" ||
    before?.text === "there" ||
    ((before?.roles ?? 0) & role.about && items[index - 2]?.text === "for");
  if (held) draft.lasting ??= seconds;
  else draft.after ??= seconds;
}

function isRail(points: readonly (readonly string[])[]): boolean {
  return points.length === 1 && points[0]?.length === 1 && points[0][0]?.startsWith("DC") === true;
}

/** "since yesterday", nitrogen left "last night": this visit's test, not a past one's value. */
function standing(items: readonly Item[], index: number): boolean {
  const before = items[index - 1]?.text;
  if (before === "since" || before === "until" || before === "till") return true;
  const night = items[index]?.text === "last" || items[index]?.text === "yesterday";
  return (
    night &&
    items.some((item) => item.text === "nitrogen" || item.text === "n2") &&
    !items.some((item) => item.text === "year" || item.text === "month")
  );
}

function take(draft: Draft, items: readonly Item[], index: number): void {
  const item = items[index];
  if (item === undefined) return;
  switch (item.kind) {
    case itemKind.points:
      if (draft.points === undefined) draft.points = item.points;
      else if (
        index < draft.index &&
        isRail(draft.points) &&
        item.points !== undefined &&
        !isRail(item.points) &&
        item.points.every((one) => one.length === 1)
      )
        draft.points = item.points.map((one) => [one[0] ?? "", draft.points?.[0]?.[0] ?? ""]);
      else if (
        index > draft.index &&
        items[index - 1]?.text === "to" &&
        draft.points.every((one) => one.length === 1) &&
        item.points?.length === 1 &&
        item.points[0]?.length === 1
      )
        draft.points = draft.points.map((one) => [one[0] ?? "", item.points?.[0]?.[0] ?? ""]);
      else if (
        index > draft.index &&
        draft.points.length === 1 &&
        draft.points[0]?.length === 1 &&
        item.points?.[0]?.[0]?.startsWith("DC") === true
      )
        draft.points = [[draft.points[0][0] ?? "", item.points[0][0]]];
      return;
    case itemKind.ground:
      draft.grounded = true;
      return;
    case itemKind.subject:
      draft.subject ??= item.subject;
      return;
    case itemKind.number:
      takeTime(draft, items, index);
      return;
    case itemKind.unit:
      if (item.label !== undefined) takeLabel(draft, item.label);
      if (!draft.ownUnit && draft.unit === undefined) draft.unit = item.unit;
      return;
    default:
      if (item.label !== undefined) {
        if (!joinPlaces(draft, item.label)) takeLabel(draft, item.label);
      }
      if ((item.roles & role.earlier) !== 0 && !standing(items, index)) draft.earlier = true;
      if ((item.roles & role.now) !== 0) draft.now = true;
  }
}

/** "got 4 lb out", "6 lb in": what became of the mass. */
function inOrOut(items: readonly Item[], draft: Draft): "recovered" | "charged" | undefined {
  if (items[draft.index]?.unit?.dimension !== "mass") return undefined;
  for (let i = draft.index + 1; i <= draft.index + 2; i++) {
    const text = items[i]?.text;
    if (text === "out") return "recovered";
    if (text === "in" || text === "into") return "charged";
    if (text !== "back" && text !== "of") return undefined;
  }
  return undefined;
}

/** Earlier and now: of two in one draft the nearer counts. */
function settleTime(draft: Draft): void {
  if (draft.earlier && draft.now) draft.earlier = false;
}

const counts: Readonly<Record<string, number>> = {
  both: 2,
  two: 2,
  "2": 2,
  three: 3,
  "3": 3,
  four: 4,
  "4": 4,
  six: 6,
  "6": 6,
  five: 5,
  "5": 5,
};

function countWord(items: readonly Item[], i: number, plain: string): number {
  const item = items[i];
  if (item?.text === "x3" || item?.text === "x2") return item.text === "x3" ? 3 : 2;
  if (item === undefined || (item.roles & role.all) === 0) return 0;
  for (const word of plain.slice(item.from, item.to).split(" ")) {
    const count = counts[word];
    if (count !== undefined) return count;
  }
  const next = items[i + 1]?.text ?? "";
  return /^(?:legs|phases|leads|pairs|lines)$/.test(next) || item.text === "across" ? 3 : 0;
}

/** Does the clause end here for "all three"? */
function stops(item: Item): boolean {
  return isStrongBreak(item) || (item.kind === itemKind.sign && item.text === ",");
}

/** "84 meg, all three": behind a comma the count must end the clause. */
function countEnds(items: readonly Item[], i: number): boolean {
  let at = i;
  if (items[at]?.text === "same" || items[at]?.text === "on") at++;
  if (((items[at]?.roles ?? 0) & role.all) === 0) return false;
  const next = items[at + 1];
  return next === undefined || stops(next) || /^(?:leads|legs|phases|pairs)$/.test(next.text);
}

/** "all three", "both of them" in the value's own clause: how many readings it stands for. */
function countOf(
  items: readonly Item[],
  draft: Draft,
  bounds: readonly [number, number],
  plain: string,
): number {
  for (let i = draft.index - 1; i >= bounds[0]; i--) {
    const item = items[i];
    if (item === undefined || stops(item)) break;
    const count = countWord(items, i, plain);
    if (count > 0) return count;
  }
  for (let i = draft.index + 1; i < bounds[1]; i++) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item)) break;
    if (item.text === "," && item.kind === itemKind.sign && !countEnds(items, i + 1)) break;
    const count = countWord(items, i, plain);
    if (count > 0) return count;
    if (item.kind === itemKind.word && item.roles === 0) break;
  }
  return 1;
}

/** "the cap's a forty five", "hung a fresh 45 mfd": what a capacitor is, not what it reads. */
function isA(items: readonly Item[], draft: Draft): void {
  const item = items[draft.index];
  if (
    draft.rating !== undefined ||
    item === undefined ||
    (item.unit !== undefined && item.unit.dimension !== "capacitance")
  )
    return;
  let at = draft.index - 1;
  while (items[at]?.text === "new" || items[at]?.text === "fresh") at--;
  const article = items[at];
  if (article?.text !== "a" && article?.text !== "an") return;
  const verb = items[at - 1];
  const fresh = at < draft.index - 1;
  const cap =
    draft.named === "capacitance" ||
    item.unit !== undefined ||
    items.some((one) => one.label?.quantity === "capacitance");
  const is =
    verb?.apostrophe === true || /^(?:is|on|its|was|hung|put|installed)$/.test(verb?.text ?? "");
  if (!cap || !(is || fresh) || item.value < 2) return;
  draft.rating = "nominal";
  draft.named = "capacitance";
}

/** "suct 68 sat 43": where no return air is spoken of, it is the saturation of the side before. */
function saturation(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
  const word = draft.before.find(
    (index) => items[index]?.text === "sat" && items[index]?.label?.place === "supply_air",
  );
  if (word === undefined || left === undefined || draft.place !== "supply_air") return;
  if (left.place === "suction" || left.place === "suction_saturation")
    draft.place = "suction_saturation";
  else if (left.place === "discharge" || left.place === "liquid")
    draft.place = "discharge_saturation";
  else return;
  draft.named = "temperature";
}

/** "a twenty degree drop", "18 F split", "picks up 17 F": a difference, not a temperature. */
function degreeDrop(items: readonly Item[], draft: Draft): void {
  const item = items[draft.index];
  if (item?.kind !== itemKind.number || draft.named !== undefined) return;
  if (item.unit !== undefined && item.unit.dimension !== "temperature") return;
  const next = items[draft.index + 1]?.text ?? "";
  const before = `${items[draft.index - 2]?.text ?? ""} ${items[draft.index - 1]?.text ?? ""}`;
  const behind =
    item.unit !== undefined &&
    /^(?:drop|rise|difference|split|spread|delta|across|gain|loss)$/.test(next);
  const gained =
    item.unit !== undefined &&
    /^(?:picks up|picking up|drops|drop|gains|loses|rises|rise|up)$/.test(
      before.trim().replace(/^\S+ (?=drops|gains|loses|rises)/, ""),
    ) &&
    !behind &&
    /^(?:across|in|over|through)$/.test(next);
  if (!behind && !gained) return;
  draft.named = "temperature_difference";
  draft.place = undefined;
}

/** "its 99 out", "95 degrees outside": the weather. */
function weather(items: readonly Item[], draft: Draft): void {
  const item = items[draft.index];
  if (
    item?.kind !== itemKind.number ||
    draft.place !== undefined ||
    draft.named !== undefined ||
    draft.action !== undefined
  )
    return;
  if (item.unit !== undefined && item.unit.dimension !== "temperature") return;
  const next = items[draft.index + 1];
  const after = items[draft.index + 2];
  const first = items[draft.index - 1];
  const ahead = items[draft.index - 2];
  if (
    first?.text === "out" &&
    (ahead === undefined || isStrongBreak(ahead) || ahead.text === ",") &&
    draft.value > -40 &&
    draft.value < 130
  ) {
    draft.place = "outdoor_air";
    draft.hint = "temperature";
    return;
  }
  const out = (next?.text === "out" && next.to - next.from === 3) || next?.text === "outdoors";
  const before = items[draft.index - 1];
  const begins =
    before === undefined ||
    before.text === "its" ||
    before.text === "it" ||
    (before.roles & (role.is | role.about)) !== 0 ||
    item.unit !== undefined ||
    isStrongBreak(before) ||
    before.text === ",";
  if (after?.text === "of") return;
  if (!out || !begins || draft.value < -40 || draft.value > 130) return;
  if (
    (after !== undefined &&
      after.kind === itemKind.word &&
      !/^(?:here|there|and|today|now|right|side)$/.test(after.text)) ||
    after?.text === "of"
  )
    return;
  draft.place = "outdoor_air";
  draft.hint = "temperature";
}

/** "plate: FLA 7.4 460v": what a plate says goes on until something else begins. */
function plates(items: readonly Item[], drafts: readonly Draft[]): void {
  let plate = false;
  drafts.forEach((draft, order) => {
    const left = drafts[order - 1];
    if (
      left !== undefined &&
      plate &&
      draft.rating === undefined &&
      draft.state === undefined &&
      between(items, left, draft).empty
    )
      draft.rating = "nominal";
    if (draft.before.some((index) => items[index]?.label?.plate === true)) plate = true;
    else if (draft.rating === undefined) plate = false;
  });
}

const sides: ReadonlySet<string> = new Set(["suction", "discharge", "liquid"]);

/** "118/50 on the suction", "low 118 @ 50": pressure and temperature of one side, in that order. */
function sidePairs(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    const joint = left === undefined ? undefined : items[left.index + 1];
    if (
      left === undefined ||
      right.index !== left.index + 2 ||
      (joint?.text !== "/" && joint?.text !== "@")
    )
      return;
    const bare = [left, right].every(
      (one) =>
        one.unit === undefined &&
        one.points === undefined &&
        one.named === undefined &&
        one.rating === undefined,
    );
    if (!bare || items[right.index + 1]?.text === "/") return;
    const place = left.place ?? right.place;
    if (
      place === undefined ||
      !sides.has(place) ||
      (left.place !== undefined && right.before.length > 0)
    )
      return;
    left.place = place;
    right.place = place;
    left.named = "pressure";
    right.named = "temperature";
  });
}

/** "gauges 118 over 365": low side over high side. */
function gaugePair(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (
      left === undefined ||
      right.index !== left.index + 2 ||
      items[left.index + 1]?.text !== "over"
    )
      return;
    if (
      left.unit !== undefined ||
      left.place !== undefined ||
      right.place !== undefined ||
      left.value >= right.value ||
      left.value < 5
    )
      return;
    if (
      !items
        .slice(0, left.index)
        .some((item) => /^(?:gauges|gauge|gages|pressures|running|pressure)$/.test(item.text))
    )
      return;
    left.place = "suction";
    right.place = "discharge";
    left.named = "pressure";
    right.named = "pressure";
    const item = items[right.index];
    if (item !== undefined) item.relation = "=";
  });
}

/** "SP 118 ST 50 HP 365": beside the other gauges SP is the suction pressure. */
function gaugeLetters(items: readonly Item[], drafts: readonly Draft[]): void {
  if (!items.some((item) => /^(?:hp|st|slt|llt|dp)$/.test(item.text))) return;
  for (const draft of drafts) {
    if (
      !draft.before.some((index) => items[index]?.text === "sp") ||
      draft.rating !== "setpoint" ||
      draft.unit !== undefined
    )
      continue;
    draft.rating = undefined;
    draft.place = "suction";
    draft.named = "pressure";
  }
}

/** "68/52 ra/sa": values, then their names in the same order. */
function slashed(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || items[left.index + 1]?.text !== "/" || right.index !== left.index + 2)
      return;
    const [first, stroke, second] = [
      items[right.index + 1],
      items[right.index + 2],
      items[right.index + 3],
    ];
    if (first?.label === undefined || stroke?.text !== "/" || second?.label === undefined) return;
    left.place = first.label.place;
    left.named = first.label.quantity;
    left.hint = first.label.hint;
    right.place = second.label.place;
    right.named = second.label.quantity;
    right.hint = second.label.hint;
  });
}

/** "76 in, 57 out": air into and out of the unit. */
function inAndOut(items: readonly Item[], drafts: readonly Draft[]): void {
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
    draft.place = "return_air";
    next.place = "supply_air";
    draft.hint = "temperature";
    next.hint = "temperature";
  });
}

/** "line temperature's 48", "52 degree line": of the side that was spoken of last. */
function sameLine(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
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
  draft.place = found;
  draft.hint = "temperature";
}

/** "cond in 85 out 94": the other side of the same thing. */
function otherSide(items: readonly Item[], draft: Draft, left: Draft | undefined): void {
  if (
    draft.place === undefined &&
    draft.named === undefined &&
    draft.points === undefined &&
    items[draft.index - 1]?.text === "in" &&
    draft.action === undefined
  ) {
    const side = items
      .slice(0, draft.index)
      .reverse()
      .find((item) =>
        /^(?:evap|evaporator|barrel|chiller|cond|condenser|tower|water)$/.test(item.text),
      )?.text;
    if (
      side !== undefined &&
      items.slice(draft.index, draft.index + 3).some((item) => item.text === "out")
    ) {
      draft.place =
        side === "water"
          ? "water_in"
          : /^(?:cond|tower)/.test(side)
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
  if (!out) return;
  if (draft.named !== undefined) return;
  const { place } = left;
  if (place === "condenser_in") draft.place = "condenser_out";
  else if (place === "evaporator_in") draft.place = "evaporator_out";
  else if (place === "water_in") draft.place = "water_out";
  else return;
  draft.hint = "temperature";
}

/** Fills a draft from the items that speak of it: the nearest first, those before ahead of those behind. */
export function describe(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  drafts.forEach((draft, order) => {
    for (let at = draft.before.length - 1; at >= 0; at--) {
      const index = draft.before[at];
      if (index !== undefined) take(draft, items, index);
    }
    for (const index of draft.behind) take(draft, items, index);
    draft.action ??= inOrOut(items, draft);
    settleTime(draft);
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
    isA(items, draft);
    saturation(items, draft, previous);
    otherSide(items, draft, previous);
    degreeDrop(items, draft);
    weather(items, draft);
    sameLine(items, draft, previous);
    const row =
      (previous !== undefined && between(items, previous, draft).list) ||
      (next !== undefined && between(items, draft, next).list);
    draft.count = row ? 1 : countOf(items, draft, [from, to], plain);
  });
  slashed(items, drafts);
  sidePairs(items, drafts);
  gaugePair(items, drafts);
  gaugeLetters(items, drafts);
  plates(items, drafts);
  inAndOut(items, drafts);
}

/** Does anything in the list belong to the class? */
export function hasClass(items: readonly Item[], list: readonly number[], kind: string): boolean {
  return list.some((index) => classOf(items[index]) === kind);
}
