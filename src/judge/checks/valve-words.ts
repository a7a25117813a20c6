import type { Finding } from "../../model.ts";
import type { Scene } from "../scene.ts";

/** What is said of a valve, with what it means. The first row of a group that fits counts. */
interface Row {
  readonly group: "bulb" | "valve_answer" | "branch";
  readonly sign: string;
  readonly words: RegExp;
  readonly about: string;
  readonly says: string;
  readonly brief: string;
}

const bulb = "(bulb|sensing element)";

const rows: readonly Row[] = [
  {
    group: "bulb",
    sign: "bulb:off",
    words: new RegExp(
      `\\b${bulb}\\b.{0,40}\\b(loose|broken|off|hang(s|ing)|swing(s|ing)|dangl|fell|fallen|not (strapped|touching|clamped|insulated)|uninsulated|no (strap|insulation|clamp)|bare|free)|\\b(loose|dangling|hanging|unstrapped|uninsulated) ${bulb}\\b|\\bstrap\\b.{0,20}\\bbroken\\b`,
    ),
    about: "expansion valve",
    says: "The bulb is off its pipe: it feels warm air and holds the valve too far open",
    brief: "bulb off its pipe",
  },
  {
    group: "valve_answer",
    sign: "valve_answer:stays_shut",
    words: new RegExp(
      `${bulb}.{0,60}\\b(warm(ed|ing)?|fist|hand|palm|hot water|heat(ed)?)\\b.{0,60}\\b(never|no change|nothing|did(n'?t| not) (move|change|budge|rise)|not? (move|response|answer)|stays?|same)\\b|\\bwarm(ed|ing)? the ${bulb}\\b.{0,60}\\b(never|no |nothing|did(n'?t| not)|stays?|same)\\b|${bulb}.{0,20}\\b(lost its charge|has no charge|dead)\\b`,
    ),
    about: "expansion valve",
    says: "Warming the bulb does not open the valve: its power head, its screen or its pin is stuck",
    brief: "valve does not open on a warm bulb",
  },
  {
    group: "valve_answer",
    sign: "valve_answer:stays_open",
    words: new RegExp(
      `${bulb}.{0,60}\\b(ice|cold|chill(ed)?)\\b.{0,60}\\b(never|no change|nothing|did(n'?t| not)|not? (move|response)|stays?|same)\\b`,
    ),
    about: "expansion valve",
    says: "Chilling the bulb does not close the valve: it is stuck open or its seat passes",
    brief: "valve does not close on a cold bulb",
  },
  {
    group: "valve_answer",
    sign: "valve_answer:answers",
    words: new RegExp(
      `${bulb}.{0,60}\\b(suction|superheat|pressure|valve)\\b.{0,30}\\b(rose|rises|climbed|came up|opened|responded|responds|reacted|dropped right)\\b`,
    ),
    about: "expansion valve",
    says: "The valve answers to its bulb",
    brief: "valve answers to its bulb",
  },
  {
    group: "branch",
    sign: "branch:stuck",
    words:
      /\b(port|branch|solenoid|changeover)\b.{0,120}\b(stays?|stuck|still|never|won'?t|does(n'?t| not))\b.{0,40}\b(hot|warm|cold|heat|change|shift|move|open|close|switch)|\b(port|branch valve|gas pipe|gas line)\b.{0,60}\bstay(s|ed)? (hot|warm|at \d+|cold|\d+)/,
    about: "branch box",
    says: "The port does not follow its command: its valve hangs, where coil and wiring have been proven",
    brief: "branch port does not change over",
  },
];

/** What the notes say of bulbs, of a valve's answer and of branch ports. */
export function valveWords(scene: Scene): Finding[] {
  const groups = new Set<string>();
  return rows.flatMap((row) => {
    if (groups.has(row.group) || !row.words.test(scene.words)) return [];
    if (row.group === "branch" && !/\b(port|branch|box)\b/.test(scene.words)) return [];
    groups.add(row.group);
    return [
      {
        about: row.about,
        check: "valve",
        level: row.sign.endsWith("answers") ? ("good" as const) : ("bad" as const),
        says: row.says,
        brief: row.brief,
        values: {},
        basis: "common practice",
        source: "common practice, no source",
        signs: [row.sign],
      },
    ];
  });
}
