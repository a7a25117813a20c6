/** A moment as the company's clock shows it. */
export interface LocalTime {
  /** "2026-05-12" */
  readonly date: string;
  /** "07:40" */
  readonly time: string;
  /** "07:40:05" */
  readonly seconds: string;
}

const offsetPattern = /^([+-])(\d\d):(\d\d)$/;
const isoOffset = /(Z|[+-]\d\d:\d\d)$/;

/** The offset that an ISO time carries: "-05:00"; "+00:00" for Z or none. */
export function zoneOf(iso: string): string {
  const found = isoOffset.exec(iso)?.[1];
  return found === undefined || found === "Z" ? "+00:00" : found;
}

/**
 * What the clock shows at a moment.
 * `iso`: ISO 8601 with offset; `zone`: IANA name ("America/Chicago") or offset ("-05:00").
 * `undefined` where `iso` is no time or the zone is unknown.
 */
export function localTime(iso: string, zone: string): LocalTime | undefined {
  const ms = Date.parse(iso);
  if (Number.isNaN(ms)) return undefined;
  const offset = offsetPattern.exec(zone);
  if (offset !== null) {
    const minutes = Number(offset[2]) * 60 + Number(offset[3]);
    return fromUtc(new Date(ms + (offset[1] === "-" ? -minutes : minutes) * 60_000).toISOString());
  }
  return inNamedZone(ms, zone);
}

function fromUtc(iso: string): LocalTime {
  return { date: iso.slice(0, 10), time: iso.slice(11, 16), seconds: iso.slice(11, 19) };
}

function inNamedZone(ms: number, zone: string): LocalTime | undefined {
  const format = zoneFormat(zone);
  if (format === undefined) return undefined;
  const part = new Map(format.formatToParts(ms).map((p) => [p.type, p.value]));
  const get = (name: Intl.DateTimeFormatPartTypes) => part.get(name) ?? "";
  const time = `${get("hour")}:${get("minute")}`;
  return {
    date: `${get("year")}-${get("month")}-${get("day")}`,
    time,
    seconds: `${time}:${get("second")}`,
  };
}

/** Making a formatter costs more than using one: a day's export asks for one zone many times. */
const formats = new Map<string, Intl.DateTimeFormat | undefined>();

function zoneFormat(zone: string): Intl.DateTimeFormat | undefined {
  if (!formats.has(zone)) formats.set(zone, makeFormat(zone));
  return formats.get(zone);
}

function makeFormat(zone: string): Intl.DateTimeFormat | undefined {
  try {
    return new Intl.DateTimeFormat("en-US", {
      timeZone: zone,
      hourCycle: "h23",
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
      hour: "2-digit",
      minute: "2-digit",
      second: "2-digit",
    });
  } catch {
    return undefined;
  }
}
