import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { carries, signIndex } from "../signs.ts";
import { role } from "../word.ts";

const symptoms = [signIndex("no_cool"), signIndex("no_heat")];
const plainSymptom: ReadonlySet<string> = new Set([
  "warm",
  "hot",
  "cold",
  "stuffy",
  "humid",
  "out",
  "down",
  "freezing",
]);

interface Clause {
  readonly items: readonly Item[];
  readonly from: number;
  readonly to: number;
}

const fineWords: ReadonlySet<string> = new Set([
  "fine",
  "ok",
  "okay",
  "good",
  "comfortable",
  "alright",
]);

/** Beside readings only what is said of rooms is a complaint: a unit that is down is the machine at hand. */
const roomName = /^(?:rooms?|rms?|zones?|suite|floors?|apt|bay|hall)\b/;
const machineState = /^(?:out|down)$/;

/** The clause up to its first reading, cut at the comma before: "rooms 3 and 7 hot, suct 131". */
function beforeReadings(note: Note, clause: Clause): Clause | undefined {
  const [first, last] = [clause.items[clause.from], clause.items[clause.to - 1]];
  if (note.readings.length === 0 || first === undefined || last === undefined) return clause;
  const starts = note.readings
    .flatMap(({ spans }) => spans.map(([from]) => from))
    .filter((from) => from >= first.from && from < last.to);
  if (starts.length === 0) return clause;
  const start = Math.min(...starts);
  const cut = clause.items.findLastIndex(
    (item, i) => i > clause.from && i < clause.to && item.text === "," && item.to <= start,
  );
  return cut < 0 ? undefined : { ...clause, to: cut };
}

/** Where "15 and the lobby are fine" begins in a clause, behind a comma; the clause's end where it does not. */
function fineFrom(clause: Clause): number {
  for (let i = clause.from; i < clause.to; i++) {
    if (clause.items[i]?.text !== ",") continue;
    let end = i + 1;
    while (end < clause.to && clause.items[end]?.text !== ",") end++;
    const part = clause.items.slice(i + 1, end);
    if (part.some((item) => fineWords.has(item.text))) return i + 1;
  }
  return clause.to;
}

/** The places that are fine: by number, or by a name behind "the". */
function finePlaces(note: Note, clause: Clause): string[] {
  const places: string[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    const item = clause.items[i];
    if (item === undefined) continue;
    const name = clause.items[i - 1]?.text === "the" && item.kind === itemKind.word;
    const number = item.kind === itemKind.number && item.unit === undefined;
    if (item.kind === itemKind.subject || number || name)
      places.push(note.text.slice(item.from, item.to));
  }
  return places;
}

/** Rooms and zones by name or number in a clause: "rooms 12, 14, 15". */
function placesIn(note: Note, clause: Clause): string[] {
  const places: string[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    const item = clause.items[i];
    if (item === undefined) continue;
    if (item.kind === itemKind.subject && /^(?:case|cooler|freezer) \d/.test(item.subject ?? ""))
      places.push(note.text.slice(item.from, item.to));
    else if (
      item.kind === itemKind.subject &&
      (item.roles & role.clock) !== 0 &&
      (/^(?:room|rooms|rms?|zone|zones|suite|floor|unit|apt|bay|hall)/.test(item.text) ||
        (places.length > 0 && /^\d+$/.test(item.text)))
    )
      places.push(note.text.slice(item.from, item.to));
    else if (
      item.kind === itemKind.number &&
      item.unit === undefined &&
      Number.isInteger(item.value) &&
      places.length > 0
    )
      places.push(note.text.slice(item.from, item.to));
  }
  return places;
}

function symptomIn(note: Note, clause: Clause): string | undefined {
  for (let i = clause.from; i < clause.to; i++) {
    const item = clause.items[i];
    if (item === undefined) continue;
    if (symptoms.some((sign) => carries(item, sign)))
      return note.text.slice(item.from, Math.max(item.to, item.signsTo));
    // "down to 80" tells how warm it is
    if (plainSymptom.has(item.text) && !/^down to\b/.test(note.plain.slice(item.from)))
      return note.text.slice(item.from, item.to);
  }
  return undefined;
}

function clauses(items: readonly Item[]): Clause[] {
  const list: Clause[] = [];
  let from = 0;
  for (let i = 0; i <= items.length; i++) {
    const item = items[i];
    if (item !== undefined && !isStrongBreak(item) && item.text !== "but") continue;
    list.push({ items, from, to: i });
    from = i + 1;
  }
  return list;
}

/** Another rule has read the rooms of it, each with its state. */
function isTold({ statements, items }: Note, { from }: Clause): boolean {
  const at = items[from]?.from ?? -1;
  return statements.some(
    ({ kind, spans }) => kind === "complaint" && spans.some(([one, end]) => at >= one && at < end),
  );
}

/** "rooms 12, 14, 15 warm since Monday, 11 13 fine" */
export const complaints: Rule = {
  name: "<places> <symptom>",
  apply: (note) => {
    if (note.holds.question) return;
    if (note.statements.some((one) => one.kind === "open_job" || one.kind === "question")) return;
    const measured = note.readings.length > 0;
    for (const whole of clauses(note.items)) {
      // most clauses tell of none
      if (symptomIn(note, whole) === undefined || isTold(note, whole)) continue;
      const clause = beforeReadings(note, whole);
      if (clause === undefined) continue;
      const symptom = symptomIn(note, clause);
      const cut = fineFrom(clause);
      const places = placesIn(note, { ...clause, to: cut });
      const fine = finePlaces(note, { ...clause, from: cut });
      if (symptom === undefined || places.length === 0) continue;
      if (measured && (machineState.test(symptom) || !places.some((one) => roomName.test(one))))
        continue;
      const first = note.items[clause.from];
      const last = note.items[clause.to - 1];
      if (first === undefined || last === undefined) continue;
      for (let i = clause.from; i < clause.to; i++) {
        const item = note.items[i];
        if (item !== undefined && item.owner === undefined) item.owner = complaints.name;
      }
      const unread = note.unread.length;
      for (let at = note.unread.length - 1; at >= 0; at--) {
        const span = note.unread[at];
        if (span !== undefined && span[0] >= first.from && span[1] <= last.to)
          note.unread.splice(at, 1);
      }
      if (!measured || (unread > 0 && note.unread.length === 0)) note.ask.length = 0;
      note.statements.push({
        kind: "complaint",
        places,
        symptom,
        fine,
        said: note.text.slice(first.from, last.to),
        spans: [[first.from, last.to]],
        rule: complaints.name,
      });
    }
  },
};
