import { highSide, leastRatio, lowSide } from "./gauge-pair.ts";
import { numberAt } from "./numbers.ts";
import { type Token, tokenKind } from "./token.ts";
import { signAt } from "./unsaid-token.ts";

const before = /^(?:running|runs|ran|ok|pressures?|gauges?|now|with|and|,|[.;:]|hertz|hz)$/;
const lines =
  /^(?:suction|liquid|discharge|line|superheat|subcool|subcooling|super|sub|sh|sc|with|split|supply|return|outdoor|outside|ambient)$/;

/** A spoken figure at `at` that a gauge can show between the two bounds. */
function gaugeAt(tokens: readonly Token[], at: number, [low, high]: readonly [number, number]) {
  const said = tokens[at]?.word?.number === undefined ? undefined : numberAt(tokens, at);
  if (said === undefined || said.loose === true || !Number.isInteger(said.value)) return undefined;
  return said.value >= low && said.value <= high ? said : undefined;
}

/**
 * "one eighteen | three forty two suction line fifty eight": both gauges at the head of a clause, before what is
 * told of a line or of the air; a phone writes no stroke between them.
 */
export function spokenGauges(tokens: readonly Token[], units: "us" | "si"): readonly Token[] {
  if (units !== "us") return tokens;
  const strokes = new Set<number>();
  tokens.forEach((_, i) => {
    const lead = tokens[i - 1];
    const first = lead === undefined || lead.kind === tokenKind.line || before.test(lead.text);
    const low = first ? gaugeAt(tokens, i, lowSide.us) : undefined;
    const high = low === undefined ? undefined : gaugeAt(tokens, low.end, highSide.us);
    if (low === undefined || high === undefined || high.value < low.value * leastRatio) return;
    if (lines.test(tokens[high.end]?.text ?? "")) strokes.add(low.end);
  });
  if (strokes.size === 0) return tokens;
  return tokens.flatMap((token, i) =>
    strokes.has(i) ? [signAt(token.from, "/"), token] : [token],
  );
}
