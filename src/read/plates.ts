import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "460v 7.5hp 9.6a": only a plate tells a motor's power, so what stands in its row is told by the plate. */
function platesOfMotor(items: readonly Item[], drafts: readonly Draft[]): void {
  const horses = items.findIndex(({ unit }) => unit?.figure === "hp");
  if (horses < 0) return;
  const volts = drafts.find(({ index }) => index + 1 === horses);
  const amps = drafts.find(({ index }) => index - 1 === horses);
  if (volts?.unit?.dimension !== "voltage" || amps?.unit?.dimension !== "current") return;
  volts.rating ??= "nominal";
  amps.rating ??= "nominal";
}

const ofAmps = /^(?:RLA|LRA|FLA|MCA|MOP)$/;

/** "18.9 fla 1770 rpm", "9.4 rla 60 lra 208v": amps are rated so, and no speed; each word stands behind its figure. */
function ampsThenSpeed(drafts: readonly Draft[]): void {
  drafts.forEach((last, order) => {
    if (!ofAmps.test(last.rating ?? "") || !last.ownUnit || last.unit === undefined) return;
    if (last.unit.dimension === "current") return;
    let right = last;
    for (let at = order - 1; at >= 0; at--) {
      const left = drafts[at];
      const amps = left?.unit === undefined || left.unit.dimension === "current";
      if (left === undefined || !amps || left.sentence !== right.sentence) break;
      const had = left.rating;
      left.rating = right.rating;
      left.quantity = "current";
      left.named = "current";
      if (had === undefined || !ofAmps.test(had)) break;
      right = { ...left, rating: had };
    }
    last.rating = "nominal";
  });
}

/** "plate: FLA 7.4 460v": what a plate says goes on until something else begins. */
export function plates(items: readonly Item[], drafts: readonly Draft[]): void {
  platesOfMotor(items, drafts);
  ampsThenSpeed(drafts);
  let plate = false;
  drafts.forEach((draft, order) => {
    const left = drafts[order - 1];
    // "tag says RLA 11.4 LRA 75 charge 9 lb 11": what the plate gives, nothing was put in
    const amps = /^(?:RLA|LRA|FLA|MCA|MOP|MOC|MCC)$/.test(left?.rating ?? "");
    const volts = left?.rating === "nominal" && left.unit?.dimension === "voltage";
    // "RLA 33.6. dropped the charge 11 lb 4 oz": another sentence tells what was done
    const behind = plate || ((amps || volts) && left?.sentence === draft.sentence);
    if (behind && draft.chargeNoun && draft.rating === undefined) {
      draft.action = undefined;
      draft.rating = "nameplate_charge";
    }
    if (
      left !== undefined &&
      plate &&
      draft.rating === undefined &&
      draft.state === undefined &&
      items.slice(left.index + 1, draft.index).every(({ owner }) => owner !== undefined)
    )
      draft.rating = "nominal";
    if (draft.before.some((index) => items[index]?.label?.plate === true)) plate = true;
    else if (draft.rating === undefined) plate = false;
  });
  lockedThenPlate(items, drafts);
}

/** "locked rotor 98 plate says 96": what it drew so, and what its plate gives for it. */
function lockedThenPlate(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.rating !== "LRA" || right.sentence !== left.sentence) return;
    const locked = left.before.some((index) => items[index]?.text === "locked");
    const plate = items
      .slice(left.index + 1, right.index)
      .some(({ label }) => label?.plate === true);
    if (!locked || !plate) return;
    left.rating = undefined;
    left.state = "start";
    right.rating = "LRA";
    right.named = "current";
  });
}
