import { perScene, type Scene } from "./scene.ts";

const inAndOut: (scene: Scene) => boolean = perScene(({ words }) =>
  /\bcontactor\b[^\n]*\bin:? \d{3}\b[^\n]*\bout:? \d/.test(words),
);

/** "contactor in but two poles pass: 480 in 480 480, out 480 0 0": both its sides by their ways, the one named last. */
export function wayNamed(scene: Scene, words: string): "line" | "load" | undefined {
  if (!inAndOut(scene)) return undefined;
  const last = [...words.matchAll(/\b(in|out)(?=:? \d)/g)].at(-1)?.[1];
  if (last === undefined) return undefined;
  return last === "out" ? "load" : "line";
}
