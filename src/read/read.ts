import type { Understood } from "../model.ts";
import { actuallySo } from "./actually-so.ts";
import { airOfBox } from "./air-of-box.ts";
import { alarmLimit } from "./alarm-limit.ts";
import { alsoSo } from "./also-so.ts";
import { branchBoxes } from "./branch-boxes.ts";
import { isStrongBreak } from "./breaks.ts";
import { coilOfCase } from "./coil-of-case.ts";
import type { Context } from "./context.ts";
import { leftOver } from "./cover.ts";
import { defrostEnd } from "./defrost-end.ts";
import { deniedNames } from "./denied-names.ts";
import { dotTimes } from "./dot-times.ts";
import { fellowsByNumber } from "./fellows-by-number.ts";
import { headsOf } from "./heads.ts";
import { headsByNumber } from "./heads-by-number.ts";
import { holdsOf } from "./holds.ts";
import { everythingAt, hotOut } from "./hot-out.ts";
import { isolated } from "./isolated.ts";
import type { Item } from "./item.ts";
import { itemsOf } from "./items.ts";
import { kelvinClips, kelvinsApart } from "./kelvin-clips.ts";
import { lineupNumber } from "./lineup-number.ts";
import { loopWarmth } from "./loop-warmth.ts";
import { loose, spansOf } from "./loose.ts";
import { machinesByNumber } from "./machines-by-number.ts";
import { measure } from "./measure.ts";
import { meggedByNumber } from "./megged-by-number.ts";
import { hoursMinutes, minutesSeconds } from "./minutes-seconds.ts";
import { muted } from "./muted.ts";
import { nitrogenFirst } from "./nitrogen-first.ts";
import type { Note } from "./note.ts";
import { oilByNumber } from "./oil-by-number.ts";
import { bySentence, type Sentence, sentencesOf } from "./own-sentence.ts";
import { pairBehindValue } from "./pair-behind-value.ts";
import { pairBehindSaturation, pairThenLines } from "./pair-then-lines.ts";
import { plain } from "./plain.ts";
import { whileLive } from "./power-on.ts";
import { pumpShut } from "./pump-shut.ts";
import { putInPlace } from "./put-in-place.ts";
import { reasonBetween } from "./reason-between.ts";
import { roomsAir } from "./rooms-air.ts";
import { rowDenied } from "./row-denied.ts";
import { rowsByNumber } from "./rows-by-number.ts";
import { applyRules, asides, remarks } from "./rules/list.ts";
import { sameNoun } from "./same-noun.ts";
import { sameThen } from "./same-then.ts";
import { withoutTalk } from "./small-talk.ts";
import { spokenSeries } from "./spoken-series.ts";
import { startPart } from "./start-part.ts";
import { tankLetters } from "./tank-fill.ts";
import { testApart } from "./test-ahead.ts";
import { testerKilo } from "./tester-kilo.ts";
import { thatsThe } from "./thats-the.ts";
import type { Token } from "./token.ts";
import { tokensOf } from "./tokens-of.ts";
import { hourThenGauge, unitOfNext } from "./unit-of-next.ts";
import { unsaidStops } from "./unsaid-stops.ts";
import { waitedMinutes } from "./waited-minutes.ts";
import { warmDay } from "./warm-day.ts";
import { waterLoop, waterPump } from "./water-loop.ts";
import { flowAgain, waterWays } from "./water-ways.ts";

/** Points of the job's last readings: "one to three" means legs where legs were measured. */
function familyOf(context: Context): string {
  const last = context.readings[context.readings.length - 1]?.points?.[0];
  if (last === undefined) return "";
  if (/^L\d/.test(last)) return "L";
  if (/^T\d/.test(last)) return "T";
  if (/^phase [ABC]/.test(last)) return `abc${last.slice(-1).toLowerCase()}`;
  if (/^[UVW]$/.test(last)) return `uvw${last.toLowerCase()}`;
  return "";
}

/** A message cut into items, before any rule has looked at it. */
export function begin(text: string, context: Context): { note: Note; tokens: readonly Token[] } {
  const even = plain(text);
  const tokens = tokensOf(even, text, context);
  const last = context.readings[context.readings.length - 1]?.quantity;
  const { units } = context;
  const family = familyOf(context);
  const gauged = context.readings.some(
    (one) => one.quantity === "pressure" && one.at === "discharge",
  );
  const items = itemsOf({ tokens, typed: text, items: [], family, units, gauged, pairs: true });
  withoutTalk(items, even, context.open !== undefined);
  actuallySo(items);
  alsoSo(items);
  putInPlace(items);
  thatsThe(items);
  sameThen(items);
  sameNoun(items, context);
  headsByNumber(items, context);
  machinesByNumber(items);
  fellowsByNumber(items, context);
  oilByNumber(items);
  meggedByNumber(items, even);
  rowsByNumber(items, even);
  nitrogenFirst(items, context.units);
  alarmLimit(items, context.units);
  branchBoxes(items, context);
  defrostEnd(items);
  minutesSeconds(items);
  hoursMinutes(items);
  reasonBetween(items);
  kelvinClips(items);
  kelvinsApart(items, text);
  startPart(items);
  warmDay(items);
  hotOut(items, units);
  everythingAt(items, units);
  muted(items, even);
  pumpShut(items, context);
  testerKilo(items);
  waitedMinutes(items);
  deniedNames(items);
  waterPump(items);
  waterLoop(items, context.units);
  loopWarmth(items, context.units);
  waterWays(items, even);
  flowAgain(items, context);
  airOfBox(items);
  roomsAir(items, context, even);
  coilOfCase(items, even);
  lineupNumber(items);
  tankLetters(items);
  hourThenGauge(items);
  unitOfNext(items);
  isolated(items, context.testing === "vacuum" ? "vacuum" : last);
  unsaidStops(items);
  dotTimes(items, even, context);
  spokenSeries(items, context.testing === "vacuum" || last === "vacuum");
  pairThenLines(items);
  pairBehindSaturation(items);
  testApart(items);
  pairBehindValue(items, even);
  rowDenied(items, even);
  const note: Note = {
    text,
    plain: even,
    items,
    context: whileLive(context, items),
    statements: [],
    readings: [],
    ask: [],
    unread: [],
    trace: [],
    heads: headsOf(tokens),
    holds: holdsOf(items),
    measuredAt: [],
    figureAt: new Map(),
    open: undefined,
  };
  return { note, tokens };
}

