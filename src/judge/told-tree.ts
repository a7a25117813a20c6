import { knownPart } from "./part-name.ts";
import type { Node } from "./places.ts";
import { knownPlace } from "./places-said.ts";

/** Something that hangs elsewhere by the office's file than by what was told. */
export interface Dispute {
  readonly what: string;
  readonly told: string;
  /** what it hangs on by the file; undefined where what was told goes round in a circle */
  readonly filed: string | undefined;
}

export interface ToldTree {
  readonly tree: readonly Node[];
  readonly disputes: readonly Dispute[];
}

/** A room or a part and what it hangs on. */
interface Hold {
  readonly what: string;
  readonly on: string;
  readonly room: boolean;
}

/**
 * The office's tree with what was told on the roof: told parts and rooms are added, a nearer part is
 * taken for a farther one above it, and of two words about one thing the last one counts. Where the
 * office's file says otherwise it stays as filed and the dispute is told.
 */
export function withTold(filed: readonly Node[], told: readonly Node[]): ToldTree {
  const holds = lastHolds(filed, told);
  let tree: readonly Node[] = filed;
  const disputes: Dispute[] = [];
  // parts first: which part lies above which decides about rooms
  for (const hold of [...holds].sort((a, b) => Number(a.room) - Number(b.room))) {
    const known = onWhat(tree, hold);
    const agrees = known === hold.on || (known !== undefined && liesOver(tree, hold.on, known));
    if (agrees && (hold.room || known !== undefined)) continue;
    const loops = !hold.room && liesOver(tree, hold.what, hold.on);
    const nearer = known === undefined || liesOver(tree, known, hold.on);
    if (nearer && !loops) tree = hang(tree, hold);
    else
      disputes.push({
        what: hold.what,
        told: hold.on,
        filed: loops ? undefined : pathOf(tree, known),
      });
  }
  return { tree, disputes };
}

/** What each room and part was last told to hang on, by the names that are known. */
function lastHolds(filed: readonly Node[], told: readonly Node[]): readonly Hold[] {
  const tags = filed.map(({ tag }) => tag);
  const rooms = filed.flatMap((node) => node.places ?? []);
  const tagOf = (said: string): string => {
    const known = knownPart(tags, said);
    if (known === undefined) tags.push(said);
    return known ?? said;
  };
  const roomOf = (said: string): string => {
    const known = knownPlace(rooms, said);
    if (known === undefined) rooms.push(said);
    return known ?? said;
  };
  const holds = new Map<string, Hold>();
  for (const node of told) {
    const tag = tagOf(node.tag);
    if (node.parent !== undefined)
      holds.set(`part ${tag}`, { what: tag, on: tagOf(node.parent), room: false });
    for (const place of node.places ?? []) {
      const what = roomOf(place);
      holds.set(`room ${what}`, { what, on: tag, room: true });
    }
  }
  return [...holds.values()];
}

function onWhat(tree: readonly Node[], { what, room }: Hold): string | undefined {
  return room
    ? tree.find((node) => node.places?.includes(what))?.tag
    : tree.find((node) => node.tag === what && node.parent !== undefined)?.parent;
}

/** "IU-2 off BB-1". */
function pathOf(tree: readonly Node[], tag: string | undefined): string {
  const above = tree.find((node) => node.tag === tag)?.parent;
  return above === undefined ? (tag ?? "nothing") : `${tag} off ${above}`;
}

/** Whether one part is the other or lies above it. */
function liesOver(tree: readonly Node[], above: string, below: string): boolean {
  const seen = new Set<string>();
  let here: string | undefined = below;
  while (here !== undefined && !seen.has(here)) {
    if (here === above) return true;
    seen.add(here);
    const tag: string = here;
    here = tree.find((node) => node.tag === tag && node.parent !== undefined)?.parent;
  }
  return false;
}

function hang(tree: readonly Node[], { what, on, room }: Hold): readonly Node[] {
  const has = (tag: string): boolean => tree.some((node) => node.tag === tag);
  const whole = has(on) ? tree : [...tree, { tag: on }];
  if (!room) {
    const node = whole.find(({ tag }) => tag === what);
    return node === undefined
      ? [...whole, { tag: what, parent: on }]
      : whole.map((one) => (one === node ? { ...one, parent: on } : one));
  }
  return whole.map((node) => {
    const rest = (node.places ?? []).filter((place) => place !== what);
    const places = node.tag === on ? [...rest, what] : rest;
    return places.length === 0 && node.places === undefined ? node : { ...node, places };
  });
}
