import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const net = /^(?:net|diff|differential)$/;
const shell = /^(?:crankcase|crank|suct|suction|case)$/;

/** "crankcase is 20", "a crankcase of 20", "42 net": what stands before a figure, or right behind it. */
function wordOf(items: readonly Item[], index: number): string {
  const behind = items[index + 1]?.text ?? "";
  if (net.test(behind)) return behind;
  const small = /^(?:is|was|at|of|about)$/.test(items[index - 1]?.text ?? "");
  return items[small ? index - 2 : index - 1]?.text ?? "";
}

/** psi, bar between an oil pump's two sides. Common practice, no source. */
const netRange = { us: [4, 90], si: [0.3, 6] } as const;

/** "ran with 31 net" where oil was read before: what its pump makes over the crankcase. */
export function netOil(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings, units }: Context,
): void {
  if (!readings.some(({ at, quantity }) => at === "oil" && quantity === "pressure")) return;
  const [least, most] = netRange[units];
  for (const draft of drafts) {
    const { unit, named, place, points, rating } = draft;
    if (items[draft.index + 1]?.text !== "net" && items[draft.index - 1]?.text !== "net") continue;
    if ([unit, named, place, points, rating].some((one) => one !== undefined)) continue;
    if (draft.value < least || draft.value > most) continue;
    draft.place = "oil";
    draft.named = "pressure";
    draft.state = undefined;
    draft.hint = undefined;
  }
}

/** "oil press 61 crankcase 22 net 39": beside an oil pump's gauge stand the crankcase's and what lies between. */
export function oilSides(drafts: readonly Draft[], items: readonly Item[]): void {
  const oil = drafts.find(
    (draft) => !draft.gone && draft.place === "oil" && draft.rating === undefined,
  );
  const warm = oil?.unit !== undefined && oil.unit.dimension !== "pressure";
  if (oil === undefined || warm || oil.hint === "temperature") return;
  for (const draft of drafts) {
    if (draft === oil || draft.gone || draft.sentence !== oil.sentence) continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "pressure") continue;
    if (draft.points !== undefined || draft.rating !== undefined) continue;
    const word = wordOf(items, draft.index);
    if (!net.test(word) && !shell.test(word)) continue;
    if (draft.value >= oil.value) continue;
    oil.named = "pressure";
    draft.named = "pressure";
    draft.hint = undefined;
    draft.component = false;
    draft.thing = undefined;
    if (draft.unit === undefined) draft.unit = oil.unit;
    if (net.test(word)) draft.place = "oil";
    draft.subject ??= oil.subject;
  }
}

/** "net oil comp 1 31 comp 2 29 comp 3 14", "comp 2 12" behind one: the next compressors' oil, however little. */
export function oilRow(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings, units }: Context,
): void {
  const last = readings.at(-1);
  let told = last?.at === "oil" && last.quantity === "pressure" && last.subject !== undefined;
  const said = items.some(({ text }) => /^(?:net|diff|differential)$/.test(text));
  const [least, most] = netRange[units];
  for (const draft of drafts) {
    if (draft.gone) continue;
    const own = items[draft.index - 1]?.subject ?? "";
    const free = [draft.unit, draft.named, draft.points, draft.rating, draft.place];
    if (draft.place === "oil") {
      told ||= said && draft.unit === undefined;
      continue;
    }
    const fits = draft.value >= least && draft.value <= most;
    if (!told || !/^compressor /.test(own) || free.some((one) => one !== undefined) || !fits) {
      told = false;
      continue;
    }
    draft.place = "oil";
    draft.named = "pressure";
    draft.hint = undefined;
  }
}
