import type { Finding, Reading } from "../../model.ts";
import { currentUnbalanceLimit, unbalancePercent } from "../../physics/unbalance.ts";
import { ownMotor } from "../own-motor.ts";
import { numberOf, numbersOf, ofQuantity, setsOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed, plain } from "../words.ts";

/** Over the plate: the service factor of an open motor, and what no service factor covers. Source: NEMA MG 1 12.51 (1.15, from memory); the second common practice, no source. */
const overPlate = { watch: 1.15, bad: 1.3 } as const;

function isOwn(one: Reading, scene: Scene): boolean {
  if (one.subject === undefined) return ownMotor(scene) !== undefined;
  return (
    /^pump\b/i.test(one.subject) || (ownMotor(scene) === "fan" && /fan|blower/i.test(one.subject))
  );
}

/** The running amps of a pump, or of a machine that is but a fan, against its plate and against each other. */
export function pumpMotor(scene: Scene): Finding[] {
  const all = ofQuantity(scene.readings, "current").filter(
    (one) => isOwn(one, scene) && one.state !== "start" && one.stat !== "peak",
  );
  const plate = scene.ratings.find(
    (one) =>
      one.quantity === "current" &&
      isOwn(one, scene) &&
      /^(?:FLA|RLA|nominal|MOC)$/.test(one.rating ?? ""),
  );
  const ratedA = (plate === undefined ? undefined : numberOf(plate)) ?? scene.facts.rla_A;
  return setsOf(scene.notes, all).flatMap((set) =>
    ownFinding(set, ratedA, ownMotor(scene) ?? "pump"),
  );
}

function ownFinding(
  set: readonly Reading[],
  ratedA: number | undefined,
  motor: "pump" | "fan",
): Finding[] {
  const values = numbersOf(set);
  if (values.length === 0) return [];
  const unbalance = values.length === 3 ? unbalancePercent(values) : undefined;
  const share = ratedA === undefined ? undefined : Math.max(...values) / ratedA;
  const uneven = unbalance !== undefined && unbalance > currentUnbalanceLimit;
  const level = levelOf(share, uneven);
  const against = ratedA === undefined ? "" : ` against FLA ${plain(ratedA)}`;
  const says = `${listed(values, "A")}${against}: ${words(share, uneven, motor)}`;
  return [
    {
      about: set[0]?.subject ?? motor,
      check: "running_current",
      level,
      brief: gist(says),
      says,
      values: unbalance === undefined ? {} : { unbalance_percent: unbalance },
      basis: "plate",
      ...(motor === "fan" && share !== undefined && share > overPlate.watch
        ? { signs: [share > overPlate.bad ? "fan:overloaded" : "fan:high_current"] }
        : {}),
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

function words(share: number | undefined, uneven: boolean, motor: "pump" | "fan"): string {
  if (motor === "fan" && share !== undefined && share > overPlate.watch)
    return share > overPlate.bad
      ? "far overloaded: sheaves, bearings and volts, then the motor with the belt off"
      : "over its service factor: too fast, too much air, stiff bearings or low volts";
  if (share !== undefined && share > overPlate.bad)
    return "far overloaded: uncouple it and run the motor alone, so that the pump or the motor is told apart";
  if (share !== undefined && share > overPlate.watch)
    return "over its service factor: too much flow, stiff bearings or low volts";
  if (uneven) return "uneven: volts between the lines at the motor next";
  return share === undefined ? "no rating known" : "within its plate";
}
