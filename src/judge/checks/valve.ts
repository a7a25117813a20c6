import type { Finding, Reading } from "../../model.ts";
import { kelvinPerFahrenheit } from "../../physics/constants.ts";
import { isHeating } from "../application.ts";
import type { Check } from "../check.ts";
import { clauseOf } from "../clause.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { isAtLiquidPart } from "../liquid-part.ts";
import { figureSpan, isAtReversingValve, noteOf, reversingValve, wordsNear } from "../near.ts";
import { partWords } from "../part-words.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { told } from "./told.ts";
import { valveCoil } from "./valve-coil.ts";
import { withoutFlow, zonePipe } from "./zone-pipe.ts";

/** K, 3 F, lost across one fitting of the liquid line. Source: common practice, no source. */
const restrictedK = 3 * kelvinPerFahrenheit;
/** K, 5 F, that suction gas may warm in a reversing valve. Source: common practice, no source. */
const leakingK = 5 * kelvinPerFahrenheit;

/** Valves and what else the refrigerant goes through: bulb, answer, liquid line, reversing valve. */
export const valve: Check = {
  name: "valve",
  examples: [
    { level: "good", notes: ["liquid line 80 F before the drier and 79 F after the drier"] },
    { level: "bad", notes: ["liquid line 80 F before the drier and 60 F after the drier"] },
  ],
  signs: [
    "line_drop:drop",
    "line_drop:none",
    "reversing:picks_up",
    "reversing:none",
    "valve_answer:stays_shut",
    "valve_answer:stays_open",
    "valve_answer:answers",
    "bulb:off",
    "branch:stuck",
    "frost:frost_at_restriction",
    "valve_coil:open",
    "valve_coil:branch_open",
    "valve_coil:expansion_open",
  ],
  judge: (scene) => {
    const figures = figuresOf(scene);
    const strayed = zonePipe(scene);
    const zones = strayed.length > 0 ? strayed : withoutFlow(scene);
    // a zone's stray pipe and "the port stays hot" are one look at one valve
    const heard = told(scene, "valve").filter(
      (one) => zones.length === 0 || !/^(?:branch|valve_answer):/.test(one.signs?.[0] ?? ""),
    );
    return [
      ...liquidLine(scene, figures),
      ...reversing(scene, figures),
      ...zones,
      ...valveCoil(scene),
      ...heard,
    ];
  },
};

const passed =
  /\b(after|past|downstream|(?:leaving|out of)(?! (?:the )?(?:header|receiver|condenser|cond|outdoor|rack|manifold|tank))|outlet|other side|at the (valve|txv|indoor|evap)|valve inlet|before the (valve|txv)|coming out)\b/;

/** Temperature lost along the liquid line: one reading is past something, another before it. */
function liquidLine(scene: Scene, figures: Figures): Finding[] {
  const liquids = scene.readings.filter(
    (one) => one.quantity === "temperature" && isLiquidLine(one, scene),
  );
  const dropK = acrossPart(liquids, scene) ?? alongLine(liquids, scene) ?? saidDrop(scene);
  return dropK === undefined ? [] : [lineFinding(dropK, figures)];
}

/** "drier: 90 in and 74 out": two temperatures about one part, in one note; the latest counts. */
function acrossPart(liquids: readonly Reading[], scene: Scene): number | undefined {
  const atPart = liquids.filter((one) => partWords.test(wordsNear(scene, one)));
  for (const one of atPart.toReversed()) {
    const note = noteOf(scene, one);
    const cels = atPart
      .filter((other) => noteOf(scene, other) === note)
      .flatMap((other) => numberOf(other) ?? []);
    if (cels.length >= 2) return Math.max(...cels) - Math.min(...cels);
  }
  return undefined;
}

function alongLine(liquids: readonly Reading[], scene: Scene): number | undefined {
  const after = liquids.findLast((one) => passed.test(clauseOf(scene, one)));
  const before = liquids.findLast((one) => !passed.test(clauseOf(scene, one)));
  if (after === undefined || before === undefined) return undefined;
  // what was read at the old drier says nothing of the new one
  if (isSinceFitting(scene, after) !== isSinceFitting(scene, before)) return undefined;
  const [afterCel, beforeCel] = [numberOf(after), numberOf(before)];
  return afterCel === undefined || beforeCel === undefined ? undefined : beforeCel - afterCel;
}

/** Read once a part was fitted, in its message or later. */
function isSinceFitting(scene: Scene, reading: Reading): boolean {
  const fitted = scene.notes.findLastIndex(({ statements }) =>
    statements.some((one) => one.kind === "part" && one.state === "fitted"),
  );
  const note = noteOf(scene, reading);
  return fitted >= 0 && note !== undefined && scene.notes.indexOf(note) >= fitted;
}

