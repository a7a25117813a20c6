import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { fileCode, spelled, spelledPoint, twoLetters, whereShown } from "./fault-reading.ts";
import { doors, heads, heardLetters, shows, weak } from "./fault-words.ts";
import { gluedEnd, isSmall, textAt } from "./near.ts";

interface Code {
  readonly value: string;
  readonly end: number;
}

function digitsOf(item: Item | undefined): string | undefined {
  if (
    item === undefined ||
    item.owner !== undefined ||
    item.kind !== itemKind.number ||
    item.unit !== undefined
  )
    return undefined;
  // "e four two": digits one by one, no tenths
  if (item.loose && item.spoken && item.value < 10) return String(Math.round(item.value * 10));
  if (!Number.isInteger(item.value) || item.value < 0 || item.value > 99999) return undefined;
  return item.spoken ? String(item.value) : item.text;
}

function letterOf(note: Note, item: Item | undefined): string | undefined {
  if (item === undefined || item.owner !== undefined || item.kind === itemKind.number)
    return undefined;
  const typed = note.text.slice(item.from, item.to);
  return /^[A-Za-z]{1,3}$/.test(typed) && (typed === typed.toUpperCase() || typed.length === 1)
    ? typed.toUpperCase()
    : undefined;
}

/** "showing you four": what a phone makes of a letter, right behind what shows it. */
function heardLetter(items: readonly Item[], i: number): string | undefined {
  const before = textAt(items, i - 1);
  if (!shows.has(before) && !heads.has(before)) return undefined;
  return items[i + 1]?.spoken === true ? heardLetters.get(textAt(items, i)) : undefined;
}

/** "8VX", "GT-19", "E4", "J nineteen", "21": the code at item `i`, if one stands there. */
function codeAt(note: Note, i: number, strong: boolean): Code | undefined {
  const { items } = note;
  const item = items[i];
  if (item === undefined || item.owner !== undefined || item.kind === itemKind.line)
    return undefined;
  const end = gluedEnd(items, i);
  const run = note.text.slice(item.from, items[end - 1]?.to ?? item.to);
  // "E4 in fault history x3": so many times
  if (/^x\d{1,2}$/i.test(run) && textAt(items, i - 1) !== "code") return undefined;
  if (
    /^(?=.*\d)(?=.*[A-Za-z])[A-Za-z0-9]+(?:[-:.][A-Za-z0-9]+)*$/.test(run) &&
    !measured(items, i, end)
  )
    return { value: run.toUpperCase(), end };
  // "error 4-14"
  if (strong && /^\d{1,2}-\d{1,3}$/.test(run) && item.unit === undefined)
    return { value: run, end };
  const pair = twoLetters(note, i);
  const behind = pair === undefined ? undefined : digitsOf(items[i + 2]);
  if (behind !== undefined) return { value: `${pair}${behind}`, end: i + 3 };
  const letter = heardLetter(items, i) ?? letterOf(note, item);
  if (letter !== undefined) {
    const at = textAt(items, i + 1) === "-" || textAt(items, i + 1) === "dash" ? i + 2 : i + 1;
    const zero = items[at];
    const after = digitsOf(items[at + 1]);
    if (zero?.spoken === true && zero.value === 0 && after?.length === 1)
      return {
        value: `${letter}${textAt(items, i + 1) === "dash" ? "-" : ""}0${after}`,
        end: at + 2,
      };
    const digits = digitsOf(items[at]);
    if (digits !== undefined && !(item.text === "a" && !strong)) {
      // "E seven dash two"
      const sub = textAt(items, at + 1) === "dash" ? digitsOf(items[at + 2]) : undefined;
      if (sub !== undefined) return { value: `${letter}${digits}-${sub}`, end: at + 3 };
      return { value: letter + digits, end: at + 1 };
    }
  }
  if (item.kind === itemKind.points && item.points?.length === 1 && item.points[0]?.length === 1) {
    const name = item.points[0][0] ?? "";
    if (/^[LT]\d$/.test(name)) return { value: name, end: i + 1 };
    const digits = digitsOf(items[i + 1]);
    if (name.length === 1 && digits !== undefined) return { value: name + digits, end: i + 2 };
  }
  // "lockout 3 trips": how often
  if (/^(?:trips?|times|x|tries|retries|resets)$/.test(textAt(items, i + 1))) return undefined;
  const digits = digitsOf(item);
  // "ground fault on 2": where it is, no code
  if (/^(?:on|in|with)$/.test(textAt(items, i - 1)) && (digits?.length ?? 0) < 3) return undefined;
  return strong && digits !== undefined && items[i + 1]?.kind !== itemKind.unit
    ? { value: digits, end: i + 1 }
    : undefined;
}

