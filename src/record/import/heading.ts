import type { Column } from "./column.ts";

/** A heading in plain small words: "Serial_No. (plate)" is "serial no plate", "SerialNo" "serial no". */
export function plainHeading(cell: string): string {
  return cell
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/#/g, " no ")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** Words that say how a thing is written, not what it is. */
const filler =
  /\b(?:no|nr|num|number|nos|id|name|the|of|in|at|a|lb|lbs|pounds?|oz|ounces|kg|g|grams?|ft|feet|m|metres?|meters?|inch|inches|v|amps?|amperes?|ft3|m3|cu ft|optional|required)\b/g;

/** How offices shorten the words of a heading. */
const short: Readonly<Record<string, string>> = {
  addr: "address",
  alt: "altitude",
  bldg: "building",
  cap: "capacity",
  cert: "certificate",
  certification: "certificate",
  chg: "charge",
  comp: "compressor",
  cust: "customer",
  cyl: "cylinder",
  desc: "description",
  descr: "description",
  dev: "device",
  elev: "elevation",
  equip: "equipment",
  eqpt: "equipment",
  inst: "installed",
  lic: "license",
  licence: "license",
  loc: "location",
  mod: "model",
  qty: "quantity",
  ref: "refrigerant",
  refr: "refrigerant",
  refrig: "refrigerant",
  ser: "serial",
  tech: "technician",
  yr: "year",
};

const spelled = (plain: string): string =>
  plain
    .split(" ")
    .map((word) => short[word] ?? word)
    .join(" ");

const bare = (plain: string): string =>
  plain.replace(filler, " ").replace(/\s+/g, " ").trim() || plain;

export type Fit = 0 | 1 | 2 | 3 | 4;

/** How well a heading names a column: 4 its name, 3 but for units and filler, 2 misspelled, 1 begins with it. */
export function fitOf(plain: string, column: Pick<Column, "names">): Fit {
  let best: Fit = 0;
  for (const name of column.names) {
    const fit = fitOfName(plain, name);
    if (fit > best) best = fit;
  }
  return best;
}

function fitOfName(plain: string, name: string): Fit {
  if (plain === name) return 4;
  const [said, meant] = [formsOf(plain), formsOf(name)];
  const [heading, wanted] = [said.bare, meant.bare];
  if (heading === wanted || said.glued === meant.glued) return 3;
  if (nearly(heading, wanted)) return 2;
  return wanted.length >= 4 && heading.startsWith(`${wanted} `) ? 1 : 0;
}

interface Forms {
  readonly bare: string;
  /** "nick name" is "nickname" */
  readonly glued: string;
}

/** Each name is held against every heading: its forms are made once. */
const forms = new Map<string, Forms>();
const mostForms = 5000;

function formsOf(plain: string): Forms {
  const known = forms.get(plain);
  if (known !== undefined) return known;
  const words = spelled(plain);
  const made = { bare: bare(words), glued: words.replaceAll(" ", "") };
  if (forms.size >= mostForms) forms.clear();
  forms.set(plain, made);
  return made;
}

/** One slip of the finger from five letters on, two from ten on. */
function nearly(a: string, b: string): boolean {
  const shorter = Math.min(a.length, b.length);
  if (shorter < 5 || a.charAt(0) !== b.charAt(0)) return false;
  return distance(a, b) <= (shorter >= 10 ? 2 : 1);
}

/** Letters added, dropped, changed or swapped with their neighbor. */
function distance(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 2) return 3;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(
        (last[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (last[j - 1] ?? 0) + (same ? 0 : 1),
      );
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? least) + 1);
      }
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 3;
}
