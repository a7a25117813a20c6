import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { between } from "./relate.ts";
import { shareSide, strongIn } from "./share-side.ts";

/** "dropped 11 lb 4 oz into the recovery tank" */
function recoveredInto(draft: Draft, items: readonly Item[]): boolean {
  const behind = items.slice(draft.index + 1, draft.index + 5).map(({ text }) => text);
  return /^(?:in|into|to) (?:the |a |my )?(?:recovery|reclaim)\b/.test(behind.join(" "));
}

/** "recovered 4.8 kg, 150 g short": what was not in it came out of nothing. */
export function isMissing({ index }: Draft, items: readonly Item[]): boolean {
  const word = /^(?:short|missing|low|less|lost)$/;
  return [index - 1, index + 1].some((at) => word.test(items[at]?.text ?? ""));
}

/** "added 1.9 kg … and 2.6 kg": what was done holds for the masses behind it. */
function shareAction(list: readonly Draft[], items: readonly Item[]): void {
  let action: Draft["action"];
  for (const draft of list) {
    if (draft.quantity !== "mass" || draft.rating !== undefined) continue;
    // "38 ounces in so far, it takes 56"
    if (items[draft.index - 1]?.text === "takes") {
      draft.rating = "nameplate_charge";
      draft.action = undefined;
      continue;
    }
    if (draft.action === undefined && !isMissing(draft, items)) draft.action = action;
    if (recoveredInto(draft, items)) draft.action = "recovered";
    action = draft.action;
  }
}

/** "L1 14.2 L2 14.0 L3 14.4 amps running": said behind the row, it holds for the row. */
function shareState(list: readonly Draft[]): void {
  for (let i = list.length - 2; i >= 0; i--) {
    const [draft, next] = [list[i], list[i + 1]];
    if (
      draft === undefined ||
      next === undefined ||
      draft.state !== undefined ||
      next.state === undefined
    )
      continue;
    if (
      draft.quantity !== next.quantity ||
      draft.rating !== undefined ||
      draft.points === undefined ||
      next.points === undefined
    )
      continue;
    if (draft.unit !== undefined && draft.ownUnit) continue;
    draft.state = next.state;
  }
}

/** How far apart the legs of one supply or motor lie at most to be told as a row. Common practice, no source. */
const ofRow = 1.15;

/** "480 480 481 compressor running": nothing between them, and as near as legs are. */
function inLegs(left: Draft, right: Draft): boolean {
  const electric = right.quantity === "voltage" || right.quantity === "current";
  const far = left.value / right.value;
  return electric && right.index === left.index + 1 && far < ofRow && far > 1 / ofRow;
}

/** "229/231/228 v running": said behind a stroked row, it holds for the row. */
function shareStateBack(list: readonly Draft[], items: readonly Item[]): void {
  for (let i = list.length - 2; i >= 0; i--) {
    const [draft, next] = [list[i], list[i + 1]];
    if (draft === undefined || next?.state === undefined || draft.state !== undefined) continue;
    if (draft.quantity !== next.quantity || draft.ownUnit || draft.rating !== undefined) continue;
    const stroked = items[draft.index + 1]?.text === "/" && next.index === draft.index + 2;
    if (!stroked && !inLegs(draft, next)) continue;
    if (next.before.length === 0) draft.state = next.state;
  }
}

/** A test that goes on: later values of it keep the points said first, or said last for all. */
function sharePoints(list: readonly Draft[]): void {
  list.forEach((draft, order) => {
    if (draft.points !== undefined || draft.quantity === undefined || draft.count > 1) return;
    const left = list[order - 1];
    if (
      left?.quantity === draft.quantity &&
      left.points !== undefined &&
      left.points.length === 1 &&
      (draft.after !== undefined || draft.earlier || left.earlier || draft.now)
    ) {
      draft.points = left.points;
      return;
    }
    const behind = list.slice(order + 1).find((other) => other.points !== undefined);
    const index =
      behind?.quantity === "polarization_index" || behind?.quantity === "absorption_ratio";
    if (
      behind !== undefined &&
      (behind.quantity === draft.quantity ||
        (index && draft.quantity === "insulation_resistance")) &&
      (draft.after !== undefined || draft.earlier) &&
      behind.points?.length === 1 &&
      !list.slice(0, order).some((other) => other.points !== undefined)
    )
      draft.points = behind.points;
  });
}

function commaIn(items: readonly Item[], left: Draft, right: Draft): boolean {
  for (let i = left.index; i < right.index; i++) if (items[i]?.text === ",") return true;
  return false;
}

/** "488/486/490 at the disco": said behind the last, it is each one's. */
function sharePlaceBack(list: readonly Draft[], items: readonly Item[]): void {
  for (let i = list.length - 2; i >= 0; i--) {
    const [left, right] = [list[i], list[i + 1]];
    if (left === undefined || right === undefined || left.quantity !== right.quantity) continue;
    if (left.quantity !== "voltage" || left.place !== undefined) continue;
    const legs = left.points !== undefined && right.points !== undefined;
    const bare = right.before.every((index) => items[index]?.kind === itemKind.points);
    if (!bare || legs !== right.before.length > 0) continue;
    const gap = between(items, left, right);
    if (legs ? !gap.strong : gap.list || gap.empty) left.place = right.place;
  }
}

/** Is the time said ahead of the first lead, or behind the last value, for the whole row? */
function timeOfRow(tests: readonly Draft[], items: readonly Item[]): number | undefined {
  const isTime = (index: number): boolean => items[index]?.unit?.dimension === "time";
  const [first] = tests;
  const last = tests[tests.length - 1];
  const time = first?.before.find(isTime);
  const point = first?.before.find((index) => items[index]?.kind === itemKind.points);
  if (time !== undefined && point !== undefined && time < point) return first?.after;
  return last?.behind.some(isTime) === true ? last.after : undefined;
}

