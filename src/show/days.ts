const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;
const months = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

/** "12 May" from "2026-05-12"; the text itself where it is no date. */
export function dayAndMonth(date: string): string {
  const month = months[Number(date.slice(5, 7)) - 1];
  return month === undefined ? date : `${Number(date.slice(8, 10))} ${month}`;
}

/** "Tue 12 May" from "2026-05-12". */
export function weekdayAndDay(date: string): string {
  const weekday = weekdays[new Date(`${date}T00:00:00Z`).getUTCDay()];
  return weekday === undefined ? date : `${weekday} ${dayAndMonth(date)}`;
}

/** Days on the calendar from one ISO time to another, each by its own date; negative where `to` is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10))) / 86_400_000);
}

/** "25 min", "3 h 10" or "4 days" for a stretch of time in ms; "0 min" where it is negative. */
export function hoursAndMinutes(ms: number): string {
  const minutes = Math.max(0, Math.round(ms / 60_000));
  if (minutes < 60) return `${minutes} min`;
  if (minutes >= 2 * 24 * 60) return `${Math.floor(minutes / 1440)} days`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")}`;
}
