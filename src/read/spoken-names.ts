import { digitAt, numberWord } from "./number-parts.ts";
import { numberAt } from "./numbers.ts";
import {
  countedRows,
  type Figure,
  figureAt,
  namesBeforeRow,
  namesGoingOn,
  namesListed,
} from "./spoken-rows.ts";
import { type Token, tokenKind } from "./token.ts";
import { commaAt } from "./unsaid-token.ts";

const kindAt = (tokens: readonly Token[], i: number): string => numberWord(tokens[i])?.kind ?? "";

const beginsClause = /^(?:and|then|[,.;:])$/;
const atCircuit = /^(?:super|sub|amps|amp|draws|pulls|has|is|ran|running|same|static|standing)$/;

/** "c two fourteen point two": a circuit's mark where a clause begins; "c two" behind a figure are degrees. */
function isMark(tokens: readonly Token[], i: number): boolean {
  if (tokens[i]?.text !== "c" || digitAt(tokens, i + 1) === 0) return false;
  // "phase b four oh nine and c four eleven"
  const near = tokens.slice(Math.max(0, i - 24), i + 24);
  if (tokens[i]?.apostrophe === true || near.some(({ text }) => text === "b")) return false;
  const before = tokens[i - 1];
  const first = before === undefined || before.kind === tokenKind.line;
  const second =
    digitAt(tokens, i + 1) === 2 && digitAt(tokens, 1) === 1 && tokens[0]?.text === "c";
  if (!first && !second && !beginsClause.test(before.text) && before.text !== "on") return false;
  const next = tokens[i + 2];
  if (next === undefined) return before?.text === "on";
  const [kind, then] = [kindAt(tokens, i + 2), kindAt(tokens, i + 3)];
  if (kind === "ones") return /^(?:teen|tens|oh|hundred|point)$/.test(then);
  if (kind === "teen" || kind === "tens") return true;
  return atCircuit.test(next.text) || next.word?.label !== undefined;
}

/** "u one v one": the ends of a motor's windings as their plates have them (IEC 60034-8). */
function isEnd(tokens: readonly Token[], i: number): boolean {
  const ends = (at: number): boolean =>
    /^[uvw]$/.test(tokens[at]?.text ?? "") && /^[12]$/.test(String(digitAt(tokens, at + 1)));
  const joint = /^(?:to|-)$/.test(tokens[i + 2]?.text ?? "") ? 3 : 2;
  const back = /^(?:to|-)$/.test(tokens[i - 1]?.text ?? "") ? i - 3 : i - 2;
  return ends(i) && (ends(i + joint) || ends(back));
}

/** "sensor one | ten point one k": nobody reads tenths of a hundred and more there. */
function isSensor(tokens: readonly Token[], i: number): boolean {
  if (!/^(?:sensor|thermistor|probe)$/.test(tokens[i - 1]?.text ?? "")) return false;
  if (digitAt(tokens, i) === 0) return false;
  // said again with its number, each is a name already
  const near = tokens.slice(Math.max(0, i - 12), i + 12);
  if (near.filter(({ text }) => text === tokens[i - 1]?.text).length > 1) return false;
  const kind = kindAt(tokens, i + 1);
  if (kind !== "teen" && kind !== "tens") return false;
  const end = kind === "tens" && digitAt(tokens, i + 2) > 0 ? i + 3 : i + 2;
  return kindAt(tokens, end) === "point";
}

/** psi that are no number of a circuit. Our choice, no source. */
const leastGauge = 20;

/** "suction two | one twenty one": two digits before the tens, so the first is the circuit's. */
function isGauge(tokens: readonly Token[], i: number): boolean {
  if (!/^(?:suction|head|discharge|liquid)$/.test(tokens[i - 1]?.text ?? "")) return false;
  if (digitAt(tokens, i) === 0 || digitAt(tokens, i) > 4) return false;
  // "suction one at one eighteen"
  const verb = /^(?:at|is)$/.test(tokens[i + 1]?.text ?? "");
  if (verb) return (numberAt(tokens, i + 2)?.value ?? 0) >= leastGauge;
  if (digitAt(tokens, i + 1) === 0) return false;
  return /^(?:tens|teen|hundred)$/.test(kindAt(tokens, i + 2));
}

/** What leads the numbers of several things, or joins them. */
const leadsIn =
  /^(?:megged|meg|megs|leads?|legs?|terminals?|phases?|rooms?|and|n|&|on|comps?|fans?)$/;

