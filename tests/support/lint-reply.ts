/** What a reply may hold beside its own text: how it came about. */
export interface ReplyContext {
  /** readings that the message held */
  readonly readings?: number;
  /** figures as the person said them ("0.30 ohm"): each must stand in the reply unchanged */
  readonly figures?: readonly string[];
  /** numbers that could not be read: each must be named */
  readonly unread?: readonly string[];
  /** what the first line must begin with: unit and component */
  readonly head?: string;
  /** the first line is a caution, which is not counted */
  readonly danger?: boolean;
  /** "why" has 8 lines, "summary" and lists 12, how-to 6, help 5 */
  readonly lines?: number;
  /** words in all, a danger line not counted */
  readonly words?: number;
}

/** Words that no reply says, each with the reason. */
const never: readonly (readonly [RegExp, string])[] = [
  [/\bsafe(ly)?\b/i, "a reply can't know that anything is safe"],
  [/\b(ab)?normal(ly)?\b/i, "normal hides the limit"],
  [/\b(non-?)?complian(t|ce)\b/i, "a legal conclusion"],
  [/\b(certain(ly)?|definite(ly)?|guaranteed?|surely)\b/i, "nothing is certain here"],
  [/\breplace (it|the (compressor|drive|board|motor))\b/i, "no part is condemned by a reply"],
  [/try it and see/i, "no experiments on people's machines"],
  [/\b(your|his|her|their) (mistake|fault|error)\b|\byou (forgot|should have|failed)\b/i, "blame"],
  [/\b(great|good|nice|excellent) (job|work)\b|\bwell done\b|\bthanks?\b|\bcongrat/i, "praise"],
  [/\bha(ha)+\b|\blol\b|\bjust kidding\b/i, "a joke"],
  [
    /\d ?(?:%|percent) (?:likely|sure|chance|certain|probab)/i,
    "people are told likely or possible, not percentages",
  ],
  [/\b(nan|undefined|null|infinity|\[object)/i, "a value of the program, not of the machine"],
];

/** Letters that a voice reads plainly; anything else may be read wrong or not at all. */
const unplain = /[^\x20-\x7e\n]/u;

/** What breaks the rules of a reply; empty where nothing does. */
export function lintReply(text: string, context: ReplyContext = {}): readonly string[] {
  const lines = text.split("\n");
  const counted = context.danger === true ? lines.slice(1) : lines;
  return [
    ...never.filter(([pattern]) => pattern.test(text)).map(([p, why]) => `says ${p}: ${why}`),
    ...(unplain.test(text) ? [`not plain letters: ${unplain.exec(text)?.[0] ?? ""}`] : []),
    ...(/[<>=~|#*_`{}[\]]/.test(text) ? ["signs that a voice skips"] : []),
    ...lines
      .filter((line) => line !== line.trimEnd() || line === "")
      .map((l) => `loose line: "${l}"`),
    ...questions(counted),
    ...lengths(counted, context),
    ...figureFaults(text, context),
    ...headFault(counted[0] ?? "", context.head),
    ...numberFaults(text),
  ];
}

function questions(lines: readonly string[]): readonly string[] {
  const asked = lines.join("\n").split("?").length - 1;
  return asked > 1 ? [`${asked} questions, one is the most`] : [];
}

/** Three lines and about forty words for up to three readings; else twelve lines. */
function lengths(lines: readonly string[], context: ReplyContext): readonly string[] {
  const short = context.lines === undefined && (context.readings ?? 0) <= 3;
  const mostLines = context.lines ?? (short ? 3 : 12);
  const words = lines
    .join(" ")
    .split(/\s+/)
    .filter((word) => word !== "").length;
  const mostWords = context.words ?? (short ? 44 : Number.POSITIVE_INFINITY);
  return [
    ...(lines.length > mostLines ? [`${lines.length} lines, ${mostLines} are the most`] : []),
    ...(words > mostWords ? [`${words} words, ${mostWords} are the most`] : []),
  ];
}

function figureFaults(text: string, context: ReplyContext): readonly string[] {
  const missing = (context.figures ?? []).filter((figure) => !holds(text, figure));
  const unread = (context.unread ?? []).filter((number) => !holds(text, number));
  return [
    ...missing.map((figure) => `his figure ${figure} does not stand in it`),
    ...unread.map((number) => `${number} was not read and is not named`),
  ];
}

/** The figure with no digit before or after it. */
function holds(text: string, figure: string): boolean {
  const plain = figure.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return new RegExp(`(?<![\\d.])${plain}(?!\\d|\\.\\d)`, "i").test(text);
}

function headFault(line: string, head: string | undefined): readonly string[] {
  return head === undefined || line.startsWith(head) ? [] : [`does not begin with ${head}`];
}

/** A leading zero, and no more digits than a field instrument earns. */
function numberFaults(text: string): readonly string[] {
  const bare = /(?<![\d\w.])\.\d+/.exec(text)?.[0];
  const long = /\d+\.\d{4,}/.exec(text)?.[0];
  return [
    ...(bare === undefined ? [] : [`${bare} lacks its leading zero`]),
    ...(long === undefined ? [] : [`${long} has more digits than were measured`]),
  ];
}
