import type { ToldRow } from "./told-rows.ts";

const comms = /\bcomms?\b|communicat|\bpair\b|\bnetwork\b/;

/** What is heard of lines and of the pair between units. Source throughout: common practice, no source. */
export const toldLineRows: readonly ToldRow[] = [
  {
    check: "supply",
    sign: "supply:phase_lost",
    words: [
      /\b(?:panel|breaker|main|disconnect|fuses?|lugs|service)\b.{0,60}\b\d{3}\b.{0,24}\b(?:and|,) ?\d{1,2} (?:and|&|,) ?\d{1,2}(?: v\w*)? (?:to|on|with) (?:leg |phase |line )?(?:[abc]|l ?[123])\b/,
    ],
    unless: /\bground\b|\bneutral\b/,
    level: "bad",
    about: "supply",
    says: "Next to nothing from two legs to the third there, as told: that leg is lost at or ahead of that place",
    brief: "a leg lost, as told",
  },
  {
    check: "supply",
    sign: "upstream:same",
    words: [
      /\bsame\b.{0,24}\bat the (?:main|panel|meter|service|bus|lugs)/,
      /\bat the (?:main|panel|meter|service)\w*(?: \w+)?\b.{0,12}\b(?:same|too|reads the same)\b/,
      /\b(?:meter base|meter|main lugs|panel)\b.{0,10}\b(?:reads?|same|is)\b.{0,8}\b(?:\d{3}|same)\b/,
      /\butility (?:confirmed|side|says|admits)|\bit'?s the utility\b/,
      /\bno drop (?:from|between) the (?:main|panel|meter)\b/,
    ],
    unless: /\b(?:normal|fine|good|ok) at the (?:main|panel|meter)/,
    level: "good",
    about: "supply",
    says: "The same was read upstream, as told: what is wrong comes in from there, not from a joint at the unit",
    brief: "the same upstream, as told",
  },
  {
    check: "communication",
    sign: "network:dead_unloaded",
    words: [
      /\b(?:took|take|lifted|pulled|disconnected|unhooked|unlanded|removed|with)\b.{0,30}\b(?:pair|comms?(?: \w+)?|f1|bus wires?|field wir\w+|line)\b.{0,40}\b(?:still|and)\b.{0,24}\b(?:0(?:\.\d)?|zero|dead|nothing|no volt\w*)\b/,
      /\b(?:nothing|0(?:\.\d)? ?v\w*|dead|zero)\b.{0,40}\b(?:with|even with)\b.{0,16}\b(?:pair|comms?(?: wires?)?|line|field wir\w+|everything)\b.{0,16}\b(?:off|lifted|disconnected|pulled)\b/,
    ],
    unless:
      /\bcomes? (?:back|up)|came (?:back|up)|returns?\b|\bback (?:to|at|up)\b|\b(?:lifts|jumps|jumped|rises|rose|climbs|goes|went) (?:up |back )?to\b/,
    beside: comms,
    mended: /\bboard\b/,
    level: "bad",
    about: "communication",
    says: "Dead with nothing on its terminals, as told: that board makes no signal, once its own supply and fuse were seen",
    brief: "dead with the pair off: that board",
  },
  {
    check: "communication",
    sign: "cable:cable_damaged",
    words: [
      /\b(?:splice|wire ?nuts?|junction box|j-?box|connector|terminals?)\b.{0,40}\b(?:green|corroded|rotted|wet|full of water|soaked|loose|broken|pulled out)\b/,
      /\b(?:pair|comms?(?: \w+)?|data line|bus)\b.{0,20}\b(?:shorted|broken|cut|open|chewed|crossed|swapped|reversed)\b/,
      /\bpolarity\b.{0,16}\b(?:swapped|reversed|wrong|backwards?|crossed)\b/,
      /\bshield\b.{0,20}\b(?:not|n't|never|both ends|floating|cut)\b/,
      /\bcomms?(?: wire| cable| pair)?\b.{0,24}\b(?:beside|alongside|next to|in with|same conduit)\b.{0,16}\b(?:power|line|feed|high volt)/,
      /\b(?:green|corroded|rotted|wet|loose|bad) (?:splice|wire ?nuts?|junction box|connector)\b/,
    ],
    beside:
      /\bcomms?\b|communicat|\bpair\b|\bnetwork\b|\btalks?\b|\banswers?\b|\b(?:units?|heads?|indoors?|fan coils?) ?\d+\b.{0,12}\b(?:drops? (?:off|out)|goes? off ?line|disappears?)\b/,
    mended: /\b(?:splice|wire|cable|pair|box|terminal)\b/,
    level: "bad",
    about: "cable",
    says: "A wet, corroded or loose joint in the pair, as told: it swallows the signal and comes and goes with the weather; remake it and read the pair behind it",
    brief: "a bad joint in the pair",
  },
  {
    check: "supply",
    sign: "protection:upstream_fuse_open",
    words: [
      /\b(?:one|1|a|middle|left|right|center|[abc]|l[123]) (?:pole|leg|phase|blade)\b.{0,40}\b(?:breaker|disconnect|fuse)\b.{0,40}\b(?:dead|open|0(?:\.0)? ?v?|nothing|no (?:output|voltage)|bad)\b/,
      /\b(?:breaker|disconnect)\b.{0,30}\b(?:one|middle|left|right|center|[abc]|l[123]) (?:pole|leg|blade)\b.{0,30}\b(?:dead|open|0(?:\.0)? ?v?|nothing|bad|burnt)\b/,
      /\bl ?[123]\b.{0,12}\b(?:reads? |is |at |has )?(?:0|zero|dead|nothing)\b.{0,24}\b(?:to ground|at the (?:breaker|main|panel|disconnect))/,
      /\b(?:utility|transformer|pole|service)\b.{0,24}\b(?:lost|dropped|blew|missing)\b.{0,14}\b(?:a |one )?(?:phase|leg|cut-?out|fuse)\b/,
    ],
    unless: /\bcontactor\b|control|24 ?v|\bload wires? off/,
    mended: /\bbreaker\b|\bfuses?\b|\bdisconnect\b/,
    level: "bad",
    about: "supply",
    says: "One pole or phase is dead ahead of the unit, as told: that line is lost there. What opened it comes before it is closed again",
    brief: "one pole dead ahead of the unit",
  },
];
