import type { JobReading, ReplyInput } from "../model.ts";
import { alikeChanges, figureOf, isChanged, wasText } from "./alike-changes.ts";
import { figures, figuresByComponent } from "./figures.ts";
import { remarkText } from "./remark.ts";
import { componentName, listed, sameTag, sentence, unitName } from "./wording.ts";

/** At most so many lines of figures; a longer list runs on in the last line. */
const figureLines = 5;

/** The lines that say back what was filed, unit and component first; none where nothing was. */
export function readBack(input: ReplyInput): readonly string[] {
  const remarks = remarkText(input);
  const components = figuresByComponent(newReadings(input), input.job?.equipment ?? null);
  const changes = changeText(input);
  const lines = components.map(({ subject, text }) => ({ subject, text }));
  if (changes !== "")
    lines.unshift({ subject: changedSubject(input), text: `changed: ${changes}` });
  if (remarks !== "" && lines.length === 0) {
    lines.push({ subject: undefined, text: `filed, ${remarks}` });
  }
  return folded(lines.map((line) => line)).map((line, index) => headed(input, line, index));
}

interface Line {
  readonly subject: string | undefined;
  readonly text: string;
}

function folded(lines: readonly Line[]): readonly Line[] {
  if (lines.length <= figureLines) return lines;
  const rest = lines.slice(figureLines - 1);
  const text = rest.map((l) => (l.subject ? `${componentName(l.subject)} ${l.text}` : l.text));
  return [...lines.slice(0, figureLines - 1), { subject: undefined, text: text.join("; ") }];
}

function headed(input: ReplyInput, line: Line, index: number): string {
  const unit = index === 0 && input.job !== undefined ? unitName(input.job) : "";
  const component = line.subject === undefined ? "" : componentName(line.subject);
  const head = [unit, component].filter((w) => w !== "").join(" ");
  const changed = line.text.startsWith("changed: ") && head !== "";
  if (changed) return sentence(`${head}, ${line.text}`);
  return sentence(head === "" ? line.text : `${head}: ${line.text}`);
}

/** What the message measured anew: not what replaced an older value, nor what is in doubt. */
export function newReadings(input: ReplyInput): readonly JobReading[] {
  // an edit that leaves a figure as it was says it again: its answer takes the old one's place
  const replacing = new Set(
    input.replaced.filter(({ old, by }) => changes(old, by)).map(({ by }) => by?.id),
  );
  return [...input.released, ...input.readings, ...input.confirmed].filter(
    (r) => !replacing.has(r.id) && (r.doubtful !== true || input.confirmed.includes(r)),
  );
}

function changedSubject(input: ReplyInput): string | undefined {
  const by = input.replaced.find((r) => r.by !== undefined && changes(r.old, r.by))?.by;
  const unit = input.job?.equipment;
  const own = by?.subject !== undefined && unit != null && sameTag(by.subject, unit);
  return own ? undefined : by?.subject;
}

function changeText(input: ReplyInput): string {
  const told = input.replaced.flatMap(({ old, by }) =>
    by === undefined || !changes(old, by) ? [] : [{ old, by }],
  );
  return alikeChanges(told)
    .map((group) => {
      const now = [...new Set(group.map(({ by }) => by))];
      // several that one stands for are named each: a total
      const was = now.length === 1 && group.length > 1 ? totalled(group) : wasText(group);
      return `${figures(now)}, was ${was}`;
    })
    .join("; ");
}

/** "3 lb and 4 lb": what a total stands for. */
const totalled = (group: readonly { readonly old: JobReading }[]): string =>
  listed(group.map(({ old }) => figureOf(old)));

function changes(old: JobReading, by: JobReading | undefined): boolean {
  return by === undefined || isChanged(old, by);
}
