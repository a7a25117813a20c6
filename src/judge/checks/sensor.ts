import type { Finding, Reading } from "../../model.ts";
import type { Check } from "../check.ts";
import { beside, noteOf, wordsNear } from "../near.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, ohmWords, plain } from "../words.ts";
import { agreesWithGauge, boardAgainstGauge } from "./board-gauge.ts";
import { exchangedProbes } from "./exchanged-probes.ts";
import { told } from "./told.ts";
import { otherFigure } from "./told-electrical-rows.ts";

/** Off the user's own table by more. Common practice, no source. */
const offShare = 0.12;
/** Ohm: below it a thermistor is shorted. Common practice, no source. */
const shortedOhm = 100;

const sensorWords = /sensor|thermistor|transducer|probe|\bntc\b/;

/** Sensors: open, shorted, or off the table that the user gave, no curve is assumed; and a defrost that does not begin, as told. */
export const sensor: Check = {
  name: "sensor",
  examples: [
    { level: "good", notes: ["suction sensor should be 10k at 77 F, it reads 10.1k"] },
    { level: "bad", notes: ["suction sensor should be 10k at 77 F, it reads OL"] },
    { level: "unknown", notes: ["suction sensor reads 10.1k"] },
    {
      level: "bad",
      notes: ["outdoor coil is iced solid and it never went into defrost, 28 F out"],
      equipment: { mode: "heating", refrigerant: "R-410A" },
    },
  ],
  signs: ["sensor:sound", "sensor:open", "sensor:off", "sensor:no_signal", "defrosting:fails"],
  judge: (scene) => {
    const boards = boardAgainstGauge(scene);
    const agrees = agreesWithGauge(scene);
    const tells = told(scene, "sensor").filter(({ brief }) => !(agrees && brief === otherFigure));
    const read =
      sistersFinding(scene) ??
      likeSensor(scene) ??
      ofQuantity(scene.readings, "resistance")
        .filter((one) => isOfSensor(one, scene) && !isOfTable(one, scene))
        .map((one) => renewedSince(one, scene) ?? resistanceFinding(one, scene));
    return [
      ...read,
      ...openAtPlug(scene),
      ...(read.some(({ level }) => level === "bad") ? [] : shortedByTwin(scene)),
      ...exchangedProbes(scene),
      ...signalFinding(scene),
      ...(tells.some(({ signs }) => signs?.includes("sensor:off")) ? [] : boards),
      ...tells,
    ];
  },
};

function found(level: Finding["level"], says: string, sign?: string, missing?: string): Finding {
  return {
    about: "sensor",
    check: "sensor",
    level,
    brief: gist(says),
    says,
    values: {},
    basis: "the given table",
    source: "the user's own table; common practice, no source",
    signs: sign === undefined ? [] : [sign],
    ...(missing === undefined ? {} : { missing }),
  };
}

/** Share by which sensors of one kind at one temperature may differ, a twin's own error included. Common practice, no source. */
const twinShare = 0.3;

/** "this one 2.1k, the other two are both 10.3k": sensors of one kind at one temperature agree. */
function sistersFinding(scene: Scene): Finding[] | undefined {
  const read = ofQuantity(scene.readings, "resistance").filter((one) => one.rating === undefined);
  const note = read[0] === undefined ? undefined : noteOf(scene, read[0]);
  const ohms = read
    .filter((one) => noteOf(scene, one) === note)
    .flatMap((one) => numberOf(one) ?? []);
  const words = note?.text ?? "";
  if (ohms.length < 2 || !sensorWords.test(words.toLowerCase()) || !twins.test(words)) return;
  const [lowest, highest] = [Math.min(...ohms), Math.max(...ohms)];
  if (lowest < shortedOhm || highest - lowest <= twinShare * highest) return;
  const says = `${ohmWords(lowest)} and ${ohmWords(highest)} where like sensors at one temperature agree: the odd one or its plug`;
  return [found("bad", says, "sensor:off")];
}

const twins =
  /\b(?:(?:the )?others?\b.{0,40}\b(?:read|reads|are|is|both|all|at)\b|twin|sister|its mate|same (?:temp|shell|room|air|heat))/i;

