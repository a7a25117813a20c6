import { localTime } from "../../src/show/local-time.ts";

/** An answer later than this after its message says so. */
export const lateMs = 5 * 60_000;

/** What a late answer ends with, so that nobody takes it for one to what was just said. */
export function lateLine(saidAt: string, nowIso: string, zone: string): string | undefined {
  const age = Date.parse(nowIso) - Date.parse(saidAt);
  if (!(age > lateMs)) return undefined;
  const said = localTime(saidAt, zone);
  const now = localTime(nowIso, zone);
  if (said === undefined) return undefined;
  const day = said.date === now?.date ? "" : ` on ${said.date}`;
  return `Late answer: you wrote this at ${said.time}${day}.`;
}
