import type { Finding } from "../../model.ts";
import type { CheckName } from "../../vocabulary.ts";
import { applicationOf } from "../application.ts";
import { saysInVain } from "../in-vain.ts";
import { lettersIn, lettersNeeded } from "../letters.ts";
import { perScene, type Scene } from "../scene.ts";
import { swapTest } from "../swap-test.ts";
import { toldAirRows } from "./told-air-rows.ts";
import { toldCommunicationRows } from "./told-communication-rows.ts";
import { toldControlRows } from "./told-control-rows.ts";
import { toldDefrostRows } from "./told-defrost-rows.ts";
import { electricalToldRows } from "./told-electrical-rows.ts";
import { toldGasRows } from "./told-gas-rows.ts";
import { toldLineRows } from "./told-line-rows.ts";
import { toldMotorRows } from "./told-motor-rows.ts";
import { toldPartsRows } from "./told-parts-rows.ts";
import { type ToldRow, toldRows } from "./told-rows.ts";
import { toldValveRows } from "./told-valve-rows.ts";

/** What the notes tell of a check's subject in words; the first row of a group that fits counts. */
export function told(scene: Scene, check: CheckName): Finding[] {
  if (!checksTold(scene).has(check)) return [];
  const told = toldRowsIn(scene);
  const notes = scene.words.split("\n");
  const groups = new Set<string>();
  return toldRowsAll
    .filter((row) => row.check === check && (row.zones !== true || hasZones(scene)))
    .filter(({ beside }) => beside === undefined || beside.test(scene.words))
    .filter(({ notBeside }) => notBeside?.test(scene.words) !== true)
    .filter((row) => row.words.some((words) => words.test(scene.words)))
    .flatMap((row) => {
      const group = row.sign.split(":")[0] ?? row.sign;
      const last = told.findLastIndex((some) => some.includes(row));
      if (groups.has(group) || last < 0) return [];
      groups.add(group);
      const later = notes.slice(last + 1);
      const atOnce = mendsItself(notes[last] ?? "", row);
      if (!atOnce && !isMended(later, row)) return [findingOf(row)];
      // where a deed cuts the notes, what stands before it speaks of the cause
      const silent = later.some(saysInVain) || (!atOnce && scene.done.some(isDeed));
      return silent ? [] : [putRight(row)];
    });
}

/** The rows that each line of the notes tells. */
const toldRowsIn: (scene: Scene) => readonly (readonly ToldRow[])[] = perScene((scene) =>
  scene.words.split("\n").map(rowsToldBy),
);

/** The checks that any line tells something of. */
const checksTold: (scene: Scene) => ReadonlySet<CheckName> = perScene(
  (scene) => new Set(toldRowsIn(scene).flatMap((rows) => rows.map(({ check }) => check))),
);

/** A job's lines come again with each of its messages: so many are remembered; our choice, no source. */
const mostLines = 2_000;
const toldBy = new Map<string, readonly ToldRow[]>();

function rowsToldBy(line: string): readonly ToldRow[] {
  const known = toldBy.get(line);
  if (known !== undefined) return known;
  const letters = lettersIn(line);
  const told = gated.filter((one) => tells(line, letters, one)).map(({ row }) => row);
  const [oldest] = toldBy.keys();
  if (toldBy.size >= mostLines && oldest !== undefined) toldBy.delete(oldest);
  toldBy.set(line, told);
  return told;
}

/** Every row, in the order in which they count. */
export const toldRowsAll: readonly ToldRow[] = [
  ...toldRows,
  ...toldAirRows,
  ...electricalToldRows,
  ...toldCommunicationRows,
  ...toldControlRows,
  ...toldPartsRows,
  ...toldLineRows,
  ...toldMotorRows,
  ...toldGasRows,
  ...toldValveRows,
  ...toldDefrostRows,
];

/** A row with the letters that each of its words needs: most notes can't hold most of them. */
interface Gated {
  readonly row: ToldRow;
  readonly words: readonly { readonly pattern: RegExp; readonly needs: number }[];
}

const gated: readonly Gated[] = toldRowsAll.map((row) => ({
  row,
  words: row.words.map((pattern) => ({ pattern, needs: lettersNeeded(pattern) })),
}));

function hasZones(scene: Scene): boolean {
  return applicationOf(scene) === "multi_zone";
}

function tells(note: string, letters: number, { row, words }: Gated): boolean {
  return (
    words.some(({ pattern, needs }) => (letters & needs) === needs && pattern.test(note)) &&
    row.unless?.test(note) !== true
  );
}

const deeds =
  /\b(?:new|replaced|changed|swapped|cleaned|washed|blew out|cleared|strapped|wrapped|insulated|fixed|repaired|tightened|retightened|(?:re-?)?torqued|re-?landed|re-?terminated|re-?crimped|spliced|remade|redone|in place|un(?:clogged|blocked)|(?:put|plugged|screwed|pushed) (?:it |them |that )?back|reconnected|landed (?:it|them|both)|(?:pulled|dug|fished|scooped|picked|vacuumed) [^.;,\n]{3,40} out of)\b/;

/** A later note says that just this was put right, so it no longer stands. */
function isMended(later: readonly string[], row: ToldRow): boolean {
  return later.some(
    (note) => row.mended?.test(note) === true && deeds.test(note) && !swapTest.test(note),
  );
}

function isDeed({ action }: Scene["done"][number]): boolean {
  return ["replaced", "repaired", "cleaned", "tightened", "adjusted", "brazed"].includes(action);
}

/** "bulb was loose, strapped it": found and put right in one breath. */
function mendsItself(note: string, row: ToldRow): boolean {
  if (row.mended === undefined || row.level === "good" || swapTest.test(note)) return false;
  const at = Math.min(...row.words.map((words) => note.search(words)).filter((one) => one >= 0));
  return Number.isFinite(at) && mends.test(note.slice(at));
}

const mends =
  /(?<!nothing |not |never |n'?t |none )\b(?:replaced|changed|swapped|cleaned|washed|cleared|re-?strapped|strapped|wrapped|insulated|fixed|repaired|(?:re)?tightened|(?:re-?)?torqued|(?:re-?)?landed|reconnected|re-?terminated|re-?crimped|spliced|remade|redone|re-?seated)(?: (?:it|that|them|those|her|\d[\d.]*|both|all|new)\b|\s*(?:[.,;!]|$))/;

/** What was found speaks of the cause still; it no longer stands. */
function putRight(row: ToldRow): Finding {
  return {
    ...findingOf(row),
    level: "good",
    says: `Found and put right, as told: ${row.brief}`,
    brief: "put right, as told",
  };
}

function findingOf(row: ToldRow): Finding {
  return {
    about: row.about,
    check: row.check,
    level: row.level,
    says: row.says,
    brief: row.brief,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: [row.sign],
  };
}
