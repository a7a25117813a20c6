import type { Building } from "./items.ts";
import { tokenKind } from "./token.ts";

const moves = /^(?:dropping|falling|climbing|rising|coming|pulling|creeping)$/;
const products = /^(?:product|prod|prdct|food)$/;

/** Cases are numbered in a row; a warm one is above freezing. Common practice, no source. */
const leastOfCase = 20;
/** Box and product differ by little, F. Common practice, no source. */
const mostApart = 15;

const leadsOn = /^(?:is|at|:|=|reads|shows|box|still|makes|sits)$/;
const parts = /^(?:fan|fans|comp|compressor|evap|evaporator|heater)$/;

/** What goes on behind "5 above" of zero; "freezer 2 above the office" is a freezer and where it stands. */
const ofZero =
  /^(?:zero|0|and|but|n|now|set|should|shld|sp|stpt|product|w|with|still|after|when|at|so|since)$/;

/** "cold room 2 is 6", "coldroom 1 -18", "cold room 3: box 4": a figure of its own follows the number of the room. */
function figureBehind({ tokens }: Building, end: number): boolean {
  let at = end;
  while (leadsOn.test(tokens[at]?.text ?? "")) at++;
  const sign = /^(?:-|minus|plus|\+)$/.test(tokens[at]?.text ?? "");
  const figure = tokens[sign ? at + 1 : at];
  if (figure?.kind === tokenKind.number || figure?.word?.number !== undefined) return true;
  return tokens[end]?.text === ":" || parts.test(tokens[end]?.text ?? "");
}

/** "case 48 product 45", "freezer 4 and climbing": how warm it is inside, no number of it. */
export function degreesOfBox(build: Building, name: string, end: number): boolean {
  if (name === "cold room") return !figureBehind(build, end);
  if (!/^(?:case|cooler|freezer|walk-in)$/.test(name)) return false;
  const number = build.tokens[end - 1];
  if (number?.kind !== tokenKind.number || (name === "case" && number.value < leastOfCase))
    return false;
  const [next, after] = [build.tokens[end], build.tokens[end + 1]];
  if (moves.test(next?.text ?? "")) return true;
  // "freezer's 5 above", "frzr 10 below": of zero, unless something else follows
  const degree = after === undefined || after.kind === tokenKind.sign || ofZero.test(after.text);
  if (name !== "case" && /^(?:above|below)$/.test(next?.text ?? "") && degree) return true;
  // "freezer 11, set minus 10"
  const set = next?.text === "," ? after : next;
  if (name !== "case" && /^(?:set|setpoint|sp|stpt)$/.test(set?.text ?? "")) return true;
  if (/^(?:and|n|now|but|still)$/.test(next?.text ?? "") && moves.test(after?.text ?? ""))
    return true;
  const product = next?.text === "," ? after : next;
  const value = build.tokens[next?.text === "," ? end + 2 : end + 1];
  return (
    products.test(product?.text ?? "") &&
    value?.kind === tokenKind.number &&
    Math.abs(value.value - number.value) <= mostApart
  );
}
