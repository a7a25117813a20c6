import type { Building } from "./items.ts";
import { isNumber } from "./token.ts";

const common = /^(?:c|com|common|comm)$/;
const joint = /^(?:-|to|and|n|&|\/)$/;

/** "24.8 mv-com", "25.1 between mv and c": a gas valve's main terminal against its common, no millivolts. */
export function atMainValve({ tokens }: Building, at: number): boolean {
  if (tokens[at]?.text !== "mv") return false;
  const behind = joint.test(tokens[at + 1]?.text ?? "") ? at + 2 : at + 1;
  const before = joint.test(tokens[at - 1]?.text ?? "") ? at - 2 : at - 1;
  return [behind, before].some((i) => i !== at && common.test(tokens[i]?.text ?? ""));
}

const noun = /^(?:comp|compressor|compr|fan|motor|pump|heater)$/;
const tests = /^(?:megs?|megged)$/;

/** "comp 1 meg at 500 comp 2 meg at 480": what each of them does, no megohms of the first. */
function eachMegs({ tokens }: Building, at: number): boolean {
  const [name, number] = [tokens[at - 2]?.text ?? "", tokens[at - 1]];
  if (!tests.test(tokens[at]?.text ?? "") || !noun.test(name) || !isNumber(number)) return false;
  return tokens.some(
    (token, i) =>
      token.text === name &&
      i !== at - 2 &&
      isNumber(tokens[i + 1]) &&
      tokens[i + 1]?.text !== number?.text &&
      tests.test(tokens[i + 2]?.text ?? ""),
  );
}

/** "fan motors 1 and 2 ohm out at 14.2 and 14.4": behind the machines' numbers what they do, no ohms of the second. */
function theyOhm({ tokens }: Building, at: number): boolean {
  if (!/^(?:ohm|meg|amp|read)$/.test(tokens[at]?.text ?? "")) return false;
  const [first, and, second] = tokens.slice(Math.max(0, at - 3), at);
  if (!isNumber(first) || !isNumber(second)) return false;
  if (second?.value !== (first?.value ?? 0) + 1 || !/^(?:and|n|&)$/.test(and?.text ?? ""))
    return false;
  const out = tokens[at + 1]?.text === "out" ? at + 2 : at + 1;
  const lead = /^(?:at|to|is|are|:)$/.test(tokens[out]?.text ?? "") ? out + 1 : out;
  return isNumber(tokens[lead]);
}

/** What machines do, said with a word that elsewhere is a unit. */
export function isDeed(build: Building, at: number): boolean {
  return theyOhm(build, at) || eachMegs(build, at);
}
