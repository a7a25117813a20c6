/** Ends a part of a new job's sentence; the full stop of "St." and "Bldg." does not. */
const breaks =
  /[,;:]|(?<!\b(?:st|rd|ave|dr|blvd|ln|bldg|no|co|inc|ltd|mt|ft|apt|ste|hwy))\.\s|\n|\s[-–—]\s/gi;
const tag = /\b[A-Z]{1,5}[- ]?\d{1,3}[A-Z]?\)?\s*$/;
/** What a complaint is made of, and no name or address is. */
const trouble =
  /\b(?:no|not|nothing|none|too|warm\w*|hot|cold|cool\w*|heat\w*|trip\w*|leak\w*|down|dead|nois\w*|loud|ic(?:e|ed|ing|y)|frost\w*|froz\w*|fail\w*|fault\w*|code|alarm\w*|error|won'?t|wont|doesn'?t|isn'?t|can'?t|broken|smell\w*|water|drip\w*|low|high|runs?|running|stop\w*|start\w*|hums?|humming|short|cycl\w*|check|service|maintenance|pm|install\w*|replace\w*|urgent|asap|complain\w*|is|are|was|since|and \d)\b/i;
/** Whether some words say what is wrong. */
export const isTrouble = (words: string): boolean => trouble.test(words);

/** "12 Elm Street", "Suite 4", "Hall B", "north wing": a part of an address. */
const address =
  /^(?:\d+[a-z]?\s+\p{L}|(?:north|south|east|west|upper|lower|main|rear|front)\s)|\b(?:street|st|road|rd|avenue|ave|lane|ln|drive|boulevard|blvd|highway|hwy|court|square|plaza|suite|ste|unit|apt|bldg|building|hall|wing|floor|fl|level|block|tower|annex|campus|gate|dock|pier|row|park|and (?:co|company|sons?|sisters|partners)|co|inc|ltd|llc|sons?)\b/iu;

/** The place of a new job and what follows it, where the place itself may be written with commas. */
export function splitOpening(body: string): { readonly head: string; readonly rest: string } {
  const cuts = [...body.matchAll(breaks)].map((match) => ({
    from: match.index,
    to: match.index + match[0].length,
  }));
  const [first] = cuts;
  if (first === undefined) return { head: body, rest: "" };
  const parts = cuts.map(({ to }, index) => body.slice(to, cuts[index + 1]?.from).trim());
  const taken = tag.test(body.slice(0, first.from)) ? 0 : taking(parts);
  const last = cuts[taken] ?? { from: body.length, to: body.length };
  return { head: body.slice(0, last.from), rest: body.slice(last.to) };
}

/** How many of the parts behind the first belong to the place: up to the unit's tag, else what reads as an address. */
function taking(parts: readonly string[]): number {
  const troubled = parts.findIndex((part) => trouble.test(part));
  const calm = troubled < 0 ? parts : parts.slice(0, troubled);
  const tagged = calm.findIndex((part) => tag.test(part));
  if (tagged >= 0) return tagged + 1;
  const other = calm.findIndex((part) => !address.test(part));
  return other < 0 ? calm.length : other;
}
