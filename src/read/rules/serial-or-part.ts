import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { gluedEnd, isSmall, textAt } from "./near.ts";

type Head = "serial" | "model" | "part" | "ticket";

const heads: Readonly<Record<string, Head>> = {
  serial: "serial",
  sn: "serial",
  ser: "serial",
  "s n": "serial",
  model: "model",
  mod: "model",
  "m n": "model",
  mdl: "model",
  part: "part",
  pn: "part",
  "p n": "part",
  prt: "part",
  sku: "part",
  oem: "part",
  ticket: "ticket",
  po: "ticket",
  confirmation: "ticket",
  account: "ticket",
  acct: "ticket",
  permit: "ticket",
  rma: "ticket",
  wo: "ticket",
};

const letterHeads: Readonly<Record<string, Head>> = { m: "model", s: "serial", p: "part" };

/** "s/n", "p/n" come as three items; the head's name and the item behind it. */
function headAt(items: readonly Item[], i: number): { kind: Head; end: number } | undefined {
  const text = textAt(items, i);
  const own = heads[text];
  if (own !== undefined && items[i]?.kind !== itemKind.number) return { kind: own, end: i + 1 };
  // "work order 448812" is one item
  const one = items[i];
  if (text === "work" && one !== undefined && one.to - one.from >= "work order".length)
    return { kind: "ticket", end: i + 1 };
  // "m# XR-090K s# 55127A"
  const letter = letterHeads[text];
  if (letter !== undefined && textAt(items, i + 1) === "#" && items[i + 1]?.glued === true)
    return { kind: letter, end: i + 2 };
  if (textAt(items, i + 1) === "/" && textAt(items, i + 2) === "n") {
    const found = heads[`${text} n`];
    if (found !== undefined) return { kind: found, end: i + 3 };
  }
  return undefined;
}

function skip(items: readonly Item[], i: number): number {
  let at = i;
  while (
    at < items.length &&
    (isSmall(items[at]) || /^(?:#|:|number|no|num|nbr|\.|=)$/.test(textAt(items, at)))
  ) {
    const item = items[at];
    if (item !== undefined && isStrongBreak(item) && items[at + 1]?.glued === false && at > i)
      break;
    at++;
  }
  for (let ahead = at; ahead < at + 4; ahead++) {
    const word = items[ahead];
    if (word === undefined || word.kind === itemKind.number || isStrongBreak(word)) break;
    if (textAt(items, ahead) === "is" || word.apostrophe) return ahead + 1;
  }
  return at;
}

function hasDigit(text: string): boolean {
  return /\d/.test(text);
}

/** "four seven one five oh two A", "U eleven K zero zero three": figures and letters said one by one. */
function spokenEnd(items: readonly Item[], from: number): number {
  let end = from;
  let figures = false;
  for (; end < items.length; end++) {
    const item = items[end];
    if (item === undefined) break;
    const figure = item.kind === itemKind.number && item.spoken;
    const letter = item.to - item.from <= 1 && /^[a-z]$/.test(item.text);
    const dash = item.text === "dash" || (item.text === "-" && figures);
    if (!figure && !letter && !dash) break;
    figures ||= figure;
  }
  return figures ? end : from;
}

/** The number behind the head: a glued run with a digit, or letters and digits that follow. */
function numberEnd(note: Note, from: number): number | undefined {
  const { items } = note;
  let end = gluedEnd(items, from);
  const first = items[from];
  const last = items[end - 1];
  if (first === undefined || last === undefined) return undefined;
  if (hasDigit(note.text.slice(first.from, last.to))) return end;
  const told = spokenEnd(items, from);
  if (told > from + 1 || (first.kind === itemKind.number && first.spoken)) return told;
  const next = items[end];
  if (next === undefined || isSmall(next)) return undefined;
  end = gluedEnd(items, end);
  return hasDigit(note.text.slice(next.from, items[end - 1]?.to ?? next.to)) ? end : undefined;
}

/** "part number eighty eight dash forty one": the first figures went with the word "number". */
function startOf({ items, plain }: Note, from: number): number {
  const before = items[from - 1];
  const start = items[from]?.from ?? 0;
  if (before?.kind !== itemKind.subject || before.text !== "number") return start;
  const figures = /^number\s+(?=\w)/.exec(plain.slice(before.from, before.to));
  return figures === null ? start : before.from + figures[0].length;
}

/** "s/n 0419C77381", "model KX048C-3", "part 44-1902 rev C" */
export const serials: Rule = {
  name: "serial|model|part <code>",
  heads:
    "serial|sn|ser|model|mod|mdl|part|pn|prt|sku|oem|s|p|m|ticket|po|confirmation|account|acct|permit|rma|wo|work",
  apply: (note) => {
    const { items } = note;
    for (let i = 0; i < items.length; i++) {
      const head = headAt(items, i);
      if (head === undefined || items[i]?.owner !== undefined) continue;
      const from = skip(items, head.end);
      if (
        from >= items.length ||
        /^[)\]]$/.test(textAt(items, from)) ||
        /^(?:plate|tag|nameplate|sticker)$/.test(textAt(items, from))
      )
        continue;
      const end = numberEnd(note, from);
      if (end === undefined) continue;
      const value = note.text.slice(startOf(note, from), items[end - 1]?.to ?? 0);
      if (head.kind === "part")
        state(note, serials.name, [i, end], { kind: "note", about: `part ${value}` });
      else if (head.kind === "ticket") {
        if (!/\d{4}/.test(value)) continue;
        state(note, serials.name, [i, end], { kind: "note", about: "ticket" });
      } else state(note, serials.name, [i, end], { kind: "nameplate", field: head.kind, value });
      i = end - 1;
    }
  },
};
