/** Words of the trade whose misspellings are read; each long enough that one slip leaves it plain. */
const trade = [
  "suction",
  "discharge",
  "discharging",
  "liquid",
  "superheat",
  "subcooling",
  "pressure",
  "pressures",
  "temperature",
  "return",
  "supply",
  "outdoor",
  "outside",
  "ambient",
  "indoor",
  "compressor",
  "circuit",
  "winding",
  "windings",
  "vacuum",
  "microns",
  "micron",
  "static",
  "voltage",
  "volts",
  "current",
  "amps",
  "resistance",
  "insulation",
  "megohm",
  "megohms",
  "ground",
  "neutral",
  "recovered",
  "charged",
  "humidity",
  "nitrogen",
  "thermistor",
  "sensor",
  "heater",
  "capacitor",
  "contactor",
  "condenser",
  "evaporator",
  "blower",
  "degrees",
  "running",
  "starting",
  "saturation",
  "saturated",
  "nameplate",
  "setpoint",
  "reading",
  "percent",
  "pounds",
  "ounces",
  "frequency",
  "airflow",
  "control",
  "transformer",
  "inverter",
  "crankcase",
  "superheated",
  "entering",
  "chilled",
  "freezer",
  "cooler",
  "product",
  "breaker",
  "filter",
  "waiting",
  "pulled",
  "started",
  "peaked",
  "settled",
  "dropped",
] as const;

/** What thumbs make of the longest of them, more than one slip away. */
const farSlips: ReadonlyMap<string, string> = new Map([
  ["tempature", "temperature"],
  ["tempeture", "temperature"],
  ["tempreture", "temperature"],
  ["presure", "pressure"],
  ["acros", "across"],
  ["accross", "across"],
]);

const known: ReadonlySet<string> = new Set(trade);

/** English words that lie one slip from a word of the trade and are none. */
const others: ReadonlySet<string> = new Set([
  "adder",
  "bolts",
  "colts",
  "jolts",
  "molts",
  "camps",
  "damps",
  "lamps",
  "ramps",
  "ample",
  "sanction",
  "auction",
  "function",
  "currant",
  "currents",
  "grounds",
  "around",
  "rounds",
  "bounds",
  "wounds",
  "hounds",
  "sounds",
  "founds",
  "mounds",
  "sunning",
  "cunning",
  "gunning",
  "ruining",
  "runnings",
  "leading",
  "beading",
  "reeding",
  "heaving",
  "weaving",
  "leaning",
  "returns",
  "supplies",
  "heated",
  "heaters",
  "heather",
  "censor",
  "sensors",
  "filters",
  "filler",
  "flicker",
  "cooled",
  "coolers",
  "cool",
  "liquids",
  "statics",
  "statin",
  "static's",
  "baiting",
  "writing",
  "wasting",
  "folding",
  "finding",
  "binding",
  "minding",
  "blowers",
  "slower",
  "flower",
  "lower",
  "outdoors",
  "indoors",
  "breakers",
  "bleaker",
  "creaker",
  "treading",
  "spreading",
  "reading's",
  "setting",
  "airflows",
  "starling",
  "starring",
  "staring",
  "startling",
  "circuits",
  "pressured",
  "controls",
  "products",
  "produce",
  "percents",
  "founds",
  "rounds",
  "volt",
  "vaults",
  "waiving",
  "wafting",
  "pulley",
  "pulleys",
  "puller",
  "polled",
  "pulse",
  "starter",
  "stared",
  "stated",
  "starved",
  "startled",
  "smarted",
  "peeked",
  "pecked",
  "perked",
  "settler",
  "settles",
  "dropper",
  "drooped",
  "valves",
  "amp",
  "stamps",
  "cramps",
]);

/** Every way to drop one letter of a word, and the word itself: two words one slip apart share one. */
function shorter(word: string): string[] {
  const forms = [word];
  for (let i = 0; i < word.length; i++) forms.push(word.slice(0, i) + word.slice(i + 1));
  return forms;
}

const byForm = new Map<string, string>();
for (const word of trade)
  for (const form of shorter(word)) if (!byForm.has(form)) byForm.set(form, word);

/** One letter more, less, other, or two neighbours swapped. */
function oneSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  let endA = a.length;
  let endB = b.length;
  while (endA > from && endB > from && a[endA - 1] === b[endB - 1]) {
    endA--;
    endB--;
  }
  const left = endA - from;
  const right = endB - from;
  if (left <= 1 && right <= 1) return true;
  return left === 2 && right === 2 && a[from] === b[from + 1] && a[from + 1] === b[from];
}

const found = new Map<string, string | undefined>();
const MOST = 4096;

function look(word: string): string | undefined {
  const far = farSlips.get(word);
  if (far !== undefined) return far;
  if (known.has(word) || others.has(word)) return undefined;
  for (const form of shorter(word)) {
    const meant = byForm.get(form);
    if (meant !== undefined && meant[0] === word[0] && oneSlip(word, meant)) return meant;
  }
  return undefined;
}

/** The word of the trade that an unknown word is one slip from; undefined where it is none. */
export function respelled(word: string): string | undefined {
  if (word.length < 5 || word.length > 14) return undefined;
  if (found.has(word)) return found.get(word);
  const meant = look(word);
  if (found.size < MOST) found.set(word, meant);
  return meant;
}
