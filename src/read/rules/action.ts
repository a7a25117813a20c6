import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind, wordsFrom } from "../item.ts";
import { isNitrogen } from "../nitrogen-name.ts";
import type { Note, Rule } from "../note.ts";
import { signName } from "../signs.ts";
import { role } from "../word.ts";
import { type ActionWords, actionWords } from "../words/actions.ts";
import { checkDue } from "./check-due.ts";
import { LOCK_OF } from "./lock-of.ts";
import { isInTruck, isOtherPump } from "./other-pump.ts";
import { clauseBehind, isBreak, shutIn } from "./shut-in.ts";

const bySign = new Map<string, ActionWords>(actionWords.map((row) => [`do:${row.action}`, row]));

function actionOf(item: Item): ActionWords | undefined {
  for (const index of item.signs ?? []) {
    const found = bySign.get(signName(index));
    if (found !== undefined) return found;
  }
  return undefined;
}

function rolesBefore(items: readonly Item[], i: number, far: number): number {
  let roles = 0;
  for (let at = i - 1; at >= 0 && at >= i - far; at--) {
    const item = items[at];
    if (
      item === undefined ||
      isStrongBreak(item) ||
      item.text === "," ||
      item.text === "but" ||
      item.text === "and"
    )
      break;
    roles |= item.roles;
  }
  return roles;
}

const opens = /^(?:in )?(?:it|its|she|he|they)$/;
const saysWhen = /^(?:before|after|until|till|while|when|now|again|i|we|he)$/;

function nameable(item: Item | undefined): boolean {
  if (item === undefined || isBreak(item) || saysWhen.test(item.text)) return false;
  if (item.kind === itemKind.subject) return true;
  return (
    (item.kind === itemKind.word || item.kind === itemKind.label) &&
    (item.roles & ~(role.article | role.only)) === 0 &&
    item.label?.quantity === undefined
  );
}

/** What it was done to: the words behind, else before, up to the next break. */
function whatOf(note: Note, i: number): string | undefined {
  const { items } = note;
  let from = i + 1;
  while (from < items.length && (items[from]?.from ?? 0) < (items[i]?.signsTo ?? 0)) from++;
  const first = from;
  while (from < items.length && ((items[from]?.roles ?? 0) & role.article) !== 0) from++;
  // "washed it head's down": what it was is not said again
  if (items.slice(first, from).some(({ text }) => /^(?:it|them|em)$/.test(text))) return undefined;
  let to = from;
  while (
    to < from + 4 &&
    nameable(items[to]) &&
    // "put a new motor in it spins the right way": a sentence of its own
    !(to > from && opens.test(note.plain.slice(items[to]?.from, items[to]?.to))) &&
    items[to]?.signs?.some((index) => signName(index).startsWith("do:")) !== true
  )
    to++;
  if (to > from) return nameOf(note, from, to);
  let start = i - 1;
  while (start >= 0 && ((items[start]?.roles ?? 0) & role.is) !== 0) start--;
  let begin = start + 1;
  while (begin > 0 && begin > start - 2 && nameable(items[begin - 1])) begin--;
  return begin <= start ? nameOf(note, begin, start + 1) : undefined;
}

function nameOf(note: Note, from: number, to: number): string | undefined {
  let start = from;
  for (let i = from; i < to; i++) {
    const { subject } = note.items[i] ?? {};
    // "the ckt 2 contactor": where it sits, and then the part
    if (i < to - 1 && /^(?:circuit|stage|zone) /.test(subject ?? "")) start = i + 1;
    else if (subject !== undefined && subject !== "") return subject;
  }
  while (start < to - 1 && ((note.items[start]?.roles ?? 0) & (role.article | role.only)) !== 0)
    start++;
  const first = note.items[start];
  const last = note.items[to - 1];
  if (first === undefined || last === undefined) return undefined;
  const text = note.text.slice(first.from, last.to).trim().toLowerCase();
  // "recovered what was left"
  if (/^(?:what|whatever|which)\b/.test(text)) return undefined;
  return text.length > 1 ? text : undefined;
}

