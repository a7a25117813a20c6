import { quantities } from "../quantities/list.ts";
import type { Unit } from "../quantities/quantity.ts";
import type { Label } from "./label.ts";
import { type Noun, type NumberWord, opens, role, type Word } from "./word.ts";
import { labelWords } from "./words/labels.ts";
import { lookedFor } from "./words/looked-for.ts";
import { nounWords, pointWords } from "./words/nouns.ts";
import { numberWords } from "./words/numbers.ts";
import { roleWords } from "./words/roles.ts";
import { signWords } from "./words/signs.ts";

const first = new Map<string, Word>();

function fresh(text: string): Word {
  return {
    text,
    roles: 0,
    number: undefined,
    unit: undefined,
    beside: false,
    heard: false,
    label: undefined,
    point: undefined,
    noun: undefined,
    signs: undefined,
    opens: 0,
    signed: false,
    next: undefined,
  };
}

const letters = /[a-zµωδ'.]/;

/** A phrase as the scanner cuts it: words, numbers and signs apart. */
export function pieces(phrase: string): string[] {
  const out: string[] = [];
  let piece = "";
  let wordy = false;
  const flush = (): void => {
    if (piece !== "") out.push(piece);
    piece = "";
  };
  for (const char of phrase) {
    if (char === " " || char === "'" || char === "." || char === "/" || char === "-") {
      flush();
      if (char === "-" && phrase.endsWith("-")) out.push("-");
      if (char === "'" && phrase.length === 1) out.push("'");
      continue;
    }
    const isWordy = letters.test(char) || (char >= "0" && char <= "9");
    if (isWordy !== wordy) flush();
    wordy = isWordy;
    if (!isWordy) flush();
    piece += char;
    if (!isWordy) flush();
  }
  flush();
  return out;
}

function entry(phrase: string): Word {
  let map = first;
  let word: Word | undefined;
  for (const piece of pieces(phrase)) {
    let found = map.get(piece);
    if (found === undefined) {
      found = fresh(piece);
      map.set(piece, found);
    }
    word = found;
    found.next ??= new Map();
    map = found.next;
  }
  return word ?? fresh("");
}

function each(phrases: string, set: (word: Word) => void): void {
  for (const phrase of phrases.split("|")) if (phrase !== "") set(entry(phrase));
}

function addUnit(unit: Unit): void {
  each(unit.words, (word) => {
    word.unit = unit;
    word.beside = false;
    word.heard = false;
  });
  each(unit.beside ?? "", (word) => {
    if (word.unit !== undefined) return;
    word.unit = unit;
    word.beside = true;
  });
  each(unit.heard ?? "", (word) => {
    if (word.unit !== undefined) return;
    word.unit = unit;
    word.heard = true;
    word.beside = true;
  });
}

function setLabel(label: Label): (word: Word) => void {
  return (word) => {
    const named =
      label.thing !== undefined && label.quantity === undefined ? word.label : undefined;
    // "room temp": a temperature, whatever unit stands beside it
    const warm = label.hint === "temperature" && /^temp(?:s|erature)?$/.test(word.text);
    const own: Label = warm ? { quantity: "temperature", ...label } : label;
    word.label = named === undefined ? own : { ...own, ...named };
  };
}

function setNoun(noun: Noun): (word: Word) => void {
  return (word) => {
    word.noun = noun;
  };
}

function setNumber(number: NumberWord): (word: Word) => void {
  return (word) => {
    word.number = number;
  };
}

function addRoles(): void {
  for (const [words, roles] of roleWords)
    each(words, (word) => {
      word.roles |= roles;
    });
}

function addSigns(): void {
  signWords.forEach(([words], index) => {
    each(words, (word) => {
      word.signs ??= [];
      word.signs.push(index);
    });
  });
}

function addPoints(): void {
  for (const [words, point] of pointWords)
    each(words, (word) => {
      word.point = point;
    });
}

/** Does the word or a phrase that begins with it have the property? */
function anywhere(word: Word, has: (word: Word) => boolean): boolean {
  if (has(word)) return true;
  for (const longer of word.next?.values() ?? []) if (anywhere(longer, has)) return true;
  return false;
}

const pointers =
  /^(?:[abcuvwsrtnpygo]|ab|bc|ca|ac|ba|cb|uv|vw|wu|uw|vu|wv|you|yew|double|see|sea|are|our|ess|vee|be|bee|to|2|against|from|the|positive|negative|plus|minus)$/;

function open(word: Word): void {
  const points = (one: Word): boolean =>
    one.noun?.kind === "point" || one.point !== undefined || (one.roles & role.ground) !== 0;
  if (pointers.test(word.text) || anywhere(word, points)) word.opens |= opens.points;
  if (anywhere(word, (one) => one.noun !== undefined && one.noun.kind !== "point"))
    word.opens |= opens.noun;
  if (word.number !== undefined || /^(?:an?|per|another)$/.test(word.text))
    word.opens |= opens.number;
  word.signed = anywhere(word, (one) => one.signs !== undefined);
}

/** Rules look for these words: one that nothing else knows gets a record too, so that it is not respelled. */
export function know(words: string): void {
  for (const text of words.split("|")) if (!first.has(text)) first.set(text, fresh(text));
}

/** Fills the dictionary from its tables; later rows win where two name the same word. */
function build(): void {
  know(lookedFor);
  for (const quantity of quantities) {
    each(quantity.words, setLabel({ quantity: quantity.name }));
    for (const unit of quantity.units) addUnit(unit);
  }
  for (const [words, label] of labelWords) each(words, setLabel(label));
  for (const [words, noun] of nounWords) each(words, setNoun(noun));
  for (const [words, kind, value] of numberWords) each(words, setNumber({ kind, value }));
  addPoints();
  addRoles();
  addSigns();
  for (const letter of "abcdefghijklmnopqrstuvwxyz") entry(letter);
  for (const word of [
    "you",
    "yew",
    "double",
    "see",
    "sea",
    "are",
    "our",
    "ess",
    "vee",
    "be",
    "bee",
    "ab",
    "bc",
    "ca",
    "ac",
    "ba",
    "cb",
    "uv",
    "vw",
    "wu",
    "uw",
    "vu",
    "wv",
    "another",
  ])
    entry(word);
  for (const word of first.values()) open(word);
  for (const word of first.values()) if (word.next?.size === 0) word.next = undefined;
}

build();

/** Every word that the dictionary knows, alone or within a phrase. */
export function knownWords(): Set<string> {
  const out = new Set<string>();
  const walk = (words: ReadonlyMap<string, Word>): void => {
    for (const [text, { next }] of words) {
      out.add(text);
      if (next !== undefined) walk(next);
    }
  };
  walk(first);
  return out;
}

/** The record of a word in plain lower case; phrases hang from its `next`. */
export function lookUp(text: string): Word | undefined {
  return first.get(text);
}
