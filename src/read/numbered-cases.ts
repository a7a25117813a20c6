import type { Place } from "../vocabulary.ts";
import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** How cold or warm a case is told, in the company's scale. Common practice, no source. */
const warmth = { us: [-40, 75], si: [-40, 24] } as const;

/** What stands right before the figure, or past "is", "at", "down to". */
function nameOf({ index }: Draft, items: readonly Item[]): Item | undefined {
  const before = items[index - 1];
  const verb =
    before !== undefined &&
    ((before.roles & (role.is | role.preposition)) !== 0 || /^(?:down|up|back)$/.test(before.text));
  return verb ? items[index - 2] : before;
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
  const last = context.readings.findLast(({ subject }) => /^case \d/.test(subject ?? ""));
  if (last !== undefined && last.quantity !== "temperature") return;
  const [low, high] = warmth[context.units];
  if (bothAirs(drafts, airsOf(context, last?.subject))) return;
  for (const draft of drafts) {
    if (!/^case \d/.test(draft.subject ?? "") || !isUntold(draft) || !behindName(draft, items))
      continue;
    if (draft.value < low || draft.value > high) continue;
    draft.hint = "temperature";
    draft.place = "box";
  }
}

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
