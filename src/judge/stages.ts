import type { CaseNote, Reading, Statement } from "../model.ts";
import { legsTurned } from "./legs-turned.ts";
import { newInAt } from "./new-in.ts";
import { replacesCompressor } from "./replaces-compressor.ts";
import { isOfSwapTest } from "./swap-test.ts";

/** The notes before and after the first thing that was done to the machine. */
export interface Stages {
  readonly before: readonly CaseNote[];
  readonly after: readonly CaseNote[];
}

const repairs: readonly string[] = [
  "replaced",
  "repaired",
  "brazed",
  "cleaned",
  "tightened",
  "adjusted",
  "charged",
  "recovered",
  "circuit_opened",
  "nitrogen_in",
];

/**
 * Cuts the notes at the first repair, part fitted or work on the circuit; a note that holds it is
 * cut in two at its words, the deed itself staying before. Without any, all is before.
 */
export function stagesOf(notes: readonly CaseNote[]): Stages {
  const cuts = notes.map((note, i) => cutIn(note) ?? cleanAgain(notes.slice(0, i), note));
  const at = cuts.findIndex((cut) => cut !== undefined);
  const note = notes[at];
  const cut = cuts[at];
  if (note === undefined || cut === undefined) return { before: notes, after: [] };
  const ofOld = (one: Reading | Statement) => isOfOld(one, note);
  const isAfter = (one: Reading | Statement) =>
    !ofOld(one) && (placeOf(one) > cut || (placeOf(one) === cut && isOutcome(one)));
  const after = [part(note, isAfter), ...notes.slice(at + 1)];
  const deed = foundOnOld(part(note, (one) => !isAfter(one)));
  return {
    before: [...notes.slice(0, at), { ...deed, readings: [...deed.readings, ...first(after)] }],
    after,
  };
}

/** "compressor was replaced yesterday for a ground, found 0.0 meg": what was measured then, on the one that came out. */
function isOfOld(one: Reading | Statement, note: CaseNote): boolean {
  return "figure" in one && one.earlier === true && replacesCompressor(note);
}

/** The cause of the change, not a visit before it. */
function foundOnOld(note: CaseNote): CaseNote {
  return {
    ...note,
    readings: note.readings.map((one) => {
      if (!isOfOld(one, note)) return one;
      const { earlier: _, ...then } = one;
      return then;
    }),
  };
}

/** "head went from 480 to 350" after a deed: the first figure is of the time before it. */
function first(after: readonly CaseNote[]): Reading[] {
  return after
    .slice(0, 2)
    .flatMap((note) => note.readings)
    .flatMap(({ series, ...one }) => {
      const was = series?.[0];
      const steady = one.after_s === undefined && one.state !== "start";
      return was === undefined || !steady || !changed.includes(one.quantity)
        ? []
        : [{ ...one, value: was }];
    });
}

/** What a repair changes for good. */
const changed: readonly string[] = [
  "pressure",
  "temperature",
  "superheat",
  "subcooling",
  "voltage",
];

/** Something was done to the machine in this note. */
export function changesMachine(note: CaseNote): boolean {
  return cutIn(note) !== undefined;
}

/** "Coil is clean", of a coil that was told to be dirty before: nobody says that he washed it, and he did. */
function cleanAgain(before: readonly CaseNote[], note: CaseNote): number | undefined {
  const seen = ({ statements }: CaseNote, is: RegExp): Statement | undefined =>
    statements.find((one) => one.kind === "observation" && !one.denied && is.test(one.observation));
  const clean = seen(note, /^coil_clean$/);
  const was = before.some((one) => seen(one, /coil_dirty$/) !== undefined);
  return clean !== undefined && was ? placeOf(clean) - 1 : undefined;
}

/** Where in the note's words the machine was first changed. */
function cutIn(note: CaseNote): number | undefined {
  const deeds = note.statements
    .filter(
      (one) =>
        isRepair(one) &&
        !isOfTest(one, note) &&
        !isOfOthers(one, note) &&
        !isOftenDone(one, note) &&
        !isOfSwapTest(one, note) &&
        !isOfFuse(one, note),
    )
    .map(placeOf);
  // weights said in one breath belong together: "added 3 kg, and 2 kg 90 days ago"
  const weights = note.readings.some(isCharge)
    ? note.readings.filter((one) => one.quantity === "mass").map(placeOf)
    : [];
  const turned = (note.text ?? "").search(legsTurned);
  const mended = (note.text ?? "").search(supplyMended);
  const places = [
    ...deeds,
    ...(weights.length === 0 ? [] : [Math.max(...weights)]),
    ...[turned, mended, newInAt(note)].filter((at) => at >= 0),
  ];
  return places.length === 0 ? undefined : Math.min(...places);
}

