import type { Unit } from "../quantities/quantity.ts";
import { isThing } from "./got-one.ts";
import { type Item, itemKind, newItem } from "./item.ts";
import type { Building } from "./items.ts";
import { fits } from "./kinds.ts";
import { isNamedBehind, nameOfRow } from "./name-of-row.ts";
import type { NumberSaid } from "./number-parts.ts";
import { beginsFigure, numberAt, partOfHour } from "./numbers.ts";
import { tokenKind } from "./token.ts";
import { type UnitSaid, unitAt } from "./units.ts";
import { areNext, unitsLead } from "./units-lead.ts";
import { role } from "./word.ts";

function fromOf(build: Building, i: number): number {
  return build.tokens[i]?.from ?? 0;
}

function toOf(build: Building, end: number): number {
  return build.tokens[end - 1]?.to ?? 0;
}

/** "plus or minus five", "± 5 %": said with the number, no number of its own. */
function toleranceEnd(build: Building, i: number, bare: boolean): number {
  const { tokens } = build;
  let at = i;
  if (tokens[at]?.text === "±") at++;
  else if (
    tokens[at]?.text === "plus" &&
    tokens[at + 1]?.text === "or" &&
    tokens[at + 2]?.text === "minus"
  )
    at += 3;
  else if (tokens[at]?.text === "plus" && tokens[at + 1]?.text === "minus") at += 2;
  else if (tokens[at]?.text === "+" && tokens[at + 1]?.text === "/" && tokens[at + 2]?.text === "-")
    at += 3;
  else return i;
  const said = numberAt(tokens, at);
  if (said === undefined) return i;
  return bare ? said.end : (unitAt(build, said.end)?.end ?? said.end);
}

const loads: ReadonlySet<string> = new Set(["tons", "tonnage", "load", "capacity"]);

/** "evap in 54.1 out 44.9 gpm 610": behind "out" the other side of what was just measured. */
function otherOfPair(build: Building): "temperature" | undefined {
  const [label, number, joint] = build.items.slice(-3);
  if (!/^(?:in|out|and|\/)$/.test(joint?.text ?? "") || number?.kind !== itemKind.number)
    return undefined;
  return label?.label?.hint === "temperature" ? "temperature" : undefined;
}

const isVerb = (item: Item | undefined): boolean => ((item?.roles ?? 0) & role.is) !== 0;

/** "head is 293 amps …", "high side is at 412 amps …": what stands before the verb. */
function namedBefore(items: readonly Item[]): Item | undefined {
  let at = items.length - 1;
  if (items[at]?.text === "at" && isVerb(items[at - 1])) at--;
  while (isVerb(items[at])) at--;
  return items[at];
}

/** "delta t 19 amps 16.2": the unit's word names the next value where this one is of another kind. */
function namesNext(build: Building, i: number, found: UnitSaid): boolean {
  const label = namedBefore(build.items)?.label;
  const quantity = label?.quantity ?? label?.hint ?? otherOfPair(build) ?? nameOfRow(build);
  if (build.tokens[i]?.glued === true || found.unit.dimension === "time") return false;
  // "line 42 m 9.5/15.9"
  if (build.tokens[i]?.text === "m") return false;
  const first = build.items[build.items.length - 1]?.text ?? "";
  if (leadingUnit(build) || loads.has(first))
    return numberAt(build.tokens, found.end) !== undefined;
  if (quantity === undefined) return false;
  // "MOP 60 volts 460": a plate's amps are no volts
  if (label?.rating !== undefined && quantity !== "current") return false;
  if (fits(quantity, found.unit.dimension) || isNamedBehind(build)) return false;
  return unitsLead(build, found.end);
}

/**
 * "kW=14.8 PF=.82", "amps: 14.2 volts: 208": before a sign the unit is a heading, whatever stands left
 * of it; behind "500 volts:" alone the values of a test follow.
 */
function givesNext(build: Building, i: number, { unit, end }: UnitSaid): boolean {
  const sign = (at: number): string => /^[=:]$/.exec(build.tokens[at]?.text ?? "")?.[0] ?? "";
  const next = sign(end) === "" ? undefined : numberAt(build.tokens, end + 1);
  // "10 min: 610"
  if (next === undefined || unit.dimension === "time") return false;
  if (sign(end) !== sign(i - 1)) return false;
  const own = unitAt(build, next.end);
  return own === undefined || sign(own.end) !== "";
}

/** "comps 1 & 2 amps 11.8 11.2": the number counts the next machine, so the unit is of what follows. */
function nextOfMachines(build: Building, i: number, found: UnitSaid, value: number): boolean {
  const [machine, joint] = build.items.slice(-2);
  if (
    machine?.kind !== itemKind.subject ||
    !/^(?:and|&|n|\/|\+|-|to|thru)$/.test(joint?.text ?? "")
  )
    return false;
  if (build.tokens[i]?.glued === true || numberAt(build.tokens, found.end) === undefined)
    return false;
  const first = Number(/ (\d{1,2})$/.exec(machine.subject ?? "")?.[1] ?? Number.NaN);
  // "comps 1-4 amps 18.1 …"
  if (/^(?:-|to|thru)$/.test(joint?.text ?? "")) return value > first && value <= 12;
  return first + 1 === value;
}

