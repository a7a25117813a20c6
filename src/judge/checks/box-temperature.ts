import type { Finding, Limit } from "../../model.ts";
import type { Check } from "../check.ts";
import { figuresOf } from "../figures.ts";
import { ownBasis } from "../own-limit.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";

/** What was typed as the limit is not over it: a tenth of a degree F. */
const roundingCel = 0.06;

const limits = { box_temperature: { least: 1, most: 5 } } as const;

/**
 * A box or its product against the company's own limits; without one it gets no verdict, since how
 * warm for how long is the operator's written procedure to say.
 */
export const boxTemperature: Check = {
  name: "box_temperature",
  examples: [
    { level: "good", notes: ["box 38 F"], limits },
    { level: "watch", notes: ["box 31 F"], limits },
    { level: "bad", notes: ["box 38 F", "product 46 F"], limits },
  ],
  signs: [],
  judge: (scene) => {
    const own = scene.limits.box_temperature;
    if (own === undefined) return [];
    const [inside, product] = [lastAt(scene, "box"), lastAt(scene, "product")];
    return [
      ...(inside === undefined ? [] : [finding(scene, own, inside)]),
      ...(product === undefined ? [] : [finding(scene, own, product)]),
    ];
  },
};

type Read = Scene["readings"][number];

const lastAt = ({ readings }: Scene, at: "box" | "product"): Read | undefined =>
  readings.findLast(
    (one) => one.quantity === "temperature" && one.at === at && numberOf(one) !== undefined,
  );

function finding(scene: Scene, { least, most }: Limit, read: Read): Finding {
  const cel = numberOf(read) ?? 0;
  const figures = figuresOf(scene);
  const sides = [least, most].flatMap((one) =>
    one === undefined ? [] : [figures.temperature(one)],
  );
  const side =
    cel > (most ?? Infinity) + roundingCel
      ? "over"
      : cel < (least ?? -Infinity) - roundingCel
        ? "under"
        : "within";
  const brief = `${read.at} ${read.figure.number} ${read.figure.unit}, ${side} the company's ${sides.join(" to ")}`;
  return {
    about: "box",
    check: "box_temperature",
    level: side === "over" ? "bad" : side === "under" ? "watch" : "good",
    says: `${brief.charAt(0).toUpperCase()}${brief.slice(1)}`,
    brief,
    values: {},
    basis: ownBasis,
    source: "the company's own list of limits",
  };
}
