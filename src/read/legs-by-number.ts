import { digitOf } from "./digit-pairs.ts";
import { ordinalLegs } from "./ordinal-legs.ts";
import { legAlone, type RowInHand } from "./row-in-hand.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";
import { commaAt, wordAt } from "./unsaid-token.ts";
import { role } from "./word.ts";

/** Things that are counted like legs are: "14.2 on one and 14.4 on two" may be of those. */
const machines =
  /^(?:comps?|compressors?|fans?|units?|heads?|circuits?|ckts?|pumps?|heaters?|elements?|stages?|zones?|boards?|coils?|racks?|cases?|rtus?|motors?|banks?|evaps?|jobs?|floors?|taps?)$/;
const tested = /^(?:megs?|megohms?|mohms?|gigs?|megged|megging|megger|insulation)$/;

/** "9.1 on one": does the number of a leg stand here, behind a figure? */
function numberedAt(tokens: readonly Token[], i: number, expected: number): boolean {
  const on = tokens[i - 1];
  return (
    on?.text === "on" &&
    digitOf(tokens[i]) === expected &&
    tokens[i]?.apostrophe === false &&
    !(tokens[i + 1]?.glued === true && !/^[,.;]$/.test(tokens[i + 1]?.text ?? "")) &&
    (isNumber(tokens[i - 2]) || tokens[i - 2]?.word?.unit !== undefined)
  );
}

/**
 * "9.1 on one 8.9 on two and 9 on three": three figures, each with the number of its leg behind it. A word
 * for the leg is put before each number, and a comma behind it where a figure follows. Two alone may be machines.
 */
export function legsByNumber(
  all: readonly Token[],
  testing: boolean,
  row: RowInHand | undefined,
): readonly Token[] {
  const tokens = markedLegs(afterTester(nextThenRow(ordinalLegs(all))));
  const toGround = testing || tokens.some(({ text }) => tested.test(text));
  const alone = row === undefined ? -1 : legAlone(tokens, row);
  if (row !== undefined && alone >= 0) return named(tokens, [alone], row.noun);
  const list = toGround ? listOfLeads(tokens) : -1;
  if (list >= 0) return named(tokens, [list], "leads");
  const over = toGround ? twoOver(tokens) : [];
  if (over.length > 0) return named(tokens, over, "lead");
  const every = leadsCounted(tokens);
  const [head, machine] = headOf(tokens, every[0] ?? 0);
  // "heaters 1 14.2 amps 2 14.4 3 0": said with its unit, what is counted are no legs
  const several =
    /s$/.test(machine) && every.some((at) => tokens[at + 2]?.word?.unit !== undefined);
  const counted = toGround || row !== undefined || head !== "" || several ? every : [];
  // "megged comp 1 620 2 615 3 590": the machine's word goes on
  if (counted.length > 0 && machine !== "")
    return named(tokens, head === "" && !several ? counted.slice(1) : counted, singular(machine));
  if (counted.length > 0)
    return named(
      tokens,
      counted,
      toGround
        ? "lead"
        : (row?.noun ?? (/^(?:windings?|ohms?|leads?)$/.test(head) ? "lead" : "leg")),
    );
  const said = saidLegs(tokens);
  if (said.length > 0 && !countsMachines(tokens, said[0] ?? 0))
    return named(tokens, said, toGround ? "lead" : "leg");
  if (!tokens.some(({ text }) => text === "on")) return tokens;
  const found: number[] = [];
  for (let i = 2; i < tokens.length && found.length < 3; i++)
    if (numberedAt(tokens, i, found.length + 1)) found.push(i);
  // "compressor's pulling 14 on one": whose motor it is counts nothing
  const ofMachines = tokens.some(
    ({ text, apostrophe }, i) => machines.test(text) && !apostrophe && !isNumber(tokens[i + 1]),
  );
  if (found.length < 3 || ofMachines) return tokens;
  return named(tokens, found, tokens.some(({ text }) => tested.test(text)) ? "lead" : "leg");
}

/** "amps 1 14.1 2 14.3 3 14.2", "fan amps 1 2.1": what a counted row is of, and the machine right before it. */
function headOf(tokens: readonly Token[], first: number): readonly [head: string, machine: string] {
  let at = first - 1;
  while (/^[:,-]$/.test(tokens[at]?.text ?? "")) at--;
  const text = tokens[at]?.text ?? "";
  const head = headed.test(text) ? text : "";
  const noun = tokens[head === "" ? first - 1 : at - 1]?.text ?? "";
  return [head, machines.test(noun) ? noun : ""];
}

