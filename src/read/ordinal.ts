import { rowOfPoints } from "./digit-pairs.ts";
import type { Building } from "./items.ts";
import { letterOrdinal } from "./letter-ordinal.ts";
import { numberAt } from "./numbers.ts";
import { dashed, dottedRoom, isCelsius, spokenRoom } from "./spoken-room.ts";
import { type Token, tokenKind } from "./token.ts";
import { rowOfOutputs } from "./unit-or-word.ts";
import { plainUnitAt } from "./units.ts";
import { type Noun, role } from "./word.ts";
import { heardDigits } from "./words/numbers.ts";

/** The number or letter that a noun takes: "2", "two", "B", "1A". */
export interface Ordinal {
  readonly text: string;
  readonly end: number;
}

const heard = new Map(heardDigits);

function isJoint(token: Token | undefined): boolean {
  return token?.kind === tokenKind.sign && /^[-#.]$/.test(token.text);
}

/** "lead too 91", "fan to is 2.3": a phone's spelling of a digit, where a number or a verb follows. */
function heardOrdinal(build: Building, i: number): Ordinal | undefined {
  const token = build.tokens[i];
  const value = token === undefined ? undefined : heard.get(token.text);
  if (value === undefined) return undefined;
  const next = build.tokens[i + 1];
  if (next === undefined) return undefined;
  // "on the job for 3.5 hours"
  const noun = build.tokens[i - 1]?.text ?? "";
  if (token?.text === "for" && /^(?:job|site|order|shop|truck)$/.test(noun)) return undefined;
  const roles = next.word?.roles ?? 0;
  const follows =
    next.kind === tokenKind.number ||
    next.word?.number !== undefined ||
    (roles & (role.is | role.to)) !== 0 ||
    token?.text === "too" ||
    token?.text === "won";
  if (!follows || (roles & role.ground) !== 0) return undefined;
  return { text: String(value), end: i + 1 };
}

/** How a test came out; behind a figure's own unit it would stand for nothing. */
const outcome =
  /^(?:dead|short|shorted|good|bad|fine|ok|okay|clean|open|infinite|came|come|look|looks)$/;

/** Does the number that ends at `end` belong to a unit of its own: "comp 14 amps and", "fan 2.4 A"? */
function measured(build: Building, end: number): boolean {
  const unit = plainUnitAt(build, end);
  if (unit === undefined) return false;
  const letter = build.tokens[end];
  // "comp 2 megs dead short": the test's name, of the second compressor
  if (
    /^(?:megs?|ohms)$/.test(letter?.text ?? "") &&
    outcome.test(build.tokens[unit.end]?.text ?? "")
  )
    return false;
  if (
    unit.beside &&
    letter?.text.length === 1 &&
    !letter.glued &&
    letter.text !== "a" &&
    letter.text !== "f" &&
    !(letter.text === "k" && build.typed.charAt(letter.from) === "K") &&
    letter.text !== "%"
  )
    return false;
  if (unit.beside && unit.unit.figure.length === 1 && build.tokens[end]?.glued !== true) {
    if (build.tokens[end]?.text === "a")
      return build.typed.charAt(build.tokens[end]?.from ?? 0) === "A";
  }
  let at = unit.end;
  while (((build.tokens[at]?.word?.roles ?? 0) & role.is) !== 0 || build.tokens[at]?.text === ":")
    at++;
  const next = build.tokens[at];
  if (next === undefined) return true;
  if (numberAt(build.tokens, at) !== undefined) {
    const other = plainUnitAt(build, numberAt(build.tokens, at)?.end ?? at + 1);
    if (unit.unit.dimension === "mass") return other?.unit.dimension !== "mass";
    if (
      other === undefined ||
      /^meg/.test(letter?.text ?? "") ||
      other.unit.dimension === unit.unit.dimension
    )
      return false;
    // "cwp 22 psi 9.1 amps": each with its unit behind it; "pump 2 psi 14 amps 9" has them before
    return at === unit.end && numberAt(build.tokens, other.end) === undefined;
  }
  // "comp 1 amps" over "L1 14.1"
  const first = next.kind === tokenKind.line ? at + 1 : at;
  if (rowOfOutputs(build, first)) return false;
  if (first > at && build.tokens[first]?.word?.noun?.kind === "point") return false;
  return next.word?.noun?.kind !== "point" || next.word.label !== undefined;
}

/** "unit 204 supply 58": a unit by its room's number, where air or a state follows. */
function roomUnit(build: Building, i: number, noun: Noun): boolean {
  const token = build.tokens[i];
  if (token === undefined || noun.kind !== "subject" || !/^(?:indoor )?unit$/.test(noun.name))
    return false;
  const next = build.tokens[i + 1]?.text ?? "";
  return (
    /^\d{3,4}$/.test(token.text) &&
    /^(?:supply|return|sup|ret|blows|blowing|coil|eev|stat|space|is|isnt|has|wont|warm|hot|cold)$/.test(
      next,
    )
  );
}

function digitOrdinal(build: Building, i: number, noun: Noun): Ordinal | undefined {
  const token = build.tokens[i];
  if (token?.kind !== tokenKind.number) return undefined;
  if (token.text.includes(".") || token.text.includes(",")) return undefined;
  if (token.value > noun.upTo && !roomUnit(build, i, noun)) return undefined;
  if (noun.kind !== "aside" && token.value === 0) return undefined;
  // "wic 39 wif -4": how cold, no name
  if (
    noun.kind === "tag" &&
    /^(?:wic|wif)$/.test(build.tokens[i - 1]?.text ?? "") &&
    token.value > 20
  )
    return undefined;
  if (noun.kind === "tag" && build.tokens[i - 1]?.text === "hp" && token.value > 40)
    return undefined;
  const next = build.tokens[i + 1];
  const mark = next?.kind === tokenKind.sign && next.glued ? next.text : "";
  const after = build.tokens[i + 2];
  // "pump 12 -> 0.8 mbar"; "lead 1→gnd" is a pair
  const pair = noun.kind === "point" && build.tokens[i + 2]?.kind === tokenKind.word;
  if (next?.text === "→" && !pair) return undefined;
  if (mark === ":" && after?.glued === true && after.kind === tokenKind.number) return undefined;
  if (mark === "." && after?.glued === true && after.kind === tokenKind.number) return undefined;
  if (mark === "/" && after?.kind === tokenKind.number && noun.kind === "subject" && !token.glued) {
    if (numberAt(build.tokens, i)?.fraction === true) return undefined;
    if (noun.upTo > 9) return undefined;
  }
  // "lead 1min 10min": the head of a column
  if (noun.kind === "point" && next?.glued === true && /^mins?$/.test(next.text)) return undefined;
  // "fan motor 21 21.5 n 34 ohms": the first of a row, no motor's number
  const alike = next?.kind === tokenKind.number && Math.abs(next.value / token.value - 1) < 0.3;
  if (noun.kind === "subject" && noun.name.endsWith("motor") && token.value > 9 && alike)
    return undefined;
  // "it was ou-12s"
  if (noun.kind === "tag" && next?.text === "s" && next.glued)
    return { text: token.text, end: i + 2 };
  if (measured(build, i + 1) && noun.kind !== "point") return undefined;
  return { text: token.text, end: i + 1 };
}

/** "at the compressor two oh eight", "on the condenser fan two thirty one": behind an article the machine has no number. */
function behindArticle({ tokens }: Building, i: number): boolean {
  const article = /^(?:the|this|that|my|our|its)$/;
  return article.test(tokens[i - 2]?.text ?? "") || article.test(tokens[i - 3]?.text ?? "");
}

function spokenOrdinal(build: Building, i: number, noun: Noun): Ordinal | undefined {
  const token = build.tokens[i];
  const said = token?.word?.number;
  if (said === undefined || (said.kind !== "ones" && said.kind !== "teen")) return undefined;
  if (said.value > noun.upTo) return undefined;
  // "next compressor fourteen two": which one was said before it
  if (noun.kind === "subject" && /^(?:next|other)$/.test(build.tokens[i - 2]?.text ?? ""))
    return undefined;
  // "fan's four eight": what it is, not which
  if (noun.kind === "subject" && build.tokens[i - 1]?.apostrophe === true) return undefined;
  const next = build.tokens[i + 1];
  const scale = next?.word?.number?.kind;
  if (scale === "hundred" || scale === "thousand") return undefined;
  const room = spokenRoom(build, i, noun);
  if (room !== undefined) return room;
  // "case eleven's thirty six": the verb parts the name from its figure
  const parted = token?.apostrophe === true;
  if (said.kind === "teen" && !parted && /^(?:tens|teen|oh)$/.test(scale ?? "")) return undefined;
  // "leaving the condenser three fifteen psi": where it was measured has no number
  const pairs = scale === "tens" || scale === "teen" || scale === "oh";
  if (pairs && noun.kind === "subject" && behindArticle(build, i)) return undefined;
  // "fan eight forty rpm": so slow turns no fan
  const whole = pairs ? numberAt(build.tokens, i) : undefined;
  if (whole !== undefined && build.tokens[whole.end]?.text === "rpm") return undefined;
  const owned = noun.kind === "point" || token?.apostrophe === true;
  // "heaters four point one four point two": a plural has no number
  const plural = noun.kind === "subject" && /s$/.test(build.tokens[i - 1]?.text ?? "");
  const named = rowOfPoints(build.tokens, i + 1) && !plural;
  if (!owned && scale === "point" && !named) return undefined;
  const part = build.tokens[i + 3]?.word?.number?.kind;
  if (!owned && next?.text === "and" && build.tokens[i + 2]?.text === "a" && part !== undefined)
    return undefined;
  if (!owned && measured(build, i + 1)) return undefined;
  return { text: String(said.value), end: i + 1 };
}

const warm: ReadonlySet<string> = new Set(["room", "rm", "zone", "house", "store", "shop", "hall"]);

/** "room four twelve", "key code's 4419", "gate code 7719#"; "room 78" in a row of temperatures is one. */
function asideNumber(build: Building, i: number): Ordinal | "measured" | undefined {
  const lead = build.tokens[i];
  const skips =
    lead !== undefined &&
    (/^(?:#|:|number|no|num|nbr)$/.test(lead.text) || ((lead.word?.roles ?? 0) & role.is) !== 0);
  const at = skips ? i + 1 : i;
  const said = numberAt(build.tokens, at);
  const first = build.tokens[at];
  if (
    said === undefined ||
    first === undefined ||
    !Number.isInteger(said.value) ||
    said.value < 0 ||
    said.loose === true ||
    said.colon === true
  )
    return undefined;
  // "relay 478 477 0": a row of values
  const row = build.tokens[said.end]?.kind === tokenKind.number && !said.spoken && at === i;
  const noun = build.tokens[i - 1]?.text ?? "";
  // "on site ten till eight"
  if (noun === "site" && /^(?:to|till|til|past)$/.test(build.tokens[said.end]?.text ?? ""))
    return "measured";
  if (row && said.value >= 90 && /^(?:relay|panel|disconnect)$/.test(noun)) return "measured";
  // "bus dips 560 to 498": so many switches are on no board
  if (/^dips?$/.test(noun) && said.value > 16) return "measured";
  // "hp switch 410": what it is set to
  const gauged = /^(?:hp|lp|pressure|press|high|low|head|suction|oil)$/;
  if (/^(?:switch|control)$/.test(noun) && gauged.test(build.tokens[i - 2]?.text ?? ""))
    return "measured";
  const unit = plainUnitAt(build, said.end);
  const code = /code|keypad|passcode|combo/.test(
    `${build.tokens[i - 1]?.text ?? ""} ${build.tokens[i - 2]?.text ?? ""}`,
  );
  const star = build.tokens[said.end]?.text ?? "";
  if (unit !== undefined && star !== "#" && !(code && (star === "pound" || star === "pounds")))
    return undefined;
  if (warm.has(noun) && said.value >= 55 && said.value <= 99) return "measured";
  if (warm.has(noun) && isCelsius(build, i, said.value)) return "measured";
  if (at !== i && noun !== "code" && !/^(?:number|#|no)$/.test(build.tokens[i]?.text ?? ""))
    return undefined;
  if (!said.spoken && at === i)
    return unit === undefined ? undefined : { text: first.text, end: said.end + 1 };
  return { text: String(said.value), end: said.end };
}

/** The ordinal behind a noun that ends at token `i`, if it has one. */
export function ordinalAt(build: Building, i: number, noun: Noun): Ordinal | undefined {
  if (
    ((build.items[build.items.length - 1]?.roles ?? 0) & role.all) !== 0 &&
    /s$/.test(build.tokens[i - 1]?.text ?? "")
  )
    return undefined;
  // "first stage 17 split second stage 21": which one was said before it
  const told = build.tokens[i - 2]?.text ?? "";
  const stage = /^(?:stage|stg|circuit|compressor|comp)$/.test(build.tokens[i - 1]?.text ?? "");
  if (stage && /^(?:first|second|third|1st|2nd|3rd)$/.test(told)) return undefined;
  if (noun.kind === "aside") {
    const name = dottedRoom(build, i) ?? asideNumber(build, i);
    if (name === "measured") return undefined;
    if (name !== undefined) return withLetter(build, name, noun);
  }
  const at =
    isJoint(build.tokens[i]) &&
    (build.tokens[i]?.text === "#" ||
      (build.tokens[i + 1]?.glued === true && build.tokens[i]?.glued === true))
      ? i + 1
      : i;
  const found =
    digitOrdinal(build, at, noun) ??
    spokenOrdinal(build, at, noun) ??
    (noun.kind === "tag" ? undefined : heardOrdinal(build, at));
  if (found !== undefined && noun.kind === "tag")
    return dashed(build, found, noun) ?? withDash(build, found);
  if (found !== undefined) return dashed(build, found, noun) ?? withLetter(build, found, noun);
  return noun.letters === true ? letterOrdinal(build, at) : undefined;
}

/** "vav 3-12": a tag's number may have two parts. */
function withDash(build: Building, found: Ordinal): Ordinal {
  const [dash, next] = [build.tokens[found.end], build.tokens[found.end + 1]];
  if (
    dash?.text !== "-" ||
    !dash.glued ||
    next?.kind !== tokenKind.number ||
    !next.glued ||
    next.text.length > 3
  )
    return found;
  return { text: `${found.text}-${next.text}`, end: found.end + 2 };
}

/** "circuit 1A", "panel two B" */
function withLetter(build: Building, found: Ordinal, noun: Noun): Ordinal {
  const next = build.tokens[found.end];
  if (noun.letters !== true || next?.kind !== tokenKind.word || next.text.length !== 1)
    return found;
  const capital = build.typed.charAt(next.from);
  if (capital < "A" || capital > "H" || (!next.glued && noun.kind !== "aside")) return found;
  return { text: found.text + capital, end: found.end + 1 };
}
