import { perScene, type Scene } from "./scene.ts";
import { isNitrogen } from "./standing.ts";
import type { Where } from "./step.ts";

/** Tells for a scene whether a fault or step can apply there; what is not known allows it. */
export const whereIn: (scene: Scene) => (where: Where | undefined) => boolean = perScene(
  (scene) => {
    const fits = conditionsOf(scene);
    // faults and steps that share a condition are many, and both ask
    const known = new Map<Where | undefined, boolean>();
    return (where) => {
      const had = known.get(where);
      if (had !== undefined) return had;
      const holds = fits(where);
      known.set(where, holds);
      return holds;
    };
  },
);

function conditionsOf(scene: Scene): (where: Where | undefined) => boolean {
  const { facts } = scene;
  const underTest = isUnderTest(scene);
  const gasSide = isGasSide(scene);
  return (where) =>
    where === undefined ||
    (allows(where.drive, facts.drive) &&
      (allows(where.phases, facts.phases) || (where.capacitor === true && hasCapacitor(scene))) &&
      allows(where.mode, facts.mode) &&
      allows(where.metering, facts.metering) &&
      !(where.state === "running" && underTest) &&
      (where.machine === undefined || isMachine(where.machine, scene)) &&
      (where.side !== "gas" || gasSide));
}

/** The circuit was read under vacuum or nitrogen and no running pressure was. */
function isUnderTest(scene: Scene): boolean {
  const pressures = scene.readings.filter((one) => one.quantity === "pressure");
  if (pressures.some((one) => one.at !== undefined)) return false;
  if (scene.readings.some((one) => one.quantity === "vacuum")) return true;
  return pressures.length > 0 && pressures.some((one) => isNitrogen(scene, one));
}

/** A three-phase unit's fan motors are often single-phase: one was measured, or its looks were told. */
const hasCapacitor: (scene: Scene) => boolean = perScene(
  (scene) =>
    scene.readings.some((one) => one.quantity === "capacitance") ||
    /\b(?:fan|run|start|dual|motor) cap(?:acitor)?\b|\bcap(?:acitor)? (?:is |was |looks )?(?:bulged|swollen|weak|open|bad|blown|shot|dead|leaking)\b/.test(
      scene.words,
    ),
);

/** Kinds that have the part for certain or by their name, and words that speak of it. */
const machines = {
  reversing: {
    kinds: /heat pump|heat recovery|outdoor unit|split|mini|ductless/,
    words: /revers|heat pump|4.?way/,
  },
  branched: {
    kinds: /heat recovery|branch|outdoor unit|multi|indoor|cassette/,
    words: /branch|port\b/,
  },
  defrosting: {
    kinds: /heat pump|heat recovery|outdoor unit|split|cooler|freezer|walk|reach|case/,
    words: /defrost/,
  },
} as const;

function isMachine(machine: keyof typeof machines, scene: Scene): boolean {
  const kind = scene.facts.kind?.toLowerCase();
  const { kinds, words } = machines[machine];
  return kind === undefined || kinds.test(kind) || words.test(scene.words);
}

function allows<T>(wanted: T | undefined, known: T | undefined): boolean {
  return wanted === undefined || known === undefined || wanted === known;
}

/** The case speaks of the refrigerant or air side. */
function isGasSide(scene: Scene): boolean {
  const gas = ["pressure", "superheat", "subcooling", "vacuum", "temperature", "mass"];
  return (
    scene.facts.refrigerant !== undefined ||
    scene.readings.some((one) => gas.includes(one.quantity))
  );
}
