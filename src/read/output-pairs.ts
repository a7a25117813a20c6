import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** V of a drive's output that is no junction's and no ohms' figure. Our choice, no source. */
const leastV = 20;
const otherTest = /^(?:diode|diodes|ohm|ohms|winding|windings|bridge|igbt|amps?)$/;
const ofMotor = (points: Draft["points"]): boolean =>
  points?.length === 1 && points[0]?.length === 2 && points[0].every((end) => /^[UVW]$/.test(end));

/** "output U-V 0", "outputs U-V 210 V-W 0": what a drive gives between two of its legs are volts. */
export function outputPairs(drafts: readonly Draft[], items: readonly Item[]): void {
  const at = items.findIndex(({ text }) => /^outputs?$/.test(text));
  if (at < 0 || items.some(({ text }) => otherTest.test(text))) return;
  for (const draft of drafts) {
    const free = draft.unit === undefined && draft.named === undefined && !draft.gone;
    if (draft.index < at || !free || draft.over || !ofMotor(draft.points)) continue;
    if (draft.value !== 0 && draft.value < leastV) continue;
    draft.named = "voltage";
    draft.place = "drive_output";
  }
}