/** A number with its unit is no code: "40F", "12A". */
function measured(items: readonly Item[], i: number, end: number): boolean {
  for (let at = i; at < end; at++)
    if (
      items[at]?.kind === itemKind.number &&
      items[at]?.unit !== undefined &&
      items[i]?.kind === itemKind.number
    )
      return true;
  return false;
}

function add(note: Note, from: number, code: Code, i: number): void {
  const first = note.items[from];
  const last = note.items[code.end - 1];
  if (first === undefined || last === undefined) return;
  for (let at = i; at < code.end; at++) {
    const item = note.items[at];
    if (item !== undefined) item.owner = faultCodes.name;
  }
  const head = note.items[from];
  if (head !== undefined && heads.has(head.text)) head.owner = faultCodes.name;
  const span: readonly [number, number] = [first.from, last.to];
  fileCode(note, code.value, { span, rule: faultCodes.name });
}

function skip(items: readonly Item[], i: number): number {
  let at = i;
  while (
    at < items.length &&
    heardLetter(items, at) === undefined &&
    (isSmall(items[at]) ||
      heads.has(textAt(items, at)) ||
      /^(?:#|:|number|=|no|capital|letter)$/.test(textAt(items, at)))
  ) {
    const item = items[at];
    if (item !== undefined && isStrongBreak(item)) break;
    at++;
  }
  return at;
}

const kept = /^(?:stored|logged|saved|active|latched|standing|recorded|history|memory|log)$/;

/** "two codes stored an H three", "codes in history E four", "codes in it": how they are kept stands between. */
function skipKept(items: readonly Item[], from: number): number {
  const inside = textAt(items, from) === "in";
  const at = inside && items[from]?.label === undefined ? from + 1 : from;
  return kept.test(textAt(items, at)) || (inside && at === from) ? skip(items, at + 1) : from;
}

/** "code on the drive is F31": where it is shown stands between. */
function skipShown(items: readonly Item[], from: number): number {
  if (!weak.has(textAt(items, from))) return from;
  const at = from + 1;
  return /^(?:is|was|says|shows|reads|:)$/.test(textAt(items, at)) ||
    items[from]?.apostrophe === true
    ? skip(items, at)
    : from;
}

/** "board two is showing U four": the number behind is the board's own. */
function numbered(items: readonly Item[], i: number): boolean {
  const [number, verb] = [items[i + 1], items[i + 2]];
  if (!weak.has(textAt(items, i)) || number?.kind !== itemKind.number) return false;
  if (number.unit !== undefined || number.value > 12 || !Number.isInteger(number.value))
    return false;
  return (
    shows.has(textAt(items, i + 2)) || (verb?.text === "is" && shows.has(textAt(items, i + 3)))
  );
}

function isDoor(items: readonly Item[], i: number): boolean {
  for (let at = i - 1; at >= 0 && at >= i - 2; at--) if (doors.has(textAt(items, at))) return true;
  return false;
}

/** "E-26 then E-31 on the keypad": codes that stand before where they are shown. */
function codesBefore(note: Note, i: number): void {
  const { items } = note;
  let at = i - 1;
  while (
    at >= 0 &&
    (textAt(items, at) === "the" ||
      textAt(items, at) === "on" ||
      textAt(items, at) === "up" ||
      textAt(items, at) === "at")
  )
    at--;
  if (textAt(items, at + 1) !== "on" && textAt(items, at + 1) !== "up") return;
  for (let start = Math.max(0, at - 6); start <= at; start++) {
    if (textAt(items, start - 1) === "-" || items[start]?.glued === true) continue;
    const code = codeAt(note, start, false);
    if (
      code === undefined ||
      !/^[A-Z]{1,2}-?\d{1,3}$/.test(code.value) ||
      items[start]?.kind === itemKind.points ||
      // "bb-3 has 230v but no lights on the board": a box by its tag, of which something was read
      items.slice(code.end, at + 1).some(({ unit }) => unit !== undefined)
    )
      continue;
    add(note, start, code, start);
    start = code.end - 1;
  }
}

/** "an E one oh four fault": a letter and its digits, and then what they are. */
function codeAhead(note: Note, i: number): void {
  for (let start = i - 2; start >= 0 && start >= i - 4; start--) {
    const code = codeAt(note, start, false);
    if (code?.end !== i || !/^[A-Z]\d{1,3}$/.test(code.value)) continue;
    if (note.items[start]?.kind === itemKind.points) continue;
    if (/^(?:a|an|the|with|got)$/.test(textAt(note.items, start - 1)))
      add(note, start, code, start);
    return;
  }
}

/** "… second one shows P-12": behind a code, what is shown next is one too. */
function nextCode(note: Note, i: number): void {
  const at = skip(note.items, i + 1);
  const code = codeAt(note, at, false);
  if (code === undefined || !/^[A-Z]{1,2}-?\d{1,3}$/.test(code.value)) return;
  if (note.items[at]?.kind === itemKind.points && !spelledPoint(note, i)) return;
  add(note, at, code, at);
}

/** "code E fourteen sub code two": a part of the code before, none of its own. */
function subCode(note: Note, i: number): boolean {
  const { items } = note;
  if (textAt(items, i) !== "code" || textAt(items, i - 1) !== "sub") return false;
  const number = items[i + 1]?.kind === itemKind.number ? 1 : 0;
  state(note, faultCodes.name, [i - 1, i + 1 + number], { kind: "note", about: "sub code" });
  return true;
}

/** "a U4 on system two and a P eight on the third": behind a code each "and a <letter> <number>" is one. */
function furtherCodes(note: Note): void {
  const { items } = note;
  if (!note.readings.some((one) => one.quantity === "fault_code")) return;
  for (let i = 0; i + 3 < items.length; i++) {
    if (!/^(?:and|plus|then|,)$/.test(textAt(items, i))) continue;
    const article = /^(?:a|an)$/.test(textAt(items, i + 1));
    const at = article ? i + 2 : i + 1;
    const code = codeAt(note, at, false);
    if (code === undefined || !/^[A-Z]{1,2}-?\d{1,3}$/.test(code.value)) continue;
    if (!article && !/^(?:on|at|for)$/.test(textAt(items, code.end))) continue;
    add(note, at, code, at);
  }
}

/** "code E4", "alarms 8VX n 3WZ", "flashing code J nineteen", "controller has a Z six up" */
export const faultCodes: Rule = {
  name: "code <letters and digits>",
  heads:
    "code|codes|fault|faults|faulted|alarm|alarms|err|error|errors|eror|flashing|throwing|flash|throws|blinking|flt|flashes|trouble|lockout|diagnostic|dtc|blinks|threw|displaying|displays|display|controller|board|thermostat|stat|keypad|remote|drive|screen|history|memory|shows|showing|disp|dsply|readout",
  apply: (note) => {
    const { items } = note;
    for (let i = 0; i < items.length; i++) {
      const item = items[i];
      if (item === undefined || item.owner !== undefined) continue;
      if (weak.has(item.text) && i > 1) codesBefore(note, i);
      if (heads.has(item.text) && !weak.has(item.text)) codeAhead(note, i);
      const told = note.readings.length > 0 || spelled(note, i) || spelledPoint(note, i);
      if (shows.has(item.text) && told) nextCode(note, i);
      if (subCode(note, i)) continue;
      const head = heads.has(item.text);
      if (!head && !weak.has(item.text)) continue;
      if (isDoor(items, i) || (item.text === "lockout" && (item.roles & role.not) !== 0)) continue;
      const strong = head && !weak.has(item.text);
      const first = skip(items, i + (numbered(items, i) ? 2 : 1));
      const behind = strong ? whereShown(items, first) : first;
      const on = behind > first && codeAt(note, behind, false) !== undefined;
      const from = on ? behind : skipShown(items, skipKept(items, first));
      if (
        !strong &&
        !items.slice(i, from).some((word) => shows.has(word.text) || heads.has(word.text))
      )
        continue;
      const sure =
        strong || items.slice(i, from).some((word) => heads.has(word.text) && !weak.has(word.text));
      const letter = items[from - 1];
      const named = sure && letter?.text === "a" && note.text.charAt(letter.from) === "A";
      let code = (named ? codeAt(note, from - 1, true) : undefined) ?? codeAt(note, from, sure);
      let start = i;
      let at = from;
      while (code !== undefined) {
        add(note, start, code, at);
        // "E4 x3, P11 x1": how often stands between
        const often = /^(?:x\d{1,2}|twice|once)$/.test(textAt(items, code.end)) ? 1 : 0;
        const joint = textAt(items, code.end + often);
        const more = /^(?:,|and|n|&|\/)$/.test(joint) ? code.end + often + 1 : -1;
        start = more;
        at = more;
        code = more < 0 ? undefined : codeAt(note, more, false);
      }
    }
    furtherCodes(note);
  },
};
