import type { Finding, PastCase } from "../../model.ts";
import type { Check } from "../check.ts";
import { replacesCompressor } from "../replaces-compressor.ts";
import type { Scene } from "../scene.ts";
import { insulation } from "./insulation.ts";
import { startCurrent } from "./start-current.ts";
import { winding } from "./winding.ts";

const dayMs = 86_400_000;

/** A compressor that fails after one was replaced here: the cause is still about. */
export const repeatFailure: Check = {
  name: "history",
  // it reads past jobs, which no note alone can show
  examples: [],
  signs: [],
  judge: (scene) => {
    if (scene.history.length === 0) return [];
    const last = scene.history.findLast((past) => past.notes.some(replacesCompressor));
    if (last === undefined || !failsNow(scene)) return [];
    return [findingOf(last, scene)];
  },
};

function failsNow(scene: Scene): boolean {
  return [insulation, winding, startCurrent].some((check) =>
    check.judge(scene).some((one) => one.level === "bad" && !/fan|blower/i.test(one.about)),
  );
}

function findingOf(last: PastCase, scene: Scene): Finding {
  const days = daysSince(last, scene);
  const ago = days === undefined ? "on an earlier job" : `${days} days ago`;
  const open = neverMeasured(scene);
  return {
    about: "compressor",
    check: "history",
    level: "watch",
    brief: `second compressor, one replaced ${ago}`,
    says: `A compressor was replaced here ${ago}: find why before another goes in${open}`,
    values: {},
    basis: "own history",
    source: "the unit's earlier jobs; common practice, no source",
    signs: [],
  };
}

function neverMeasured(scene: Scene): string {
  const all = [...scene.notes, ...scene.history.flatMap((past) => past.notes)];
  const hasVolts = all.some((note) => note.readings.some((one) => one.quantity === "voltage"));
  return hasVolts ? "" : ". Supply volts under load were never recorded";
}

function daysSince(last: PastCase, scene: Scene): number | undefined {
  const then = Date.parse(last.closed ?? last.notes[last.notes.length - 1]?.at ?? "");
  const now = Date.parse(scene.at ?? "");
  if (Number.isNaN(then) || Number.isNaN(now) || now < then) return;
  return Math.round((now - then) / dayMs);
}
