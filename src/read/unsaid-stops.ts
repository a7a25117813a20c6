import { isStrongBreak, isWeakBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import { type Item, itemKind, newItem } from "./item.ts";

/** How something is that was named: what is said so of it says nothing of the figure before it. */
const states =
  /^(?:ok|okay|good|fine|off|out|down|dead|stuck|loose|burnt|burned|blown|gone|shut|stands|stopped|stops|wont|wouldnt|doesnt|isnt|cant|aint|never|tripped|trips|seized|locked|leaking|leaks|noisy|dirty|plugged|iced|frosted|faded|missing|normal|even|hums|smells|looks|seems|needs|stays|sits|starts|keeps)$/;
/** Behind "is" alone: "head low" may be a gauge's reading. */
const behindIs = /^(?:high|low|hot|cold|warm|up|bad|clean|clear|open|closed|running)$/;
/** Between a name and how it is. */
const small = /^(?:all|still|just|now|also|too|both|is|are|was|were|been|not|has)$/;

/** "ok", "still off", "is dead": does what follows a name tell how it is? */
export function tellsHow(items: readonly Item[], at: number): boolean {
  let i = at;
  while (small.test(items[i]?.text ?? "") && i < at + 2) i++;
  const item = items[i];
  if (item === undefined || item.kind === itemKind.number) return false;
  const said = i > at || items[at - 1]?.apostrophe === true;
  if (!states.test(item.text) && !(said && behindIs.test(item.text))) return false;
  return items[i + 1]?.kind !== itemKind.number;
}

/** Where the words of the clause before `end` begin. */
function clauseFrom(items: readonly Item[], end: number): number {
  for (let i = end - 1; i >= 0; i--) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item) || isWeakBreak(item)) return i + 1;
  }
  return 0;
}

/** Has the figure that ends at `end` been named by what stands before it? */
function namedBefore(items: readonly Item[], end: number): boolean {
  let i = end - 1;
  while (items[i]?.kind === itemKind.number || items[i]?.text === "/") i--;
  return i >= clauseFrom(items, end) && /[LQURPN]/.test(classOf(items[i]));
}

function endsValue(items: readonly Item[], i: number): boolean {
  const item = items[i];
  return item?.kind === itemKind.number && item.owner === undefined;
}

/** Ratings that a plate gives in amps. */
const inAmps = /^(?:RLA|LRA|MOC|MCC|MCA|MOP|FLA)$/;
const ofThing = /^(?:on|of|for|the|its|is|says|plate|tag|np|nameplate|:|=)$/;

/** "esp 1.1 fla on blwr 7.6": no static has a plate's amps, so they are of the figure behind. */
function platesAmps(items: readonly Item[], i: number): boolean {
  if (!inAmps.test(items[i]?.label?.rating ?? "")) return false;
  let named = i - 1;
  while (items[named]?.kind === itemKind.number || items[named]?.text === "/") named--;
  const { quantity, hint, rating } = items[named]?.label ?? {};
  const kind = quantity ?? hint;
  if (kind === undefined || kind === "current" || rating !== undefined) return false;
  if (items[i - 1]?.unit !== undefined) return false;
  let at = i + 1;
  while (at < i + 5 && (ofThing.test(items[at]?.text ?? "") || isThing(items[at]))) at++;
  const value = items[at];
  return at > i + 1 && value?.kind === itemKind.number && value.owner === undefined;
}

const isThing = (item: Item | undefined): boolean =>
  item?.kind === itemKind.subject || /[LN]/.test(classOf(item));

function stopsHere(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item === undefined || !endsValue(items, i - 1)) return false;
  const kind = classOf(item);
  if (kind === "R") return platesAmps(items, i);
  if (kind === "S" || kind === "P") return tellsHow(items, i + 1);
  if (kind !== "" && "LQUN".includes(kind)) return tellsHow(items, i + 1) && namedBefore(items, i);
  return false;
}

/** Legs of a row, and how far one may be from the next: further is another figure. Common practice, no source. */
const legs = 3;
const alike = 1.3;

const like = (one: Item | undefined, other: Item | undefined): boolean => {
  const far = (one?.value ?? Number.NaN) / (other?.value ?? Number.NaN);
  return far < alike && far > 1 / alike;
};

const isBare = (item: Item | undefined): boolean =>
  item?.kind === itemKind.number && item.unit === undefined && item.owner === undefined;

/** What a row of legs is headed by: "amps", "volts", "windings". */
function headsRow({ kind, unit, label }: Item): boolean {
  if (kind === itemKind.unit) return /^(?:voltage|current|resistance)$/.test(unit?.dimension ?? "");
  return /^(?:voltage|current|winding_resistance)$/.test(label?.quantity ?? "");
}

/** Does another figure begin at `i`, with its unit or its name: "24 volts at", "eev 210", "discharge line 178"? */
function beginsOther(items: readonly Item[], i: number): boolean {
  const [item, next, after] = [items[i], items[i + 1], items[i + 2]];
  if (item === undefined || item.label?.rating !== undefined) return false;
  if (item.kind === itemKind.number) return item.unit !== undefined && !like(items[i - 1], item);
  const names = item.kind === itemKind.label || item.kind === itemKind.subject;
  return names && (next?.kind === itemKind.number || after?.kind === itemKind.number);
}

/** "amps 14.1 14.3 14.2 24 volts at the board": three legs are told, what follows is another's. */
function rowEnds(items: Item[]): void {
  for (let i = 0; i + legs + 1 < items.length; i++) {
    const head = items[i];
    if (head === undefined || !headsRow(head) || items[i - 1]?.kind === itemKind.number) continue;
    const row = items.slice(i + 1, i + 1 + legs);
    if (!row.every(isBare) || !row.every((one) => like(one, row[0]))) continue;
    const at = i + 1 + legs;
    if (!beginsOther(items, at)) continue;
    const end = row[legs - 1]?.to ?? 0;
    items.splice(at, 0, newItem(itemKind.sign, end, end, ","));
  }
}

const plate = /^(?:plate|nameplate|np|tag|sticker|label|dataplate)$/;

/** "RLA 22 on plate its swinging 17-19 A": the plate is of the figure that its name stands before. */
function plateEnds(items: Item[]): void {
  for (let i = items.length - 2; i > 2; i--) {
    const item = items[i];
    if (item === undefined || !plate.test(item.text)) continue;
    const on = items[i - 1]?.text === "the" ? i - 2 : i - 1;
    if (!/^(?:on|per|by|from|off)$/.test(items[on]?.text ?? "")) continue;
    const [name, value] = [items[on - 2], items[on - 1]];
    if (value?.kind !== itemKind.number || name?.label?.rating === undefined) continue;
    const next = items[i + 1];
    if (next === undefined || isStrongBreak(next) || isWeakBreak(next)) continue;
    items.splice(i + 1, 0, newItem(itemKind.sign, item.to, item.to, ","));
  }
}

/** "sup 55 amps good", "head 340 fan 2 dead": puts the comma that nobody typed where another clause begins. */
export function unsaidStops(items: Item[]): void {
  rowEnds(items);
  plateEnds(items);
  for (let i = items.length - 1; i > 0; i--) {
    if (!stopsHere(items, i)) continue;
    const [before, head] = [items[i - 1], items[i]];
    if (head?.kind === itemKind.unit) head.kind = itemKind.word;
    const at = before?.to ?? 0;
    items.splice(i, 0, newItem(itemKind.sign, at, at, ","));
  }
}