/** "kW 12.4 kVA 14.1", "amps 18.2 18.5 18.1 volts 479": units stand before their numbers here. */
function leadingUnit(build: Building): boolean {
  for (let at = build.items.length - 1; at >= 0; at--) {
    const item = build.items[at];
    if (item === undefined) return false;
    if (item.kind === itemKind.unit) {
      return true;
    }
    if (item.kind === itemKind.number && item.unit === undefined) continue;
    if (item.text === "/") continue;
    if ((item.roles & role.is) !== 0 || item.text === ",") continue;
    return false;
  }
  return false;
}

/** "a fifth of a second", "three quarters of an hour": where the unit begins. */
function partOf(build: Building, said: NumberSaid, end: number): number {
  const { tokens } = build;
  const article = tokens[end + 1]?.text;
  if (said.value >= 1 || !said.spoken || tokens[end]?.text !== "of") return end;
  if (article !== "a" && article !== "an") return end;
  return unitAt(build, end + 2) === undefined ? end : end + 2;
}

/** "two oh nine A C two oh six": the next pair of phases, no amps. */
function letterOfPhase(build: Building, i: number): boolean {
  const token = build.tokens[i];
  if (token?.text !== "a" || token.glued || build.typed.charAt(token.from) !== "A") return false;
  const next = build.tokens[i + 1];
  if (next?.text !== "b" && next?.text !== "c") return false;
  return build.typed.charAt(next.from) !== next.text && numberAt(build.tokens, i + 2) !== undefined;
}

/** Puts a number and its unit into one item; returns the token behind them. */
function numberItem(build: Building, i: number, said: NumberSaid): number {
  const first = build.tokens[i];
  if (first === undefined) return i + 1;
  const spread = partOf(build, said, toleranceEnd(build, said.end, true));
  const unit = letterOfPhase(build, spread) ? undefined : unitAt(build, spread);
  const gas = said.spoken && gasWithin(build, i, i + 1) === i;
  const leads =
    unit !== undefined &&
    (namesNext(build, spread, unit) ||
      areNext(build, i, unit) ||
      givesNext(build, i, unit) ||
      nextOfMachines(build, spread, unit, said.value) ||
      // "1/2 amps 14 / 13.6": no fraction of an ampere, the unit is of what follows
      (said.fraction === true &&
        unit.unit.dimension === "current" &&
        numberAt(build.tokens, unit.end) !== undefined));
  const found = gas || leads ? undefined : unit;
  const end = toleranceEnd(build, found?.end ?? spread, false);
  const item = newItem(itemKind.number, first.from, toOf(build, end), first.text);
  item.glued = first.glued;
  item.value = said.value + (found?.add ?? 0);
  item.unit = found?.unit;
  item.heard = found?.heard ?? false;
  item.unitFrom = found === undefined ? -1 : fromOf(build, spread);
  item.numberTo = toOf(build, said.end);
  item.spoken = said.spoken;
  item.loose = said.loose ?? false;
  item.gas = gas;
  item.colon = said.colon ?? false;
  item.fraction = said.fraction ?? false;
  item.tail = said.tail ?? 0;
  item.apostrophe = build.tokens[end - 1]?.apostrophe ?? false;
  build.items.push(item);
  return end;
}

/** "a pound", "an hour", "another pound and a half": one of a unit. */
function oneOf(build: Building, i: number): number | undefined {
  const text = build.tokens[i]?.text ?? "";
  if (!/^(?:an?|another)$/.test(text)) return undefined;
  const found = unitAt(build, i + 1);
  if (found === undefined || found.beside) return undefined;
  if (text === "another" && found.unit.dimension !== "mass") return undefined;
  if (!countable(found.unit)) return undefined;
  return numberItem(build, i, { value: 1, end: i + 1, spoken: true });
}

/** "gig and a half", "pound and a quarter": one and a part, the one left out. Returns the token behind it, or 0. */
export function oneAndPart(build: Building, i: number): number {
  const [joint, part] = [build.tokens[i + 1]?.text, build.tokens[i + 2]?.text];
  if (joint !== "and" || !/^(?:a|half|three)$/.test(part ?? "")) return 0;
  const found = unitAt(build, i);
  if (found === undefined || found.end <= i + 2 || found.beside || numberWordBefore(build, i - 1))
    return 0;
  if (!countable(found.unit) && found.unit.factor !== 1e6) return 0;
  const end = numberItem(build, i, { value: 1, end: i, spoken: true });
  const item = build.items[build.items.length - 1];
  // "meg meg and a half": the unit is of what follows, and nothing was counted
  if (end <= i) build.items.pop();
  else if (item !== undefined) item.numberTo = item.from;
  return end > i ? end : 0;
}

function countable(unit: Unit): boolean {
  return unit.dimension === "mass" || unit.dimension === "time" || unit.factor === 1e9;
}