/** "next comp A 13.5, B 23.8, C 12.4": the machine's word ends before the first of the row. */
function nextThenRow(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex(
    ({ text }, i) =>
      /^(?:next|other)$/.test(text) &&
      machines.test(tokens[i + 1]?.text ?? "") &&
      i < tokens.length,
  );
  const noun = tokens[at + 1];
  const row = [/^(?:a|1)$/, /^(?:b|2)$/, /^(?:c|3)$/].map((leg, nth) =>
    tokens.findIndex(
      ({ text }, i) => i >= at + 2 + nth * 2 && leg.test(text) && isNumber(tokens[i + 1]),
    ),
  );
  const [first = -1, second = -1, third = -1] = row;
  if (at < 0 || noun === undefined || first !== at + 2 || second < first || third < second)
    return tokens;
  return [...tokens.slice(0, first), commaAt(noun.to), ...tokens.slice(first)];
}

/** "fans: one's 2.1, two's 2.2": a machine's name that has no number of its own is what is counted. */
function countsMachines(tokens: readonly Token[], first: number): boolean {
  return tokens
    .slice(0, first)
    .some(({ text }, i) => machines.test(text) && (!isNumber(tokens[i + 1]) || i + 1 === first));
}

/** "one's 14.1 two's 14.3 three's 14", "one fourteen, two fourteen three, three fourteen": where the three legs are named. */
function saidLegs(tokens: readonly Token[]): readonly number[] {
  const found: number[] = [];
  for (let i = 0; i < tokens.length && found.length < 3; i++) {
    const [before, token] = [tokens[i - 1], tokens[i]];
    if (token?.kind !== tokenKind.word || digitOf(token) !== found.length + 1) continue;
    if (!isNumber(tokens[i + 1])) continue;
    const first = found.length === 0;
    // what is no possessive needs its commas
    const parted = token.apostrophe || (first ? !isNumber(before) : before?.text === ",");
    if (parted && (first || token.apostrophe === tokens[found[0] ?? 0]?.apostrophe)) found.push(i);
  }
  return found.length === 3 ? found : [];
}

/** "#1 14.1 #2 14.3 #3 14", "1) 14.1 2) 14.3 3) 14": three legs with their numbers marked; the mark becomes the word. */
function markedLegs(tokens: readonly Token[]): readonly Token[] {
  const marks: { readonly from: number; readonly number: number }[] = [];
  for (let i = 0; i + 2 < tokens.length && marks.length < 3; i++) {
    const [one, two, three] = tokens.slice(i, i + 3);
    const want = marks.length + 1;
    const hash = one?.text === "#" && digitOf(two) === want && two?.glued === true;
    const paren = digitOf(one) === want && two?.text === ")" && one?.kind === tokenKind.number;
    if ((hash || paren) && isNumber(three) && three?.glued !== true)
      marks.push({ from: i, number: hash ? i + 1 : i });
  }
  const [first] = marks;
  if (first === undefined || marks.length < 3 || countsMachines(tokens, first.from)) return tokens;
  const head = tokens.slice(Math.max(0, first.from - 6), first.from);
  const row = head.some(({ text }) => tested.test(text) || rowHeads.test(text));
  if (!row) return tokens;
  const numbers = marks.map(({ number }) => number);
  const signs = new Set(marks.map(({ from, number }) => tokens[from === number ? from + 1 : from]));
  const noun = tokens.some(({ text }) => tested.test(text)) ? "lead" : "leg";
  return named(tokens, numbers, noun).filter((token) => !signs.has(token));
}

const singular = (noun: string): string => noun.replace(/s$/, "");

const rowHeads = /^(?:amps?|volts?|ohms?|current|windings?|running|legs?|leads?)$/;
const headed = /^(?:amps?|current|windings?|ohms?|legs|leads|running)$/;

const testers: readonly (readonly string[])[] = [
  ["five", "hundred"],
  ["two", "hundred", "fifty"],
  ["two", "fifty"],
  ["one", "thousand"],
  ["a", "thousand"],
  ["twenty", "five", "hundred"],
];

