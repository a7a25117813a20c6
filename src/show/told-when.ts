import type { ReplyInput } from "../model.ts";
import { dayAndMonth } from "./days.ts";
import { localTime } from "./local-time.ts";

/** The time of a moment, "9:12", and its date where that is not today's: "12 May 9:12". */
export function toldWhen(input: ReplyInput, iso: string): string {
  const moment = localTime(iso, input.time_zone);
  const today = localTime(input.message.at, input.time_zone)?.date;
  if (moment === undefined) return iso;
  return moment.date === today ? moment.time : `${dayAndMonth(moment.date)} ${moment.time}`;
}
