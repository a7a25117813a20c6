import type { EquipmentFacts } from "../model.ts";
import { metrePerFoot } from "../physics/constants.ts";

type Line = NonNullable<EquipmentFacts["line_set"]>[number];

const number = String.raw`(\d+(?:\.\d+)?)`;
const length = `${number} ?(ft|feet|foot|'|m|met(?:er|re)s?)(?![a-z])`;
const size = String.raw`(\d(?:[- ]\d)?\/\d{1,2})`;

const long = new RegExp(length, "g");
const pipe = new RegExp(
  `${size}(?:"| ?(?:in|inch))?(?: od)? (?:liquid|small)|(?:liquid|small)(?: line)?(?: is| of|:|,)? (?:a )?${size}`,
);
const covers = new RegExp(
  `(?:cover(?:s|ed|ing)?|(?:pre-?|factory )?charged? (?:is )?(?:good )?for|good for|includes?)(?: the| its| up to| first)* ${length}`,
);
const beyond = new RegExp(
  `${length} (?:more|extra|over|beyond|additional|past|longer)|(?:extra|additional) ${length}`,
);

/** What the notes tell of a liquid line: its size, its length, and what the plate's charge covers of it. */
export function linesTold(words: string): Line[] {
  for (const note of words.split("\n")) {
    const inch = inchesOf(pipe.exec(note));
    if (inch === undefined) continue;
    const extra = metresOf(beyond.exec(words));
    if (extra !== undefined)
      return [{ line: "liquid", size_in: inch, length_m: extra, covered_m: 0 }];
    const covered = covers.exec(words);
    const covered_m = metresOf(covered);
    const whole = [...note.replace(covered?.[0] ?? "", "").matchAll(long)].map(metresOf);
    const [length_m, other] = whole;
    // a length of each pipe: nobody said which is the liquid's
    if (length_m === undefined || other !== undefined || covered_m === undefined) continue;
    return [{ line: "liquid", size_in: inch, length_m, covered_m }];
  }
  return [];
}

function inchesOf(found: RegExpExecArray | null): number | undefined {
  const said = found?.[1] ?? found?.[2];
  if (said === undefined) return;
  const [first = "", fraction] = said.split(/[- ]/);
  const [over, under] = (fraction ?? first).split("/").map(Number);
  if (over === undefined || under === undefined || under === 0) return;
  return (fraction === undefined ? 0 : Number(first)) + over / under;
}

function metresOf(found: RegExpMatchArray | null): number | undefined {
  if (found === null) return;
  const figure = found[1] ?? found[3];
  const unit = found[2] ?? found[4] ?? "";
  if (figure === undefined) return;
  return Number(figure) * (/^m/.test(unit) ? 1 : metrePerFoot);
}
