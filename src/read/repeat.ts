import type { Reading } from "../model.ts";
import { eitherMark } from "./circuit-mark.ts";
import { copyDraft, copyReading } from "./copy-value.ts";
import type { Draft } from "./draft.ts";
import { exceptSaid } from "./except-said.ts";
import { alive } from "./inherit.ts";
import { itemKind } from "./item.ts";
import { ledSubject } from "./led-subject.ts";
import { roomBeside, sameRow } from "./name-row.ts";
import type { Note } from "./note.ts";
import { ofOtherPoints } from "./other-points.ts";
import { ofSameGauge } from "./same-gauge.ts";

/** What has one reading of its own, so that "fan 2 same" is of the last alone. */
const part = /^(?:[a-z]+ )*(?:fan|pump|heater|motor|valve|sensor|zone|room|box|case|coil|filter)\b/;

/** "compressor two's the same": all that the last message read of the other one, in its order. */
function copyOthers(note: Note, draft: Draft, drafts: Draft[]): boolean {
  const { readings, latest } = note.context;
  const last = readings.slice(-Math.max(1, latest));
  if (last.length < 2 || draft.subject === undefined || draft.points !== undefined) return false;
  if (draft.place !== undefined) return false;
  const whose = last[0]?.subject;
  if (whose === undefined ? part.test(draft.subject) : whose === draft.subject) return false;
  if (!last.every((reading) => reading.subject === whose && reading.rating === undefined))
    return false;
  const plain = { ...draft };
  last.forEach((reading, order) => {
    const one = order === 0 ? draft : { ...plain };
    copyReading(note, one, reading);
    if (reading.points !== undefined) one.points = [reading.points];
    one.state = reading.state;
    if (order > 0) drafts.push(one);
  });
  return true;
}

/** "c2 same" behind compressor 1: no circuit then. */
function markOf(note: Note, draft: Draft): void {
  const last = note.context.readings[note.context.readings.length - 1]?.subject ?? "";
  const mark = note.items.find(({ subject }) => subject === draft.subject);
  if (mark === undefined || draft.subject === undefined || !last.startsWith("compressor ")) return;
  if (!eitherMark.test(note.plain.slice(mark.from, mark.to))) return;
  const named = draft.subject.replace("circuit", "compressor");
  draft.subject = named;
  mark.subject = named;
}

/** "same as 2": the earlier reading of the thing with that number. */
function named(note: Note, draft: Draft): Reading | undefined {
  const next = note.items[draft.index + 1];
  if (next?.kind !== itemKind.number || next.owner !== undefined) return undefined;
  const wanted = String(next.value);
  const found = [...note.context.readings]
    .reverse()
    .find(
      (reading) =>
        reading.subject?.endsWith(` ${wanted}`) === true ||
        reading.points?.[0]?.endsWith(wanted) === true,
    );
  if (found === undefined) return undefined;
  next.owner = "same as <number>";
  draft.behind = [...draft.behind, draft.index + 1];
  return found;
}

/** "W reads the same as V did": the value that stands at those points, here or before. */
function likeThose(
  note: Note,
  draft: Draft,
  earlier: readonly Draft[],
): Draft | Reading | undefined {
  const item = note.items[draft.index];
  const next = note.items[draft.index + 1];
  if (next?.kind !== itemKind.points || next.points?.length !== 1) return undefined;
  if (item === undefined || !note.plain.slice(item.from, item.to).endsWith(" as")) return undefined;
  const wanted = next.points[0] ?? [];
  const same = (points: readonly string[] | undefined): boolean =>
    points !== undefined && wanted.every((point, at) => points[at] === point);
  return (
    [...earlier].reverse().find((one) => same(one.points?.[0])) ??
    [...note.context.readings].reverse().find((one) => same(one.points))
  );
}

/** Does it name what it is the same as, though nothing is known of that? */
function namesOther(note: Note, draft: Draft): boolean {
  const item = note.items[draft.index];
  return (
    item !== undefined &&
    note.plain.slice(item.from, item.to).endsWith(" as") &&
    note.items[draft.index + 1]?.kind === itemKind.points
  );
}

