import type { QuestionName } from "../../vocabulary.ts";
import type { Answer } from "./answer.ts";
import { bring } from "./bring.ts";
import { customer } from "./customer.ts";
import { exportAnswer } from "./export.ts";
import { handover } from "./handover.ts";
import { help } from "./help.ts";
import { history } from "./history.ts";
import { hours } from "./hours.ts";
import { how } from "./how.ts";
import { lacking } from "./lacking.ts";
import { law } from "./law.ts";
import { locks } from "./locks.ts";
import { next } from "./next.ts";
import { parts } from "./parts.ts";
import { product } from "./product.ts";
import { reading } from "./reading.ts";
import { rooms } from "./rooms.ts";
import { shared } from "./shared.ts";
import { status } from "./status.ts";
import { summary } from "./summary.ts";
import { told } from "./told.ts";
import { weights } from "./weights.ts";
import { who } from "./who.ts";
import { why } from "./why.ts";
import { worked } from "./worked.ts";

/** Every question that can be asked in chat; a new one is its file, its name and a line here. */
export const answers = {
  why,
  next,
  status,
  history,
  summary,
  how,
  export: exportAnswer,
  help,
  handover,
  lacking,
  bring,
  customer,
  reading,
  who,
  shared,
  locks,
  parts,
  worked,
  weights,
  hours,
  product,
  told,
  rooms,
  law,
} as const satisfies Record<QuestionName, Answer>;
