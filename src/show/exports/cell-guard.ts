/** Signs that start a formula, also behind spaces, tabs, line ends or in full width. */
const formulaStart = /^[\s\p{Cc}\p{Cf}]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u;
/** A control letter in front is dropped by some programs before they look for a formula. */
const controlStart = /^\p{Cc}/u;
/** Most cells: without a digit nothing turns into a number or a date. */
const plainWords = /^[a-z]\D*$/i;
const numberLike = /^\s*[+-]?(\d[\d,]*)?\.?\d+(e[+-]?\d+)?%?\s*$/i;
const dateLike = /^\s*(\d{1,4})[-/.](\d{1,4})([-/.](\d{1,4}))?\s*$/;
const timeLike = /^\s*\d{1,2}:\d{2}(:\d{2})?(\s*[ap]m)?\s*$/i;
const monthLike =
  /^\s*(\d{1,4}[-/ ]?)?(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)[a-z]*[-/ ]?\d{0,4}\s*$/i;

/**
 * A text cell for a file that a spreadsheet opens by guessing: a leading apostrophe keeps what
 * would run as a formula, or turn into another number or a date ("12E4", "007", "1-2"), as typed.
 * All other text stays as it is.
 */
export function guardedText(text: string): string {
  if (plainWords.test(text)) return text;
  return wouldRun(text) || wouldChange(text) ? `'${text}` : text;
}

function wouldRun(text: string): boolean {
  return formulaStart.test(text) || controlStart.test(text);
}

function wouldChange(text: string): boolean {
  if (numberLike.test(text)) return String(Number(text)) !== text;
  if (timeLike.test(text)) return true;
  return /\d/.test(text) && (monthLike.test(text) || couldBeDate(text));
}

/** "1-2" and "12-1902" become dates, "44-1902" does not. */
function couldBeDate(text: string): boolean {
  const parts = dateLike.exec(text);
  if (parts === null) return false;
  const numbers = [parts[1], parts[2], parts[4]].filter((p) => p !== undefined).map(Number);
  return numbers.some((n) => n >= 1 && n <= 12);
}