/** "500v 1 min T1 1.4 gig T2 1.3 gig", "T1 88M T2 91M T3 86M at 1 min": one time, said once for all leads. */
function shareTime(list: readonly Draft[], items: readonly Item[]): void {
  const tests = list.filter((draft) => draft.quantity === "insulation_resistance");
  const rows: Draft[][] = [];
  for (const draft of tests) {
    const row = rows[rows.length - 1];
    const again = row?.some((one) => one.points?.join() === draft.points?.join()) === true;
    if (row === undefined || again) rows.push([draft]);
    else row.push(draft);
  }
  for (const row of rows) {
    const told = row.filter((draft) => draft.after !== undefined);
    const lone = row.every((draft) => draft.points?.length === 1 && !draft.earlier);
    const time = told.length === 1 && lone && row.length > 1 ? timeOfRow(row, items) : undefined;
    if (time !== undefined) for (const draft of row) draft.after = time;
  }
}

/** "wet bulb 63 dry bulb 76 at the return": said behind the second bulb, it is of both. */
function bulbsBehind(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.place !== undefined || !right.place?.endsWith("_air")) return;
    const bulb = (draft: Draft): boolean =>
      draft.before.some((index) => /^(?:wet|dry|db|wb)$/.test(items[index]?.text ?? ""));
    const kinds = new Set([left.quantity, right.quantity]);
    if (!bulb(left) || !bulb(right) || !kinds.has("wet_bulb_temperature")) return;
    const said = right.behind.some((index) => items[index]?.label?.place === right.place);
    if (kinds.size === 2 && said && !strongIn(items, left, right)) left.place = right.place;
  });
}

/** A place said for the first of a row of points holds for the rest. */
function sharePlace(list: readonly Draft[], items: readonly Item[]): void {
  sharePlaceBack(list, items);
  bulbsBehind(list, items);
  list.forEach((draft, order) => {
    const left = list[order - 1];
    if (left === undefined || left.quantity !== draft.quantity || draft.place !== undefined) return;
    if (draft.points !== undefined && left.points !== undefined && left.rating === draft.rating)
      draft.place = left.place;
    if (
      left.place === "dc_bus" &&
      draft.points === undefined &&
      draft.subject === left.subject &&
      draft.unit?.kind === "dc"
    )
      draft.place = left.place;
  });
  list.forEach((draft, order) => {
    const left = list[order - 1];
    // "wet bulb on the return 64 and dry bulb 77"
    if (
      draft.quantity === "temperature" &&
      draft.place === undefined &&
      left?.quantity === "wet_bulb_temperature" &&
      draft.before.some((index) => /^(?:db|dry|drybulb)$/.test(items[index]?.text ?? "")) &&
      !strongIn(items, left, draft)
    )
      draft.place = left.place;
    if (
      draft.quantity === "wet_bulb_temperature" &&
      draft.place === undefined &&
      left?.quantity === "temperature" &&
      left.place?.endsWith("_air") === true &&
      !commaIn(items, left, draft)
    )
      draft.place = left.place;
  });
}

/** "DC- to U .51 V .52": the first pair's partner stands for the single points behind it; so does a ground said once. */
function sharePartner(list: readonly Draft[]): void {
  let partner: { first: string; ground: boolean } | undefined;
  for (const draft of list) {
    const points = draft.points?.[0];
    if (points === undefined || draft.points === undefined) continue;
    if (points.length === 2) {
      const first = points[0] ?? "";
      const second = points[1] ?? "";
      partner = second.startsWith("DC")
        ? { first: second, ground: false }
        : first.startsWith("DC")
          ? { first, ground: false }
          : points[1] === "ground"
            ? { first: "", ground: true }
            : undefined;
    } else if (
      partner !== undefined &&
      !partner.ground &&
      draft.points.every((one) => one.length === 1)
    ) {
      const { first } = partner;
      draft.points = draft.points.map((one) => [first, one[0] ?? ""]);
    }
  }
}

/** "leg 1 122 leg 2 118 v to neutral": the partner said last is each one's. */
function shareLast(list: readonly Draft[]): void {
  const last = list[list.length - 1]?.points?.[0];
  const partner = last?.length === 2 ? last[1] : undefined;
  if (partner !== "N") return;
  for (const draft of list)
    if (
      draft.points?.every(
        (one) => one.length === 1 && /^(?:L\d|phase [ABC])/.test(one[0] ?? ""),
      ) === true
    )
      draft.points = draft.points.map((one) => [one[0] ?? "", partner]);
}

/** "… 7 meg to gnd" behind the last of a row: the ground is each one's. */
function shareGround(list: readonly Draft[]): void {
  const grounded = list.some((draft) => draft.grounded);
  if (!grounded) return;
  for (const draft of list)
    if (draft.points?.every((one) => one.length === 1) === true) draft.grounded = true;
}

export function share(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  if (list.length < 2) {
    shareAction(list, items);
    return;
  }
  sharePartner(list);
  shareLast(list.filter((draft) => draft.quantity === "voltage"));
  shareAction(list, items);
  shareState(list);
  shareStateBack(list, items);
  sharePoints(list);
  shareTime(list, items);
  sharePlace(list, items);
  shareSide(list, items);
  shareGround(
    list.filter(
      (draft) => draft.quantity === "insulation_resistance" || draft.quantity === "voltage",
    ),
  );
}
