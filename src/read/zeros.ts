import type { Draft } from "./draft.ts";
import { itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import type { Note } from "./note.ts";
import { terminalOf } from "./stat-letters.ts";
import { zeroLike } from "./zero-like.ts";

/** "15.7 V at indoor 3, nothing at indoor 4": at a unit that a rule took by its number. */
function isAtUnit({ items }: Note, index: number): boolean {
  const [at, unit] = [items[index + 1], items[index + 2]];
  const head = unit?.owner === "head <number>" || unit?.subject?.startsWith("head ") === true;
  return /^(?:at|on)$/.test(at?.text ?? "") && head;
}
/** "hd dead, 280v dc at the fan": an indoor unit that does nothing, no figure. */
function deadHead({ items }: Note, index: number): boolean {
  const [unit, dead] = [items[index - 1], items[index]];
  const head =
    /^(?:head|hd)$/.test(unit?.text ?? "") || unit?.subject?.startsWith("head ") === true;
  return dead?.text === "dead" && head;
}

/** Volts at least of a leg of any supply; common practice, no source. */
const leastVolts = 90;

/** A zero in words counts where it has a place; "no volts … zero amps" is said twice, read once. */
export function zeros(drafts: readonly Draft[], note: Note): void {
  drafts.forEach((draft, order) => {
    if (!draft.zero) return;
    if (deadHead(note, draft.index)) {
      draft.gone = true;
      return;
    }
    const named = note.items[draft.index + 1];
    if (named?.owner === "no <volts>") {
      draft.place = named.value <= 30 ? "control" : (draft.place ?? "supply");
      draft.behind = [draft.index + 1, ...draft.behind];
      draft.points ??= terminalOf(note.items, draft.index + 1);
      return;
    }
    const next = drafts[order + 1];
    const like = draft.unit === undefined ? zeroLike(drafts, order, note.items) : undefined;
    if (like !== undefined) draft.unit = unitCalled(like);
    const placed =
      like !== undefined ||
      draft.component ||
      draft.points !== undefined ||
      draft.place !== undefined ||
      draft.grounded ||
      isAtUnit(note, draft.index);
    const apart =
      next?.zero && next.before.some((index) => note.items[index]?.kind === itemKind.points);
    if (
      next !== undefined &&
      !apart &&
      !next.gone &&
      next.value === 0 &&
      next.sentence === draft.sentence
    ) {
      // "nothing on L2 zero amps L1 and L3 are okay": those behind are told of apart
      const own = next.before.some((index) => note.items[index]?.kind === itemKind.points);
      next.points = (own ? next.points : draft.points) ?? next.points;
      next.place ??= draft.place;
      next.subject ??= draft.subject;
      draft.gone = true;
    } else if (!placed) draft.gone = true;
    const draws = note.items
      .slice(Math.max(0, draft.index - 2), draft.index)
      .some(({ text }) => /^(?:draws|pulls|carries|drawing|pulling|carrying)$/.test(text));
    if (!draft.gone && draft.unit === undefined && draws) draft.unit = unitCalled("A");
    if (!draft.gone && draft.unit === undefined) {
      const volts = note.items.some(
        (item) =>
          item.unit?.figure === "V" ||
          item.label?.quantity === "voltage" ||
          item.label?.hint === "voltage",
      );
      // "nothing on L2, 240 on L1"
      const legs = drafts.some(
        (one) =>
          !one.zero &&
          one.value >= leastVolts &&
          one.points?.some(([leg = ""]) => /^L[123]$/.test(leg)) === true &&
          (one.unit === undefined || one.unit.dimension === "voltage"),
      );
      if ((volts || legs) && placed) draft.unit = unitCalled("V");
      else draft.gone = true;
    }
  });
}