/** "megged at five hundred eighty five, ninety": the tester's volts end where the first figure begins. */
function afterTester(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex(
    ({ text }, i) =>
      text === "at" && tokens.slice(Math.max(0, i - 5), i).some((one) => tested.test(one.text)),
  );
  if (at < 0) return tokens;
  const volts = testers.find((words) =>
    words.every((word, step) => tokens[at + 1 + step]?.text === word),
  );
  const end = at + 1 + (volts?.length ?? 0);
  const [last, next] = [tokens[end - 1], tokens[end]];
  if (volts === undefined || last === undefined || next?.word?.number === undefined) return tokens;
  if (/^(?:hundred|thousand|point)$/.test(next.word.number.kind)) return tokens;
  // "at five hundred one minute ninety two"
  if (tokens[end + 1]?.word?.unit?.dimension === "time") return tokens;
  return [...tokens.slice(0, end), commaAt(last.to), ...tokens.slice(end)];
}

/** Puts the word before each number that counts, and a comma behind it where a figure follows a figure. */
export function named(
  tokens: readonly Token[],
  found: readonly number[],
  noun: string,
): readonly Token[] {
  return tokens.flatMap((token, i) => {
    if (!found.includes(i)) return [token];
    const name = wordAt(token.from, noun);
    const comma = commaAt(token.to);
    const behind = tokens[i - 1]?.text === "on" && isNumber(tokens[i + 1]);
    return behind ? [name, token, comma] : [name, token];
  });
}

/** "1 620 meg 2 615 meg 3 0.4": in a test to ground three figures, each behind the number of its lead. */
function leadsCounted(tokens: readonly Token[]): number[] {
  const found: number[] = [];
  for (let i = 0; i < tokens.length && found.length < 3; i++) {
    const [before, token, next] = [tokens[i - 1], tokens[i], tokens[i + 1]];
    if (token?.kind !== tokenKind.number || token.text !== String(found.length + 1)) continue;
    const over = /^[<>]$/.test(next?.text ?? "") || ((next?.word?.roles ?? 0) & role.over) !== 0;
    if (!over && (next?.kind !== tokenKind.number || next.glued)) continue;
    const first = found.length === 0;
    // "comp 1 18.2 comp 2 18.5 comp 3 22": each machine by its name
    if (!first && machines.test(before?.text ?? "")) return [];
    const named = before?.kind === tokenKind.word && !machines.test(before.text);
    // "on to comp 2 1 15 2 17.8 3 19": the machine's own number
    const ofMachine = isNumber(before) && machines.test(tokens[i - 2]?.text ?? "");
    // "heaters 1 14.2 amps 2 14.4 3 0"
    const ofThem = first && machines.test(before?.text ?? "") && /s$/.test(before?.text ?? "");
    const opens =
      ofThem ||
      before === undefined ||
      !named ||
      headed.test(before.text) ||
      tested.test(before.text);
    if (
      first
        ? opens && (ofMachine || before?.kind !== tokenKind.number)
        : i > (found.at(-1) ?? 0) + 1
    )
      found.push(i);
  }
  const close = found.every((i, order) => order === 0 || i - (found[order - 1] ?? 0) <= 5);
  return found.length === 3 && close ? found : [];
}

/** "megs 1 and 2 OL, 3 is 0.4": two leads beyond the meter by their numbers, and the third's own figure. */
function twoOver(tokens: readonly Token[]): number[] {
  const first = tokens.findIndex(({ kind }) => kind === tokenKind.number);
  const [one, and, two, over] = tokens.slice(first, first + 4);
  if (first < 0 || !/^(?:and|&|n|,)$/.test(and?.text ?? "")) return [];
  if (((over?.word?.roles ?? 0) & role.over) === 0) return [];
  const left = ["1", "2", "3"].filter((text) => text !== one?.text && text !== two?.text);
  if (left.length !== 1 || one?.text === two?.text) return [];
  const last = tokens.findIndex(({ text }, i) => i > first + 3 && text === left[0]);
  const joint = /^(?:is|=|:|at|reads|only)$/.test(tokens[last + 1]?.text ?? "");
  return last > 0 && (joint || isNumber(tokens[last + 1])) ? [first, first + 2, last] : [];
}

/** "megged 1 2 and 3, all over 500": in a test to ground all three leads by their numbers; where they begin, or -1. */
function listOfLeads(tokens: readonly Token[]): number {
  return tokens.findIndex((token, i) => {
    const before = tokens[i - 1];
    if (token.text !== "1" || before?.kind === tokenKind.number) return false;
    if (before?.kind === tokenKind.word && !tested.test(before.text)) return false;
    let at = i;
    for (const number of ["2", "3"]) {
      at++;
      while (/^(?:,|and|&|\/)$/.test(tokens[at]?.text ?? "")) at++;
      if (tokens[at]?.text !== number) return false;
    }
    return !/^(?:\/|:|-)$/.test(tokens[at + 1]?.text ?? "");
  });
}
