import type { ToldRow } from "./told-rows.ts";

/** What is heard of a defrost that does not begin or does not end. Source throughout: common practice, no source. */
export const toldDefrostRows: readonly ToldRow[] = [
  {
    check: "sensor",
    sign: "forced_defrost:works",
    words: [
      /\b(?:forced?|jumped|jumpered|initiated|put it in)\b.{0,24}\bdefrost\b.{0,80}\b(?:melts?|clears?|cleared|works|worked|ok|fine|valve shifts|shifts)\b/,
      /\bjumped (?:it|the \w+)\b.{0,30}\b(?:into|right into) defrost\b/,
    ],
    unless:
      /\b(?:does ?n[o']?t|did ?n[o']?t|never|won'?t|nothing)\b.{0,16}\b(?:shift|melt|clear|happen)/,
    level: "good",
    about: "coil",
    says: "It defrosts when it is forced, as told: valve, fan and coil do their part, so what starts it is in question",
    brief: "defrosts when forced",
  },
  {
    check: "sensor",
    sign: "defrosting:fails",
    words: [
      /\b(?:reversing|4.?way|four.?way|rv|changeover|switchover)\b(?: valve)?(?: coil| solenoid)?\b.{0,16}\b(?:gets?|has|have|sees|reads?|got|shows?)\b.{0,8}\b(?:0(?:\.0)?|no|zero|nothing)\b/,
      /\b(?:0(?:\.0)?|no|zero|nothing)(?: ?v(?:olts?)?| power| voltage| signal)? (?:at|on|to|across|for) the (?:reversing|4.?way|four.?way|rv)\b/,
      /\bnever (?:energi[sz]es|powers|pulls in|sends \w+ to) the (?:reversing|4.?way|four.?way|rv)\b/,
    ],
    beside: /\bdefrost/,
    unless: /\b(?:in cooling|cooling mode)\b/,
    mended: /\b(?:board|relay|wire|timer)\b/,
    level: "bad",
    about: "coil",
    says: "Told to defrost, the reversing valve gets no voltage, as told: defrost board or relay and the wire between, before the valve",
    brief: "no voltage at the reversing valve in defrost",
  },
  {
    check: "sensor",
    sign: "defrosting:fails",
    words: [
      /\b(?:0(?:\.0+)?|zero|no) ?a(?:mps?)?\b.{0,24}\b(?:defrost )?(?:heaters?|elements?)\b/,
      /\b(?:defrost )?(?:heaters?|elements?)(?: \w+){0,3} (?:(?:draw|pull|read)\w* )?(?:0(?:\.0+)?|zero|no|nothing)(?: ?a(?:mps?)?)?\b(?! ?(?:v|ohm|f\b))/,
    ],
    unless: /\b(?:crankcase|belly|sump|drain|strip|duct|door|frame)\b/,
    beside: /\bdefrost/,
    mended: /\b(?:heaters?|elements?|contactor|fuse)\b/,
    level: "bad",
    about: "coil",
    says: "The defrost heaters draw nothing while it defrosts, as told: volts at their terminals with none drawn is an open heater, none there is the contactor, the clock or the termination switch. Locked out, each heater's ohms with its wires off",
    brief: "defrost heaters draw nothing",
  },
  {
    check: "sensor",
    sign: "defrosting:fails",
    words: [
      /\bdefrost (?:clock|timer|board|control|relay|stat|thermostat|termination|klixon|heater)\b.{0,50}\b(?:stopped|does(?:n'?t| not)|never|not|won'?t|stuck|dead|open|frozen|failed|no (?:output|signal|voltage|power)|0 ?v)\b/,
      /\b(?:clock|timer)\b.{0,30}\b(?:does(?:n'?t| not)|not|never|won'?t)\b.{0,10}\b(?:turn|move|advance|run|step)/,
      /\b(?:never|won'?t|does(?:n'?t| not)|not) (?:initiates?|go(?:es)? into (?:a )?defrost|call for (?:a )?defrost|start a defrost)\b/,
      /\b(?:no|last|skipped?|missed)\b.{0,12}\bdefrosts?\b.{0,16}\b(?:\d+|two|three|four|six|eight|ten|all|since)\b.{0,10}\b(?:h|hrs?|hours?|days?|night|morning|yesterday|weekend)\b/,
      /\bcoil (?:stat|sensor|thermostat|thermistor)\b.{0,24}\b(?:open|ol|reads? [4-9]\d)\b.{0,40}\b(?:ice|iced|frozen|2\d ?f|should close|below)\b/,
      /\bdefrost (?:sensor|stat|thermistor|probe)\b.{0,24}\b(?:fell|off|loose|out of|hanging|not on)\b/,
      /\b(?:stuck|stays?|hung(?: up)?|stayed)\b.{0,8}\bin (?:a )?defrost\b/,
    ],
    unless:
      /\b(?:crankcase|belly|sump|drain|strip|duct|electric) ?(?:\w+ )?(?:heaters?|elements?)|\bwent into defrost (?:fine|ok)|\bno (?:ice|frost)\b/,
    mended: /\b(?:heaters?|elements?|sensor|timer|clock|board|relay|thermostat|stat)\b/,
    level: "bad",
    about: "coil",
    says: "It does not defrost as it should, as told: what starts it (clock, board, coil sensor), then what melts (reversing valve or heaters) and the fan relay",
    brief: "defrost does not run",
  },
];
