import type { Finding } from "../../model.ts";
import type { Refrigerant } from "../../physics/refrigerant.ts";
import {
  exemptChargeKg,
  institutionalShare,
  roomConcentrationKgM3,
} from "../../physics/room-concentration.ts";
import { refrigerantFacts } from "../../physics/tables/refrigerant-facts.ts";
import type { Check } from "../check.ts";
import { refrigerantOf } from "../circuit.ts";
import { type Figures, figuresOf } from "../figures.ts";
import type { Scene } from "../scene.ts";

const institutional =
  /institution|hospital|nursing|prison|jail|detention|day ?care|asylum|care home/i;

/** The whole charge of the circuit in its smallest room, against the concentration limit. */
export const roomConcentration: Check = {
  name: "room_concentration",
  examples: [
    {
      level: "good",
      notes: ["piping checked"],
      equipment: { refrigerant: "R-410A", charge_kg: 10 },
      site: { smallest_room_m3: 40, rules: "ashrae" },
    },
    {
      level: "bad",
      notes: ["piping checked"],
      equipment: { refrigerant: "R-410A", charge_kg: 22 },
      site: { smallest_room_m3: 40, rules: "ashrae" },
    },
  ],
  signs: [],
  judge: (scene) => {
    const roomM3 = scene.site.smallest_room_m3;
    if (roomM3 === undefined) return [];
    const chargeKg = scene.facts.charge_kg;
    const refrigerant = refrigerantOf(scene);
    if (chargeKg === undefined) return [unknown("the whole charge of the circuit")];
    if (refrigerant === undefined) return [unknown("the refrigerant")];
    const concentration = roomConcentrationKgM3(chargeKg, roomM3);
    if (concentration === undefined) return [unknown("the room's volume")];
    return [finding({ concentration, chargeKg, roomM3, refrigerant }, scene)];
  },
};

interface Room {
  readonly concentration: number;
  readonly chargeKg: number;
  readonly roomM3: number;
  readonly refrigerant: Refrigerant;
}

interface Limit {
  readonly kgM3: number;
  readonly basis: string;
  readonly words: string;
}

function limitOf(refrigerant: Refrigerant, scene: Scene): Limit {
  const facts = refrigerantFacts[refrigerant];
  if (scene.site.rules === "iso_en" && facts.practicalLimitKgM3 !== undefined)
    return { kgM3: facts.practicalLimitKgM3, basis: "EN 378", words: "practical limit" };
  const half = institutional.test(scene.site.occupancy ?? scene.site.use ?? "");
  return {
    kgM3: facts.limitKgM3 * (half ? institutionalShare : 1),
    basis: scene.site.rules === "iso_en" ? "ISO 817" : "ASHRAE 15/34",
    words: half ? "limit, halved for this occupancy," : "limit",
  };
}

function finding(room: Room, scene: Scene): Finding {
  const figures = figuresOf(scene);
  const limit = limitOf(room.refrigerant, scene);
  const over = room.concentration > limit.kgM3;
  const exempt =
    refrigerantFacts[room.refrigerant].safety === "A1" && room.chargeKg <= exemptChargeKg;
  return {
    about: "smallest room",
    check: "room_concentration",
    level: over && !exempt ? "bad" : "good",
    says: `${figures.mass(room.chargeKg)} of ${room.refrigerant} in ${figures.volume(room.roomM3)} makes ${figures.concentration(room.concentration)}, ${over ? "over" : "under"} the ${limit.words} of ${figures.concentration(limit.kgM3)}${exempt ? exemptWords : over ? overWords(room, limit, figures) : ""}`,
    brief: `${over ? "over" : "under"} the room limit`,
    values: { room_concentration_kg_m3: room.concentration },
    basis: limit.basis,
    source:
      "ASHRAE 34-2022 concentration limits, ASHRAE 15-2022 7.2 and 7.3 (section numbers from memory); EN 378-1 practical limits (from memory)",
  };
}

const exemptWords =
  "; so small a charge of this class is commonly exempt where installed as listed";

function overWords(room: Room, limit: Limit, figures: Figures): string {
  return `; it would take ${figures.volume(room.chargeKg / limit.kgM3)}, or a lasting opening to the next room, less charge, or detection and ventilation as the code has it`;
}

function unknown(missing: string): Finding {
  return {
    about: "smallest room",
    check: "room_concentration",
    level: "unknown",
    says: `The smallest room can't be held against its limit without ${missing}`,
    brief: `room check needs ${missing}`,
    values: {},
    basis: "ASHRAE 15/34",
    missing,
  };
}
