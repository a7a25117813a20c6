import { waitFor } from "../heads.ts";
import type { Note, Rule } from "../note.ts";
import { accessCodes } from "./access-code.ts";
import { actions } from "./action.ts";
import { answers } from "./answer.ts";
import { asideNumbers } from "./aside.ts";
import { blinkCounts } from "./blink-count.ts";
import { breakers } from "./breaker-and-fuse.ts";
import { clockTimes } from "./clock-time.ts";
import { codeAgain } from "./code-again.ts";
import { codeLines } from "./code-lines.ts";
import { codesShown } from "./code-shown.ts";
import { coilsByNumber } from "./coils-by-number.ts";
import { colonRows } from "./colon-rows.ts";
import { complaints } from "./complaint.ts";
import { confirms } from "./confirm.ts";
import { countOfSizes } from "./count-of-size.ts";
import { counts } from "./count-of-things.ts";
import { dates } from "./date.ts";
import { defrostFailsafe } from "./defrost-failsafe.ts";
import { defrostsADay } from "./defrosts-a-day.ts";
import { differences } from "./difference-of-amount.ts";
import { doneWith } from "./done-with.ts";
import { dottedRooms } from "./dotted-rooms.ts";
import { faultCodes } from "./fault-code.ts";
import { gasInHand } from "./gas-in-hand.ts";
import { hardStart } from "./hard-start.ts";
import { heard } from "./heard.ts";
import { hoursOfEach } from "./hours-of-each.ts";
import { hoursOnUnits } from "./hours-on-units.ts";
import { ifThen } from "./if-then.ts";
import { knownRooms } from "./known-room.ts";
import { laborRule } from "./labor.ts";
import { leftStanding } from "./left-standing.ts";
import { lettersAsIn } from "./letter-as-in.ts";
import { letteredDoors } from "./lettered-door.ts";
import { listNumerals } from "./list-numeral.ts";
import { lockOf } from "./lock-of.ts";
import { looseCodes } from "./loose-code.ts";
import { machineAgain } from "./machine-again.ts";
import { machineInHand } from "./machine-in-hand.ts";
import { madeAs } from "./made-as.ts";
import { minutesOut } from "./minutes-out.ts";
import { motorSizes } from "./motor-size.ts";
import { namedRooms } from "./named-rooms.ts";
import { newSize } from "./new-size.ts";
import { nextMachine } from "./next-machine.ts";
import { nitrogenRule } from "./nitrogen.ts";
import { nominalSizes } from "./nominal-size.ts";
import { numberAsName } from "./number-as-name.ts";
import { numberFirst } from "./number-first.ts";
import { numberedAgain } from "./numbered-again.ts";
import { numberedHeads } from "./numbered-head.ts";
import { numberedParts } from "./numbered-part.ts";
import { numberedPlaces } from "./numbered-places.ts";
import { numberedRooms } from "./numbered-rooms.ts";
import { observations } from "./observation.ts";
import { onEach } from "./on-each.ts";
import { onItsBox } from "./on-its-box.ts";
import { onNumber } from "./on-number.ts";
import { openJob } from "./open-job.ts";
import { pacedTimes } from "./paced-times.ts";
import { panelNames } from "./panel-name.ts";
import { partRule } from "./part.ts";
import { partsLists } from "./parts-list.ts";
import { phones } from "./phone-number.ts";
import { pipePairs } from "./pipe-pair.ts";
import { plans } from "./plan.ts";
import { pointCorrections } from "./point-correction.ts";
import { poleCounts } from "./pole-count.ts";
import { prices } from "./price.ts";
import { putInto } from "./put-into.ts";
import { questions } from "./question.ts";
import { relayPins } from "./relay-pins.ts";
import { roomFirst } from "./room-first.ts";
import { roomLists } from "./room-list.ts";
import { roomSet } from "./room-set.ts";
import { roomsAtAir } from "./rooms-at-air.ts";
import { roomsNow } from "./rooms-now.ts";
import { roomsOut } from "./rooms-out.ts";
import { roomsWell } from "./rooms-well.ts";
import { roomsWithDegrees } from "./rooms-with-degrees.ts";
import { rowGoesOn } from "./row-goes-on.ts";
import { sameByNumber } from "./same-by-number.ts";
import { sensorWarm } from "./sensor-warm.ts";
import { serials } from "./serial-or-part.ts";
import { shares } from "./share-of-thing.ts";
import { sizedParts } from "./sized-part.ts";
import { skipsDeadTest } from "./skip-dead-test.ts";
import { spelledCodes } from "./spelled-code.ts";
import { statusRule } from "./status.ts";
import { stock } from "./stock.ts";
import { storeys } from "./storey.ts";
import { streetAddresses } from "./street-address.ts";
import { subjectRows } from "./subject-row.ts";
import { sums } from "./sum.ts";
import { symptomRooms } from "./symptom-rooms.ts";
import { testsInHand } from "./test-in-hand.ts";
import { torque } from "./torque.ts";
import { treeTold } from "./tree-told.ts";
import { trippedCodes } from "./tripped-code.ts";
import { undo } from "./undo.ts";
import { unitCorrections } from "./unit-correction.ts";
import { valveOfRoom } from "./valve-of-room.ts";
import { wireRun } from "./wire-run.ts";
import { wishes } from "./wish.ts";

