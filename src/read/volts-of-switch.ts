import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { throughSwitch } from "./through-switch.ts";

const control = { from: 18, to: 32 } as const;
const supply = { from: 102, to: 132 } as const;
const switches = /^(?:switch|sw|lps|hps|lpc|hpc|limit|safety|float|stat|cutout|rollout)$/;
const reads = /^(?:has|have|had|got|gets|reads?|shows?|with|is)$/;
/** Where on a switch it was read, behind the figure. */
const side =
  /^(?:(?:going )?in(?:to it)?|out(?: of it)?|coming (?:in|out)|on (?:one|the one|the other|both|each|either|the line|the load|this|that|top|bottom)\b)/;

const within = (value: number, { from, to }: { from: number; to: number }): boolean =>
  value >= from && value <= to;

const isVolts = (value: number): boolean =>
  value === 0 || within(value, control) || within(value, supply);

/** "low pressure switch has 26 on one side and nothing on the other": what is read on both sides of a switch is control volts, whatever the switch is called. */
function onItsSides(drafts: readonly Draft[], items: readonly Item[]): void {
  let told = false;
  drafts.forEach((draft, order) => {
    if (draft.ownUnit || draft.points !== undefined || draft.gone || !isVolts(draft.value)) return;
    const from = drafts[order - 1]?.index ?? -1;
    const ahead = items.slice(Math.max(from + 1, draft.index - 4), draft.index);
    const named = ahead.findLastIndex(({ text }) => switches.test(text) || /\bswitch$/.test(text));
    const led = named >= 0 && ahead.slice(named + 1).some(({ text }) => reads.test(text));
    const behind = items
      .slice(draft.index + 1, draft.index + 5)
      .map(({ text }) => text)
      .join(" ");
    if (!side.test(behind) || !(led || (told && order > 0))) return;
    told = true;
    draft.named = "voltage";
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
    draft.hint = undefined;
    draft.place = "control";
    draft.rating = undefined;
  });
}

export function voltsAtSwitch(drafts: readonly Draft[], items: readonly Item[]): void {
  throughSwitch(drafts, items);
  onItsSides(drafts, items);
}
