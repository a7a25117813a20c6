import { dashedTag } from "./dashed-tag.ts";
import { lookUp } from "./dictionary.ts";
import { fresh, isGoods } from "./goods.ts";
import type { Building } from "./items.ts";
import { ordinalAt } from "./ordinal.ts";
import type { SubjectSaid } from "./subject-name.ts";
import { tokenKind } from "./token.ts";
import { plainUnitAt } from "./units.ts";

/** Tags that a phone writes as they are spelled; none that pins, phases or pressures are spelled like. */
const spelled =
  /^(?:rtu|ahu|fcu|odu|idu|ou|iu|mau|erv|doas|cru|sf|rf|ef|vfd|fpb|chwp|cwp|hwp|acu|ccu|cdu|wshp|ptac|crac)$/;
/** Letters that the longest of them has. */
const most = 4;

/** "R T U four", "a h u two": letters apart, then the number of the machine; two letters alone are capitals. */
function spelledTag(build: Building, i: number): SubjectSaid | undefined {
  let letters = "";
  let capitals = true;
  let at = i;
  while (letters.length < most) {
    const token = build.tokens[at];
    if (token === undefined || !/^[a-z]$/.test(token.text) || token.apostrophe) break;
    capitals &&= build.typed.charAt(token.from) === token.text.toUpperCase();
    letters += token.text;
    at++;
  }
  const noun = lookUp(letters)?.noun;
  if (noun === undefined || !spelled.test(letters)) return undefined;
  if (!capitals && letters.length < 3) return undefined;
  const ordinal = ordinalAt(build, at, noun);
  if (ordinal === undefined) return undefined;
  const kind = noun.kind === "subject" ? noun.name : letters.toUpperCase();
  return { name: `${kind} ${ordinal.text}`, end: ordinal.end, label: undefined, aside: false };
}

const otherBoxes =
  /^(?:junction|mixing|breaker|electrical|splice|pull|tool|shadow|vav|terminal|powered|starter|relay|disconnect|fuse|gear|switch|branch|v)$/;

const ofBranchBox = /^(?:liquid|liq|gas|suction|line|flare|tee|port|valve|eev|pipe|drain|joint)$/;

/** "box four's plus six", "box 4 is 38": behind its number the verb, so it is no warmth of one. */
export function numberedBox(build: Building, i: number): SubjectSaid | undefined {
  const [box, number] = [build.tokens[i], build.tokens[i + 1]];
  if (box?.text !== "box" || box.apostrophe || number === undefined) return undefined;
  if (otherBoxes.test(build.tokens[i - 1]?.text ?? "")) return undefined;
  const spoken = number.word?.number?.kind === "ones" ? number.word.number.value : 0;
  const value = /^(?:[1-9]|1[0-2])$/.test(number.text) ? Number(number.text) : spoken;
  if (value === 0 || plainUnitAt(build, i + 2) !== undefined) return undefined;
  const verb = build.tokens[i + 2];
  // "braze at box 1 liquid tee": a part of a branch box
  const part = ofBranchBox.test(verb?.text ?? "") && !isFigure(build.tokens[i + 3]);
  if (part) return { name: `box ${value}`, end: i + 2, label: undefined, aside: false };
  // "box 2 has 208 on L1 L2" is a box of wires
  const is = /^(?:is|was|reads|sits|shows)$/.test(verb?.text ?? "");
  if (!number.apostrophe && !is) return undefined;
  const label = { place: "box", hint: "temperature" } as const;
  return { name: `box ${value}`, end: i + 2, label, aside: false };
}

const wares = /^(?:dairy|meat|produce|deli|display|fish|seafood|bakery|beer|ice ?cream)$/;

