import { localTime } from "../local-time.ts";
import type { Answer } from "./answer.ts";

/** How the office gets a day's files; the order itself is carried out where files can be sent. */
export const exportAnswer: Answer = (input) => {
  const date = localTime(input.message.at, input.time_zone)?.date ?? "YYYY-MM-DD";
  return [
    "The office writes: export today, and the day's files come here. Also: export last week,",
    "export job 14, export site or unit and its name.",
    `On the command line: export --day ${date}.`,
  ].join("\n");
};
