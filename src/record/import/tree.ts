import type { EquipmentFacts } from "../../model.ts";
import type { ReadRows, RowWord } from "./read-rows.ts";

interface Node {
  readonly line: number;
  readonly tag: string;
  readonly parent: string;
}

const keyOf = (site: unknown, tag: unknown): string =>
  `${String(site ?? "").toLowerCase()}\n${String(tag ?? "").toLowerCase()}`;

/**
 * Looks at who hangs on whom, in the file and in what was taken in before: rows of a circle are
 * refused, a parent that nobody knows is named and its row kept.
 */
export function checkTree(
  read: ReadRows,
  known: readonly EquipmentFacts[],
): ReadRows & { readonly notes: readonly RowWord[] } {
  const nodes = new Map<string, Node>();
  for (const { tag, site, parent } of known) {
    nodes.set(keyOf(site, tag), {
      line: 0,
      tag: tag ?? "",
      parent: parent === undefined ? "" : keyOf(site, parent),
    });
  }
  for (const { line, facts } of read.lines) {
    const parent = facts.parent === undefined ? "" : keyOf(facts.site, facts.parent);
    nodes.set(keyOf(facts.site, facts.tag), { line, tag: String(facts.tag), parent });
  }
  const circles = circlesIn(nodes);
  const notes: RowWord[] = [];
  const bad = [...read.bad];
  const lines = read.lines.filter(({ line, facts }) => {
    const circle = circles.get(keyOf(facts.site, facts.tag));
    if (circle !== undefined) bad.push({ line, reason: circle });
    else if (facts.parent !== undefined && !nodes.has(keyOf(facts.site, facts.parent))) {
      const where = facts.site === undefined ? "" : ` at ${facts.site}`;
      notes.push({
        line,
        reason: `${facts.tag} hangs on ${facts.parent}, and there is no ${facts.parent}${where}; the row is kept, add ${facts.parent} or correct its name`,
      });
    }
    return circle === undefined;
  });
  return { lines, bad: bad.sort((a, b) => a.line - b.line), notes };
}

/** For each unit of a circle the sentence that says so. */
function circlesIn(nodes: ReadonlyMap<string, Node>): ReadonlyMap<string, string> {
  const told = new Map<string, string>();
  const done = new Set<string>();
  for (const start of nodes.keys()) {
    const path: string[] = [];
    let at: string | undefined = start;
    while (at !== undefined && nodes.has(at) && !done.has(at) && !path.includes(at)) {
      path.push(at);
      at = nodes.get(at)?.parent;
    }
    if (at !== undefined && path.includes(at)) {
      const circle = path.slice(path.indexOf(at));
      const says = circleSentence(circle.flatMap((key) => nodes.get(key) ?? []));
      for (const key of circle) told.set(key, says);
    }
    for (const key of path) done.add(key);
  }
  return told;
}

function circleSentence(circle: readonly Node[]): string {
  const tags = [...circle, ...circle.slice(0, 1)].map(({ tag }) => tag).join(" on ");
  const lines = circle.flatMap(({ line }) => (line === 0 ? [] : [line])).sort((a, b) => a - b);
  return circle.length === 1
    ? `parent: ${tags.split(" on ")[0]} hangs on itself; name what feeds it, or leave the cell empty`
    : `parent: a circle, ${tags}; correct the parent on line ${lines.join(" or ")}`;
}
