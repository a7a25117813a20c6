import { degreesOfBox } from "./degrees-of-box.ts";
import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import type { Label } from "./label.ts";
import { ordinalAt } from "./ordinal.ts";
import { phraseAt } from "./phrase.ts";
import { isNumber, tokenKind } from "./token.ts";
import { headPressure } from "./unit-or-word.ts";
import { unitAt } from "./units.ts";

export interface SubjectSaid {
  readonly name: string;
  readonly end: number;
  readonly label: Label | undefined;
  /** a room, a door, a panel: takes its number away, says nothing of a reading */
  readonly aside: boolean;
}

/** "superheat at the comp 18, at the evap 9": where it was measured, and the value. */
function isPlaceOf(build: Building, i: number, end: number): boolean {
  if (build.tokens[i - 1]?.text !== "the" || build.tokens[i - 2]?.text !== "at") return false;
  const next = build.tokens[end];
  const ends = next === undefined || next.kind === tokenKind.line || /^[,.;]$/.test(next.text);
  return ends && build.items.some((item) => item.label?.quantity !== undefined);
}

/** The number of an indoor unit at most. Our choice, no source. */
const most = 12;
/** "indoor three is blowing 49": a unit, where a verb or a colon leads to its value; "indoor 7 outdoor 2" are degrees. */
function isUnit(build: Building, end: number): boolean {
  const next = build.tokens[end];
  if (onUnit(build, end)) return true;
  if (next === undefined) return false;
  if (next.text === ":" || /^(?:is|isnt|has|wont|doesnt|reads|blows|blowing)$/.test(next.text))
    return true;
  // "indoor 7 e5": a unit and its code
  if (next.kind === tokenKind.code) return true;
  // "indoor three's throwing a code"
  if (build.tokens[end - 1]?.apostrophe === true && next.kind === tokenKind.word) return true;
  // "indoor 6 23,5 return 21", "indoor 5 and 6": a figure behind its number, or its fellow
  const fellow = next.text === "and" && (build.tokens[end + 1]?.value ?? most) < most;
  const figure = next.kind === tokenKind.number && !next.glued;
  if (fellow || (figure && (next.value > most || /[.,]/.test(next.text)))) return true;
  return /^(?:coil|supply|return|eev|pipe|liquid|gas|fan)$/.test(next.text);
}

const fails =
  /^(?:trips|tripped|tripping|faults|faulted|faulting|throws|throwing|alarms|locks|hums|wont|shuts|kicks)$/;

const systems = /^(?:vrf|vrv|multi|split|minisplit|pump|system|module)$/;
const ofUnit = /^(?:on|in|into|of|to|from|for|off)$/;
const hasUnit =
  /^(?:comp|comps|compressor|compressors|fan|fans|shows|has|draws|draw|display|code)$/;

/** "VRF outdoor 1", "outdoor 2: HP 28", "1.2 kg into outdoor 2", "outdoor 3 comp 2": one of several, no weather. */
function isOutdoorUnit(build: Building, i: number, end: number): boolean {
  const [before, next] = [build.tokens[i - 1]?.text ?? "", build.tokens[end]];
  if (unitAt(build, end)?.unit.dimension === "temperature") return false;
  if (systems.test(before) || ofUnit.test(before)) return true;
  return next?.text === ":" || (next !== undefined && hasUnit.test(next.text));
}

/** "indoor 7 outdoor 2" are degrees; "indoor 3 is blowing", "outdoor 2 trips" are units. */
function isWarmth(build: Building, i: number, end: number): boolean {
  const failing = fails.test(build.tokens[end]?.text ?? "");
  if (build.tokens[i]?.text === "outdoor") return !failing && !isOutdoorUnit(build, i, end);
  return build.tokens[i]?.text === "indoor" && !failing && !isUnit(build, end);
}

/** "on indoor two", "between indoor three and the outdoor unit": what something is on, no warmth. */
function onUnit(build: Building, end: number): boolean {
  const [joint, indoor] = [build.tokens[end - 3], build.tokens[end - 2]];
  if (indoor?.text !== "indoor" || !/^(?:on|between|from|to)$/.test(joint?.text ?? ""))
    return false;
  return !build.tokens
    .slice(end, end + 2)
    .some(({ text, kind }) => text === "degrees" || kind === tokenKind.number);
}

