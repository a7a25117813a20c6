import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const kinds = /^(?:virgin|gas|freon|refrigerant|fresh|new|reclaimed|recycled|charge)$/;

/** "got 4 lb out", "6 lb in", "2 lb of 134a in": what became of the mass. */
/** "into cylinder 9", "out of the recovery bottle". */
function isBottle(items: readonly Item[], from: number): boolean {
  for (let i = from; i < from + 4; i++) {
    const item = items[i];
    if (item === undefined || item.kind === itemKind.number || item.kind === itemKind.sign)
      return false;
    if (/^(?:cylinder|cyl|bottle|tank|drum|jug)s?\b/.test(item.text)) return true;
    const small = /^(?:the|a|my|our|new|same|recovery|reclaim|empty|gray|grey)$/.test(item.text);
    if (!small) return false;
  }
  return false;
}

export function inOrOut(items: readonly Item[], draft: Draft): "recovered" | "charged" | undefined {
  const unit = items[draft.index]?.unit;
  // "plate 11 lb got 8.4 out"
  const got = unit === undefined && items[draft.index - 1]?.text === "got";
  if (got && items.some((item) => item.unit?.dimension === "mass"))
    return items[draft.index + 1]?.text === "out" ? "recovered" : undefined;
  if (unit?.dimension !== "mass") return undefined;
  // "charged till sc 9 took 3 lb 4 oz"
  const took = items[draft.index - 1]?.text === "took" || items[draft.index - 2]?.text === "took";
  const whose = items[draft.index - (items[draft.index - 1]?.text === "took" ? 2 : 3)]?.text ?? "";
  const goal = items.slice(draft.index + 1, draft.index + 3).map(({ text }) => text);
  // "it took thirteen ounces to clear the glass"
  const clears = /^to (?:clear|get|bring|raise|fill)\b/.test(goal.join(" "));
  const out = items
    .slice(draft.index + 1, draft.index + 4)
    .some(({ text }) => /^(?:out|back)$/.test(text));
  if (took && !out && (clears || /^(?:it|she|system|unit)$/.test(whose))) return "charged";
  if (took && items.slice(0, draft.index).some(({ text }) => /^(?:charged|charging)$/.test(text)))
    return "charged";
  // "out of the machine two kilos"
  const led = items.slice(Math.max(0, draft.index - 4), draft.index).map(({ text }) => text);
  if (/^(?:out(?: of)?|from) (?:the )?(?:machine|unit|system|circuit|plant)$/.test(led.join(" ")))
    return "recovered";
  let last = draft.index + 2;
  for (let i = draft.index + 1; i <= last; i++) {
    const text = items[i]?.text;
    // the refrigerant's name between them
    if (items[i]?.owner === "<letters and digits>") {
      last++;
      continue;
    }
    const bottled = isBottle(items, i + (items[i + 1]?.text === "of" ? 2 : 1));
    if (bottled && text === "into") return "recovered";
    if (bottled && (text === "out" || text === "from")) return "charged";
    if (text === "out") return "recovered";
    if (text === "in" || text === "into") return "charged";
    // "8 lb virgin gas in"
    if (kinds.test(text ?? "")) {
      last++;
      continue;
    }
    if (text !== "back" && text !== "of") return undefined;
  }
  return undefined;
}

/** "run cap 7.5 reads 7.1", "hard start 88-108 reads 92": between its name and what it reads stands its size. */
function capacitorReads(items: readonly Item[], draft: Draft): boolean {
  const named = [items[draft.index - 1], items[draft.index - 3]].some(
    (item, at) =>
      item?.label?.quantity === "capacitance" && (at === 0 || items[draft.index - 1]?.text === "-"),
  );
  let next = draft.index + 1;
  if (items[next]?.text === "-") next += 2;
  const verb = /^(?:reads|reading|measures|measured|tests|tested|checks|checked|is|read)$/;
  const reads = verb.test(items[next]?.text ?? "") && items[next + 1]?.kind === itemKind.number;
  return named && reads && draft.value >= 2;
}

