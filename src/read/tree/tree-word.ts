import { itemKind } from "../item.ts";
import type { Note } from "../note.ts";

/** A word, a number in digits or a mark, and the item that it stands in. */
export interface TreeWord {
  readonly text: string;
  readonly item: number;
}

const ones = ["oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const spelled = new RegExp(` (?:${ones.join("|")})(?= |$)`, "g");

/** Letters of a name at most. Our choice, no source. */
const longestName = 40;

/** A name with its number spelled out, as a phone writes it: "bb two" is "bb 2", "rooms two oh three" is "rooms 203". */
function inDigits(text: string): string {
  if (text.length > longestName) return text;
  return text.replace(spelled, (word, at: number) => {
    const goesOn = ones.includes(text.slice(0, at).split(" ").at(-1) ?? "");
    return `${goesOn ? "" : " "}${ones.indexOf(word.slice(1))}`;
  });
}

/** The words of a message with spoken numbers in digits: "branch box one" is "branch box 1". */
export function treeWords(note: Note): readonly TreeWord[] {
  const words: TreeWord[] = [];
  note.items.forEach((item, index) => {
    const bare = item.kind === itemKind.number && item.unit === undefined;
    const whole = bare && Number.isInteger(item.value) && Number.isNaN(item.high);
    const text = whole
      ? String(item.value)
      : (item.subject || note.plain.slice(item.from, item.to)).toLowerCase();
    // "AHU-3 supply 3400 m3/h": a figure with its unit is no room
    if (item.kind === itemKind.number && item.unit !== undefined) {
      words.push({ text: text.replaceAll(" ", ""), item: index });
      return;
    }
    // most items are one word
    if (/^[a-z']+$/.test(text)) words.push({ text, item: index });
    else
      for (const word of inDigits(text).match(/[a-z']+|\d+(?:\.\d+)?|[^\sa-z\d]/g) ?? [])
        words.push({ text: word, item: index });
  });
  return words;
}
