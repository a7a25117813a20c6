import type { Word } from "./word.ts";

/** Words of the trade that are thumbed without their vowels, or glued to the next. */
const clipped = [
  "supply",
  "return",
  "suction",
  "discharge",
  "liquid",
  "blower",
  "blowers",
  "heater",
  "heaters",
  "sensors",
  "thermistor",
  "thermistors",
  "compressor",
  "compressors",
  "condenser",
  "evaporator",
  "contactor",
  "capacitor",
  "transformer",
  "winding",
  "windings",
  "ground",
  "microns",
  "nitrogen",
  "superheat",
  "subcooling",
  "pressure",
  "temperature",
  "voltage",
  "outdoor",
  "ambient",
  "saturation",
  "setpoint",
  "nameplate",
  "recovered",
  "receiver",
  "charge",
  "charged",
  "freezer",
  "cooler",
  "breaker",
  "crankcase",
  "bridge",
  "rectifier",
  "frequency",
  "insulation",
  "indoor",
  "entering",
  "static",
  "filter",
  "filters",
  "neutral",
  "inverter",
  "defrost",
  "should",
  "valved",
  "isolated",
  "lifted",
  "flashing",
  "running",
  "standing",
  "expected",
] as const;

/** The consonants of a word, each run of one letter once. */
function bones(word: string): string {
  return word.replace(/[aeiou]/g, "").replace(/(.)\1+/g, "$1");
}

const byBones = new Map<string, string>();
for (const word of clipped) if (!byBones.has(bones(word))) byBones.set(bones(word), word);

/** "dsch", "suctn": its first consonants. "wndg", "rcvd": one within it left out as well. */
function shorter(letters: string, whole: string): boolean {
  if (whole.startsWith(letters)) return true;
  if (letters.length + 1 !== whole.length) return false;
  let same = 0;
  while (letters[same] === whole[same]) same++;
  return same > 0 && letters.slice(same) === whole.slice(same + 1);
}

/** The one word that these consonants shorten; undefined where it may be several. */
function shortened(letters: string): string | undefined {
  const meant = new Set<string>();
  for (const [whole, word] of byBones)
    if (whole[0] === letters[0] && shorter(letters, whole)) meant.add(word.replace(/s$/, ""));
  const [word, ...rest] = meant;
  return rest.length === 0 ? word : undefined;
}

/** "sply", "blwr", "dschrg": the word of the trade that has just these consonants; undefined where none has. */
export function vowelless(word: string): string | undefined {
  if (word.length < 4 || word.length > 11 || !/^[b-df-hj-np-tv-z]+$/.test(word)) return undefined;
  const letters = word.replace(/(.)\1+/g, "$1");
  return byBones.get(letters) ?? (letters.length < 4 ? undefined : shortened(letters));
}

/** "suction lne 39", "liq lin 95": too short to be known alone; behind a side of the circuit its line. */
export function lineSlip(piece: string, before: Word | undefined): string | undefined {
  const slips = /^(?:lne|lin|lnie|ilne|lien|liine|lnes)$/.test(piece);
  const pipe = /^(?:pip|ppe|pipr|piep)$/.test(piece);
  const side = /^(?:suction|liquid|discharge)$/.test(before?.label?.place ?? "");
  if (!side || !(slips || pipe)) return undefined;
  return pipe ? "pipe" : "line";
}

const heads = [
  "condenser",
  "cond",
  "evaporator",
  "evap",
  "outdoor",
  "indoor",
  "compressor",
  "comp",
  "suction",
  "suct",
  "discharge",
  "disch",
  "liquid",
  "liq",
  "return",
  "supply",
  "crankcase",
  "blower",
  "blwr",
  "fan",
  "head",
  "oil",
  "room",
  "box",
  "shell",
  "coil",
  "drain",
  "defrost",
] as const;
const tails: ReadonlySet<string> = new Set([
  "fan",
  "fans",
  "fanmotor",
  "motor",
  "mtr",
  "amps",
  "amp",
  "volts",
  "psi",
  "press",
  "pressure",
  "temp",
  "temps",
  "tmp",
  "line",
  "air",
  "heater",
  "htr",
  "cap",
  "sat",
]);

/** "condfan", "blwrmtr", "suctemp": where two words of the trade are glued; 0 where they are not. */
export function joint(word: string): number {
  if (word.length < 6 || word.length > 18) return 0;
  for (const head of heads)
    if (word.startsWith(head) && tails.has(word.slice(head.length))) return head.length;
  return 0;
}
