import type { Case, Finding } from "../../model.ts";
import type { Check } from "../check.ts";
import { type Node, sharedBy } from "../places.ts";
import { knownPlace, type PlacesSaid, placesSaid, tiesSaid } from "../places-said.ts";
import { type Scene, sceneOf } from "../scene.ts";
import { type Dispute, type ToldTree, withTold } from "../told-tree.ts";

const basis = "first principles";

/** What the complaining rooms share: one part that feeds them all and no fine room. */
export const places: Check = {
  name: "places",
  examples: [
    {
      level: "watch",
      notes: ["201 and 202 are warm, 203 is fine"],
      site: {
        tree: [
          { tag: "ODU-1", kind: "outdoor unit" },
          { tag: "BB-1", kind: "branch box", parent: "ODU-1", places: ["201", "202"] },
          { tag: "BB-2", kind: "branch box", parent: "ODU-1", places: ["203"] },
        ],
      },
    },
  ],
  signs: ["shared:branch", "shared:indoor", "shared:outdoor"],
  judge: (scene) => {
    const { tree, disputes, out, fine } = toldPlaces(scene);
    if (tree.length === 0) return [];
    const contrary = disputes.map(disputed);
    return out.length < 2 && fine.length === 0
      ? contrary
      : [...contrary, ...findingsFor(tree, out, fine)];
  },
};

/** The tree as it is known, and which of its rooms were told as out and as fine. */
function toldPlaces(scene: Scene): ToldTree & PlacesSaid {
  const told = scene.complaints.filter(({ places: some }) => some.length > 0);
  const rooms = told.flatMap((one) => [...one.places, ...one.fine]);
  const words = wordsBeside(scene);
  const { tree, disputes } = treeOf(scene, { words, rooms });
  if (tree.length === 0) return { tree, disputes, out: [], fine: [] };
  const said = placesSaid(words, tree);
  const known = tree.flatMap((node) => node.places ?? []);
  const named = (names: readonly string[]): readonly string[] =>
    names.flatMap((name) => knownPlace(known, name) ?? []);
  return {
    tree,
    disputes,
    out: [...new Set([...said.out, ...named(told.flatMap((one) => one.places))])],
    fine: [...new Set([...said.fine, ...named(told.flatMap((one) => one.fine))])],
  };
}

/** Which rooms were told as out and which as fine, where the site has a tree. */
export function roomsTold(whole: Case): PlacesSaid {
  const { out, fine } = toldPlaces(sceneOf(whole));
  return { out, fine };
}

/** The notes' words without those that tell the tree: a room named there is not out. */
function wordsBeside({ notes }: Scene): string {
  return notes
    .map(({ text = "", statements }) =>
      statements
        .flatMap((one) => (one.kind === "tree" ? one.spans : []))
        .reduce(
          (rest, [from, to]) => rest.slice(0, from) + ";".repeat(to - from) + rest.slice(to),
          text,
        )
        .toLowerCase(),
    )
    .join("\n");
}

/** The office's tree with what was told of it, on this job and on others of the site. */
function treeOf(
  { site, notes }: Scene,
  { words, rooms }: { readonly words: string; readonly rooms: readonly string[] },
): ToldTree {
  const filed = site.tree ?? [];
  const before = withTold(filed, site.told ?? []).tree;
  const told = notes.flatMap(({ statements }) =>
    statements.flatMap((one) => (one.kind === "tree" ? one.nodes : [])),
  );
  const now = withTold(filed, [...(site.told ?? []), ...told]);
  const mine = withTold(before, told).disputes;
  const disputes = now.disputes.filter(({ what }) => mine.some((one) => one.what === what));
  const loose = rooms.length === 0 ? [] : tiesSaid(words, now.tree, rooms);
  return { tree: withTold(now.tree, loose).tree, disputes };
}

function disputed({ what, told, filed }: Dispute): Finding {
  const circle = filed === undefined;
  return {
    about: what,
    check: "places",
    level: "unknown",
    says: circle
      ? `${what} is told on ${told}, which hangs on it already: a circle, so it is left out`
      : `${what} is told on ${told}; the office's file has it on ${filed}, and that counts until it is changed`,
    brief: circle ? `${what}: a circle` : `${what}: ${told} or ${filed}`,
    values: {},
    basis,
    missing: circle
      ? `what ${what} hangs on`
      : `which holds for ${what}: ${told} as told, or ${filed} as the office's file has it`,
  };
}

function findingsFor(
  tree: readonly Node[],
  out: readonly string[],
  fine: readonly string[],
): readonly Finding[] {
  const { explanations, contradictions } = sharedBy(tree, out, fine);
  const [best] = explanations;
  const rooms = listed(out);
  const again = contradictions.map(
    (place): Finding => ({
      about: place,
      check: "places",
      level: "unknown",
      says: `${place} is told as out and as fine`,
      brief: `${place} told out and fine`,
      values: {},
      basis,
      missing: `how ${place} is now`,
    }),
  );
  if (out.length === 0) return again;
  if (best === undefined) {
    return [
      ...again,
      {
        about: "system",
        check: "places",
        level: "unknown",
        says: `No one part and no two feed ${rooms} without a fine room among them`,
        brief: "no shared part fits",
        values: {},
        basis,
        missing: "which rooms are out and which are fine",
      },
    ];
  }
  const parts = listed(best.parts);
  const alone = best.parts.length === 1;
  const says = alone
    ? `${rooms} ${out.length > 1 ? "all hang" : "hangs"} on ${parts}, and no fine room does`
    : `${rooms} hang on ${parts}, and no single part fits without a fine room`;
  const about = best.parts[0] ?? "system";
  return [
    ...again,
    {
      about,
      check: "places",
      level: "watch",
      says,
      brief: `start at ${parts}`,
      values: {},
      basis,
      signs: alone && out.length > 1 ? signsOf(tree, about) : [],
    },
  ];
}

/** What kind of part the rooms share, by its name in the tree; none where that is not known. */
function signsOf(tree: readonly Node[], tag: string): readonly string[] {
  const node = tree.find((one) => one.tag === tag);
  const words = `${node?.kind ?? ""} ${tag}`.toLowerCase();
  if (/branch|port|\bbb\b|^ ?bb-?\d|\bbs\b|\bbc\b|distribution/.test(words))
    return ["shared:branch"];
  if (/outdoor|condens|compressor|rooftop|chiller|\bou\b|\bou-?\d|\brtu/.test(words))
    return ["shared:outdoor"];
  return /indoor|cassette|air handler|fan coil|\bah\b|\bah-?\d|\biu/.test(words)
    ? ["shared:indoor"]
    : [];
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}