/** Times by which sensors of one kind differ where each was read in a message of its own. Common practice, no source. */
const apart = 2;
const like =
  /\b(?:same (?:\w+ )?(?:sensor|thermistor|probe)|(?:twin|sister|its mate)|(?:one|sensor|thermistor|probe) (?:in|of|from|next door)\b)/i;
const renewed =
  /\b(?:new|spare|replacement) (?:\w+ ){0,2}(?:sensor|thermistor|probe)\b|\b(?:sensor|thermistor|probe) (?:was |is )?(?:replaced|changed|swapped)\b/i;

function renewedAfter({ notes }: Scene, at: number): boolean {
  return notes.slice(at + 1).some(({ text }) => renewed.test((text ?? "").toLowerCase()));
}

/** "liquid thermistor OL", then "new thermistor in": the cause, which no longer stands. */
function renewedSince(one: Reading, scene: Scene): Finding | undefined {
  const note = noteOf(scene, one);
  if (note === undefined || !renewedAfter(scene, scene.notes.indexOf(note))) return undefined;
  const was = resistanceFinding(one, scene);
  if (was.level !== "bad") return undefined;
  return {
    ...was,
    level: "good",
    says: `${was.says}, and was replaced since`,
    brief: "replaced since",
  };
}

/** "Coil sensor 31.5k", then "same sensor in 12 is 10.6k" or "new sensor in, 10.4k": the first was off. */
function likeSensor(scene: Scene): Finding[] | undefined {
  const read = ofQuantity(scene.readings, "resistance").filter((one) => one.rating === undefined);
  const first = read.find((one) => sensorWords.test(wordsNear(scene, one)));
  const ohm = first === undefined ? undefined : numberOf(first);
  if (first === undefined || ohm === undefined || ohm < shortedOhm) return undefined;
  const later = read.slice(read.indexOf(first) + 1).flatMap((one) => {
    const [note, other] = [noteOf(scene, one), numberOf(one)];
    if (note === noteOf(scene, first) || other === undefined || other < shortedOhm) return [];
    const text = note?.text ?? "";
    return renewed.test(text) || like.test(text) ? [{ other, fresh: renewed.test(text) }] : [];
  });
  const odd = later.filter(({ other }) => Math.max(ohm / other, other / ohm) > apart);
  const [one] = odd;
  if (one === undefined) return undefined;
  const after = odd.find(({ fresh }) => fresh);
  return after === undefined
    ? [
        found(
          "bad",
          `${ohmWords(ohm)} where a like sensor reads ${ohmWords(one.other)}: one of them is off, or its plug`,
          "sensor:off",
        ),
      ]
    : [
        found(
          "good",
          `The new sensor reads ${ohmWords(after.other)}, the old one read ${ohmWords(ohm)}`,
          "sensor:off",
        ),
      ];
}

/** Said of a sensor, or against a table behind a note that spoke of one: "discharge thermistor code", "it's 3.2k, chart wants 20k". */
function isOfSensor(one: Reading, scene: Scene): boolean {
  if (sensorWords.test(wordsNear(scene, one))) return true;
  const own = noteOf(scene, one);
  if (own === undefined || otherOhms.test(own.text ?? "")) return false;
  // what stands behind the table's word is of the table
  const byTable = own.readings
    .slice(own.readings.indexOf(one))
    .some(({ quantity, rating }) => quantity === "resistance" && rating === "expected");
  const named = scene.notes
    .slice(0, scene.notes.indexOf(own))
    .findLast(
      ({ text }) => sensorWords.test((text ?? "").toLowerCase()) || otherOhms.test(text ?? ""),
    );
  return byTable && sensorWords.test(named?.text?.toLowerCase() ?? "");
}

/** What else has ohms. */
const otherOhms = /\b(?:winding|heater|element|contactor|solenoid|comp\w*|motor|fan|igniter)\b/i;

