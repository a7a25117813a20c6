import type { Statement } from "../model.ts";
import { listed } from "./wording.ts";

type Tree = Extract<Statement, { kind: "tree" }>;

/** What was told of the tree: "branch box 1 and branch box 2 on OU-3; Rooms 204 to 210 on branch box 2". */
export function treeText({ nodes }: Tree): string {
  const feeders = [...new Set(nodes.map(({ tag, parent }) => parent ?? tag))];
  return feeders
    .flatMap((feeder) => {
      const parts = nodes.flatMap(({ tag, parent }) => (parent === feeder ? [tag] : []));
      const rooms = nodes.flatMap(({ tag, places = [] }) => (tag === feeder ? places : []));
      const fed = [...parts, ...roomWords(rooms)];
      return fed.length === 0 ? [] : [`${listed(fed)} on ${feeder}`];
    })
    .join("; ");
}

/** At least so many rooms in a row are said by the first and the last. */
const shortestRow = 3;

/** "Rooms 204 to 210" for rooms that follow one another. */
function roomWords(rooms: readonly string[]): readonly string[] {
  const rows: string[][] = [];
  for (const room of rooms) {
    const row = rows[rows.length - 1];
    const last = row?.[row.length - 1];
    if (row !== undefined && last !== undefined && isNext(last, room)) row.push(room);
    else rows.push([room]);
  }
  return rows.flatMap((row) => {
    const [first = "", last = ""] = [row[0], row[row.length - 1]];
    if (row.length < shortestRow) return row;
    return [`${first.replace(/ (?=\d+$)/, "s ")} to ${/\d+$/.exec(last)?.[0] ?? last}`];
  });
}

function isNext(one: string, other: string): boolean {
  const [a, b] = [/^(.* )(\d+)$/.exec(one), /^(.* )(\d+)$/.exec(other)];
  return a !== null && b !== null && a[1] === b[1] && Number(b[2]) === Number(a[2]) + 1;
}
