/** What a limit's figure is written in, and how it becomes the canonical unit of that figure. */
export interface Dimension {
  /** unit in plain small letters -> how many of the canonical unit it is */
  readonly units: Readonly<Record<string, number>>;
  /** where the canonical zero is not the unit's own: added before the factor */
  readonly shift?: Readonly<Record<string, number>>;
  /** the unit of a figure that stands alone; absent where more than one is usual */
  readonly usual?: string;
  /** units to offer to who wrote none of them */
  readonly offer: string;
}

const kelvinPerFahrenheit = 5 / 9;
/** Pa in a micron of mercury and in an inch of water (NIST SP 811, 2008, app. B.8). */
const pascalPerMicron = 0.133322;
const pascalPerInchOfWater = 249.089;

export const resistance: Dimension = {
  units: {
    megohm: 1e6,
    megohms: 1e6,
    meg: 1e6,
    megs: 1e6,
    mohm: 1e6,
    gigohm: 1e9,
    gigohms: 1e9,
    gig: 1e9,
    gohm: 1e9,
    kilohm: 1e3,
    kohm: 1e3,
    ohm: 1,
    ohms: 1,
  },
  usual: "megohm",
  offer: "megohm",
};

export const percent: Dimension = {
  units: { "%": 1, percent: 1, pct: 1, "% a year": 1, "percent a year": 1, "%/yr": 1 },
  usual: "%",
  offer: "%",
};

export const ratio: Dimension = {
  units: { "to 1": 1, ":1": 1, "1": 1, ratio: 1 },
  usual: "1",
  offer: "a plain number",
};

export const vacuum: Dimension = {
  units: {
    micron: pascalPerMicron,
    microns: pascalPerMicron,
    um: pascalPerMicron,
    torr: 1000 * pascalPerMicron,
    pa: 1,
    mbar: 100,
  },
  usual: "micron",
  offer: "micron, Torr, mbar or Pa",
};

export const difference: Dimension = {
  units: { f: kelvinPerFahrenheit, "deg f": kelvinPerFahrenheit, c: 1, "deg c": 1, k: 1 },
  offer: "F, C or K",
};

export const temperature: Dimension = {
  units: { f: kelvinPerFahrenheit, "deg f": kelvinPerFahrenheit, c: 1, "deg c": 1 },
  shift: { f: -32, "deg f": -32 },
  offer: "F or C",
};

export const airPressure: Dimension = {
  units: {
    "in wc": pascalPerInchOfWater,
    inwc: pascalPerInchOfWater,
    iwc: pascalPerInchOfWater,
    "in wg": pascalPerInchOfWater,
    "in of water": pascalPerInchOfWater,
    "inches of water": pascalPerInchOfWater,
    "in h2o": pascalPerInchOfWater,
    pa: 1,
  },
  offer: "in WC or Pa",
};

/** A unit in plain small letters: "°F" is "f", "MΩ" "mohm", "in. w.c." "in wc". */
export function plainUnit(said: string): string {
  return said
    .trim()
    .toLowerCase()
    .replace(/[\u03c9\u2126]/g, "ohm")
    .replace(/\u00b5|\u03bc/g, "u")
    .replace(/["\u2033]/g, "in ")
    .replace(/[\u00b0\u00ba.]/g, "")
    .replace(/\bdegrees?\b/g, "deg")
    .replace(/\b(w|h2) (c|g|o)\b/g, "$1$2")
    .replace(/\s+/g, " ")
    .trim();
}

/** In the canonical unit; undefined where the unit is none of this figure's. */
export function canonical(value: number, said: string, dimension: Dimension): number | undefined {
  const unit = said === "" ? dimension.usual : plainUnit(said);
  const factor = unit === undefined ? undefined : dimension.units[unit];
  if (unit === undefined || factor === undefined) return undefined;
  return Number(((value + (dimension.shift?.[unit] ?? 0)) * factor).toPrecision(12));
}
