import type { Note } from "../note.ts";

interface Code {
  readonly from: number;
  readonly to: number;
  readonly value: string;
}

/** A part's number as it stands in a text: "44-1902", "60-12E4". */
const LOOSE = /(?:^|\s)(\d{2,3}-[0-9A-Z]{3,6})(?=$|[\s,.])/gi;

const SERIAL = /\b(?:serial|s\/n|sn)\b[\s.:#]*(?:(?:no|number)\b[\s.:#]*)?$/i;

/** All part numbers of the message, in its order. */
function codesOf(note: Note): Code[] {
  const found = new Map<number, Code>();
  for (const statement of note.statements) {
    if (statement.kind !== "note") continue;
    const [from, to] = statement.spans[0] ?? [0, 0];
    // "need contactor 12E4": letters and digits that nothing else was made of
    if (statement.about === "code" && /^(?=.*\d)[\w-]{4,}$/.test(statement.said))
      found.set(to, { from, to, value: statement.said });
    if (!statement.about.startsWith("part ")) continue;
    found.set(to, { from, to, value: statement.about.slice(5) });
  }
  const start = note.items[0]?.from ?? 0;
  const end = note.items[note.items.length - 1]?.to ?? 0;
  for (const match of note.text.slice(start, end).matchAll(LOOSE)) {
    const value = match[1] ?? "";
    const to = start + match.index + match[0].length;
    // a serial is no number to order by
    if (SERIAL.test(note.text.slice(0, to - value.length))) continue;
    if (!found.has(to)) found.set(to, { from: to - value.length, to, value });
  }
  return [...found.values()].sort((a, b) => a.from - b.from);
}

interface Run {
  readonly names: number[];
  readonly codes: Code[];
}

/** Names and the numbers behind them, in the order of the text, parted where a new name begins. */
function runsOf(codes: readonly Code[], names: readonly number[]): Run[] {
  const runs: Run[] = [];
  const marks = [
    ...codes.map((code) => ({ at: code.from, code })),
    ...names.map((at) => ({ at, code: undefined })),
  ];
  for (const { at, code } of marks.sort((a, b) => a.at - b.at)) {
    let run = runs[runs.length - 1];
    if (run === undefined || (code === undefined && run.codes.length > 0)) {
      run = { names: [], codes: [] };
      runs.push(run);
    }
    if (code === undefined) run.names.push(at);
    else run.codes.push(code);
  }
  return runs;
}

/** "a sealing ring, part 12E4, and a contactor": the number before "and" is of what stands before it. */
function isOthers(note: Note, code: Code | undefined, name: number): boolean {
  if (code === undefined || code.to > name) return false;
  const between = note.plain.slice(code.to, name);
  const ahead = note.plain.slice(0, code.to);
  return (
    /\b(?:and|plus|also)\b|&/.test(between) &&
    /\b(?:part|number|no|pn)\b[\s.:#]*[\w-]+$/.test(ahead)
  );
}

/** "need 44-1902 contactor": the numbers stand before their names. */
function ahead(codes: readonly Code[], name: number, names: readonly number[]): string | undefined {
  const before = codes.filter((code) => code.to <= name).pop();
  const between = names.some((at) => at < name && at > (before?.from ?? 0));
  return before !== undefined && !between && name - before.to <= 12 ? before.value : undefined;
}

/**
 * The number that goes with the part named at `name` beside `all` others: the one behind it, the one
 * before it where all stand so, as many in a row as names before them in their order. None where
 * it could be another's: a wrong number on a part is worse than none.
 */
export function numberOf(
  note: Note,
  name: number | undefined,
  all: readonly number[],
): string | undefined {
  const codes = codesOf(note);
  if (name === undefined) return codes[0]?.value;
  // "board won't boot, its fuse is good. need a board, 41-2207": a sentence before has no part in it
  const inIt = (other: number): boolean =>
    other > name ||
    codes.some(({ to }) => to <= name) ||
    !/[.;!?\n]\s/.test(note.plain.slice(other, name));
  const others = all.filter(inIt);
  if (others.length === 0 && codes.length === 1)
    return isOthers(note, codes[0], name) ? undefined : codes[0]?.value;
  const names = [name, ...others].sort((a, b) => a - b);
  const [first] = codes;
  if (first !== undefined && first.from < (names[0] ?? 0)) return ahead(codes, name, names);
  const run = runsOf(codes, names).find((one) => one.names.includes(name));
  if (run === undefined || run.codes.length === 0) return undefined;
  const at = run.names.indexOf(name);
  if (run.names.length === run.codes.length) return run.codes[at]?.value;
  const [code] = run.codes;
  if (run.codes.length > 1 || code === undefined || at < run.names.length - 1) return undefined;
  const apart = note.text.slice(name, code.from).includes(",");
  return apart ? undefined : code.value;
}
