const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const name = "(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\\.?";
const monthFirst = new RegExp(`\\b${name} (\\d{1,2})(?:st|nd|rd|th)?(?:,? (\\d{4}))?\\b`);
const dayFirst = new RegExp(`\\b(\\d{1,2})(?:st|nd|rd|th)?(?: of)? ${name}(?:,? (\\d{4}))?\\b`);

/**
 * A date said in words, "march 14", "14 Mar 2025" or "2025-03-14", in ms since 1970. Without a year
 * it is the latest such day before `nowMs`. Undefined where none stands.
 */
export function saidDateMs(words: string, nowMs: number): number | undefined {
  const lower = words.toLowerCase();
  const iso = /\b(\d{4})-(\d{2})-(\d{2})\b/.exec(lower);
  if (iso !== null) return Date.UTC(Number(iso[1]), Number(iso[2]) - 1, Number(iso[3]));
  const first = monthFirst.exec(lower);
  if (first !== null) return dateMs({ month: first[1], day: first[2], year: first[3] }, nowMs);
  const second = dayFirst.exec(lower);
  return second === null
    ? undefined
    : dateMs({ month: second[2], day: second[1], year: second[3] }, nowMs);
}

interface Said {
  readonly month: string | undefined;
  readonly day: string | undefined;
  readonly year: string | undefined;
}

function dateMs({ month, day, year }: Said, nowMs: number): number | undefined {
  const at = months.indexOf(month ?? "");
  if (at < 0) return undefined;
  if (year !== undefined) return Date.UTC(Number(year), at, Number(day));
  const thisYear = new Date(nowMs).getUTCFullYear();
  const found = Date.UTC(thisYear, at, Number(day));
  return found <= nowMs ? found : Date.UTC(thisYear - 1, at, Number(day));
}
