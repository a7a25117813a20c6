import type { CaseNote, Finding } from "../../model.ts";
import { probesK } from "../bands.ts";
import { comparesBoard } from "../board-words.ts";
import { figuresOf } from "../figures.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist } from "../words.ts";

/** Share by which a board's transducer and a gauge on one port may differ, and Pa under which it is no matter. Common practice, no source. */
const apart = { share: 0.15, leastPa: 70_000 } as const;

const renewed =
  /\b(?:new|replaced|changed|swapped)\b[^.;]{0,16}\b(?:sensor|transducer|thermistor|probe|one)\b/i;

/** "board has 12 psi on the low side, gauges say 118": one port, two figures. */
export function boardAgainstGauge(scene: Scene): Finding[] {
  return scene.notes.flatMap((note, at) => {
    const read = figuresIn(note, scene);
    if (read === undefined || !isApart(read)) return [];
    if (scene.notes.slice(at + 1).some(({ text }) => renewed.test(text ?? ""))) return [];
    const figures = figuresOf(scene);
    const [one, other] = read.both.map((value) =>
      read.quantity === "pressure" ? figures.gauge(value) : figures.temperature(value),
    );
    const says = `Board and gauge read ${one} and ${other} at one place: the sensor, its plug or the board's input, before anything that the board concludes from it`;
    return [
      {
        about: "sensor",
        check: "sensor" as const,
        level: "bad" as const,
        says,
        brief: gist(says),
        values: {},
        basis: "common practice",
        source: "common practice, no source",
        signs: ["sensor:off"],
      },
    ];
  });
}

/** The row told in words is taken back where the two figures agree: "controller shows 118, my gauge says 121". */
export function agreesWithGauge(scene: Scene): boolean {
  return scene.notes.some((note) => {
    const read = figuresIn(note, scene);
    return read !== undefined && !isApart(read);
  });
}

interface TwoFigures {
  readonly quantity: string;
  readonly both: readonly [number, number];
}

/** The board's figure and the gauge's, where a note has just these two. */
function figuresIn(note: CaseNote, scene: Scene): TwoFigures | undefined {
  const text = note.text ?? "";
  if (!comparesBoard(text)) return undefined;
  const read = note.readings.filter((one) => scene.readings.includes(one));
  const [first, second] = read;
  if (read.length !== 2 || first === undefined || second === undefined) return undefined;
  if (first.quantity !== second.quantity || !compared.includes(first.quantity)) return undefined;
  // two pressures of one note were placed by their height, degrees by their words
  const placed = first.at !== undefined && second.at !== undefined && first.at !== second.at;
  if (first.quantity === "temperature" && placed) return undefined;
  const [a, b] = [numberOf(first), numberOf(second)];
  return a === undefined || b === undefined
    ? undefined
    : { quantity: first.quantity, both: [a, b] };
}

const compared: readonly string[] = ["pressure", "temperature"];

function isApart({ quantity, both: [a, b] }: TwoFigures): boolean {
  const off = Math.abs(a - b);
  if (quantity === "temperature") return off > probesK;
  return off > apart.leastPa && off > apart.share * Math.max(a, b);
}
