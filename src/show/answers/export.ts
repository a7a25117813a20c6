import { dayAndMonth } from "../days.ts";
import { localTime } from "../local-time.ts";
import type { Answer } from "./answer.ts";

/** Says what the day's files hold; the files themselves go with the message. */
export const exportAnswer: Answer = (input) => {
  const date = localTime(input.message.at, input.time_zone)?.date ?? "";
  return `The day ${dayAndMonth(date)} as files: jobs, readings, time, parts, refrigerant, open points, one workbook.`;
};