function seized({ items }: Note, i: number): boolean {
  const [before, item, next] = [items[i - 1], items[i], items[i + 1]];
  if (/^locked up$/.test(item?.text ?? "") || item?.label?.state === "start") return true;
  const motor = /^(?:comp|compressor|rotor|motor|pump|fan)/.test(before?.text ?? "");
  return motor && item?.text === "locked" && next?.unit?.dimension === "current";
}

/** What people lock that is no machine. */
const ways = /^(?:doors?|gates?|building)$/;
const waysBehind = /^(?:hatch|ladder|cage|fence|gates?|closet)$/;

/** "locked the roof hatch", "pulled the lock on the ladder cage" */
function wayBehind(items: readonly Item[], i: number): boolean {
  return clauseBehind(items, i, 8).some(({ text }) => waysBehind.test(text));
}

/** "temps recovered nicely", "room recovered to 74": what comes back by itself, no gas that was taken out. */
function cameBack(items: readonly Item[], i: number): boolean {
  const itself =
    /^(?:temps?|temperatures?|rooms?|space|box|pressures?|volts|voltage|bus|it|suction|head)$/;
  return (
    itself.test(items[i - 1]?.text ?? "") ||
    (items[i + 1]?.text === "to" && items[i + 2]?.unit?.dimension === "temperature")
  );
}

/** "unit was charged last month", "was replaced in 2022": told of another day. */
function longAgo({ items, statements, text }: Note, i: number): boolean {
  if (clauseBehind(items, i, 5).some(({ roles }) => (roles & role.earlier) !== 0)) return true;
  const from = items[i]?.to ?? 0;
  return statements.some(
    (one) =>
      one.kind === "note" &&
      one.about === "date" &&
      /^(?:19|20)\d\d$/.test(one.said) &&
      !/[,.;]/.test(text.slice(from, one.spans[0]?.[0])) &&
      (one.spans[0]?.[0] ?? 0) > from,
  );
}

/** "needs to be replaced", "should be cleaned": to be done yet. */
function stillToDo(items: readonly Item[], i: number): boolean {
  const said = wordsFrom(items, i - 3, i);
  return (
    /\b(?:needs?|has|ought|should|must|got)(?: to)?(?: be)?$/.test(said) &&
    /\b(?:be|needs?|should|must)\b/.test(said)
  );
}

/** What a machine locks itself out on. */
const trips =
  /^(?:high|hi|hp|head|low|lp|pressure|fault|code|safety|limit|overload|oil|freeze|temp|discharge|error|alarm|hpc|lpc|trip|trips|tries|[a-z]\d{1,3})$/;

/** "both stages locked out on high head": a machine that stopped itself, nobody's lock. */
function lockedItself(items: readonly Item[], i: number): boolean {
  const out = items[i + 1]?.text === "out" ? i + 1 : i;
  // "hi head lockout on stage 1"
  if (trips.test(items[i - 1]?.text ?? "") && /^lockout/.test(items[i]?.text ?? "")) return true;
  if (!/^(?:on|by|after|from|with|w)$/.test(items[out + 1]?.text ?? "")) return false;
  return items.slice(out + 2, out + 5).some(({ text }) => trips.test(text));
}

