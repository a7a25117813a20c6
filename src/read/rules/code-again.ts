import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";
import { textAt } from "./near.ts";

/** What leads to a code behind another: "went to", "came back with", "it's", "still". */
const leads =
  /^(?:to|with|is|its|it's|was|a|an|got|getting|now|then|and|says|threw|throws|throwing|still|another|same|gives|gave|back|,|but)$/;
/** What may follow a code whose letter could be a terminal's too. */
const follows =
  /^(?:this|now|again|on|at|after|right|every|each|up|in|when|as|almost|straight|,|\.)$/;

interface Seen {
  readonly value: string;
  readonly end: number;
}

/** "P nine", "P9", "E 11": one or two letters and their digits. */
function codeAt({ items, text }: Note, i: number): Seen | undefined {
  const item = items[i];
  if (item === undefined || item.owner !== undefined) return undefined;
  const typed = text.slice(item.from, item.to);
  if (/^[A-Za-z]{1,2}-?\d{1,3}$/.test(typed) && item.kind !== itemKind.number)
    return { value: typed.toUpperCase(), end: i + 1 };
  const next = items[i + 1];
  if (!/^[A-Z]$/.test(typed) || next?.kind !== itemKind.number || next.owner !== undefined)
    return undefined;
  if (next.unit !== undefined || !Number.isInteger(next.value) || next.value > 999)
    return undefined;
  return { value: `${typed}${next.spoken ? next.value : next.text}`, end: i + 2 };
}

function fits(items: readonly Item[], i: number, seen: Seen): boolean {
  const next = items[seen.end];
  if (i > 0 && !leads.test(textAt(items, i - 1))) return false;
  if (next?.kind === itemKind.unit || next?.kind === itemKind.number) return false;
  // "n2 on at 400": nitrogen
  if (seen.value === "N2") return false;
  const terminal = /^[LTUVWCRSN]/.test(seen.value);
  return terminal ? next === undefined || follows.test(next.text) : next?.text !== "to";
}

/** "went straight to P nine", "it's E six now" behind another code: the next one, without the word. */
export const codeAgain: Rule = {
  name: "<code>, then <code>",
  needs: "context",
  apply: (note) => {
    const last = note.context.readings[note.context.readings.length - 1];
    if (last?.quantity !== "fault_code" || note.readings.length > 0) return;
    const { items } = note;
    for (let i = 0; i < items.length; i++) {
      const seen = codeAt(note, i);
      if (seen === undefined || !fits(items, i, seen)) continue;
      for (const item of items.slice(i, seen.end)) item.owner = codeAgain.name;
      const span = [items[i]?.from ?? 0, items[seen.end - 1]?.to ?? 0] as const;
      fileCode(note, seen.value, { span, rule: codeAgain.name });
      i = seen.end - 1;
    }
  },
};
