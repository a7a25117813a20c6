import type { CheckName } from "../vocabulary.ts";
import type { Scene } from "./scene.ts";

/** Conditions on the machine under which a fault or a step makes sense; what is unknown allows it. */
export interface Where {
  readonly drive?: "inverter" | "line";
  readonly phases?: 1 | 3;
  /** whatever the phases: the case speaks of a run capacitor */
  readonly capacitor?: true;
  readonly mode?: "cooling" | "heating";
  readonly metering?: "expansion_valve" | "fixed_orifice";
  /** the case holds refrigerant-side readings or words */
  readonly side?: "gas" | "electrical";
  /** a machine that reverses, has branch boxes, or defrosts a coil; a kind that is not known allows it */
  readonly machine?: "reversing" | "branched" | "defrosting";
  /** `running`: not while the circuit stands under vacuum or nitrogen */
  readonly state?: "running";
}

/** Something that can be looked at next. */
export interface Step {
  readonly check: CheckName | string;
  /** one sentence for the technician: what to look at and what it will settle */
  readonly why: string;
  /** usual time for someone already at the unit */
  readonly minutes: number;
  /** 0 eyes only, 1 covers off and dead, 2 live measurement, 3 opens the circuit or starts a suspect machine */
  readonly danger: 0 | 1 | 2 | 3;
  /** the sign groups that it would fill; with any of them known already it is not asked again */
  readonly fills: readonly string[];
  /** groups that it fills beside them: what is open of these counts, and what is known does not close it */
  readonly also?: readonly string[];
  readonly where?: Where;
  /** where this is false it is not asked at all */
  readonly only?: (scene: Scene) => boolean;
  /** true where a check could not judge for want of just this: it is then asked for at once */
  readonly wanted?: (scene: Scene) => boolean;
  /** signs of a machine that cannot or must not be run for it */
  readonly unless?: readonly string[];
  /** signs that leave a doubt which just this would lift: it is then asked for at once */
  readonly after?: readonly string[];
  /** what remains to be done where every look has been taken: named only where nothing else is */
  readonly last?: true;
}