/**
 * Ways of saying what is no measurement, in the order in which they take their words: codes that
 * are named before codes that only look so, times before counts, sizes before plans.
 */
export const asides: readonly Rule[] = [
  openJob,
  answers,
  questions,
  wishes,
  skipsDeadTest,
  treeTold,
  lockOf,
  roomsNow,
  roomSet,
  onEach,
  numberedAgain,
  roomsWithDegrees,
  roomLists,
  unitCorrections,
  pointCorrections,
  sameByNumber,
  rowGoesOn,
  heard,
  phones,
  serials,
  accessCodes,
  streetAddresses,
  partsLists,
  listNumerals,
  letteredDoors,
  lettersAsIn,
  spelledCodes,
  codesShown,
  blinkCounts,
  codeLines,
  faultCodes,
  trippedCodes,
  codeAgain,
  looseCodes,
  relayPins,
  asideNumbers,
  valveOfRoom,
  nextMachine,
  subjectRows,
  machineAgain,
  colonRows,
  numberedHeads,
  numberedRooms,
  roomsAtAir,
  numberAsName,
  numberFirst,
  coilsByNumber,
  dottedRooms,
  onItsBox,
  putInto,
  numberedParts,
  onNumber,
  numberedPlaces,
  panelNames,
  storeys,
  symptomRooms,
  roomsOut,
  roomsWell,
  knownRooms,
  roomFirst,
  ifThen,
  torque,
  sums,
  prices,
  undo,
  poleCounts,
  doneWith,
  wireRun,
  hardStart,
  leftStanding,
  statusRule,
  minutesOut,
  clockTimes,
  hoursOnUnits,
  hoursOfEach,
  laborRule,
  pacedTimes,
  dates,
  defrostsADay,
  defrostFailsafe,
  differences,
  stock,
  shares,
  pipePairs,
  madeAs,
  newSize,
  motorSizes,
  sizedParts,
  nominalSizes,
  sensorWarm,
  breakers,
  countOfSizes,
  counts,
  plans,
];

/** Ways of saying everything else, after the measurements have been read. */
export const remarks: readonly Rule[] = [
  observations,
  actions,
  nitrogenRule,
  partRule,
  complaints,
  namedRooms,
  confirms,
  gasInHand,
  testsInHand,
  machineInHand,
];

/** A rule that knows where `Note.heads` tells of its words; -1 where it waits for none. */
interface Waiting {
  readonly rule: Rule;
  readonly list: number;
}

const waitingOf = (rules: readonly Rule[]): readonly Waiting[] =>
  rules.map((rule) => ({ rule, list: rule.heads === undefined ? -1 : waitFor(rule.heads) }));

const waiting: ReadonlyMap<readonly Rule[], readonly Waiting[]> = new Map([
  [asides, waitingOf(asides)],
  [remarks, waitingOf(remarks)],
]);

/** Does what the message holds give the rule a chance? */
function hasChance({ rule, list }: Waiting, note: Note): boolean {
  if (list >= 0 && note.heads[list] !== 1) return false;
  switch (rule.needs) {
    case undefined:
      return true;
    case "context":
      return note.context.readings.length > 0;
    case "open":
      return note.context.open !== undefined;
    default:
      return note.holds[rule.needs];
  }
}

/** The same of one rule, for whoever asks why. */
export function isDue(rule: Rule, note: Note): boolean {
  for (const list of waiting.values())
    for (const one of list) if (one.rule === rule) return hasChance(one, note);
  return false;
}

/** Tries each rule of a list that what the message holds gives a chance. */
export function applyRules(rules: readonly Rule[], note: Note): void {
  for (const one of waiting.get(rules) ?? []) if (hasChance(one, note)) one.rule.apply(note);
}
