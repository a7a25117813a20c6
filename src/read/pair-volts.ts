import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

/** V dc; what a communication pair carries at most. Common practice, no source. */
const mostV = 60;

const pairs = /^(?:pair|comm|comms|bus|network|f1|f1f2)$/;
const verbs =
  /^(?:is|at|reads|read|shows|has|sits|sitting|measures|was|only|about|volts|line|wires|terminals|back|again|now|up|[:=])$/;
/** Words that no winding and no row is called by: what talks. */
const talks = /^(?:comm|comms|network)\b/;

const where = /^(?:odu|idu|outdoor|indoor|unit|board|box|head|cassette|controller)$/;

/** "pair reads 15.2 at the outdoor": the pair's name, words that measure it, the figure. */
function ofPair(draft: Draft, items: readonly Item[]): boolean {
  let at = draft.index - 1;
  if (where.test(items[at]?.text ?? "")) {
    const led = /^(?:the|our)$/.test(items[at - 1]?.text ?? "") ? at - 2 : at - 1;
    if (/^(?:at|on|in)(?: the| our)?$/.test(items[led]?.text ?? "")) at = led - 1;
  }
  // "comms: ou-1 16,2"
  const named = items[at]?.kind === itemKind.subject;
  if (named && (/^[:=]$/.test(items[at - 1]?.text ?? "") || talksAt(items, at - 1))) at--;
  while (verbs.test(items[at]?.text ?? "")) at--;
  const head = items[at]?.text ?? "";
  if (talksAt(items, at) || behindValue(draft, items)) return true;
  // "F1 F2 at the odu 19.1"
  if (/^f2$/i.test(head) && /^(?:f1|\/|-)$/i.test(items[at - 1]?.text ?? "")) return true;
  // "the last pair is 1.7": of three windings, no wires that talk
  if (/^(?:last|other|next|first|second|third|each)$/.test(items[at - 1]?.text ?? "")) return false;
  return at < draft.index - 1 && pairs.test(head) && head !== "bus";
}

/** "comm pair 16,2", "comms 15.8": the wires by the name that nothing else has. */
function talksAt(items: readonly Item[], at: number): boolean {
  const head = items[at]?.text ?? "";
  // "comm .9 start 2.1": the common pin
  if (items.some(({ text }) => /^(?:start|run|common)$/.test(text))) return false;
  return talks.test(head) || (head === "pair" && talks.test(items[at - 1]?.text ?? ""));
}

/** "16,2 on the comm pair" */
function behindValue({ index }: Draft, items: readonly Item[]): boolean {
  if (!/^(?:on|across|over)(?: the)?$/.test(items[index + 1]?.text ?? "")) return false;
  const the = items[index + 2]?.text === "the" ? index + 3 : index + 2;
  return talks.test(items[the]?.text ?? "");
}

function isBare(draft: Draft, items: readonly Item[]): boolean {
  return (
    draft.unit === undefined &&
    draft.named === undefined &&
    draft.points === undefined &&
    draft.rating === undefined &&
    !draft.over &&
    draft.value >= 0 &&
    draft.value <= mostV &&
    items[draft.index]?.kind === itemKind.number
  );
}

const elsewhere = /^(?:at|past|behind|after|beyond|on|in|before|with|when|as)$/;

const moves =
  /^(?:lifts|jumps|jumped|rises|rose|climbs|goes|went|comes|came|returns|back|up|drops|dropped|falls|fell|down|sags|pulled|pulls)$/;

function ofThePair(items: readonly Item[]): boolean {
  return items.some(({ text }) => text === "pair" || text === "comm" || text === "comms");
}

/** "pair reads 15.2 at the outdoor, 6.1 past the box", "pair at 13.8": what a pair reads are volts. */
export function pairVolts(list: readonly Draft[], items: readonly Item[]): void {
  let told = false;
  let previous: Item | undefined;
  for (const draft of list) {
    // "fuse holds, comm back: 16,0": what was told before the wires is of something else
    const other = draft.rating !== undefined || draft.named !== undefined;
    if (other && !draft.ownUnit && !draft.over && ofPair(draft, items)) {
      draft.named = undefined;
      draft.rating = undefined;
    }
    if (!isBare(draft, items)) continue;
    const joint = items[draft.index - 1]?.text;
    const moved =
      joint === "to" && moves.test(items[draft.index - 2]?.text ?? "") && ofThePair(items);
    const named = items[draft.index - 1]?.kind === itemKind.subject;
    const parted = /^(?:,|and|then)$/;
    const goesOn =
      told &&
      (named
        ? parted.test(items[draft.index - 2]?.text ?? "") || items[draft.index - 2] === previous
        : parted.test(joint ?? "") && elsewhere.test(items[draft.index + 1]?.text ?? ""));
    if (!moved && !goesOn && !ofPair(draft, items)) continue;
    told = true;
    previous = items[draft.index];
    takeFor(draft, "voltage", "V");
    draft.kind ??= "dc";
    draft.place = undefined;
  }
}

const ofBox = /^box \d$/;

/** "comm at box 2 was 0 vdc, box 1 has 18.6": a branch box of which volts were told, no cold room's degrees. */
export function boxVolts(list: readonly Draft[], items: readonly Item[], context: Context): void {
  const atBox = (draft: Draft): boolean =>
    draft.before.some((index) => items[index]?.label?.place === "box");
  const told =
    list.some((draft) => draft.unit?.dimension === "voltage" && atBox(draft)) ||
    context.readings.some(
      ({ quantity, subject }) => quantity === "voltage" && ofBox.test(subject ?? ""),
    );
  if (!told) return;
  for (const draft of list) {
    if (!isBare(draft, items) || !atBox(draft)) continue;
    takeFor(draft, "voltage", "V");
    draft.kind ??= "dc";
    draft.place = undefined;
  }
}
