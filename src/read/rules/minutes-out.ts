import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";
import { STATUS } from "./status-words.ts";

/** Minutes of a drive as they are rounded: to five, and no more than an hour and a half. */
function driven(item: Item | undefined): item is Item {
  if (!freeNumber(item) || item.unit !== undefined || item.value <= 0) return false;
  return item.value <= 3 || (item.value % 5 === 0 && (item.value <= 60 || item.value === 90));
}

const warmth = /^(?:today|here|and|side|door|air|temp|db|f|c)$/;

/** "15 out", "20 away": behind the number, and nothing of the air. */
function outBehind({ items }: Note, i: number): boolean {
  const [out, next] = [textAt(items, i + 1), textAt(items, i + 2)];
  return /^(?:out|away)$/.test(out) && !warmth.test(next);
}

const thereIn = /\b(?:there|see (?:you|ya|u)) in (?:about |like |maybe |another )?$/;

/** "be there in 20": a drive of so many minutes. */
function inBefore({ items, plain }: Note, i: number): boolean {
  return thereIn.test(plain.slice(0, items[i]?.from));
}

/** "otw 15": nothing stands behind the number, and nothing but the way before it. */
function alone({ items }: Note, i: number): boolean {
  if (items[i + 1] !== undefined || i === 0) return false;
  const before = items.slice(0, i);
  return before.every(({ owner, kind }) => owner === STATUS || kind === itemKind.sign);
}

/** "omw rtu12, 15 out": who is on his way is so many minutes from the site; no air is as warm. */
export const minutesOut: Rule = {
  name: "<on the way> <number> out",
  heads: "out|away|there|see|otw|omw|way|rolling|headed|heading|enroute",
  needs: "number",
  apply: (note) => {
    const going = note.statements.some(
      (said) => said.kind === "status" && said.status === "on_the_way",
    );
    const headed = note.items.some(({ text }) => /^(?:headed|heading|rolling|enroute)$/.test(text));
    if (!going && !headed) return;
    note.items.forEach((item, i) => {
      if (!driven(item)) return;
      const behind = outBehind(note, i);
      if (!behind && !inBefore(note, i) && !(going && alone(note, i))) return;
      state(note, minutesOut.name, [i, behind ? i + 2 : i + 1], { kind: "note", about: "time" });
    });
  },
};
