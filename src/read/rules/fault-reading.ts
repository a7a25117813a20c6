import type { Span } from "../../model.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { textAt } from "./near.ts";

/** Files a fault code; `span` is what of the text says it, `rule` the rule that found it. */
export function fileCode(note: Note, value: string, from: { span: Span; rule: string }): void {
  const { span, rule } = from;
  note.readings.push({
    quantity: "fault_code",
    relation: "=",
    value,
    unit: null,
    said: note.text.slice(span[0], span[1]),
    spans: [span],
    assumed: [],
    figure: { number: value, unit: "" },
    rule,
  });
}

/** "L P 2", as a phone writes letters that were spelled: both in capitals. */
export function twoLetters({ items, text }: Note, i: number): string | undefined {
  const both = items.slice(i, i + 2).map(({ from, to }) => text.slice(from, to));
  return both.length === 2 && both.every((one) => /^[A-Z]$/.test(one)) ? both.join("") : undefined;
}

const shower =
  /^(?:unit|outdoor|indoor|board|controller|stat|thermostat|display|disp|remote|head|cassette|condenser|keypad|screen|panel|zone|it|system|inverter|drive)$/;

/** "outdoor unit shows U four": a winding's letter is a code's where a machine shows it and a figure is spoken. */
export function spelledPoint({ items, text }: Note, i: number): boolean {
  if (!/^(?:shows|showing|displays|displaying|flashing|has)$/.test(textAt(items, i))) return false;
  const article = /^(?:a|an)$/.test(textAt(items, i + 1)) ? 1 : 0;
  const [letter, digits, next] = items.slice(i + 1 + article, i + 4 + article);
  if (letter === undefined || !/^[ULP]$/.test(text.slice(letter.from, letter.to))) return false;
  if (digits?.spoken !== true || digits.unit !== undefined || next?.kind === itemKind.unit)
    return false;
  if (!Number.isInteger(digits.value) || digits.value > 99 || next?.text === "to") return false;
  return items
    .slice(Math.max(0, i - 4), i)
    .some((item) => shower.test(item.text) || item.subject !== undefined);
}

const shownOn =
  /^(?:outdoor|indoor|outside|inside|main|control|inverter|head|unit|board|drive|stat|thermostat|controller|display|remote|keypad|screen|panel|cassette|condenser|on|at|the)$/;

/** "error code on the outdoor board P four": where the words end that say what shows it. */
export function whereShown(items: readonly Item[], from: number): number {
  let at = from;
  while (at < from + 5 && shownOn.test(textAt(items, at))) at++;
  return at;
}

/** "it shows P eight": one capital that names no point, and spoken figures. */
export function spelled({ items, text }: Note, i: number): boolean {
  if (!/^(?:shows|showing|displays|displaying|flashing)$/.test(textAt(items, i))) return false;
  const [letter, digits, next] = items.slice(i + 1, i + 4);
  if (letter === undefined || letter.to - letter.from !== 1 || digits?.spoken !== true)
    return false;
  if (!/^[ADEFHJKPYZ]$/.test(text.slice(letter.from, letter.to))) return false;
  return digits.unit === undefined && next?.kind !== itemKind.unit;
}
