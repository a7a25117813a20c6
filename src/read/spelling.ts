import { knownWords, lookUp } from "./dictionary.ts";
import { alike } from "./words/alike.ts";

/** Misspelled words: one slip of the thumb away from a word that the reader knows. */

const LEAST = 5;
const MOST = 14;
const OFTEN = 3;
/** Letters from which on a word that is said often is known by two slips. */
const LONG = 8;

/** English words that lie one slip from a known word and are none. */
const others: ReadonlySet<string> = new Set(alike.trim().split(/\s/));

/** Words that are said so often that a slip means them, where it may mean another as well. */
const often: ReadonlySet<string> = new Set(
  "suction discharge discharging liquid superheat subcooling pressure pressures temperature return supply outdoor outside ambient indoor compressor circuit winding windings vacuum microns micron static voltage volts current amps resistance insulation megohm megohms ground neutral recovered charged humidity nitrogen thermistor sensor heater capacitor contactor condenser evaporator blower degrees running starting saturation saturated nameplate setpoint reading percent pounds ounces frequency airflow control transformer inverter crankcase superheated entering chilled freezer cooler product breaker filter waiting pulled started peaked settled dropped another minutes charge common through".split(
    " ",
  ),
);

/** One letter more, less, other, or two neighbours swapped. */
function oneSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  let endA = a.length;
  let endB = b.length;
  while (endA > from && endB > from && a[endA - 1] === b[endB - 1]) {
    endA--;
    endB--;
  }
  const left = endA - from;
  const right = endB - from;
  if (left <= 1 && right <= 1) return true;
  return left === 2 && right === 2 && a[from] === b[from + 1] && a[from + 1] === b[from];
}

/** "tempature": two slips, in a word so long that they leave it plain. */
function twoSlips(a: string, b: string): boolean {
  for (let i = 1; i < a.length; i++) if (oneSlip(a.slice(0, i) + a.slice(i + 1), b)) return true;
  for (let i = 1; i < b.length; i++) if (oneSlip(a, b.slice(0, i) + b.slice(i + 1))) return true;
  return false;
}

/** The known words by their first letter and length. */
function shelve(): Map<string, string[]> {
  const shelves = new Map<string, string[]>();
  for (const word of knownWords()) {
    const short = word.length < LEAST && !often.has(word);
    if (short || word.length > MOST || !/^[a-z]+$/.test(word)) continue;
    const shelf = `${word[0]}${word.length}`;
    const found = shelves.get(shelf);
    if (found === undefined) shelves.set(shelf, [word]);
    else found.push(word);
  }
  return shelves;
}

/** Filled when the first unknown word comes: by then all rules have told their words. */
let shelves: Map<string, string[]> | undefined;

/** The known words that are one slip from it: its first letter stands, or is swapped with the second. */
function near(word: string): string[] {
  shelves ??= shelve();
  const out: string[] = [];
  for (const letter of new Set(word.slice(0, 2)))
    for (let length = word.length - 1; length <= word.length + 1; length++)
      for (const one of shelves.get(`${letter}${length}`) ?? [])
        if (oneSlip(word, one) && (letter === word[0] || one[1] === word[0])) out.push(one);
  return out;
}

/** A word is a number, or said often: what lies beside it is more likely a slip. */
export function weighty(word: string): boolean {
  return weight(word) >= OFTEN;
}

/** A number counts most: a slip there would change a value. */
function weight(word: string): number {
  const known = lookUp(word);
  if (known?.number !== undefined) return 4;
  if (often.has(word)) return OFTEN;
  if (known === undefined) return 0;
  return known.label !== undefined || known.unit !== undefined || known.noun !== undefined ? 2 : 1;
}

/** "suctoin", "suction": spellings of one word. */
function same(a: string, b: string): boolean {
  const one = lookUp(a);
  const other = lookUp(b);
  if (one === undefined || other === undefined) return false;
  return (
    one.number === other.number &&
    one.label === other.label &&
    one.unit === other.unit &&
    one.noun === other.noun &&
    one.point === other.point &&
    one.roles === other.roles &&
    one.signs?.join() === other.signs?.join()
  );
}

function letters(word: string): string {
  return [...word].sort().join("");
}

/** Of words one slip away the likeliest: letters swapped are a sure sign, and slips are rarer at a word's end. */
function likeliest(word: string, all: readonly string[]): string | undefined {
  const swapped = all.filter((one) => letters(one) === letters(word));
  const ending = all.filter((one) => one.at(-1) === word.at(-1));
  const likely = [swapped, ending].find((some) => some.length > 0) ?? all;
  const most = Math.max(...likely.map(weight));
  const [first, ...rest] = likely
    .filter((one) => weight(one) === most)
    .sort((a, b) => b.length - a.length);
  return first !== undefined && rest.every((one) => same(first, one)) ? first : undefined;
}

/** The known word that these letters are a slip from, were they no word themselves. */
export function guess(word: string): string | undefined {
  const all = near(word);
  // a word that is known within a phrase only
  if (all.includes(word)) return undefined;
  if (all.length === 0) {
    if (word.length < LONG) return undefined;
    const long = [...often].filter((one) => one.length >= LONG && one[0] === word[0]);
    return long.find((one) => twoSlips(word, one));
  }
  const meant = likeliest(word, all);
  // a plural that only its singular is known of
  const plural = `${meant}s` === word && meant?.at(-1) !== "s";
  return plural ? undefined : meant;
}

const found = new Map<string, string | undefined>();
const KEPT = 4096;

/** The known word that an unknown word is one slip from; undefined where it is none or may be several. */
export function respelled(word: string): string | undefined {
  if (word.length < LEAST || word.length > MOST || !/^[a-z]+$/.test(word)) return undefined;
  if (found.has(word)) return found.get(word);
  const meant = others.has(word) ? undefined : guess(word);
  if (found.size < KEPT) found.set(word, meant);
  return meant;
}

/** "runnin", "holdin": the g that a thumb leaves out, where the word is none of its own ("walkin", "cutin"). */
export function withG(piece: string): string {
  if (piece.length < 5 || !piece.endsWith("in")) return piece;
  const own = lookUp(piece);
  if (own !== undefined && (own.roles !== 0 || own.opens !== 0 || own.next !== undefined))
    return piece;
  const told = own?.label ?? own?.unit ?? own?.number ?? own?.noun ?? own?.signs;
  return told === undefined && lookUp(`${piece}g`) !== undefined ? `${piece}g` : piece;
}
