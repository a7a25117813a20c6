import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { partWords } from "../words/parts.ts";
import { gluedEnd } from "./near.ts";
import { jugs } from "./size-words.ts";

const gases: ReadonlySet<string> = new Set([
  "22",
  "32",
  "134a",
  "410a",
  "404a",
  "407c",
  "407a",
  "407f",
  "448a",
  "449a",
  "454b",
  "507",
  "507a",
  "452b",
  "513a",
  "290",
  "744",
  "600a",
  "123",
  "1234yf",
  "1234ze",
  "422d",
  "438a",
  "427a",
  "502",
  "12",
  "11",
  "466a",
  "32a",
  "410",
  "134",
  "404",
  "407",
  "454",
  "448",
  "449",
  "452",
  "513",
  "438",
  "427",
  "422",
]);

/** The letter behind a spoken number: within its item ("four ten a") or of its own ("four five four b"). */
function letterBehind(note: Note, i: number): { readonly letter: string; readonly end: number } {
  const item = note.items[i];
  const own = / ([a-f])$/.exec(note.plain.slice(item?.from ?? 0, item?.to ?? 0))?.[1];
  if (own !== undefined) return { letter: own, end: i + 1 };
  const next = note.items[i + 1]?.text ?? "";
  return /^[a-f]$/.test(next) ? { letter: next, end: i + 2 } : { letter: "", end: i + 1 };
}

/** A refrigerant in spoken digits, its letter where one was said, and where the name ends. */
function spokenName(
  note: Note,
  i: number,
): { readonly name: string; readonly end: number } | undefined {
  const item = note.items[i];
  // every such name has two digits or three
  if (item?.spoken !== true || item.value < 10 || item.value > 999) return undefined;
  const { letter, end } = letterBehind(note, i);
  const digits = String(item.value);
  if (gases.has(digits + letter)) return { name: digits + letter, end };
  return gases.has(digits) ? { name: digits, end: letter === "" ? end : i + 1 } : undefined;
}

