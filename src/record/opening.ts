import type { Message, Statement } from "../model.ts";
import { greetingAhead, whoseJob } from "../vocabulary.ts";
import type { Opening } from "./entry.ts";
import { namesIn, plainTag, sameWord, type World, wordsOf } from "./names.ts";
import { opensLater } from "./opens-later.ts";
import { isTrouble, splitOpening } from "./split-opening.ts";

const opener = new RegExp(
  String.raw`^\s*${greetingAhead}(?:(?:new|open(?:ing)?(?: a)?(?: new)?|add(?: a)?(?: new)?)\s+(?:job|call|ticket|service call)\b|job(?=\s+for\b))\s*(?:at|for|:|,|-|–|—)?\s*`,
  "i",
);
/** "site: Smith & Sons": the field's name is no part of it. */
const label = /^(?:site|place|location|address|customer|account)\s*[:=-]\s*/i;
const tagPattern = /\b[A-Z]{1,5}[- ]?\d{1,3}[A-Z]?\b/g;

/** Whether a message opens a job by its first words. */
export function opensJob(text: string): boolean {
  return opener.test(text);
}

/**
 * What "New job: <site> <tag>, <complaint>. <person …>" says. Names of the office's files are
 * found wherever they stand; unknown ones by their place in the sentence.
 */
export function openingFrom(
  message: Message,
  statement: Extract<Statement, { kind: "open_job" }> | undefined,
  world: World & { readonly people: readonly string[] },
): Opening {
  const body = message.text.replace(opener, "").replace(label, "").replace(whoseJob, "");
  const { head, rest } = splitOpening(body);
  // the place stands in front; "Sorrel after Hazelport" names another job's
  const named = namesIn(head, world);
  const anywhere = namesIn(body, world);
  const written = tagWritten(body);
  const tags = named.tags.length > 0 ? named.tags : anywhere.tags;
  const equipment = tagOf(tags, written, statement?.equipment);
  const site =
    siteOf({ named: named.sites, head, equipment, said: statement?.site }) ??
    anywhere.sites.find((known) => !namesAnother(head, known)) ??
    null;
  const { complaint, assigned, second } = assignee(rest, world.people);
  // who opens a job himself for now, and sends nobody, is on it
  const self =
    message.role === "tech" && !opensLater.test(message.text) ? message.person : undefined;
  const said = statement?.assigned;
  const who = assigned ?? (said === undefined ? self : personCalled(said, world.people));
  // "AHU-3 no cooling, tenant called twice": what stands right behind the unit belongs to it
  const behind = trimEnd(
    equipment === null && named.sites.length === 0
      ? head.slice(placeAlone(head).length)
      : behindTag(head, equipment),
  ).trim();
  const told = [behind, complaint].filter((part) => part !== "").join(", ");
  const what = told === "" ? statement?.complaint : told;
  return {
    site,
    equipment,
    ...(what === undefined || what === "" ? {} : { complaint: what }),
    ...(who === undefined ? {} : { assigned: who }),
    ...(second === undefined ? {} : { second }),
    channel: message.channel,
    ...(message.thread === undefined ? {} : { thread: message.thread }),
  };
}

/** "code U4": what a display shows is no machine. */
const shown = /\b(?:codes?|error|err|fault|alarm|shows|showing|display(?:s|ing)?)\s*$/i;

/** A tag as tags are written: "RTU-4". */
function tagWritten(body: string): string | undefined {
  return [...body.matchAll(tagPattern)].find(
    ([tag], at, all) =>
      !/^(?:R|AND|OF|AT|TO)[- ]?\d/i.test(tag) && !shown.test(body.slice(0, all[at]?.index)),
  )?.[0];
}

function tagOf(
  known: readonly string[],
  written: string | undefined,
  said: string | undefined,
): string | null {
  const [first] = known;
  if (first !== undefined && (written === undefined || plainTag(first) === plainTag(written))) {
    return first;
  }
  return written ?? said ?? first ?? null;
}