function resistanceFinding(reading: Reading, scene: Scene): Finding {
  if (reading.over_range === true) return found("bad", "The sensor reads open", "sensor:open");
  const ohm = numberOf(reading) ?? 0;
  if (ohm < shortedOhm)
    return found("bad", `The sensor reads ${ohmWords(ohm)}: shorted`, "sensor:open");
  const wanted =
    scene.ratings.find((one) => one.quantity === "resistance" && one.rating === "expected") ??
    ofQuantity(scene.readings, "resistance").find((one) => isOfTable(one, scene));
  const wantedOhm = wanted === undefined ? undefined : numberOf(wanted);
  if (wantedOhm === undefined || wantedOhm <= 0)
    return found("unknown", `${ohmWords(ohm)}: no table given`, undefined, "the sensor's table");
  const off = (ohm - wantedOhm) / wantedOhm;
  return Math.abs(off) > offShare
    ? found(
        "bad",
        `${ohmWords(ohm)} where ${ohmWords(wantedOhm)} should be, ${plain(100 * off)} percent off`,
        "sensor:off",
      )
    : found("good", `${ohmWords(ohm)} agrees with its table`, "sensor:sound");
}

/** "the table in the door says 50 k at 77": what it should be, said of where it stands written. */
function isOfTable(reading: Reading, scene: Scene): boolean {
  return table.test(beside(scene, reading, [tableAhead, 0]));
}

/** Letters before a figure that may name the table it is of. */
const tableAhead = 44;
const table =
  /\b(?:table|chart|manual|book|label|door|spec|sheet)\b[^.;,]{0,24}\b(?:says|shows|gives|has|lists|wants|calls for|is|puts it at)\b[^.;,\d]*[\d.]* ?(?:k\w*|ohms?)?$/;

/** "unplugged it, OL" where a sensor was spoken of: the meter's OL is read as ohms of nothing. */
function openAtPlug(scene: Scene): Finding[] {
  const notes = scene.words.split("\n");
  const at = notes.findIndex((note) => plugOpen.test(note));
  if (at < 0 || !notes.slice(0, at + 1).some((note) => sensorWords.test(note))) return [];
  if (scene.readings.some((one) => one.over_range === true && isOfSensor(one, scene))) return [];
  if (renewedAfter(scene, at)) return [];
  return [found("bad", "The sensor reads open at its plug", "sensor:open")];
}

/** Ohm that a like sensor has at least. Common practice, no source. */
const soundOhm = 500;
const windings = /\b(?:windings?|motor|fan|heater|element)\b/i;

/** "discharge thermistor code", then "out of its socket it's 0.0 ohms, its twin is 23k": shorted, whoever's ohms the meter's were taken for. */
function shortedByTwin(scene: Scene): Finding[] {
  const texts = scene.notes.map(({ text }) => (text ?? "").toLowerCase());
  return scene.notes.flatMap((note, at) => {
    const text = texts[at] ?? "";
    const spoken = texts.slice(0, at + 1).some((one) => sensorWords.test(one));
    if (!spoken || !twins.test(text) || windings.test(text) || renewedAfter(scene, at)) return [];
    const ohms = scene.readings
      .filter((one) => noteOf(scene, one) === note && /resistance$/.test(one.quantity))
      .filter((one) => one.points === undefined && one.rating === undefined)
      .flatMap((one) => numberOf(one) ?? []);
    const [lowest, highest] = [Math.min(...ohms), Math.max(...ohms)];
    if (ohms.length < 2 || lowest >= shortedOhm || highest < soundOhm) return [];
    const says = `${ohmWords(lowest)} where a like sensor reads ${ohmWords(highest)}: shorted, it or its plug`;
    return [found("bad", says, "sensor:open")];
  });
}

const plugOpen =
  /\b(?:unplugged|at the plug|pulled (?:it|the plug)|ohm(?:ed|'?d) it)\b.{0,24}\b(?:ol|open|infinite)\b/;

/** A transducer that is fed and sends nothing. */
function signalFinding(scene: Scene): Finding[] {
  const volts = ofQuantity(scene.readings, "voltage").filter((one) =>
    /signal(?! pair)|transducer/.test(wordsNear(scene, one)),
  );
  const values = volts.flatMap((one) => numberOf(one) ?? []).filter((one) => one < 30);
  const fed = values.some((one) => one > 3);
  const silent = values.some((one) => one < 0.2);
  return fed && silent
    ? [found("bad", "The transducer is fed and its signal stays at nothing", "sensor:no_signal")]
    : [];
}