/** "another five of four oh four A", "three pounds four ten a": behind a weight or before its bottle. */
function spokenGas(note: Note, i: number): number | undefined {
  const found = spokenName(note, i);
  if (found === undefined || !/[a-f]$/.test(found.name)) return undefined;
  const before = note.items[i - 1];
  // "condensing unit running four oh four a": what it runs on, where no such current was spoken of
  const runsOn =
    Number.parseInt(found.name, 10) >= 400 &&
    /^(?:running|runs|on|uses|its|it's|with|has|a|an|the)$/.test(before?.text ?? "");
  const named =
    runsOn ||
    note.items[i]?.gas === true ||
    before?.text === "of" ||
    before?.unit?.dimension === "mass" ||
    /^(?:cylinder|bottle|tank|drum|cyl|system|unit|machine|gas)$/.test(
      note.items[found.end]?.text ?? "",
    );
  return named ? found.end : undefined;
}

const gasIs =
  /\b(?:gas|refrigerant|refrig|freon)(?: type| in it| in this one)?(?:'?s|: ?| is| was| =| says)? ?$/;

/** "gas is four forty eight", "refrigerant: 404": called by its three digits behind what it is. */
function gasTold(note: Note, i: number): number | undefined {
  const item = note.items[i];
  if (item?.kind !== itemKind.number || item.unit !== undefined || item.value < 100)
    return undefined;
  if (!gasIs.test(note.plain.slice(0, item.from))) return undefined;
  const { letter, end } = letterBehind(note, i);
  const name = String(item.value) + letter;
  return gases.has(name) ? end : undefined;
}

/** "R-410A", "410A", "r 22": a refrigerant's name. */
function refrigerant(note: Note, i: number): number | undefined {
  const { items } = note;
  const item = items[i];
  if (item === undefined) return undefined;
  const letter = item.to - item.from === 1;
  if ((item.text === "r" && letter) || item.text === "hfc" || item.text === "hfo") {
    const at = items[i + 1]?.text === "-" ? i + 2 : i + 1;
    const next = items[at];
    const spoken = spokenName(note, at);
    if (spoken !== undefined) return spoken.end;
    const value = next === undefined ? "" : note.plain.slice(next.from, next.to).replace(/\s/g, "");
    if (
      gases.has(value + (items[at + 1]?.text ?? "?")) &&
      /^[a-f]$/.test(items[at + 1]?.text ?? "")
    )
      return at + 2;
    return gases.has(value) || gases.has(value.slice(0, -1)) ? at + 1 : undefined;
  }
  const spoken = spokenGas(note, i) ?? gasTold(note, i);
  if (spoken !== undefined) return spoken;
  // "6 lb 8 oz of 410"
  const weighed = items[i - 2]?.unit?.dimension === "mass" && items[i - 1]?.text === "of";
  const held = jugs.has(items[i - 2]?.text ?? "") && items[i - 1]?.text === "of";
  if ((weighed || held) && item.unit === undefined && gases.has(item.text)) return i + 1;
  // "charged 9 kg 410": straight behind a weight, where the thought ends
  const behind = items[i - 1]?.unit?.dimension === "mass" && /^\d{3}$/.test(item.text);
  const stops =
    items[i + 1] === undefined || !/^(?:at|on|psi|head)$/.test(items[i + 1]?.text ?? "");
  const alone = items[i + 1]?.kind !== itemKind.label && items[i + 1]?.kind !== itemKind.unit;
  if (behind && stops && alone && item.unit === undefined && gases.has(item.text)) return i + 1;
  // "five pounds of thirty two"
  const ends = items[i + 1] === undefined || items[i + 1]?.kind !== itemKind.unit;
  if (weighed && item.unit === undefined && ends) return spokenName(note, i)?.end;
  const next = items[i + 1]?.text ?? "";
  if (
    item.kind === itemKind.number &&
    item.unit === undefined &&
    gases.has(item.text) &&
    /^(?:split|system|unit|machine|freon|gas|refrigerant)$/.test(next) &&
    // "liquid 12 gas 9": of two pipes each its figure
    !(next === "gas" && items[i + 2]?.kind === itemKind.number) &&
    !(
      next === "split" &&
      item.text.length < 3 &&
      !/^(?:a|an|the|old|new|this)$/.test(items[i - 1]?.text ?? "")
    )
  )
    return i + 2;
  const own = note.plain.slice(item.from, item.to);
  if (/^\d{3}[a-f]$/.test(own) && gases.has(own))
    return /^(?:split|system|unit)$/.test(next) ? i + 2 : i + 1;
  if (/^(?:split|system|unit)$/.test(next) && /^\d{3}[a-f]$/.test(own) && gases.has(own))
    return i + 2;
  return /^r\d{2,4}[a-z]{0,2}$/.test(own) && gases.has(own.slice(1)) ? i + 1 : undefined;
}

const partNames: ReadonlySet<string> = new Set(partWords.flatMap(([words]) => words.split("|")));

/** "44-1902": two or three digits and four, without a unit or a label before them. */
function partNumber(note: Note, i: number): number | undefined {
  const { items } = note;
  const [first, dash, second] = [items[i], items[i + 1], items[i + 2]];
  if (
    first?.kind !== itemKind.number ||
    second?.kind !== itemKind.number ||
    dash?.text !== "-" ||
    !dash.glued ||
    !second.glued
  )
    return undefined;
  if (first.unit !== undefined || second.unit !== undefined || second.owner !== undefined)
    return undefined;
  const before = items[i - 1];
  const ahead = items.slice(Math.max(0, i - 12), i);
  const asked =
    ahead.some(({ text }) =>
      /^(?:need|needs|needed|order|ordered|part|kit|replaced|swapped)$/.test(text),
    ) ||
    (ahead.some(({ text }) => /^(?:new|fitted|installed|changed)$/.test(text)) &&
      ahead.some(({ text }) => partNames.has(text)));
  if (
    before !== undefined &&
    !(asked && partNames.has(before.text) && first.value * 3 < second.value) &&
    ((before.label !== undefined && before.label.thing === undefined) ||
      before.kind === itemKind.points)
  )
    return undefined;
  const text = note.plain.slice(first.from, second.to);
  if (/^\d{2,3}-\d{4}$/.test(text) && first.value * 10 > second.value / 100) return i + 3;
  return asked && /^\d{2,3}-\d{3,5}$/.test(text) ? i + 3 : undefined;
}

function hasDigits(text: string): boolean {
  return /\d/.test(text) && /[a-z]/.test(text);
}

function isLetters(item: Item | undefined): boolean {
  return (
    item !== undefined &&
    item.kind !== itemKind.number &&
    /^[a-z]{1,4}$/.test(item.text) &&
    item.points === undefined &&
    item.subject === undefined
  );
}

/** The refrigerant that is named at item `i`, and where its name ends. */
export function gasSaid(note: Note, i: number): { value: string; end: number } | undefined {
  const { items, text } = note;
  const end = refrigerant(note, i);
  if (end === undefined) return undefined;
  const number = items.slice(i, end).findIndex((one) => one.spoken);
  const spoken = number < 0 ? undefined : spokenName(note, i + number)?.name;
  return { value: gasName(spoken ?? text.slice(items[i]?.from, items[end - 1]?.to)), end };
}

/** "DR-2290-7", "60-12E4", "KX048C": letters and digits that are one name. */
export const looseCodes: Rule = {
  name: "<letters and digits>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    for (let i = 0; i < items.length; i++) {
      const item = items[i];
      if (item === undefined || item.owner !== undefined || item.kind === itemKind.line) continue;
      const gas = gasSaid(note, i);
      if (gas !== undefined) {
        const { value, end } = gas;
        state(note, looseCodes.name, [i, end], { kind: "nameplate", field: "refrigerant", value });
        i = end - 1;
        continue;
      }
      const part = partNumber(note, i);
      if (part !== undefined) {
        state(note, looseCodes.name, [i, part], {
          kind: "note",
          about: `part ${note.text.slice(item.from, items[part - 1]?.to ?? item.to)}`,
        });
        i = part - 1;
        continue;
      }
      const end = gluedEnd(items, i);
      if (end <= i + 1 && item.kind !== itemKind.code) continue;
      const run = items.slice(i, end);
      const coded =
        run.some((part) => part.kind === itemKind.code) ||
        (isLetters(item) &&
          items[i + 1]?.text === "-" &&
          (item.label === undefined ||
            /^(?:panel|board|mcc|cabinet)$/.test(items[i - 1]?.text ?? "")) &&
          items[i + 2]?.kind === itemKind.number &&
          items[i + 2]?.unit === undefined &&
          item.unit === undefined);
      if (
        coded &&
        hasDigits(note.plain.slice(item.from, items[end - 1]?.to ?? item.to)) &&
        !run.some((part) => part.kind === itemKind.points)
      ) {
        // "the 2nd one from the bottom"
        const nth = /^\d{1,2}(?:st|nd|rd|th)$/.test(item.text) && items[end]?.text === "one";
        state(note, looseCodes.name, [i, nth ? end + 1 : end], { kind: "note", about: "code" });
        i = nth ? end : end - 1;
      }
    }
  },
};

/** A compound's isomer is a small letter, a blend's composition a capital one. Source: ANSI/ASHRAE Standard 34. */
const isomers = /^(?:134|152|600|1234)[A-Z]{1,2}$/;

function gasName(said: string): string {
  const plain = said
    .toUpperCase()
    .replace(/SPLIT|SYSTEM|UNIT|MACHINE|FREON|GAS|REFRIGERANT/, "")
    .replace(/[^A-Z0-9]/g, "")
    .replace(/^(?:HFC|HFO|R)/, "");
  if (isomers.test(plain)) return `R-${plain.toLowerCase()}`;
  // names that are said without their letter, as the trade has one of each; common practice, no source
  return `R-${/^(?:410|404|448|449|513)$/.test(plain) ? `${plain}A` : plain}`;
}
