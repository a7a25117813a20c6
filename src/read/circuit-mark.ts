import type { Building } from "./items.ts";
import type { SubjectSaid } from "./subject-name.ts";
import { tokenKind } from "./token.ts";

const gauges =
  /^(?:suct|suction|suc|head|disch|discharge|dis|liq|liquid|sst|sct|sh|sc|superheat|subcool|subcooling|slt|llt|lp|hp|lo|low|hi|high)$/;

/** "c1 suct 121 head 355": a circuit, where one of its gauges follows; a capacitor has none. */
export function circuitMark(build: Building, i: number): SubjectSaid | undefined {
  const token = build.tokens[i];
  if (token?.kind !== tokenKind.code || !/^c[1-8]$/.test(token.text)) return undefined;
  const colon = /^[:=-]$/.test(build.tokens[i + 1]?.text ?? "");
  const end = colon ? i + 2 : i + 1;
  if (!gauges.test(build.tokens[end]?.text ?? "")) return undefined;
  return { name: `circuit ${token.text.slice(1)}`, end, label: undefined, aside: false };
}
