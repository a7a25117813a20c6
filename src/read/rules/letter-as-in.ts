import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";

const words =
  "zero oh one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const figures: ReadonlyMap<string, string> = new Map(
  words.map((word, at) => [word, String(Math.max(0, at - 1))]),
);
const spelled = new RegExp(
  `\\b([a-z]) as in ([a-z]+)((?:,? (?:${words.join("|")}|\\d{1,3})\\b){1,3})`,
);
const shows =
  /\b(?:codes?|fault|alarm|error|display|screen|board|stat|thermostat|remote|keypad|drive|controller|shows?|showing|says|reads|flashing|blinking)\b/;

/** "display says E as in echo twelve": a letter told by a word that begins with it, and its figures. */
export const lettersAsIn: Rule = {
  name: "<letter> as in <word> <figures>",
  needs: "number",
  apply: (note: Note) => {
    if (!note.plain.includes(" as in ")) return;
    const match = spelled.exec(note.plain);
    const [said = "", letter = "", word = "", digits = ""] = match ?? [];
    if (match === null || !word.startsWith(letter)) return;
    if (!shows.test(note.plain.slice(0, match.index))) return;
    const to = match.index + said.length;
    for (const item of note.items)
      if (item.from >= match.index && item.to <= to) item.owner = lettersAsIn.name;
    const code = digits
      .split(/[\s,]+/)
      .map((one) => figures.get(one) ?? one)
      .join("");
    fileCode(note, `${letter.toUpperCase()}${code}`, {
      span: [match.index, to],
      rule: lettersAsIn.name,
    });
  },
};
