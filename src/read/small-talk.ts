import { type Item, isOneWord, itemKind } from "./item.ts";

/** Words that open a message and say nothing: what follows is read as if they were not there. */
const empty =
  /^(?:er|hey|hi|hello|yo|alright|allright|okay|ok|so|anyway|anyways|morning|afternoon|listen|fyi|btw|yeah|yep|update)$/;
/** "yes", as an answer to what was asked. */
const agrees = /^(?:alright|okay|ok|yeah|yep|so)$/;
/** Openers of several words. */
const phrases: readonly (readonly string[])[] = [
  ["just", "so", "you", "know"],
  ["here", "goes"],
  ["here", "we", "go"],
  ["heads", "up"],
  ["by", "the", "way"],
  ["good", "morning"],
  ["quick", "one"],
  ["quick", "update"],
  ["hey", "guys"],
  ["hey", "boss"],
];
const firsts: ReadonlySet<string | undefined> = new Set(phrases.map(([first]) => first));
const longest = 4;
const longestClose = 5;

/** Words that close one; "over" may be beyond a meter's range. */
const closing = /^(?:thanks|thx|thankyou|cheers|fyi|lol|haha)$/;
const closes: ReadonlySet<string> = new Set([
  "thats all for now",
  "thats it for now",
  "thats all i got",
  "talk soon",
  "let you know",
  "will let you know",
  "ill let you know",
  "keep you posted",
  "will keep you posted",
  "standing by",
  "more in a minute",
  "more in a bit",
  "more in a sec",
  "more to come",
  "more to follow",
  "thank you",
]);

function phraseLength(items: readonly Item[], at: number): number {
  if (!firsts.has(items[at]?.text)) return 0;
  const texts = items.slice(at, at + longest).map(({ text }) => text);
  return phrases.find((phrase) => phrase.every((word, i) => texts[i] === word))?.length ?? 0;
}

/** Where the closing words begin; the end of the items where there are none. */
function closedAt(items: readonly Item[], typed: string): number {
  let end = items.length;
  for (;;) {
    const item = items[end - 1];
    if (item === undefined) return end;
    if (item.kind !== itemKind.number && closing.test(item.text)) end--;
    else {
      const from = phraseFrom(items, end, typed);
      if (from === undefined) return end;
      end = from;
    }
    while (end < items.length && /^[,.;-]$/.test(items[end - 1]?.text ?? "")) end--;
  }
}

/** The item that a closing phrase begins with, where one ends at `end`; by its letters, as "a minute" is a number. */
function phraseFrom(items: readonly Item[], end: number, typed: string): number | undefined {
  const to = items[end - 1]?.to ?? 0;
  for (let at = end - 1; at >= Math.max(0, end - longestClose); at--)
    if (closes.has(typed.slice(items[at]?.from ?? 0, to).replaceAll("'", ""))) return at;
  return undefined;
}

const isFigure = ({ kind }: Item): boolean => kind === itemKind.number;

/** "ok so um lead 1 …", "… thanks": takes what only opens or closes the message off its items, where figures are left. */
export function withoutTalk(items: Item[], typed: string, asked: boolean): void {
  const closed = closedAt(items, typed);
  if (items.slice(0, closed).some(isFigure)) items.splice(closed);
  const opened = openedTo(items, asked);
  if (items.slice(opened).some(isFigure)) items.splice(0, opened);
}

function openedTo(items: readonly Item[], asked: boolean): number {
  let end = 0;
  for (let at = 0; at < items.length; ) {
    const item = items[at];
    const length = phraseLength(items, at);
    // "UH-2 fan": a name that begins like a pause is none
    const one = item === undefined || !isOneWord(item) || isFigure(item) ? "" : item.text;
    if (length > 0) at += length;
    // "or no it was 23 lb 8": he corrects himself
    else if (
      one === "or" &&
      /^(?:no|wait|actually|rather|sorry|make)$/.test(items[at + 1]?.text ?? "")
    )
      at++;
    else if (empty.test(one) && !(asked && agrees.test(one))) at++;
    else if (at > 0 && at === end && /^[,.:;-]$/.test(one)) at++;
    else break;
    end = at;
  }
  return end;
}
