import type { Entry, NoteFacts } from "./entry.ts";

/** A note with what became of it. */
export interface Standing {
  readonly entry: Entry;
  readonly note: NoteFacts;
  /** where it belongs in time: an edit stands in its original's place */
  readonly instant: number;
  readonly at: string;
  readonly fate: "stands" | "deleted" | "undone" | "edited" | "moved";
  /** the later entry that stands for it, where it was edited */
  readonly by?: Entry;
}

/** Several steps of a message's work look at the same entries, which never change: the last two are kept. */
let last: readonly [entries: readonly Entry[], standing: readonly Standing[]] | undefined;
let before: typeof last;

/** Every note of a job in order of its time, with what later entries did to it. */
export function standingOf(entries: readonly Entry[]): readonly Standing[] {
  if (last?.[0] === entries) return last[1];
  if (before?.[0] === entries) return before[1];
  const standing = standingAnew(entries);
  before = last;
  last = [entries, standing];
  return standing;
}

function standingAnew(entries: readonly Entry[]): readonly Standing[] {
  const deleted = removedIn(entries);
  const moved = new Set<string>();
  const times = new Map<string, string>();
  for (const { facts, message, at } of entries) {
    if (facts.kind === "move") moved.add(facts.message);
    if (facts.kind === "note" && facts.edits === undefined) times.set(message, at);
  }
  const undone = new Set<number>();
  for (const { facts, message } of entries) {
    if (facts.kind === "undo" && !deleted.has(message)) {
      for (const place of facts.places) undone.add(place);
    }
  }
  const newest = newestEdits(entries.filter(({ message }) => !deleted.has(message)));
  const notes = entries.flatMap((entry): readonly Standing[] => {
    const { facts } = entry;
    if (facts.kind !== "note") return [];
    const root = facts.edits ?? entry.message;
    const at = times.get(root) ?? entry.at;
    const last = newest.get(root);
    const fate =
      deleted.has(root) || deleted.has(entry.message)
        ? "deleted"
        : moved.has(root)
          ? "moved"
          : undone.has(entry.place)
            ? "undone"
            : last !== undefined && last !== entry
              ? "edited"
              : "stands";
    const by = fate === "edited" ? last : undefined;
    const base = { entry, note: facts, instant: Date.parse(at), at, fate } as const;
    return [by === undefined ? base : { ...base, by }];
  });
  return notes.sort((a, b) => a.instant - b.instant || compareEntries(a.entry, b.entry));
}

/** Messages that were removed; a removal that was itself removed, as a cross taken off again, removes nothing. */
export function removedIn(entries: readonly Entry[]): Set<string> {
  const removals = entries.flatMap(({ facts, message }) =>
    facts.kind === "delete" ? [{ message, of: facts.message }] : [],
  );
  const all = new Set(removals.map(({ of }) => of));
  return new Set(removals.flatMap(({ message, of }) => (all.has(message) ? [] : [of])));
}

/** For each message that was edited, the entry that stands for it now. */
function newestEdits(entries: readonly Entry[]): ReadonlyMap<string, Entry> {
  const newest = new Map<string, Entry>();
  for (const entry of entries) {
    if (entry.facts.kind !== "note" || entry.facts.edits === undefined) continue;
    const known = newest.get(entry.facts.edits);
    if (known === undefined || compareEntries(known, entry) < 0) {
      newest.set(entry.facts.edits, entry);
    }
  }
  return newest;
}

/** By the platform's time, then by message id: the same order however they arrived. */
export function compareEntries(a: Entry, b: Entry): number {
  const time = Date.parse(a.at) - Date.parse(b.at);
  if (time !== 0) return time;
  return a.message < b.message ? -1 : a.message > b.message ? 1 : a.place - b.place;
}
