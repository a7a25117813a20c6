import type { Rule } from "../note.ts";
import { actions } from "./action.ts";
import { answers } from "./answer.ts";
import { asideNumbers } from "./aside.ts";
import { breakers } from "./breaker-and-fuse.ts";
import { clockTimes } from "./clock-time.ts";
import { complaints } from "./complaint.ts";
import { confirms } from "./confirm.ts";
import { counts } from "./count-of-things.ts";
import { dates } from "./date.ts";
import { faultCodes } from "./fault-code.ts";
import { laborRule } from "./labor.ts";
import { looseCodes } from "./loose-code.ts";
import { nominalSizes } from "./nominal-size.ts";
import { observations } from "./observation.ts";
import { openJob } from "./open-job.ts";
import { pacedTimes } from "./paced-times.ts";
import { partRule } from "./part.ts";
import { phones } from "./phone-number.ts";
import { plans } from "./plan.ts";
import { pointCorrections } from "./point-correction.ts";
import { prices } from "./price.ts";
import { questions } from "./question.ts";
import { serials } from "./serial-or-part.ts";
import { statusRule } from "./status.ts";
import { undo } from "./undo.ts";
import { unitCorrections } from "./unit-correction.ts";

/**
 * Ways of saying what is no measurement, in the order in which they take their words: codes that
 * are named before codes that only look so, times before counts, sizes before plans.
 */
export const asides: readonly Rule[] = [
  openJob,
  answers,
  questions,
  unitCorrections,
  pointCorrections,
  phones,
  serials,
  faultCodes,
  looseCodes,
  asideNumbers,
  prices,
  undo,
  statusRule,
  clockTimes,
  laborRule,
  pacedTimes,
  dates,
  nominalSizes,
  breakers,
  counts,
  plans,
];

/** Ways of saying everything else, after the measurements have been read. */
export const remarks: readonly Rule[] = [observations, actions, partRule, complaints, confirms];
