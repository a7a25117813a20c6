import { legsTurned } from "./legs-turned.ts";
import type { Scene } from "./scene.ts";
import { isFoundNew } from "./stages.ts";
import { isOfSwapTest, isSwapTest } from "./swap-test.ts";

/** Words of a repair and the part that it mends; the first that fits counts. */
const repairWords: readonly (readonly [words: RegExp, part: string])[] = [
  // "coil sensor" is no coil
  [/sensor|thermistor|probe|transducer/i, "sensor"],
  [/capacitor|\bcap\b/i, "capacitor"],
  [/contactor/i, "contactor"],
  [/belt/i, "belt"],
  [/fan motor|blower motor|fan\b/i, "fan"],
  [/filter(?!.*dri)/i, "filter"],
  [/coil|condenser|evaporator/i, "coil"],
  [/lug|terminal|connection|splice|wire nut|\bnut\b/i, "connection"],
  [/^(?!.*(?:crankcase|belly|sump|drain|strip|duct)).*\b(?:heater|element)/i, "defrost"],
  [/defrost (?:timer|board|termination|relay)/i, "defrost"],
  [/transformer|fuse|24 ?v/i, "control"],
  [/drive|inverter|module/i, "drive"],
  [/board/i, "board"],
];

/** A fuse of the supply or of a drive is none of the control circuit. */
const lineFuse =
  /\b(?:l ?[123]|leg \w|phase \w|[abc] phase|main|line|disconnect|drive|inverter|input)(?: side)? fuses?\b|(?<!(?:control|board|volt|transformer) )\bfuses\b/;

const mending: readonly string[] = ["replaced", "repaired", "tightened", "cleaned"];

/** What was mended here (not by the utility); a compressor changed says nothing of why it failed. */
export function repairSigns(scene: Scene): { part: string; said: string }[] {
  const turned = legsTurned.exec(scene.words)?.[0];
  const rotation = turned === undefined ? [] : [{ part: "rotation", said: turned }];
  return [...rotation, ...partsMended(scene)];
}

/** "port solenoid clicks, swapped the coil": a valve's magnet is nothing that air goes through. */
function isMagnet(words: string, scene: Scene): boolean {
  if (/condens|evap|indoor|outdoor/i.test(words)) return false;
  return /\b(?:solenoids?|reversing valve|port|branch|eev|exv|lev|stator)\b/.test(scene.words);
}

/** "coil is clean, I washed it": what "it" is stands before. */
function deedWords(one: Scene["done"][number], scene: Scene): string {
  const words = `${one.what ?? ""} ${one.said}`;
  const named = repairWords.some(([pattern]) => pattern.test(words));
  if (one.action !== "cleaned" || named) return words;
  const note = scene.notes.find(({ statements }) => statements.includes(one))?.text ?? "";
  const [from = 0, to = 0] = one.spans[0] ?? [];
  const own = /^ (?:it|them)\b/i.test(note.slice(to));
  return own ? `${words} ${note.slice(Math.max(0, from - itAhead), from)}` : words;
}

/** "cap swapped last summer by others": none of this call's work. */
function isOfPast(one: Scene["done"][number], scene: Scene): boolean {
  const note = scene.notes.find(({ statements }) => statements.includes(one))?.text ?? "";
  return past.test(note.slice(one.spans[0]?.[1] ?? note.length));
}

const past =
  /^\W*(?:it |them )?(?:last (?:summer|winter|spring|fall|autumn|year|season)|by (?:others|somebody|someone|the (?:last|previous|other))|(?:a|two|three|four|\d+) years? (?:ago|back))\b/i;

/** Letters before "washed it" that may name it. */
const itAhead = 30;

function partsMended(scene: Scene): { part: string; said: string }[] {
  if (scene.seen.some((one) => one.observation === "line_work_done")) return [];
  if (scene.done.length === 0 && scene.parts.length === 0) return [];
  const swaps = scene.notes
    .filter(isSwapTest)
    .flatMap((note) => note.statements.filter((one) => isOfSwapTest(one, note)));
  const isTest = (said: string) => swaps.some((one) => one.said === said);
  const done = scene.done
    .filter((one) => mending.includes(one.action) || one.action === "swapped")
    .filter((one) => !isOfPast(one, scene))
    .map((one) => ({ words: deedWords(one, scene), said: one.said, verb: one.action }));
  const parts = scene.parts
    .filter((one) => one.state === "fitted" && !isFoundNew(one))
    .map(({ part, said }) => ({
      // "new crankcase heater": which heater stands in the words alone
      words: part === "heater" ? said : part,
      said,
      verb: "replaced" as const,
    }));
  return [...done, ...parts].flatMap(({ words, said, verb }) => {
    if (isTest(said) || (/fuse/i.test(words) && lineFuse.test(scene.words))) return [];
    if (verb === "tightened") return [{ part: "connection", said }];
    const row = repairWords.find(([pattern]) => pattern.test(words));
    // a terminal is wiped for a test, not to mend it
    if (row === undefined || (verb === "cleaned" && row[1] === "connection")) return [];
    if (row[1] === "coil" && verb !== "cleaned" && isMagnet(words, scene)) return [];
    return [{ part: row[1], said }];
  });
}
