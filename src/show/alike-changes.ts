import type { JobReading } from "../model.ts";
import { figureWords } from "./figure-words.ts";
import { figures } from "./figures.ts";
import { componentName } from "./wording.ts";

interface Change {
  readonly old: JobReading;
  readonly by: JobReading;
}

/** Changes from one figure to one other, on several leads, are told in one breath. */
export function alikeChanges(changes: readonly Change[]): readonly (readonly Change[])[] {
  const groups = new Map<string, Change[]>();
  for (const change of changes) {
    const { old, by } = change;
    const owner = old.subject === by.subject ? [figureOf(old), figureOf(by)] : [by.subject];
    const key = [owner.length > 1 ? old.quantity : "", old.subject, ...owner].join("|");
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [change]);
    else group.push(change);
  }
  return [...groups.values()];
}

/** Whether anything changed that is said back: the figure, its points and place, whose it is. */
export function isChanged(old: JobReading, by: JobReading): boolean {
  return figures([old]) !== figures([by]) || old.subject !== by.subject;
}

/** "0.4 megohm" where the figure was wrong, "lead 2 84 megohm" where its name was, "comp 1" its owner. */
export function wasText(changes: readonly Change[]): string {
  const [first] = changes;
  if (first === undefined) return "";
  const { old, by } = first;
  if (old.subject !== by.subject)
    return old.subject === undefined ? "filed under no component" : componentName(old.subject);
  if (figureOf(old) !== figureOf(by)) return figureOf(old);
  return figures(changes.map(({ old: one }) => one));
}

/** "0.4 megohm" */
export function figureOf(reading: JobReading): string {
  const { number, unit } = figureWords(reading);
  return unit === "" ? number : `${number} ${unit}`;
}
