import type { ToldRow } from "./told-rows.ts";

/** What is heard of control voltage and boards. Source throughout: common practice, no source. */
export const toldControlRows: readonly ToldRow[] = [
  {
    check: "control_voltage",
    sign: "control:no_output",
    words: [
      /\b(?:board|relay|controller|control)\b.{0,40}\b(?:puts?|sends?|putting|sending|gives?|giving)\b.{0,14}\b(?:nothing|none|no (?:power|voltage|volts|signal|24))\b/,
      /\b(?:nothing|no (?:voltage|volts|power|24(?: ?v)?|output)|0(?:\.0)? ?v(?:olts)?)\b.{0,12}\b(?:out of|off|from|leaving|out on|coming out|out to)\b.{0,20}\b(?:board|relay|controller|y1?|compressor terminal|contactor)\b/,
      /\bboard\b.{0,30}\bno output\b/,
      /\bno (?:speed|pwm|start|run) (?:command|signal|voltage)\b/,
      /\b(?:contactor|relay|compressor|fan) output\b.{0,12}\b(?:stays|is|reads|at|still)\b.{0,6}\b(?:0(?:\.0)?|zero|dead|nothing|low)\b/,
      /\b(?:speed|command|control|signal|pwm)\b.{0,10}\b(?:command|signal|line|wire)\b.{0,10}\b(?:0(?:\.0)?|zero|no) ?(?:v\w*)?\b.{0,30}\b(?:though|but|while|with)\b/,
      /\b(?:24|jumper\w*|power)\b.{0,24}\b(?:straight|directly?|right|jumped)\b.{0,8}\b(?:on|to|onto|at) (?:the )?(?:contactor|coil)\b.{0,20}\b(?:pulls|closes|runs|starts|comes in|goes)\b/,
      /\bno relays? (?:moves?|clicks?|pulls?(?: in)?|closes?)\b/,
      /\bboard\b.{0,40}\b(?:no (?:lights?|leds?)\b|(?:stays|still|is) (?:dark|dead)\b)/,
      /\bstill (?:dark|dead)\b.{0,16}\b2\d(?:\.\d)? ?v/,
      /\bout to (?:the )?contactor\W+(?:is |at |reads )?(?:0(?:\.0)?|zero|nothing|dead)\b/,
      /\b(?:relay|board)(?:'s)? outputs?\b.{0,16}\b(?:zero|nothing|none|0|dead)\b/,
    ],
    unless:
      /\b(?:inverter|drive) board|\bbus\b|\bno (?:call|24 ?v? (?:in|to))\b|not calling|safety (?:is )?open/,
    mended: /\bboard\b/,
    level: "bad",
    about: "control board",
    says: "A call goes in and nothing comes out of the board: its output, after its fuse and every safety were seen",
    brief: "a call in, nothing out",
  },
  {
    check: "control_voltage",
    sign: "board:board_suspected",
    words: [
      /\b(?:control|main|outdoor|indoor) board\b.{0,60}\b(?:3\.3|5|12|15) ?v(?:olts?)? (?:outputs?|rails?|supply|supplies)\b.{0,10}\b(?:both |all )?(?:dead|gone|missing|zero|nothing|0)\b/,
    ],
    unless: /\b(?:inverter|drive) board/,
    mended: /\bboard\b/,
    level: "bad",
    about: "control board",
    says: "The control board is fed and makes no voltage of its own, as told: the board, once nothing that hangs on those outputs pulls them down",
    brief: "the board makes no voltage",
  },
  {
    check: "control_voltage",
    sign: "control:logic_lost",
    words: [
      /\bno (?:3\.3|5|12|15) ?v(?:olts?)?\b.{0,24}\b(?:logic|board|rail|processor|cpu|drive)\b/,
      /\b(?:3\.3|5|12|15) ?v(?:olts?)? (?:outputs?|rails?|supply|supplies)\b.{0,10}\b(?:both |all )?(?:dead|gone|missing|zero|nothing|0)\b/,
      /\b(?:logic (?:supply|rail|voltage)|(?:3\.3|5|12|15) ?v(?:olts?)? (?:rail|supply|logic))\b.{0,12}\b(?:dead|gone|missing|zero|nothing|0)\b/,
    ],
    unless: /\b(?:control|main|outdoor|indoor) board\b/,
    mended: /\bboard\b/,
    level: "bad",
    about: "control board",
    says: "The board's logic supply is dead, as told: with bus and line there, the board that makes it",
    brief: "logic supply dead, as told",
  },
  {
    check: "control_voltage",
    sign: "control:lost",
    words: [
      /\b(?:nothing|no (?:power|volts?|voltage)|dead|zero|0 ?v?)\b.{0,8}\b(?:at|on|between|across|from) (?:the )?r (?:and|to|-|&|\/) ?c\b/,
      /\bno (?:low voltage|24 ?v(?:olts)?|control (?:voltage|power|volts))\b/,
      /\b(?:24 ?v(?:olts)?|low voltage|control voltage) (?:is |are )?(?:dead|gone|missing|lost|out)\b/,
    ],
    unless: /\bno 24 ?v? (?:out|at the coil|to the contactor|on the contactor)|not calling|no call/,
    mended: /\btransformer\b|\bwire\b|\bfuse\b(?! (?:blows|blew|pops|opens))/,
    level: "bad",
    about: "control circuit",
    says: "No control voltage: transformer, its fuse, a short in the low voltage wiring",
    brief: "no control voltage",
  },
];
