import type { EquipmentFacts } from "../model.ts";

/** What may be named in a message: the sites, units and rooms that are known. */
export interface World {
  readonly sites: readonly string[];
  readonly equipment: readonly Pick<EquipmentFacts, "tag" | "site" | "places" | "parent">[];
}

/** What a message names, each in the spelling of the record. */
export interface Named {
  readonly jobs: readonly number[];
  readonly sites: readonly string[];
  readonly tags: readonly string[];
  readonly places: readonly string[];
}

/** Words that name nothing by themselves, though they stand in names of sites. */
const commonWords: ReadonlySet<string> = new Set(
  (
    "the of and at in on for new old house home shop store market power cold water air service main line " +
    "head box unit room center centre building office street road lane hall east west north south upper " +
    "lower first second side saving savings company co inc practice square works point field light high " +
    "low gas oil heat fan ice hot open up down back front out job part parts co inc ltd llc sons bros st rd ave " +
    "suite ste bldg wing court drive avenue plaza park tower block level dock gate"
  ).split(" "),
);

export function namesIn(text: string, world: World): Named {
  const words = wordsOf(text);
  return {
    jobs: jobsIn(text),
    sites: sitesIn(words, world.sites),
    tags: tagsIn(text, world),
    places: placesIn(text, words, world),
  };
}

