import type { Finding, Level, Limit } from "../model.ts";
import type { CheckName, LimitName } from "../vocabulary.ts";
import { bands } from "./bands.ts";
import { type Figures, figuresOf } from "./figures.ts";
import { ownBasis, ownSource } from "./own-limit.ts";
import type { Scene } from "./scene.ts";
import { percentPlain } from "./words.ts";

/** How one figure of a finding is held against the company's own limit for it. */
interface Held {
  readonly limit: LimitName;
  readonly check: CheckName;
  /** the named figure that is compared, by its size where the limit knows no sign */
  readonly value: string;
  readonly unsigned?: true;
  readonly name: string;
  readonly words: (value: number, figures: Figures) => string;
  readonly under: Level;
  readonly over: Level;
  /** findings that rest on something nearer to the machine, or that tell of a danger, stay */
  readonly stays?: (found: Finding, value: number) => boolean;
}

const percents = (value: number): string => `${percentPlain(value)} percent`;
const kelvins = (value: number, figures: Figures): string => figures.difference(value);

/** A plate's figure or a target for the weather is nearer to the machine than any list. */
const onlyUsual = ({ basis }: Finding): boolean => basis !== "common practice";

/** Percent of unbalance above which no motor is to run, whatever a list says. Source: NEMA MG 1, 14.36. */
const neverRunPercent = 5;

const held: readonly Held[] = [
  {
    limit: "voltage_unbalance",
    check: "supply",
    value: "unbalance_percent",
    name: "unbalance",
    words: percents,
    under: "good",
    over: "watch",
    stays: (_found, value) => value > neverRunPercent,
  },
  {
    limit: "voltage_off_plate",
    check: "supply",
    value: "off_plate_percent",
    unsigned: true,
    name: "off the plate by",
    words: percents,
    under: "good",
    over: "bad",
  },
  {
    limit: "winding_unbalance",
    check: "winding",
    value: "winding_unbalance_percent",
    name: "winding unbalance",
    words: percents,
    under: "good",
    over: "watch",
    stays: ({ signs = [] }) => signs.some((one) => /shorted|two_low|open/.test(one)),
  },
  {
    limit: "capacitance_error",
    check: "capacitor",
    value: "capacitance_error_percent",
    unsigned: true,
    name: "off the label by",
    words: percents,
    under: "good",
    over: "bad",
    stays: ({ signs = [] }) => signs.includes("capacitor:open"),
  },
  {
    limit: "superheat",
    check: "superheat",
    value: "superheat_K",
    name: "superheat",
    words: kelvins,
    under: "watch",
    over: "bad",
    stays: (found, value) =>
      onlyUsual(found) || (found.signs ?? []).length === 0 || value < bands.floodbackK,
  },
  {
    limit: "subcooling",
    check: "subcooling",
    value: "subcooling_K",
    name: "subcooling",
    words: kelvins,
    under: "watch",
    over: "bad",
    stays: (found) => onlyUsual(found) || (found.signs ?? []).length === 0,
  },
  {
    limit: "compression_ratio",
    check: "compression",
    value: "compression_ratio",
    name: "ratio",
    words: (value) => value.toFixed(1),
    under: "watch",
    over: "watch",
    stays: ({ signs = [] }) => signs.includes("ratio:flat"),
  },
  {
    limit: "discharge_temperature",
    check: "discharge_temperature",
    value: "discharge_Cel",
    name: "discharge",
    words: (value, figures) => figures.temperature(value),
    under: "watch",
    over: "bad",
    stays: ({ signs = [] }) => signs.includes("discharge:wet"),
  },
  {
    limit: "temperature_split",
    check: "temperature_split",
    value: "temperature_split_K",
    name: "split",
    words: kelvins,
    under: "watch",
    over: "watch",
    stays: onlyUsual,
  },
  {
    limit: "static_pressure",
    check: "airflow",
    value: "static_Pa",
    name: "static",
    words: (value, figures) => figures.staticPressure(value),
    under: "watch",
    over: "bad",
    stays: onlyUsual,
  },
  {
    limit: "leak_rate",
    check: "leak_rate",
    value: "leak_rate_percent_per_year",
    name: "leak rate a year",
    words: percents,
    under: "good",
    over: "bad",
    // a company may be stricter than a rule, never looser
    stays: ({ level }) => level !== "good",
  },
];

/**
 * Findings as the company's own limits have them: level, words and basis change, and the finding
 * still says what is usual. Signs stay, since what a figure tells of the cause is no matter of policy.
 */
export function underOwnLimits(findings: readonly Finding[], scene: Scene): Finding[] {
  return findings.map((found) => {
    for (const row of held) {
      const own = scene.limits[row.limit];
      const value = found.check === row.check ? found.values[row.value] : undefined;
      if (own === undefined || value === undefined || found.level === "unknown") continue;
      if (row.stays?.(found, value) !== true) return judged(found, row, { own, value, scene });
    }
    return found;
  });
}

function judged(
  found: Finding,
  row: Held,
  { own, value, scene }: { readonly own: Limit; readonly value: number; readonly scene: Scene },
): Finding {
  const size = row.unsigned ? Math.abs(value) : value;
  const figures = figuresOf(scene);
  const side =
    size > (own.most ?? Infinity) ? "over" : size < (own.least ?? -Infinity) ? "under" : "within";
  const level = side === "within" ? "good" : graver(found.level, row[side]);
  const measured = `${row.name} ${row.words(size, figures)}, ${side} the company's`;
  const limit = bounds(own, row, figures);
  return {
    ...found,
    level,
    brief: `${measured} ${limit}`,
    says: `${capital(measured)} own limit of ${limit}; without that limit: ${small(found.says)}`,
    basis: ownBasis,
    source: ownSource(found.source ?? found.basis),
  };
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const small = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? `${text.charAt(0).toLowerCase()}${text.slice(1)}` : text;

function bounds({ least, most }: Limit, row: Held, figures: Figures): string {
  const sides = [least, most].flatMap((one) => (one === undefined ? [] : row.words(one, figures)));
  return sides.join(" to ");
}

const order: readonly Level[] = ["unknown", "good", "watch", "bad"];
const graver = (a: Level, b: Level): Level => (order.indexOf(a) > order.indexOf(b) ? a : b);
