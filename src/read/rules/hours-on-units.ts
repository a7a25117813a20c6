import { type Rule, state } from "../note.ts";

const bye =
  /\b(?:hours|hrs|labor|leaving|left|done|finished|heading out|wrapped up|wrapping up|out)\b/;
const hours = String.raw`(\d*\.?\d+)( ?(?:h|hrs?|hours?))?`;
const unit = String.raw`(?:the )?(?:(?:rtu|ahu|unit|ou|odu|cu|rack|chiller|hp|boiler|job)[- ]?\d{0,3}|\d{1,2}|(?:first|second|other|last)(?: (?:one|unit))?|it|that)`;
const told = new RegExp(
  String.raw`(?:^|[.,;] ?|\n|\b(?:hours|hrs|labor|time)[: ]+)${hours} on ${unit}(?:(?:,| and|, and|;| n)? ${hours} on ${unit})?(?:[.,;!]? (?:and )?(?:leaving|done|all done|left|heading out|out))?[.! ]*$`,
);
/** Letters of a message; what is longer is no word of farewell. */
const longest = 400;
/** Hours at most on one unit, and what they are counted in. Our choice, no source. */
const most = 12;
const step = 0.25;

const isHours = (said: string): boolean =>
  Number(said) <= most && Number.isInteger(Number(said) / step);

/** Hours by unit at the end of a short text in lower case, where a farewell or their own word leads them. */
function hoursTold(plain: string): RegExpExecArray | undefined {
  const match = plain.length > longest ? null : told.exec(plain);
  if (match === null) return undefined;
  // a farewell before the hours or behind them
  const at = match.index + match[0].indexOf(match[1] ?? "");
  const around = `${plain.slice(0, at)} ${plain.slice(plain.lastIndexOf(" on ") + " on ".length)}`;
  return bye.test(around) ? match : undefined;
}

/** "leaving. 1.75 on rtu 1 and .5 on 2": how long he was at each, in quarters of an hour. */
export const hoursOnUnits: Rule = {
  name: "<hours> on <unit>",
  heads: "on",
  needs: "number",
  apply: (note) => {
    const match = hoursTold(note.plain);
    if (match === undefined) return;
    const [, first = "", firstUnit, second, secondUnit] = match;
    const figures = [first, ...(second === undefined ? [] : [second])];
    const named = firstUnit !== undefined || secondUnit !== undefined;
    const parted = figures.some((said) => !Number.isInteger(Number(said)));
    if (!figures.every(isHours) || (!named && !parted)) return;
    let from = match.index;
    for (const said of figures) {
      from = note.plain.indexOf(said, from);
      const at = note.items.findIndex((item) => item.from <= from && item.to > from);
      const item = note.items[at];
      if (item === undefined || item.owner !== undefined) return;
      state(note, hoursOnUnits.name, [at, at + 1], { kind: "labor", hours: Number(said) });
      from += said.length;
    }
    // "on 2": the unit's number
    note.items.forEach((item, i) => {
      const name =
        item.from > match.index && item.owner === undefined && /^\d{1,2}$/.test(item.text);
      if (name) state(note, hoursOnUnits.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};

/** The text without what it tells of hours on units, whose names say nothing of where its author is now. */
export function withoutHoursOnUnits(text: string): string {
  const match = hoursTold(text.toLowerCase());
  if (match === undefined) return text;
  const rest = text.slice(0, match.index);
  return rest.trim() === "" ? text : rest;
}
