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
  "charged",
  "freezer",
  "cooler",
  "breaker",
  "crankcase",
] as const;

/** The consonants of a word, each run of one letter once. */
function bones(word: string): string {
  return word.replace(/[aeiou]/g, "").replace(/(.)\1+/g, "$1");
}

const byBones = new Map<string, string>();
for (const word of clipped) if (!byBones.has(bones(word))) byBones.set(bones(word), word);

/** "sply", "blwr", "dschrg": the word of the trade that has just these consonants; undefined where none has. */
export function vowelless(word: string): string | undefined {
  if (word.length < 4 || word.length > 11 || !/^[b-df-hj-np-tv-z]+$/.test(word)) return undefined;
  return byBones.get(word.replace(/(.)\1+/g, "$1"));
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