/** "1e999" is no number that a meter shows: it stays as written. */
function dropEndless(note: Note): void {
  for (let at = note.readings.length - 1; at >= 0; at--) {
    const value = note.readings[at]?.value;
    if (typeof value === "number" && !Number.isFinite(value)) note.readings.splice(at, 1);
  }
}

function finish(note: Note): Understood {
  dropEndless(note);
  loose(note);
  const unread = [...note.unread].sort((a, b) => a[0] - b[0]);
  const spans = spansOf(note);
  return {
    readings: note.readings,
    statements: note.statements,
    unread: unread.map(([from, to]) => note.text.slice(from, to)),
    unread_spans: unread,
    ask: note.ask,
    skipped: leftOver(spans, note.text.length),
    ...(note.open === undefined || note.ask.length === 0 ? {} : { open: note.open }),
  };
}

/** Items that are read together at most: a longer text is cut at ends of sentences, so time stays linear. */
const LONG = 160;
/** The size of the pieces. */
const PIECE = 60;

/** Where to cut before `to`, so that sentences stay whole where they can. */
function cutBefore(items: readonly Item[], from: number, to: number): number {
  for (let i = to; i > from + PIECE / 3; i--) {
    const item = items[i - 1];
    if (item !== undefined && isStrongBreak(item)) return i;
  }
  return to;
}

/** Some of the items as a note of their own. */
function partOf(note: Note, items: readonly Item[], tokens: readonly Token[]): Note {
  return {
    ...note,
    items,
    heads: headsOf(tokens),
    holds: holdsOf(items),
    ask: [],
    statements: [],
    readings: [],
    unread: [],
    measuredAt: [],
  };
}

function sentenceOf(note: Note, tokens: readonly Token[], [from, to]: Sentence): Note {
  const items = note.items.slice(from, to).map((item) => ({ ...item }));
  const begins = items[0]?.from ?? 0;
  const ends = items[items.length - 1]?.to ?? 0;
  return partOf(
    note,
    items,
    tokens.filter((token) => token.from >= begins && token.to <= ends),
  );
}

/** The note in pieces that are short enough to be looked at many times. */
function pieces(note: Note, tokens: readonly Token[]): Note[] {
  const { items } = note;
  const out: Note[] = [];
  let spoken = 0;
  for (let from = 0; from < items.length; ) {
    const to = from + PIECE >= items.length ? items.length : cutBefore(items, from, from + PIECE);
    const end = items[to]?.from ?? note.text.length;
    const first = spoken;
    while ((tokens[spoken]?.from ?? end) < end) spoken++;
    out.push(partOf(note, items.slice(from, to), tokens.slice(first, spoken)));
    from = to;
  }
  return out;
}

function readPiece(note: Note): void {
  applyRules(asides, note);
  measure(note);
  applyRules(remarks, note);
}

/** What reading one message leaves behind, for whoever wants to know why. */
export interface Reader {
  readonly note: Note;
  readonly tokens: readonly Token[];
  readonly understood: Understood;
}

/** The note as one, then each of its sentences alone: what one says by its own words stands. */
function readWhole(note: Note, tokens: readonly Token[]): void {
  const alone = sentencesOf(note.items).map((range) => sentenceOf(note, tokens, range));
  readPiece(note);
  for (const sentence of alone) {
    readPiece(sentence);
    bySentence(note, sentence);
  }
}

export function understand(text: string, context: Context): Reader {
  const { note, tokens } = begin(text, context);
  if (note.items.length <= LONG) readWhole(note, tokens);
  else for (const piece of pieces(note, tokens)) join(note, piece);
  return { note, tokens, understood: finish(note) };
}

function join(note: Note, piece: Note): void {
  readPiece(piece);
  note.readings.push(...piece.readings);
  note.statements.push(...piece.statements);
  note.unread.push(...piece.unread);
  if (note.ask.length > 0 || piece.ask[0] === undefined) return;
  note.ask.push(piece.ask[0]);
  note.open = piece.open;
}

/** Reads one message. Never throws, whatever the text; time grows linearly with its length. */
export function read(text: string, context: Context): Understood {
  return understand(text, context).understood;
}
