import { plainTag } from "./names.ts";

const spoken: ReadonlyMap<string, string> = new Map(
  "one two three four five six seven eight nine ten eleven twelve"
    .split(" ")
    .map((word, i) => [word, String(i + 1)]),
);
/** Letters of tags that are a pressure's too: "hp 41" is none, "hp-4" is. */
const pressures = /^(?:hp|lp|sp|dp)$/;
const opens =
  /^\s*(?:(?:ok|okay|so|now|and|also|then|on|at|got|next|up|is|one|unit|moving|over|onto|to|doing|this|it's|its|heres|here's)[\s,]+)*([a-z]{2,5})([\s#._-]*)(\d{1,2}|[a-z]{3,6})(?![a-z0-9.])/iu;

/**
 * "rtu 5 comp 1 22 amps" of who works on RTU-4: a unit of the same kind that begins what he tells, and that
 * is not the one in hand. Whether it has a job of its own the caller knows.
 */
export function namesAnotherUnit(text: string, unit: string): boolean {
  return anotherUnit(text, unit) !== undefined;
}

/** That unit, as the office would write it: "RTU-5"; undefined where none is named. */
export function anotherUnit(text: string, unit: string): string | undefined {
  const own = /^([a-z]{2,5})(\d{1,2})$/.exec(plainTag(unit));
  const said = opens.exec(text);
  if (own === null || said === null) return undefined;
  const [letters, gap, number] = [said[1]?.toLowerCase() ?? "", said[2] ?? "", said[3] ?? ""];
  if (letters !== own[1] || (pressures.test(letters) && !/^-?$/.test(gap))) return undefined;
  const value = /^\d+$/.test(number) ? number : spoken.get(number.toLowerCase());
  if (value === undefined || Number(value) === Number(own[2])) return undefined;
  return `${letters.toUpperCase()}-${value}`;
}
