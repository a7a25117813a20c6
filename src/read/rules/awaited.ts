import type { Item } from "../item.ts";
import type { Note } from "../note.ts";

/** What people wait for that is no person. */
const awaited =
  /^(?:part|parts|trap|strainer|igniter|ignitor|accumulator|distributor|gasket|switch|block|separator|harness|board|bd|motor|compressor|comp|valve|txv|contactor|cap|capacitor|coil|drive|inverter|vfd|fan|belt|sensor|thermistor|delivery|order|blower|transformer|pump|filter|drier|module|replacement|control|bearing|bearings|fuse|fuses|heater|core|gasket|shipment|ups|new|freight|pcb|eev|actuator|relay|thermostat|stat|evap|condenser|ecm|wheel|lineset|cable|cord|wire|wiring|breaker|seal|kit|tubing|fitting|fittings|glass|tank|coupling|impeller)$/;

const between = /^(?:[-/.#]|has|have|had|just|finally|all|both|is|are|now|s|ve|number|no)$/;

/** "part 60-12E4 arrived", "the 40 A contactor has arrived": a thing came, nobody did. */
export function thingCame(items: readonly Item[], i: number): boolean {
  if (!/^(?:just|arrived)$/.test(items[i]?.text ?? "")) return false;
  let at = i - 1;
  while (between.test(items[at]?.text ?? "") || /\d/.test(items[at]?.text ?? "")) at--;
  return awaited.test(items[at]?.text ?? "");
}

/** "waiting for the compressor to cool down": what a machine does, no part comes. */
const itsOwnTime =
  /^\W*(?:\w+ ){1,4}to (?:cool|pull|start|restart|warm|settle|stop|defrost|run|ramp|finish|stabili|cycle|thaw|drain|dry|shut|heat|fill|freeze|come on|kick|boot|bleed|catch)/;

/** Waiting for a thing that is fitted, not for a person. */
export function awaitsPart(note: Note, i: number): boolean {
  const item = note.items[i];
  if (item !== undefined && itsOwnTime.test(note.plain.slice(item.to))) return false;
  if (item === undefined) return true;
  if (/part|board|compressor|motor|delivery|hold/.test(note.plain.slice(item.from, item.to)))
    return true;
  const them = note.items
    .slice(i + 1, i + 4)
    .some((word) => /^(?:those|them|it|that)$/.test(word.text));
  return note.items
    .slice(them ? 0 : i + 1, i + 6)
    .some((word) => awaited.test(word.text.replace(/s$/, "")));
}

const untilComes =
  /\b(?:til|till|until) (?:the |that |my |a |our )?(?:new )?(?:[a-z]+ )?([a-z]+?)(?:'?s)? (?:shows?(?: up)?|gets? (?:here|in)|(?:is )?(?:here|in)|comes?(?: in)?|arrives?|lands?|turns? up)\b/;

/** "leaving til the board shows up": who goes waits for a part. */
export function untilPart({ plain, items }: Note, at: number): boolean {
  const word = untilComes.exec(plain.slice(items[at]?.from))?.[1];
  return word !== undefined && awaited.test(word);
}
