import type { CheckName } from "../../vocabulary.ts";

/** Something told in words, with what it means. */
export interface ToldRow {
  readonly check: CheckName;
  /** "group:outcome"; the first row of a group that fits counts */
  readonly sign: string;
  /** any of these, within one note */
  readonly words: readonly RegExp[];
  /** words in the same note that make it mean something else */
  readonly unless?: RegExp;
  /** what a later note must name beside a deed, for this to be put right */
  readonly mended?: RegExp;
  /** what the notes must speak of too, and must not */
  readonly beside?: RegExp;
  readonly notBeside?: RegExp;
  /** only on machines with branch boxes */
  readonly zones?: true;
  readonly level: "good" | "watch" | "bad";
  readonly about: string;
  readonly says: string;
  readonly brief: string;
}

const few = "\\W+(?:[\\w']+\\W+){0,3}?";
const bulb = "\\b(?:bulb|sensing element)\\b";
const noChange =
  "(?:never|no change|nothing|did(?:n'?t| not)|does(?:n'?t| not)|no (?:move|response|answer|effect)|stays?|stayed|same)";
const eev = "\\b(?:eev|lev|exv|pmv|txv|expansion valve)s?\\b";
const condenser =
  "(?:condensers?|cond(?:enser)? coil|outdoor coil|outside coil|cond(?:enser)? fins)";
const indoorPart =
  "(?:filters?|blower(?: wheel)?|squirrel cage|evap(?:orator)?(?: coil)?|indoor coil|a.?coil|return (?:grille|duct|air)|ductwork)";
const choked =
  "(?:dirty|filthy|plugged|clogged|blocked|matted|packed|caked|greasy|full of (?:grease|dirt|lint|cotton|leaves|dust|flour)|furry|like (?:a )?(?:felt|\\w+ (?:sack|bag)|sack|fur)|like (?:a |an )?(?:old )?(?:sweater|blanket|rug|sheep|carpet|mattress|quilt)|lint|cottonwood|leaves|plastic|tarp|collapsed|impacted|choked|covered|wrapped)";
const part =
  "(?:drier|dryer|strainer|solenoid|king valve|service valve|isolation (?:ball )?valve|ball valve|kink\\w*)";

