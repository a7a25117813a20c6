const mostHours = 24;

const parts: Readonly<Record<string, number>> = { quarter: 0.25, half: 0.5 };
const words = ["a", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

const led = String.raw`(?:(?:that(?:'s|s| was| is)|was|took|total|about|call it|put(?: me)? down(?: for)?|log|i was there|just|like)\s+)*`;
const unit = String.raw`\s*(?:h|hr|hrs|hours?)(?:\s+(?:total|there|labor|on (?:it|that|that one)|on ?site))?`;
const figures = String.raw`(?:(\d{1,2})\s+)?(\d{1,2}(?:[.,]\d{1,2})?|\d\/\d)`;
const spoken = String.raw`(\d{1,2}|${words.slice(1).join("|")}) and (?:an?|three) (quarters?|half)`;

const minuted = new RegExp(
  String.raw`^\s*${led}(?:(\d{1,2}) ?(?:h|hrs?|hours?),?(?: and)? )?(\d{1,3}) ?(?:m|mins?|minutes?)\s*[.!]?\s*$`,
  "i",
);
/** "2h 15 on site": the minutes without their word. */
const hourMinutes = new RegExp(
  String.raw`^\s*${led}(\d{1,2}) ?(?:h|hrs?|hours?) ?([0-5][05])(?:\s+(?:total|there|on ?site))?\s*[.!]?\s*$`,
  "i",
);
const halves = new RegExp(
  String.raw`^\s*${led}(?:(?:an?|one) )?(half|quarter|three quarters?)(?: of)?(?: an)? (?:hr|hour)\s*[.!]?\s*$`,
  "i",
);
const hourAnd = new RegExp(
  String.raw`^\s*${led}(?:an?|one) (?:hr|hour)(?: and (?:an? )?(half|quarter))?\s*[.!]?\s*$`,
  "i",
);
/** Everybody, or every job, took as long: what one of them took is told. */
const apiece = /(?:(?:on|for|at) )?\b(?:each|apiece|per (?:man|guy|unit|job))(?: one)?[\s.!]*$/i;

function withoutEach(text: string): string {
  const rest = text.replace(apiece, "").trimEnd();
  return rest.endsWith(",") ? rest.slice(0, -1) : rest;
}

const told = new RegExp(String.raw`^\s*${led}${figures}${unit}\s*[.!]?\s*$`, "i");
const toldBare = new RegExp(String.raw`^\s*${led}${figures}\s*[.!]?\s*$`, "i");
const inWords = new RegExp(String.raw`^\s*${led}${spoken}(${unit})?\s*[.!]?\s*$`, "i");

function inFigures([, whole, said = ""]: RegExpExecArray): number | undefined {
  const [over, under] = said.split("/").map((part) => Number(part.replace(",", ".")));
  // "3 1/2" is whole and part, "3 2 hrs" nothing
  if (whole !== undefined && under === undefined) return undefined;
  return Number(whole ?? 0) + (over ?? 0) / (under ?? 1);
}

/**
 * How many hours a message tells and nothing else: "3.5 hrs", "1 1/2 h"; where hours were asked for,
 * "3 and a quarter" and "2.5" too.
 */
export function hoursIn(whole: string, asked = false): number | undefined {
  const text = apiece.test(whole) ? withoutEach(whole) : whole;
  const spokenHours = inWords.exec(text);
  const hours =
    spokenHours !== null && (asked || spokenHours[3] !== undefined)
      ? fromWords(spokenHours)
      : (figuresOf(told.exec(text) ?? (asked ? toldBare.exec(text) : null)) ??
        inMinutes(minuted.exec(text) ?? hourMinutes.exec(text)) ??
        inHalves(halves.exec(text) ?? hourAnd.exec(text)));
  return hours !== undefined && hours > 0 && hours <= mostHours ? hours : undefined;
}

/** "hours each" or "20 min on each": of every job that he has just left. */
export const isForEach = (text: string): boolean => /\b(?:each|apiece)\b/i.test(text);

/** Minutes that are told so at most; our choice, no source. */
const mostMinutes = 240;

function inMinutes(match: RegExpExecArray | null): number | undefined {
  if (match === null) return undefined;
  const [, whole = "0", minutes = "0"] = match;
  if (Number(minutes) > mostMinutes) return undefined;
  return Math.round((Number(whole) + Number(minutes) / 60) * 100) / 100;
}

function inHalves(match: RegExpExecArray | null): number | undefined {
  if (match === null) return undefined;
  const part = (match[1] ?? "").toLowerCase();
  const share = part.startsWith("three") ? 0.75 : (parts[part] ?? 0);
  // "an hour and a half" is one and a part, "half an hour" the part alone
  return /\b(?:half|quarters?)(?: of)?(?: an?)? h/i.test(match[0]) ? share : 1 + share;
}

const figuresOf = (match: RegExpExecArray | null): number | undefined =>
  match === null ? undefined : inFigures(match);

function fromWords([said = "", whole = "", part = ""]: RegExpExecArray): number {
  const number = words.indexOf(whole.toLowerCase());
  const parted =
    (parts[part.toLowerCase().replace(/s$/, "")] ?? 0) * (/ three /i.test(said) ? 3 : 1);
  return (number < 0 ? Number(whole) : number) + parted;
}
