import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const pipes = /^(?:pipe|pipes|piping|tubing|lineset|copper|gas)$/;
/** Beside a standing test alone: "lines 64". */
const testLines = /^lines?$/;
/** F or C of a zone's pipe that has no unit. Common practice, no source. */
const coldest = 5;
const warmest = 160;

const verbs = /^(?:at|is|are|was|were|now|down|to|only|still|about|around)$/;

/** "33.4 bar this morning, pipes at 21": in a standing test the pipe's warmth, in the degrees that it was told in before. */
export function pipesAt(list: readonly Draft[], items: readonly Item[], context: Context): void {
  const before = context.readings.findLast((one) => one.quantity === "temperature");
  const scale = before?.figure.unit;
  const test = scale !== undefined && context.readings.some((one) => one.quantity === "pressure");
  // "eev reads 100%, both its pipes 75, others around 48"
  const zone = items.some(({ text }) => /^(?:eev|eevs|lev|exv|valve|valves|port)$/.test(text));
  // "250 nitro on it at 4:20, lines at 76": the test begins
  const nitro = items.some(({ text }) => /^(?:nitro|nitrogen|n2|dry nitrogen)$/.test(text));
  if (!test && !zone && !nitro) return;
  const standing =
    nitro || (test && !context.readings.some(({ at }) => at === "suction" || at === "discharge"));
  let told = false;
  for (const draft of list) {
    const free =
      draft.unit === undefined &&
      draft.named === undefined &&
      draft.points === undefined &&
      draft.rating === undefined;
    if (!free || (draft.hint !== undefined && draft.hint !== "temperature")) continue;
    let at = draft.index - 1;
    while (verbs.test(items[at]?.text ?? "")) at--;
    const others = told && /^(?:others?|rest|neighbou?rs?)$/.test(items[at]?.text ?? "");
    const line = standing && testLines.test(items[at]?.text ?? "");
    if (!others && !line && !pipes.test(items[at]?.text ?? "")) continue;
    if (line && test) pressureAhead(list, draft, context);
    if ((zone || !test) && (draft.value < coldest || draft.value > warmest)) continue;
    told = true;
    draft.quantity = "temperature";
    draft.named = "temperature";
    if (scale === undefined) continue;
    draft.unit = unitCalled(scale);
    draft.assumedUnit = true;
  }
}

/** Share of a standing test's pressure that a bare figure of it has. Common practice, no source. */
const stillThere = { least: 0.5, most: 1.2 } as const;

/** "283 next morning lines 64": the bare figure ahead of the warmth is the pressure again. */
function pressureAhead(list: readonly Draft[], line: Draft, { readings }: Context): void {
  const ahead = list[list.indexOf(line) - 1];
  const last = readings.findLast(({ quantity }) => quantity === "pressure");
  if (ahead === undefined || last === undefined || ahead.unit !== undefined) return;
  const free = [ahead.named, ahead.hint, ahead.place, ahead.points, ahead.rating];
  const share = ahead.value / Number(last.figure.number);
  const near = share >= stillThere.least && share <= stillThere.most;
  if (!near || free.some((one) => one !== undefined)) return;
  ahead.named = "pressure";
  ahead.unit = unitCalled(last.figure.unit);
  ahead.assumedUnit = true;
}

const sides: ReadonlyMap<string, "liquid" | "suction"> = new Map([
  ["liq", "liquid"],
  ["liquid", "liquid"],
  ["gas", "suction"],
  ["vapor", "suction"],
  ["suct", "suction"],
  ["suction", "suction"],
]);

/** Words that a pipe's warmth is told with, where no gauge is. */
const probed = /^(?:clamps?|probes?|thermistors?|pipes?|spots|coil|display|screen)$/;

/** "my clamps: liquid 43 gas 70": each pipe's name stands before its value. */
export function pipesAhead(drafts: readonly Draft[], items: readonly Item[]): void {
  if (!items.some(({ text }) => probed.test(text))) return;
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right === undefined || right.index - left.index > 3) return;
    const pair = [left, right];
    const [one, two] = pair.map(({ index }) => sides.get(items[index - 1]?.text ?? ""));
    if (one === undefined || two === undefined || one === two) return;
    const warm = (draft: Draft): boolean =>
      (draft.unit === undefined || draft.unit.dimension === "temperature") &&
      draft.named !== "pressure" &&
      draft.value >= coldest &&
      draft.value <= warmest;
    if (!pair.every(warm)) return;
    left.place = one;
    right.place = two;
    for (const draft of pair) {
      draft.named = "temperature";
      draft.hint = "temperature";
    }
  });
}

/** "pipe temps 44 liq 51 gas": each pipe's name stands behind its value. */
export function pipesBehind(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right === undefined || right.index !== left.index + 2) return;
    const head = items[left.index - 1]?.text ?? "";
    if (!/^(?:pipe|pipes|pipe temps?|temps?|lines?|line temps?|at|are|:)$/.test(head)) return;
    const [one, two] = [left, right].map(({ index }) => sides.get(items[index + 1]?.text ?? ""));
    const end = items[right.index + 2];
    if (one === undefined || two === undefined || one === two) return;
    if (end !== undefined && end.kind !== itemKind.sign && end.kind !== itemKind.line) return;
    for (const [draft, place] of [
      [left, one],
      [right, two],
    ] as const) {
      if (draft.unit !== undefined && draft.unit.dimension !== "temperature") return;
      draft.place = place;
      draft.named = "temperature";
      draft.hint = "temperature";
    }
  });
}
