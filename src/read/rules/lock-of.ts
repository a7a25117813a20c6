import { mayComeOff } from "../../vocabulary.ts";
import { type Note, type Rule, type Say, state } from "../note.ts";

/** What the owner says of his lock, or others of it, where "lock is off" alone would mean the writer's own. */
const sayings: readonly (readonly [form: RegExp, say: (name: string) => Say])[] = [
  [
    /\bmy (?:lock|tag)\b(?:(?! (?:is|came|was) (?:on|off)\b)[^.;!?])*?\b(?:yours to (?:pull|take|cut|remove|lift)|(?:you|he|she|they) can (?:pull|take|cut|remove|lift|have it off)|(?:may|can) come off)\b|\b(?:you|he|she|they) (?:can|may) (?:pull|take off|take|cut|remove|lift) my (?:lock|tag)\b(?: off)?|\bgo ahead and (?:pull|take|cut|remove) my (?:lock|tag)\b(?: off)?/,
    () => ({ kind: "action", action: "unlocked", what: mayComeOff }),
  ],
  [
    /\b([\p{L}-]{2,})['’]?s (?:lock|tag)(?: (?:no\.? ?|number )?\d{1,4})?(?: is| came|'s)?(?: now)? (?:off|pulled)\b/u,
    (name) => ({ kind: "action", action: "unlocked", what: `${name}'s`, lock: "off" }),
  ],
  [
    /\b(?:mine|my own)(?: is|'s| came| too)? (?:now )?(?:off|pulled)\b/,
    () => ({ kind: "action", action: "unlocked", lock: "off" }),
  ],
  [
    /\b(?:mine|my own)(?: is|'s| went| goes)? (?:now )?(?:on|hung)\b/,
    () => ({ kind: "action", action: "locked", lock: "on" }),
  ],
  [/\block (?:no\.? ?|number )?\d{1,4}(?: is mine)?\b/, () => ({ kind: "note", about: "lock" })],
];

/** The rule's name. */
export const LOCK_OF = "<whose> lock";

/** Letters of a message that speaks of a lock; a longer one is a text, and the forms look through all of it. */
const longest = 400;

/** "Vada's lock is off", "my lock is yours to pull", "lock 7 is mine": whose lock, and by whose word. */
export const lockOf: Rule = {
  name: LOCK_OF,
  heads: "lock|tag",
  apply: (note: Note) => {
    if (note.holds.mark || note.plain.length > longest) return;
    for (const [form, say] of sayings) {
      const match = form.exec(note.plain);
      if (match === null || /^(?:it|that|what|there|he|she)$/.test(match[1] ?? "")) continue;
      const [from, to] = [match.index, match.index + match[0].length];
      const first = note.items.findIndex((item) => item.to > from);
      const end = note.items.findIndex((item) => item.from >= to);
      const last = end < 0 ? note.items.length : end;
      if (first < 0 || note.items.slice(first, last).some(({ owner }) => owner !== undefined))
        continue;
      // "my lock's on breaker 14, she can pull it": it hangs, and may come off
      if (/^my (?:lock|tag)(?:'s| is|s)? on\b/.test(match[0]))
        state(note, lockOf.name, [first, last], { kind: "action", action: "locked", lock: "on" });
      state(note, lockOf.name, [first, last], say(match[1] ?? ""));
    }
  },
};