/** Indexes of the numbers in "same on 2 and 3"; none where anything else is counted. */
function numbersBehind(note: Note, draft: Draft): number[] {
  const found: number[] = [];
  for (let i = draft.index + 1; i < note.items.length; i++) {
    const item = note.items[i];
    if (item === undefined) break;
    const number = item.kind === itemKind.number && item.owner === undefined;
    // "same on 2 and 3's ninety": the verb is the next one's
    const next = item.kind === itemKind.points || item.kind === itemKind.subject;
    if (found.length > 0 && next) break;
    if (number && item.unit === undefined && /^[1-9]$/.test(String(item.value))) found.push(i);
    else if (number || !/^(?:on|for|at|and|&|,|n|again|too|here|both|w|with)$/.test(item.text))
      return [];
  }
  return found;
}

/** The numbers are names, no values. */
function names(note: Note, drafts: readonly Draft[], found: readonly number[]): void {
  for (const other of drafts) if (found.includes(other.index)) other.gone = true;
  for (const index of found) {
    const item = note.items[index];
    if (item !== undefined) item.owner = "same on <number>";
  }
}

/** "same on 2 and 3" behind lead 1: the next of its kind, by number alone. */
function pointsByNumber(
  note: Note,
  draft: Draft,
  last: Reading,
  drafts: readonly Draft[],
): Draft["points"] {
  const family = /^(lead |phase |L|T)\d$/.exec(last.points?.[0] ?? "")?.[1];
  const found = numbersBehind(note, draft);
  if (family === undefined || found.length === 0) return undefined;
  if (found.some((index) => (note.items[index]?.value ?? 9) > 3)) return undefined;
  names(note, drafts, found);
  draft.behind = [...draft.behind, ...found];
  return found.map((index) => {
    const point = `${family}${note.items[index]?.value ?? ""}`;
    return last.points?.[1] === "ground" ? [point, "ground"] : [point];
  });
}

/** "same on 2" behind compressor 1: the others of its kind, by number alone, each a value of its own. */
function subjectsByNumber(note: Note, draft: Draft, last: Reading, drafts: Draft[]): void {
  const family = /^(\D+ )\d$/.exec(last.subject ?? "")?.[1];
  if (family === undefined || last.points !== undefined || draft.subject !== undefined) return;
  const found = numbersBehind(note, draft);
  if (found.length === 0) return;
  names(note, drafts, found);
  draft.behind = [...draft.behind, ...found];
  const [first, ...rest] = found.map((index) => `${family}${note.items[index]?.value ?? ""}`);
  draft.subject = first;
  for (const subject of rest) {
    const one: Draft = { ...draft, subject };
    copyReading(note, one, last);
    drafts.push(one);
  }
}

/** "same on fan 2 n 3": behind a name the next numbers are names of its kind. */
function furtherSubjects(note: Note, draft: Draft, last: Reading, drafts: Draft[]): void {
  const family = /^(\D+ )\d$/.exec(draft.subject ?? "")?.[1];
  const at = note.items.findIndex(
    (item, i) =>
      i > draft.index && item.kind === itemKind.subject && item.subject === draft.subject,
  );
  if (family === undefined || at < 0 || last.subject?.startsWith(family) !== true) return;
  const found: number[] = [];
  for (let i = at + 1; i < note.items.length; i++) {
    const item = note.items[i];
    const joint = /^(?:and|&|,|n|\+)$/.test(item?.text ?? "");
    if (joint) continue;
    if (item?.kind !== itemKind.number || item.unit !== undefined || !/^[1-9]$/.test(item.text))
      return;
    found.push(i);
  }
  names(note, drafts, found);
  draft.behind = [...draft.behind, ...found];
  for (const index of found) {
    const one: Draft = { ...draft, subject: `${family}${note.items[index]?.value ?? ""}` };
    copyReading(note, one, last);
    drafts.push(one);
  }
}

/** "room 206 is the same": as warm as the room before, a value of its own. */
function sameRoom(note: Note, draft: Draft, like: Draft | Reading): void {
  if ("figure" in like) copyReading(note, draft, like);
  else {
    copyDraft(note, draft, like);
    draft.place ??= like.place;
  }
  draft.same = false;
}

const clock = "at <hour>:<minute>";

/** "350 psi at 10:20, same at 11:05": the same gauge at another time. */
function timed(note: Note, draft: Draft): boolean {
  const [before, next] = [note.items[draft.index - 1], note.items[draft.index + 1]];
  return next?.owner === clock || before?.owner === clock;
}