/** Every remark that a check listens for, by check. Source throughout: common practice, no source. */
export const toldRows: readonly ToldRow[] = [
  {
    check: "valve",
    sign: "bulb:off",
    words: [
      new RegExp(
        `${bulb}${few}(?:loose|off (?:the|its|of)|(?:came|fell|fallen|come) off|laying|lying|fell|hanging|hangs|swinging|swings|dangling|not (?:strapped|touching|clamped|insulated|wrapped)|uninsulated|unwrapped|no (?:strap|insulation|clamp)|bare)\\b`,
      ),
      /\b(?:loose|dangling|hanging|unstrapped|uninsulated|bare) (?:sensing )?bulb\b/,
      new RegExp(`${bulb}${few}strap${few}(?:broken|missing|gone|off)\\b`),
      new RegExp(`${bulb} strap (?:is |was )?(?:broken|missing|gone|off)\\b`),
    ],
    mended: /\bbulb\b|\bstrap/,
    level: "bad",
    about: "expansion valve",
    says: "The bulb is off its pipe: it feels warm air and holds the valve too far open",
    brief: "bulb off its pipe",
  },
  {
    check: "valve",
    sign: "valve_answer:stays_shut",
    words: [
      new RegExp(
        `${bulb}.{0,60}\\b(?:warm(?:ed|ing)?|fist|hand|palm|hot water|heat(?:ed)?)\\b.{0,60}\\b${noChange}\\b`,
      ),
      new RegExp(`\\bwarm(?:ed|ing)? (?:up )?the (?:txv )?bulb\\b.{0,60}\\b${noChange}\\b`),
      /\b(?:bulb|power ?head|element|capillary)\b.{0,24}\b(?:lost its charge|has no charge|no charge left|is dead|snapped|broken off|cracked|rubbed through|kinked|cut)\b/,
      new RegExp(
        `${eev}.{0,60}\\b(?:wide open|full(?:y)? open|100 ?(?:%|percent)|at max|\\d{3,4} ?(?:steps|pulses))\\b.{0,80}\\b(?:no (?:change|flow|drop|cooling)|still warm|stays? warm|both pipes|same temp|nothing)`,
      ),
      /\b(?:valve|body|stepper|magnet)\b.{0,40}\b(?:won'?t|does(?:n'?t| not)|never|not) (?:step|drive|budge|move|open)\b/,
      /\btapp(?:ed|ing) (?:on )?(?:the |its |that )?(?:txv|expansion valve|valve(?: body)?|body|power ?head)\b(?:(?!revers|4.?way|port|branch).){0,40}\b(?:suction|pressure|low side|superheat)\b.{0,16}\b(?:jump\w*|rose|came up|climb\w*|shot up|popped|went up|picked up|dropped)\b/,
      /\b(?:valve|txv|inlet) screen\b.{0,20}\b(?:plugged|clogged|blocked)/,
    ],
    mended: /\b(?:valves?|txv|eev|exv|screen|power ?head|element|stepper)\b/,
    level: "bad",
    about: "expansion valve",
    says: "The valve does not open when it is asked to: its power head, screen, pin or coil is stuck or dead",
    brief: "valve does not open when asked",
  },
  {
    check: "valve",
    sign: "valve_answer:stays_open",
    words: [
      new RegExp(`${bulb}.{0,60}\\b(?:ice|ice water|cold|chill(?:ed)?)\\b.{0,60}\\b${noChange}\\b`),
      new RegExp(
        `${eev}.{0,60}\\b(?:closed|shut|0 ?(?:%|percent|steps|pulses))\\b.{0,80}\\b(?:still (?:cold|flow\\w*|pass\\w*)|hiss\\w*|frost\\w*|passes|passing|flows|stays cold)`,
      ),
      new RegExp(`${eev}.{0,30}\\bstuck (?:wide )?open\\b`),
      /\bvalve\b.{0,30}\b(?:told|commanded|at|sent|reads|shows)\b.{0,8}\b(?:0|zero) ?(?:%|percent|steps|pulses|pls)\b.{0,40}\b(?:but|still|yet|and)\b.{0,40}\b(?:hot|warm|cold|flow\w*|hiss\w*|frost\w*|pipe \d{2,3})/,
      /\bvalve\b.{0,30}\b(?:0|zero) ?(?:%|percent|steps|pulses|pls)\b.{0,60}\b(?:hiss\w*|pass(?:es|ing)|bleeds|flowing)\b/,
      /\b(?:off|satisfied|not calling)\b.{0,60}\b(?:valve|pipes?)\b.{0,40}\b(?:still|stays?|all day)\b.{0,20}\b(?:hot|warm|cold|flow\w*|hiss\w*)/,
    ],
    mended: /\b(?:valves?|txv|eev|exv|stepper)\b/,
    level: "bad",
    about: "expansion valve",
    says: "The valve does not close when it is told to: it is stuck open or its seat passes",
    brief: "valve does not close when told",
  },
  {
    check: "valve",
    sign: "valve_answer:answers",
    words: [
      new RegExp(
        `${bulb}.{0,60}\\b(?:suction|superheat|pressure|valve)\\b.{0,30}\\b(?:rose|rises|climbed|came up|opened|responded|responds|reacted|dropped right)\\b`,
      ),
    ],
    level: "good",
    about: "expansion valve",
    says: "The valve answers to its bulb",
    brief: "valve answers to its bulb",
  },
  {
    check: "valve",
    sign: "branch:stuck",
    zones: true,
    words: [
      /\b(?:port|branch|solenoid|changeover)\b.{0,120}\b(?:stays?|stuck|still|never|won'?t|does(?:n'?t| not))\b.{0,40}\b(?:hot|warm|cold|heat|change|shift|move|open|close|switch)/,
      /\bvalve at (?:bb|br|bs|bc|box)[- ]?\d+\b.{0,40}\b(?:commanded|told|called|sent|open|100)\b.{0,80}\b(?:no flow|nothing|same temp|still|no change)/,
      /\b(?:port|branch|box|changeover)\b.{0,80}\bno (?:click|clunk|shift|change)\b/,
      /\b(?:port|branch|box)\b.{0,60}\bblows? (?:hot|warm|\d{2,3})\b.{0,30}\b(?:in|on|with|while|calling)\b.{0,14}\bcool/,
      /\b(?:eevs?|levs?|exvs?|valves?)\b.{0,16}\bat (?:0|zero)\b.{0,30}\bpipes?\b.{0,14}\b(?:hot|warm|cold|1\d\d)\b/,
      /\btapp(?:ed|ing)\b.{0,24}\b(?:body|valve|it)\b.{0,40}\b(?:let go|freed|broke loose|popped|moved|came free|opened)/,
      /\b(?:port|branch valve|gas pipe|gas line)\b.{0,60}\bstay(?:s|ed)? (?:hot|warm|cold|at \d+|\d+)/,
    ],
    mended: /\b(?:valve(?: body)?|branch box)\b/,
    level: "bad",
    about: "branch box",
    says: "The port does not follow its command: its valve hangs, where coil and wiring have been proven",
    brief: "branch port does not change over",
  },
  {
    check: "valve",
    sign: "frost:frost_at_restriction",
    words: [
      new RegExp(`\\b${part}\\b.{0,40}\\b(?:cold|frost\\w*|sweat(?:s|ing|y)|iced?|icy|wet)\\b`),
      /\b(?:cold|frost\w*|sweat(?:s|ing|y)|icy|wet)\b (?:right )?(?:after|past|behind|at|on) (?:the |a |that )?(?:\w+ )?(?:drier|dryer|strainer|solenoid|king valve|kink)/,
      /\bkink(?:ed)?\b.{0,24}\bliquid\b|\bliquid line\b.{0,24}\bkink/,
    ],
    // a port's solenoid and its pipe are a zone's, no part of the liquid line
    unless:
      /\bno (?:frost|sweat|drop)|\b(?:port|branch|changeover|reversing)(?: (?:valve|\d+|[a-d]))? (?:solenoid|coil|valve)\b/,
    mended: /\b(?:drier|dryer|strainer|solenoid|king valve|service valve|kink\w*|line)\b/,
    level: "bad",
    about: "liquid line",
    says: "A part of the liquid line is cold or wet: the liquid flashes there",
    brief: "liquid line part cold",
  },
  {
    check: "compression",
    sign: "pump_down:fails",
    words: [
      /\b(?:won'?t|wont|will not|can'?t|cannot|barely) pump(?:s)?\b/,
      /\b(?:not|barely|isn'?t) pump(?:ing|s)? (?:it |her |the \w+ )?down\b/,
      /\bpump(?:ed|ing|s)? (?:it |the (?:system|unit) |her )?down\b.{0,40}\b(?:won'?t|can'?t|stalls?|stalled|stops?|hangs?|hung|stuck|never|only)\b/,
      /\b(?:king|front.?seat\w*|clos\w+ the (?:suction|king|liquid)|suction (?:service )?valve)\b.{0,60}\b(?:won'?t|can'?t|will not|never|stays|stalls|does(?:n'?t| not))\b.{0,20}\b(?:under|below|past|down|at)\b/,
      /\b(?:king|front.?seat\w*|(?:clos|shut)\w* (?:the|its|her) (?:suction|king|liquid)|suction (?:service )?valve)\b.{0,40}\b(?:only|just|barely) (?:pulls?|pulled|gets?|got|goes|went|comes?|came)\b.{0,12}\bto\b/,
    ],
    // "the vacuum pump won't pull below 2500 microns" is another pump
    unless: /\bmicrons?\b|\b(?:vacuum|drain|condensate) pump\b/,
    mended: /\bcomp/,
    level: "bad",
    about: "compressor",
    says: "It does not pump down: gas passes inside the compressor, or a valve ahead of it does not shut",
    brief: "does not pump down",
  },
  {
    check: "compression",
    sign: "pump_down:holds",
    words: [
      /\bpump(?:s|ed)? (?:it )?(?:right |straight )?down\b.{0,40}\b(?:fine|ok|okay|good|held|holds|to|into)\b/,
      /\b(?:valve|suction|king) (?:is |was )?(?:shut|closed|front.?seated)\b.{0,30}\bpull(?:s|ed) (?:right |straight )?down\b.{0,40}\b(?:held|holds|stayed|stays)\b/,
    ],
    level: "good",
    about: "compressor",
    says: "It pumps down and holds, so its valves shut",
    brief: "pumps down and holds",
  },
  {
    check: "saturation",
    sign: "opened:no_vacuum",
    words: [
      /\b(?:never|without|skipped|did(?:n'?t| not)|forgot)\b.{0,16}\b(?:pull(?:ed|ing)? (?:a |any )?vac|(?:a |any )?vacuum\b|evacuat\w*|pulled it down)/,
      /\bno (?:vacuum|evacuation)\b(?! pump)/,
      /\b(?:nobody|no one|none of them)\b.{0,20}\b(?:pull(?:ed|s)? (?:a |any )?vac|vacuumed|evacuated)/,
      /\b(?:evacuation|vacuum) (?:was |got |is )?(?:skipped|left out|not (?:done|pulled)|forgotten)\b/,
      /\bn(?:ever|ot) (?:been )?(?:pulled (?:down|a vac\w*)|evacuated|vacuumed)/,
      /\b(?:only|just) purged\b|\b(?:sucked|pulled|let|drew) (?:in )?(?:some )?air\b(?! (?:straight |right )?(?:through|across|over))|\bair (?:got|went) in/,
    ],
    level: "watch",
    about: "system",
    says: "Opened and not evacuated, as said: air may be in it, so compare the pressure at rest with the coil's temperature",
    brief: "opened without a vacuum",
  },
  {
    check: "saturation",
    sign: "wrong_gas:said",
    words: [
      /\bwrong (?:gas|refrigerant|freon|stuff|juice)\b|\bmixed (?:gas|refrigerant)|\bdrop.?in\b/,
      /\bidentifier\b.{0,60}\b\d+ ?(?:%|percent)/,
      /\btopped (?:it )?(?:off |up )?with (?:r-?\d{2,3}[a-c]?|4\d\d[a-c]?)\b/,
      /\b(?:tag|sticker|label|plate) (?:says|said|reads)\b.{0,24}\b(?:r-?)?(?:12|22|32|134a?|290|40[479][ac]?|410a?|44[89]a?|454[abc]?|50[27]a?)\b.{0,24}\bbut\b.{0,40}\b(?:r-?)?(?:12|22|32|134a?|290|40[479][ac]?|410a?|44[89]a?|454[abc]?|50[27]a?)\b/,
    ],
    level: "bad",
    about: "system",
    says: "Two refrigerants are spoken of: pressures can't be judged until an identifier says what is in it",
    brief: "refrigerant in doubt",
  },
  {
    check: "sensor",
    sign: "defrosting:fails",
    words: [
      /\b(?:never|won'?t|wont|does(?:n'?t| not)|has(?:n'?t| not))\b.{0,24}\bdefrost/,
      /\bdefrost\b.{0,30}\b(?:never|won'?t|does(?:n'?t| not)|did(?:n'?t| not)|failed|stuck|dead|not (?:turning|working|moving|advancing|coming on))/,
    ],
    unless: /\b(?:crankcase|belly|sump|drain|strip|duct|electric) ?(?:\w+ )?(?:heaters?|elements?)/,
    mended: /\b(?:heaters?|elements?|sensor|timer|clock|board|relay|thermostat)\b/,
    level: "bad",
    about: "coil",
    says: "It does not defrost: coil sensor, board or timer, then reversing valve or heaters and the fan relay are next",
    brief: "no defrost",
  },
  {
    check: "airflow",
    sign: "outdoor_air:outdoor_coil_dirty",
    words: [
      new RegExp(`\\b${condenser}\\b.{0,30}\\b${choked}`),
      new RegExp(`\\b${choked} (?:\\w+ ){0,4}${condenser}\\b`),
    ],
    unless: new RegExp(
      `\\b(?:not|isn'?t|aren'?t|no longer|never) (?:\\w+ )?${choked}|\\b(?:clean(?:ed)?|washed|spotless)\\b`,
    ),
    mended: /\bcond|\bcoil|\boutdoor/,
    level: "bad",
    about: "condenser",
    says: "The condenser is told to be dirty or covered: clear and clean it before any word on charge",
    brief: "condenser blocked, as told",
  },
  {
    check: "airflow",
    sign: "indoor_air:indoor_coil_dirty",
    words: [
      new RegExp(`\\b${indoorPart}\\b.{0,24}\\b${choked}`),
      new RegExp(`\\b${choked} (?:\\w+ ){0,2}${indoorPart}\\b`),
    ],
    unless: new RegExp(
      `\\b(?:not|isn'?t|aren'?t|no|never) (?:\\w+ )?${choked}|\\b(?:cleaned|washed|spotless)\\b|\\bfilter.?dri|\\bfilters?\\W+(?:\\w+\\W+){0,2}(?:clean|new)\\b`,
    ),
    mended: /\bfilters?\b|\bcoil|\bblower|\bwheel|\bduct/,
    level: "bad",
    about: "indoor side",
    says: "Filter, coil, blower or duct is told to be blocked: clear that before any word on charge",
    brief: "indoor air blocked, as told",
  },
  {
    check: "pressure_test",
    sign: "leak_traces:leak_found",
    words: [
      /\b(?:detector|sniffer|leak ?seeker)\b.{0,30}\b(?:scream\w*|goes off|went off|going (?:off|nuts)|goes (?:nuts|crazy|wild)|alarm\w*|hits?|chirp\w*|sings?|squeal\w*|lit up|lights up|pegs?|pegged|beeps?|picked (?:it )?up)\b/,
      /\b(?:flare|flare nut|nut|braze|joint|tube|u.?bend|(?<!bulb )capillary|line ?set|copper)\b.{0,40}\b(?:cracked|split(?! ?(?:\d|of|is|was|unit|system))|rubbed through|pinhole|snapped)\b/,
      /\b(?:soap|bubbles?|suds)\b.{0,24}\b(?:blow\w*|grow\w*|foam\w*|at the|on the|around the)\b.{0,24}\b(?:flare|joint|braze|u.?bend|schrader|core|valve|coil|fitting|line)/,
    ],
    unless:
      /\b(?:no|not|never|nothing|didn'?t|doesn'?t|without|quiet)\b.{0,24}(?:bubble|alarm|hit|scream|leak)|sight ?glass/,
    mended: /\bleak|\bflare|\bjoint|\bcore|\bschrader/,
    level: "bad",
    about: "system",
    says: "A leak was found, as told: repair it and prove it with a hold before anything is added",
    brief: "a leak, as told",
  },
  {
    check: "pressure_test",
    sign: "leak_traces:oil_stain",
    words: [
      /\boil(?:y)?\b.{0,16}\b(?:all over|around|on|at|under|stain\w*|spots?|residue|film|tracks?|streak\w*|wet|drip\w*)\b.{0,24}\b(?:u.?bends?|bends?|flares?|joints?|fittings?|schrader|service valves?|coil|braze|cores?|distributor|header)\b/,
    ],
    unless: /\bno oil\b|\boil (?:level|sight|return|pressure|sample)|\bclean of oil/,
    mended: /\bleak|\bflare|\bjoint|\bcore|\bschrader/,
    level: "watch",
    about: "system",
    says: "Oil about a joint, as told: refrigerant leaves where oil does, test that place first",
    brief: "oil traces, as told",
  },
  {
    check: "evacuation",
    sign: "sight_glass:sight_glass_shows_moisture",
    words: [
      /\b(?:moisture|sight ?glass|indicator|eye|dot)\b.{0,24}\b(?:yellow|pink|purple|wet|chartreuse)\b/,
      /\b(?:yellow|pink|wet)\b.{0,12}\b(?:moisture (?:eye|indicator|dot)|sight ?glass|indicator)\b/,
    ],
    unless: /\b(?:not|isn'?t|no longer) (?:yellow|pink|wet)|\bgreen\b|\bdry\b/,
    mended: /\bdrier|\bdryer/,
    level: "watch",
    about: "system",
    says: "The moisture indicator shows wet, as told: a new drier, a deep evacuation, and look how it came in",
    brief: "moisture indicator wet",
  },
];
