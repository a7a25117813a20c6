import type { JobReading } from "../model.ts";
import { alikeChanges, isChanged } from "./alike-changes.ts";
import { figures } from "./figures.ts";
import { componentName, sentence } from "./wording.ts";

/** Lines that judged the old figures, or went on from that. */
const judged = /\b(?:GOOD|WATCH|BAD|NOT JUDGED)\b|^(?:Next|Likely|Possible|Ruled out|Target)\b/;

/**
 * An earlier reply with what no longer stands of it, so that nobody acts on the old figure: what was
 * read stays, what was concluded from it goes, since the newest reply says what holds.
 */
export function mendedText(
  said: string,
  changed: readonly { readonly old: JobReading; readonly by?: JobReading }[],
): string {
  if (changed.length === 0) return said;
  const gone = changed.filter(({ by }) => by === undefined).map(({ old }) => old);
  const now = alikeChanges(
    changed.flatMap(({ old, by }) =>
      by === undefined || !isChanged(old, by) ? [] : [{ old, by }],
    ),
  ).map((group) => {
    const was = figures(group.map(({ old }) => old));
    const by = group[0]?.by.subject;
    const moved = group[0]?.old.subject !== by && by !== undefined;
    const now = moved ? `of ${componentName(by)}` : figures(group.map((one) => one.by));
    return sentence(`Changed: ${was} is now ${now}`);
  });
  const asked = changed.flatMap(({ by }) => (by?.doubtful === true ? [by] : []));
  if (asked.length > 0) now.push(sentence(`In doubt now: ${figures(asked)}`));
  const lines = gone.length === 0 ? now : [...now, sentence(`No longer stands: ${figures(gone)}`)];
  const kept = said.split("\n").filter((line) => !judged.test(line));
  return [...(kept.length === 0 ? [said] : kept), ...lines].join("\n");
}
