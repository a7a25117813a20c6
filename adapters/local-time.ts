/** A moment as ISO 8601 with milliseconds and the offset of this program's zone (`TZ`). */
export function isoWithOffset(date: Date): string {
  const minutes = -date.getTimezoneOffset();
  const local = new Date(date.getTime() + minutes * 60_000).toISOString().slice(0, 23);
  const two = (value: number): string => String(value).padStart(2, "0");
  const sign = minutes < 0 ? "-" : "+";
  const size = Math.abs(minutes);
  return `${local}${sign}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
