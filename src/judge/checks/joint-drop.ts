import type { CaseNote, Finding } from "../../model.ts";
import { isOddDrop } from "../odd-drop.ts";
import { numbersOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed } from "../words.ts";
import { controlBelowV } from "./volts.ts";

const joint = /\b(?:lugs?|terminals?|splices?|connections?|joints?|wire ?nuts?|terminations?)\b/i;
const drop = /\b(?:drops?|dropped|lost|loses)\b/i;

/** "drop lug to wire: L1 0.04 V, L2 2.7 V, L3 0.05 V": what each joint of a row loses under load. */
export function jointDrop(scene: Scene): Finding[] {
  return scene.notes.filter(tells).flatMap((note) => {
    const volts = ofQuantity(note.readings, "voltage", "diode_drop");
    const drops = numbersOf(volts).filter((one) => one >= 0 && one < controlBelowV);
    return isOddDrop(drops) ? [found(drops)] : [];
  });
}

function tells(note: CaseNote): boolean {
  const text = note.text ?? "";
  return drop.test(text) && joint.test(text) && !/\bpoles?\b|\bcontacts?\b/i.test(text);
}

function found(drops: readonly number[]): Finding {
  const says = `${listed(drops, "V")} lost over the joints: the one that loses most is loose or burnt`;
  return {
    about: "connection",
    check: "supply",
    level: "bad",
    brief: gist(says),
    says,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: ["joint:burnt_connection"],
  };
}
