import type { OpenQuestion, Reading } from "../../model.ts";
import type { QuantityName } from "../../quantities/list.ts";
import type { Unit } from "../../quantities/quantity.ts";
import { type Draft, draft } from "../draft.ts";
import { type Item, itemKind } from "../item.ts";
import { unitCalled, usualQuantity } from "../kinds.ts";
import { make } from "../make.ts";
import type { Note, Rule } from "../note.ts";
import { byUnit } from "../settle.ts";
import { testerVolts } from "../tester-volts.ts";

type Asked = OpenQuestion["drafts"][number];
const setting = {
  insulation: false,
  winding: false,
  diode: false,
  vacuum: false,
  component: false,
  compressor: false,
  pipes: false,
  capacitor: false,
};

function revive(asked: Asked, unit: Unit | undefined, named: QuantityName | undefined): Draft {
  const one = draft(0, asked.number);
  one.unit = unit ?? (asked.unit === undefined ? undefined : unitCalled(asked.unit));
  one.named = named ?? asked.quantity;
  one.points = asked.points === undefined ? undefined : [asked.points];
  one.place = asked.at;
  one.subject = asked.subject;
  one.action = asked.action;
  one.quantity =
    one.unit === undefined
      ? one.named
      : (byUnit(one, setting) ?? usualQuantity(one.unit.dimension));
  return one;
}

function readAgain(
  note: Note,
  asked: Asked,
  unit: Unit | undefined,
  named: QuantityName | undefined,
): Reading | undefined {
  const [reading] = make(note, revive(asked, unit, named));
  const end = note.text.trimEnd().length;
  return reading === undefined
    ? undefined
    : {
        ...reading,
        figure: { ...reading.figure, number: asked.figure },
        said: note.text.slice(0, end),
        spans: [[0, end]],
        rule: answers.name,
      };
}

/** "the first", "the second": which of two was meant. */
function ordinal(items: readonly Item[]): number {
  if (items.some((item) => item.text === "first" || item.text === "former" || item.text === "1st"))
    return 0;
  return items.some(
    (item) => item.text === "second" || item.text === "latter" || item.text === "2nd",
  )
    ? 1
    : -1;
}

function chosen(open: OpenQuestion, items: readonly Item[]): Asked | undefined {
  const number = items.find((item) => item.kind === itemKind.number)?.value;
  const same = open.drafts.find((asked) => asked.number === number);
  return same ?? open.drafts[ordinal(items)];
}

function answer(note: Note, open: OpenQuestion): (Reading | undefined)[] {
  const { items } = note;
  const alone = items.find(
    (item) => item.kind === itemKind.unit && item.unit?.dimension !== "time",
  );
  const number = items.find((item) => item.kind === itemKind.number);
  const unit = alone?.unit ?? number?.unit ?? spelled(items);
  const named = items.find((item) => item.label?.quantity !== undefined)?.label?.quantity;
  if (open.missing === "choice") {
    const one = chosen(open, items);
    return one === undefined ? [] : [readAgain(note, one, unit, named)];
  }
  const volts = testerSet(items);
  if (volts !== undefined && unit?.dimension === "resistance") {
    const read = open.drafts.map((asked) => readAgain(note, asked, alone?.unit, named));
    return read.map((one) =>
      one?.quantity === "insulation_resistance" ? { ...one, test_voltage: volts } : one,
    );
  }
  const repeated =
    number === undefined || open.drafts.some((asked) => asked.number === number.value);
  if (!repeated || (unit === undefined && named === undefined)) return [];
  return open.drafts.map((asked) => readAgain(note, asked, unit, named));
}

/** "megohms at 500": the unit that was asked for, and what the tester was set to. */
function testerSet(items: readonly Item[]): number | undefined {
  const at = items.findIndex((item) => item.kind === itemKind.number);
  const number = items[at];
  if (number === undefined || !/^(?:at|@)$/.test(items[at - 1]?.text ?? "")) return undefined;
  if (number.unit !== undefined && number.unit.dimension !== "voltage") return undefined;
  return testerVolts.has(number.value) ? number.value : undefined;
}

/** A one-letter unit as the whole answer: "a", "v", "m". */
function spelled(items: readonly Item[]): Unit | undefined {
  const [only] = items;
  const figure =
    items.length === 1
      ? { a: "A", v: "V", f: "F", c: "C", m: "megohm", g: "gigohm", k: "kilohm", w: "W" }[
          only?.text ?? ""
        ]
      : undefined;
  return figure === undefined ? undefined : unitCalled(figure);
}

const goesOn = /^(?:next|checking|doing|testing|megging|ohming|starting|taking|gonna|going)$/;

/** The answer to the question that stands open completes its readings. */
export const answers: Rule = {
  name: "<answer to the open question>",
  needs: "open",
  apply: (note) => {
    const { open } = note.context;
    if (open === undefined || note.items.length === 0 || note.items.length > 6) return;
    if (
      note.items.some(
        (item) =>
          item.kind === itemKind.points ||
          item.kind === itemKind.subject ||
          item.label?.place !== undefined,
      )
    )
      return;
    if (note.items.filter((item) => item.kind === itemKind.number).length > 1) return;
    // "windings next": what comes now, no answer
    if (note.items.some(({ text }) => goesOn.test(text))) return;
    const readings = answer(note, open).filter((reading) => reading !== undefined);
    if (readings.length === 0) return;
    note.readings.push(...readings);
    for (const item of note.items) item.owner = answers.name;
  },
};
