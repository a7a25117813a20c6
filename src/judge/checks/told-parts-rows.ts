import type { ToldRow } from "./told-rows.ts";

/** What is heard of parts tried elsewhere, or with nothing on them. Source throughout: common practice, no source. */
export const toldPartsRows: readonly ToldRow[] = [
  {
    check: "contactor",
    sign: "contacts:contactor_welded",
    words: [
      /\b(?:poles?|contacts?|points|contactor)\b.{0,24}\b(?:stuck|welded|stays?|held) (?:in|shut|closed|together)\b/,
      /\b(?:0 ?v|no (?:volts?|voltage|24)|nothing)\b.{0,24}\bcoil\b.{0,40}\b(?:still|keeps?)\b.{0,12}\b(?:in|running|runs|closed|passes)\b/,
      /\bwires? off (?:of )?the coil\b.{0,24}\b(?:still|stays?|keeps?)\b/,
    ],
    unless: /\b(?:not|n'?t|never) (?:stuck|welded)|stays? (?:in|closed) (?:fine|good|ok)|with 2\d/,
    mended: /\bcontactor\b/,
    level: "bad",
    about: "contactor",
    says: "It stays in with no voltage on its coil, as told: the contacts are welded or held",
    brief: "stays in without its coil",
  },
  {
    check: "bridge",
    sign: "swap:follows_drive",
    words: [
      /\b(?:fault|trip|problem|code|it)\b.{0,12}\b(?:went|goes|moved|moves|followed|follows|travel\w*|came) (?:with |along with |over with )?(?:the )?(?:inverter |drive )?(?:board|drive|inverter|module)\b/,
    ],
    unless: /\b(?:not|n'?t|never) (?:follow|move|go)|stay\w* (?:with|on) the comp/,
    mended: /\b(?:board|drive|inverter|module)\b/,
    level: "bad",
    about: "drive output stage",
    says: "Swapped, the fault goes with the drive: the drive, not the compressor",
    brief: "the fault follows the drive",
  },
  {
    check: "bridge",
    sign: "swap:stays_with_motor",
    words: [
      /\bswap\w*\b.{0,80}\b(?:comp(?:ressor)? ?\w*)\b.{0,16}\b(?:still |again )?(?:trips?|faults?|fails?|locks?)\b.{0,24}\b(?:just the same|same|too|still|as well|again)\b/,
      /\bswap\w*\b.{0,60}\b(?:fault|trip|problem|code|it)\b.{0,8}\bstay\w* (?:with|on) (?:the )?(?:comp\w*|motor)\b/,
      /\bcomp(?:ressor)? ?\w+ (?:runs|starts) (?:fine|good|ok)\b.{0,30}\bcomp(?:ressor)? ?\w+ (?:still )?(?:trips|faults|fails)\b/,
    ],
    unless:
      /\b(?:went|goes|moved|followed|follows) (?:with )?the (?:board|drive|inverter|module)\b/,
    mended: /\bcomp/,
    level: "bad",
    about: "compressor",
    says: "On another drive it faults just the same: the compressor, not the drive",
    brief: "faults on another drive too",
  },
  {
    check: "fan",
    sign: "swap:fan_runs_elsewhere",
    words: [
      /\b(?:fan|blower)(?: motor)?\b.{0,12}\b(?:moved|swapped|plugged|put|tried)\b.{0,30}\b(?:runs?|spins?|turns?|works?)\b/,
      /\b(?:motor|fan|blower)\b.{0,40}\b(?:plugged|moved|hooked|tried) (?:it )?(?:in|into|on|onto|to)\b.{0,30}\b(?:runs?|spins?|turns?|works?)\b/,
      /\b(?:motor|fan|blower)\b.{0,16}\b(?:runs?|spins?|works?) (?:fine |good |ok )?(?:on|at|in) (?:the )?(?:other|another|next|sister)\b/,
    ],
    unless:
      /\b(?:not|n'?t|never|still|neither|dead)\b.{0,12}\b(?:run|spin|turn|work)|(?:new|known good|other|neighbou?r'?s) (?:fan|motor|blower)/,
    mended: /\bfan\b/,
    level: "good",
    about: "fan",
    says: "The fan runs on another unit, as told: that clears it and points to what drives it",
    brief: "runs on another unit",
  },
  {
    check: "fan",
    sign: "fans:fan_stiff",
    words: [
      /\b(?:motor |shaft )?bearings?\b.{0,20}\b(?:drags?|rough|seized|shot|locked|scorched|blue|dry|gone)\b/,
    ],
    unless: /\bcomp|\bpump\b|\b(?:not|n'?t|no) (?:rough|dry|shot)|\bfine\b|\bgood\b/,
    mended: /\bbearing|\bmotor/,
    level: "bad",
    about: "fan",
    says: "A bearing that drags holds the motor back, as told: the motor, before what feeds it",
    brief: "a bearing drags",
  },
  {
    check: "supply",
    sign: "protection:trips_unloaded",
    words: [
      /\b(?:breaker|fuse|disconnect)\b.{0,20}\b(?:trips?|blows?|pops?|kicks?)\b.{0,24}\b(?:with (?:the |its )?(?:load )?(?:wires?|leads?|unit|load)\b.{0,12}\b(?:off|out|lifted|pulled|disconnected)|(?:with )?nothing (?:on|hooked|connected)|unloaded|no load)\b/,
      /\b(?:load wires?|leads?|unit|load) (?:is |are )?(?:off|pulled|lifted|disconnected)\b.{0,24}\bbreaker\b.{0,12}\b(?:still )?(?:trips?|pops?|kicks?)\b/,
    ],
    unless: /\b(?:holds?|not|n'?t|stays?)\b.{0,16}\b(?:with|trip|pop)/,
    mended: /\bbreaker\b/,
    level: "bad",
    about: "breaker",
    says: "The breaker trips with its load off: the breaker or what lies between it and those wires, not the unit",
    brief: "trips with its load off",
  },
  {
    check: "start_current",
    sign: "starting:drive_faults_at_start",
    words: [
      /\b(?:over ?current|locked? rotor|stall|start\w* fail\w*|desync\w*|lost sync)\b.{0,24}\b(?:code|fault|trip|alarm|lock ?out|at start)\b/,
    ],
    unless: /\bfan\b|\b(?:no|not|cleared|without)\b.{0,16}\b(?:code|fault|trip|alarm)/,
    mended: /\b(?:comp|drive|inverter|module)/,
    level: "watch",
    about: "compressor",
    says: "The drive stops at its current limit: drive, compressor or what the start meets",
    brief: "stops at the current limit",
  },
];
