import type { TreeNode } from "../../model.ts";
import { hasHeat } from "../gauge-pair.ts";
import type { Note, Rule } from "../note.ts";
import { bareRooms, namesPart, partAt, type Things, thingsAt } from "../tree/named-things.ts";
import { type TieVerb, tieVerbs } from "../tree/tie-verb.ts";
import { type TreeWord, treeWords } from "../tree/tree-word.ts";

/** One part and what it feeds, with the words that say so. */
interface Tie {
  readonly part: string;
  readonly feeds: Things;
  readonly from: number;
  readonly to: number;
  readonly up?: true;
}

const ends = /^[.;!\n]$/;
const goesOn = /^(?:,|and|but|&|so|which|-|off|on|not|here|now|too|by|as|also|i|per)$/;

const measured =
  /^(?:suct|suction|return|ret|rtn|liq|liquid|discharge|disch|sh|sc|superheat|subcooling|psi|psig|mixed|oat|split)$/;

/** A part feeds others: "ou3 feeds branch box 1 and 2". */
function downTie(
  words: readonly TreeWord[],
  verb: TieVerb,
  after: number,
  limit: number,
): Tie | undefined {
  // "suct 88 head 290 supply 101 return 69": gauges and airs, nothing feeds anything
  const air =
    words[verb.to - 1]?.text === "supply" && words.some(({ text }) => measured.test(text));
  if (air) return undefined;
  for (let from = after; from < verb.from; from++) {
    const part = partAt(words, from);
    if (part?.end !== verb.from) continue;
    const feeds = thingsAt(words.slice(0, limit), verb.to);
    if (feeds === undefined || (!verb.sure && isDoubtful(feeds))) return undefined;
    return { part: part.name, feeds, from, to: feeds.end };
  }
  return undefined;
}

/** "Has 208" and "on 204" may be volts: bare numbers need company. */
const isDoubtful = ({ parts, rooms, bare }: Things): boolean =>
  parts.length === 0 && bare && rooms.length < 2;

/** Rooms and parts hang on one: "rooms 201 202 203 hang on BB-A". */
function upTie(words: readonly TreeWord[], verb: TieVerb, after: number): Tie | undefined {
  const part = partAt(words, verb.to);
  if (part === undefined) return undefined;
  const meant = meantBy(words, verb);
  if (meant !== undefined) {
    return { part: part.name, feeds: meant, from: verb.from, to: part.end, up: true };
  }
  for (let from = after; from < verb.from; from++) {
    if (/^[,.;]$/.test(words[from]?.text ?? "")) continue;
    const until = words.findLastIndex(
      ({ text }, i) => i < verb.from && !/^(?:,|which|that)$/.test(text),
    );
    const list = words.slice(0, until + 1);
    const named = thingsAt(list, from);
    const feeds = named?.end === until + 1 ? named : onBox(part.name, verb, bareRooms(list, from));
    if (feeds === undefined) continue;
    if (!verb.sure && isUncertain(words, verb, { feeds, behind: part.end })) return undefined;
    return withAlso(words, { part: part.name, feeds, from, to: part.end, up: true });
  }
  return undefined;
}

/** "12 and 16 are on box B, 14 too" */
function withAlso(words: readonly TreeWord[], tie: Tie): Tie {
  const too = words.findIndex(({ text }, i) => i > tie.to && /^(?:too|also)$/.test(text));
  const more = words[tie.to]?.text === "," ? bareRooms(words.slice(0, too), tie.to + 1) : undefined;
  if (too < 0 || more === undefined) return tie;
  const rooms = [...tie.feeds.rooms, ...more.rooms];
  return { ...tie, feeds: { ...tie.feeds, rooms }, to: too + 1 };
}

const boxes = /^(?:branch|bb|bs|bc|selector|mode)\b/i;

/** "12 and 16 hang on bb-2", "12 and 16 are on box B": bare numbers are rooms where it is a box that feeds them. */
function onBox(part: string, verb: TieVerb, feeds: Things | undefined): Things | undefined {
  if (feeds === undefined || !boxes.test(part)) return undefined;
  return verb.sure || (feeds.rooms.length > 1 && verb.to - verb.from > 1) ? feeds : undefined;
}

