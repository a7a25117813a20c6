import { mayComeOff } from "../../vocabulary.ts";
import { type Note, type Rule, type Say, state } from "../note.ts";

/** What the owner says of his lock, or others of it, where "lock is off" alone would mean the writer's own. */
const sayings: readonly (readonly [form: RegExp, say: (name: string) => Say])[] = [
  // what an owner is said to have said is not his own word: nothing comes off by it
  [
    /\b([\p{L}-]{2,})(?:['’]?s)? (?:(?:just |already )?(?:said|says|told me|tells me|texted|phoned|called|ok'?d|okayed|gave (?:me |us )?(?:the |his |her )?ok(?:ay)?)|(?:is|was) (?:ok|okay|fine|good) with)\b[^.;!?]*?\b(?:(?:pull|take|cut|remove|lift)\w* )?(?:his|her|their|the) (?:lock|tag)(?: (?:can |may )?(?:come )?(?:off|go))?|\bok(?:ay)? from ([\p{L}-]{2,})\b[^.;!?]*?\b(?:his|her|their|the) (?:lock|tag)\b(?: off)?/u,
    (name) => ({ kind: "action", action: "unlocked", what: `${name}'s`, planned: true }),
  ],
  [
    /\bmy (?:lock|tag)\b(?:(?! (?:is|came|was) (?:on|off)\b)[^.;!?])*?\b(?:yours to (?:pull|take|cut|remove|lift)|(?:you|he|she|they) can (?:pull|take|cut|remove|lift|have it off)|(?:may|can) come off)\b|\b(?:you|he|she|they) (?:can|may) (?:pull|take off|take|cut|remove|lift) my (?:lock|tag)\b(?: off)?|\bgo ahead and (?:pull|take|cut|remove) my (?:lock|tag)\b(?: off)?|(?:^|(?:^|[,.;!?] ?|^(?:yes|yeah|yep|ok|okay|sure) )@?[\p{L}-]{2,}[,:]? (?:please |pls |just |can |may |could |go ahead and )*)(?:pull|take|cut|remove|lift) my (?:lock|tag)\b(?: off)?/u,
    () => ({ kind: "action", action: "unlocked", what: mayComeOff }),
  ],
  [
    /\b((?!his\b|its\b)[\p{L}-]{2,})['’]?s (?:lock|tag)(?: (?:no\.? ?|number )?\d{1,4})?(?: is| came|'s)?(?: now)? (?:off|pulled)\b/u,
    (name) => ({ kind: "action", action: "unlocked", what: `${name}'s`, lock: "off" }),
  ],
  // "kai forgot his lock on the breaker"
  [
    /\b([\p{L}-]{2,}) (?:forgot|left|has|still has|got|put|hung) (?:his|her|their|a) (?:lock|tag)(?: (?:is |still )?(?:on|there|hanging))?\b/u,
    (name) => ({ kind: "action", action: "locked", what: `${name}'s`, lock: "on" }),
  ],
  // "hers off, mine on"
  [
    /\b(hers|his|theirs)(?: is|'s| came)? (?:now )?off(?=,? (?:and |n )?(?:mine|my own)\b)/,
    (name) => ({ kind: "action", action: "unlocked", what: name, lock: "off" }),
  ],
  [
    /\b(?:mine|my own)(?: is|'s| came| too)? (?:now )?(?:off|pulled)\b/,
    () => ({ kind: "action", action: "unlocked", lock: "off" }),
  ],
  [
    /\b(?:mine|my own)(?: is|'s| went| goes)? (?:now )?(?:on|hung)\b/,
    () => ({ kind: "action", action: "locked", lock: "on" }),
  ],
  // "take it off kas, I ok it": of the lock that was asked about
  [
    /^(?:@?(?!i\b|we\b)[\p{L}-]{2,},? )?(?:go ahead and |just |yes,? |yeah,? |ok,? )?(?:take|pull|cut) it off\b[^.;!?]*?\b(?:i(?:'m)? (?:ok|okay|good with|fine with)|(?:ok|okay|fine|good) (?:by|with) me|you(?:'ve| have) my (?:ok|okay|word))\b/u,
    () => ({ kind: "action", action: "unlocked", what: mayComeOff }),
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
  heads: "lock|tag|mine|off",
  apply: (note: Note) => {
    if (note.holds.mark || note.plain.length > longest) return;
    if (
      !/\b(?:lock|tag)\b|\b(?:take|pull|cut) it off\b|\b(?:hers|his|theirs) (?:is )?off\b/.test(
        note.plain,
      )
    )
      return;
    for (const [form, say] of sayings) {
      const match = form.exec(note.plain);
      if (
        match === null ||
        /^(?:i|we|it|that|what|there|he|she|who|somebody|someone|they|customer)$/.test(
          match[1] ?? match[2] ?? "",
        )
      )
        continue;
      const [from, to] = [match.index, match.index + match[0].length];
      const first = note.items.findIndex((item) => item.to > from);
      const end = note.items.findIndex((item) => item.from >= to);
      const last = end < 0 ? note.items.length : end;
      if (first < 0 || note.items.slice(first, last).some(({ owner }) => owner !== undefined))
        continue;
      // "my lock's on breaker 14, she can pull it": it hangs, and may come off
      if (/^my (?:lock|tag)(?:'s| is|s)? on\b/.test(match[0]))
        state(note, lockOf.name, [first, last], { kind: "action", action: "locked", lock: "on" });
      state(note, lockOf.name, [first, last], say(match[1] ?? match[2] ?? ""));
    }
  },
};
