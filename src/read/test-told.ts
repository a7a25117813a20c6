import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import { testerVolts } from "./tester-volts.ts";
import { type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** Units that tests and meters are called by. */
const meters =
  /^(?:megs?|megohms?|megger|hipot|amps?|amperage|volts?|voltages?|ohms?|psi|microns?|hz|hertz|temps?)$/;
const verdict =
  /^(?:good|ok|okay|fine|normal|clean|great|bad|solid|perfect|balanced|even|steady|equal|low|high|passed)$/;
const verbs =
  /^(?:are|is|was|were|all|both|to|gnd|ground|grnd|g|frame|earth|still|just|not|a|way|checks?|checked|tests?|tested|looks?|looked|out|came)$/;

function ends(token: Token | undefined): boolean {
  return token === undefined || token.kind === tokenKind.line || /^[,.;]$/.test(token.text);
}

/** "meg good", "megs out clean", "meg to gnd ok", "amps are fine": where it ends that the test came out without a figure, or 0. */
function cameOut(build: Building, at: number): number {
  let end = at + 1;
  while (verbs.test(build.tokens[end]?.text ?? "")) end++;
  if (!verdict.test(build.tokens[end]?.text ?? "")) return 0;
  while (verdict.test(build.tokens[end]?.text ?? "")) end++;
  const next = build.tokens[end];
  // "amps are fine at 13.9" has its figure, "meg good at 500" only its voltage
  if (/^(?:at|@)$/.test(next?.text ?? "")) {
    const volts = numberAt(build.tokens, end + 1)?.value ?? 0;
    return build.tokens[at]?.text.startsWith("meg") === true && testerVolts.has(volts) ? end : 0;
  }
  const closed = ends(next) || /^(?:and|but|so|too|on|w|with|n|for)$/.test(next?.text ?? "");
  return closed || numberAt(build.tokens, end) === undefined ? end : 0;
}

/** Ohms of windings stand before it, which are no megohms. */
function behindOhms(build: Building, at: number): boolean {
  const pairs = build.items.some(({ points }) =>
    points?.some((one) => one.length === 2 && !one.includes("ground")),
  );
  return (
    pairs ||
    build.tokens
      .slice(Math.max(0, at - 12), at)
      .some(({ text }) => /^(?:windings?|ohms|ohmed|wdgs?)$/.test(text))
  );
}

/** "comps 1 and 2 meg fine": several by their numbers, and how the test of them came out. */
function behindNumbered(build: Building, at: number): boolean {
  const last = build.tokens[at - 1];
  if (last?.text.length !== 1 || numberAt(build.tokens, at - 1) === undefined) return false;
  return build.tokens
    .slice(Math.max(0, at - 7), at - 1)
    .some(({ text }) => /^(?:comps|compressors|fans|motors|pumps|leads|legs)$/.test(text));
}

/**
 * "windings 1.2 1.2 1.3, meg good", "14.2, amps ok": behind a comma, at the beginning, or where ohms
 * of windings end, a unit with a verdict behind it is a test by its name, and no unit of what stands before. Index behind its verdict, or 0.
 */
export function testTold(build: Building, at: number): number {
  const token = build.tokens[at];
  if (token === undefined || token.glued || !meters.test(token.text)) return 0;
  const before = build.tokens[at - 1];
  const apart =
    ends(before) || before?.text === "and" || ((before?.word?.roles ?? 0) & role.next) !== 0;
  const megs = /^megs?$/.test(token.text);
  if (!apart && !(megs && (behindOhms(build, at) || behindNumbered(build, at)))) return 0;
  return cameOut(build, at);
}
