/** A part of the system and the rooms that hang on it directly. */
export interface Node {
  readonly tag: string;
  readonly parent?: string;
  readonly kind?: string;
  readonly places?: readonly string[];
}

/** Parts that together explain the rooms out and none of the fine ones. */
export interface Explanation {
  readonly parts: readonly string[];
  /** rooms under the parts that nobody spoke of */
  readonly unheard: readonly string[];
}

export interface Shared {
  /** best first: one deepest part, what lies above it, else two parts */
  readonly explanations: readonly Explanation[];
  /** rooms said to be out and fine at once */
  readonly contradictions: readonly string[];
  /** rooms that hang on nothing known */
  readonly unplaced: readonly string[];
}

/**
 * What the rooms that are out share: the deepest part over all of them and over no fine room, then
 * the parts above it; where no single part fits, the two that do with the fewest rooms unheard of.
 */
export function sharedBy(
  tree: readonly Node[],
  out: readonly string[],
  fine: readonly string[],
): Shared {
  const contradictions = out.filter((place) => fine.includes(place));
  const known = new Set(tree.flatMap((node) => node.places ?? []));
  const wanted = out.filter((place) => known.has(place) && !contradictions.includes(place));
  const unplaced = out.filter((place) => !known.has(place));
  const covers = new Map(tree.map((node) => [node.tag, placesUnder(tree, node.tag)]));
  const clean = tree.filter(
    ({ tag }) =>
      ![...(covers.get(tag) ?? [])].some(
        (place) => fine.includes(place) && !contradictions.includes(place),
      ),
  );
  const explain = (parts: readonly string[]): Explanation => ({
    parts,
    unheard: [...new Set(parts.flatMap((tag) => [...(covers.get(tag) ?? [])]))].filter(
      (place) => !wanted.includes(place),
    ),
  });
  const holds = (tag: string, place: string): boolean => covers.get(tag)?.has(place) === true;
  if (wanted.length === 0) return { explanations: [], contradictions, unplaced };
  const single = clean
    .filter(({ tag }) => wanted.every((place) => holds(tag, place)))
    .sort((a, b) => depthOf(tree, b.tag) - depthOf(tree, a.tag))
    .map(({ tag }) => explain([tag]));
  const explanations = single.length > 0 ? single : pairs(clean, wanted, holds).map(explain);
  const sorted =
    single.length > 0
      ? explanations
      : [...explanations].sort((a, b) => a.unheard.length - b.unheard.length);
  return { explanations: sorted, contradictions, unplaced };
}

/** Two parts, neither above the other, that need each other to cover all. */
function pairs(
  clean: readonly Node[],
  wanted: readonly string[],
  holds: (tag: string, place: string) => boolean,
): readonly (readonly string[])[] {
  const useful = clean.filter(({ tag }) => wanted.some((place) => holds(tag, place)));
  return useful.flatMap((one, index) =>
    useful
      .slice(index + 1)
      .filter((other) => wanted.every((place) => holds(one.tag, place) || holds(other.tag, place)))
      .map((other) => [one.tag, other.tag]),
  );
}

/** Every room at or below a part; a loop in the office's file ends the walk. */
export function placesUnder(tree: readonly Node[], tag: string): ReadonlySet<string> {
  const places = new Set<string>();
  const seen = new Set<string>();
  const waiting = [tag];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    for (const node of tree) {
      if (node.tag === next) for (const place of node.places ?? []) places.add(place);
      if (node.parent === next) waiting.push(node.tag);
    }
  }
  return places;
}

function depthOf(tree: readonly Node[], tag: string): number {
  const seen = new Set<string>();
  let depth = 0;
  let here: string | undefined = tag;
  while (here !== undefined && !seen.has(here)) {
    seen.add(here);
    here = tree.find((node) => node.tag === here)?.parent;
    depth++;
  }
  return depth;
}