const hashed = /^(?:box|cooler|freezer|case|rack|chiller|tower|pump|coil|head|cassette|walkin)$/;

/** "#1 box", "number 2 compressor": the number stands before what it counts. */
export function hashAt(build: Building, i: number): SubjectSaid | undefined {
  const [mark, number] = [build.tokens[i], build.tokens[i + 1]];
  if (mark === undefined || number === undefined) return undefined;
  const hash =
    mark.text === "#" &&
    number.glued &&
    build.items[build.items.length - 1]?.kind !== itemKind.number;
  if (!hash && !/^(?:number|no)$/.test(mark.text)) return undefined;
  const digit =
    number.kind === tokenKind.number && /^\d{1,2}$/.test(number.text)
      ? number.value
      : number.word?.number?.kind === "ones"
        ? number.word.number.value
        : 0;
  if (digit < 1) return undefined;
  const phrase = phraseAt(build.tokens, i + 2);
  const name = build.tokens[i + 2]?.text ?? "";
  if (phrase === undefined || build.tokens[i + 2]?.word?.number !== undefined) return undefined;
  // "number 2 compressor superheat 9": no part of the name
  const single = build.tokens[i + 2]?.word;
  const alone = phrase.word.noun === undefined && single?.noun?.kind === "subject";
  const { noun, label } = alone ? { noun: single.noun, label: undefined } : phrase.word;
  if (noun?.kind !== "subject" && !hashed.test(name)) return undefined;
  const own = noun?.kind === "subject" ? noun.name : name;
  return { name: `${own} ${digit}`, end: alone ? i + 3 : phrase.end, label, aside: false };
}

/** Words that count a machine before its name. */
export const nths: ReadonlyMap<string, number> = new Map([
  ["first", 1],
  ["second", 2],
  ["third", 3],
  ["fourth", 4],
]);
const machines = /^(?:compressor|fan|circuit|pump|condenser fan|evaporator fan|outdoor fan)$/;

/** "second comp 44": its number as a word before it; "the second compressor this year" is a count. */
export function countedAt(build: Building, i: number): SubjectSaid | undefined {
  const nth = nths.get(build.tokens[i]?.text ?? "");
  const before = build.tokens[i - 1];
  if (nth === undefined || before?.kind === tokenKind.number) return undefined;
  if (before?.word?.number !== undefined) return undefined;
  const phrase = phraseAt(build.tokens, i + 1);
  const noun = phrase?.word.noun;
  if (phrase === undefined || noun?.kind !== "subject" || !machines.test(noun.name))
    return undefined;
  const next = build.tokens[phrase.end];
  if (next === undefined || /^(?:this|in|we|they|ive|since|to|that)$/.test(next.text))
    return undefined;
  return { name: `${noun.name} ${nth}`, end: phrase.end, label: phrase.word.label, aside: false };
}

const gasLine = /^(?:suction|suct|liquid|line|pipe|outlet|psi|psig|pressure|superheat|sh)$/;

/** "suction at the case 39", "sh at case 7 sh at comp 31": where the line was read, and then what it read. */
function lineAtBox({ tokens }: Building, i: number, name: string, end: number): boolean {
  if (!/^(?:case|cooler|freezer|walk-in|evaporator|compressor)$/.test(name)) return false;
  const the = tokens[i - 1]?.text === "the" ? 1 : 0;
  const [far, at] = [tokens[i - 2 - the]?.text, tokens[i - 1 - the]?.text];
  if (at !== "at" || !gasLine.test(far ?? "")) return false;
  if (the === 1 && !/^(?:evaporator|compressor)$/.test(name)) return true;
  // "sh at case 7 is 12" names the case
  const [next, after] = [tokens[end], tokens[end + 1]];
  if (next === undefined || gasLine.test(next.text)) return true;
  return /^(?:,|and|n|&|at)$/.test(next.text) && !isNumber(after);
}

