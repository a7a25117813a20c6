import type { JobReading } from "../model.ts";
import { figureWords } from "./figure-words.ts";

interface Change {
  readonly old: JobReading;
  readonly by: JobReading;
}

/** Changes from one figure to one other, on several leads, are told in one breath. */
export function alikeChanges(changes: readonly Change[]): readonly (readonly Change[])[] {
  const groups = new Map<string, Change[]>();
  for (const change of changes) {
    const { old, by } = change;
    const key = [old.quantity, old.subject, figureOf(old), figureOf(by)].join("|");
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [change]);
    else group.push(change);
  }
  return [...groups.values()];
}

/** "0.4 megohm" */
export function figureOf(reading: JobReading): string {
  const { number, unit } = figureWords(reading);
  return unit === "" ? number : `${number} ${unit}`;
}
