import { clauseAround } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { testerVolts } from "./tester-volts.ts";

/** "PI test lead 1 500v", "pi test on lead 1 at 500": the test and its voltage, before anything is read. */
export function testAnnounced(draft: Draft, items: readonly Item[]): boolean {
  const knob = !draft.ownUnit && items.some((_, at) => setTo(items, at, draft.index));
  const volts = draft.unit === undefined || draft.unit.figure === "V" || knob;
  if (!volts || !testerVolts.has(draft.value)) return false;
  const numbers = items.filter(
    (item) => item.kind === itemKind.number && item.unit?.dimension !== "time",
  );
  if (numbers.length !== 1) return false;
  // "megging lead 3 at 500", "doing a PI on phase A at 1000"
  const set = /^(?:at|@)$/.test(items[draft.index - 1]?.text ?? "");
  // "megged T1 T2 T3 at 500": several leads never read so alike, and what was read is still to come
  const several = set && (draft.points?.length ?? 0) > 1;
  return items.some(
    (item, at) =>
      (several && /^megg(?:ed|ered)$/.test(item.text)) ||
      /^(?:test|testing)$/.test(item.text) ||
      (set && /^(?:megging|meggering|meggin|pi|dar)$/.test(item.text)) ||
      setTo(items, at, draft.index) ||
      beginsNow(items.slice(at, at + 3)),
  );
}

/** Is the word the test's own: "megging", "meg test", "insulation test"? */
function namesTest({ text, label }: Item): boolean {
  return /^megg(?:er|ers|ed|ing)$/.test(text) || label?.quantity === "insulation_resistance";
}

/**
 * "meg test five hundred lead one forty meg", "megging the pump at five hundred one minute ninety meg": behind
 * the test's name, before the first lead or the first minute, stands what the tester was set to.
 */
export function testThen(draft: Draft, items: readonly Item[]): boolean {
  const [own, next] = [items[draft.index], items[draft.index + 1]];
  if (own?.unit !== undefined || !testerVolts.has(draft.value) || next === undefined) return false;
  const lead = next.kind === itemKind.points && (next.points?.length ?? 0) > 0;
  const minute = next.unit?.dimension === "time";
  if (!lead && !minute) return false;
  const at = /^(?:at|@)$/.test(items[draft.index - 1]?.text ?? "");
  // "oil 48 psi, meg test five hundred lead one …": what another clause measured is none of the test's
  const before = items.slice(clauseAround(items, draft.index)[0], draft.index);
  const told = before.some(namesTest);
  if (!told && !(at && minute)) return false;
  const first = before.every(({ kind, points }) => {
    return kind !== itemKind.number && ((at && minute) || (points?.length ?? 0) === 0);
  });
  const megohms = items.slice(draft.index + 2).some(({ unit }) => {
    return unit?.dimension === "resistance" && unit.factor >= 1e6;
  });
  return first && megohms;
}

/** "megger set to 1000 V on pump 2", "meter on 500": what the tester's knob stands at. */
function setTo(items: readonly Item[], at: number, value: number): boolean {
  if (!/^(?:megger|meggers|tester|meg)$/.test(items[at]?.text ?? "") || value - at > 4)
    return false;
  const words = items.slice(at + 1, value).map(({ text }) => text);
  return /\bset(?: (?:to|at|for|on|@))*$/.test(words.join(" "));
}

/** "megger going on comp 2", "meg on": the tester is put on, and shows nothing yet. */
function beginsNow([tester, ...behind]: readonly Item[]): boolean {
  if (!/^(?:meg|megs|megger|tester|megging)$/.test(tester?.text ?? "")) return false;
  return behind.some(({ text }) => /^(?:going|on|now|starting|started|hooked)$/.test(text));
}

const small = /^(?:,|:|all|its|is|are|was|reads|reading|got|they|and|still|both)$/;
const reads =
  /^(?:,|i|we|and|im|its|got|get|getting|read|reads|reading|shows|showed|showing|came|with)$/;

/** "megged comp 1 to ground at 500 got 42 meg": behind the test's name its first number, and then what was read, in megohms. */
export function setThenRead(draft: Draft, items: readonly Item[]): boolean {
  if (items[draft.index]?.unit !== undefined || !testerVolts.has(draft.value)) return false;
  if (!/^(?:at|@)$/.test(items[draft.index - 1]?.text ?? "")) return false;
  const before = items.slice(0, draft.index);
  const named = before.findLastIndex(namesTest);
  if (named < 0 || before.slice(named).some(({ kind }) => kind === itemKind.number)) return false;
  let at = draft.index + 1;
  while (reads.test(items[at]?.text ?? "")) at++;
  const joint = items[at - 1]?.text;
  const told = at > draft.index + 1 && joint !== "," && joint !== "and";
  const next = items[at];
  if (next?.kind === itemKind.over) return told;
  if (next?.kind !== itemKind.number || next.owner !== undefined) return false;
  const megohms = next.unit?.dimension === "resistance" && next.unit.factor >= 1e5;
  return megohms || (told && next.unit === undefined);
}

/** "megged leads 1 2 3 at 500 all OL", "lead 1 to ground at 1000 620 meg": set before the ohms that follow right behind. */
export function setBeforeOhms(draft: Draft, items: readonly Item[]): boolean {
  if (draft.unit !== undefined && draft.unit.figure !== "V") return false;
  if (!testerVolts.has(draft.value) || !/^(?:at|@)$/.test(items[draft.index - 1]?.text ?? ""))
    return false;
  const toGround = (pair: readonly string[]): boolean => pair.length === 1 || pair[1] === "ground";
  if (draft.points?.every(toGround) !== true) return false;
  let at = draft.index + 1;
  while (small.test(items[at]?.text ?? "")) at++;
  const next = items[at];
  if (next?.kind === itemKind.over) return true;
  return (
    next?.kind === itemKind.number &&
    next.owner === undefined &&
    (next.unit === undefined || next.unit.dimension === "resistance")
  );
}

/** "megs 370 378 at 500 discharge line 222": behind what was read, whatever is told next. */
export function behindRow(draft: Draft, items: readonly Item[]): boolean {
  const { index, value } = draft;
  if (items[index]?.unit !== undefined || !testerVolts.has(value)) return false;
  if (
    !/^(?:at|@)$/.test(items[index - 1]?.text ?? "") ||
    items[index - 2]?.kind !== itemKind.number
  )
    return false;
  const tested = items.slice(0, index).some(({ text }) => /^(?:megs?|megged|megohms?)$/.test(text));
  return tested && items[index + 1]?.kind === itemKind.label;
}

/** "meg good at 500": told without its ohms. */
export function behindTold(draft: Draft, items: readonly Item[]): boolean {
  const [test, at] = items.slice(Math.max(0, draft.index - 2), draft.index);
  return (
    test?.kind === itemKind.word &&
    /^meg/.test(test.text) &&
    /^(?:at|@)$/.test(at?.text ?? "") &&
    testerVolts.has(draft.value)
  );
}

/** "megged comp A to ground at 500: 620": set before the colon, read behind it. */
export function beforeColon(draft: Draft, items: readonly Item[]): boolean {
  const { index } = draft;
  if (items[index]?.unit !== undefined || !testerVolts.has(draft.value)) return false;
  if (!/^(?:at|@)$/.test(items[index - 1]?.text ?? "") || items[index + 1]?.text !== ":")
    return false;
  return items.some(
    (item, at) => at > index && (item.kind === itemKind.number || item.kind === itemKind.over),
  );
}
