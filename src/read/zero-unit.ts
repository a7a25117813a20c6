import { type Item, itemKind } from "./item.ts";

/** Supplies that can be missing: "no 24 volts", "no 5 volt on the board". */
const missing: ReadonlySet<number> = new Set([
  5, 12, 15, 24, 115, 120, 208, 230, 240, 277, 460, 480, 575, 600,
]);

const machine = /^(?:blower|fan|motor|compressor|comp|pump|unit|display|stat|thermostat|inducer)$/;

/** "no 24 at R to C": a supply told by its figure alone, and where it is missing. */
function isMissingAt(number: Item, joint: Item | undefined): boolean {
  if (number.unit !== undefined || number.value < 24) return false;
  return /^(?:at|on|across|between|from|coming|to|out)$/.test(joint?.text ?? "");
}

const ends = /^(?:[,.;!]|-|←|<)$/;

/** "DC+ V .40, DC+ W short": in a row of drops over diodes one that has none. */
function shortToRail(items: readonly Item[], i: number): boolean {
  const [points, item, next] = items.slice(Math.max(0, i - 1), i + 2);
  if (!/^short(?:ed)?$/.test(item?.text ?? "") || points?.kind !== itemKind.points) return false;
  const ofRail = ({ points: pairs }: Item): boolean =>
    pairs?.some((pair) => pair.some((name) => /^DC[+-]$/.test(name))) === true;
  // "DC- U .41 V .40 W short": the rail was named once
  const lone = points.points?.every((pair) => pair.length === 1) === true;
  const rail = ofRail(points) || (lone && items.slice(0, i).some(ofRail));
  return rail && closes(next) && drops(items);
}

const closes = (next: Item | undefined): boolean =>
  next === undefined ||
  next.kind === itemKind.line ||
  next.kind === itemKind.points ||
  ends.test(next.text);

const drops = (items: readonly Item[]): boolean =>
  items.some(
    ({ kind, value, unit }) =>
      kind === itemKind.number && value > 0 && value < 1 && unit === undefined,
  );

/** "no volts", "zero current", "nothing": what cannot be measured is a zero. */
export function zeroUnit(items: readonly Item[], i: number): string | undefined {
  const item = items[i];
  if (item === undefined) return undefined;
  if (
    (item.text === "no" ||
      item.text === "0" ||
      item.text === "not" ||
      item.text === "isnt" ||
      item.text === "aint") &&
    item.kind === itemKind.word
  ) {
    let at = i + 1;
    if (items[at]?.text === "any" || items[at]?.text === "control") at++;
    const next = items[at];
    const after = items[at + 1];
    const asked = items[i - 1]?.text === "?" || items[i - 1]?.kind === itemKind.number;
    if (
      !asked &&
      next?.kind === itemKind.number &&
      missing.has(next.value) &&
      (next.unit?.figure === "V" || isMissingAt(next, items[at + 1]))
    ) {
      next.owner = "no <volts>";
      return "V";
    }
    if (next === undefined || after?.text === "drop" || after?.text === "drops") return undefined;
    if (next.kind === itemKind.unit && (next.unit?.figure === "V" || next.unit?.figure === "A"))
      return next.unit.figure;
    if (next.label?.quantity === "voltage" || next.text === "power" || next.text === "juice")
      return "V";
    if (next.label?.quantity === "current") return "A";
    return undefined;
  }
  if (item.text === "dead" && /^short(?:ed)?$/.test(items[i + 1]?.text ?? ""))
    // between the legs of a diode test it is no ohms
    return items.some(({ text }) => /^diodes?$/.test(text)) ? "V" : "ohm";
  if (shortToRail(items, i)) return "V";
  // "the secondary's dead zero"
  if (item.text === "dead" && items[i + 1]?.kind === itemKind.number) return undefined;
  // "24v at the board, none at the coil"
  if (item.text === "none") {
    const at = /^(?:at|on|to|out|across|between|from|load|after)$/.test(items[i + 1]?.text ?? "");
    const volts = items.slice(0, i).some(({ unit }) => unit?.figure === "V");
    const there = items[i + 2];
    // "twelve amps on L1 and none on L2"
    const amps = items.some(({ unit }) => unit?.figure === "A");
    const named = there?.kind === itemKind.points || there?.kind === itemKind.subject;
    return at && (volts || (amps && named)) ? "?" : undefined;
  }
  // "nothing to ground, OL": beyond the range, no zero
  if (item.text === "nothing" && items[i + 1]?.kind === itemKind.ground) {
    const at = items[i + 2]?.text === "," ? i + 3 : i + 2;
    if (items[at]?.kind === itemKind.over) return undefined;
  }
  // "indoor blower dead. 231 at the plug": it stands, and nobody measured that
  if (item.text === "dead" && machine.test(items[i - 1]?.text ?? "")) return undefined;
  if (item.text === "nothing" || item.text === "dead" || item.text === "zilch") return "?";
  return undefined;
}