function saidDrop(scene: Scene): number | undefined {
  const said = scene.readings.findLast(
    (one) => one.quantity === "temperature_difference" && partWords.test(clauseOf(scene, one)),
  );
  if (said !== undefined) return numberOf(said);
  if (
    /\bdrier\b.{0,16}\bsame (?:temp\w* )?(?:in and out|both sides|either side)\b/.test(scene.words)
  )
    return 0;
  const colder = scene.readings.find(
    (one) => isColder(one, scene) && partWords.test(clauseOf(scene, one)),
  );
  if (colder === undefined) return undefined;
  return Number(colder.figure.number) * (colder.figure.unit === "C" ? 1 : kelvinPerFahrenheit);
}

/** "12 F colder than its inlet": a difference, whatever it was read as. */
function isColder(reading: Reading, scene: Scene): boolean {
  if (reading.quantity !== "temperature") return false;
  const text = noteOf(scene, reading)?.text ?? "";
  const [, to] = figureSpan(text, reading);
  return /^ ?(?:f|c|deg\w*|degrees)? ?(?:colder|cooler|lower|drop)\b/i.test(
    text.slice(to, to + 20),
  );
}

function isLiquidLine(reading: Reading, scene: Scene): boolean {
  if (isColder(reading, scene)) return false;
  if (reading.at === "liquid" || isAtLiquidPart(scene, reading)) return true;
  return reading.at === undefined && partWords.test(wordsNear(scene, reading));
}

function lineFinding(dropK: number, figures: Figures): Finding {
  const restricted = dropK >= restrictedK;
  return {
    about: "liquid line",
    check: "valve",
    level: restricted ? "bad" : "good",
    says: restricted
      ? `The liquid loses ${figures.difference(dropK)} across it: it flashes at a restriction there`
      : "No drop along the liquid line, so it is open up to the valve",
    brief: restricted ? `${figures.difference(dropK)} lost in the liquid line` : "liquid line open",
    values: { liquid_line_drop_K: dropK },
    basis: "common practice",
    source: "more than 2 to 3 F across a liquid line part: common practice, no source",
    signs: [restricted ? "line_drop:drop" : "line_drop:none"],
  };
}

/** Warming of the suction gas inside the reversing valve, from two readings or a said difference. */
function reversing(scene: Scene, figures: Figures): Finding[] {
  const ofNote = scene.readings.filter((one) =>
    reversingValve.test((noteOf(scene, one)?.text ?? "").toLowerCase()),
  );
  const own = ofNote.filter((one) => isAtReversingValve(scene, one));
  const near = own.filter((one) => one.quantity === "temperature").length >= 2 ? own : ofNote;
  const said = near.find((one) => one.quantity === "temperature_difference");
  const lines = near.filter(
    (one) => one.quantity === "temperature" && !/discharge|hot gas/.test(clauseOf(scene, one)),
  );
  const cels = lines.filter((one) => isBodyPlace(one, scene)).flatMap((one) => numberOf(one) ?? []);
  const [first, second] = cels;
  const riseK =
    said !== undefined
      ? numberOf(said)
      : first !== undefined && second !== undefined
        ? Math.abs(second - first)
        : undefined;
  if (riseK === undefined) return [];
  return [reversingFinding(riseK, figures)];
}

/** A pipe at the valve's body, whatever place the words round it gave it. */
function isBodyPlace(reading: Reading, scene: Scene): boolean {
  const { at } = reading;
  // "off the outdoor coil 39": while it heats that is the suction into the valve
  if (at === "condenser_out") return isHeating(scene);
  if (at === undefined || /^(suction|indoor_air|return_air|evaporator_out)$/.test(at)) return true;
  return at === "outdoor_air" && /pipe|line|coil|tube/.test(reading.said);
}

function reversingFinding(riseK: number, figures: Figures): Finding {
  const leaking = riseK > leakingK;
  return {
    about: "reversing valve",
    check: "valve",
    level: leaking ? "bad" : "good",
    says: leaking
      ? `The suction gas warms ${figures.difference(riseK)} inside the reversing valve: hot gas passes its slide`
      : `The suction gas warms ${figures.difference(riseK)} in the reversing valve, no more than usual`,
    brief: leaking ? "hot gas passes the reversing valve" : "reversing valve closes",
    values: { reversing_valve_rise_K: riseK },
    basis: "common practice",
    source: "warming of 2 to 5 F is usual: common practice, no source",
    signs: [leaking ? "reversing:picks_up" : "reversing:none"],
  };
}