/** "compressor 2", "ckt A", "RTU-1", or an aside that keeps its number to itself: "room 412". */
export function subjectAt(build: Building, i: number): SubjectSaid | undefined {
  const phrase = phraseAt(build.tokens, i);
  const noun = phrase?.word.noun;
  if (phrase === undefined || noun === undefined || noun.kind === "point") return undefined;
  const rows = noun.kind === "subject" ? amperesOf(build, i, phrase.end) : undefined;
  if (rows !== undefined) return rows;
  const ordinal = ordinalAt(build, phrase.end, noun);
  if (ordinal === undefined || howMany(build, ordinal.end)) return undefined;
  if (isHour(build, ordinal.end) || isExchanged(build, phrase.end)) return undefined;
  if (noun.kind === "subject" && degreesOfBox(build, noun.name, ordinal.end))
    return noun.name === "case" ? warmCase(phrase.end) : undefined;
  if (noun.kind === "subject" && lineAtBox(build, i, noun.name, ordinal.end)) return undefined;
  // "motor 7 1/2 hp": how strong it is
  const half =
    build.tokens[ordinal.end + 1]?.text === "/" ||
    /^\d\/\d$/.test(build.tokens[ordinal.end]?.text ?? "");
  const hp = build.tokens.slice(ordinal.end, ordinal.end + 5).some(({ text }) => text === "hp");
  if (noun.kind === "subject" && half && hp) return undefined;
  if (noun.kind === "subject" && partNumberGoesOn(build, ordinal.end)) return undefined;
  if (ordinal.text === "C" && pinBehind(build, ordinal.end)) return undefined;
  if (phrase.end === i + 1 && isWarmth(build, i, ordinal.end)) return undefined;
  if (noun.kind === "subject" && isPlaceOf(build, i, ordinal.end)) return undefined;
  // "approach: evap 3 cond 5.5" are degrees
  if (
    noun.kind === "subject" &&
    /^(?:evaporator|condenser)$/.test(noun.name) &&
    build.items.some(({ text }) => text === "approach")
  )
    return undefined;
  const from = build.tokens[i]?.from ?? 0;
  // "uh one ninety five": a pause, no unit heater
  const pause = build.tokens[i]?.text === "uh" && build.typed.startsWith("uh", from);
  if (noun.kind === "tag" && pause && build.tokens[i + 1]?.text !== "-") return undefined;
  const to = build.tokens[ordinal.end - 1]?.to ?? from;
  if (noun.kind === "tag" && headPressure(build, i)) return undefined;
  if (noun.kind === "tag")
    return {
      name: tagName(build.typed.slice(from, to)),
      end: ordinal.end,
      label: undefined,
      aside: false,
    };
  // "second set same ports 101 and 318": what was read there
  const ports = /^(?:same|both|those)$/.test(build.tokens[i - 1]?.text ?? "");
  // "second floor 74": it has its number already
  const storey = /^(?:floor|flr)$/.test(build.tokens[i]?.text ?? "");
  if (storey && countedStorey.test(build.tokens[i - 1]?.text ?? "")) return undefined;
  if (noun.kind === "aside" && ports) return undefined;
  if (noun.kind === "aside" && (leftAt(build, i) || warmRoom(build, i, ordinal.end)))
    return undefined;
  if (noun.kind === "aside") return { name: "", end: ordinal.end, label: undefined, aside: true };
  return {
    name: `${noun.name} ${ordinal.text}`,
    end: ordinal.end,
    label: phrase.word.label,
    aside: false,
  };
}

/** "swapped the hp switch for a new one", "changed the switch to 450 psi": no fourth switch and no second. */
function isExchanged({ tokens }: Building, at: number): boolean {
  if (!/^(?:for|to|too)$/.test(tokens[at]?.text ?? "")) return false;
  const before = tokens.slice(Math.max(0, at - 8), at);
  return before.some(({ text }) => /^(?:swap|swapped|change|changed|went|replaced)$/.test(text));
}

/** "comp amps 1 14.8 15.1 14.7, comp 2 15.0 …": what the rows are, said between the first machine and its number. */
function amperesOf({ tokens }: Building, i: number, at: number): SubjectSaid | undefined {
  const [noun, word, number, value] = [tokens[i], tokens[at], tokens[at + 1], tokens[at + 2]];
  if (!/^(?:comp|comps|compressor|compressors)$/.test(noun?.text ?? "")) return undefined;
  if (!/^amps?$/.test(word?.text ?? "") || value?.kind !== tokenKind.number) return undefined;
  if (number?.kind !== tokenKind.number || !/^[1-4]$/.test(number.text)) return undefined;
  const next = String(number.value + 1);
  const others = tokens.some(
    ({ text }, at) => text === next && /^comp/.test(tokens[at - 1]?.text ?? ""),
  );
  if (!others) return undefined;
  const name = `compressor ${number.text}`;
  return { name, end: at + 2, label: { quantity: "current" }, aside: false };
}

