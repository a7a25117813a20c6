/**
 * A time as a person said it ("14:05", or ISO), on the day and in the offset of the message.
 * A clock time later than the message by more than an hour is the day before's.
 */
export function saidTime(said: string | undefined, at: string): string {
  if (said === undefined) return at;
  if (/^\d{4}-\d{2}-\d{2}T/.test(said)) return Number.isNaN(Date.parse(said)) ? at : said;
  const clock = /^(\d{1,2}):(\d{2})$/.exec(said);
  const hours = Number(clock?.[1]);
  if (clock === null || hours > 23 || Number(clock[2]) > 59) return at;
  const time = `${String(hours).padStart(2, "0")}:${clock[2]}:00`;
  const offset = /(Z|[+-]\d{2}:?\d{2})$/.exec(at)?.[1] ?? "Z";
  const today = `${at.slice(0, 10)}T${time}${offset}`;
  return Date.parse(today) - Date.parse(at) > 3_600_000 ? shiftDay(today, offset) : today;
}

function shiftDay(iso: string, offset: string): string {
  const day = new Date(`${iso.slice(0, 10)}T00:00:00Z`);
  const before = new Date(day.getTime() - 86_400_000).toISOString().slice(0, 10);
  return `${before}${iso.slice(10, 19)}${offset}`;
}
