import type { Scene } from "./scene.ts";

/** The note's words about a remark: so many letters before it and after it. */
export function textAbout(
  one: Scene["seen"][number],
  scene: Scene,
  [before, after]: readonly [before: number, after: number],
): string {
  const note = scene.notes.find((other) => other.statements.includes(one));
  const [from, to] = one.spans[0] ?? [0, 0];
  return (note?.text ?? one.said).slice(Math.max(0, from - before), to + after);
}