/** "utility replaced the cutout", "they changed a tap": the supply is another from here on, whoever did it. */
const supplyMended =
  /\b(?:utility|power co(?:mpany)?|line ?crew|linem[ae]n|electricians?|they)\b(?: (?:has|have|just|already|came(?: out)?|and|guys?)){0,3} (?:replaced|changed|fixed|mended|raised|moved|restored|tightened|swapped|reset|reclosed|repaired)\b[^.;,]{0,24}\b(?:taps?|cut ?outs?|transformer|fuses?|neutral|drop|service|meter|feeder|legs?|phase|supply|lugs?|line|voltage|jumper|connection)\b/i;

function isRepair(one: Statement): boolean {
  // a fuse put in tries the machine again and mends nothing
  if (one.kind === "part")
    return one.state === "fitted" && !/fuse/i.test(one.part) && !isFoundNew(one);
  if (one.kind !== "action" || one.planned === true) return false;
  // a wiped terminal is part of a test
  if (
    one.action === "cleaned" &&
    /terminal|pin|block|lead|lug/i.test(`${one.what ?? ""} ${one.said}`)
  )
    return false;
  // a service valve that is seated for a test
  if (one.action === "adjusted" && /\bseat/i.test(one.said)) return false;
  // "OL swapped round": the meter's probes
  if (/^(?:round|around|over|probes?|polarity|hoses?)$/i.test(one.what ?? "")) return false;
  if (one.action === "swapped") return !/lead|leg|phase|wire|line/i.test(one.what ?? "lead");
  return repairs.includes(one.action) && !/\bfuses?\b/i.test(one.what ?? "");
}

/** "dried them, wiped with alcohol: 480 480 470": cleaned for an insulation test, nothing else named. */
function isOfTest(one: Statement, note: CaseNote): boolean {
  if (one.kind !== "action" || one.action !== "cleaned") return false;
  if (
    /coil|filter|condenser|evaporator|strainer|drain|fan|wheel/i.test(
      `${one.what ?? ""} ${one.said}`,
    )
  )
    return false;
  return note.readings.some((reading) => reading.quantity === "insulation_resistance");
}

/** "filters new": how they were found, nothing that was done here. */
export function isFoundNew({ said }: { readonly said: string }): boolean {
  return /\S (?:(?:are|is|were|look|looks|all|both|brand) )*new$/i.test(said.trim());
}

/** "topped up twice this year": what was done over and over before this call. */
function isOftenDone(one: Statement, note: CaseNote): boolean {
  const from = one.spans[0]?.[1] ?? 0;
  const behind = (note.text ?? "").slice(from).split(/[.;,]/)[0] ?? "";
  return /^\W*(?:it |gas |r-?\d+\w* )?(?:twice|thrice|(?:\d+|two|three|four|several|a few|many) times)\b/i.test(
    behind,
  );
}

const others =
  /\b(?:some(?:one|body)|they|electricians?|(?:last|other|previous) (?:guy|tech|crew|company|outfit)|owner|customer|tenant|utility|landlord|roofers?|painters?)\b(?: (?:had|has|have|just|already|been|was|keeps|kept|'s|s)){0,2}\s*$/i;

/** "someone rewired it": no work of this call. */
function isOfOthers(one: Statement, note: CaseNote): boolean {
  return others.test((note.text ?? "").slice(0, placeOf(one)));
}

/** "L3 fuse blew, replaced it": a fuse put in tries the machine again and mends nothing. */
function isOfFuse(one: Statement, note: CaseNote): boolean {
  if (one.kind !== "action" || one.what !== undefined) return false;
  return /\bfuses?\b[^.;]*$/i.test((note.text ?? "").slice(0, placeOf(one)).slice(-fuseAhead));
}

/** Letters before a deed that name what it was done to. */
const fuseAhead = 30;

function isCharge(one: Reading): boolean {
  return one.quantity === "mass" && one.action !== undefined;
}

function placeOf(one: Reading | Statement): number {
  return one.spans[0]?.[0] ?? 0;
}

/** "washed the condenser" says that it is clean now, not that it was found so. */
function isOutcome(one: Reading | Statement): boolean {
  if (!("kind" in one) || one.kind !== "observation") return false;
  return one.observation === "coil_clean" || one.observation === "filter_clean";
}

function part(note: CaseNote, keeps: (one: Reading | Statement) => boolean): CaseNote {
  return {
    ...note,
    readings: note.readings.filter(keeps),
    statements: note.statements.filter(keeps),
  };
}
