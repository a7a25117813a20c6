import type { Reading } from "../model.ts";
import { type ReadingPhrase, readingPhrase } from "./reading-phrase.ts";
import { sameTag } from "./wording.ts";

/** Readings of one component, said in one breath. */
export interface ComponentFigures {
  /** "compressor 1"; undefined where the message named none */
  readonly subject: string | undefined;
  readonly text: string;
}

/** Each component's readings in the order that they were said. */
export function figuresByComponent(
  readings: readonly Reading[],
  unit: string | null,
): readonly ComponentFigures[] {
  const groups = new Map<string | undefined, Reading[]>();
  for (const reading of readings) {
    const subject = sameName(reading.subject, unit) ? undefined : reading.subject;
    const group = groups.get(subject);
    if (group === undefined) groups.set(subject, [reading]);
    else group.push(reading);
  }
  return [...groups].map(([subject, group]) => ({ subject, text: figures(group) }));
}

function sameName(subject: string | undefined, unit: string | null): boolean {
  return subject !== undefined && unit !== null && sameTag(subject, unit);
}

/** "lead 1 84, lead 2 91 megohm to ground at 500 V; suction 101 psig, 70 F". */
export function figures(readings: readonly Reading[]): string {
  return clusters(readings.map(readingPhrase)).map(clusterText).join("; ");
}

/** Puts phrases together that share everything but label and number, or their place. */
function clusters(phrases: readonly ReadingPhrase[]): readonly (readonly ReadingPhrase[])[] {
  const made: ReadingPhrase[][] = [];
  for (const phrase of phrases) {
    const home = made.find((cluster) => belongs(cluster, phrase));
    if (home === undefined) made.push([phrase]);
    else home.push(phrase);
  }
  return made;
}

function belongs(cluster: readonly ReadingPhrase[], phrase: ReadingPhrase): boolean {
  const first = cluster[0];
  if (first === undefined) return false;
  if (phrase.place !== undefined && phrase.label === "") {
    return phrase.place === first.place && phrase.head === first.head && first.label === "";
  }
  return shared(first) === shared(phrase);
}

function shared(phrase: ReadingPhrase): string {
  // the second drop of a pair has no point of its own: "L1 0.38, 0.39"
  const labelled = phrase.head === "diode" || phrase.label === "";
  return `${phrase.head}|${phrase.unit}|${phrase.tail}|${phrase.place ?? ""}|${labelled}`;
}

function clusterText(cluster: readonly ReadingPhrase[]): string {
  const first = cluster[0];
  if (first === undefined) return "";
  const numbers = new Set(cluster.map((p) => p.number));
  const labels = joinedLabels(cluster.map((p) => p.label));
  const alike = numbers.size === 1 && cluster.every((p) => p.label !== "");
  const items = alike
    ? `${labels}${cluster.length > 1 ? " each" : ""} ${first.number}`
    : cluster.map((p, i) => itemText(p, cluster[i + 1])).join(", ");
  const unit = alike ? first.unit : (cluster[cluster.length - 1]?.unit ?? "");
  return [first.head, items, unit, first.tail].filter((w) => w !== "").join(" ");
}

/** A unit is said once, at the end of those that share it. */
function itemText(phrase: ReadingPhrase, next: ReadingPhrase | undefined): string {
  const unit = next === undefined || next.unit === phrase.unit ? "" : phrase.unit;
  return [phrase.label, phrase.number, unit].filter((w) => w !== "").join(" ");
}

/** "leads 1, 2, 3" for "lead 1", "lead 2", "lead 3". */
function joinedLabels(labels: readonly string[]): string {
  const split = labels.map((l) => /^([a-z]+) (\S+)$/.exec(l));
  const word = split[0]?.[1];
  const same = word !== undefined && labels.length > 1 && split.every((s) => s?.[1] === word);
  return same ? `${word}s ${split.map((s) => s?.[2] ?? "").join(", ")}` : labels.join(", ");
}
