import type { ListedCall } from "./call-list.ts";
import { opensJob } from "./opening.ts";

const another = String.raw`(?:\1[-# ]?)?\d{1,3}\b`;
const last = String.raw`,?\s*(?:&|\+|/|\band\b|\bn\b)\s*`;
/** "HP-2 and HP-3", "RTU 1, 2 and 3": units of one kind, each with its number. */
const several = new RegExp(
  String.raw`\b([A-Za-z]{1,5})([-# ]?)(\d{1,3})((?:\s*,\s*${another})*\s*${last}${another})(?!\s*(?:hours?|hrs?|days?|weeks?|am|pm|psi|amps?|volts?|lbs?|ton)\b|[:.-]?\d|%)`,
  "i",
);
/** Behind the first comma stands the trouble, whose rooms and figures are no units. */
const trouble = /[;:]|,(?!\s*(?:[A-Za-z]{1,5}[-# ]?)?\d)/;

/** Units that are named together at most; our choice, no source. */
const mostUnits = 6;

/**
 * "New job: Larkspur House HP-2 and HP-3, no cooling on either one. Hedda": a call for each of the units, as
 * readings are of one. None where one unit alone is named.
 */
export function pairedCalls(text: string): readonly ListedCall[] {
  if (!opensJob(text)) return [];
  const body = /^[^:,]{0,40}(?:job|call|ticket)\b\s*[:,-]?\s*/i.exec(text)?.[0].length ?? 0;
  const cut = trouble.exec(text.slice(body))?.index ?? text.length - body;
  const head = text.slice(body, body + cut);
  const match = several.exec(head);
  if (match === null) return ofTwoKinds({ head, rest: text.slice(body + cut), to: text.length });
  const [whole, kind = "", between = "", first = "", others = ""] = match;
  // "unit 4, 12 Elm Street" is an address
  if (/^(?:unit|suite|ste|apt|bldg|floor|no|room|rm|dock|gate|route|hwy|pier|stop)$/i.test(kind))
    return [];
  const spelled = new RegExp(String.raw`${kind}[-# ]?\d`, "i").test(others);
  const ends = /^\s*(?:$|[,.;:-])/.test(text.slice(body + match.index + whole.length));
  // "OU-2, 101 102 and 104 hot" are its rooms: bare numbers are units in a list that nothing follows
  const counted = ends && !/\d{3}/.test(others) && /(?:and|&|\bn|\+|\/)\s*\d{1,2}$/i.test(others);
  const tagged = kind === kind.toUpperCase() && between === "-" && counted;
  if (!spelled && !tagged) return [];
  const numbers = [first, ...(others.match(/\d{1,3}/g) ?? [])];
  if (numbers.length > mostUnits || new Set(numbers).size < numbers.length) return [];
  return numbers.map((number) => ({
    text: `${head.slice(0, match.index)}${kind}${between}${number}${head.slice(match.index + whole.length)}${text.slice(body + cut)}`,
    span: [0, text.length],
  }));
}

/** "RTU-2 and HP-4": two machines of two kinds, as their tags are written; "BB-1" and "IU-3" are parts of one. */
const twoKinds = /\b([A-Z]{2,5}-\d{1,3})\s*(?:&|\+|\band\b)\s*([A-Z]{2,5}-\d{1,3})(?![\w-])/;
const ofOne = /^(?:BB|BS|BC|IU|IDU|FCU|VAV|FPB|VFD|EEV|LEV)-/;

function ofTwoKinds(said: {
  readonly head: string;
  readonly rest: string;
  readonly to: number;
}): readonly ListedCall[] {
  const { head, rest, to } = said;
  const match = twoKinds.exec(head);
  const [whole = "", first = "", second = ""] = match ?? [];
  if (match === null || ofOne.test(first) || ofOne.test(second)) return [];
  return [first, second].map((tag) => ({
    text: `${head.slice(0, match.index)}${tag}${head.slice(match.index + whole.length)}${rest}`,
    span: [0, to],
  }));
}
