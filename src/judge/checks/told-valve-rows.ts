import type { ToldRow } from "./told-rows.ts";

const eev = "\\b(?:eevs?|levs?|exvs?|pmvs?|valves?)\\b";
const indoor = "\\b(?:heads?|units?|zones?|cassettes?|ports?|rooms?|idus?|fan ?coils?)";
const cold = "(?:frost\\w*|iced?|icing|icy|white|sweat\\w*|freez\\w*|frozen|cold)";
const told = "(?:commanded|told|called|sent|driven|shows?|showing|reads?|at|says)";

/** What is heard of a zone's own valve. Source throughout: common practice, no source. */
export const toldValveRows: readonly ToldRow[] = [
  {
    check: "valve",
    sign: "valve_answer:stays_open",
    zones: true,
    words: [
      // "head 12 is off at the wall yet its coil's white with frost"
      new RegExp(
        `${indoor} ?\\w{0,3}\\b.{0,24}\\b(?:off|satisfied|not calling|idle|shut down)\\b.{0,40}\\b(?:coil|fins|pipes?|lines?)\\b.{0,20}\\b${cold}\\b`,
      ),
      // "the coil's iced on unit 3 and it's been off all week"
      new RegExp(
        `\\b(?:coil|fins)\\b.{0,16}\\b${cold}\\b.{0,30}\\b(?:on|in|of|at) (?:the |an? )?(?:off|idle|satisfied) ${indoor}`,
      ),
      // "valve commanded 0, pipe either side of it 33"
      new RegExp(
        `${eev}.{0,14}\\b${told}\\b ?(?:0|zero|shut|closed)\\b.{0,30}\\b(?:pipes?|lines?|coil|both sides|either side)\\b.{0,24}\\b(?:[23]\\d|${cold})\\b`,
      ),
    ],
    unless: /\b(?:not|no|n'?t|never) (?:iced|frost\w*|cold)|\bdefrost|\bheating\b|\bwas off\b/,
    mended: /\b(?:valves?|eevs?|exvs?|levs?|stepper)\b/,
    level: "bad",
    about: "expansion valve",
    says: "A zone that is off has a cold coil, as told: its valve does not close, it is stuck open or its seat passes",
    brief: "valve passes in a zone that is off",
  },
  {
    check: "valve",
    sign: "branch:stuck",
    zones: true,
    words: [
      // "indoor pipe 112 F with its exv commanded 0", "pipe stays hot with the valve at 0"
      new RegExp(
        `\\b(?:pipes?|lines?|coil)\\b.{0,24}\\b(?:1[0-5]\\d|hot|warm|cold|[34]\\d)\\b.{0,30}\\b(?:with|while|and|but|though)\\b.{0,14}${eev}.{0,24}\\b(?:0|zero|shut|closed)\\b`,
      ),
      // "its port valve doesn't click when you swap the mode"
      /\b(?:port|branch|changeover|zone) valves?\b.{0,16}\b(?:does ?n'?t|won'?t|never|did ?n'?t|do ?n'?t) (?:click|move|shift|budge|change|stroke)\w*/,
      // "its pipes both 76 while the valve shows 400 steps open"
      new RegExp(
        `\\b(?:pipes?|lines?)\\b.{0,30}\\b(?:with|while|and|but|though)\\b.{0,14}${eev}.{0,8}\\b${told}\\b.{0,14}\\b(?:open|\\d{3,4} ?(?:steps|pulses|pls)|100)\\b`,
      ),
      new RegExp(
        `${eev}.{0,14}\\b(?:full(?:y)? |wide )?open\\b.{0,40}\\b(?:pipes?|lines?)\\b.{0,20}\\b(?:both|same|equal|room temp\\w*|ambient)\\b`,
      ),
      // "moved its motor head over to zone 2's body and zone 2 works"
      /\b(?:coil|motor|head|stator|actuator)\b.{0,24}\b(?:moved|swapped|put|tried|works|runs|stepped|drives)\b.{0,40}\b(?:body|valve|zone|port|other|neighbou?r\w*)\b.{0,24}\b(?:works?|runs?|cools?|heats?|fine|good|ok|opens?|moves?)\b/,
      /\b(?:moved|swapped|put|tried)\b.{0,16}\b(?:coil|motor|motor head|head|stator|actuator)\b.{0,50}\b(?:works?|runs?|cools?|heats?|fine|good|ok|opens?|moves?)\b/,
      /\b(?:works?|runs?|cools?|heats?|opens?|moves?)\b.{0,24}\b(?:on|with) (?:the )?(?:other|neighbou?r\w*|next) (?:valve|body|port)\b/,
      /\b(?:zone|room|unit|port|head|cassette)\b.{0,40}\b(?:off|satisfied|not calling)\b.{0,50}\b(?:still|keeps?|gets?|climb\w*|\d\d and (?:climbing|rising))\b.{0,24}\b(?:heat\w*|hot|warm\w*|cool\w*|cold)\b/,
      /\b(?:zone|room|unit|port|head|cassette) ?\w{0,3}\b.{0,8}\b(?:is )?off\b.{0,16}\b(?:blows?|blowing|puts out)\b.{0,12}\b(?:hot|warm|cold|1[0-4]\d|[34]\d)\b/,
    ],
    unless: /\bcompressors?\b|\bcontactor\b|\bfan motor\b/,
    mended: /\b(?:valve(?: body)?|branch box|eev|exv|lev)\b/,
    level: "bad",
    about: "branch box",
    says: "That zone's valve does not follow its command: its body hangs or passes, where coil and wiring have been proven",
    brief: "one zone's valve does not follow",
  },
  {
    check: "valve",
    sign: "reversing:picks_up",
    words: [
      /\btapp(?:ed|ing)\b.{0,24}\b(?:reversing|revers\w*|4.?way|four.?way|rv|valve body)\b.{0,80}\b(?:shift\w*|moved|snapped|changed (?:the )?(?:sound|over)|came up|heats?|let go|freed|popped)\b/,
      /\b(?:reversing|4.?way|four.?way) valve\b.{0,40}\b(?:hiss\w*|bypass\w*|blow\w* (?:by|through)|leak\w* (?:by|through|across)|stuck (?:half ?way|mid\w*|in the middle|between))\b/,
      /\b(?:hiss\w*|gas (?:passing|blowing))\b.{0,24}\b(?:reversing|4.?way|four.?way) valve\b/,
    ],
    unless: /\b(?:no|not|n't) (?:hiss|bypass|leak)|branch box/,
    mended: /\breversing valve|\b4.?way/,
    level: "bad",
    about: "reversing valve",
    says: "The reversing valve passes or hangs between its ends, as told: both suction pipes at its body by thermometer, then coil voltage and pilot tubes",
    brief: "reversing valve passes, as told",
  },
];
