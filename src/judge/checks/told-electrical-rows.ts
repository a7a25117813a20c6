import type { ToldRow } from "./told-rows.ts";

const joint =
  "(?:lugs?|terminals?|wire ?nuts?|splices?|connections?|neutral|stabs?|spades?|screws?|crimps?|(?:harness )?pins?|connectors?)";
const bad =
  "(?:burn(?:t|ed)|melted|charred|black(?:ened)?|brown|cooked|toasted?|arc(?:ed|ing)|discolou?red|loose|corroded|green|hot|(?:push|back)ed out|half out|not seated|bubbled|brittle|spins|turns in)";
const gap = "\\W+(?:[\\w']+\\W+){0,6}?";
const stalled = "(?:stall\\w*|tripp?\\w*|popped|overload)";
const againstPressure =
  "(?:no (?:time )?delay|(?:against|into) (?:a |full |high )?(?:\\d{3} ?(?:psi)? ?)?head|[23]\\d\\d over \\d{2,3}|restart\\w* (?:right away|quick|too soon|at once)|third start in)";
const fine = "(?:good|fine|ok(?:ay)?|check out|checks? (?:out )?(?:good|fine|ok))";

/** The gist of a board that shows what the gauge does not. */
export const otherFigure = "the board sees another figure";

/** What the electrical checks hear in words alone. Source throughout: common practice, no source. */
export const electricalToldRows: readonly ToldRow[] = [
  {
    check: "supply",
    sign: "joint:burnt_connection",
    words: [
      new RegExp(`\\b${joint}${gap}${bad}\\b`),
      new RegExp(`\\b${bad} ${joint}\\b`),
      /\bwires?\b(?: \w+){0,5} (?:burn(?:t|ed)|melted|broke(?:n)?|fell|came) (?:off|in two|through)\b/,
      // "the black one's burnt off its stud"
      /\b(?:leads?|legs?|conductors?|cables?|one|black|red|blue|brown|yellow|orange)(?:'s|s| is| was| has)?(?: \w+)? (?:burn(?:t|ed)|melted|broke(?:n)?|fell|come|came|fallen) (?:right |clean )?off (?:of )?(?:its|the|his|a) (?:stud|terminal|lug|pin|post|screw|connector)/,
      new RegExp(
        `\\b${joint}.{0,40}\\b(?:1[4-9]|[2-4]\\d)\\d ?f?\\b.{0,24}\\b(?:others?|neighbou?rs?|rest)\\b`,
      ),
      /\b(?:screws?|lugs?|bolts?|terminals?|nuts?)\b.{0,16}\b(?:took|turned|went|moved|snugged|needed|gave)\b.{0,12}\b(?:full|half|whole|quarter|good|1\/[248]|[34]\/4|two|three|couple(?: of)?|few) turns?\b/,
      /\b[1-9]\d*(?:\.\d+)? ?v(?:olts?)? (?:drop|lost)\b.{0,30}\b(?:lug|wire|joint|splice|terminal|connection)/,
      /\b(?:lug|wire|joint|splice|terminal|connection)s?\b.{0,24}\bdrops? [1-9]\d*(?:\.\d+)? ?v/,
    ],
    unless:
      /\b(?:no|not|nothing|none|clean)\b.{0,24}(?:loose|burn|hot)|smell|tighten|too hot to|hot (?:day|shell|compressor)|points|contacts? (?:are|is) (?:burn|black)|flare|braz|\bleak|\boil\b|schrader|duct|hot gas|fitting/,
    notBeside:
      /\bcomms?\b|communicat|\bpair\b|\b(?:units?|heads?|indoors?|fan coils?) ?\d+\b.{0,12}\b(?:drops? (?:off|out)|goes? off ?line|disappears?)\b/,
    mended: new RegExp(`\\b${joint}\\b`),
    level: "bad",
    about: "connection",
    says: "A burnt or loose joint: it loses volts under load and cooks what it feeds",
    brief: "a burnt or loose joint",
  },
  {
    check: "supply",
    sign: "protection:upstream_fuse_open",
    words: [
      /\b(?:l ?[123]|[abc]|(?:leg|phase|line) \w|[abc] (?:phase|leg)|main|line|disconnect) fuse\b.{0,16}\b(?:ol|open|blown|no continuity|infinite)\b/,
      /\bfuse (?:on |in |of )?(?:the )?(?:l ?[123]|[abc]|(?:leg|phase) \w)\b.{0,16}\b(?:ol|open|blown|no continuity|infinite)\b/,
    ],
    unless: /\b(?:not|n'?t|none) (?:open|blown)|control|24 ?v|board/,
    mended: /\bfuses?\b/,
    level: "bad",
    about: "supply",
    says: "The fuse of one line is open, as told: that line is lost there. Why it opened comes before a new one",
    brief: "a line fuse is open",
  },
  {
    check: "insulation",
    sign: "insulation:leads_disagree",
    words: [
      /\bone (?:lead|leg|phase|pin|terminal)\b.{0,30}\bmegs?\b.{0,40}\bothers?\b/,
      /\bone (?:lead|leg|phase|pin|terminal) megs?\b.{0,40}\bother/,
    ],
    level: "watch",
    about: "compressor",
    says: "One lead differs from the others, but joined leads must agree: doubt the measurement first, ground the winding, clean the terminals and repeat",
    brief: "the leads differ and must agree, repeat the test",
  },
  {
    check: "bridge",
    sign: "bridge:output_sound",
    words: [
      new RegExp(`\\b(?:diodes?|ipm|power module|output stage|bridge)\\b${gap}${fine}\\b`),
      /\bdiode (?:test|check)s? (?:good|fine|ok|passed)\b/,
    ],
    unless: /\b(?:not|isn'?t|aren'?t|except|but one)\b/,
    level: "good",
    about: "drive output stage",
    says: "The diodes were told good: that clears diodes and shorted transistors only",
    brief: "told good",
  },
  {
    check: "capacitor",
    sign: "capacitor:open",
    words: [
      /\b(?:ol|open|shorted|dead short|zero|0)\b.{0,10}\b(?:on|across) the (?:run |start |dual |fan |herm )?cap(?:acitor)?\b/,
      /\b(?:run |start |dual |fan |herm )cap(?:acitor)?\b.{0,12}\b(?:is |reads |shows |tests )(?:ol|open|shorted|dead|nothing|zero)\b/,
    ],
    unless: /\bn'?t (?:open|shorted)|\bnot (?:open|shorted)|\bcap tube\b/,
    mended: /\bcap/,
    level: "bad",
    about: "capacitor",
    says: "The capacitor is told open or shorted: bled first, leads off, its microfarads against its label",
    brief: "capacitor open or shorted, as told",
  },
  {
    check: "capacitor",
    sign: "capacitor:good",
    words: [
      new RegExp(
        `\\b(?:run |start |dual |herm |fan )?cap(?:acitor)?s?\\b${gap}(?:is |are |tests? |checks? |reads? )?${fine}\\b`,
      ),
    ],
    unless: /\b(?:not|isn'?t|aren'?t|bad|weak|swollen|bulg|low)\b/,
    level: "good",
    about: "capacitor",
    says: "The capacitor was told good",
    brief: "told good",
  },
  {
    check: "start_current",
    sign: "liquid:crankcase_heater_off",
    words: [
      /\bno (?:power|voltage|volts|heat) (?:to|at|on|from) the (?:\w+ )?heater\b/,
      /\b(?:crankcase |belly |sump )?heater\b.{0,16}\b(?:without (?:power|volts)|breaker (?:was |is )?off|never (?:on|powered)|had no power|not powered|was killed)\b/,
      /\b(?:crankcase|belly|sump|case) heater\b.{0,30}\b(?:ol|open|dead|cold|0(?:\.0)? ?a(?:mps)?|zero amps|(?:draw|pull|tak)(?:s|ing|es)? (?:nothing|no (?:amps|current))|(?:isn'?t|not) (?:drawing|pulling|taking)|burnt|burned|disconnected|unplugged|bad|failed|not working|no (?:heat|power|voltage)|isn'?t (?:on|warm)|was off|is off)\b/,
    ],
    mended: /\bheater\b/,
    level: "watch",
    about: "compressor",
    says: "The crankcase heater does not heat: refrigerant gathers in the oil and the next start is a flooded one",
    brief: "crankcase heater dead",
  },
  {
    check: "start_current",
    sign: "liquid:liquid_in_shell",
    words: [
      /\b(?:glass|oil)\b.{0,24}\b(?:sump|shell|crankcase|comp\w*|glass|level)\b.{0,20}\b(?:over (?:the )?top|over full|full|to the top|way (?:up|high|over)|boil\w*|foam\w*|(?:all )?froth\w*|suds\w*)\b/,
      /\b(?:bang(?:ed|s|ing)?|knock(?:ed|s|ing)?|slugg(?:ed|s|ing)?|hammer(?:ed|s|ing)?|clatter\w*)\b.{0,30}\b(?:on (?:the )?(?:first |cold )?start|first start|start-?up|like a hammer|cold start|when it started|liquid)\b/,
      // "it came on hammering like a diesel for ten seconds then smoothed out"
      /\b(?:came on|comes on|fired up|lit off|starts? up|started|starts|took off)\b.{0,24}\b(?:bang\w*|knock\w*|slugg\w*|hammer\w*|clatter\w*|rattl\w*)\b.{0,50}\b(?:then|before it|and)\b.{0,12}\b(?:smooth\w*|quiet\w*|settled|cleared|ran (?:fine|ok|smooth))\b/,
      /\b(?:first start|cold start|start-?up)\b.{0,20}\b(?:bang(?:ed|s|ing)?|knock(?:ed|s|ing)?|slugg(?:ed|s|ing)?|hammer(?:ed|s|ing)?|clatter\w*|rattl\w*)\b/,
    ],
    unless: /\boil return|\bsight ?glass (?:is )?(?:clear|full)\b|\bliquid line\b/,
    level: "bad",
    about: "compressor",
    says: "Liquid in the shell, as told: it starts against liquid, not against a stuck rotor, until the heater has boiled it out for hours",
    brief: "liquid in the shell, as told",
  },
  {
    check: "start_current",
    sign: "start:locked_once",
    words: [
      /\b(?:both (?:sides|gauges|pressures)?|equal(?:i[sz]ed)?|pressures? (?:are |were |got )?(?:even|level))\b.{0,40}\b(?:started|fired|takes? (?:right )?off|took (?:right )?off|caught|came right up|starts (?:right|fine|ok|easy|every))\b/,
      /\b(?:second|third|2nd|3rd|next|later) (?:try|start|go|attempt)\b.{0,60}\b(?:normal\w*|fine|clean\w*|starts|started|took off|went off|caught|ok|came right up|no problem)\b/,
      /\b(?:first|cold) (?:start|try)\b.{0,40}\b(?:second|third|2nd|3rd|next|later)\b.{0,24}\b(?:try|tries|start|time|goes|runs|catches)\b/,
    ],
    unless:
      /\b(?:won'?t|wont|never|still|not|does(?:n'?t| not)|did(?:n'?t| not))\b.{0,12}\b(?:start|fire|take|hum|trip|go)/,
    level: "watch",
    about: "compressor",
    says: "It stalls on the first try and goes on a later one: not seized, look at what the first try meets",
    brief: "stalls first, starts later",
  },
  {
    check: "contactor",
    sign: "contacts:contactor_not_pulling_in",
    words: [
      /\bcoil\b.{0,30}\b(?:nothing (?:moves|happens)|no movement)\b/,
      /\bpush(?:ed|ing|es)? (?:it |the contactor |the plunger )?in by hand\b.{0,24}\bruns?\b/,
      /\bcoil\b.{0,24}\b(?:only |just )?(?:buzz\w*|chatter\w*)\b/,
      /\b(?:contactor|plunger)\b.{0,30}\b(?:won'?t|does ?n'?t|did ?n'?t|not|never|fails to)\s(?:\w+\s)?(?:pull|clos|engag|com(?:e|ing) in|mak)/,
    ],
    unless: /\bno (?:call|24|voltage)|0(?:\.0)? ?v/,
    mended: /\bcontactor\b/,
    level: "watch",
    about: "contactor",
    says: "The contactor does not pull in: the voltage at its coil tells coil and plunger from control",
    brief: "does not pull in",
  },
  {
    check: "bridge",
    sign: "unplugged:drive_faults_without_motor",
    words: [
      /\b(?:no motor|(?:motor|comp(?:ressor)?|leads?) (?:is |are )?(?:off|unplugged|lifted|disconnected|out)|nothing (?:hooked|connected|on it))\b.{0,40}\b(?:still |even )?(?:throws?|faults?|trips?|alarms?|codes?)\b/,
      /\b(?:throws?|faults?|trips?|alarms?|codes?)\b.{0,24}\bwith (?:the )?(?:motor|comp(?:ressor)?|leads) (?:off|out|unplugged|lifted|disconnected)\b/,
      /\bnothing (?:plugged|hooked|wired|connected|landed)\b.{0,30}\b(?:throws?|faults?|trips?|alarms?|codes?)\b/,
      /\b(?:throws?|faults?|trips?|alarms?|codes?)\b.{0,30}\bnothing (?:plugged|hooked|wired|connected|landed)\b/,
    ],
    unless:
      /\b(?:no|without a?|any|n'?t|not) (?:fault|code|alarm|trip)|runs (?:clean|fine)|balanced|equal|\b(?:breaker|fuse)\b/,
    mended: /\b(?:module|drive|ipm)\b/,
    level: "bad",
    about: "drive output stage",
    says: "It faults with no motor on it: the drive, not the compressor",
    brief: "faults without the motor",
  },
  {
    check: "bridge",
    sign: "output:balanced",
    words: [
      /\b(?:comp(?:ressor)? ?\w*|sister(?: comp\w*)?|other (?:one|comp\w*))\b.{0,8} on (?:this|that|the same|its) (?:drive|inverter)\b.{0,30}\b(?:ramp|ran|runs|run|fine|good|start|went|took)/,
    ],
    unless: /\b(?:same|also|still) (?:fault|trip|alarm)/,
    level: "good",
    about: "drive output stage",
    says: "Another compressor runs on this drive, as told: that clears the drive",
    brief: "drive runs another compressor",
  },
  {
    check: "sensor",
    sign: "sensor:open",
    words: [
      /\b(?:sensor|thermistor|probe|transducer)\b.{0,16}\b(?:unplugged|open(?:ed)?|shorted|broken|failed|bad|corroded|fell (?:off|out)|wire (?:off|broken))\b/,
    ],
    unless:
      /\b(?:not|isn'?t|n'?t) (?:open|bad|shorted|unplugged)|checks? (?:good|fine|ok)|\bdefrost (?:sensor|thermistor|probe)/,
    mended: /\b(?:sensor|thermistor|probe|transducer)\b/,
    level: "bad",
    about: "sensor",
    says: "The sensor was told open, shorted or off: measure it at its plug against your own table",
    brief: "sensor open, shorted or off",
  },
  {
    check: "sensor",
    sign: "sensor:off",
    words: [
      /\b(?:sensor|probe|thermistor)\b.{0,12}\b(?:says|reads|shows|stuck at)\b.{0,30}\b(?:(?:my |the )?(?:gauges?|meter|thermometer|stick)\b.{0,10}\b(?:says?|reads?|shows?)|line is|pipe is|it'?s \d+|actual)\b/,
      /\b(?:sensor|probe|thermistor)\b.{0,8}\bon (?:the )?(?:screen|board|display|controller)\b.{0,40}\b(?:clamp|meter|gauges?|thermometer|probe)\b.{0,24}\b(?:says?|reads?|shows?)\b/,
      /\b(?:board|controller|display|screen|transducer)\b.{0,8}\b(?:says|reads|shows|thinks|sees)\b.{0,40}\b(?:my|the|actual|real) (?:own )?(?:gauges?|meter|probe|thermometer|stick)\b.{0,16}(?:\b(?:says?|reads?|shows?|has|have|got|at)\b|\b\d)/,
      /\b(?:my|actual|real) (?:own )?(?:gauges?|meter|probe|thermometer|stick)\b.{0,30}\b(?:board|controller|display|screen|transducer)\b.{0,8}\b(?:says|reads|shows|thinks|sees)\b/,
      /\bsignal\b.{0,24}\b(?:does ?n'?t|never|won'?t|not) (?:move|change|budge)|\b(?:signal|reading)\b.{0,12}\b(?:stuck|frozen|pegged)\b/,
      /\b(?:swap\w*|trad\w*|switch\w*)\b.{0,40}\b(?:sensor|transducer|thermistor|probe|high side one|low side one)\b.{0,24}\b(?:reading )?(?:comes? (?:alive|back|good)|follows?|moves? with|goes? with|reads? right)\b/,
    ],
    unless: /\b(?:agrees?|same (?:as|on|reading|number|thing)|matches|too|also)\b(?! port)/,
    mended: /\b(?:sensor|thermistor|probe|transducer)\b/,
    level: "bad",
    about: "sensor",
    says: "The board sees another figure than your own gauge: the sensor, its plug or the board's input, before anything that the board concludes from it",
    brief: otherFigure,
  },
  {
    check: "start_current",
    sign: "start_pressures:pressures_unequal",
    words: [
      new RegExp(`\\b${stalled}\\b.{0,80}\\b${againstPressure}`),
      new RegExp(`\\b${againstPressure}\\b.{0,80}\\b${stalled}`),
      new RegExp(
        `\\b(?:comes? (?:right )?back|restarts?|kicks? back|tries again|back on|bumping the (?:stat|thermostat))\\b.{0,60}\\b(?:hums?|${stalled})\\b.{0,80}\\b(?:\\d{2,3}|head)\\b`,
      ),
    ],
    unless: /\bequal(?:ized)?\b.{0,20}\b(?:first|before)\b/,
    level: "watch",
    about: "compressor",
    says: "It tried against unequal pressures: a motor that starts freely once they are level is not seized",
    brief: "tried against pressure",
  },
  {
    check: "start_current",
    sign: "start_pressures:pressures_unequal",
    words: [
      // "gauges haven't come together, 118 and 330", "sides still way apart"
      /\b(?:gauges|pressures|sides|needles)\b.{0,10}\b(?:have ?n'?t|had ?n'?t|did ?n'?t|have not|not|yet to)\b.{0,14}\b(?:come (?:together|level)|met|meet|equal\w*|bled|level\w*|settled|even(?:ed)?)\b/,
      /\b(?:gauges|pressures|sides|needles)\b.{0,10}\bstill (?:far |way |wide |well )?(?:apart|split|spread)\b/,
    ],
    beside:
      /\b(?:hums?|groans?|buzz\w*|stalls?|trips?|kicks?|locks?|drops? (?:off|out)|won'?t start|quits)\b/,
    unless: /\b(?:while|when|with) (?:it|she|the \w+)(?:'s| is)? run/,
    level: "watch",
    about: "compressor",
    says: "It tried against unequal pressures: a motor that starts freely once they are level is not seized",
    brief: "tried against pressure",
  },
];
