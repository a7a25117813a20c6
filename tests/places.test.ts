import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Node, placesUnder, sharedBy } from "../src/judge/places.ts";
import { placesSaid } from "../src/judge/places-said.ts";
import { withTold } from "../src/judge/told-tree.ts";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";

const building: readonly Node[] = [
  { tag: "OU-2" },
  { tag: "BB-1", parent: "OU-2" },
  { tag: "BB-2", parent: "OU-2" },
  { tag: "IU-1", parent: "BB-1", places: ["Room 11"] },
  { tag: "IU-2", parent: "BB-1", places: ["Room 12"] },
  { tag: "IU-3", parent: "BB-2", places: ["Map Room"] },
  { tag: "IU-4", parent: "BB-2", places: ["Stacks East"] },
];

describe("rooms as they are said", () => {
  test.each([
    ["11 and 12 warm, Map Room fine", ["Room 11", "Room 12"], ["Map Room"]],
    [
      "Map Room and Stacks East no cooling, others fine",
      ["Map Room", "Stacks East"],
      ["Room 11", "Room 12"],
    ],
    ["room 11 is hot. map room and stacks east ok", ["Room 11"], ["Map Room", "Stacks East"]],
    ["Map Room hot\nMap Room fine", [], ["Map Room"]],
    ["Map Room and Stacks East are both on BB-1, power there 207 V", [], []],
    ["suction 112 psig, 11 of them", [], []],
  ])("%s", (text, out, fine) => {
    const said = placesSaid(text, building);
    expect([...said.out].sort()).toEqual([...out].sort());
    expect([...said.fine].sort()).toEqual([...fine].sort());
  });
});

test("the branch box over both rooms is named, then what lies above it", () => {
  expect(
    sharedBy(building, ["Map Room", "Stacks East"], ["Room 11"]).explanations.map(
      ({ parts }) => parts,
    ),
  ).toEqual([["BB-2"]]);
  expect(
    sharedBy(building, ["Map Room", "Stacks East"], []).explanations.map(({ parts }) => parts),
  ).toEqual([["BB-2"], ["OU-2"]]);
});

test("two parts are named where one does not fit, and a contradiction is told", () => {
  const shared = sharedBy(
    building,
    ["Room 11", "Map Room"],
    ["Room 12", "Stacks East", "Map Room"],
  );
  expect(shared.contradictions).toEqual(["Map Room"]);
  const two = sharedBy(building, ["Room 11", "Map Room"], ["Room 12", "Stacks East"]);
  expect(two.explanations[0]?.parts).toEqual(["IU-1", "IU-3"]);
});

/** A random tree: each part hangs on an earlier one, each place on a random part. */
const trees = fc
  .record({
    parents: fc.array(fc.nat(), { minLength: 1, maxLength: 9 }),
    places: fc.array(fc.nat(), { minLength: 2, maxLength: 10 }),
    states: fc.array(fc.constantFrom("out", "fine", "unheard"), { minLength: 10, maxLength: 10 }),
  })
  .map(({ parents, places, states }) => {
    const names = places.map((_, index) => `place ${index}`);
    const tree: Node[] = parents.map((parent, index) => ({
      tag: `part ${index}`,
      ...(index === 0 ? {} : { parent: `part ${parent % index}` }),
      places: names.filter((_, place) => (places[place] ?? 0) % parents.length === index),
    }));
    const of = (state: string): readonly string[] =>
      names.filter((_, index) => states[index] === state);
    return { tree, out: of("out"), fine: of("fine") };
  });

/** By brute force: a part fits when it is over all rooms out and no fine one. */
function fits(
  tree: readonly Node[],
  parts: readonly string[],
  out: readonly string[],
  fine: readonly string[],
): boolean {
  const under = new Set(parts.flatMap((tag) => [...placesUnder(tree, tag)]));
  return out.every((place) => under.has(place)) && !fine.some((place) => under.has(place));
}

test("on random trees the answer covers all rooms out, no fine room, and nothing deeper does", () => {
  fc.assert(
    fc.property(trees, ({ tree, out, fine }) => {
      fc.pre(out.length > 0);
      const [best] = sharedBy(tree, out, fine).explanations;
      const singles = tree.filter(({ tag }) => fits(tree, [tag], out, fine)).map(({ tag }) => tag);
      if (singles.length > 0) {
        expect(best?.parts).toHaveLength(1);
        const tag = best?.parts[0] ?? "";
        expect(singles).toContain(tag);
        const below = tree.filter((node) => node.parent === tag).map((node) => node.tag);
        expect(below.some((one) => fits(tree, [one], out, fine))).toBe(false);
        return;
      }
      const tags = tree.map(({ tag }) => tag);
      const pairs = tags.flatMap((one, index) =>
        tags.slice(index + 1).map((other) => [one, other]),
      );
      const fitting = pairs.filter((pair) => fits(tree, pair, out, fine));
      if (fitting.length === 0) expect(best).toBeUndefined();
      else {
        expect(best !== undefined && fits(tree, best.parts, out, fine)).toBe(true);
        const unheard = (pair: readonly string[]): number =>
          new Set(pair.flatMap((tag) => [...placesUnder(tree, tag)])).size;
        expect(unheard(best?.parts ?? [])).toBe(Math.min(...fitting.map(unheard)));
      }
    }),
    { numRuns: 2000, seed: 12 },
  );
});