/** "sight glass half full": half of nothing counted. */
function halfWord(build: Building, i: number, said: NumberSaid): boolean {
  if (partOfHour(build.tokens, i) !== undefined) return false;
  return build.tokens[i]?.word?.number?.kind === "half" && unitAt(build, said.end) === undefined;
}

/** "sixty second one forty": seconds, none of a row. */
function numberWordBefore(build: Building, at: number): boolean {
  const token = build.tokens[at];
  return token?.kind === tokenKind.number || token?.word?.number !== undefined;
}

/** "make that last one 250": of several the one that was named, and then its figure. */
function thatOne({ tokens }: Building, i: number): boolean {
  const [lead, nth, one, next] = [tokens[i - 2], tokens[i - 1], tokens[i], tokens[i + 1]];
  if (one?.apostrophe === true || !/^(?:that|the|this)$/.test(lead?.text ?? "")) return false;
  return beginsFigure(next) && /^(?:last|first|other|next|second|third)$/.test(nth?.text ?? "");
}

/** "the bad one", "liq one 9.7k", "the third one": no number unless a label or a verb stands before it. */
function pronoun(build: Building, i: number): boolean {
  const token = build.tokens[i];
  if (token?.text !== "one" || token.kind !== tokenKind.word) return false;
  if (thatOne(build, i) || isThing(build.tokens, i)) return true;
  const before = build.tokens[i - 1];
  if (before === undefined) return false;
  // "next one twenty nine": of the next, no hundred and more
  const which = /^(?:next|other|second|third|fourth|2nd|3rd|4th)$/.test(before.text);
  const timed = numberWordBefore(build, i - 2);
  if (which && !timed && beginsFigure(build.tokens[i + 1])) return true;
  if (unitAt(build, i + 1) !== undefined || numberAt(build.tokens, i)?.end !== i + 1) return false;
  if (before.kind !== tokenKind.word) return false;
  // "a P one", "a P oh one", "E dash one": a code's letter
  if (/^[b-z]$/.test(before.text)) return false;
  // "net oil on one is twenty four": the number of what has the figure
  const verb = build.tokens[i + 1]?.text;
  if (before.text === "on" && verb === "is" && beginsFigure(build.tokens[i + 2])) return false;
  const two = build.tokens[i - 2]?.text ?? "";
  if (/^(?:oh|zero|dash)$/.test(before.text) && /^(?:[b-z]|oh|zero|dash)$/.test(two)) return false;
  const last = build.items[build.items.length - 1];
  if (before.apostrophe || last?.label?.quantity !== undefined || last?.label?.action !== undefined)
    return false;
  return (
    ((before.word?.roles ?? 0) & (role.is | role.about | role.greater | role.less)) === 0 ||
    last?.label?.place !== undefined
  );
}

/**
 * Refrigerants of three digits and a letter, as they are said: "four ten a". Source of the names:
 * ANSI/ASHRAE Standard 34; how they are said: common practice, no source.
 */
const spokenGases =
  /^(?:four ten|four (?:oh|o|zero) (?:four|seven)|one thirty four|four (?:five|fifty) four|four (?:four|forty) (?:eight|nine)|five (?:oh|o|zero) seven|four thirty eight|four twenty (?:two|seven)|five thirteen) [abcf]$/;
/** What such a name ends with. */
const gasLetters: ReadonlySet<string> = new Set(["a", "b", "c", "f"]);
const drawn =
  /^(?:pulls|pulling|pulled|draws|drawing|drew|amps|amp|lra|rla|fla|mca|moc|rotor|peak|inrush|runs|running|ran|at)$/;

/** Where a refrigerant's spoken name begins within a number said before it: "nine | four ten a". */
function gasWithin(build: Building, from: number, to: number): number | undefined {
  const { tokens } = build;
  if (drawn.test(tokens[from - 1]?.text ?? "")) return undefined;
  for (let at = from; at < to; at++) {
    for (const words of [3, 4]) {
      if (!gasLetters.has(tokens[at + words - 1]?.text ?? "")) continue;
      const said = tokens.slice(at, at + words).map(({ text }) => text);
      if (said.length === words && spokenGases.test(said.join(" "))) return at;
    }
  }
  return undefined;
}

/** The number at a token; one that runs into a refrigerant's name ends before it. */
function numberBeforeGas(build: Building, i: number): NumberSaid | undefined {
  const said = numberAt(build.tokens, i);
  if (said?.spoken !== true) return said;
  const gas = gasWithin(build, i, said.end);
  return gas === undefined || gas === i ? said : numberAt(build.tokens.slice(0, gas), i);
}

/** The number at token `i` as an item, where it is no pronoun and no part of a longer phrase. */
export function numberStep(build: Building, i: number): number {
  const said = pronoun(build, i) ? undefined : numberBeforeGas(build, i);
  if (said !== undefined && !halfWord(build, i, said)) return numberItem(build, i, said);
  return oneOf(build, i) ?? 0;
}
