/** A cell that could be read, or a sentence that says why not and what to write instead. */
export type CellValue =
  | { readonly ok: true; readonly value: string | number | boolean | readonly string[] }
  | { readonly ok: false; readonly problem: string };

/** What a cell's reader may need beside the cell. */
export interface Around {
  /** the heading in plain small words: it may name the unit */
  readonly heading: string;
  /** the mark that this file puts before decimals, where its own numbers show it */
  readonly decimal: "." | "," | undefined;
}

export type CellReader = (cell: string, around: Around) => CellValue;

/** One column of an office file. */
export interface Column {
  /** the field of the facts that it fills */
  readonly field: string;
  /** headings that mean it, in plain small words, the usual one first */
  readonly names: readonly string[];
  readonly read: CellReader;
  readonly required?: true;
}

const good = (value: string | number | boolean | readonly string[]): CellValue => ({
  ok: true,
  value,
});
const no = (problem: string): CellValue => ({ ok: false, problem });

/** Letters that were lost when a file was saved in the wrong encoding, or saved so twice. */
const lost = /\ufffd|[\u00c2\u00c3][\u0080-\u00bf]|\u00e2\u20ac/;

export const text: CellReader = (cell) =>
  lost.test(cell)
    ? no(`"${cell}" lost letters when it was saved; save the file again as CSV UTF-8 or XLSX`)
    : good(
        cell
          .replace(/\p{Cc}+/gu, " ")
          .replace(/\s+/g, " ")
          .trim(),
      );