/** "job 14", "ticket no. 7"; "call 8 am" and "call 2 days ago" are times. */
const jobNumber =
  /\b(?:job|ticket|call)\s*(?:no\.?|number|#)?\s*(\d{1,6})\b(?!\s*(?:[ap]\.?m\b|o'?clock|days?|nights?|weeks?|months?|hours?|times?)|[:.]\d)/gi;
/** A number sign is a wire's, a compressor's or a gate's sooner than a job's, but in words that are of jobs. */
const jobSign =
  /(?:\b(?:status|summary|history|export|close|re|about)(?: of| for)?\s+|\b(?:move|put|file|belongs?)\b[^.;\n#]{0,30}\b(?:to|on|under|with)\s+|^\s*)#(\d{1,6})(?=\s*(?:$|[,:?!]|\.(?!\d)|(?:is )?(?:done|here|on site|finished|closed|leaving|left|waiting)\b))/gi;

function jobsIn(text: string): readonly number[] {
  const signs = text.match(/#\d/g)?.length === 1 ? [...text.matchAll(jobSign)] : [];
  return [...text.matchAll(jobNumber), ...signs].map((match) => Number(match[1]));
}

/** Lower-case words without possessives; "Hazelport's" names Hazelport. */
export function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(/['’]s\b/g, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
}

/** A tag as it is compared: "RTU-1", "rtu 1" and "rtu1" are one. */
export const plainTag = (tag: string): string => tag.toLowerCase().replace(/[^a-z0-9]/g, "");

/** How a tag is found in a text, however it is spaced; made once for the many texts that follow. */
const tagPatterns = new WeakMap<World["equipment"], ReadonlyMap<string, RegExp>>();

function patternsOf(equipment: World["equipment"]): ReadonlyMap<string, RegExp> {
  const made = tagPatterns.get(equipment);
  if (made !== undefined) return made;
  const fresh = new Map<string, RegExp>();
  for (const { tag } of equipment) {
    const parts = tag?.match(/[a-z]+|\d+/gi) ?? [];
    if (tag === undefined || parts.length === 0 || fresh.has(tag)) continue;
    const inner = parts.join("[\\s._#-]*");
    fresh.set(tag, new RegExp(`(?<![\\p{L}\\p{N}])${inner}(?![\\p{L}\\p{N}])`, "iu"));
  }
  tagPatterns.set(equipment, fresh);
  return fresh;
}

function tagsIn(text: string, { equipment }: World): readonly string[] {
  return [...patternsOf(equipment)].flatMap(([tag, pattern]) => (pattern.test(text) ? [tag] : []));
}

function placesIn(text: string, words: readonly string[], world: World): readonly string[] {
  const all = ` ${words.join(" ")} `;
  return placesOf(world.equipment).flatMap(({ place, wanted }) => {
    if (wanted === "" || !all.includes(` ${wanted} `)) return [];
    return !onlyNumber.test(wanted) || isRoomNumber(text.toLowerCase(), wanted) ? [place] : [];
  });
}

interface PlaceWords {
  readonly place: string;
  /** as it would stand among a text's words */
  readonly wanted: string;
}

/** Rooms and zones, each once; made once for the many texts that follow. */
const placeWords = new WeakMap<World["equipment"], readonly PlaceWords[]>();

function placesOf(equipment: World["equipment"]): readonly PlaceWords[] {
  const made = placeWords.get(equipment);
  if (made !== undefined) return made;
  const places = new Set(equipment.flatMap((unit) => unit.places ?? []));
  const fresh = [...places].map((place) => ({ place, wanted: wordsOf(place).join(" ") }));
  placeWords.set(equipment, fresh);
  return fresh;
}

/** "12" and "12a" are figures sooner than rooms. */
const onlyNumber = /^\d+[a-z]?$/;
const roomWords = "rooms?|rms?|zones?|suites?|apts?|apartments?|wards?|offices?|units?|in|for";
const symptoms =
  "warm|hot|cold|cool|freezing|stuffy|fine|ok|okay|out|down|dead|no (?:heat|cooling|air)|won'?t|too|not|still|is|are|reads?|has";
const row = "\\d+[a-z]?(?:\\s*(?:,|/|&|and|n|to|thru|-)\\s*|\\s+)";

/** "room 14", "in 3 and 5", "12, 14 and 15 warm": a number that the words make a room's, never "3 pole" or "3.4". */
function isRoomNumber(text: string, wanted: string): boolean {
  const own = `(?<![\\d.])${wanted}(?![\\d.]*\\d|\\s*(?:min|hours?|hrs?|days?|psi|amps?|volts?|[avfc]\\b|lbs?|oz|kg|bar|h\\b|m\\b))`;
  const behindWord = new RegExp(
    `(?<!\\b(?:there|back|here|away) )\\b(?:${roomWords})\\s+(?:${row}){0,12}${own}`,
  );
  const beforeSymptom = new RegExp(
    `(?:^|[,.;:]\\s*)(?:${row}){0,12}${own}\\s*(?:(?:,|/|&|and|n)?\\s*\\d+[a-z]?\\s*){0,12}(?:are |is )?(?:${symptoms})\\b`,
  );
  return behindWord.test(text) || beforeSymptom.test(text);
}

/** A word with its stem, made once for the many comparisons that follow. */
interface Word {
  readonly word: string;
  readonly stem: string;
}

interface SiteWords {
  readonly site: string;
  readonly name: readonly Word[];
  /** which words of the name tell it from all others */
  readonly telling: readonly boolean[];
}

/** All sites, and which of them have a word in their name. */
interface Sites {
  readonly all: readonly SiteWords[];
  readonly byWord: ReadonlyMap<string, readonly number[]>;
  readonly byStem: ReadonlyMap<string, readonly number[]>;
  /** words that may be said with a slip, each once */
  readonly long: readonly string[];
}

/** Lists of sites change seldom and are looked through at each message. */
const known = new WeakMap<readonly string[], Sites>();

function knownSites(sites: readonly string[]): Sites {
  const made = known.get(sites);
  if (made !== undefined) return made;
  const all = siteWords(sites);
  const byWord = indexOf(all, ({ word }) => word);
  const byStem = indexOf(all, ({ stem }) => stem);
  const fresh = { all, byWord, byStem, long: [...byWord.keys()].filter(isLong) };
  known.set(sites, fresh);
  return fresh;
}

function siteWords(sites: readonly string[]): readonly SiteWords[] {
  const names = sites.map((site) => ({ site, words: wordsOf(site) }));
  const count = new Map<string, number>();
  for (const { words } of names) {
    for (const word of new Set(words)) count.set(word, (count.get(word) ?? 0) + 1);
  }
  return names.map(({ site, words }) => ({
    site,
    name: words.map(toWord),
    // a number alone is a reading sooner than a house
    telling: words.map(
      (word) => !commonWords.has(word) && !/^\d+$/.test(word) && count.get(word) === 1,
    ),
  }));
}

/** Where among the sites each word of their names stands. */
function indexOf(
  all: readonly SiteWords[],
  key: (word: Word) => string,
): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (const [at, { name }] of all.entries()) {
    for (const word of name) {
      const places = found.get(key(word));
      if (places === undefined) found.set(key(word), [at]);
      else places.push(at);
    }
  }
  return found;
}

const toWord = (word: string): Word => ({ word, stem: stemOf(word) });

function sitesIn(words: readonly string[], sites: readonly string[]): readonly string[] {
  const said = words.map(toWord);
  const all = knownSites(sites);
  const scores = sitesSaid(said, all).map((one) => ({
    site: one.site,
    score: siteScore(said, one),
  }));
  const best = Math.max(0, ...scores.map(({ score }) => score));
  return best === 0 ? [] : scores.filter(({ score }) => score === best).map(({ site }) => site);
}

/** The sites that have a word which is said, as `isSame` compares them, in their order. */
function sitesSaid(said: readonly Word[], sites: Sites): readonly SiteWords[] {
  const found = new Set<number>();
  const add = (places: readonly number[] | undefined): void => {
    for (const at of places ?? []) found.add(at);
  };
  for (const { word, stem } of said) {
    add(sites.byWord.get(word));
    if (stem.length >= 4) add(sites.byStem.get(stem));
    for (const long of sites.long) if (slipped(word, long)) add(sites.byWord.get(long));
  }
  return [...found].sort((a, b) => a - b).flatMap((at) => sites.all[at] ?? []);
}

/** How much of a site's name is said; 0 where only words that other sites share, or that mean little. */
function siteScore(said: readonly Word[], site: SiteWords): number {
  const hits = site.name.map((part) => said.some((word) => isSame(word, part)));
  const heard = hits.filter((hit) => hit).length;
  if (heard === 0) return 0;
  const telling = hits.filter((hit, index) => hit && site.telling[index] === true).length;
  if (telling > 0) return heard + telling;
  // no single word tells, but two in a row do: "upper brook"
  const run = longestRun(said, site.name);
  return run >= 2 ? run : 0;
}

function longestRun(said: readonly Word[], name: readonly Word[]): number {
  let best = 0;
  for (let start = 0; start < said.length; start++) {
    for (let from = 0; from < name.length; from++) {
      let length = 0;
      for (; ; length++) {
        const word = said[start + length];
        const part = name[from + length];
        if (word === undefined || part === undefined || !isSame(word, part)) break;
      }
      best = Math.max(best, length);
    }
  }
  return best;
}

/** Whether a word is said for another, as `sameWord` compares them. */
function isSame(said: Word, meant: Word): boolean {
  if (said.word === meant.word) return true;
  if (meant.stem.length >= 4 && said.stem === meant.stem) return true;
  return slipped(said.word, meant.word);
}

/** The same word, one of its kin ("dentist" for "Dental"), or a slip of one letter in a long one. */
export function sameWord(said: string, meant: string): boolean {
  return isSame(toWord(said), toWord(meant));
}

/** So long that a slip of one letter makes no other word of it. */
const isLong = (word: string): boolean => word.length >= 7;

/** A slip of one letter in a long word. */
function slipped(said: string, meant: string): boolean {
  if (!isLong(meant) || Math.abs(said.length - meant.length) > 1) return false;
  let from = 0;
  while (from < said.length && said[from] === meant[from]) from++;
  let saidEnd = said.length;
  let meantEnd = meant.length;
  while (saidEnd > from && meantEnd > from && said[saidEnd - 1] === meant[meantEnd - 1]) {
    saidEnd--;
    meantEnd--;
  }
  return Math.max(saidEnd - from, meantEnd - from) <= 1;
}

const endings = /(?:ists|ist|als|al|ery|ers|er|ings|ing|ies|es|s|y)$/;

/** A word without its ending; short stems are left whole, for they are shared by too many words. */
function stemOf(word: string): string {
  const stem = word.replace(endings, "");
  return stem.length >= 4 ? stem : word;
}
