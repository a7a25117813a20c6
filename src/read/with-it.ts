import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { onlyAlive } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { ratio } from "./near-value.ts";
import { role } from "./word.ts";

const opens = /^(?:with|without|once|when|after)$/;
const small = /^(?:ok|okay|so|now|and|but|then|well|alright|,|uh|um|yeah|the)$/;
const about = /^(?:about|at|up|down|only|just|still|like|right|back|to|around|now|more)$/;

/** Does the message begin by saying how the machine stands: "okay with the door shut …"? */
function begins(items: readonly Item[]): boolean {
  const first = items.findIndex(({ text }) => !small.test(text));
  return opens.test(items[first]?.text ?? "");
}

/** "it's", "it is", "it reads", right before the value: what was read last is spoken of. */
function saysIt(items: readonly Item[], index: number): boolean {
  let at = index - 1;
  while (about.test(items[at]?.text ?? "")) at--;
  const [it, verb] = [items[at - 1], items[at]];
  if (/^(?:its|it's)$/.test(verb?.text ?? "")) return true;
  return it?.text === "it" && ((verb?.roles ?? 0) & role.is) !== 0;
}

const done =
  /^(?:cleaning|clean|washing|adjusting|adjustment|tightening|swap|swapping|replacing|resetting|rinsing)$/;

/** "after cleaning 130": what was done, the figure, and no more. */
function afterDoing(items: readonly Item[], index: number): boolean {
  const first = items.findIndex(({ text }) => !small.test(text));
  const [after, ...words] = items.slice(first, index);
  if (after?.text !== "after" || words.length > 4) return false;
  const plain = words.every(({ kind, label }) => kind !== itemKind.number && !label?.quantity);
  const end = items[index + 1];
  if (!plain || (end !== undefined && end.kind !== itemKind.sign)) return false;
  return words.some(({ text }) => done.test(text));
}

function isBare(draft: Draft, items: readonly Item[]): boolean {
  const { unit, named, place, points, subject, rating } = draft;
  const free = [unit, named, place, points, subject, rating].every((one) => one === undefined);
  return free && !draft.over && !draft.same && items[draft.index]?.kind === itemKind.number;
}

/** The one reading of the message before that the value is near. */
function likeOf(draft: Draft, context: Context): Reading | undefined {
  const last = context.readings.slice(-Math.max(1, context.latest));
  const near = last.filter((one) => {
    const far = ratio(draft.value, one);
    return one.rating === undefined && one.quantity !== "mass" && far > 1 / 4 && far < 4;
  });
  return near.length === 1 && last.length <= 2 ? near[0] : undefined;
}

/** "okay with the door shut it's point five five", "with the fan running it's 72": the last reading again, as it stands now. */
export function withIt(drafts: readonly Draft[], items: readonly Item[], context: Context): void {
  const draft = onlyAlive(drafts);
  if (draft === undefined || !isBare(draft, items)) return;
  if (!begins(items)) return;
  if (!saysIt(items, draft.index) && !afterDoing(items, draft.index)) return;
  const like = likeOf(draft, context);
  if (like === undefined) return;
  draft.quantity = like.quantity;
  draft.named = like.quantity;
  draft.unit = unitCalled(like.figure.unit);
  draft.assumedUnit = draft.unit !== undefined;
  draft.hint = undefined;
  draft.place = like.at;
  draft.subject = like.subject;
  draft.kind = like.kind;
  if (like.points !== undefined) draft.points = [like.points];
}
