import type { ToldRow } from "./told-rows.ts";

const motor = "(?:comp(?:ressor)?|scroll|recip|rotor|crank|pump end)";
const free = "(?:starts?|started|runs?|ran|takes? off|took off|caught|normal start)";
const away =
  "(?:starts?|started|runs?|ran|fine|takes? off|took off|goes|went|caught|clean|normal start)";

/** What is heard of motors, their starts and their drives. Source throughout: common practice, no source. */
export const toldMotorRows: readonly ToldRow[] = [
  {
    check: "start_current",
    sign: "start_kit:relay_failed",
    words: [
      /\b(?:potential|start(?:ing)?|current) relay\b[^;\n]{0,40}\b(?:open|burnt|burned|stuck|welded|fried|cracked|failed|bad|no continuity)\b/,
    ],
    unless:
      /\b(?:should be|opens at|not) (?:open|stuck|welded)\b|\brelay (?:is |tests? |checks? )*(?:good|fine|ok)\b/,
    mended: /\brelay/,
    level: "bad",
    about: "compressor",
    says: "The start relay does not do its work, as told: without it the start winding gets no start capacitor, so a new relay comes before any word on the compressor",
    brief: "start relay failed, as told",
  },
  {
    check: "start_current",
    sign: "starting:kicks_without_turning",
    words: [
      new RegExp(
        `\\b${motor}\\b.{0,24}\\b(?:seized|locked (?:up|solid|tight)|frozen up|mechanically locked)\\b`,
      ),
      new RegExp(`\\b(?:seized|locked up|frozen) ${motor}\\b`),
      /\bcomp(?:ressor)? lock(?:ed|up)?(?: rotor)? (?:code|alarm|fault|error)\b/,
      new RegExp(
        `\\b${motor}\\b.{0,20}\\b(?:won'?t|will not|does ?n[o']?t|never|not) (?:turn(?:s|ed)?(?: over)?|rotate[sd]?|budge)\\b`,
      ),
    ],
    unless: /\bfan\b|\bblower\b|\b(?:not|isn'?t) (?:seized|locked)|reset|backward/,
    mended: /\bcomp/,
    level: "watch",
    about: "compressor",
    says: "It does not turn, as told: current and volts while it tries, level pressures and warm oil tell a seized rotor from what a start can meet",
    brief: "does not turn, as told",
  },
  {
    check: "start_current",
    sign: "equal_start:free",
    words: [
      new RegExp(
        `\\b${free}\\b[^,.;]{0,16}\\b(?:once|after|when)\\b[^,.;]{0,24}\\b(?:equal\\w*|level\\w*|(?:gauges|pressures) (?:met|even|same))`,
      ),
      new RegExp(
        `\\b(?:equal\\w*|level\\w*|gauges (?:met|at))\\b.{0,40}\\b(?:${away}|kicked (?:right )?on)\\b`,
      ),
    ],
    // "level before start, hums and trips": it does not start so
    unless:
      /\b(?:equal\w*|level\w*)\b(?:(?!\b(?:starts|started|runs|ran|goes|took)\b)[^.;]){0,50}\b(?:hums?|trips?|locks?|stalls?)\b|\b(?:before|at|on|for) (?:each|every|the) (?:start|try|attempt|pull)|\bstill (?:hums?|locks?|trips?|stalls?|won'?t)\b|\b(?:won'?t|never|not|did ?n[o']?t) (?:start|run|go)|\b(?:while|when|with) (?:it|she|the \w+)(?:'s| is)? run/,
    level: "good",
    about: "compressor",
    says: "It starts freely once both sides are level, as told: no seized rotor",
    brief: "starts once level",
  },
  {
    check: "start_current",
    sign: "start_pressures:pressures_unequal",
    words: [
      /\b(?:[23]\d\d over \d{2,3}|head (?:was |is |at |still )?[23]\d\d)\b.{0,80}\b(?:hums?|locks?|stalls?|fails?|won'?t|trips?|kicks)\b/,
      /\b(?:hums?|locks?|stalls?|fails?|won'?t|trips?|kicks)\b.{0,80}\b(?:[23]\d\d over \d{2,3}|head (?:was |is |at |still )?[23]\d\d)\b/,
      /\b(?:only|just) (?:fails?|stalls?|trips?|locks?|hums?)\b.{0,24}\b(?:when|if)\b.{0,16}\b(?:re-?start\w*|back|bump\w*)\b/,
      /\b(?:stalls?|locks?|hums?|trips?|fails?)\b.{0,24}\b(?:if|when)\b.{0,24}\b(?:comes (?:right )?back|re-?start\w*|bump\w*|short cycl\w*|blip)\b/,
      /\b(?:if|when) it (?:comes|kicks|starts) (?:right |straight )?back\b.{0,20}\b(?:stalls?|locks?|hums?|trips?)\b/,
      new RegExp(
        `\\b${free}\\b[^,.;]{0,16}\\b(?:once|after|when)\\b[^,.;]{0,24}\\b(?:equal\\w*|level\\w*|(?:gauges|pressures) (?:met|even|same))`,
      ),
      new RegExp(
        `\\b(?:equal\\w*|level\\w*)\\b.{0,16}\\b(?:it )?${away}\\b.{0,12}\\b(?:every|each|fine|clean|ok)\\b`,
      ),
    ],
    unless:
      /\bequal(?:ized)?\b.{0,20}\b(?:first|before)\b|\bstill (?:hums?|locks?|trips?|won'?t)\b|\b(?:while|when|with) (?:it|she|the \w+)(?:'s| is)? run/,
    level: "watch",
    about: "compressor",
    says: "It stalls against unequal pressures and starts once they are level, as told: not seized; the delay between starts, a bleed or a check valve is next",
    brief: "stalls against pressure only",
  },
  {
    check: "start_current",
    sign: "liquid:liquid_in_shell",
    words: [
      /\bliquid\b.{0,16}\b(?:half ?way|way|level|\d\/\d)?.{0,10}\bup (?:in )?the (?:sight ?)?glass\b/,
      new RegExp(
        `\\b${away}\\b.{0,16}\\bafter\\b.{0,24}\\b(?:of heat|on the heater|warm\\w+|heat\\w*|boil\\w+)`,
      ),
    ],
    unless: /\bfan\b|\bliquid line\b|\breceiver\b|\bdefrost/,
    level: "bad",
    about: "compressor",
    says: "It starts once the shell was warmed, as told: liquid lay in the oil, so the heater and what fed liquid in while it stood come before the compressor",
    brief: "starts once warmed: liquid in the oil",
  },
  {
    check: "start_current",
    sign: "cooled:resets_after_cooling",
    words: [
      /\b(?:cool\w*|water|hose|ice|wait\w*)\b.{0,50}\b(?:overload|it|internal|thermal)\b.{0,16}\b(?:reset|ran|runs|started|starts|closed|came back|took off)\b/,
      /\b(?:overload|internal|thermal)\b.{0,16}\b(?:reset|closed)\b.{0,20}\b(?:after|in|once)\b/,
    ],
    beside: /\boverload|\bthermal|\bdome|\bshell|\binternal|too hot/,
    unless: /\bfan\b|\bmotor protector\b/,
    level: "watch",
    about: "compressor",
    says: "It came back once cool, as told: its overload had opened. What heated it is next: amps, superheat, suction gas, head, volts",
    brief: "runs again once cool",
  },
  {
    check: "running_current",
    sign: "driven:seized",
    words: [
      /\b(?:pump|impeller|pump shaft|fan shaft|blower shaft|shaft|gearbox|bearings?)\b.{0,20}\b(?:won'?t|will not|can'?t|does ?n[o']?t|never|not)\b.{0,8}\b(?:turn|budge|spin|move|rotate)\w*/,
      /\b(?:pump|impeller|gearbox|shaft|bearings?)\b.{0,10}\b(?:seized|locked up|locked solid|frozen|jammed)\b/,
    ],
    beside:
      /\b(?:uncoupled|decoupled|(?:coupling|belts?) (?:is |are |was )?(?:off|apart|out|pulled|removed)|(?:pulled|took|slipped|with) the (?:coupling|belts?)(?: off)?)\b/,
    unless: /\bcomp(?:ressor)?s?\b|\bscroll|\bmotor(?:'s)? (?:shaft|bearings?)/,
    notBeside: /\bfans?\b|\bblowers?\b/,
    mended: /\bpump\b|\bbearing|\bshaft/,
    level: "bad",
    about: "driven machine",
    says: "Uncoupled, the motor is free and what it drives does not turn, as told: the pump or its bearings, not the motor and not its supply",
    brief: "what the motor drives is seized",
  },
  {
    check: "running_current",
    sign: "rolled:stays_with_line",
    words: [
      /\broll\w*\b.{0,60}\b(?:stay\w*|still|remain\w*) (?:on|with|at) (?:the )?(?:l ?[123]|line|leg|same (?:line|leg|phase)|supply|[abc] phase|phase [abc])\b/,
    ],
    level: "watch",
    about: "supply",
    says: "The leads were rolled and the high current stayed with the line: volts and joints ahead of the motor, not the motor",
    brief: "high current stays with the line",
  },
  {
    check: "running_current",
    sign: "rolled:goes_with_lead",
    words: [
      /\broll\w*\b.{0,60}\b(?:went|goes|moved|moves|followed|follows|travel\w*|came)\b.{0,12}\b(?:with|to|over|along)\b.{0,16}\b(?:t ?[123]|leads?|motor|winding|comp\w*)\b/,
    ],
    level: "bad",
    about: "compressor",
    says: "The leads were rolled and the high current went with the motor's lead: its winding or its own terminal, not the supply",
    brief: "high current goes with the lead",
  },
  {
    check: "supply",
    sign: "sequence:right",
    words: [
      /\b(?:rotation|phase (?:sequence|order))\b.{0,30}\b(?:right|correct|ok(?:ay)?|good|fine|verified|proven|a-?b-?c)\b/,
      /\b(?:right|correct|good|proper) (?:rotation|phase (?:sequence|order))\b/,
    ],
    unless: /\b(?:not|isn'?t|wrong|reversed?|backwards?|swapped|exchanged|now|fan)\b/,
    level: "good",
    about: "supply",
    says: "The phase sequence is right, as told: it does not run backward",
    brief: "rotation right, as told",
  },
  {
    check: "supply",
    sign: "sequence:line_work_done",
    words: [
      /\b(?:new|replaced|swapped|changed|redid|put in)\b.{0,16}\b(?:meter|disconnect|generator|panel|service|switchgear|transformer|feed(?:er)?|breaker|transfer switch)\b/,
      /\b(?:generator|meter|panel|service|disconnect|transformer)\b.{0,10}\b(?:swap\w*|hook-?up|change-?over|change-?out|replace\w*|work)\b/,
      /\b(?:since|after) (?:the )?(?:new )?(?:meter|disconnect|generator|panel|service|power (?:company|work))\b/,
    ],
    unless: /\bcontrol transformer\b|\b24 ?v|\bblows?\b|\bneeds? a new\b/,
    level: "good",
    about: "supply",
    says: "Work was done on the supply before, as told: the phase sequence may have turned; rotation before anything else on a compressor that runs and does not pump",
    brief: "supply worked on before",
  },
  {
    check: "fan",
    sign: "fan:winding_open",
    words: [
      /\b(?:fan|blower)(?: motor)?\b.{0,24}\b(?:grounded|shorted|burnt (?:up|out)|burned (?:up|out)|open winding|windings? open|to (?:ground|case)\b.{0,6}\b0)\b/,
    ],
    unless: /\bnot (?:grounded|shorted)|\bcontactor\b/,
    mended: /\bfan\b|\bmotor\b|\bblower\b/,
    level: "bad",
    about: "fan",
    says: "The fan's motor is told grounded, shorted or open: measured at its own leads, unplugged, before it is condemned",
    brief: "fan motor bad, as told",
  },
  {
    check: "fan",
    sign: "fan:winding_open",
    words: [
      /\b(?:one|first|1st|second|2nd|motor)\b.{0,12}\b(?:reads?|is|ohms|measures)\b.{0,8}\b(?:ol|open)\b/,
    ],
    beside:
      /\bfans?\b.{0,40}\b(?:stopped|dead|not|won'?t|out|down)\b|\b(?:stopped|dead)\b.{0,20}\bfans?\b/,
    notBeside: /\bcomp|\bscroll|\bheater|\bsensor|\bfuse/,
    mended: /\bfan\b|\bmotor\b/,
    level: "bad",
    about: "fan",
    says: "A fan that stands reads open at its own plug, as told: its motor",
    brief: "fan motor open, as told",
  },
  {
    check: "fan",
    sign: "fan:stands_with_voltage",
    words: [
      /\b(?:other|another|known good|2nd|second) (?:fan|motor)\b.{0,16}\b(?:runs?|spins?|works?|turns?)\b.{0,24}\b(?:plug|output|connector|leads|same|there|on it|from it)\b/,
    ],
    unless: /\bdead too\b|\bneither\b|\bboth dead\b/,
    mended: /\bfan\b|\bmotor\b/,
    level: "bad",
    about: "fan",
    says: "Another fan runs from that output and this one does not, as told: the motor, not what drives it",
    brief: "another fan runs from its output",
  },
  {
    check: "bridge",
    sign: "bridge:output_shorted",
    words: [
      /\b[uvw] (?:to |- ?)?(?:p|n|plus|minus|positive|negative|dc ?[+-]|\+|-)\b.{0,24}\b(?:dead short|direct short|shorted|short)\b/,
      /\b(?:igbts?|ipm|power module|output (?:stage|module|transistors?))\b.{0,20}\b(?:is |are )?(?:shorted|dead short|blown|cracked|exploded|blew)\b/,
      /\b(?:dead short|shorted)\b.{0,16}\b(?:igbts?|ipm|power module|output (?:stage|module))\b/,
    ],
    unless: /\b(?:not|isn'?t|no) (?:shorted|a short)|\brectifier\b/,
    mended: /\b(?:module|drive|ipm|board|inverter)\b/,
    level: "bad",
    about: "drive output stage",
    says: "An arm of the output stage is told shorted: with the motor off it is the module",
    brief: "an output arm shorted, as told",
  },
  {
    check: "bridge",
    sign: "rectifier:shorted",
    words: [
      /\bdiodes?\b.{0,24}\b(?:l ?[123]|leg [abc123]|input|line)\b.{0,20}\b(?:shorted|short|blown)\b/,
      /\bl ?[123] (?:to |- ?)?(?:p|n|plus|minus|positive|negative|dc ?[+-]|\+|-)\b.{0,24}\b(?:dead short|shorted|short)\b/,
      /\b(?:rectifier|diode bridge|bridge rectifier|input bridge|bridge)\b.{0,20}\b(?:shorted|blown|dead short|exploded)\b/,
    ],
    unless: /\b(?:not|isn'?t|no) (?:shorted|a short)/,
    mended: /\b(?:module|drive|rectifier|bridge|board)\b/,
    level: "bad",
    about: "drive rectifier",
    says: "A diode of the rectifier is told shorted: that is what takes line fuses",
    brief: "a rectifier diode shorted, as told",
  },
  {
    check: "bridge",
    sign: "drive_code:control_fault",
    words: [
      /\b(?:gate dri\w+|current sensor|current transformer|hall sensor|desat\w*)\b.{0,16}\b(?:fault|error|fail\w*|code|alarm)\b/,
      /\b(?:cpu|processor|eeprom|watchdog|micro\w*|memory)\b.{0,12}\b(?:fault|error|fail\w*|code)\b.{0,24}\b(?:inverter|drive)\b/,
      /\b(?:inverter|drive)\b.{0,24}\b(?:cpu|processor|eeprom|watchdog|micro\w*|memory)\b.{0,12}\b(?:fault|error|fail\w*|code)\b/,
    ],
    unless: /\bno (?:fault|error|code)/,
    mended: /\b(?:board|drive|inverter)\b/,
    level: "bad",
    about: "drive",
    says: "The drive reports its own electronics: with bus, module and motor proven it is the drive's board",
    brief: "the drive reports its own electronics",
  },
];
