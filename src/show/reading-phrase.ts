import type { Reading } from "../model.ts";
import type { QuantityName } from "../quantities/list.ts";
import type { Place } from "../vocabulary.ts";
import { figureWords } from "./figure-words.ts";

/**
 * One reading, cut so that neighbors can share what they have in common:
 * "lead 1 84, lead 2 91 megohm to ground at 500 V".
 */
export interface ReadingPhrase {
  /** what goes before the list: "start peak", "insulation, earlier visit" */
  readonly head: string;
  /** what names this one: "lead 1", "L1-L2" */
  readonly label: string;
  /** the technician's own figure */
  readonly number: string;
  readonly unit: string;
  /** what goes after the list: "to ground at 500 V" */
  readonly tail: string;
  /** readings of one place on the machine stand together */
  readonly place: Place | undefined;
}

/** What a quantity is called where neither place nor points say what was measured. */
const quantityWords: Partial<Record<QuantityName, string>> = {
  insulation_resistance: "insulation",
  winding_resistance: "winding",
  polarization_index: "polarization index",
  absorption_ratio: "absorption ratio",
  diode_drop: "diode",
  fault_code: "code",
  pressure: "pressure",
  vacuum: "vacuum",
  static_pressure: "static",
  temperature: "temperature",
  wet_bulb_temperature: "wet bulb",
  temperature_difference: "difference",
  superheat: "superheat",
  subcooling: "subcooling",
  relative_humidity: "humidity",
  valve_opening: "valve",
  valve_steps: "valve",
  power_factor: "power factor",
  airflow: "airflow",
  rotational_speed: "speed",
  length: "length",
  water_flow: "water flow",
  concentration: "concentration",
  resistance: "resistance",
};

/** Quantities that a place alone makes plain: "suction 101 psig", "box 38 F". */
const namedByPlace = new Set<QuantityName>(["pressure", "temperature", "voltage"]);

const placeWords: Partial<Record<Place, string>> = {
  suction_saturation: "suction saturation",
  discharge_saturation: "discharge saturation",
  dc_bus: "DC bus",
};

export function placeName(place: Place): string {
  return placeWords[place] ?? place.replaceAll("_", " ");
}

/** Seconds as said at a meter: "60 s", "10 min". */
export function spokenSeconds(seconds: number): string {
  return seconds >= 120 && seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`;
}

/** "U-V"; a rail ends in a sign of its own: "DC- to U". */
function joinedPoints(points: readonly string[]): string {
  return points.join(points.some((point) => point.startsWith("DC")) ? " to " : "-");
}

/** A reading in the technician's own digits and unit, ready to be joined with its neighbors. */
export function readingPhrase(reading: Reading): ReadingPhrase {
  const grounded = reading.points?.length === 2 && reading.points[1] === "ground";
  const label = grounded ? (reading.points?.[0] ?? "") : joinedPoints(reading.points ?? []);
  return {
    head: headOf(reading, label),
    label,
    ...figureWords(reading),
    tail: tailOf(reading, grounded),
    place: reading.at,
  };
}

function headOf(reading: Reading, label: string): string {
  const quantity = quantityWords[reading.quantity] ?? "";
  const unnamed = reading.at === undefined && label === "";
  const plain = reading.at === undefined ? !unnamed : namedByPlace.has(reading.quantity);
  const words = [
    reading.earlier === true ? "earlier visit" : "",
    reading.rating === undefined ? "" : ratingWords(reading.rating),
    reading.action ?? "",
    reading.at === undefined ? "" : placeName(reading.at),
    reading.state === "start" ? "start" : "",
    reading.state === "running" ? "running" : "",
    reading.stat ?? "",
    plain && !alwaysNamed.has(reading.quantity) ? "" : quantity,
  ];
  return words.filter((w) => w !== "").join(" ");
}

/** Said even beside points: without the word these would be taken for something else. */
const alwaysNamed = new Set<QuantityName>(["diode_drop", "polarization_index"]);

function ratingWords(rating: NonNullable<Reading["rating"]>): string {
  if (rating === "nominal") return "rated";
  if (rating === "nameplate_charge") return "plate charge";
  return rating;
}

function tailOf(reading: Reading, grounded: boolean): string {
  const words = [
    grounded ? "to ground" : "",
    reading.test_voltage === undefined ? "" : `at ${reading.test_voltage} V`,
    reading.after_s === undefined ? "" : `at ${spokenSeconds(reading.after_s)}`,
    reading.for_s === undefined || reading.for_s === reading.after_s
      ? ""
      : `for ${spokenSeconds(reading.for_s)}`,
  ];
  return words.filter((w) => w !== "").join(" ");
}
