import { classOf } from "./carrier.ts";
import type { Draft } from "./draft.ts";
import { groundAhead } from "./ground-then-over.ts";
import { type Item, itemKind } from "./item.ts";
import { fits } from "./kinds.ts";
import { endsLegs } from "./legs-then-rated.ts";
import { boundAhead, runsThenStands } from "./runs-then-stands.ts";
import { suits } from "./suits.ts";
import { turnedClause } from "./turned-clause.ts";
import { role } from "./word.ts";

/** The gap between two values, and what decides where it is cut. */
export interface Gap {
  readonly items: readonly Item[];
  readonly from: number;
  readonly to: number;
  readonly left: Draft;
  /** classes that came before the first value of the sentence: later ones do too */
  readonly leading: string;
  /** the sentence names its points behind the values */
  readonly pointsBehind: boolean;
  readonly placesBehind: boolean;
  readonly timesBehind: boolean;
}

export function isVerb(item: Item | undefined): boolean {
  return item !== undefined && ((item.roles & role.is) !== 0 || item.apostrophe);
}

/** What a side already has, by class of carrier. */
export function classesOf(items: readonly Item[], list: readonly number[]): string {
  let found = "";
  for (const index of list) found += classOf(items[index]);
  return found;
}

/** "plate 28.2 rla 178 lra", "plate 9.6 fla, got 9.9": behind a plate's word each figure has its own behind it. */
function ownRatingBehind(gap: Gap, next: number): boolean {
  const { items, from, to, left } = gap;
  const label = items[next]?.label;
  if (next !== from || label?.quantity !== "current" || label.plate === true) return false;
  if (label.rating === undefined || left.before.some((i) => isRated(items[i]))) return false;
  if ((items[left.index]?.unit?.dimension ?? "current") !== "current") return false;
  if (next + 1 < to) return true;
  return isRated(items[to + 1]) && items[to + 2]?.kind !== itemKind.number;
}

function isRated(item: Item | undefined): boolean {
  return item?.label?.rating !== undefined && item.label.plate !== true;
}

/** "FLA 11.8 on tag": a plate's word behind a rated number goes with it. */
export function plateBehind(gap: Gap, next: number, mine: string): boolean {
  if (!mine.includes("R")) return false;
  if (ownRatingBehind(gap, next)) return true;
  return next === gap.from && gap.items[next]?.label?.plate === true;
}

/** "was 640 in april today 52", "298 in may its 361 now": the past goes with what stands before it. */
export function pastThenNow(gap: Gap, next: number): boolean {
  const { items, from, to, left } = gap;
  if (((items[next]?.roles ?? 0) & role.earlier) === 0) return false;
  for (let i = from; i < next; i++)
    if (classOf(items[i]) !== "G" && classOf(items[i]) !== "P") return false;
  for (let i = next + 1; i <= to + 2; i++)
    if (i !== to && ((items[i]?.roles ?? 0) & role.now) !== 0) return true;
  const was = items.slice(Math.max(0, left.index - 3), left.index);
  return was.some((item) => item.text === "was" || item.text === "had") && isVerb(items[next + 1]);
}

/** "supply air 56 wet bulb 54": directly before a number that has no bulb behind it, the bulb is that one's. */
function leadsOn(gap: Gap, next: number): boolean {
  const before = gap.items[gap.left.index - 1];
  // "OD 84 ID 76 wb 63": the value before is named, if by no word of ours
  const named = before?.kind === itemKind.word && before.roles === 0;
  if (next + 1 !== gap.to || (gap.left.before.length === 0 && !named)) return false;
  const behind = gap.items[gap.to + 1];
  return !(
    behind?.label?.quantity === "wet_bulb_temperature" || /^(?:db|dry|wb)$/.test(behind?.text ?? "")
  );
}

