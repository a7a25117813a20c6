import type { Finding } from "../../model.ts";
import type { CheckName } from "../../vocabulary.ts";
import type { Scene } from "../scene.ts";

/** Something told in words, with what it means. */
interface Row {
  readonly check: CheckName;
  readonly group: string;
  readonly sign: string;
  readonly words: RegExp;
  readonly about: string;
  readonly says: string;
  readonly brief: string;
}

const bulb = "(bulb|sensing element)";
const outdoorCoil = "condensers?|cond coil|outdoor coil|outside coil|cond(enser)? fins";
const indoorPart =
  "filters?|blower wheel|squirrel cage|evap(orator)?( coil)?|indoor coil|a.?coil|return (grille|duct|air)|ducts?|coil inside";
const choked =
  "dirty|filthy|plugged|clogged|blocked|matted|packed|caked|greasy|grease|furry|felt|lint|cotton(wood)?|leaves|plastic|tarp|bent over|collapsed|impacted|choked|restricted|covered";

const rows: readonly Row[] = [
  {
    check: "valve",
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
    check: "valve",
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
    check: "valve",
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
    check: "valve",
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
    check: "valve",
    group: "branch",
    sign: "branch:stuck",
    words:
      /\b(port|branch|solenoid|changeover)\b.{0,120}\b(stays?|stuck|still|never|won'?t|does(n'?t| not))\b.{0,40}\b(hot|warm|cold|heat|change|shift|move|open|close|switch)|\b(port|branch valve|gas pipe|gas line)\b.{0,60}\bstay(s|ed)? (hot|warm|at \d+|cold|\d+)/,
    about: "branch box",
    says: "The port does not follow its command: its valve hangs, where coil and wiring have been proven",
    brief: "branch port does not change over",
  },
  {
    check: "valve",
    group: "valve_answer",
    sign: "valve_answer:stays_shut",
    words:
      /\b(eev|lev|exv|pmv|expansion valve)\b.{0,60}\b(wide open|full open|fully open|100 ?(%|percent)|max|\d{3,4} ?(steps|pulses))\b.{0,80}\b(no (change|flow|drop|cooling)|still warm|stays? warm|both pipes|same temp|nothing)|\b(power ?head|powerhead|sensing bulb)\b.{0,30}\b(lost|dead|no charge|failed)|\b(inlet )?screen\b.{0,20}\b(plugged|clogged|blocked)/,
    about: "expansion valve",
    says: "The valve does not feed though it is asked to: coil and wiring, screen, power head or pin",
    brief: "valve does not feed",
  },
  {
    check: "valve",
    group: "valve_answer",
    sign: "valve_answer:stays_open",
    words:
      /\b(eev|lev|exv|pmv|expansion valve)\b.{0,60}\b(closed|shut|0 ?(%|percent|steps|pulses))\b.{0,80}\b(still (cold|flow\w*|pass\w*)|hiss\w*|frost\w*|passes|passing|flows|stays cold|ice)|\bstuck (wide )?open\b/,
    about: "expansion valve",
    says: "The valve passes though it is told to shut",
    brief: "valve passes when shut",
  },
  {
    check: "valve",
    group: "frost",
    sign: "frost:frost_at_restriction",
    words:
      /\b(drier|dryer|strainer|solenoid|king valve|service valve|kink\w*)\b.{0,40}\b(cold|frost\w*|sweat\w*|iced?|icy|wet)\b|\bkink(ed)?\b.{0,24}\bliquid\b|\bliquid line\b.{0,24}\bkink/,
    about: "liquid line",
    says: "A part of the liquid line is cold or wet: the liquid flashes there",
    brief: "liquid line part cold",
  },
  {
    check: "compression",
    group: "pump_down",
    sign: "pump_down:fails",
    words:
      /\b(won'?t|wont|can'?t|cannot|will not|does(n'?t| not)|never|not)\b.{0,16}\b(go|pull|pump|get|draw|drop)s?\b.{0,16}\b(under|below|past|down|vacuum)\b|\bbarely pump|\bisn'?t pumping|\bnot pumping\b|\bwon'?t pump\b/,
    about: "compressor",
    says: "It does not pump down: gas passes inside the compressor, or a valve ahead of it does not shut",
    brief: "does not pump down",
  },
  {
    check: "compression",
    group: "pump_down",
    sign: "pump_down:holds",
    words:
      /\bpump(s|ed)? (right |straight )?down\b.{0,40}\b(fine|ok|okay|good|held|holds|to|into)\b/,
    about: "compressor",
    says: "It pumps down and holds, so its valves shut",
    brief: "pumps down and holds",
  },
  {
    check: "compression",
    group: "unloads",
    sign: "unloads:at_once",
    words:
      /\b(gauges?|pressures?|sides?|both|high and low)\b.{0,40}\b(meet|met|equali[sz]ed?|equali[sz]es|even(ed)? out|level(ed|s)?|come together|match)\b.{0,30}\b(seconds?|secs?|at once|right away|instantly|immediately)\b/,
    about: "compressor",
    says: "Stopped, both sides meet within seconds: something between them does not shut",
    brief: "sides meet within seconds",
  },
  {
    check: "saturation",
    group: "opened",
    sign: "opened:no_vacuum",
    words:
      /\b(never|no|without|skipped|did(n'?t| not)|forgot)\b.{0,24}\b(vacuum|evacuat\w*|vac|pulled? (it )?down|micron)|\b(only|just) purged\b|\b(sucked|pulled|let|drew) (in )?(some )?air\b|\bair (got|went) in/,
    about: "system",
    says: "Opened and not evacuated, as said: air may be in it, so compare the pressure at rest with the coil's temperature",
    brief: "opened without a vacuum",
  },
  {
    check: "saturation",
    group: "wrong_gas",
    sign: "wrong_gas:said",
    words:
      /\bwrong (gas|refrigerant|freon)\b|\bmixed (gas|refrigerant)|\bidentifier\b.{0,60}\b\d+ ?(%|percent)|\btopped (it )?(off|up)? ?with (r-?)?\d{2,3}|\b(tag|sticker|label|plate) (says|said|reads)\b.{0,40}\bbut\b.{0,40}\b(r-?)?\d{2,3}[a-c]?\b|\bdrop.?in\b/,
    about: "system",
    says: "Two refrigerants are spoken of: pressures can't be judged until an identifier says what is in it",
    brief: "refrigerant in doubt",
  },
  {
    check: "sensor",
    group: "defrosting",
    sign: "defrosting:fails",
    words:
      /\b(never|won'?t|wont|does(n'?t| not)|has(n'?t| not)|not)\b.{0,24}\bdefrost|\bdefrost\b.{0,30}\b(never|won'?t|does(n'?t| not)|did(n'?t| not)|fail|stuck|dead)/,
    about: "coil",
    says: "It does not defrost: coil sensor, board or timer, then reversing valve or heaters and the fan relay are next",
    brief: "no defrost",
  },
  {
    check: "airflow",
    group: "outdoor_air",
    sign: "outdoor_air:outdoor_coil_dirty",
    words: new RegExp(
      `\\b(${outdoorCoil})\\b.{0,40}\\b(${choked})\\b|\\b(${choked})\\b.{0,30}\\b(${outdoorCoil})\\b|\\b(wrapped|covered|packed|plastered)\\b.{0,40}\\b(${outdoorCoil})\\b`,
    ),
    about: "condenser",
    says: "The condenser is told to be dirty or covered: clear and clean it before any word on charge",
    brief: "condenser blocked, as told",
  },
  {
    check: "airflow",
    group: "indoor_air",
    sign: "indoor_air:indoor_coil_dirty",
    words: new RegExp(
      `\\b(${indoorPart})\\b.{0,40}\\b(${choked})\\b|\\b(${choked})\\b.{0,30}\\b(${indoorPart})\\b`,
    ),
    about: "indoor side",
    says: "Filter, coil, blower or duct is told to be blocked: clear that before any word on charge",
    brief: "indoor air blocked, as told",
  },
];

/** What the notes tell of a check's subject in words; the first row of a group that fits counts. */
export function told(scene: Scene, check: CheckName): Finding[] {
  const groups = new Set<string>();
  return rows
    .filter((row) => row.check === check)
    .flatMap((row) => {
      if (groups.has(row.group) || !row.words.test(scene.words)) return [];
      // "won't pull below 2500 microns" is the vacuum pump's trouble, not the compressor's
      if (row.sign === "pump_down:fails" && /\bmicrons?\b/.test(scene.words)) return [];
      if (row.group === "branch" && !/\b(port|branch|box)\b/.test(scene.words)) return [];
      groups.add(row.group);
      return [findingOf(row)];
    });
}

const sound: readonly string[] = ["valve_answer:answers", "pump_down:holds"];

function findingOf(row: Row): Finding {
  return {
    about: row.about,
    check: row.check,
    level: sound.includes(row.sign) ? "good" : row.group === "opened" ? "watch" : "bad",
    says: row.says,
    brief: row.brief,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: [row.sign],
  };
}
