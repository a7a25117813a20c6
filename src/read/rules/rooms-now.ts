import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { numberAt } from "../numbers.ts";
import { scan } from "../scan.ts";

const joint = "(?: ?(?:,|&) ?| (?:and|to|thru|through) | - | )";
const linked = "(?: (?:are|is|all|both|now|still|were|getting|too))*";
const group = new RegExp(
  `(\\d{3,4}(?:${joint}\\d{3,4})*)${linked} (?:(cooling|coming down|coming around|fine|ok|okay|good|better|satisfied|cool)|(warm|hot|cold|stuffy|freezing))\\b`,
  "g",
);
/** A range through more rooms than this was not meant. */
const longest = 60;

/** The message with its spoken numbers in digits. */
function inDigits(plain: string): string {
  const tokens = scan(plain);
  const words: string[] = [];
  for (let i = 0; i < tokens.length; ) {
    const number = numberAt(tokens, i);
    words.push(number === undefined ? (tokens[i]?.text ?? "") : String(number.value));
    i = number?.end ?? i + 1;
  }
  return words.join(" ");
}

/** "210 to 213 and 215": each room by its number. */
function namesIn(list: string): readonly string[] {
  return [...list.matchAll(/(\d+)(?: (?:to|thru|through|-) (\d+))?/g)].flatMap(([, from, to]) => {
    const [low, high] = [Number(from), Number(to ?? from)];
    if (high < low || high - low > longest) return [String(low), String(high)];
    return [...Array(high - low + 1).keys()].map((step) => String(low + step));
  });
}

/** "rooms two ten to two thirteen are coming down, two fourteen still warm": how each of them is now. */
export const roomsNow: Rule = {
  name: "<rooms> <state>, <rooms> <state>",
  heads: "room|rooms|suite|suites|zone|zones",
  needs: "number",
  apply: (note: Note) => {
    const { items, plain } = note;
    if (items.some(({ unit }) => unit !== undefined)) return;
    const text = inDigits(plain);
    if (!/^(?:(?:ok|okay|so|now|and|the|all) )*(?:rooms?|suites?|zones?) \d/.test(text)) return;
    const groups = [...text.matchAll(group)];
    if (groups.length < 2) return;
    // a figure that is no room's was measured
    if (/\d/.test(groups.reduce((rest, [said]) => rest.replace(said, ""), text))) return;
    const listed = (at: 2 | 3): string[] =>
      groups.flatMap((one) => (one[at] === undefined ? [] : namesIn(one[1] ?? "")));
    for (const item of items)
      if (item.kind === itemKind.number || item.kind === itemKind.subject)
        item.owner = roomsNow.name;
    note.statements.push({
      kind: "complaint",
      places: listed(3),
      symptom: groups.find((one) => one[3] !== undefined)?.[3] ?? "fine",
      fine: listed(2),
      said: note.text,
      spans: [[0, note.text.length]],
      rule: roomsNow.name,
    });
  },
};