describe("a tree told in chat", () => {
  const nodesOf = (text: string) => {
    const { statements, readings, unread } = read(text, startContext("us"));
    const nodes = statements.flatMap((one) => (one.kind === "tree" ? one.nodes : []));
    return { nodes, readings: readings.length, unread };
  };
  const rooms = (from: number, to: number): string[] =>
    Array.from({ length: to - from + 1 }, (_, step) => `Room ${from + step}`);

  test.each([
    [
      "ou3 feeds branch box 1 and 2, box 2 serves rooms 204 to 210",
      [
        { tag: "branch box 1", parent: "OU-3" },
        { tag: "branch box 2", parent: "OU-3" },
        { tag: "branch box 2", places: rooms(204, 210) },
      ],
    ],
    [
      "rooms 201 202 203 hang on BB-A off OU-1",
      [
        { tag: "BB-A", places: rooms(201, 203) },
        { tag: "BB-A", parent: "OU-1" },
      ],
    ],
    [
      "branch box one and two are on ou 3",
      [
        { tag: "branch box 1", parent: "OU-3" },
        { tag: "branch box 2", parent: "OU-3" },
      ],
    ],
    ["kitchen and bar are on port 3 of bb-1", [{ tag: "BB-1 port 3", places: ["kitchen", "bar"] }]],
    [
      "BB-1: rooms 11 12 14, BB-2: room 15 and lobby",
      [
        { tag: "BB-1", places: ["Room 11", "Room 12", "Room 14"] },
        { tag: "BB-2", places: ["Room 15", "lobby"] },
      ],
    ],
    [
      "rooms 11 to 13 are warm, they hang on bb-1, which is off ou-2",
      [
        { tag: "BB-1", places: rooms(11, 13) },
        { tag: "BB-1", parent: "OU-2" },
      ],
    ],
  ])("%s", (text, nodes) => {
    expect(nodesOf(text)).toEqual({ nodes, readings: 0, unread: [] });
  });

  test.each([
    "bb-1 has 208 on L1 L2",
    "comp 1 on rtu-2 draws 14 amps",
    "lock on ou-3 disconnect",
    "power off box 1",
    "room 15 is not on bb-1",
    "what is on box 2?",
    "AC-5 goes to 240 psi",
    "ou-3 has 476 on all three",
  ])("tells no tree: %s", (text) => {
    expect(nodesOf(text).nodes).toEqual([]);
  });

  test("adds to the office's file, meets its names, and says where the two differ", () => {
    const { tree, disputes } = withTold(building, [
      { tag: "branch box 2", places: ["12", "Attic"] },
      { tag: "BB-2", parent: "outdoor unit 2" },
      { tag: "BB-3", parent: "OU-2", places: ["Cellar"] },
      { tag: "OU-2", parent: "BB-3" },
    ]);
    expect(disputes).toEqual([
      { what: "OU-2", told: "BB-3", filed: undefined },
      { what: "Room 12", told: "BB-2", filed: "IU-2 off BB-1" },
    ]);
    expect([...placesUnder(tree, "BB-2")].sort()).toEqual(["Attic", "Map Room", "Stacks East"]);
    expect([...placesUnder(tree, "OU-2")]).toContain("Cellar");
  });

  test("of two words about one room the last counts, and a nearer part is no contradiction", () => {
    const told = [
      { tag: "BB-1", places: ["Room 11"] },
      { tag: "IU-9", parent: "BB-1", places: ["Attic"] },
      { tag: "IU-3", places: ["Attic"] },
    ];
    const { tree, disputes } = withTold(building, told);
    expect(disputes).toEqual([]);
    expect(placesUnder(tree, "IU-3")).toEqual(new Set(["Map Room", "Attic"]));
    expect(placesUnder(tree, "IU-9")).toEqual(new Set());
  });

  test("told whole, any tree gives the same answer as the same tree in the office's file", () => {
    fc.assert(
      fc.property(trees, ({ tree, out, fine }) => {
        const told = withTold([], tree);
        const sets = (nodes: readonly Node[]) =>
          sharedBy(nodes, out, fine)
            .explanations.map(({ parts }) => [...parts].sort().join())
            .sort();
        expect(told.disputes).toEqual([]);
        expect(sets(told.tree)).toEqual(sets(tree));
      }),
    );
  });
});
