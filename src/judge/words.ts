/** Numbers in plain letters that a phone can read aloud. */

/** Three significant figures without trailing zeros: 0.041, 84, 1.2, 1180. */
export function plain(value: number): string {
  if (value === 0) return "0";
  const digits = Math.abs(value) >= 1000 ? String(Math.round(value)) : value.toPrecision(3);
  return String(Number(digits));
}

export function ohmWords(ohm: number): string {
  if (ohm >= 1e9) return `${plain(ohm / 1e9)} gigohm`;
  if (ohm >= 1e5) return `${plain(ohm / 1e6)} megohm`;
  if (ohm >= 1e3) return `${plain(ohm / 1e3)} kilohm`;
  return `${plain(ohm)} ohm`;
}

export function microfaradWords(farad: number): string {
  return `${plain(farad * 1e6)} microfarad`;
}

export function fahrenheitWords(cel: number): string {
  return `${Math.round(cel * 1.8 + 32)} F`;
}

/** Percent with no more places than one last digit of the readings is worth: "1.1", "18". */
export function percentWords(percent: number, digitPercent: number): string {
  const places = Math.max(0, Math.ceil(-Math.log10(Math.max(digitPercent, leastDigitPercent))));
  return String(Number(percent.toFixed(places)));
}

/** Percent of a limit or of a figure beside one: "2", "2.3". */
export const percentPlain = (percent: number): string => String(Number(percent.toFixed(1)));

/** Finer than any field meter. */
const leastDigitPercent = 0.01;

/** "12.1, 12.4 and 12 A" */
export function listed(values: readonly number[], unit: string): string {
  const words = values.map(plain);
  const last = words.pop();
  if (last === undefined) return "";
  return words.length === 0 ? `${last} ${unit}` : `${words.join(", ")} and ${last} ${unit}`;
}

/** Words that a short reply has room for. */
const gistWords = 10;

/** The gist of a verdict for a short reply: up to the first colon, or comma where that is long. */
export function gist(says: string): string {
  const clause = says.split(":")[0]?.trim() ?? says;
  return clause.split(/\s+/).length <= gistWords
    ? clause
    : (clause.split(",")[0]?.trim() ?? clause);
}