/** "megged one two and three all over": counted from one, and no figure behind. */
function listedAt(tokens: readonly Token[], i: number): readonly number[] {
  if (!leadsIn.test(tokens[i - 1]?.text ?? "") || digitAt(tokens, i) !== 1) return [];
  if (digitAt(tokens, i + 1) !== 2) return [];
  const last = tokens[i + 2]?.text === "and" ? i + 3 : i + 2;
  if (digitAt(tokens, last) !== 3 || numberWord(tokens[last + 1]) !== undefined) return [];
  return /^(?:all|are|were|is|both|each|good|clean|open|ol|over|to|running|run|pull|pulling|draw|drawing)$/.test(
    tokens[last + 1]?.text ?? "",
  )
    ? [i, i + 1, last]
    : [];
}

function typed(token: Token, value: number): Token {
  return {
    ...token,
    kind: tokenKind.number,
    text: String(value),
    value,
    word: undefined,
    glued: false,
  };
}

/** "box one thirty eight box two forty": the same word again with the next number, each before a figure. */
function namesOfBoxes(tokens: readonly Token[]): readonly number[] {
  const found = tokens.flatMap((token, i) => {
    const said = numberWord(tokens[i + 1]);
    const named = said?.kind === "ones" || said?.kind === "teen";
    const figure = numberWord(tokens[i + 2]) ?? numberWord(tokens[i + 3]);
    const box = /^(?:box|case|cooler|freezer)$/.test(token.text) && token.apostrophe === false;
    return box && named && figure !== undefined ? [{ i, value: said.value, text: token.text }] : [];
  });
  const told = new Set(found.map(({ value, text }) => `${text} ${value}`));
  const rises = found.filter(({ value, text }) =>
    [value - 1, value + 1].some((next) => told.has(`${text} ${next}`)),
  );
  return rises.map(({ i }) => i + 1);
}

function asFigure(tokens: readonly Token[], { from, end, value }: Figure): Token {
  const [first, last] = [tokens[from], tokens[end - 1]];
  if (first === undefined || last === undefined) throw new RangeError("no such token");
  return { ...typed(first, value), to: last.to };
}

/** Where a name is put before its own figure: both stand as if they were typed. */
function namesWithFigure(tokens: readonly Token[]): readonly number[] {
  const found = tokens.flatMap((_, i) => (isSensor(tokens, i) || isGauge(tokens, i) ? [i] : []));
  return [...found, ...namesGoingOn(tokens), ...namesOfBoxes(tokens)];
}

/** Digits that are spoken as the name of a thing stand as if they were typed, so that no figure takes them in. */
export function spokenNames(tokens: readonly Token[]): readonly Token[] {
  const rows = countedRows(tokens);
  const own = namesWithFigure(tokens);
  const figures = [
    ...rows.flatMap((row) => row.figures),
    ...own.flatMap((i) => figureAt(tokens, i + 1) ?? []),
  ];
  const within = new Map<number, Figure>();
  for (const figure of figures)
    for (let at = figure.from; at < figure.end; at++) within.set(at, figure);
  const listed = new Set([
    ...namesListed(tokens),
    ...tokens.flatMap((_, i) => listedAt(tokens, i)),
    ...namesGoingOn(tokens),
  ]);
  const names = new Set([
    ...rows.flatMap((row) => row.names),
    ...namesBeforeRow(tokens),
    ...own,
    ...listed,
  ]);
  const letters = new Set(
    tokens.flatMap((_, i) => (isMark(tokens, i) || isEnd(tokens, i) ? [i] : [])),
  );
  return tokens.flatMap((token, i) => {
    if (letters.has(i)) {
      const digit = tokens[i + 1];
      const text = `${token.text}${digitAt(tokens, i + 1)}`;
      return [{ ...token, kind: tokenKind.code, text, word: undefined, to: digit?.to ?? token.to }];
    }
    if (letters.has(i - 1)) return [];
    const figure = within.get(i);
    if (figure !== undefined) return i === figure.from ? [asFigure(tokens, figure)] : [];
    if (!names.has(i)) return [token];
    const name = typed(token, numberWord(token)?.value ?? token.value);
    // "thirty four ohms, two and three open": what is before it ends there
    const before = tokens[i - 1];
    const first = listed.has(i) && !listed.has(i - 1) && before?.kind === tokenKind.word;
    const ends = first && before.word?.noun === undefined && !leadsIn.test(before.text);
    return ends ? [commaAt(token.from), name] : [name];
  });
}
