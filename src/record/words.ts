/**
 * Facts are kept without a person's words: free text is moved out to a list that stands in the
 * erasable table, and what can be cut again from the message by its spans is left out.
 */

type Json = unknown;

/** Fields whose text is, or may be, a person's own words. */
const freeFields: ReadonlySet<string> = new Set([
  "said",
  "symptom",
  "complaint",
  "about",
  "where",
  "assigned",
  "second",
  "name",
  "asked",
]);

/** What stands in for words that were erased. */
export const erasedText = "[erased]";

export interface Packed {
  /** JSON without words */
  readonly facts: string;
  readonly strings: readonly string[];
}

/** Takes the words out of facts. `text` is the message that they were read from. */
export function packFacts(facts: Json, text: string): Packed {
  const strings: string[] = [];
  const pack = (value: Json, field: string, parent: Json): Json => {
    if (typeof value === "string") {
      if (!freeFields.has(field)) return value;
      if (field === "said" && value === cut(text, spansOf(parent))) return { cut: true };
      strings.push(value);
      return { word: strings.length - 1 };
    }
    if (Array.isArray(value)) return value.map((item) => pack(item, field, value));
    if (isRecord(value)) {
      return Object.fromEntries(
        Object.entries(value).map(([key, item]) => [key, pack(item, key, value)]),
      );
    }
    return value;
  };
  return { facts: JSON.stringify(pack(facts, "", undefined)), strings };
}

/** Puts the words back where they still exist. */
export function unpackFacts(
  facts: Json,
  text: string | undefined,
  strings: readonly string[] | undefined,
): Json {
  const unpack = (value: Json, parent: Json): Json => {
    if (Array.isArray(value)) return value.map((item) => unpack(item, value));
    if (!isRecord(value)) return value;
    if (typeof value.word === "number") return strings?.[value.word] ?? erasedText;
    if (value.cut === true) {
      return text === undefined ? erasedText : cut(text, spansOf(parent));
    }
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => [key, unpack(item, value)]),
    );
  };
  return unpack(facts, undefined);
}

function spansOf(parent: Json): readonly (readonly [number, number])[] {
  if (!isRecord(parent) || !Array.isArray(parent.spans)) return [];
  const spans: (readonly [number, number])[] = [];
  for (const span of parent.spans) {
    if (!Array.isArray(span)) continue;
    const [from, to]: unknown[] = span;
    if (typeof from === "number" && typeof to === "number") spans.push([from, to]);
  }
  return spans;
}

function cut(text: string, spans: readonly (readonly [number, number])[]): string {
  return spans.map(([from, to]) => text.slice(from, to)).join(" ");
}

function isRecord(value: Json): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Facts as they were kept, with the words that they were kept apart from. */
export function unpackWords(
  facts: string,
  spoken: { readonly text: string; readonly strings: string } | undefined,
): unknown {
  const strings: unknown = spoken === undefined ? undefined : JSON.parse(spoken.strings);
  const words = Array.isArray(strings) ? strings.map((one) => String(one)) : undefined;
  return unpackFacts(JSON.parse(facts), spoken?.text, words);
}