/** "i think its locked", "comp is locked": a rotor, unless what is locked out was named. */
function rotorLocked({ items, plain }: Note, i: number): boolean {
  const item = items[i];
  if (item === undefined || plain.slice(item.from, Math.max(item.to, item.signsTo)) !== "locked")
    return false;
  if (items.some(({ text }) => /^(?:disconnect|disco|breaker|lockout|tag|tagged|power)/.test(text)))
    return false;
  return items
    .slice(Math.max(0, i - 3), i)
    .some(({ text }) =>
      /^(?:is|it'?s|was|think|comp|compressor|rotor|motor|seems|looks)$/.test(text),
    );
}

/** "locked rotor", "charged 6 oz": words that are part of a measurement or mean another thing. */
function meant(note: Note, i: number, row: ActionWords): boolean {
  const { items } = note;
  const item = items[i];
  const next = items[i + 1];
  if (item === undefined || item.owner === "<status> <time>") return false;
  if (
    row.action === "locked" &&
    (next?.text === "rotor" ||
      (next?.text === "at" && items[i + 2]?.kind === itemKind.number) ||
      next?.text === "up" ||
      items.some(({ text }) => ways.test(text)) ||
      wayBehind(items, i))
  )
    return false;
  // "valved off the drier": a part is shut in, no pump is taken off
  if (row.action === "vacuum_isolated" && shutIn(note, i)) return false;
  // "wet vac on the drain"
  if (row.action === "vacuum_started" ? isOtherPump(note, i) : isInTruck(note, i)) return false;
  // "pulled the lock on the roof hatch"
  if (row.action === "unlocked" && wayBehind(items, i)) return false;
  const before = items[i - 1];
  if (row.action === "recovered" && cameBack(items, i)) return false;
  // "charged to 450 psi n2": no refrigerant went in
  const mass = items.some(({ unit }) => unit?.dimension === "mass");
  // "charged to 620 volts": a bus
  const other = items.some((one) => isNitrogen(one) || one.unit?.dimension === "voltage");
  if (row.action === "charged" && next?.text === "to" && other && !mass) return false;
  if (row.action === "locked" && (lockedItself(items, i) || rotorLocked(note, i))) return false;
  // "compressor locked up", "comp locked 88a": it does not turn
  if (row.action === "locked" && seized(note, i)) return false;
  if (row.action === "locked" && (item.label?.rating === "LRA" || before?.unit?.figure === "A"))
    return false;
  // "changed stat from 74 to 72"
  const fromTo = items.slice(i + 1, i + 5).some(({ text }) => text === "from");
  if (row.action === "replaced" && item.text === "changed" && fromTo) return false;
  if (row.action === "adjusted" && /^level/.test(item.text) && next?.text === "at") return false;
  if (
    row.action === "replaced" &&
    item.text === "changed" &&
    /^(?:those|to)$/.test(next?.text ?? "")
  )
    return false;
  if (row.action === "tested" && item.text === "checked" && (next?.roles ?? 0) & role.is)
    return false;
  if (row.action === "tested" && checkDue(note, i)) return false;
  if (row.action === "leads_lifted" && item.text === "lifted" && next === undefined) return false;
  return true;
}

function say(note: Note, i: number, row: ActionWords): void {
  const item = note.items[i];
  if (item === undefined) return;
  const before = rolesBefore(note.items, i, 5);
  if ((before & role.not) !== 0) return;
  const planned = (before & role.plan) !== 0 || stillToDo(note.items, i);
  const what = whatOf(note, i);
  const { action, lock, bypass, leads, circuit } = row;
  note.statements.push({
    kind: "action",
    action,
    ...(what === undefined ? {} : { what }),
    ...(planned
      ? { planned: true as const }
      : {
          ...(lock === undefined ? {} : { lock }),
          ...(bypass === undefined ? {} : { bypass }),
          ...(leads === undefined ? {} : { leads }),
          ...(circuit === undefined ? {} : { circuit }),
        }),
    said: note.text.slice(item.from, Math.max(item.to, item.signsTo)),
    spans: [[item.from, Math.max(item.to, item.signsTo)]],
    rule: actions.name,
  });
}

/** "locked it out", "leads off", "comp 1 replaced", "isolated at 360" */
export const actions: Rule = {
  name: "<what was done>",
  needs: "signs",
  apply: (note) => {
    if (
      note.holds.question ||
      note.statements.some(
        (one) => one.kind === "open_job" || one.kind === "undo" || one.kind === "question",
      )
    )
      return;
    const seen = new Set<string>();
    note.items.forEach((item, i) => {
      if (item.signs === undefined || item.owner === LOCK_OF) return;
      const row = actionOf(item);
      if (row === undefined || seen.has(row.action) || !meant(note, i, row)) return;
      if (((item.roles | rolesBefore(note.items, i, 2)) & role.earlier) !== 0) return;
      if (longAgo(note, i)) return;
      seen.add(row.action);
      say(note, i, row);
    });
  },
};