/** "dairy case 4 at 29", "case 12 is 31": behind its number the verb and how cold it is. */
function numberedCase(build: Building, i: number): SubjectSaid | undefined {
  const { tokens } = build;
  const at = wares.test(tokens[i]?.text ?? "") ? i + 1 : i;
  const [number, verb] = [tokens[at + 1], tokens[at + 2]];
  if (tokens[at]?.text !== "case" || tokens[at]?.apostrophe === true) return undefined;
  if (/^(?:in|worst|best|each|that|this|per)$/.test(tokens[i - 1]?.text ?? "")) return undefined;
  if (number === undefined) return undefined;
  const spoken = number.word?.number?.kind === "ones" ? String(number.word.number.value) : "";
  const name = /^[1-9]\d?$/.test(number.text) ? number.text : spoken;
  if (name === "") return undefined;
  const is = /^(?:is|was|reads|reading|sits|shows|at|now)$/.test(verb?.text ?? "");
  if (!is && !number.apostrophe) return undefined;
  const figure = [at + 2, at + 3, at + 4].find((one) => isFigure(tokens[one]));
  if (figure === undefined) return undefined;
  // "eev case 14 at 38%"
  const unit = plainUnitAt(build, figure + 1)?.unit;
  if (unit !== undefined && unit.dimension !== "temperature") return undefined;
  const label = { place: "box", hint: "temperature" } as const;
  return { name: `${kindOfCase(build, at)} ${name}`, end: at + 2, label, aside: false };
}

/** "dairy 1 41 meat 1 34": where two kinds of goods have a case of that number, it goes by its goods. */
function kindOfCase({ tokens, typed }: Building, at: number): string {
  const goodsOf = (i: number): string => typed.slice(tokens[i]?.from, tokens[i]?.to).toLowerCase();
  const number = tokens[at + 1]?.text;
  const others = tokens.some(
    ({ text }, i) =>
      text === "case" && tokens[i + 1]?.text === number && goodsOf(i) !== goodsOf(at),
  );
  return others && isGoods(goodsOf(at)) ? `${goodsOf(at)} case` : "case";
}

/** F: fresh goods lie warmer, so a lower figure is the number of their case. Common practice, no source. */
const coldestFresh = 20;
/** Words behind a figure that say how cold it is and when, and nothing of a case by that number. */
const ofDegrees =
  /^(?:deg|degs|degree|degrees|f|c|celsius|fahrenheit|below|minus|above|now|today|again|still|and|n|but|when|this|since|by|before|after|until|then|so)$/;

/** "meat case 9 warm since yesterday", "dairy case 2 suction 45", "deli case 3 41": the case by its number, and how it is. */
function freshCase(build: Building, i: number): SubjectSaid | undefined {
  const { tokens, units } = build;
  const [goods, box, number] = tokens.slice(i, i + 3);
  if (units !== "us" || !fresh.test(goods?.text ?? "") || number === undefined) return undefined;
  if (!/^(?:case|cases|cooler)$/.test(box?.text ?? "") || box?.apostrophe === true)
    return undefined;
  const isName = (at: number): boolean => {
    const token = tokens[at];
    const said = token?.word?.number?.kind;
    if (said === "ones" || said === "teen") return token?.apostrophe === false;
    return /^\d{1,2}$/.test(token?.text ?? "") && (token?.value ?? coldestFresh) < coldestFresh;
  };
  let at = i + 3;
  while (/^(?:and|n|&|,)$/.test(tokens[at]?.text ?? "") && isName(at + 1)) at += 2;
  const next = tokens[at];
  const figure = next?.kind === tokenKind.number && next.value >= coldestFresh && !next.glued;
  const own = figure || next?.word?.number?.kind === "tens";
  // "dairy case 11 C"
  const warm = plainUnitAt(build, at) !== undefined;
  const isWord = next?.kind === tokenKind.word && next.word?.number === undefined;
  const told = isWord && !warm && !ofDegrees.test(next.text);
  if (!isName(i + 2) || !(own || told)) return undefined;
  const label = { place: "box", hint: "temperature" } as const;
  return {
    name: `${box?.text === "cooler" ? "cooler" : "case"} ${number.word?.number?.value ?? number.text}`,
    end: i + 3,
    label,
    aside: false,
  };
}

function isFigure(token: Building["tokens"][number] | undefined): boolean {
  return token?.kind === tokenKind.number || token?.word?.number !== undefined;
}

/** A machine by letters or a number that no list of nouns has. */
export function ownTag(build: Building, i: number): SubjectSaid | undefined {
  return (
    spelledTag(build, i) ?? numberedCase(build, i) ?? freshCase(build, i) ?? dashedTag(build, i)
  );
}
