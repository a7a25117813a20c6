import type { Draft } from "./draft.ts";
import type { Note } from "./note.ts";

const piped =
  /^(?:section|circuit|ckt|system|loop|lineset|branch|lines|piping|it|them|suction|liquid)$/;

/** "vac on that section 400": a pump is on it, and no meter. */
function vacOnPipes({ items }: Note, draft: Draft): boolean {
  const vac = items.slice(0, draft.index).findLastIndex(({ text }) => text === "vac");
  if (vac < 0 || items[vac + 1]?.text !== "on" || draft.points !== undefined) return false;
  const words = items.slice(vac + 2, draft.index);
  const { subject = "", place } = draft;
  const line = /^(?:suction|discharge|liquid)$/.test(place ?? "") || subject.startsWith("circuit");
  return line || words.some(({ text }) => piped.test(text));
}

/** What is shut between a pump and a circuit. */
const shutOff =
  /\b(?:valve off|core tools?|blanked|(?:shut|closed|valved|iso|isolated)(?: it)? off)\b/;

/** "vac 480": microns of vacuum or volts AC, where neither is spoken of elsewhere. */
export function vacOrVolts(note: Note, draft: Draft): boolean {
  if (draft.quantity !== "vacuum" || !draft.assumedUnit || draft.value < 20 || draft.value > 700)
    return false;
  if (
    !draft.before.some((index) => note.items[index]?.text === "vac") &&
    !draft.behind.some((index) => note.items[index]?.text === "vac")
  )
    return false;
  if (draft.after !== undefined || draft.lasting !== undefined) return false;
  if (vacOnPipes(note, draft)) return false;
  // what came down by steps was pulled
  if (draft.series !== undefined) return false;
  const pumped = note.items.some((item) =>
    /^(?:hold|holding|holds|held|steady|pump|pulled|pulling|pull|decay|isolated|iso|iso'd|isod|vacuum|deep|down|valved)$/.test(
      item.text,
    ),
  );
  return (
    !pumped &&
    !shutOff.test(note.plain) &&
    !note.context.readings.some((reading) => reading.quantity === "vacuum")
  );
}