/** "the cap's a forty five", "hung a fresh 45 mfd": what a capacitor is, not what it reads. */
export function isA(items: readonly Item[], draft: Draft, { readings }: Context): void {
  const item = items[draft.index];
  if (
    draft.rating !== undefined ||
    item === undefined ||
    (item.unit !== undefined && item.unit.dimension !== "capacitance")
  )
    return;
  // "its capacitor, it says 25 on it"
  const [says, on, it] = [items[draft.index - 1], items[draft.index + 1], items[draft.index + 2]];
  if (says?.text === "says" && on?.text === "on" && it?.text === "it") {
    draft.rating = "nominal";
    if (items.some((one) => one.label?.quantity === "capacitance")) draft.named ??= "capacitance";
    return;
  }
  let at = draft.index - 1;
  while (items[at]?.text === "new" || items[at]?.text === "fresh") at--;
  const behind = items[draft.index + 1];
  if (
    item.unit?.dimension === "capacitance" &&
    behind?.label?.quantity === "capacitance" &&
    items[draft.index - 1]?.label?.quantity !== "capacitance" &&
    items[draft.index - 1]?.owner !== "<part> <number> reads" &&
    item.value >= 2 &&
    Number.isInteger(item.value * 2) &&
    items
      .slice(draft.index + 2)
      .some((one) => one.kind === itemKind.number && one.owner === undefined)
  ) {
    draft.rating = "nominal";
    draft.named = "capacitance";
    return;
  }
  if (
    items[draft.index - 1]?.text === "of" &&
    items[draft.index - 2]?.kind === itemKind.number &&
    items[draft.index - 2]?.owner === undefined &&
    items.some((one) => one.label?.quantity === "capacitance")
  ) {
    draft.rating = "nominal";
    draft.named = "capacitance";
    return;
  }
  if (capacitorReads(items, draft)) {
    draft.rating = "nominal";
    draft.named = "capacitance";
    return;
  }
  const hung = items
    .slice(Math.max(0, at - 3), at + 1)
    .some((one) => /^(?:put|hung|installed|stuck|threw|fitted)$/.test(one.text));
  if (at < draft.index - 1 && hung && draft.value >= 2 && Number.isInteger(draft.value * 2)) {
    const caps = items.some((one) => one.label?.quantity === "capacitance");
    if (caps || item.unit !== undefined) {
      draft.rating = "nominal";
      draft.named = "capacitance";
      return;
    }
  }
  const article = items[at];
  if (
    article?.text === "a" &&
    items[at - 1]?.text === "on" &&
    item.unit === undefined &&
    /^(?:motor|compressor|fan)$/.test(items[draft.index + 1]?.text ?? "")
  ) {
    draft.rating = "nominal";
    draft.named = "current";
    return;
  }
  if (article?.text !== "a" && article?.text !== "an") return;
  const verb = items[at - 1];
  const fresh = at < draft.index - 1;
  // "fan side 4.2 and it's a five": the capacitor of the message before
  const goesOn =
    readings.at(-1)?.quantity === "capacitance" && items[draft.index + 1] === undefined;
  const cap =
    draft.named === "capacitance" ||
    item.unit !== undefined ||
    goesOn ||
    items.some(
      (one) => one.label?.quantity === "capacitance" || one.unit?.dimension === "capacitance",
    );
  const is =
    verb?.apostrophe === true || /^(?:is|on|its|was|hung|put|installed)$/.test(verb?.text ?? "");
  if (!cap || !(is || fresh) || item.value < 2) return;
  draft.rating = "nominal";
  draft.named = "capacitance";
}

