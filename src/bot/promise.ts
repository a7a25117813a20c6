import type { Understood } from "../model.ts";

const words =
  /^\s*(?:sure|yes|yep|yeah|yup|ok(?:ay)?|will do|can do|on it|no problem|np|roger|copy)(?: thing| that)?[,.!\s]+(?:(?:be|there|give me|in|about|maybe|like|say|i'?m|another)\s+)*\d+\s*(?:m|min|mins|minutes?|h|hours?|hrs?)(?:\s+(?:away|out|tops|max|or so))?[.!\s]*$/i;

/** "sure, 40 minutes": one person's promise to another, no figure of the machine. */
export function isPromise(text: string, { readings, statements }: Understood): boolean {
  return (
    words.test(text) &&
    readings.length === 0 &&
    statements.every(({ kind }) => kind === "note" || kind === "confirm")
  );
}
