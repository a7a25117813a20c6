/** A cell that could be read, or a sentence that says why not. */
export type CellValue =
  | { readonly ok: true; readonly value: string | number | boolean | readonly string[] }
  | { readonly ok: false; readonly problem: string };

/** One column of an office file. */
export interface Column {
  /** the field of the facts that it fills */
  readonly field: string;
  /** its heading, in lower case, without what stands in brackets */
  readonly heading: RegExp;
  readonly read: (cell: string, heading: string) => CellValue;
  readonly required?: true;
}

export const text = (cell: string): CellValue => ({ ok: true, value: cell });

/** A number above 0 ("7.3", "1,200", "7,3"). */
export function number(cell: string): CellValue {
  const plain = /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(cell)
    ? cell.replaceAll(",", "")
    : cell.replace(",", ".");
  const found = /^-?\d*\.?\d+$/.test(plain) ? Number(plain) : Number.NaN;
  return Number.isFinite(found)
    ? { ok: true, value: found }
    : { ok: false, problem: `"${cell}" is no number` };
}

/** A positive number, in the unit that the heading names, brought to the unit that is kept. */
export function measured(
  factors: Readonly<Record<string, number>>,
  usual: string,
): (cell: string, heading: string) => CellValue {
  return (cell, heading) => {
    const unit = Object.keys(factors).find((name) => new RegExp(`\\b${name}\\b`).test(heading));
    const read = number(cell);
    if (!read.ok || typeof read.value !== "number") return read;
    const value = read.value * (factors[unit ?? usual] ?? 1);
    return { ok: true, value: Number(value.toPrecision(12)) };
  };
}

/** A number that cannot be negative or nothing. */
export function positive(
  read: (cell: string, heading: string) => CellValue,
): (cell: string, heading: string) => CellValue {
  return (cell, heading) => {
    const found = read(cell, heading);
    return found.ok && typeof found.value === "number" && found.value <= 0
      ? { ok: false, problem: `"${cell}" must be more than 0` }
      : found;
  };
}

/** One of several words for a thing; what is none of them is told. */
export function oneOf(words: readonly (readonly [RegExp, string])[]): (cell: string) => CellValue {
  return (cell) => {
    const found = words.find(([pattern]) => pattern.test(cell.toLowerCase()));
    return found === undefined
      ? { ok: false, problem: `"${cell}" is not known` }
      : { ok: true, value: found[1] };
  };
}

/** "Map Room; Stacks East" is two. */
export const list = (cell: string): CellValue => ({
  ok: true,
  value: cell.split(/\s*[;|/]\s*|\s*,\s*/).filter((item) => item !== ""),
});

/** kg in a pound and in an ounce (NIST SP 811, 2008, app. B.8), m in a foot. */
export const massFactors = { lbs: 0.45359237, lb: 0.45359237, oz: 0.028349523125, kg: 1, g: 0.001 };
export const lengthFactors = { feet: 0.3048, ft: 0.3048, metres: 1, meters: 1, m: 1 };
export const volumeFactors = { ft3: 0.028316846592, "cu ft": 0.028316846592, m3: 1 };