function ratedBehind(gap: Gap): boolean {
  // "8.2/8.4/8.1 fla 9": behind a row of figures it leads
  const row = gap.items[gap.left.index - 1]?.text === "/" || endsLegs(gap);
  // "4.1 on low fla 7.2": right before the higher figure it is that one's
  const led = gap.items[gap.left.index + 1]?.kind === itemKind.word;
  const apart = gap.to !== gap.from + 1 && !led;
  const [here, there] = [gap.items[gap.left.index], gap.items[gap.to]];
  // "8.8 amps FLA 10.6": beside a bare number only its size tells
  const told = here?.unit !== undefined && there?.unit !== undefined;
  const alone = apart || told || (here?.unit !== undefined && here.value >= (there?.value ?? 0));
  // "12.1 rla 13", "9 fla 8.1": a motor mostly draws less than its plate says
  const [first, second] = [gap.items[gap.left.index], gap.items[gap.to]];
  const less = (first?.value ?? 0) < (second?.value ?? 0) && second?.unit === undefined;
  if (gap.left.before.length === 0 && !row && (alone || !less)) return true;
  const behind = gap.items[gap.to + 1];
  // "7.7a lra 46 rla 9.2": the next word leads a number of its own
  const leads = gap.items[gap.to + 2]?.kind === itemKind.number;
  return behind?.label?.rating !== undefined && !leads;
}

/** "rm 74 sup 71", "mix air 68 oa 41": the value before has a name, if none of ours, so this one is the next value's. */
function leadsNext(gap: Gap, next: number): boolean {
  if (next + 1 !== gap.to || gap.left.before.length > 0) return false;
  const [left, before] = [gap.items[gap.left.index], gap.items[gap.left.index - 1]];
  const behind = gap.items[gap.to + 1];
  if (left?.unit !== undefined || before === undefined) return false;
  const named =
    (before.kind === itemKind.word && before.roles === 0) ||
    before.kind === itemKind.subject ||
    // "out 91 in 76 sup 56"
    (/^(?:in|out)$/.test(before.text) && before.unit === undefined) ||
    before.text === "in";
  return named && behind?.label?.place === undefined && behind?.label?.quantity === undefined;
}

/** "75 wb 63": of the two the wet bulb is the lower, where the second has no label of its own. */
function lowerBehind(gap: Gap, next: number): boolean {
  const [left, right] = [gap.items[gap.left.index], gap.items[gap.to]];
  const behind = gap.items[gap.to + 1];
  if (next + 1 !== gap.to || gap.items[next]?.label?.quantity !== "wet_bulb_temperature")
    return false;
  if (left === undefined || right === undefined || behind?.label !== undefined) return false;
  return behind?.text !== "/" && right.value < left.value - 2 && right.value > left.value * 0.5;
}

/** "577v bus 792": the bus stands well above the line that feeds it. */
function busAhead(gap: Gap): boolean {
  const [left, right] = [gap.items[gap.left.index], gap.items[gap.to]];
  if (left === undefined || right === undefined) return false;
  if (right.unit !== undefined && right.unit.dimension !== "voltage") return false;
  return gap.left.before.length > 0 || right.value > left.value * 1.15 || right.unit !== undefined;
}

/** "started 138 peak ran 19.8": of a start the peak is the figure before it, where a next state follows. */
function peakOfStart(gap: Gap, next: number): boolean {
  if (next !== gap.from || gap.items[next]?.label?.stat !== "peak") return false;
  const before = gap.items.slice(Math.max(0, gap.left.index - 3), gap.left.index);
  const started = before.some(({ text }) => /^(?:start|starts|started|starting)$/.test(text));
  const ahead = gap.items.slice(next + 1, gap.to);
  return started && ahead.some(({ label }) => label?.state === "running");
}

