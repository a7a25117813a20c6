import type { QuantityName } from "../quantities/list.ts";
import type { Place } from "../vocabulary.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";

const ofMachines: ReadonlySet<QuantityName> = new Set<QuantityName>([
  "pressure",
  "superheat",
  "subcooling",
  "current",
  "winding_resistance",
  "insulation_resistance",
]);
const ofPipes: ReadonlySet<Place> = new Set<Place>(["suction", "discharge", "liquid", "shell"]);

/** "moving to circuit 2", then "suct 118 head 345": what was turned to is what is measured. */
export function carryMachine(drafts: readonly Draft[], context: Context): void {
  const { machine } = context;
  const free = drafts.filter((draft) => !draft.gone);
  if (machine === undefined || free.some((draft) => draft.subject !== undefined)) return;
  for (const draft of free) {
    if (draft.quantity === undefined || draft.earlier || draft.corrects) continue;
    if (draft.thing !== undefined && !machine.startsWith(draft.thing)) continue;
    const pipe = draft.quantity === "temperature" && draft.place !== undefined;
    if (pipe ? ofPipes.has(draft.place ?? "box") : ofMachines.has(draft.quantity))
      draft.subject = machine;
  }
}