/** A number as offices write it: "7.3", "1,200", "7,3" where the file's own numbers show which is meant. */
export const number: CellReader = (cell, { decimal }) => {
  const said = cell.replaceAll(/[\s\u00a0\u202f']/g, "").replace(/^\u2212/, "-");
  const plain = plainNumber(said, decimal);
  if (plain === undefined) {
    return no(
      `"${cell}" could be two numbers; write it without a thousands mark, such as ${said.replace(/[.,]/, "")}`,
    );
  }
  const found = /^[-+]?\d*\.?\d+$/.test(plain) ? Number(plain) : Number.NaN;
  return Number.isFinite(found)
    ? good(found)
    : no(`"${cell}" is no number; write one number in digits, or leave the cell empty`);
};

/** With a point before decimals and nothing else; undefined where "1,234" could be either. */
function plainNumber(said: string, decimal: Around["decimal"]): string | undefined {
  if (/^[-+]?\d{1,3}(,\d{3})+\.\d+$|^[-+]?\d{1,3}(,\d{3}){2,}$/.test(said))
    return said.replaceAll(",", "");
  if (/^[-+]?\d{1,3}(\.\d{3})+,\d+$|^[-+]?\d{1,3}(\.\d{3}){2,}$/.test(said))
    return said.replaceAll(".", "").replace(",", ".");
  const both = /^([-+]?)([1-9]\d{0,2})([.,])(\d{3})$/.exec(said);
  if (both === null) return said.replace(/^([-+]?\d*),(\d+)$/, "$1.$2");
  if (decimal === undefined) return undefined;
  return both[3] === decimal ? said.replace(",", ".") : said.replace(/[.,]/, "");
}

/** The same where a unit may stand behind it: "460 V", "19.0 A". */
export const numberWith =
  (units: string): CellReader =>
  (cell, around) =>
    number(cell.replace(new RegExp(`(?<=\\d)\\s*(?:${units})\\.?$`, "i"), ""), around);

export type Factors = Readonly<Record<string, number>>;

/**
 * A number brought to the unit that is kept: by the unit behind it ("7 lb 6 oz"), else the heading's,
 * else the usual one.
 */
export function measured(factors: Factors, usual: string): CellReader {
  const names = Object.keys(factors)
    .sort((a, b) => b.length - a.length)
    .join("|");
  const term = new RegExp(`([-+\\d.,]+)\\s*(${names})\\b\\.?`, "gi");
  return (cell, around) => {
    const terms = [...cell.matchAll(term)];
    const rest = cell.replace(term, "").replace(/\band\b/gi, "");
    if (terms.length > 0 && rest.trim() === "") return summed(terms, factors, around);
    const unit = Object.keys(factors).find((name) =>
      new RegExp(`\\b${name}\\b`).test(around.heading),
    );
    const read = number(cell, around);
    if (!read.ok || typeof read.value !== "number") return read;
    return good(tidy(read.value * (factors[unit ?? usual] ?? 1)));
  };
}

function summed(terms: readonly RegExpExecArray[], factors: Factors, around: Around): CellValue {
  let sum = 0;
  for (const [, digits = "", unit = ""] of terms) {
    const read = number(digits, around);
    if (!read.ok || typeof read.value !== "number") return read;
    sum += read.value * (factors[unit.toLowerCase()] ?? 1);
  }
  return good(tidy(sum));
}

const tidy = (value: number): number => Number(value.toPrecision(12));

/** A number that cannot be negative or nothing. */
export const positive =
  (read: CellReader): CellReader =>
  (cell, around) => {
    const found = read(cell, around);
    return found.ok && typeof found.value === "number" && found.value <= 0
      ? no(`"${cell}" must be more than 0; write the value, or leave the cell empty`)
      : found;
  };

/** One of several words for a thing; what is none of them is told. */
export function oneOf(words: readonly (readonly [RegExp, string])[]): CellReader {
  return (cell) => {
    const found = words.find(([pattern]) => pattern.test(cell.toLowerCase()));
    const known = [...new Set(words.map(([, name]) => name.replaceAll("_", " ")))].join(" or ");
    return found === undefined ? no(`"${cell}" is not known; write ${known}`) : good(found[1]);
  };
}

export const yesOrNo: CellReader = (cell) => {
  if (/^(y|yes|true|1|x|\u2713|ja|si|oui)$/i.test(cell)) return good(true);
  if (/^(n|no|false|0|none|nein|non)$/i.test(cell)) return good(false);
  return no(`"${cell}" is neither yes nor no; write one of them`);
};

/** "Map Room; Stacks East" is two. */
export const list: CellReader = (cell) =>
  good(
    cell
      .split(/\s*[;|/\n]\s*|\s*,\s*/)
      .map((item) => item.trim())
      .filter((item) => item !== ""),
  );

/** A day: "2025-03-14", "14 Mar 2025", "3/14/2025" where only one of the two can be the month. */
export const date: CellReader = (cell) => {
  const iso = /^(\d{4})-(\d\d?)-(\d\d?)\b/.exec(cell);
  if (iso !== null) return dayOf(cell, iso[1], iso[2], iso[3]);
  const parts = /^(\d\d?)[/.-](\d\d?)[/.-](\d{4})$/.exec(cell);
  if (parts !== null) {
    const [, a = "", b = "", year] = parts;
    if (Number(a) > 12) return dayOf(cell, year, b, a);
    if (Number(b) > 12 || a === b) return dayOf(cell, year, a, b);
    return no(`"${cell}" could be two days; write it as ${year}-${two(a)}-${two(b)}, year first`);
  }
  const named = /^(\d\d?)\.? ([a-z]{3})[a-z]*\.?,? (\d{4})$/i.exec(cell);
  if (named === null) return no(`"${cell}" is no date; write it as 2025-03-14`);
  return dayOf(cell, named[3], String(monthOf(named[2] ?? "")), named[1]);
};

const monthOf = (name: string): number =>
  "jan feb mar apr may jun jul aug sep oct nov dec".split(" ").indexOf(name.toLowerCase()) + 1;

const two = (digits: string): string => digits.padStart(2, "0");

function dayOf(cell: string, year = "", month = "", day = ""): CellValue {
  const said = `${year}-${two(month)}-${two(day)}`;
  const moment = new Date(`${said}T00:00:00Z`);
  return Number.isNaN(moment.getTime()) || moment.toISOString().slice(0, 10) !== said
    ? no(`"${cell}" is no day of the calendar; write it as 2025-03-14`)
    : good(said);
}

/** "3/8", "1 1/8", "0.375": inches. */
export const inches: CellReader = (cell, around) => {
  const plain = cell.replace(/\s*(?:"|in\.?|inch(?:es)?)$/i, "").trim();
  const fraction = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(plain);
  if (fraction === null) return number(plain, around);
  const [, whole = "0", over = "0", under = "1"] = fraction;
  if (Number(under) === 0) return no(`"${cell}" is no size; write it as 3/8 or 0.375`);
  return good(Number(whole) + Number(over) / Number(under));
};

/** kg in a pound and in an ounce (NIST SP 811, 2008, app. B.8), m in a foot. */
export const massFactors = {
  pounds: 0.45359237,
  pound: 0.45359237,
  lbs: 0.45359237,
  lb: 0.45359237,
  ounces: 0.028349523125,
  oz: 0.028349523125,
  kg: 1,
  g: 0.001,
};
export const lengthFactors = { feet: 0.3048, ft: 0.3048, metres: 1, meters: 1, m: 1 };
export const volumeFactors = { ft3: 0.028316846592, "cu ft": 0.028316846592, m3: 1 };