/** "a twenty degree drop", "18 F split", "picks up 17 F": a difference, not a temperature. */
export function degreeDrop(items: readonly Item[], draft: Draft): void {
  const item = items[draft.index];
  if (item?.kind !== itemKind.number || draft.named !== undefined) return;
  if (item.unit === undefined || item.unit.dimension !== "temperature") return;
  const next = items[draft.index + 1]?.text ?? "";
  const before = `${items[draft.index - 2]?.text ?? ""} ${items[draft.index - 1]?.text ?? ""}`;
  // "38 degrees cooler 2 is 41" is the next box
  const box = items[draft.index + 1]?.kind === itemKind.subject;
  const compares = /^(?:colder|warmer|hotter|cooler)$/.test(next) && !box;
  const than = compares && items[draft.index + 2]?.text === "than";
  // "its 10 deg cooler out": how warm it is nobody says
  if (compares && !than) draft.gone = true;
  const behind =
    than || /^(?:drop|rise|difference|split|spread|delta|across|gain|loss)$/.test(next);
  const gained =
    item.unit !== undefined &&
    /^(?:picks up|picking up|drops|drop|gains|loses|rises|rise|up)$/.test(
      before.trim().replace(/^\S+ (?=drops|gains|loses|rises)/, ""),
    ) &&
    !behind &&
    (/^(?:across|in|over|through)$/.test(next) || /^pick(?:s|ing) up$/.test(before));
  if (!behind && !gained) return;
  draft.named = "temperature_difference";
  draft.place = undefined;
}

/** "480 leg to leg", "phase to phase 208": volts, where the figure is of a supply's size. */
export function legToLeg(items: readonly Item[], draft: Draft): void {
  if (draft.unit !== undefined || draft.named !== undefined || draft.points !== undefined) return;
  if (draft.value < 90 || draft.value > 620) return;
  const leg = /^(?:leg|legs|phase|line)$/;
  const said = items.some(
    ({ text }, at) =>
      leg.test(text) &&
      items[at + 1]?.text === "to" &&
      leg.test(items[at + 2]?.text ?? "") &&
      Math.abs(at - draft.index) <= 4,
  );
  if (said) draft.hint ??= "voltage";
}

/** Nominal volts of supplies, V. Source: ANSI C84.1 (60 Hz) and IEC 60038 (50 Hz), from memory. */
const mains: ReadonlySet<number> = new Set([
  115, 120, 200, 208, 220, 230, 240, 277, 380, 400, 415, 440, 460, 480, 575, 600,
]);

/** "lra 149 460 3ph": volts as a plate gives them, before the number of phases. */
export function plateVolts(items: readonly Item[], draft: Draft): void {
  if (!mains.has(draft.value)) return;
  const at = items[draft.index + 1]?.text === "/" ? draft.index + 2 : draft.index + 1;
  const phases = items[at];
  const plate = /^(?:nameplate|plate|np|tag|dataplate|data plate)$/.test(items[0]?.text ?? "");
  if (plate && draft.named === "voltage") {
    const ratings = items.filter(({ text }) => /^(?:rla|lra|mca|mop|fla|moc|mcc)$/.test(text));
    if (ratings.length > 1) {
      draft.rating ??= "nominal";
      return;
    }
  }
  if (draft.unit !== undefined) return;
  if (draft.before.some((index) => items[index]?.label?.plate !== true)) return;
  if (phases?.kind !== itemKind.number || (phases.value !== 3 && phases.value !== 1)) return;
  if (!/^(?:ph|phase|phases)$/.test(items[at + 1]?.text ?? "")) return;
  draft.named = "voltage";
  draft.rating = "nominal";
}

/** "box has 208 on L1 L2": a box with legs is one of wires, no cold room. */
export function boxOfWires(draft: Draft): void {
  const legs = draft.points?.every((one) => one.every((point) => /^L[123]$/.test(point)));
  if (draft.place !== "box" || legs !== true || draft.unit !== undefined) return;
  draft.place = undefined;
  draft.hint = undefined;
}
