import type { Building } from "./items.ts";
import { numberAt } from "./numbers.ts";
import type { PointsSaid } from "./point-words.ts";
import type { Token } from "./token.ts";
import { role } from "./word.ts";

/** Volts that a 24 V control has to its common; common practice, no source. */
const called = { from: 16, to: 34 } as const;

/** Two terminals by their letters alone, glued or apart: the letter and where the pair ends. */
function lettersAt(
  tokens: readonly Token[],
  i: number,
): { letter: string; end: number } | undefined {
  const text = tokens[i]?.text ?? "";
  if (/^[rygw]c$/.test(text)) return { letter: text.charAt(0), end: i + 1 };
  if (!/^[rygw]$/.test(text) || tokens[i]?.apostrophe === true) return undefined;
  const joint = /^(?:-|\/|to)$/.test(tokens[i + 1]?.text ?? "") ? 2 : 1;
  return tokens[i + joint]?.text === "c" ? { letter: text, end: i + joint + 1 } : undefined;
}

function voltsBehind(tokens: readonly Token[], end: number): number | undefined {
  const is = ((tokens[end]?.word?.roles ?? 0) & role.is) !== 0 ? 1 : 0;
  return numberAt(tokens, end + is)?.value;
}

function isCalled(volts: number | undefined): boolean {
  return volts !== undefined && volts >= called.from && volts <= called.to;
}

/** "r c 24v", "rc 26 yc 26 gc 0": a thermostat's terminals, where one of them has the control's volts. */
export function statPair(build: Building, i: number): PointsSaid | undefined {
  const { tokens } = build;
  const pair = lettersAt(tokens, i);
  // with a joint between them they are read as any other points
  if (pair === undefined || pair.end > i + 2) return undefined;
  const volts = voltsBehind(tokens, pair.end);
  if (volts === undefined || (volts >= 1 && !isCalled(volts))) return undefined;
  const others = tokens.some((_, at) => {
    const other = at === i ? undefined : lettersAt(tokens, at);
    return other !== undefined && isCalled(voltsBehind(tokens, other.end));
  });
  const unit = tokens.some(({ text }) => /^(?:v|vac|volts?|stat|tstat|thermostat)$/.test(text));
  if (!others && !(isCalled(volts) && unit)) return undefined;
  return { list: [[pair.letter.toUpperCase(), "C"]], end: pair.end };
}
