import type { CaseNote } from "../model.ts";
import { perScene, type Scene } from "./scene.ts";
import { stagesOf } from "./stages.ts";

/** Share of its odds that a fault of starting keeps where nobody tells of a start. Common practice, no source. */
const untried = 0.3;

const started =
  /\b(?:starts?|started|starting|tr(?:y|ies|ied)|runs?|running|ran|trips?|tripped|hum(?:s|med)?|kick(?:s|ed)?|stall(?:s|ed)?|knock(?:s|ed|ing)?|nois[ey]\w*|bang(?:s|ed)?|rattl\w+|foam\w*|breaker|fuses?|faults?|cycl\w+|load|amps?|inrush|liquid in)\b/i;

/** What a fault that shows only at a start keeps of its odds: all where a start is told before any repair. */
export const attemptWeight: (scene: Scene) => number = perScene((scene) => {
  if (unstarted.test(scene.words)) return never;
  const { before } = stagesOf(scene.notes);
  return before.length === 0 || before.some(tellsStart) ? 1 : untried;
});

/** The same where the notes say that it was not started. Common practice, no source. */
const never = 0.05;
const unstarted =
  /\b(?:nothing|none|neither|it|never|not|has ?n'?t|have ?n'?t)\b(?: \w+){0,2} (?:been )?(?:started|run|fired up|powered up) (?:yet|so far)\b|\bnot (?:yet )?(?:been )?started\b|\bbefore (?:the )?(?:first|initial) start/;

/** Conditions of a start, no events: what a dead heater leads to has not come about where nobody started anything. */
const ofNextStart: readonly string[] = ["liquid:crankcase_heater_off", "liquid:was_without_power"];

/** Does the sign explain what was told? */
export function isAtWork(sign: string, scene: Scene): boolean {
  return !ofNextStart.includes(sign) || attemptWeight(scene) === 1;
}

function tellsStart(note: CaseNote): boolean {
  return (
    started.test(note.text ?? "") ||
    note.readings.some((one) => one.quantity === "current") ||
    note.statements.some((one) => one.kind === "observation" && ofStart.includes(one.observation))
  );
}

const ofStart: readonly string[] = [
  "hums",
  "will_not_start",
  "kicks_without_turning",
  "starts_then_trips",
  "overload_trips",
  "short_cycles",
  "breaker_trips",
  "fuse_blown",
  "noisy",
  "oil_foams",
  "liquid_in_shell",
];
