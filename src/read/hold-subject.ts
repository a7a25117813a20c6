import type { Draft } from "./draft.ts";
import { isGoods } from "./goods.ts";
import { type Item, itemKind } from "./item.ts";
import { nextOfKind } from "./next-of-kind.ts";

const sameOne = /^(?:one|does|same|like|than|as|from)$/;

/** "mine reads OL. the spare reads 9.8k and so does the one on head 5": what is compared with is not what was measured before. */
function isCompared(items: readonly Item[], end: Draft): boolean {
  const at = end.behind.find((index) => items[index]?.kind === itemKind.subject) ?? -1;
  return at > 2 && items.slice(at - 3, at).some(({ text }) => sameOne.test(text));
}

/** "87 megohms. recovered 14.6 lb out of circuit B": where a weight went says nothing of another sentence. */
function reaches(end: Draft, draft: Draft): boolean {
  return end.action === undefined || draft.sentence === end.sentence;
}

const airs: ReadonlySet<string> = new Set([
  "outdoor_air",
  "supply_air",
  "return_air",
  "mixed_air",
  "control",
]);

const ofWhole: ReadonlySet<string> = new Set(["static_pressure", "airflow", "water_flow"]);

/** "circuit 1 sh 9 sc 8, OAT 84": the weather, the air and the control volts are the whole unit's, whatever circuit was named. */
function ofWholeUnit({ place, quantity, named }: Draft, subject: string): boolean {
  if (/(?:^| )(?:low|medium) temp$/.test(subject) && place === undefined) return true;
  if (!/^(?:compressor|circuit|system|stage|group) /.test(subject)) return false;
  return airs.has(place ?? "") || ofWhole.has(quantity ?? named ?? "");
}

const shares = /^group \w+$|(?:^| )(?:low|medium) temp$/;

/** "group 1 24 group 2 48 head 205", "low temp 12 med temp 34 head 205": behind several suctions the one header that they share. */
function ofAllGroups(list: readonly Draft[], order: number): boolean {
  const { place } = list[order] ?? {};
  if (place !== "discharge" && place !== "liquid") return false;
  const before = list.slice(0, order);
  const groups = new Set(
    before.flatMap(({ subject }) => (shares.test(subject ?? "") ? [subject] : [])),
  );
  return groups.size > 1 && !before.some((one) => one.place === place && one.subject !== undefined);
}

const namesGoods = ({ before }: Draft, items: readonly Item[]): boolean =>
  before.some((index) => isGoods(items[index]?.text ?? ""));

/** The subject named last holds on, until another part of the machine is spoken of. */
export function subjects(list: readonly Draft[], items: readonly Item[]): void {
  let last: string | undefined;
  for (const [order, draft] of list.entries()) {
    const left = list[order - 1];
    const capsAnew =
      draft.named === "capacitance" && left !== undefined && left.sentence !== draft.sentence;
    const words = items.slice(Math.max(0, draft.index - 3, (left?.index ?? -1) + 1), draft.index);
    if (draft.subject !== undefined) last = draft.subject;
    // "fan one 1.2 amps and the other is zero"
    else if (words.some(({ text }) => /^others?$/.test(text))) last = undefined;
    // "dairy 2 at 46 produce 41": goods by their own name
    else if (draft.place === "box" && last?.startsWith("case ") && namesGoods(draft, items))
      last = undefined;
    // "fan 3 locked 4.9A. caps 5.0 4.9 1.3 uF": told of all of them
    else if (capsAnew && left.quantity !== "capacitance") last = undefined;
    else if (
      draft.thing !== undefined &&
      draft.thing !== "level" &&
      last !== undefined &&
      !last.startsWith("circuit") &&
      !/-\d/.test(last) &&
      !(draft.thing === "compressor" && last.startsWith("compressor"))
    )
      last = undefined;
    else if (last === undefined || !(ofWholeUnit(draft, last) || ofAllGroups(list, order)))
      draft.subject = last;
  }
  const only = new Set(
    list.map((draft) => draft.subject).filter((subject) => subject !== undefined),
  );
  const end = list[list.length - 1];
  const [one] = only;
  if (
    only.size === 1 &&
    one !== undefined &&
    end?.behind.some((index) => items[index]?.kind === itemKind.subject) === true
  )
    for (const draft of list)
      if (reaches(end, draft) && !isCompared(items, end)) draft.subject ??= one;
  nextOfKind(list, items);
}
