import type { QuestionName } from "../../vocabulary.ts";
import type { Answer } from "./answer.ts";
import { exportAnswer } from "./export.ts";
import { help } from "./help.ts";
import { history } from "./history.ts";
import { how } from "./how.ts";
import { next } from "./next.ts";
import { status } from "./status.ts";
import { summary } from "./summary.ts";
import { why } from "./why.ts";

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
} as const satisfies Record<QuestionName, Answer>;
