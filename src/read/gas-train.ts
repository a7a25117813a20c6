import type { Draft } from "./draft.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const train = /\b(?:gas|mani|manif|manifold|burner|regulator)\b/;
const ends =
  /^(?:inlet|outlet|in|out|line|supply|fire|reg|regulator|valve|upstream|downstream|burner)$/;

/** Inches of water at most at a gas valve, propane's too; common practice, no source. */
const mostInches = 16;

/** Pascals at most, of the same. */
const mostPa = 4000;

/** "high fire manifold": a name that begins with its fire. */
const byFire = /^(?:high|hi|low|lo)$/;

/** "gas 7.2 in 3.5 out", "gas in 7.2 out 3.5", where nothing was charged. */
function inAndOut(items: readonly Item[]): boolean {
  const at = items.findIndex(({ text }) => text === "gas");
  const [one, other] = [items[at + 1], items[at + 2]];
  if (at < 0 || items.some(({ label, text }) => label?.action !== undefined && text !== "in"))
    return false;
  const way = /^(?:in|out)$/;
  return one?.kind === itemKind.number
    ? way.test(other?.text ?? "")
    : way.test(one?.text ?? "") && other?.kind === itemKind.number && items[at + 3]?.text === "out";
}

const comesIn = /^(?:coming|going) (?:in|out)$/;

/** "7 in wc in, 3.5 out": a column of water on one side, so on the other as well. */
function columnsInOut(items: readonly Item[]): boolean {
  const sides = items.flatMap((item, i) =>
    item.kind === itemKind.number && /^(?:in|out)$/.test(items[i + 1]?.text ?? "") ? [item] : [],
  );
  return sides.length === 2 && sides.some(({ unit }) => unit?.figure === "in wc");
}

/** "manifold 3.5 high 1.7 low": the fires, no sides of a plant. */
function ofFire(draft: Draft, items: readonly Item[]): boolean {
  const led = items[draft.index - 1]?.text === "at" ? draft.index - 2 : draft.index - 1;
  const [before, behind] = [items[led], items[draft.index + 1]];
  return byFire.test(before?.text ?? "") || byFire.test(behind?.text ?? "");
}

/** "hi fire 3.5 low 1.6": what a burner is set to, whose pressure is told by nothing else. */
function firesTold(items: readonly Item[]): boolean {
  return items.some(({ text }, i) => {
    const [before, next] = [items[i - 1], items[i + 1]];
    // "hi" at the head of a message is taken for a greeting
    if (text !== "fire" || (before !== undefined && !byFire.test(before.text))) return false;
    const is = standing.test(next?.text ?? "") || next?.text === "at";
    return items[is ? i + 2 : i + 1]?.kind === itemKind.number;
  });
}

const standing = /^(?:is|at|holds|holding|sits|sitting|stays|reads|reading|running|around|about)$/;

/** "gas mani 3.4 inlet 6.8": what burns has a few inches of water, on both sides of its valve. */
export function gasTrain(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: "us" | "si",
): void {
  const named = drafts.some((draft) => {
    const labels = [...draft.before, ...draft.behind].filter(
      (i) => items[i]?.label?.quantity === "static_pressure",
    );
    const of = (text = ""): boolean => train.test(text) || byFire.test(text);
    return !draft.gone && labels.some((i) => of(items[i]?.text));
  });
  if (!named && !inAndOut(items) && !columnsInOut(items) && !firesTold(items)) return;
  for (const draft of drafts) {
    const inches = draft.unit?.figure === "in";
    if (draft.gone || (draft.unit !== undefined && draft.unit.figure !== "mbar" && !inches))
      continue;
    if (draft.points !== undefined || draft.over) continue;
    const behind = /^(?:in|out)$/.test(items[draft.index + 1]?.text ?? "");
    // "seven inches coming in"
    const flows =
      inches && (behind || comesIn.test(wordsFrom(items, draft.index + 1, draft.index + 3)));
    const label = [...draft.before, ...draft.behind].some((i) => train.test(items[i]?.text ?? ""));
    const most = units === "us" ? mostInches : mostPa;
    if (draft.value > most) {
      // a gauge manifold has other figures
      if (label) draft.named = undefined;
      continue;
    }
    let at = draft.index - 1;
    // "inlet's holding at seven"
    while (standing.test(items[at]?.text ?? "")) at--;
    const word = items[at]?.text ?? "";
    // "burner pressure eleven point four"
    const told = /^(?:pressure|press)$/.test(word) ? (items[at - 1]?.text ?? "") : word;
    const end = ends.test(told) || ofFire(draft, items);
    if (!label && !(behind && !named) && !end && !flows) continue;
    if (inches) draft.unit = unitCalled("in wc");
    draft.unit ??= drafts.find(({ unit }) => unit?.figure === "mbar")?.unit;
    draft.named = "static_pressure";
    draft.hint = undefined;
    draft.place = undefined;
  }
}