/** A unit's tag however it is written. */
function tagPatternOf(equipment: string | null): RegExp | undefined {
  const parts = equipment?.match(/[a-z]+|\d+/gi) ?? [];
  return parts.length === 0
    ? undefined
    : new RegExp(`[\\s(]*${parts.join("[\\s._#-]*")}[\\s)]*`, "i");
}

/** The words of a new job's place that stand behind the unit's tag. */
function behindTag(head: string, equipment: string | null): string {
  const found = tagPatternOf(equipment)?.exec(head);
  const said = found == null ? "" : head.slice(found.index + found[0].length);
  return isTrouble(said) ? said.trim() : "";
}

/** Kinds of machine that a place has one of, as a call names them. */
const machine =
  /\s+(?:the )?(?:walk[- ]?ins?|reach[- ]?ins?|ice (?:machine|maker)|roof ?tops?|heat pumps?|mini ?splits?|boilers?|furnaces?|chillers?|freezers?|coolers?|condens(?:er|ing unit)|air handlers?|water heaters?|a\/?c|exhaust fans?|make ?up air|case line ?ups?|cases?|racks?|pumps?)\b/i;

/** "Harbor Cold walk-in not holding": of an unknown place, what stands before the machine and its trouble. */
function placeAlone(head: string): string {
  const at = machine.exec(head)?.index ?? head.length;
  const rest = head.slice(at);
  // a machine's kind may be of the name itself: "Quay Freezers"
  return at > 0 && isTrouble(head) && rest.trim() !== "" ? head.slice(0, at) : head;
}

function siteOf(found: {
  readonly named: readonly string[];
  readonly head: string;
  readonly equipment: string | null;
  readonly said: string | undefined;
}): string | null {
  const [only] = found.named;
  if (only !== undefined && found.named.length === 1 && !namesAnother(found.head, only))
    return only;
  const tag = tagPatternOf(found.equipment);
  // "Cinder School rooftop three": the machine's number was said in words, which the reader knows
  const inWords = tag !== undefined && !tag.test(found.head);
  if (inWords && found.said !== undefined && found.head.startsWith(found.said)) return found.said;
  const before = tag === undefined ? placeAlone(found.head) : (found.head.split(tag)[0] ?? "");
  const site = before
    .replace(/^(?:at|for|the)\s+/i, "")
    .replace(/[\s,;:.-]+$/, "")
    .trim();
  // a whole sentence is no name; an address in several parts is longer
  const most = /,/.test(site) ? 14 : 6;
  if (site !== "" && wordsOf(site).length <= most) return site;
  return found.said ?? null;
}

/** What places are; a site is not known by such a word alone where another name stands before it. */
const kindsOfPlace =
  /^(?:hotel|inn|hall|school|clinic|hospital|library|church|chapel|bakery|court|college|station|plant|depot|warehouse|garage|market|restaurant|cafe|bank|offices?|lofts?|apartments?|mall|gym|theatre|theater|museum|dental|dentist|surgery|academy|university|nursery|laundry|pharmacy|grocery|dairy)$/;

/** What a place is by itself, and no part of another. */
const wholePlaces =
  /^(?:foundry|mill|works|yard|dock|wharf|quay|pier|tower|cent(?:er|re)|arena|plaza|lodge|terminal|brewery|hotel|inn|school|clinic|hospital|church|bakery|court|college|station|plant|depot|warehouse|market|bank|apartments?|mall|theat(?:er|re)|museum|dental|surgery|academy|university|pharmacy|grocery|dairy)$/;

/** "Alder Foundry" is not the Alder Wharf: the name is shared, what stands behind it is another kind of place. */
function anotherKind(words: readonly string[], known: readonly string[]): boolean {
  const own = known.find((part) => wholePlaces.test(part));
  if (own === undefined || words.some((word) => sameWord(word, own))) return false;
  return words.some((word, at) => {
    const next = words[at + 1] ?? "";
    return known.some((part) => sameWord(word, part)) && wholePlaces.test(next);
  });
}

