import type { TreeWord } from "./tree-word.ts";

/** Parts and rooms named one after the other, and where their list ends. */
export interface Things {
  readonly parts: readonly string[];
  readonly rooms: readonly string[];
  /** a list of rooms that only numbers tell, without "room" before them */
  readonly bare: boolean;
  readonly end: number;
}

/** What feeds rooms or other parts, as it is said before its number or letter. */
const kinds: readonly (readonly [said: RegExp, name: string])[] = [
  [/^(?:branch (?:box(?:es)?|controllers?|selectors?|units?)|(?:selector|mode) box(?:es)?)$/, ""],
  [/^box(?:es)?$/, "branch box"],
  [/^(?:outdoor units?|outdoors?)$/, "outdoor unit"],
  [/^(?:indoor units?|indoors?)$/, "indoor unit"],
  [/^(?:condensers?|condensing units?|chillers?|rooftops?|air handlers?|fan ?coils?)$/, ""],
  [/^(?:cassettes?|heads?|wall units?|ducted units?|ports?)$/, ""],
  [/^(?:bb|bs|bc|ou|odu|cu|iu|idu|rtu|ah|ahu|fc|fcu|ac|hp|ch)$/, "tag"],
];
/** What a kind of part can begin with. */
const begins: ReadonlySet<string> = new Set(
  (
    "branch selector mode box boxes outdoor outdoors indoor indoors condenser condensers condensing " +
    "chiller chillers rooftop rooftops air fan fancoil fancoils cassette cassettes head heads wall " +
    "ducted port ports bb bs bc ou odu cu iu idu rtu ah ahu fc fcu ac hp ch"
  ).split(" "),
);
const letter = /^[a-h]$/;
const number = /^\d{1,4}$/;
const joint = /^(?:,|\/|and|&|plus|n|also)$/;
const small = /^(?:the|all|both|of|in)$/;
const through = /^(?:to|thru|through|-)$/;
const roomWord = /^(?:rooms?|rms?|zones?|suites?|apts?|apartments?)$/;
const roomName =
  /^(?:lobby|kitchen|bar|offices?|gym|library|hall|hallway|corridor|reception|classroom|cafeteria|cafe|auditorium|studio|salon|lounge|den|attic|basement|storage|pantry|foyer|laundry|restaurant|ballroom|nursery|chapel|stairwell|workshop|warehouse|boardroom|breakroom|shop|store)$/;
/** Rooms by floor and number begin here. */
const firstBareRoom = 100;
/** A list through more rooms than this was not meant. */
const longestList = 60;

interface Found {
  readonly name: string;
  readonly end: number;
}

const textAt = (words: readonly TreeWord[], at: number): string => words[at]?.text ?? "";

/** Nothing hangs together without a part. */
export const namesPart = (words: readonly TreeWord[]): boolean =>
  words.some(({ text }) => begins.has(text));

/** "branch box" of "branch box 2", its number still to come; "" for a part's own words. */
function kindAt(words: readonly TreeWord[], at: number): Found | undefined {
  if (!begins.has(textAt(words, at))) return undefined;
  for (const length of [2, 1]) {
    const said = [...Array(length).keys()].map((step) => textAt(words, at + step)).join(" ");
    const known = kinds.find(([form]) => form.test(said));
    if (known === undefined) continue;
    const [, name] = known;
    const own = name === "tag" ? `${said}-` : said.replace(/(x)es$|s$/, "$1");
    return { name: name === "" || name === "tag" ? own : name, end: at + length };
  }
  return undefined;
}

const withNumber = (kind: string, said: string): string =>
  kind.endsWith("-") ? `${kind}${said}`.toUpperCase() : `${kind} ${said.toUpperCase()}`;

/** Where the number of a part stands: behind a dash or a space. */
function numberAt(words: readonly TreeWord[], at: number): Found | undefined {
  const from = textAt(words, at) === "-" || textAt(words, at) === "#" ? at + 1 : at;
  const said = textAt(words, from);
  if (!letter.test(said) && !number.test(said)) return undefined;
  const tail = letter.test(textAt(words, from + 1)) && words[from + 1]?.item === words[from]?.item;
  return tail && number.test(said)
    ? { name: `${said}${textAt(words, from + 1)}`, end: from + 2 }
    : { name: said, end: from + 1 };
}

/** One part: "ou3", "BB-A", "branch box 2", "port 3 of bb-1". */
export function partAt(words: readonly TreeWord[], start: number): Found | undefined {
  const at = textAt(words, start) === "the" ? start + 1 : start;
  const kind = kindAt(words, at);
  const said = kind === undefined ? undefined : numberAt(words, kind.end);
  if (kind === undefined || said === undefined) return undefined;
  const name = withNumber(kind.name, said.name);
  if (kind.name !== "port") {
    const port = textAt(words, said.end) === "port" ? numberAt(words, said.end + 1) : undefined;
    return port === undefined
      ? { name, end: said.end }
      : { name: `${name} port ${port.name}`, end: port.end };
  }
  if (!/^(?:of|on|at)$/.test(textAt(words, said.end))) return undefined;
  const box = partAt(words, said.end + 1);
  return box === undefined ? undefined : { name: `${box.name} ${name}`, end: box.end };
}

