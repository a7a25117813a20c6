import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";

/** "amps at 60hz 41, at 45hz 29", "45 Hz 8.2 amps, 60 Hz 12.1": at each frequency what was drawn there, no second frequency. */
export function atFrequencies(list: readonly Draft[], items: readonly Item[]): void {
  if (!list.some(({ unit }) => unit?.dimension === "frequency")) return;
  againAtFrequency(list, items);
  drawnAhead(list, items);
  const amps = items.some(({ label, text }) => label?.quantity === "current" || text === "amps");
  list.forEach((draft, order) => {
    const left = list[order - 1];
    if (left?.unit?.dimension !== "frequency" || !left.ownUnit || draft.unit !== undefined) return;
    const at = amps && /^(?:at|@)$/.test(items[left.index - 1]?.text ?? "");
    const [first, drawn] = [list[order - 3], list[order - 2]];
    const draws = drawn?.named === "current" || drawn?.unit?.dimension === "current";
    const again = first?.unit?.dimension === "frequency" && draws;
    if ((at || again) && draft.index === left.index + 1 && draft.named === undefined)
      draft.named = "current";
  });
}

/** "40.9 A @ 60 Hz 38.2 at 52": the second value is drawn at the second frequency. */
function againAtFrequency(list: readonly Draft[], items: readonly Item[]): void {
  const joint = (one: Draft): boolean => /^(?:at|@)$/.test(items[one.index - 1]?.text ?? "");
  list.forEach((draft, order) => {
    const [drawn, left, next] = [list[order - 2], list[order - 1], list[order + 1]];
    if (drawn?.unit?.dimension !== "current" || left?.unit?.dimension !== "frequency") return;
    if (next === undefined || next.index !== draft.index + 2 || !joint(left) || !joint(next))
      return;
    if (draft.unit !== undefined || next.unit !== undefined || draft.named !== undefined) return;
    const far = draft.value / drawn.value;
    if (far < 0.2 || far > 5 || next.value < 10 || next.value > 130) return;
    draft.named = "current";
    next.named = "frequency";
    next.unit = left.unit;
    next.assumedUnit = true;
  });
}

/** A that a compressor on a drive draws at most, where nothing but its name is told. Common practice, no source. */
const mostDrawn = 20;

/** "bus 289 comp 11.2 38hz": no row of frequencies, for no compressor turns so slowly. */
function drawnAhead(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((draft, order) => {
    const next = list[order + 1];
    const speed = items[next?.index ?? -1];
    if (next?.unit?.dimension !== "frequency") return;
    const glued = speed?.unitFrom === speed?.numberTo;
    if (!glued && next.value < 2 * draft.value) return;
    if (next.index !== draft.index + 1 || !isUntold(draft) || draft.value >= mostDrawn) return;
    const lead = items[draft.index - 1];
    const comp = /^comp/.test(lead?.label?.thing ?? lead?.subject ?? lead?.text ?? "");
    if (comp || /^c(?:mp|pr)/.test(lead?.text ?? "")) draft.named = "current";
  });
}