/** "Quay hotel" is not the Maple Hall Hotel: its kind is shared, the name before it is another. */
function namesAnother(head: string, site: string): boolean {
  const known = wordsOf(site);
  const words = wordsOf(head);
  if (anotherKind(words, known)) return true;
  const shared = words.filter((word) => known.some((part) => sameWord(word, part)));
  if (!shared.every((word) => kindsOfPlace.test(word))) return false;
  const before = words[words.findIndex((word) => shared.includes(word)) - 1];
  return before !== undefined && before.length > 2 && !/^(?:the|our|new|old|for)$/.test(before);
}

const sends =
  /^(?:please )?(?:send|give (?:it|this) to|assign(?:ed)? (?:it )?to|goes to|can|could)\s+(?=@?\p{Lu})/iu;

/** The last sentence names who goes where it starts with a person: "Dov when you can". */
function assignee(
  rest: string,
  people: readonly string[],
): Pick<Opening, "assigned" | "second"> & { readonly complaint: string } {
  const sentences = rest
    // ", Ife" or ", Ife and Otis" behind a comma are people as well, the last thing said
    .replace(/,\s+(@?\p{Lu}\p{Ll}+(?: (?:and|&|n|\+|with) @?\p{Lu}\p{Ll}+)?[.!]?\s*)$/u, ". $1")
    .split(/(?<=[.!?])\s+|\s+[-–—]\s+|\n+/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== "");
  // "send Kai", "can Kai take it"
  const last = (sentences.at(-1) ?? "").replace(sends, "");
  const [first = ""] = /^[@]?[\p{L}'’-]+/u.exec(last) ?? [];
  const name = first.replace(/^@/, "").toLowerCase();
  const known = people.some((person) => person.toLowerCase() === name);
  const short = wordsOf(last).length <= 4;
  // ", Otis" and nothing else, ", Quill with Marla"
  const bare = wordsOf(last).length === 1 || namesAlone.test(last);
  const alone = sentences.length === 1 && bare && !isTrouble(last);
  const looksLikeName =
    /^@?\p{Lu}\p{Ll}+$/u.test(first) && short && (sentences.length > 1 || alone);
  if (name === "" || !(known || looksLikeName)) {
    const before = namedBefore(sentences, people);
    if (before !== undefined) return before;
    return { complaint: trimEnd(rest) };
  }
  return {
    complaint: trimEnd(sentences.slice(0, -1).join(" ")),
    assigned: personCalled(name, people),
    ...secondOf(last.slice(first.length), people),
  };
}

const namesAlone = /^@?(\p{Lu}\p{Ll}+)(?: (?:and|&|n|\+|with) @?\p{Lu}\p{Ll}+)?[.!]?$/u;

/** "…, warm since 4. Rune and Pia. plate 7 lb 3": a sentence of names alone, and more behind it. */
function namedBefore(
  sentences: readonly string[],
  people: readonly string[],
): ReturnType<typeof assignee> | undefined {
  const at = sentences.findLastIndex(
    (one, i) => i > 0 && i < sentences.length - 1 && namesAlone.test(one) && !isTrouble(one),
  );
  const said = sentences[at] ?? "";
  const [first = ""] = namesAlone.exec(said)?.slice(1) ?? [];
  if (at < 0 || first === "") return undefined;
  return {
    complaint: trimEnd(sentences.filter((_, i) => i !== at).join(" ")),
    assigned: personCalled(first, people),
    ...secondOf(said.replace(/^@/, "").slice(first.length), people),
  };
}

/** "Nils and Hedda", "Nils with Hedda": who is sent along. */
function secondOf(behind: string, people: readonly string[]): Pick<Opening, "second"> {
  const said = /^\s*(?:,\s*)?(?:and|&|\+|n|with|plus)\s+@?([\p{L}'’-]+)/iu.exec(behind)?.[1];
  if (said === undefined) return {};
  const known = people.some((person) => person.toLowerCase() === said.toLowerCase());
  return known || /^\p{Lu}\p{Ll}+$/u.test(said) ? { second: personCalled(said, people) } : {};
}

/** As the office writes the name, else in small letters as the chat knows people. */
function personCalled(said: string, people: readonly string[]): string {
  const name = said.toLowerCase();
  return people.find((person) => person.toLowerCase() === name) ?? name;
}

const trimEnd = (text: string): string => text.trim().replace(/[.;,\s]+$/, "");
