import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, textAt } from "./near.ts";

/** Machines of one kind on one unit; common practice, no source. */
const MACHINES = 16;

const draws = /^(?:pulling|pulls|draws|drawing|reads|reading|runs|running|has|got)$/;

/** A whole small number behind a value, a comma or "and": where a name may stand. */
function namedAt(items: readonly Item[], i: number): number | undefined {
  const item = items[i];
  const before = items[i - 1];
  const ended =
    before?.kind === itemKind.number || /^(?:,|;|and|but|while)$/.test(before?.text ?? "");
  // "heater one open. two reads 28"
  const told = before !== undefined && (isStrongBreak(before) || toldHow.test(before.text));
  if (!ended && !(told && draws.test(textAt(items, i + 1)))) return undefined;
  if (item?.kind === itemKind.word && item.text === "one" && item.apostrophe) return 1;
  if (!freeNumber(item) || item.unit !== undefined || item.fraction) return undefined;
  if (!Number.isInteger(item.value) || item.value < 1 || item.value > MACHINES) return undefined;
  return item.text.includes(".") ? undefined : item.value;
}

/** "two's at", "two is", "2 pulling": the value that is told of the machine, if one is. */
function toldOf(note: Note, i: number): Item | undefined {
  const { items } = note;
  const own = items[i];
  const typed = textAt(items, i + 1) === "'" && textAt(items, i + 2) === "s";
  const said = own !== undefined && /['’]s$/.test(note.plain.slice(own.from, own.to));
  let at = typed ? i + 3 : i + 1;
  const verb = items[at];
  const is = ((verb?.roles ?? 0) & role.is) !== 0 && verb?.kind === itemKind.word;
  if (!typed && !said && !is && !draws.test(verb?.text ?? "")) return undefined;
  while (
    draws.test(textAt(items, at)) ||
    textAt(items, at) === "at" ||
    ((items[at]?.roles ?? 0) & (role.is | role.about | role.only)) !== 0
  )
    at++;
  const value = items[at];
  return freeNumber(value) ? value : undefined;
}

/** "case 4 at -19, 5 at -18", "comp 1 14.2, 2 14.5": behind a comma or a unit the next number of the row, and its value. */
function nextInRow(items: readonly Item[], i: number): Item | undefined {
  const [before, next] = [items[i - 1], items[i + 1]];
  const parted = /^(?:,|;|and)$/.test(before?.text ?? "") || before?.unit !== undefined;
  if (!parted) return undefined;
  // "circuit 1 sh 9, 2 sh 14"
  const named = next?.kind === itemKind.label || next?.kind === itemKind.unit;
  const again = named && items.slice(0, i).some(({ text }) => text === next.text);
  const value = items[again || /^(?:at|@|:)$/.test(next?.text ?? "") ? i + 2 : i + 1];
  return freeNumber(value) && !value.fraction ? value : undefined;
}

/** "case 8 51, 7 46": a pair of bare numbers behind the comma, in whatever order the cases come. */
function pairBehindComma(items: readonly Item[], i: number): boolean {
  const [before, , value, end] = items.slice(Math.max(0, i - 1), i + 3);
  return before?.text === "," && freeNumber(value) && !freeNumber(end);
}

/** "product in 8 48": behind a case that was named before, the value in it. */
function valueIn(items: readonly Item[], i: number): Item | undefined {
  const [before, item] = [items[i - 1], items[i]];
  if (before?.text !== "in" || !freeNumber(item) || item?.unit !== undefined) return undefined;
  const value = items[(((items[i + 1]?.roles ?? 0) & role.is) !== 0 ? 2 : 1) + i];
  return freeNumber(value) ? value : undefined;
}

/** Numbers so many in a row, with nothing between them, are names and values in turn. */
const leastInRow = 5;

/** "case 7 38 8 40 9 37": bare numbers behind the first name, each second one its next number. */
function inTurn(items: readonly Item[], from: number): boolean {
  let end = from;
  while (freeNumber(items[end]) && items[end]?.unit === undefined) end++;
  const numbers = items.slice(from, end).map(({ value }) => value);
  if (numbers.length < leastInRow || numbers.length % 2 === 0) return false;
  const first = Number(/(\d+)$/.exec(items[from - 1]?.subject ?? "")?.[1]);
  return numbers.every((value, at) => at % 2 === 0 || value === first + (at + 1) / 2);
}

const states =
  /^(?:off|dead|down|out|fine|ok|okay|good|not|wont|isnt|tripped|locked|idle|running|runs|humming|hums|noisy|seized)$/;

const toldHow = /^(?:open|shorted|dead|off|ok|okay|good|fine|bad|tripped|infinite|infinity|ol)$/;

/** "fan 1 1.2 A, 2 off": how the next of the row is, no value of it. */
function saysHow(items: readonly Item[], i: number): boolean {
  const [before, next, after] = [items[i - 1], items[i + 1], items[i + 2]];
  // "fan 1 2,6 A 2 2,7 A 3 off": behind a value that has its unit
  const ended = before?.kind === itemKind.number && before.unit !== undefined;
  if (!ended && !/^(?:,|;|and|but|while)$/.test(before?.text ?? "")) return false;
  return states.test(next?.text ?? "") && after?.kind !== itemKind.number;
}

/** "fan 3 0 A. 1 and 2 each 2,6": two more by their numbers, and what each of them has. */
function eachOfTwo(items: readonly Item[], i: number): readonly [Item, Item] | undefined {
  const [first, joint, second, each, value] = items.slice(i, i + 5);
  const counts = (item: Item | undefined): item is Item =>
    freeNumber(item) &&
    item.unit === undefined &&
    Number.isInteger(item.value) &&
    !/[.,]/.test(item.text) &&
    item.value <= MACHINES;
  if (!counts(first) || !counts(second) || !/^(?:and|&|\+|n)$/.test(joint?.text ?? ""))
    return undefined;
  const told = ((each?.roles ?? 0) & (role.each | role.all)) !== 0;
  return told && freeNumber(value) ? [first, second] : undefined;
}

/** "chiller 3 off, 2 at 43": behind one that does not run another of the row. */
function behindIdle(items: readonly Item[], i: number): boolean {
  const [idle, comma, , at] = items.slice(i - 2, i + 2);
  return (
    comma?.text === "," && states.test(idle?.text ?? "") && /^(?:at|@|:)$/.test(at?.text ?? "")
  );
}

/** "compressor one's at eighteen amps, two's at nineteen": the noun said once for both. */
export const machineAgain: Rule = {
  name: "<machine> <number> <value>, <number> is <value>",
  needs: "number",
  apply: (note) => {
    let noun: string | undefined;
    let last = 0;
    let turns = false;
    const seen = new Set<string>();
    note.items.forEach((item, i) => {
      if (item.kind === itemKind.subject) {
        const [, said, digits] = /^(.*\D )(\d+)$/.exec(item.subject ?? "") ?? [];
        noun = said;
        last = Number(digits);
        turns = noun !== undefined && inTurn(note.items, i + 1);
        if (item.subject !== undefined) seen.add(item.subject);
        return;
      }
      const two = noun === undefined ? undefined : eachOfTwo(note.items, i);
      for (const one of two ?? []) {
        one.kind = itemKind.subject;
        one.subject = `${noun}${one.value}`;
      }
      if (two !== undefined) return;
      const inIt = noun === undefined ? undefined : valueIn(note.items, i);
      if (inIt !== undefined && seen.has(`${noun}${item.value}`)) {
        inIt.subject = `${noun}${item.value}`;
        state(note, machineAgain.name, [i, i + 1], { kind: "note", about: "place" });
        return;
      }
      const number = noun === undefined ? undefined : namedAt(note.items, i);
      if (number === undefined || seen.has(`${noun}${number}`)) return;
      const row =
        (turns && number === last + 1) || (noun === "case " && pairBehindComma(note.items, i))
          ? note.items[i + 1]
          : number === last + 1 || behindIdle(note.items, i)
            ? nextInRow(note.items, i)
            : undefined;
      const value = toldOf(note, i) ?? row;
      const how = number === last + 1 && saysHow(note.items, i);
      if (value === undefined && how) {
        item.kind = itemKind.subject;
        item.subject = `${noun}${number}`;
        last = number;
      }
      if (value === undefined) return;
      value.subject = `${noun}${number}`;
      seen.add(value.subject);
      last = number;
      state(note, machineAgain.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
