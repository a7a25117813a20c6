import { localTime } from "../local-time.ts";
import type { Answer } from "./answer.ts";

/** How the office gets a day's files; the order itself is carried out where files can be sent. */
export const exportAnswer: Answer = (input) => {
  const date = localTime(input.message.at, input.time_zone)?.date ?? "YYYY-MM-DD";
  return [
    "The office writes: export today, and the files come here. Likewise: last week, job 14, site or unit and its name.",
    `On the command line: export --day ${date}.`,
  ].join("\n");
};
