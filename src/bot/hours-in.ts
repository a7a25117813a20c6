const mostHours = 24;

const parts: Readonly<Record<string, number>> = { quarter: 0.25, half: 0.5 };
const words = ["a", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

const led = String.raw`(?:(?:that(?:'s|s| was| is)|was|took|total|about|call it|put(?: me)? down(?: for)?|log|i was there|just|like)\s+)*`;
const unit = String.raw`\s*(?:h|hr|hrs|hours?)(?:\s+(?:total|there|labor|on (?:it|that|that one)|on ?site))?`;
const figures = String.raw`(?:(\d{1,2})\s+)?(\d{1,2}(?:[.,]\d{1,2})?|\d\/\d)`;
const spoken = String.raw`(\d{1,2}|${words.slice(1).join("|")}) and (?:an?|three) (quarters?|half)`;

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
export function hoursIn(text: string, asked = false): number | undefined {
  const spokenHours = inWords.exec(text);
  const hours =
    spokenHours !== null && (asked || spokenHours[3] !== undefined)
      ? fromWords(spokenHours)
      : figuresOf(told.exec(text) ?? (asked ? toldBare.exec(text) : null));
  return hours !== undefined && hours > 0 && hours <= mostHours ? hours : undefined;
}

const figuresOf = (match: RegExpExecArray | null): number | undefined =>
  match === null ? undefined : inFigures(match);

function fromWords([said = "", whole = "", part = ""]: RegExpExecArray): number {
  const number = words.indexOf(whole.toLowerCase());
  const parted =
    (parts[part.toLowerCase().replace(/s$/, "")] ?? 0) * (/ three /i.test(said) ? 3 : 1);
  return (number < 0 ? Number(whole) : number) + parted;
}
