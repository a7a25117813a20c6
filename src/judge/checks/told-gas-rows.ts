import type { ToldRow } from "./told-rows.ts";

const gasName =
  "(?:r-?)?(?:12|22|32|134a?|290|404a?|407[ac]?|410a?|448a?|449a?|454[abc]?|50[27]a?)";

const runs = "(?:running|runs|while it runs|is on|going|turning)";
const alike =
  "(?:equal|even|the same|alike|together|don'?t (?:move|split|come apart)|(?:read|at|show|sit at) \\d{2,3}|\\d{2,3})";
/** "both hoses read 118 with the compressor running" */
const equalPressures = new RegExp(
  `\\b(?:both (?:gauges|hoses|needles|pressures|sides)|(?:gauges|hoses|needles|pressures) (?:are |read |both |sit |at )*(?=equal|even|the same|alike|together|don|\\d))\\b.{0,20}\\b${alike}\\b.{0,30}\\b${runs}\\b`,
);
/** "compressor runs but the gauges are equal" */
const equalAhead = new RegExp(
  `\\b(?:comp\\w*|it) ${runs}\\b.{0,24}\\b(?:gauges|hoses|needles|pressures|both sides)\\b.{0,14}\\b(?:equal|even|the same|alike|together|don'?t (?:move|split))\\b`,
);
/** Both sides at one pressure. */
const bothSides =
  "(?:(?:gauges|pressures|needles)(?: (?:are|read|sit|stay|stand|both))* (?:equal|even|level|(?:the )?same)|both (?:gauges|sides|needles|pressures) (?:at|(?:sit|stay|stand|read)s?(?: at)?|are|show) (?:\\d+|equal|even|level|the same)|(?:gauges|pressures) (?:don'?t|never|won'?t) (?:split|part|separate|move apart))";

