import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { onlyAlive } from "./inherit.ts";
import type { Item } from "./item.ts";
import { nounOf } from "./subject-noun.ts";
import { loads, rests } from "./two-states.ts";
import { role } from "./word.ts";

/** The message goes on where the last one stopped: "now", "after 10 min", "still". */
function goesOn(items: readonly Item[], draft: Draft): boolean {
  if (draft.after !== undefined) return true;
  return items.some(
    (item) => (item.roles & role.now) !== 0 || /^(?:still|later|again|after)$/.test(item.text),
  );
}

const placed: ReadonlySet<string> = new Set(["pressure", "temperature", "voltage"]);

/** Of its unit and its size, or what is left of a bus that drains. */
function isSame(draft: Draft, one: Reading): boolean {
  const figure = Number(one.figure.number);
  if (draft.unit?.figure !== one.figure.unit) return false;
  if (one.at === "dc_bus") return draft.value < figure;
  return draft.value > figure * 0.5 && draft.value < figure * 2;
}

const kindOf = (subject = ""): string => nounOf(subject);

/** "compressor 4's 198" behind compressor 3's discharge line: the same of the next of its kind, in the same unit. */
function nextOfKind(draft: Draft, context: Context): void {
  const last = context.readings.at(-1);
  if (last?.at === undefined || context.latest > 1 || draft.subject === last.subject) return;
  if (kindOf(draft.subject) === "" || kindOf(draft.subject) !== kindOf(last.subject)) return;
  if (draft.quantity !== last.quantity || last.rating !== undefined || last.points !== undefined)
    return;
  if (draft.ownUnit || draft.unit?.figure !== last.figure.unit) return;
  const share = draft.value / Number(last.figure.number);
  if (share > 0.5 && share < 2) draft.place = last.at;
}

/** "loaded 318" behind a bus that stood at 326: the same bus in its other state. */
function busLoaded(draft: Draft, items: readonly Item[], { readings }: Context): void {
  const last = readings.at(-1);
  if (last?.at !== "dc_bus" || draft.quantity !== "voltage" || draft.ownUnit) return;
  const ratio = draft.value / Number(last.figure.number);
  if (!(ratio > 0.7 && ratio < 1.4) || draft.subject !== undefined) return;
  if (!items.some(({ text }) => loads.test(text) || rests.test(text))) return;
  draft.place = last.at;
  draft.kind ??= last.kind;
  draft.subject = last.subject;
}

/** "after 10 min 5 V" behind "bus 318 V dc": the same place again, where the unit is said and the place is not. */
export function carryPlace(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const draft = onlyAlive(drafts);
  if (draft === undefined || draft.place !== undefined) return;
  if (draft.points === undefined && draft.rating === undefined) {
    nextOfKind(draft, context);
    busLoaded(draft, items, context);
  }
  if (!draft.ownUnit) return;
  if (draft.points !== undefined || draft.subject !== undefined || draft.component) return;
  if (draft.rating !== undefined || draft.thing !== undefined || !placed.has(draft.quantity ?? ""))
    return;
  const last = context.readings.slice(-Math.max(1, context.latest));
  const like = last.filter((one) => one.quantity === draft.quantity && one.rating === undefined);
  const [only, ...others] = like.filter((one) => isSame(draft, one));
  if (only?.at === undefined || others.length > 0 || only.points !== undefined) return;
  if (!goesOn(items, draft)) return;
  draft.place = only.at;
  draft.kind ??= only.kind;
  if (draft.corrects) return;
  draft.subject ??= only.subject;
}
