import type { Building } from "./items.ts";

/** "T1 to the suction line 12 ohms": bare pipe is as good a ground as the shell it is brazed to. Where it ends. */
export function pipingAt(build: Building, i: number): number | undefined {
  const at = build.tokens[i]?.text === "the" ? i + 1 : i;
  const [pipe, kind] = [build.tokens[at]?.text ?? "", build.tokens[at + 1]?.text ?? ""];
  if (!/^(?:suction|discharge|liquid|copper)$/.test(pipe)) return undefined;
  return /^(?:line|pipe|tube|stub|piping|tubing)$/.test(kind) ? at + 2 : undefined;
}
