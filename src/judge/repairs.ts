import type { Scene } from "./scene.ts";

/** Words of a repair and the sign that it gives; the first that fits counts. */
const repairWords: readonly (readonly [words: RegExp, sign: string])[] = [
  [/capacitor|\bcap\b/i, "mended:capacitor"],
  [/contactor/i, "mended:contactor"],
  [/belt/i, "mended:belt"],
  [/fan motor|blower motor|fan\b/i, "mended:fan"],
  [/filter(?!.*dri)/i, "mended:filter"],
  [/coil|condenser|evaporator/i, "mended:coil"],
  [/lug|terminal|connection|splice|wire nut|\bnut\b/i, "mended:connection"],
  [/sensor|thermistor|probe|transducer/i, "mended:sensor"],
  [/transformer|fuse|24 ?v/i, "mended:control"],
  [/drive|inverter|module/i, "mended:drive"],
  [/board/i, "mended:board"],
];

const mending: readonly string[] = ["replaced", "repaired", "tightened", "cleaned"];

/** What was mended, as signs; a compressor changed says nothing of why it failed. */
export function repairSigns(scene: Scene): { sign: string; said: string }[] {
  const done = scene.done
    .filter((one) => mending.includes(one.action) || one.action === "swapped")
    .map((one) => ({ words: `${one.what ?? ""} ${one.said}`, said: one.said, verb: one.action }));
  const parts = scene.parts
    .filter((one) => one.state === "fitted")
    .map((one) => ({ words: one.part, said: one.said, verb: "replaced" as const }));
  return [...done, ...parts].flatMap(({ words, said, verb }) => {
    if (verb === "tightened") return [{ sign: "mended:connection", said }];
    const row = repairWords.find(([pattern]) => pattern.test(words));
    return row === undefined ? [] : [{ sign: row[1], said }];
  });
}
