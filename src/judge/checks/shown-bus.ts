import type { Finding, Reading } from "../../model.ts";
import { beside } from "../near.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, plain } from "../words.ts";

/** Share by which a display and a meter on one bus may differ. Common practice, no source. */
const apart = 0.1;
/** Letters before a figure that tell who shows it. */
const ahead = 32;
const display =
  /\b(?:display|board|screen|controller|drive|inverter|panel|keypad|app|readout|parameter|monitor)\b(?: \w+)? (?:says?|shows?|reads?|thinks|sees|has it at|gives)\b(?: \w+)?\W*(?:bus|dc)?\W*$/;

function isShown(one: Reading, scene: Scene): boolean {
  const words = beside(scene, one, [ahead, 0]);
  const at = words.lastIndexOf(one.figure.number);
  return display.test(at < 0 ? words : words.slice(0, at));
}

/** What a display makes of its bus says nothing of the bus where a meter was on it: the meter's reading counts. */
export function measuredBus(all: readonly Reading[], scene: Scene): readonly Reading[] {
  const measured = all.filter((one) => !isShown(one, scene));
  return measured.length === 0 ? all : measured;
}

/** "display says 410", "my meter on the bus says 648": the drive misreads its own bus. */
export function misreadBus(all: readonly Reading[], scene: Scene): Finding[] {
  const measured = measuredBus(all, scene);
  const shownV = all.filter((one) => !measured.includes(one)).flatMap((one) => numberOf(one) ?? []);
  const metered = measured.at(-1);
  const [shown, meter] = [shownV.at(-1), metered === undefined ? undefined : numberOf(metered)];
  if (shown === undefined || meter === undefined) return [];
  if (Math.abs(shown - meter) <= apart * Math.max(shown, meter)) return [];
  const says = `${plain(shown)} V on the display where the meter reads ${plain(meter)} V: if both were read at one moment, the drive misreads its own bus, its board and no diode`;
  return [
    {
      about: "drive",
      check: "dc_bus",
      level: "watch",
      brief: gist(says),
      says,
      values: {},
      basis: "common practice",
      source: "common practice, no source",
      signs: ["drive_code:control_fault"],
    },
  ];
}