/** "case 48 product 45": nothing but what is measured there. */
function warmCase(end: number): SubjectSaid {
  return { name: "", end, label: { place: "box", hint: "temperature" }, aside: false };
}

/** Which of the storeys it is, told before the word. */
export const countedStorey =
  /^(?:first|second|third|fourth|fifth|sixth|top|ground|\d+(?:st|nd|rd|th))$/;

/** "server rm 72 deg", "rm 74f 50% rh": how warm the room is, no number of it. */
function warmRoom(build: Building, i: number, end: number): boolean {
  if (!/^(?:room|rm|space|zone|store|hall)$/.test(build.tokens[i]?.text ?? "")) return false;
  const unit = unitAt(build, end);
  // "room 22 setpoint 21", "room 24 rh 48"
  const next = build.tokens[end];
  const number = build.tokens[end - 1];
  // "room 3.07 setpoint 22" tells storey and door
  const few = (number?.value ?? Number.NaN) < 100 && number?.text.includes(".") !== true;
  if (few && /^(?:set|setpoint|stpt|rh|humidity)$/.test(next?.text ?? "")) return true;
  const typed = (build.tokens[end]?.text.length ?? 0) > 1 || build.tokens[end]?.glued === true;
  return typed && unit?.unit.dimension === "temperature";
}

/** "off site 1615", "lv site 4:15": when he left, no number of the site. */
function leftAt(build: Building, i: number): boolean {
  const [before, site, number] = [build.tokens[i - 1], build.tokens[i], build.tokens[i + 1]];
  if (site?.text !== "site" || !/^(?:on|off|lv|lvg|left|leaving)$/.test(before?.text ?? ""))
    return false;
  // "on site 3h": how long he was there
  if (unitAt(build, i + 2)?.unit.dimension === "time" && isNumber(number)) return true;
  // "on site nine fifteen"
  if (number?.word?.number !== undefined) return true;
  if (number?.kind !== tokenKind.number) return false;
  return number.text.length >= 3 && number.value < 2400 && number.value % 100 < 60;
}

/** "a heater 12-0457": the first figures of a part's number, no twelfth heater. */
function partNumberGoesOn(build: Building, end: number): boolean {
  const last = build.tokens[end - 1];
  const [dash, rest] = [build.tokens[end], build.tokens[end + 1]];
  const glued = dash?.from === last?.to && rest?.from === dash?.to;
  if (last?.kind !== tokenKind.number || dash?.text !== "-" || !glued) return false;
  return /^\d{3,}/.test(rest?.text ?? "");
}

/** "comp C to S 2.1": the common pin and another, no third compressor. */
function pinBehind(build: Building, end: number): boolean {
  const [joint, pin] = [build.tokens[end]?.text ?? "", build.tokens[end + 1]?.text ?? ""];
  return /^(?:to|-|\/)$/.test(joint) && /^(?:s|r|start|run)$/.test(pin);
}

/** "started the pump 3pm": when, no third pump. */
function isHour({ tokens }: Building, end: number): boolean {
  const half = tokens[end];
  return half?.glued === true && /^[ap]m$/.test(half.text) && isNumber(tokens[end - 1]);
}

/** "evap fans 3 of 4 running": how many of them, no name. */
function howMany(build: Building, end: number): boolean {
  const next = build.tokens[end + 1];
  if (build.tokens[end]?.text !== "of" || next === undefined) return false;
  return next.kind === tokenKind.number || next.word?.number?.kind === "ones";
}

/** A tag stays as typed, without a possessive ending and the stops that a phone sets behind its letters. */
function tagName(typed: string): string {
  const letters = typed.replace(/(?<=\b\p{L})\.(?: (?=\p{L}\.))?/gu, "");
  return letters.replace(/['’]s$|(?<=\d)s$/u, "");
}