/** Does the sentence put this class of label behind its numbers? */
export function goesLeft(gap: Gap, next: number, kind: string, taken: string): boolean {
  const item = gap.items[next];
  if (item === undefined) return false;
  const stuck = next === gap.from && item.glued && item.kind === itemKind.label;
  if (stuck || peakOfStart(gap, next) || runsThenStands(gap, next)) return true;
  if (next === gap.from && warmOutside(gap)) return true;
  const bulb =
    item.label?.quantity === "wet_bulb_temperature" || item.text === "db" || item.text === "dry";
  if (bulb && next === gap.from && lowerBehind(gap, next)) return false;
  if (bulb && next === gap.from && !leadsOn(gap, next)) return true;
  if (kind === "U")
    return gap.items[gap.left.index]?.unit === undefined && gap.items[gap.to]?.unit !== undefined;
  if (kind === "A") return false;
  // "sags to 178 when the comp kicks on"
  if (kind === "C" && item.text === "when") return true;
  if (kind === "T") return gap.timesBehind;
  if (kind === "P") return gap.pointsBehind;
  if (item.label?.place === "dc_bus" && next + 1 === gap.to && busAhead(gap)) return false;
  if ((kind === "L" || kind === "Q") && (gap.placesBehind || turnedClause(gap, next))) return true;
  if (
    kind === "R" &&
    item.label?.quantity === "current" &&
    next === gap.from &&
    gap.items[gap.to]?.unit !== undefined &&
    gap.items[gap.to]?.unit?.dimension !== "current"
  )
    return true;
  // "pulling 2.2 fla 1.9": a rating's word leads its number, unless the next number has one behind it
  if (kind === "R" && next + 1 === gap.to && !ratedBehind(gap)) return false;
  // "7.1a plate 8.2 fla": the plate leads the figure that is rated behind it
  const rated = gap.items[gap.to + 1]?.label;
  if (
    kind === "R" &&
    item.label?.plate === true &&
    next + 1 === gap.to &&
    rated?.plate !== true &&
    rated?.rating !== undefined
  )
    return false;
  // "rise 71 plate max 60": what the plate allows
  if (kind === "R" && item.label?.plate === true && boundAhead(gap, next)) return false;
  const ahead = gap.items[next + 1]?.label?.rating;
  if (kind === "R" && item.label?.plate === true && ahead !== undefined && next + 1 < gap.to)
    return false;
  if (kind === "R")
    return (
      item.label?.plate === true ||
      (item.label?.quantity === "current" && !gap.leading.includes("R")) ||
      ownRatingBehind(gap, next)
    );
  if (kind === "E")
    return (
      item.label === undefined &&
      (item.roles & role.earlier) !== 0 &&
      next === gap.from &&
      gap.left.before.length > 0
    );
  if (kind === "G") return !groundAhead(gap, next);
  if ("LQ".includes(kind) && strangeAhead(gap, next)) return true;
  const leads = kind !== "C" || next + 1 === gap.to;
  if (leads && gap.leading.includes(kind)) return false;
  // "12 sh / 9 sc": a stroke behind the label ends what it names
  const stroke = gap.items[next + 1]?.text === "/" && next === gap.from;
  if ("LQ".includes(kind) && stroke && gap.left.before.length === 0) return true;
  if ("LQ".includes(kind) && leadsNext(gap, next)) return false;
  if ("LQ".includes(kind) && /[LQA]/.test(gap.leading + classesOf(gap.items, gap.left.before)))
    return false;
  if (kind === "S" || kind === "N") return false;
  const glued = gap.items[next + 1];
  if (glued?.kind === itemKind.number && glued.glued) return false;
  if (taken !== "" && kind !== "C") return false;
  const left = gap.items[gap.left.index];
  if (left?.unit === undefined && kind !== "R")
    return (
      suits(item, undefined) &&
      // a time ahead tells when, and names nothing
      (/^T*$/.test(gap.leading) ||
        (gap.leading === "U" &&
          gap.items.some(
            (one) => one.kind === itemKind.unit && one.unit?.dimension === "pressure",
          )))
    );
  return suits(item, left?.unit?.dimension);
}