/** "comp 2 head 340 suct same" behind comp 1's: the same suction, not the head's figure. */
function gaugeBefore(note: Note, draft: Draft, left: Draft | undefined): Reading | undefined {
  const { place } = draft;
  if (!/^(?:suction|discharge|liquid)$/.test(place ?? "") || left?.place === place)
    return undefined;
  if (left?.place === undefined || left.quantity !== undefined) return undefined;
  return note.context.readings.findLast(({ at, rating }) => at === place && rating === undefined);
}

/** "28 bar, ambient same": an air is like no pressure; like itself where it was read before. */
function otherThanAir(note: Note, draft: Draft, left: Draft | undefined): boolean {
  if (draft.place?.endsWith("_air") !== true) return false;
  const last = note.context.readings[note.context.readings.length - 1];
  const warm =
    left === undefined
      ? last === undefined || last.unit === "Cel"
      : (left.unit?.dimension ?? "temperature") === "temperature" && left.hint !== "pressure";
  if (warm) return false;
  const before = note.context.readings.findLast(({ at }) => at === draft.place);
  if (before === undefined) draft.gone = true;
  else copyReading(note, draft, before);
  return true;
}

/** "lead 3 same", "fan 2 ditto": the value said last, here or in the message before. */
export function repeat(note: Note, drafts: Draft[]): void {
  [...drafts].forEach((draft, order) => {
    if (draft.gone || !draft.same) return;
    draft.subject ??= ledSubject(note, draft);
    markOf(note, draft);
    const left = drafts
      .slice(0, order)
      .reverse()
      .find((other) => !other.gone && (other.over || !Number.isNaN(other.value)));
    const those = likeThose(note, draft, alive(drafts.slice(0, order)));
    if (those !== undefined) {
      if ("quantity" in those && "figure" in those) copyReading(note, draft, those);
      else if ("index" in those) copyDraft(note, draft, those);
      return;
    }
    if (namesOther(note, draft)) {
      draft.gone = true;
      return;
    }
    if (sameRow(note, draft, left, drafts)) return;
    if (ofSameGauge(note, draft, left)) return;
    if (ofOtherPoints(note, draft, drafts.slice(0, order), left)) return;
    const told = named(note, draft);
    if (told !== undefined) {
      copyReading(note, draft, told);
      for (const other of drafts)
        if (note.items[other.index]?.owner !== undefined) other.gone = true;
      return;
    }
    const last = note.context.readings[note.context.readings.length - 1];
    const again = /^(?:again|here|too|reading|number)$/.test(
      note.items[draft.index + 1]?.text ?? "",
    );
    const lead = note.items[draft.index + (again ? 2 : 1)]?.text ?? "";
    const room = roomBeside(note.items, draft.index);
    const own = draft.before.length > 0 || room || /^(?:on|for|at|with)$/.test(lead);
    if (own && draft.points === undefined && last !== undefined) {
      draft.points = pointsByNumber(note, draft, last, drafts);
      if (draft.points !== undefined) draft.count = draft.points.length;
      else {
        subjectsByNumber(note, draft, last, drafts);
        if (draft.subject !== undefined) furtherSubjects(note, draft, last, drafts);
      }
    }
    if (room) {
      const like = left ?? last;
      if (like !== undefined) sameRoom(note, draft, like);
      else draft.gone = true;
      return;
    }
    if (otherThanAir(note, draft, left)) return;
    const there = gaugeBefore(note, draft, left);
    const labelled =
      own &&
      (draft.points !== undefined ||
        draft.subject !== undefined ||
        draft.place !== undefined ||
        draft.grounded);
    if (!labelled && left !== undefined && timed(note, draft)) {
      draft.place ??= left.place;
      draft.points ??= left.points;
      copyDraft(note, draft, left);
    } else if (!labelled) draft.gone = true;
    else if (there !== undefined) copyReading(note, draft, there);
    else if (left !== undefined) copyDraft(note, draft, left);
    else if (last === undefined) draft.gone = true;
    else if (!copyOthers(note, draft, drafts)) copyReading(note, draft, last);
  });
  if (drafts.some((draft) => draft.same)) exceptSaid(drafts);
}
