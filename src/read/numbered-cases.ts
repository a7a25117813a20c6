import type { Place } from "../vocabulary.ts";
import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { ratio } from "./near-value.ts";
import { role } from "./word.ts";

/** How cold or warm a case is told, in the company's scale. Common practice, no source. */
const warmth = { us: [-40, 75], si: [-40, 24] } as const;

const moves = /^(?:down|up|back|now|still|again)$/;

function isSmall(item: Item | undefined): boolean {
  return (
    item !== undefined &&
    ((item.roles & (role.is | role.preposition)) !== 0 || moves.test(item.text))
  );
}

/** What stands right before the figure, or past "is", "at", "down to", "is back at". */
function nameOf({ index }: Draft, items: readonly Item[]): Item | undefined {
  let at = index - 1;
  while (at > index - 4 && isSmall(items[at])) at--;
  return items[at];
}

/** Cases and boxes that go by a number or a tag. */
const holdsGoods =
  /^(?:case|cooler|freezer|walk-in|reach-in|cold room) \d|^(?:wic|wif|frz|clr)[ -]?\d/i;

/** Is it told as how cold it is: below zero, or by a verb? Of a case a figure alone says it. */
function isToldCold(draft: Draft, items: readonly Item[]): boolean {
  return /^case \d/.test(draft.subject ?? "") || draft.value < 0 || isSmall(items[draft.index - 1]);
}

/** Right behind the case's name. */
function behindName(draft: Draft, items: readonly Item[]): boolean {
  const name = nameOf(draft, items);
  // "case 1 2.4, 2 3.1"
  return (
    name?.kind === itemKind.subject || (name?.kind === itemKind.number && name.owner !== undefined)
  );
}

/** "case 4 -19, case 5 -18": a figure alone behind the number of a case is how cold it is, whatever gauge was read before. */
export function numberedCases(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const last = context.readings.findLast(({ subject }) => holdsGoods.test(subject ?? ""));
  const other =
    last !== undefined && last.quantity !== "temperature" && last.quantity !== "duration";
  const [low, high] = warmth[context.units];
  if (bothAirs(drafts, airsOf(context, last?.subject))) return;
  for (const draft of drafts) {
    if (!holdsGoods.test(draft.subject ?? "") || !isUntold(draft) || !behindName(draft, items))
      continue;
    if (!isToldCold(draft, items)) continue;
    if (draft.value < low || draft.value > high) continue;
    // behind "case 4 sh 9" a figure of its size may be the next case's superheat
    if (other && isNear(ratio(draft.value, last))) continue;
    draft.hint = "temperature";
    draft.place = "box";
  }
}

/** How far a figure lies at most from the one before to be of its row. Our choice, no source. */
const ofRow = 1.8;
const isNear = (far: number): boolean => !(far > ofRow || far < 1 / ofRow);

/** "case 9 is 36 and 41", "8: 29 37, 9: 30 36" behind the two airs of a case */
function bothAirs(drafts: readonly Draft[], airs: readonly (Place | undefined)[]): boolean {
  const list = drafts.filter(({ gone }) => !gone);
  if (airs.length !== 2 || list.length === 0 || list.length % 2 !== 0) return false;
  const bare = list.every(
    ({ unit, named, points, place }) =>
      (unit ?? named ?? points) === undefined && (place === undefined || place === "box"),
  );
  const paired = list.every(({ subject }, at) => {
    if (at % 2 === 0) return /^case \d/.test(subject ?? "");
    return subject === undefined || subject === list[at - 1]?.subject;
  });
  if (!bare || !paired) return false;
  list.forEach((one, at) => {
    one.subject ??= list[at - 1]?.subject;
    one.hint = "temperature";
    one.place = airs[at % 2];
  });
  return true;
}

/** The two airs that were read of a case, in their order. */
function airsOf(
  { readings }: Context,
  subject: string | undefined,
): readonly (Place | undefined)[] {
  const airs = readings.slice(-2).filter((one) => one.subject === subject && subject !== undefined);
  const places = airs.map(({ at }) => at);
  return new Set(places).size === 2 && places.every((place) => place?.endsWith("_air"))
    ? places
    : [];
}

const wares =
  /^(?:dairy|meat|meats|produce|deli|bakery|fish|seafood|beer|frozen|icecream|freezer|cooler|cheese|poultry|chicken)$/;

/** "freezer -18, dairy 3, meat 1": cases by what lies in them, where more than one is told. */
export function waresCold(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const [low, high] = warmth[context.units];
  const told = drafts.filter((draft) => wares.test(nameOf(draft, items)?.text ?? ""));
  if (told.length < 2) return;
  for (const draft of told) {
    if (!isUntold(draft) || draft.value < low || draft.value > high) continue;
    draft.hint = "temperature";
    draft.place = "box";
  }
}
