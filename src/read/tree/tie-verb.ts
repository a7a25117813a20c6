import type { TreeWord } from "./tree-word.ts";

/** A verb that ties parts and rooms together, and how sure it makes it. */
export interface TieVerb {
  readonly from: number;
  readonly to: number;
  /** the part stands before what it feeds, or behind it */
  readonly way: "down" | "up";
  /** says by itself that one feeds the other */
  readonly sure: boolean;
}

interface Form {
  readonly words: RegExp;
  readonly way: TieVerb["way"];
  readonly sure: boolean;
}

const being = "(?:(?:is|are|both|all|each|they) )*";
/** The longest form first: what it says whole is not said by its part. */
const forms: readonly Form[] = [
  {
    words: new RegExp(
      `^${being}(?:hangs?|hanging|hung|lives?|sits?) (?:on|off of|off|from|under)$`,
    ),
    way: "up",
    sure: true,
  },
  {
    words: new RegExp(`^${being}(?:fed|served|supplied) (?:by|from|off of|off|through)$`),
    way: "up",
    sure: true,
  },
  {
    words: new RegExp(`^${being}(?:comes?|branch(?:es)?|runs?) (?:off of|off)$`),
    way: "up",
    sure: true,
  },
  { words: /^belongs? to$/, way: "up", sure: true },
  {
    words: new RegExp(`^${being}(?:connected|tied|piped|wired|plumbed|hooked) (?:to|into|up to)$`),
    way: "up",
    sure: true,
  },
  { words: /^(?:(?:is|are|both|all|each|they) )+(?:on|off of|off|under)$/, way: "up", sure: false },
  { words: /^(?:off of|off|on)$/, way: "up", sure: false },
  { words: /^(?:also |only )?(?:feeds?|serves?|supplies|supply)$/, way: "down", sure: true },
  {
    words: /^(?:also |only )?(?:has|does|handles|covers|carries|takes|goes to|go to|is|:|=)$/,
    way: "down",
    sure: false,
  },
];
const longest = 5;
/** What a form can begin with: most words begin none. */
const begins: ReadonlySet<string> = new Set(
  (
    "is are both all each they hang hangs hanging hung live lives sit sits fed served supplied come " +
    "comes branch branches run runs belong belongs connected tied piped wired plumbed hooked off on " +
    "also only feed feeds serve serves supply supplies has does handles covers carries takes goes go : ="
  ).split(" "),
);

/** The verb that begins at a word. */
function verbAt(words: readonly TreeWord[], at: number): TieVerb | undefined {
  if (!begins.has(words[at]?.text ?? "")) return undefined;
  for (let length = longest; length > 0; length--) {
    if (at + length > words.length) continue;
    const said = words
      .slice(at, at + length)
      .map(({ text }) => text)
      .join(" ");
    const form = forms.find((one) => one.words.test(said));
    if (form !== undefined) return { from: at, to: at + length, way: form.way, sure: form.sure };
  }
  return undefined;
}

/** All of them in order, none inside another. */
export function tieVerbs(words: readonly TreeWord[]): readonly TieVerb[] {
  const verbs: TieVerb[] = [];
  for (let at = 0; at < words.length; ) {
    const verb = verbAt(words, at);
    if (verb !== undefined) verbs.push(verb);
    at = verb?.to ?? at + 1;
  }
  return verbs;
}