interface Run {
  readonly names: readonly string[];
  readonly end: number;
}

/** Numbers that go on behind a first one: ", 2 and 3", "to 210". */
function runFrom(words: readonly TreeWord[], first: string, from: number): Run {
  const names = [first];
  let end = from;
  for (;;) {
    const between = joint.test(textAt(words, end)) || through.test(textAt(words, end));
    let at = between ? end + 1 : end;
    if (between && textAt(words, at) === "and") at++;
    const next = textAt(words, at);
    const last = names[names.length - 1] ?? first;
    const kin = /^\d/.test(first) ? number.test(next) : letter.test(next) && between;
    if (!kin || (next.length > 2 && first.length <= 2)) return { names, end };
    if (through.test(textAt(words, end))) names.push(...betweenOf(last, next));
    names.push(next);
    end = at + 1;
  }
}

function betweenOf(from: string, to: string): readonly string[] {
  const [low, high] = [Number(from), Number(to)];
  const many = Number.isFinite(low) && Number.isFinite(high) && high > low;
  if (!many || high - low > longestList) return [];
  return [...Array(high - low - 1).keys()].map((step) => String(low + step + 1));
}

/** One list of one kind of thing: parts by their numbers, rooms by number or by name. */
function groupAt(words: readonly TreeWord[], at: number): Things | undefined {
  const part = partAt(words, at);
  if (part !== undefined) {
    const [, kind = "", first = ""] = /^(.*?[ -])(\w+)$/.exec(part.name) ?? [];
    const run = runFrom(words, first.toLowerCase(), part.end);
    const parts = run.names.map((said, i) =>
      i === 0 ? part.name : withNumber(kind.trimEnd(), said),
    );
    return { parts, rooms: [], bare: false, end: run.end };
  }
  const said = textAt(words, at);
  const worded = roomWord.test(said);
  const first = textAt(words, worded ? at + 1 : at);
  if (number.test(first) && (worded || Number(first) >= firstBareRoom)) {
    const run = runFrom(words, first, at + (worded ? 2 : 1));
    const kind = worded && !/^r/.test(said) ? said.replace(/s$/, "") : "room";
    const name = `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;
    return {
      parts: [],
      rooms: run.names.map((one) => `${name} ${one}`),
      bare: !worded,
      end: run.end,
    };
  }
  return namedRoomAt(words, at);
}

/** "lobby", "dining room", "map room". */
function namedRoomAt(words: readonly TreeWord[], at: number): Things | undefined {
  const said = textAt(words, at);
  const withRoom = /^rooms?$/.test(textAt(words, at + 1)) && /^[a-z]{3,}$/.test(said);
  const numbered = number.test(textAt(words, at + 2));
  if (withRoom && !numbered && !joint.test(said) && !small.test(said)) {
    return { parts: [], rooms: [`${said} room`], bare: false, end: at + 2 };
  }
  return roomName.test(said) ? { parts: [], rooms: [said], bare: false, end: at + 1 } : undefined;
}

/** By floor and door as well: "3.1". */
const roomNumber = /^\d{1,4}(?:\.\d{1,2})?$/;

/** Rooms by nothing but their numbers, however small, where the words beside say that they hang on something. */
export function bareRooms(words: readonly TreeWord[], start: number): Things | undefined {
  const rooms: string[] = [];
  let at = start;
  for (; at < words.length; at++) {
    const said = textAt(words, at);
    if (roomNumber.test(said)) rooms.push(`Room ${said}`);
    else if (!joint.test(said) || rooms.length === 0) return undefined;
  }
  return rooms.length === 0 ? undefined : { parts: [], rooms, bare: true, end: at };
}

/** Parts and rooms from a word on, as far as the list goes; undefined where none is named. */
export function thingsAt(words: readonly TreeWord[], start: number): Things | undefined {
  const parts: string[] = [];
  const rooms: string[] = [];
  let bare = false;
  let end = start;
  let at = start;
  for (;;) {
    while (joint.test(textAt(words, at)) || small.test(textAt(words, at))) at++;
    const group = groupAt(words, at);
    if (group === undefined) break;
    parts.push(...group.parts);
    rooms.push(...group.rooms);
    bare ||= group.bare;
    end = group.end;
    at = end;
  }
  return parts.length + rooms.length === 0 ? undefined : { parts, rooms, bare, end };
}
