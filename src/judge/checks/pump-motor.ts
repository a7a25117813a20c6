import type { Finding, Reading } from "../../model.ts";
import { currentUnbalanceLimit, unbalancePercent } from "../../physics/unbalance.ts";
import { numberOf, numbersOf, ofQuantity, setsOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed, plain } from "../words.ts";

/** Over the plate: the service factor of an open motor, and what no service factor covers. Source: NEMA MG 1 12.51 (1.15, from memory); the second common practice, no source. */
const overPlate = { watch: 1.15, bad: 1.3 } as const;

/** The machine is a pump: its one motor is no compressor and no fan. */
export function isPump(scene: Scene): boolean {
  return /\bpump\b/i.test(scene.facts.kind ?? "") && !/heat pump/i.test(scene.facts.kind ?? "");
}

function isOfPump(one: Reading, scene: Scene): boolean {
  return one.subject === undefined ? isPump(scene) : /^pump\b/i.test(one.subject);
}

/** A pump's running amps against its plate and against each other. */
export function pumpMotor(scene: Scene): Finding[] {
  const all = ofQuantity(scene.readings, "current").filter(
    (one) => isOfPump(one, scene) && one.state !== "start" && one.stat !== "peak",
  );
  const plate = scene.ratings.find(
    (one) =>
      one.quantity === "current" &&
      isOfPump(one, scene) &&
      /^(?:FLA|RLA|nominal|MOC)$/.test(one.rating ?? ""),
  );
  const ratedA = (plate === undefined ? undefined : numberOf(plate)) ?? scene.facts.rla_A;
  return setsOf(scene.notes, all).flatMap((set) => pumpFinding(set, ratedA));
}

function pumpFinding(set: readonly Reading[], ratedA: number | undefined): Finding[] {
  const values = numbersOf(set);
  if (values.length === 0) return [];
  const unbalance = values.length === 3 ? unbalancePercent(values) : undefined;
  const share = ratedA === undefined ? undefined : Math.max(...values) / ratedA;
  const uneven = unbalance !== undefined && unbalance > currentUnbalanceLimit;
  const level = levelOf(share, uneven);
  const against = ratedA === undefined ? "" : ` against FLA ${plain(ratedA)}`;
  const says = `${listed(values, "A")}${against}: ${words(share, uneven)}`;
  return [
    {
      about: set[0]?.subject ?? "pump",
      check: "running_current",
      level,
      brief: gist(says),
      says,
      values: unbalance === undefined ? {} : { unbalance_percent: unbalance },
      basis: "plate",
      source: "plate; NEMA MG 1 12.51 (service factor, from memory), 14.36 (unbalance)",
      ...(level === "unknown" ? { missing: "the motor's FLA" } : {}),
    },
  ];
}

function levelOf(share: number | undefined, uneven: boolean): Finding["level"] {
  if (share !== undefined && share > overPlate.bad) return "bad";
  if (uneven || (share !== undefined && share > overPlate.watch)) return "watch";
  return share === undefined ? "unknown" : "good";
}

function words(share: number | undefined, uneven: boolean): string {
  if (share !== undefined && share > overPlate.bad)
    return "far overloaded: uncouple it and run the motor alone, so that the pump or the motor is told apart";
  if (share !== undefined && share > overPlate.watch)
    return "over its service factor: too much flow, stiff bearings or low volts";
  if (uneven) return "uneven: volts between the lines at the motor next";
  return share === undefined ? "no rating known" : "within its plate";
}