/** "Rooms 11 to 14 are warm, they hang on bb-1": the rooms named before. */
function meantBy(words: readonly TreeWord[], verb: TieVerb): Things | undefined {
  const [before, first] = [words[verb.from - 1]?.text ?? ",", words[verb.from]?.text ?? ""];
  if (!/^[,.;]$/.test(before) || !/^(?:they|all|both)$/.test(first)) return undefined;
  for (let from = 0; from < verb.from; from++) {
    const things = thingsAt(words.slice(0, verb.from), from);
    if (things !== undefined && things.rooms.length > 0) return { ...things, parts: [] };
  }
  return undefined;
}

/** "Rooms 204 205 on bb-1 not cooling" tells of the rooms; only where nothing follows is it the tree. */
function isUncertain(
  words: readonly TreeWord[],
  verb: TieVerb,
  { feeds, behind }: { readonly feeds: Things; readonly behind: number },
): boolean {
  const next = words[behind]?.text;
  const alone = next === undefined || ends.test(next) || goesOn.test(next);
  // "at box 2 on ou3" says where he stands
  if (words[verb.from]?.text === "on" && feeds.parts.length > 0) return true;
  return !alone || (isDoubtful(feeds) && verb.to - verb.from < 2);
}

/** Where the next verb's own subject begins, so that no list runs into it. */
function subjectOf(words: readonly TreeWord[], next: TieVerb | undefined, after: number): number {
  if (next === undefined) return words.length;
  for (let from = after + 1; from < next.from; from++) {
    if (!/^(?:,|and|;|\.|\n)$/.test(words[from - 1]?.text ?? "")) continue;
    const end =
      next.way === "down"
        ? partAt(words, from)?.end
        : thingsAt(words.slice(0, next.from), from)?.end;
    if (end === next.from) return from;
  }
  return words.length;
}

/** "IU-1 and IU-2 hang on BB-1, IU-3 on BB-2": behind one that is sure "on" is so too. */
function goesOnFrom(verb: TieVerb, words: readonly TreeWord[], last: Tie | undefined): TieVerb {
  const comma = last?.up === true && /^(?:,|;|and)$/.test(words[last.to]?.text ?? "");
  return comma ? { ...verb, sure: true } : verb;
}

function tiesIn(words: readonly TreeWord[]): readonly Tie[] {
  const verbs = tieVerbs(words);
  const ties: Tie[] = [];
  let after = 0;
  verbs.forEach((verb, index) => {
    const last = ties[ties.length - 1];
    // "on BB-A off OU-1": what was hung on hangs on the next
    const between = last === undefined ? [] : words.slice(last.to, verb.from);
    const chained =
      last?.up === true && between.every(({ text }) => /^(?:,|which|that)$/.test(text));
    const start = chained ? verbs[index - 1]?.to : after;
    const tie =
      verb.way === "up"
        ? upTie(words, goesOnFrom(verb, words, last), start ?? after)
        : downTie(words, verb, after, subjectOf(words, verbs[index + 1], verb.to));
    if (tie === undefined) return;
    ties.push(tie);
    after = tie.to;
  });
  return ties;
}

function nodesOf(ties: readonly Tie[]): readonly TreeNode[] {
  return ties.flatMap(({ part, feeds }) => [
    ...(feeds.rooms.length === 0 ? [] : [{ tag: part, places: feeds.rooms }]),
    ...feeds.parts.map((tag) => ({ tag, parent: part })),
  ]);
}

/** "ou3 feeds branch box 1 and 2, box 2 serves rooms 204 to 210", "rooms 201 202 203 hang on BB-A off OU-1" */
export const treeTold: Rule = {
  name: "<part> feeds <parts or rooms>",
  apply: (note: Note) => {
    if (note.holds.mark || note.statements.length > 0 || hasHeat(note.items)) return;
    const words = treeWords(note);
    if (!namesPart(words)) return;
    const ties = tiesIn(words);
    const nodes = nodesOf(ties);
    if (nodes.length === 0 || /^(?:what|which|who)$/.test(words[0]?.text ?? "")) return;
    for (const { from, to } of ties) {
      for (const word of words.slice(from, to)) {
        const item = note.items[word.item];
        if (item !== undefined && item.owner === undefined) item.owner = treeTold.name;
      }
    }
    const spans = ties.flatMap(({ from, to }) => {
      const first = note.items[words[from]?.item ?? -1];
      const last = note.items[words[to - 1]?.item ?? -1];
      return first === undefined || last === undefined ? [] : [[first.from, last.to] as const];
    });
    note.statements.push({
      kind: "tree",
      nodes,
      said: spans.map(([from, to]) => note.text.slice(from, to)).join(" "),
      spans,
      rule: treeTold.name,
    });
    note.trace.push(treeTold.name);
  },
};
