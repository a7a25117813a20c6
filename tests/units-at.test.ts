import { expect, test } from "vitest";
import type { EquipmentFacts } from "../src/model.ts";
import { namesIn } from "../src/record/names.ts";
import { unitsAt } from "../src/record/units-at.ts";

const list: readonly EquipmentFacts[] = [
  { tag: "RTU-1", site: "Alder Wharf", places: ["map room"] },
  { tag: "RTU-1", site: "Birch Mill", drive: "line" },
  { tag: "rtu 1", site: "Birch Mill", drive: "inverter" },
  { site: "Birch Mill" },
  { tag: "RTU-9" },
];

test("a site's units stand in the order of the list, the first of a tag counts", () => {
  expect(unitsAt(list, "Birch Mill").all).toEqual(list.slice(1, 4));
  expect(unitsAt(list, "Birch Mill").byTag.get("rtu1")).toBe(list[1]);
  expect(unitsAt(list, "Alder Wharf").byTag.get("rtu1")).toBe(list[0]);
});

test("where no site is known, or none like it, there are no units", () => {
  for (const site of [null, undefined, "Cedar Depot"]) expect(unitsAt(list, site).all).toEqual([]);
});

test("an import brings another list, and what it says counts at once", () => {
  const world = (equipment: readonly EquipmentFacts[]) => ({ sites: [], equipment });
  expect(namesIn("map room is hot", world(list)).places).toEqual(["map room"]);
  const next: readonly EquipmentFacts[] = [
    { tag: "RTU-1", site: "Birch Mill", drive: "inverter", places: ["dye room"] },
  ];
  expect(unitsAt(next, "Birch Mill").byTag.get("rtu1")?.drive).toBe("inverter");
  expect(unitsAt(next, "Alder Wharf").all).toEqual([]);
  expect(namesIn("map room and dye room hot", world(next)).places).toEqual(["dye room"]);
});
