import type { CaseNote, Statement } from "../model.ts";

/**
 * Two parts changed over to see where the fault goes: a test, no repair. "swapped the inverter
 * boards between comp 1 and comp 2", "swapped it with the high side one".
 */
export const swapTest =
  /\b(?:swap\w*|traded|switched|exchanged)\b[^.;]{0,44}\b(?:between|from (?:the )?(?:other|sister|next|neighbou?r\w*|comp\w* \w+|unit \w+)|with (?:the )?(?:other|sister|next|neighbou?r\w*|high side|low side|comp\w* \w+|unit \w+|one)|(?:board|drive|inverter|sensor|fan|module|transducer|thermistor)s? (?:\w+ )?(?:and|&) \w+|\b(?:the )?(?:two|both) (?:\w+ )?(?:boards?|drives?|inverters?|sensors?|fans?|modules?|transducers?|thermistors?|plugs?|motors?|outputs?|leads?))/i;

/** A note in which parts were changed over as a test. */
export function isSwapTest(note: CaseNote): boolean {
  return swapTest.test(note.text ?? "");
}

/** A statement of such a change, or of a part within it. */
export function isOfSwapTest(one: Statement, note: CaseNote): boolean {
  if (!isSwapTest(note)) return false;
  return (
    (one.kind === "action" && /swap|trad|switch|exchang/i.test(one.said)) || one.kind === "part"
  );
}