/** What is heard of refrigerant, its leaks and what does not belong in it. Source throughout: common practice, no source. */
export const toldGasRows: readonly ToldRow[] = [
  {
    check: "compression",
    sign: "unloads:at_once",
    words: [
      /\b(?:gauges?|needles?|hands|pressures?|sides?|high and low)\b.{0,40}\b(?:meet|met|equali[sz]ed?|equali[sz]es|even(?:ed)? out|level(?:ed|s)?|equal|come together)\b.{0,30}\b(?:seconds?|secs?|at once|right away|instantly|immediately|(?:inside of |under |within |in (?:less than |under )?)(?:a|one|half a) min\w*)\b/,
      /\b(?:king|pump\w* (?:it |her )?down|front.?seat\w*|clos\w+ the (?:suction|king|liquid))\b.*\b(?:off|stopped|kill\w*)\b.{0,30}\b(?:suction|low side|it)\b.{0,12}\b(?:ran|runs|came|comes|climb\w*|shot|jump\w*|rose|rises|goes|went|back)\b.{0,24}\b(?:seconds?|secs?|at once|right away|instantly|immediately|(?:inside of |under |within |in )(?:a|one|half a) min\w*)/,
    ],
    mended: /\bcomp|\bvalve/,
    level: "bad",
    about: "compressor",
    says: "Stopped, both sides meet within seconds: something between them does not shut",
    brief: "sides meet within seconds",
  },
  {
    check: "pressure_test",
    sign: "leak_traces:leak_found",
    words: [/\bdye\b.{0,24}\b(?:glow\w*|show\w*|lit up|bright|found)\b/],
    unless: /\b(?:no|not|never) (?:\w+ )?dye|\bdye (?:does ?n'?t|not|never)/,
    mended: /\bleak|\bflare|\bjoint|\bcoil/,
    level: "bad",
    about: "system",
    says: "Dye shows where it leaves, as told: repair it and prove it with a hold before anything is added",
    brief: "dye shows the leak",
  },
  {
    check: "saturation",
    sign: "wrong_gas:said",
    words: [
      new RegExp(
        `\\b(?:put|added|charged|topped|dumped|poured|used|shot)\\b(?: \\w+){0,3} ${gasName} (?:in|into|on top|over|to|with)\\b.{0,20}(?:${gasName}|on top)`,
      ),
      new RegExp(
        `\\b${gasName}\\b.{0,20}\\b(?:was |got )?(?:added|put in|charged|dumped)\\b.{0,14}\\b(?:on top|over|with it)\\b`,
      ),
      /\b(?:analy[sz]er|identifier)\b.{0,30}\b(?:fails?|failed|unknown|mix\w*|not pure|\d+ ?(?:%|percent))/,
      new RegExp(
        `\\bplate\\b.{0,16}\\b${gasName}\\b.{0,60}\\b(?:cylinder|jug|tank|bottle|tag|sticker)\\b.{0,50}\\b${gasName}\\b`,
      ),
    ],
    unless:
      /\b(?:9[89]|100)(?:\.\d+)? ?(?:%|percent)|\bpasses\b|\bpassed\b|\bretrofit\w* (?:tag|label)/,
    level: "bad",
    about: "system",
    says: "Another refrigerant than the plate's is spoken of: pressures can't be judged until an identifier says what is in it",
    brief: "refrigerant in doubt",
  },
  {
    check: "saturation",
    sign: "opened:no_vacuum",
    words: [
      /\b(?:nitrogen|nitro|n2)\b[^.;\n]{0,60}\b(?:no (?:pump|vac(?:uum)?)|(?:never|did(?:n'?t| not)|forgot to|without) (?:\w+ ){0,2}(?:pump\w*|vac\w*|evacuat\w*|bleed|bled|blow|blew|vent\w*|dump\w*|let))\b/,
      /\b(?:opened|cracked) [^.;\n]{0,30}\bvalves?\b[^.;\n]{0,20}\b(?:onto|over|on top of|with) (?:the )?(?:nitrogen|nitro|n2)\b/,
    ],
    unless:
      /\b(?:nitrogen|nitro|n2) (?:is |was )?(?:out|gone|bled off|vented|blown off|released) and (?:pulled|evac\w*)/,
    level: "watch",
    about: "system",
    says: "The test's nitrogen was left in with the refrigerant, as told: it stands on the head and no purging takes it out. Recover all of it, evacuate to 500 micron with a hold, weigh the charge in",
    brief: "the test's nitrogen left in",
  },
  {
    check: "saturation",
    sign: "opened:no_vacuum",
    words: [
      /\b(?:nitrogen|air)\b.{0,12}\b(?:left in|still in|trapped|in (?:it|there|the (?:system|charge)))\b/,
      /\b(?:charged|gassed|put gas in)\b.{0,16}\b(?:right |straight )?(?:over|on top of)\b.{0,16}\b(?:it|nitrogen|air)\b/,
    ],
    unless:
      /\b(?:no|not) (?:air|nitrogen)|\bmake ?up air\b|\bnitrogen (?:is |was )?(?:left in (?:over|for|till|until)|in (?:it )?(?:over|at \d))/,
    level: "watch",
    about: "system",
    says: "Gas that does not condense was left in it, as told: compare the pressure at rest with the coil's temperature, then recover, evacuate and weigh in",
    brief: "air or nitrogen left in it",
  },
  {
    check: "saturation",
    sign: "at_rest:above",
    words: [
      /\b(?:standing|stands|off|at rest|equali[sz]ed)\b.{0,40}\b(?:over|above)\b.{0,16}\b(?:chart|saturation|sat|p-?t|what it should)\b/,
    ],
    unless: /\brunning\b/,
    level: "bad",
    about: "system",
    says: "At rest it stands over saturation, as told: gas that does not condense, or another refrigerant",
    brief: "over saturation at rest, as told",
  },
  {
    check: "saturation",
    sign: "head:high",
    words: [
      /\bcondensing\b.{0,12}\b(?:3[5-9]|[4-9]\d) ?(?:f|deg\w*)? ?(?:over|above) (?:the )?(?:ambient|outdoor|outside)/,
      /\bhead\b.{0,16}\b(?:\d\d|100) ?(?:psi|#|pounds)? ?(?:over|above) (?:normal|what it should|usual|where it)/,
    ],
    level: "watch",
    about: "system",
    says: "The head is high for the day, as told: air over the condenser first, then what is in it",
    brief: "high head, as told",
  },
  {
    check: "airflow",
    sign: "outdoor_air:outdoor_coil_dirty",
    words: [
      /\bfins?\b.{0,24}\b(?:flattened|bent over|folded|mashed|combed|crushed|laid over|smashed)\b/,
      /\b(?:flattened|bent|folded|mashed|crushed|smashed)\b.{0,16}\b(?:condenser |outdoor )?fins\b/,
      /\bhail\b.{0,24}\b(?:coil|fins|condenser)\b/,
    ],
    unless: /\bevap|\bindoor\b|\bnot (?:bent|flattened)/,
    mended: /\bfins?\b|\bcoil\b|\bcomb/,
    level: "bad",
    about: "condenser",
    says: "The condenser's fins are told flattened: comb and clear them before any word on charge",
    brief: "condenser fins flattened, as told",
  },
  {
    check: "airflow",
    sign: "fans:outdoor_fan_not_turning",
    words: [
      /\b(?:cond(?:enser)?|outdoor) fan\b.{0,24}\b(?:blade )?(?:loose on|slipping|spinning on|off) (?:the |its )?shaft\b/,
    ],
    mended: /\bfan\b|\bblade\b/,
    level: "bad",
    about: "condenser",
    says: "The condenser's fan moves little air, as told: its turning and its blade before any word on charge",
    brief: "condenser fan moves little air",
  },
  {
    check: "pressure_test",
    sign: "added:again",
    words: [
      /\b(?:added|topped|charged|put)\b.{0,40}\b(?:(?:second|third|fourth|fifth|2nd|3rd|4th|5th|\d+) times? (?:this|in|since)|every (?:month|few|summer|year|visit)|again (?:this|last))\b/,
      /\b(?:(?:second|third|fourth|fifth|2nd|3rd|4th|5th) time (?:this|in|since))\b.{0,40}\b(?:added|topped|charged|lb|pounds|kg)\b/,
    ],
    level: "watch",
    about: "system",
    says: "It was topped up again and again, as told: that is a leak until it is found; find it before more goes in",
    brief: "topped up again and again",
  },
  {
    check: "evacuation",
    sign: "evacuation:wet",
    words: [
      /\bwater\b.{0,16}\b(?:came|comes|coming|blew|ran|poured|dripped) out\b/,
      /\bvacuum (?:hangs|stalls|sticks|sits)\b.{0,12}\b[12]\d{3}\b.{0,50}\b(?:every|each) (?:time|pull)\b/,
      /\b(?:sat|left|stood|laid) open\b.{0,16}\b(?:in the )?(?:rain|weather|weeks|overnight|wet)\b/,
      /\b(?:pump )?oil\b.{0,16}\b(?:milky|cloudy|white)\b/,
    ],
    unless: /\bdrain\b|\bcondensate\b|\bp-?trap\b|\bwater heater\b/,
    beside: /\bvac|\bmicron|\bpump|\bevac|\bpurged|\bdecay|\bpull/,
    mended: /\bdrier|\bdryer/,
    level: "bad",
    about: "system",
    says: "Water in it, as told: nitrogen sweeps, fresh pump oil and a new drier, then a deep pull with a hold",
    brief: "water in it, as told",
  },
  {
    check: "compression",
    sign: "pump_down:fails",
    words: [
      /\b(?:valve plate|reeds?|discharge (?:valve|reed)s?|suction reeds?|comp\w* valves?)\b.{0,20}\b(?:broken|shot|leak\w*|bad|blown|cracked|worn|gone)\b/,
      /\b(?:broken|blown|worn|leaking|bad) (?:valve plate|reeds?|discharge reeds?|comp\w* valves?)\b/,
    ],
    unless: /\b(?:not|no|aren'?t) (?:broken|bad|leaking)/,
    mended: /\bcomp|\bvalve plate/,
    level: "bad",
    about: "compressor",
    says: "The compressor's valves are told leaking: prove it with a pump-down and with how fast both sides meet",
    brief: "compressor valves leak, as told",
  },
  {
    check: "compression",
    sign: "ratio:flat",
    words: [
      equalPressures,
      equalAhead,
      new RegExp(
        `\\b${bothSides}\\b[^.;]{0,40}\\b(?:while|when|with|and) (?:it|she|the \\w+)(?:'s| is)? (?:still )?run`,
      ),
      new RegExp(`\\b(?:runs|running|pumping)\\b[^.;]{0,40}\\b${bothSides}\\b`),
    ],
    unless:
      /\b(?:not|aren'?t|won'?t|isn'?t|never|un)(?: \w+)? ?(?:equal|even|running)|\boff\b|\bstopped\b|\bshut\b|\b(?:before|until|till) \w+ (?:runs?|starts?)/,
    mended: /\bhoses?\b|\bmanifold\b|\bgauges?\b|\bcores?\b|\bcomp/,
    level: "watch",
    about: "compressor",
    says: "Both gauges stand alike while it is told to run: before the compressor is blamed, are the manifold's valves shut, both cores pressed and the hoses on different ports? If so it pumps nothing: turns backward, passes inside, or a valve between both sides stands open",
    brief: "no lift while it runs, as told",
  },
  {
    check: "valve",
    sign: "reversing:picks_up",
    words: [
      /\b(?:stuck|hung|hangs|sitting)\b.{0,10}\b(?:mid(?:way)?(?: position| stroke)?|half ?way|in the middle|between)\b/,
    ],
    unless: /\bdamper\b|\bbranch\b|\bdisconnect\b/,
    beside: /\brevers|\b4.?way|\bheat\b|\bshift/,
    mended: /\brevers|\b4.?way|\bvalve\b/,
    level: "bad",
    about: "reversing valve",
    says: "The reversing valve is told to hang between its ends: coil voltage and pilot tubes, a few cycles against good pressure, then the valve",
    brief: "reversing valve hangs",
  },
];
