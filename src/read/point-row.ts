import { itemKind } from "./item.ts";
import type { Building } from "./items.ts";
import { isLineVolts } from "./line-volts.ts";
import type { Point } from "./point-words.ts";
import { tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** "phase A … B …", "U V W 0.11": the letter stands in a row that has begun, or begins one in capitals. */
export function inFamily(build: Building, i: number, letter: Point): boolean {
  const token = build.tokens[i];
  if (token === undefined) return false;
  const typed = build.typed.charAt(token.from);
  const capital = typed !== token.text;
  const begun =
    build.family.slice(0, 3) === letter.family.slice(0, 3) ||
    (letter.family === "rst" && build.family.startsWith("csr")) ||
    (letter.family === "abc" && build.family.startsWith("phase"));
  if (begun && (capital || token.text !== "a")) return true;
  if (numberRow(build, i)) return true;
  if (!capital) return false;
  if (
    build.tokens[i - 1]?.text === "on" &&
    (letter.family === "abc" || letter.family === "uvw") &&
    (build.tokens[i + 1]?.kind !== tokenKind.word ||
      build.tokens[i + 1]?.text === "and" ||
      build.tokens[i + 1]?.word?.number !== undefined)
  )
    return true;
  const next = build.tokens[i + 1];
  if (letter.family === "uvw")
    return (
      next === undefined ||
      next.kind === tokenKind.number ||
      rowOf(build, i) ||
      next.word?.number !== undefined ||
      /^short(?:ed)?$/.test(next.text) ||
      ((next.word?.roles ?? 0) & (role.is | role.conjunction | role.over)) !== 0 ||
      next.kind === tokenKind.sign
    );
  return rowOf(build, i);
}

/** "A 14.1 B 14.3 C 13.9", "u 1.8g v 1.7g w 0.4m": letters of one family, each before a number. */
export function numberRow(build: Building, i: number): boolean {
  let row = "";
  for (let at = i; at < i + 12 && row.length < 3; at++) {
    const token = build.tokens[at];
    if (token === undefined) break;
    const unit = token.glued && build.tokens[at - 1]?.kind === tokenKind.number;
    if (token.kind === tokenKind.word && token.text.length === 1 && !unit) {
      const next = build.tokens[at + 1];
      if (
        next?.kind !== tokenKind.number &&
        ((next?.word?.roles ?? 0) & (role.zero | role.over)) === 0
      )
        return false;
      row += token.text;
    } else if (
      token.kind !== tokenKind.number &&
      token.kind !== tokenKind.line &&
      token.text !== "," &&
      token.text !== "and" &&
      token.word?.unit === undefined
    )
      return false;
  }
  return row === "abc" || row === "uvw" || row === "csr" || row === "crs" || row === "rst";
}

/** Letters that stand in a row, three at most, whatever signs are between them. */
function lettersFrom(build: Building, i: number): string {
  let row = "";
  for (let at = i; at < i + 6 && row.length < 3; at++) {
    const token = build.tokens[at];
    if (token?.kind === tokenKind.word && token.text.length === 1) row += token.text;
    else if (token?.kind !== tokenKind.sign && token?.text !== "and") break;
  }
  return row;
}

const joints = /^[,/-]$/;

/** "u v w to gnd 0.6 0.55 0.6 meg", "U-V-W to gnd": all three outputs by their letters, and then their values. */
export function ofOutputs(build: Building, i: number): boolean {
  const text = build.tokens[i]?.text ?? "";
  if (!/^[uvw]$/.test(text)) return false;
  let at = i;
  for (let letter = text; letter !== "u"; ) {
    at--;
    if (joints.test(build.tokens[at]?.text ?? "")) at--;
    letter = String.fromCharCode(letter.charCodeAt(0) - 1);
    if (build.tokens[at]?.text !== letter) return false;
  }
  return lettersFrom(build, at) === "uvw";
}

/** Three letters of one family in a row: "U V W", "A B C", "C S R". */
function rowOf(build: Building, i: number): boolean {
  const row = lettersFrom(build, i);
  return row === "uvw" || row === "abc" || row === "csr" || row === "crs" || row === "rsc";
}

/** "463 across 1 and 2": two of three legs, behind a figure that only volts have. */
export function acrossLegs(build: Building, i: number): boolean {
  const before = build.items[build.items.length - 1];
  const value = build.items[build.items.length - 2];
  if (!/^(?:across|between|btwn)$/.test(before?.text ?? "")) return false;
  if (value?.kind !== itemKind.number || !isLineVolts(value.value)) return false;
  if (value.unit !== undefined && value.unit.dimension !== "voltage") return false;
  return (
    /^(?:and|&|to|n|\/)$/.test(build.tokens[i + 1]?.text ?? "") &&
    /^[123]$/.test(build.tokens[i + 2]?.text ?? "")
  );
}