/** "it's 81 outside static .6", "93 degrees outside supply 55": the weather, told behind its figure. */
function warmOutside({ items, from, to, left }: Gap): boolean {
  if (!/^(?:outside|outdoors)$/.test(items[from]?.text ?? "") || from + 1 === to) return false;
  const its = /^(?:its|it's|it)$/.test(items[left.index - 1]?.text ?? "");
  const is = items[left.index - 1]?.text === "is" && items[left.index - 2]?.text === "it";
  return its || is || items[left.index]?.unit?.dimension === "temperature";
}

/** "1075 rpm .61 esp 1180 cfm": what the next figure's own unit cannot be is the name of the bare one before. */
function strangeAhead(gap: Gap, next: number): boolean {
  const { items, from, to, left } = gap;
  const { quantity: named, hint } = items[next]?.label ?? {};
  // "chiller 2 at 43 lwt 52 hz": no degrees in hertz
  const quantity = named ?? (items[to]?.unit?.dimension === "frequency" ? hint : undefined);
  const ahead = items[to]?.unit;
  if (quantity === undefined || ahead === undefined || next !== from || next + 1 !== to)
    return false;
  const owned = left.before.every((index) => items[index]?.kind === itemKind.subject);
  if (items[left.index]?.unit !== undefined || !owned) return false;
  if (owned && left.before.length > 0) return !fits(quantity, ahead.dimension);
  // "outlet 54 eev 210 steps": named, if by no word of ours
  const before = items[left.index - 1];
  if (before !== undefined && before.kind !== itemKind.number && before.kind !== itemKind.sign)
    return false;
  return !fits(quantity, ahead.dimension);
}

/** "put 6oz in sub came up to 9", "charged 3 pounds head came up to 310": no heat and no gauge was weighed. */
export function strangeTo({ items, left, from }: Gap, next: number): boolean {
  const unit = items[left.index]?.unit;
  const { quantity, hint, place } = items[next]?.label ?? {};
  const moves = ((items[next + 1]?.roles ?? 0) & (role.is | role.to | role.change)) !== 0;
  const gauge = hint === "pressure" && place !== undefined && next === from;
  if (unit?.dimension === "mass" && gauge && moves) return true;
  if (quantity === undefined) return false;
  const heat = /^(?:superheat|subcooling|power_factor)$/.test(quantity);
  return heat && unit !== undefined && !fits(quantity, unit.dimension);
}

/** "480 nom getting 469", "208 rated I have 197": what is measured begins anew. */
export function measures(item: Item | undefined): boolean {
  return (
    item !== undefined &&
    /^(?:getting|get|got|seeing|measuring|measured|actual|have|finding)$/.test(item.text)
  );
}

/** "189-227 stamped reads 96": what is printed goes with the number before it. */
export function ratedThenReads(items: readonly Item[], next: number): boolean {
  const label = items[next]?.label;
  if (label?.rating !== "nominal" && label?.plate !== true) return false;
  // "45 uf rated 41.2 measured"
  const behind = items[next + 2]?.text ?? "";
  const said = items[next + 1]?.kind === itemKind.number;
  if (said && /^(?:measured|actual|tested)$/.test(behind)) return true;
  return (
    /^(?:reads|reading|tests|tested|measures|shows)$/.test(items[next + 1]?.text ?? "") &&
    items[next + 2]?.kind === itemKind.number
  );
}

/** "F L A on it's 6.8", "MCA on that is 33": what is rated on it has its own verb. */
export function ratedOnIt(items: readonly Item[], next: number): boolean {
  if (items[next + 1]?.text !== "on") return false;
  const [it, is] = items.slice(next + 2, next + 4);
  const pronoun = /^(?:it|its|that|thats|this|them|her)$/.test(it?.text ?? "");
  return pronoun && (isVerb(it) || isVerb(is));
}
