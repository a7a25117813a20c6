import type { Message, Understood } from "../model.ts";
import { mayComeOff } from "../vocabulary.ts";
import type { Memory } from "./memory.ts";
import { worldOf } from "./world.ts";

/** What somebody is told to do, behind his name. */
const orders =
  /^(?:please |pls |just |go |don'?t |can you |could you |would you |will you |you )*(?:take|do|redo|check|recheck|try|get|grab|bring|put|pull|lift|leave|lock|unlock|go|come|call|ring|send|give|make|keep|meet|help|finish|start|stop|look|see|watch|wait|hold|move|turn|open|close|read|measure|meg|megger|test|tell|ask|let|order|pick|drop|stay|use|swap|change|remember|clear|kill|shut|isolate|recover|weigh|evacuate|run)\b/i;
/** What stands before a name: "nice. Kit can you", "lol Kit you". */
const lead =
  /^\s*(?:(?:hey|hi|ok|okay|nice|great|good|cool|thanks|thank you|thx|lol|haha|ha|oh|and|so|well|also|yo|perfect|awesome|got it|sounds good)\b[\s,.!:-]*)+/i;
/** A question without its mark: "petra is the hotel cooling again". */
const wonders =
  /^(?:is|are|was|were|did|do|does|has|have|had|will|would|could|how|hows|what|whats|when|where|why|which|any)\b(?! (?:done|finished|left|gone|there|here|off|out)\b)/i;
/** What is said of whom it is said to. */
const toHim = /^(?:your|you|you['’]?re|you['’]?ve|ur|u)\b/i;
/** A question to whoever reads it. */
const toAll =
  /^\s*(?:has |does |did |is |can |could |would )?(?:any ?(?:one|body)(?: of you)?|who ?ever|who(?:'s| is| has| wants)|any of you)\b/i;

/**
 * One person's words to another that are no report of the machine: "Kit, the surgery called again,
 * how bad" from who sits at a desk, "Bram take the leads off and do it again", "anyone seen my
 * charger". A figure in them is one all the same.
 */
export function isTalkTo(
  memory: Memory,
  { role, text, person }: Message,
  understood: Understood,
): boolean {
  const { readings, statements } = understood;
  const found = /^\s*@?([\p{L}]+)\s*([,:]?)\s*(.*)$/su.exec(text.replace(lead, ""));
  const [, name = "", mark = "", rest = ""] = found ?? [];
  // "Jonas, take my lock off": said to him, and his lock's owner's word
  const frees = statements.some((one) => one.kind === "action" && one.what === mayComeOff);
  if (asksBot(understood) || frees) return false;
  const asks = role !== "tech" && (rest.includes("?") || wonders.test(rest));
  const other = isOther(memory, name, person);
  // who sits at a desk asks somebody: no figure of his is one of the machine
  if (other && asks) return true;
  const placed = readings.some(({ at, points, subject }) => at ?? points ?? subject);
  if (toAll.test(text) && !placed) return statements.every(({ kind }) => kind !== "status");
  // "Kit can you look at the van, it has 90k on it": no word of where on a machine
  if (other && role !== "tech" && !placed && orders.test(rest)) return true;
  if (readings.length > 0) return false;
  if (!other) return false;
  if (orders.test(rest)) return true;
  // "Milo your timesheet says 26 hours": his hours, and no word of the machine
  if (toHim.test(rest) && statements.every(({ kind }) => kind === "labor" || kind === "note"))
    return true;
  const seen = statements.every(
    ({ kind }) => kind === "observation" || kind === "note" || kind === "confirm",
  );
  return role !== "tech" && mark !== "" && seen;
}

/** "Potluck: 3 salads, 0 mains" from the office, of no job: nobody measures anything there. */
export function isOfficeTalk({ role }: Message, { readings, statements }: Understood): boolean {
  return (
    role === "office" && readings.length > 0 && statements.every(({ kind }) => kind === "note")
  );
}

const weatherWords =
  /\b(?:good morning|morning|rain\w*|wind\w*|fog\w*|snow\w*|sunny|storm\w*|frost|icy|forecast|degrees and|humid)\b/i;

/** "Fog til 9, 61 out" from the desk: the weather outside, and nobody measured it at a machine. */
export function isDeskWeather(
  { role, text }: Message,
  { readings, statements }: Understood,
): boolean {
  const ofDay = weatherWords.test(text);
  return (
    role !== "tech" &&
    readings.length > 0 &&
    readings.every(
      ({ at, quantity }) =>
        at === "outdoor_air" || (ofDay && at === undefined && quantity === "temperature"),
    ) &&
    statements.every(({ kind }) => kind === "note" || kind === "observation")
  );
}

/** "Morning. 38 and raining": the weather, of no job. */
export function isWeather({ readings, statements }: Understood): boolean {
  const wet = statements.some(
    (one) => one.kind === "observation" && one.observation === "wet_weather",
  );
  return (
    wet &&
    readings.length === 0 &&
    statements.every(
      (one) =>
        one.kind === "note" || (one.kind === "observation" && one.observation === "wet_weather"),
    )
  );
}

/** Does it begin with the name of somebody else? */
export function namesOther(memory: Memory, { text, person }: Message): boolean {
  const name = /^\s*@?([\p{L}]+)/u.exec(text.replace(lead, ""))?.[1];
  return name !== undefined && isOther(memory, name, person);
}

const asksBot = ({ statements }: Understood): boolean =>
  statements.some(({ kind }) => kind === "question");

function isOther(memory: Memory, name: string, person: string): boolean {
  const said = name.toLowerCase();
  return (
    said !== person.toLowerCase() &&
    worldOf(memory).people.some((one) => one.toLowerCase() === said)
  );
}
