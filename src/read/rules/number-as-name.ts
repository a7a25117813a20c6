import { endsClause, isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, textAt } from "./near.ts";

/** Machines of one kind that are told apart by a bare number; common practice, no source. */
const MACHINES = 12;

function small(item: Item): boolean {
  return (
    item.unit === undefined &&
    !item.fraction &&
    Number.isInteger(item.value) &&
    item.value >= 1 &&
    item.value <= MACHINES &&
    !item.text.includes(".")
  );
}

/** Numbers that doors have; common practice, no source. */
const leastDoor = 100;
const mostDoor = 9999;

/** "308 next. fan cap 3.1 on a 5", "on to 412 now": the door that is worked at. */
function doorNext(items: readonly Item[], i: number): boolean {
  const item = items[i];
  const whole = item?.unit === undefined && Number.isInteger(item?.value) && item?.spoken !== true;
  const value = item?.value ?? 0;
  if (!whole || value < leastDoor || value > mostDoor) return false;
  const end = items[i + 2];
  const ends = end === undefined || isStrongBreak(end) || end.text === ",";
  if (!begins(items, i) || !ends) return false;
  return textAt(items, i + 1) === "next";
}

const starters = /^(?:,|so|and|but|think|because|cause|since|guess|bet|says|sure|reckon|id|say)$/;

/** Does a thought begin here? */
function begins(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  return before === undefined || isStrongBreak(before) || starters.test(before.text);
}

const states = /^(?:off|down|dead|out|idle|fine|ok|okay|good|locked|burnt|gone|not)$/;

/** "and four is off suction is eight": how it is, whatever is told behind it. */
function isState(items: readonly Item[], i: number): boolean {
  const verb = items[i + 1];
  if (verb === undefined || (verb.roles & role.is) === 0 || !states.test(textAt(items, i + 2)))
    return false;
  // "three is not 14"
  return items[i + 3]?.kind !== itemKind.number;
}

/** A clause that tells how something is: a verb, words, and nothing that was measured. */
function tells(items: readonly Item[], i: number, plain: string): boolean {
  const typed = textAt(items, i + 1) === "'" && textAt(items, i + 2) === "s";
  const own = items[i];
  const said = own !== undefined && /['’]s$/.test(plain.slice(own.from, own.to));
  const owned = said || typed;
  const verb = items[i + 1];
  const is = verb !== undefined && (verb.roles & role.is) !== 0 && verb.kind === itemKind.word;
  if (!owned && !is) return false;
  let words = 0;
  for (let at = typed ? i + 3 : owned ? i + 1 : i + 2; at < items.length; at++) {
    const item = items[at];
    if (item === undefined || endsClause(item)) break;
    if (item.kind === itemKind.number || item.kind === itemKind.over) return false;
    if ((item.roles & (role.same | role.zero)) !== 0 || item.unit !== undefined) return false;
    if (item.kind !== itemKind.sign) words++;
  }
  return words > 0;
}

/** "amps 15.2 15.3 15.1 on 2" where compressors are being read: the machine's name behind its row. */
function behindRow({ items, context }: Note, i: number): string | undefined {
  // "2.1 on three now"
  const next = items[/^(?:now|too|also|again)$/.test(textAt(items, i + 1)) ? i + 2 : i + 1];
  const ends = next === undefined || isStrongBreak(next) || next.text === ",";
  if (!ends || textAt(items, i - 1) !== "on" || items[i - 2]?.kind !== itemKind.number)
    return undefined;
  if (items.some(({ subject }) => subject !== undefined)) return undefined;
  const last = context.readings.findLast(({ subject }) => subject !== undefined)?.subject ?? "";
  const family = /^(compressor|circuit|fan|pump|stage) \d$/.exec(last)?.[1];
  return family === undefined ? undefined : `${family} ${items[i]?.value}`;
}

const troubles =
  /^(?:fault|faults|short|leak|ground|problem|issue|trouble|open|opened|blown|blew|stuck|dead|tripped|trips|failed|seized|burnt|burned|power|loose|welded|bad|low|gone)$/;

/** "ground fault on 2?", "the fans on two aren't turning": the machine that is spoken of. */
function placed(items: readonly Item[], i: number): boolean {
  if (textAt(items, i - 1) !== "on") return false;
  const next = items[i + 1];
  const ends = next === undefined || isStrongBreak(next) || next.text === ",";
  if (ends && troubles.test(textAt(items, i - 2))) return true;
  return /^(?:arent|isnt|wont|dont|doesnt|didnt|cant|never|quit|seized|stopped)$/.test(
    textAt(items, i + 1),
  );
}

/** "Two is the hungry one", "think 2's got a turn short": a small number of which something is told. */
export const numberAsName: Rule = {
  name: "<number> is <how>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      if (doorNext(items, i))
        state(note, numberAsName.name, [i, i + 2], { kind: "note", about: "place" });
      if (!small(item)) return;
      const machine = behindRow(note, i);
      if (machine !== undefined) {
        item.kind = itemKind.subject;
        item.subject = machine;
        return;
      }
      if (
        (begins(items, i) && (isState(items, i) || tells(items, i, note.plain))) ||
        placed(items, i)
      )
        state(note, numberAsName.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
