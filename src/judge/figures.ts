import {
  fahrenheitFromCel,
  kelvinPerFahrenheit,
  kilogramPerPound,
  pascalPerInchOfWater,
  pascalPerMicron,
  pascalPerPsi,
} from "../physics/constants.ts";
import { perScene, type Scene } from "./scene.ts";
import { plain } from "./words.ts";

/** Figures as this technician says them: psi, F, lb oz, or bar, C, kg. */
export interface Figures {
  readonly temperature: (cel: number) => string;
  readonly difference: (kelvin: number) => string;
  /** a pressure as the gauge shows it */
  readonly gauge: (pa: number) => string;
  readonly mass: (kg: number) => string;
  readonly volume: (m3: number) => string;
  readonly concentration: (kgM3: number) => string;
  readonly airflow: (m3s: number) => string;
  readonly staticPressure: (pa: number) => string;
  readonly heat: (watt: number) => string;
  /** an absolute pressure of a vacuum, and what its unit is called */
  readonly vacuum: (pa: number) => string;
  readonly vacuumName: string;
}

/** What goes by the system of units alone. */
type OfSystem = Omit<Figures, "vacuum" | "vacuumName">;

const american: OfSystem = {
  temperature: (cel) => `${Math.round(fahrenheitFromCel(cel))} F`,
  difference: (kelvin) => `${Math.round(kelvin / kelvinPerFahrenheit)} F`,
  gauge: (pa) => `${Math.round(pa / pascalPerPsi)} psi`,
  mass: poundsWords,
  volume: (m3) => `${Math.round(m3 * 35.3147)} cubic feet`,
  concentration: (kgM3) => `${plain((kgM3 / kilogramPerPound) * 28.3168)} lb per 1000 cubic feet`,
  airflow: (m3s) => `${Math.round(m3s / 4.719474e-4)} cfm`,
  staticPressure: (pa) => `${plain(pa / pascalPerInchOfWater)} in of water`,
  heat: (watt) => `${Math.round(watt / 29.307107) * 100} Btu an hour`,
};

const metric: OfSystem = {
  temperature: (cel) => `${tenth(cel)} C`,
  difference: (kelvin) => `${tenth(kelvin)} K`,
  gauge: (pa) => `${plain(pa / 1e5)} bar`,
  mass: (kg) => `${plain(kg)} kg`,
  volume: (m3) => `${plain(m3)} cubic metres`,
  concentration: (kgM3) => `${plain(kgM3)} kg per cubic metre`,
  airflow: (m3s) => `${Math.round(m3s * 3_600)} cubic metres an hour`,
  staticPressure: (pa) => `${Math.round(pa)} Pa`,
  heat: (watt) => `${plain(watt / 1_000)} kW`,
};

/** Micron are said the world over. */
function micronWords(pa: number): string {
  const micron = pa / pascalPerMicron;
  return `${Math.round(micron < 1_000 ? micron : Math.round(micron / 10) * 10)} micron`;
}

/** A vacuum as this technician's gauge shows it: micron, where nothing tells otherwise. */
function vacuumOf(scene: Scene): Pick<Figures, "vacuum" | "vacuumName"> {
  const unit = scene.readings.findLast(({ quantity }) => quantity === "vacuum")?.figure.unit;
  if (unit === "Pa") return { vacuum: (pa) => `${Math.round(pa)} Pa`, vacuumName: "Pa" };
  if (unit === "mbar" || unit === "hPa")
    return { vacuum: (pa) => `${plain(pa / 100)} mbar`, vacuumName: "mbar" };
  return { vacuum: micronWords, vacuumName: "microns" };
}

/** The figures that the case's own readings were said in; American where none shows it. */
export const figuresOf: (scene: Scene) => Figures = perScene((scene) => {
  const units = scene.readings.map((one) => one.figure.unit);
  const metricSaid = units.filter((unit) => /^(C|Cel|bar|kPa|MPa|K|kg|g|m3\/h|Pa|m)$/.test(unit));
  const americanSaid = units.filter((unit) => /^(F|psi|psig|psia|lb|oz|cfm|in|inHg|ft)/.test(unit));
  return {
    ...(metricSaid.length > americanSaid.length ? metric : american),
    ...vacuumOf(scene),
  };
});

function tenth(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function poundsWords(kg: number): string {
  const ounces = Math.round((kg / kilogramPerPound) * 16);
  const pounds = Math.floor(ounces / 16);
  const rest = ounces % 16;
  if (pounds === 0) return `${rest} oz`;
  return rest === 0 ? `${pounds} lb` : `${pounds} lb ${rest} oz`;
}
