import { casesByNumber } from "./cases-by-number.ts";
import type { Context } from "./context.ts";
import { countedAgain } from "./counted-again.ts";
import { dashedRows } from "./dashed-rows.ts";
import { groundsApart, legsApart, withInitials } from "./initials.ts";
import { legsByNumber } from "./legs-by-number.ts";
import { namesWithVerb } from "./names-with-verb.ts";
import { withoutPauses } from "./pauses.ts";
import { phaseLetters } from "./phase-letters.ts";
import { rowInHand } from "./row-in-hand.ts";
import { scan } from "./scan.ts";
import { spelledStages } from "./spelled-stages.ts";
import { spokenGauges } from "./spoken-gauges.ts";
import { spokenNames } from "./spoken-names.ts";
import { withSubscripts } from "./subscripts.ts";
import type { Token } from "./token.ts";
import { voltsOfTester } from "./volts-of-tester.ts";
import { wireLetters } from "./wire-letters.ts";

/** The tokens of a message in even letters: cut, and with what phones and thumbs do to them set right. */
export function tokensOf(even: string, text: string, context: Context): readonly Token[] {
  const last = context.readings[context.readings.length - 1]?.quantity;
  const testing = last === "insulation_resistance" || context.test?.ahead === true;
  const named = spokenNames(dashedRows(voltsOfTester(withSubscripts(scan(even)))));
  const apart = withInitials(groundsApart(legsApart(spelledStages(named))), text);
  const counted = countedAgain(withoutPauses(namesWithVerb(apart), text), context);
  const gauged = spokenGauges(counted, context.units);
  const said = phaseLetters(wireLetters(casesByNumber(gauged, context.units)));
  return legsByNumber(said, testing, rowInHand(context));
}
