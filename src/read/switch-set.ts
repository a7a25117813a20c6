import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const switches = /^(?:sw|switch|switches|cutout|hps|lps|hpc|lpc|hpco|lpco)$/;

/** "hp sw 42 bar": right behind a switch stands what it is set to. */
function setOf(draft: Draft, items: readonly Item[]): void {
  const gauged =
    draft.unit === undefined ? draft.hint === "pressure" : draft.unit.dimension === "pressure";
  if (!gauged || draft.rating !== undefined || draft.gone) return;
  const [before, word] = [items[draft.index - 2], items[draft.index - 1]];
  const joint = /^(?:[:=]|is)$/.test(word?.text ?? "");
  const [name, sw] = joint ? [items[draft.index - 3], before] : [before, word];
  const pressed =
    name?.label?.hint === "pressure" || /^(?:press|pressure|oil)$/.test(name?.text ?? "");
  if (switches.test(sw?.text ?? "") && (pressed || (sw?.text.length ?? 0) === 3))
    draft.rating = "setpoint";
}

/** "it's a .65 switch", "a point six five pressure switch": where it makes or breaks, as it is called. */
function calledBy(draft: Draft, items: readonly Item[]): void {
  const air =
    (draft.named ?? draft.quantity) === "static_pressure" ||
    draft.unit?.dimension === "inches_of_water" ||
    (draft.unit === undefined && draft.value < 3);
  if (!air || draft.rating !== undefined || draft.gone) return;
  if (!/^an?$/.test(items[draft.index - 1]?.text ?? "")) return;
  const [next, noun] = [items[draft.index + 1]?.text ?? "", items[draft.index + 2]?.text ?? ""];
  const pressed = /^(?:pressure|draft|air)$/.test(next) && switches.test(noun);
  if (switches.test(next) || pressed || next === "pressure switch") draft.rating = "setpoint";
}

const control =
  /^(?:(?:lp|hp|low|low press|low pressure|high pressure) (?:control|controls|ctrl|ctl)|lpc|hpc|lpco|hpco)$/;

/** "lpco 12/30", "low press control 10/25": a control is told by what it is set to, be its name one item or two. */
function ofControl(draft: Draft, items: readonly Item[], plain: string): void {
  const joint = /^(?:out|in|at|is|:|=)$/.test(items[draft.index - 1]?.text ?? "");
  const name = items[draft.index - (joint ? 2 : 1)];
  if (name === undefined || !control.test(plain.slice(name.from, name.to))) return;
  if (draft.unit !== undefined && draft.unit.dimension !== "pressure") return;
  if (draft.gone || draft.points !== undefined) return;
  draft.rating = "setpoint";
  draft.named = "pressure";
}

/** "lp sw 20/45", "hpc 610/450": where it breaks, and where it makes again. */
function otherEnd(set: Draft, draft: Draft, items: readonly Item[]): void {
  if (set.rating !== "setpoint" || draft.gone || draft.index !== set.index + 2) return;
  const [word, joint] = [items[set.index - 1], items[set.index + 1]];
  if (!/^[/-]$/.test(joint?.text ?? "") || draft.unit !== undefined) return;
  const own = switches.test(word?.text ?? "") || set.named === "pressure";
  if (!own || (set.unit !== undefined && set.unit.dimension !== "pressure")) return;
  draft.rating = "setpoint";
  draft.named = "pressure";
  draft.hint = undefined;
  draft.place = set.place;
  draft.unit = set.unit;
}

export function switchSet(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  drafts.forEach((draft, order) => {
    setOf(draft, items);
    ofControl(draft, items, plain);
    calledBy(draft, items);
    const set = drafts[order - 1];
    if (set !== undefined) otherEnd(set, draft, items);
  });
}

const pumpsDown = /\bpump(?:ed|s|ing)?[ -]?down\b/;

/** "pump down test cut out at 8 cut in at 24": where the low pressure control ends it and begins again. */
export function cutAtPumpDown(
  drafts: readonly Draft[],
  items: readonly Item[],
  plain: string,
): void {
  if (!pumpsDown.test(plain)) return;
  for (const draft of drafts) {
    const at = items[draft.index - 1]?.text === "at" ? draft.index - 2 : draft.index - 1;
    const cut = items[at];
    if (!/^cuts?$/.test(cut?.text ?? "") || cut?.label?.rating !== "setpoint") continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "pressure") continue;
    if (draft.named !== undefined || draft.hint !== undefined || draft.place !== undefined)
      continue;
    draft.rating = "setpoint";
    draft.hint = "pressure";
    draft.place = "suction";
  }
}
