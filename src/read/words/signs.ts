import { actionWords } from "./actions.ts";
import { errandWords } from "./errands.ts";

const undoVerbs =
  "undo|scratch|delete|strike|disregard|ignore|scrap|kill|cancel|forget|remove|erase|wipe|toss|nix|void|drop|throw out|take back|take out|back out|ditch|trash|lose|dump|kill off|get rid of|pull|pls delete|omit|retract";
const undoObjects =
  "that last one|the last one|my last one|last one|that last|the last|my last|that last entry|the last entry|my last entry|last entry|that entry|that last reading|the last reading|my last reading|last reading|that reading|the previous one|my previous one|previous one|that last message|the last message|my last message|last message|that message|that last number|the last number|my last number|that number|that last note|my last note|the last note|last note|this one|that one|what i just sent|what i just said|what i sent";
const undoPhrases = undoVerbs
  .split("|")
  .flatMap((verb) => undoObjects.split("|").map((object) => `${verb} ${object}`))
  .join("|");

/** "heading up to the chapel", "driving back over to the school" */
const upTo = ["heading", "headed", "headin", "driving", "rolling", "off", "going back", "im going"]
  .flatMap((go) =>
    ["up", "down", "over", "across", "back up", "back down", "back over", "on up", "on over"].map(
      (way) => `${go} ${way} to`,
    ),
  )
  // "rolling up to the building" has come
  .filter((words) => words !== "rolling up to")
  .join("|");

/** Words that statements are made of: each row is one sign, the rules look for its name. */
export const signWords: readonly (readonly [words: string, sign: string])[] = [
  // status
  [
    `${upTo}|omw|otw|off to|head that way|headin that way|head your way|fixing to head|fixin to head|about to head over|headin to|headin over|on my way|on the way|onmyway|en route|enroute|heading over|heading to|heading there|heading there now|headed there|headed there now|heading out to|headed to|headed over|heading for|headed for|rolling|rolling to|on the road|driving over|driving to|eta|im about|be there in|be there at|be there|be there around|should be there|will be there|heading back to|headed back to|going over to|swinging by|minutes out|minutes away|min out|min away|mins out|mins away|minute out|on route|leaving the shop|leaving shop|left the shop|leaving for|headed out to|heading out|heading now|headed your way|headed that way|heading that way|oming|omw to|rolling out|rolling now|on our way|getting back on the road|drive now to|driving now to|am drive|im driving to|i am driving to|i drive now to|on the move to|driving now|driving there|driving up|im driving|im heading`,
    "on_the_way",
  ],
  [
    "we are on the roof|we on the roof|we up here|we are up here|we here|we are here|we both here|im up here|time in|clocking in|clocked in|clock in|punched in|punching in|got up on the roof|im up on the roof|i am up on the roof|made it up on the roof|made it to the roof|on roof now|on site|on ste|on siet|onsite|reached at site|reached site|reached the site|i am reached|on the object|i am arrive|i arrive|i am arrived|im at the|i am at the|on-site|just pulled up|pulled up|got outta the truck|got out of the truck|getting out of the truck|hopped out of the truck|out of the truck now|pulled in|pulling in|pulling up|arrived|arriving|got here|got there|arrived there|im here|just got here|here now|here at|im on site|made it|just got through the gate|got through the gate|at the site|on location|just arrived|checked in|checking in|at the job|signed in|just showed up at|on the roof now|just got to|got to the|showed up at|rolled up|just rolled up|rolling up|rolling up to|rolling up on|just parked|on property|were here|walked in|walking in|weve arrived|made it to|landed at|just landed|on sight|back on site|back at|got on site|im on the roof|just walked in|just got in|just rolled in|got in at|here since|at the customer|got to|reporting on site|there now|im there now|here already|up on the roof now|on roof now",
    "on_site",
  ],
  [
    `${errandWords}|left site|lft site|lft job|lft the site|lft the job|have to go|gotta go|got to go|gotta run|have to run|have to leave|gotta leave|punched out|punching out|clock out|lv site|lv job|lvg|lvg now|lving|lvng|lvg site|leavng|we are leaving|were leaving for|i am leaving|clocking out|clocking out of|away from site|away from the site|off the premises|leaving the premises|left the premises|left the site|leaving site|leaving the site|leaving the job|took off from|took off|got out|got out of|got out of there|heading home|headed home|off home|going home|calling it a day|calling it a night|packing it in|knocking off for|knocking off now|off site|departed|offsite|out of here|outta here|leaving now|leaving|just left|left at|left the job|clear of|clearing the site|clearing out|rolling off|locked up and gone|pulling out|pulling out of|pulled out of|pulled out of the lot|pulling away|cleared out|gone for the day|gone for today|going for today|going for the day|im off for today|im off for the day|thats it for today|thats it for the day|thats me for today|thats me for the day|thats all for today|heading out for the day|headed out for the day|heading out for today|headed out for today|heading out for tonight|heading back to the shop|headed back to the shop|headed out|i left|ive left|clocked out|off the roof|signing out|signed out|im out|were out|im gone|im leaving|packing up and leaving|out of there|left there|head out|rolling out of here|pulled off site|pulling off|bailed|gone by|off the job|off the site|left around|left about|headed to lunch|heading to lunch|leaving for lunch|going to lunch|out to lunch|breaking for lunch|gone to lunch|off to lunch|walked off|out the door|out the gate|drove off|pulled away|leavin|leavin now|lockd up n leavin|locked up and leaving|locked up n leaving|i leave now|i leave from|i leave the|leave now from|we leave now|i go now from`,
    "left_site",
  ],
  [
    "waiting for parts|wtg on|wtg for|wtng on|waitg on|waiting on parts|waiting on a part|waiting for a part|waiting on the part|waiting for the part|wait for parts|parts on order|waiting on part|need to wait for parts|on hold for parts|pending parts|waiting on the board|waiting on a board|waiting on a compressor|waiting on the compressor|awaiting parts|held for parts|parts hold|part is on order|waiting for a compressor|waiting on a motor|on hold till the part|waiting on delivery|parts are on order|waiting on the motor|down waiting on|down until the part|wait on parts|waiting on|waiting for|gotta wait on|got to wait on|have to wait on|has to wait on|have to wait for|has to wait for|must wait for|must wait on|gotta wait for|got to wait for|need to wait for|having to wait on|need to wait on|gonna wait on|wait on a|wait on the|wait on that|still waiting on|still waiting for|waitin on|waitin for|waiting on those|waitn on",
    "waiting_for_parts",
  ],
  [
    "no access|nobody is here to let|no one is here to let|nobody here to let|cant go inside|cannot go inside|can not go inside|cannot enter|can not enter|gives me the key|nobody gives me the key|cant get in|couldnt get in|locked gate|no one here to let|nobody here to let|no one to let|gate is chained|nobody home|cant get access|no one home|wont let me in|locked out of the building|no key|nobody answered|no answer at the door|no answer at door|no answer at the gate|no answer at gate|couldnt get access|nobody to let me in|place is locked up|building is locked|doors are locked|no one answering|refused access|wouldnt let me in|cant access|could not get in|no entry|no escort|nobody answering|site is closed|they wont let me|cant get on the roof|no roof access|cannot get in|not able to get in|nobody on site|no one on site|nobody around to let|no one there|nobody there to open|unable to access|unable to get in|denied access|couldnt get on the roof|nobody here|no one here|gate chained|gate locked|gates locked|gate was locked|gate was chained|nobodys here|noones here|nobody let me up|nobody let me in|nobody would let me|badge only|need a badge|wont let us in|turned me away|no badge|keypad wont take",
    "no_access",
  ],
  [
    "done|finished|finished up|wrapped up|all done|complete|completed|job complete|jobs done|all set|buttoned up|wrapping up|job done|thats a wrap|all buttoned up|finished here|finishing up|finished at|knocked out|job finished|jobs finished|closed out|call complete|good to go|im done|were done|packed up|all wrapped up|fixed and running|calling it done|call done|wrapped it up|call is complete|job is complete|finito|call closed|done here|done at|done deal|calling it",
    "done",
  ],
  ["ago", "ago"],
  ["here|hre|heer|herre", "here"],
  // undo
  [
    `undo|and the one before|and the one before that|the one before too|the one before that too|also the one before|scratch that|scratch that last|delete that|strike that|never mind|nevermind|disregard|disregard that|ignore that|scratch the last|take that back|take back|take that out|remove that|cancel that|forget that|scratch last|delete last|remove last|undo that|wipe that|erase that|scrap that|kill that last|take that one out|take that last|throw that out|toss that|delete the last|drop that|drop the last|back that out|scratch it|take the last|void that|remove the last|cancel the last|forget the last|nix that|ignore the last|ignore my last|strike the last|dont log that|dont record that|scratch all that|pull that last|lose that last|undo last|strike last|delete my last|remove my last|scratch my last|cancel last|erase the last|wipe the last|take it back|take it out|dump that last|get rid of that|${undoPhrases}`,
    "undo",
  ],
  // parts of the machine
  ["compressor|comp|compressors|comps|cmp|scroll|scrolls|recip|hermetic", "compressor"],
  ["fan|fans|blower|blower motor|fan motor|fan motors|inducer|indoor blower|blowers", "fan"],
  [
    "condenser fan|cond fan|outdoor fan|od fan|condenser fans|cond fans|outdoor fan motor|condenser fan motor|cond fan motor|outdoor fans|odf|cond fan 2|cond fan 1",
    "outdoor_fan",
  ],
  [
    "evap fan|evaporator fan|indoor fan|id fan|supply fan|evap fans|evaporator fans|blower|blower motor|indoor fan motor|evap fan motor|evaporator fan motor|indoor blower|idf",
    "indoor_fan",
  ],
  [
    "coil|coils|fins|condenser|cond|cond coil|condenser coil|outdoor coil|outside coil|condenser coils|outdoor coils|outside coils|od coil|condensers",
    "coil",
  ],
  [
    "evap coil|evaporator coil|indoor coil|evaporator|evap|a coil|cooling coil|id coil|evap coils",
    "indoor_coil",
  ],
  [
    "outdoor coil|outside coil|outside coils|coil outside|od coil|outdoor unit coil|outdoor coils|condenser coil|cond coil|condenser",
    "outdoor_coil",
  ],
  ["filter|filters|fltr|air filter|air filters|return filter", "filter"],
  [
    "oil filter|oil filters|filter drier|filter driers|filter dryer|suction filter|suction line filter|liquid line filter|fuel filter|gas filter|water filter",
    "pipe_filter",
  ],
  ["belt|belts", "belt"],
  ["contactor|contactors|contacts|points|plunger|contactor coil|contact", "contactor"],
  [
    "cap|capacitor|caps|run cap|start cap|capacitors|can|dual cap|herm cap|fan cap|the can",
    "capacitor",
  ],
  ["transformer|xfmr|trans|control transformer|trafo|control trans", "transformer"],
  [
    "phase monitor|phase protector|phase loss relay|phase loss monitor|phase relay|monitor",
    "monitor",
  ],
  [
    "board|boards|main board|control board|inverter board|bd|pcb|module|circuit board|controller board|ipm",
    "board",
  ],
  ["drive|inverter|vfd|vsd", "drive"],
  [
    "communication|comm|comms|communications|comm wire|comm line|network|comm pair|answer",
    "communication",
  ],
  ["breaker|breakers|brkr|bkr|main breaker|disconnect breaker|main", "breaker"],
  ["fuse|fuses|cutout|fused", "fuse"],
  [
    "cutout|pole transformer|pad transformer|utility transformer|pole fuse|main lug|utility fuse|feeder|utility|main fuse",
    "upstream",
  ],
  [
    "terminal|terminals|lug|lugs|wire|wires|connector|connection|connections|plug|spade|wiring|neutral|screw|screws|terminal block|peckerhead|pigtail|conductor|joint|pole|block|stab|spades",
    "joint",
  ],
  ["display|stat|thermostat|controller|screen|remote|keypad|tstat|wall controller", "display"],
  ["oil|oily|oil stain", "oil"],
  [
    "moisture eye|sight glass|sightglass|glass|site glass|sight glasses|siteglass|moisture indicator|indicator",
    "sight_glass",
  ],
  [
    "suction line|suction pipe|suct line|suction|big line|suction stub|vapor line|suct|sl",
    "suction_line",
  ],
  [
    "drier|dryer|filter drier|txv|valve|solenoid|distributor|strainer|metering device|expansion valve|liquid line|liq line|orifice|piston|liquid solenoid|liquid line solenoid|king valve",
    "restriction",
  ],
  [
    "valve|txv|eev|exv|expansion valve|lev|solenoid valve|electronic valve|tx valve|metering device|pmv|branch valve|solenoid",
    "valve",
  ],
  [
    "reversing valve|rv|four way valve|4 way valve|four way|changeover valve|rev valve",
    "reversing_valve",
  ],
  ["bulb|sensing bulb|txv bulb|bulbs", "bulb"],
  [
    "crankcase heater|cch|crank case heater|crankcase htr|belly band|sump heater|cc heater|crankcase heaters|crankcase",
    "crankcase_heater",
  ],
  ["shell|dome|comp body|compressor body|can|housing|casing|head", "shell"],
  ["sensor|thermistor|probe|transducer|sensors|thermistors|rtd", "sensor"],
  ["windings|winding|ohms|pairs|wdg|wdgs", "windings"],
  ["cable|wire|conductor|comm wire|wiring|thermostat wire|line cord|whip", "cable"],
  ["pressures|pressure|gauges|both sides|both gauges|sides", "pressures"],
  [
    "safety|high pressure switch|low pressure switch|hp switch|lp switch|limit|limit switch|float|float switch|door switch|freeze stat|freezestat|hps|lps|high pressure cutout|pressure switch|hpco|rollout|high pressure|low pressure|overload relay|lo pressure|lo press|low press|hi pressure|hi press|high press|high head|oil safety|oil failure",
    "safety",
  ],
  ["defrost|defrosts|defrosting|deice", "defrost"],
  ["output|outputs|output voltage|drive output|inverter output|drive outputs", "output"],
  ["lights|light", "lights"],
  [
    "leads off|leads lifted|leads hanging|leads dangling|leads loose|leads are off|motor disconnected|motor leads off|nothing hooked to the output|nothing hooked up|output open|no motor|comp plug off|compressor unplugged|comp unplugged|motor unhooked|unhooked the motor|compressor leads off|with the leads off|motor wires off|wires off the compressor|nothing connected|leads removed|without the motor|without motor|no load on the output|unhooked the compressor|compressor disconnected|comp disconnected|comp leads off|plug off|leads pulled|nothing on the output|compressor off the drive|with nothing hooked to it|with the compressor unplugged|with the comp plug off|with the motor off|with the motor unplugged|motor unplugged|motor is unplugged|with motor unplugged|with it unplugged from the motor|leads unplugged|motor plug off|with the plug off|nothing hooked on|with nothing hooked on|nothing hooked to it|with nothing on it|nothing wired to it|nothing landed on it|motor wires pulled|motor wires pulled off|comp wires pulled|motor wires unlanded",
    "no_motor",
  ],
  // what they do
  ["hums|humming|hum|buzzes|buzzing|growls|growling|hummed|buzz|groans|groaning", "hums"],
  [
    "wont start|doesnt start|will not start|does not start|refuses to start|not starting|wont run|doesnt run|not running|wont kick on|wont come on|does nothing|wont fire|isnt running|wont try|never starts|never gets going|isnt starting|not coming on|wont kick in|fails to start|failed to start|no start|wont go|didnt start|just sits there|wont even try|cant start|couldnt start|not kicking on|wont spin|not kicking in",
    "no_start",
  ],
  ["dead short|direct short|dead shorted|dead to ground", "dead_short"],
  [
    "dead|died|kaput|toast|shot|lifeless|not working|nothing happens|quit|wont power up|dark|no lights|wont light|wont turn on|inoperative",
    "dead",
  ],
  ["blank|dark|black screen|no display|wont light up", "blank"],
  [
    "trips|tripped|tripping|kicks out|cuts out|drops out|locks out|kicked out|cut out|kicking out|trip|cutting out|drops off|drops offline|shuts down|trips out|tripped out|lets go|let go|takes out|goes out on|opens up|pops|popped|kicks off|clicks off|out on|quits|shuts off|shut down|drop out|faults out",
    "trips",
  ],
  [
    "overload|overloads|on ol|internal overload|on its internal|thermal overload|internal|on thermal|thermal|on overload|ol|klixon|internal protector",
    "overload",
  ],
  [
    "blows|blew|blown|blowing fuses|popped|pops|burnt open|bad|open|cooked|eats fuses|eating fuses|blowing",
    "blown",
  ],
  [
    "kicks|bumps|jerks|nudges|jolts|tries|grunts|kick|bump|kicks once|tries to start|thumps|bumped|kicked|makes three tries|tries",
    "kicks",
  ],
  [
    "no movement|sits still|sitting still|stands still|just sits there|wont turn|not turning|doesnt turn|wont spin|doesnt spin|not spinning|isnt turning|isnt spinning|never turns|wont rotate|no rotation|not moving|doesnt move|wont budge|no motion|wont move|doesnt even shiver|never moves|didnt move|does not turn|will not turn|not rotating|isnt moving|stopped|seized|locked|stuck|arent turning|arent spinning|not running|isnt running|wont run|not coming on|aint turning|stalled|froze up|locked up|doesnt rotate|seized up|never turned|wont kick on|isnt on|doesnt run|wont start",
    "not_turning",
  ],
  ["turning|spinning|spins|turns|running|run|runs|rotating|on|turn|full speed|going", "turning"],
  [
    "short cycles|short cycling|short cycled|short cycle|cycling on and off|cycling off and on|cycles every|cycling every|rapid cycling|on and off every|cycles on and off|shortcycling|cycles off after|kicks on and off",
    "short_cycles",
  ],
  [
    "backwards|backward|reverse rotation|wrong rotation|wrong way|running in reverse|wrong direction|rotating backwards|reversed rotation|spinning backwards",
    "backward",
  ],
  [
    "noisy|loud|rattles|rattling|knocking|knocks|grinding|screeching|screeches|squealing|squeals|banging|bangs|clanking|clatter|racket|clunking|making noise|whining|rumbling|screaming|chirping|sounds rough|rough|rock crusher|hammering|clicking|sounds awful|sounds bad|metallic|noise|sounding rough|ticking|thumping",
    "noisy",
  ],
  ["vibrates|vibrating|vibration|shaking|shakes|vibrate|wobbling|wobbles", "vibrates"],
  [
    "hot|burning hot|too hot to touch|too hot to leave a hand on|scorching|too hot|real hot|runs hot|running hot|super hot|smoking hot|red hot",
    "hot",
  ],
  [
    "cold|ice cold|stone cold|sweating|cool to the touch|cool|cold as the weather|sweating cold",
    "cold",
  ],
  [
    "runs fine|ramps up fine|ramps fine|ramps up good|running fine|running normal|runs good|running good|running smooth|runs normally|running well|runs great|running great|running like a top|smooth and quiet|runs normal|running normally|runs smooth|started like nothing|running perfect|started right up|running clean|runs quiet|started fine|starts fine|fired right up|runs well|purring|runs like new|starts and runs|running quiet|up and running|back up and running|running again|back running",
    "runs_well",
  ],
  [
    "runs all day|never shuts off|runs nonstop|running nonstop|wont shut off|runs constantly|running constantly|never cycles off|never satisfies|running all day|keeps right on running|wont turn off|never stops|wont stop|doesnt shut off|runs and runs|running all the time|runs all the time|runs continuously|running continuously|never cycles|wont cycle off|runs 24 7",
    "nonstop",
  ],
  [
    "came right back|comes right back|comes back|came back|returns|keeps coming back|wont reset|wont clear|back again|returned|reappears|right back|pops back up|came back up|comes up again|back on|wont stay cleared|came right up again",
    "returns",
  ],
  ["smell|smells|stinks|smelled|odor|smelling|stench|stink", "smell"],
  [
    "burnt|burned|burning|charred|melted|cooked|scorched|toasted|fried|burnt up|burned up|burnt off|smoked|blackened|brown|crispy|discolored|arced|arcing|burnt down|burn marks|smoke|singed|soot|burnt black",
    "burnt",
  ],
  [
    "loose|came loose|hanging loose|wiggles|loose as|backed out|not tight|barely tight|wasnt tight|was not tight|wobbly|falling off|broke off|fell off|floppy",
    "loose",
  ],
  [
    "hanging|off|swings free|fell off|not strapped|unstrapped|dangling|out of its well|not clamped|strap is broken|not attached|came off|popped out|pulled out|not insulated|broken strap|flopping|swinging",
    "hanging",
  ],
  [
    "water|wet|moisture|condensation|rusty|soaked|corroded|corrosion|puddle|drenched|rained in|full of water|rain",
    "water",
  ],
  [
    "inside|in the box|in the panel|in the disconnect|in the junction box|in the peckerhead|in the jbox|in the terminal box|in the control box|in the electrical|in the conduit|electrical box|terminal box|junction box|control box|disconnect box|jbox|j box|terminal cover",
    "box_inside",
  ],
  [
    "raining|rain|storm|wet out|pouring|raining sideways|snowing|in the rain|stormy|drizzle|wet roof|foggy|downpour",
    "weather",
  ],
  [
    "pitted|burnt points|worn|pitting|eroded|burnt|burned|carboned|rough|black points|burnt down|toasted|cooked",
    "pitted",
  ],
  [
    "welded|welded shut|stuck closed|stuck in|welded closed|stuck shut|fused shut|stuck|plunger out",
    "welded",
  ],
  ["chatters|chattering|chatter|clattering|machine gunning|fluttering|chattered", "chatters"],
  [
    "doesnt pull|wont pull in|not pulling in|doesnt pull in|wont pull|not pulled in|wont close|not closing|doesnt close|isnt pulling in|wont energize|not engaging|never pulls in|wont engage|didnt pull in|not energizing|isnt pulled in",
    "no_pull",
  ],
  [
    "pulls in|pulled in|pulling in|closes|engages|pulled in good|is in|pulls in fine|closed|energized",
    "pulls",
  ],
  [
    "bulged|blown open|blew open|burst|exploded|blown apart|bulged top|swollen|swelled|domed|leaking|puffed|bulging|popped|split|swelled up|ballooned|blown top|mushroomed|puffy|popped top|swelling|puffed up",
    "bulged",
  ],
  [
    "bad|failed|blown|no output|open primary|open|dead|toast|burnt|shot|cooked|fried|smoked|no voltage out|nothing out",
    "failed",
  ],
  [
    "suspect|suspected|bad|suspicious|faulty|acting up|pulls it down|dragging it down|pulling it down|shot|toast|i think its the|junk|dead|no lights|totally dark|wont boot|locked up|defective|failed|gone",
    "suspect",
  ],
  [
    "lost|no|fault|error|down|dropped|failure|failing|not talking|no answer|does not answer|doesnt answer|not communicating|no comm|offline|not answering|cant see|dropping|intermittent|say no answer|wont talk|not responding",
    "lost",
  ],
  [
    "no comm|link code|link error|link fault|link alarm|comm code|comms code|no communication|lost comm|lost communication|comm fault|comm error|communication error|communication fault|communication lost|comms down|not communicating|no answer|does not answer|doesnt answer|lost comms|comm loss|not talking|no comms|comm failure|say no answer|communication failure",
    "comm_lost",
  ],
  [
    "unplugged|unplug|disconnected|pulled the plug|isolated|unhooked|took it off the|removed it from|with it unplugged",
    "unplugged",
  ],
  [
    "came back|comes back|returns|recovers|recovered|came back to|came up|comes up|cleared up|clears|is back",
    "back",
  ],
  [
    "faults|fault|trips|alarm|alarms|faulted|faults out|trips out|tripped|faulting|throws a fault|goes into fault|overcurrent|same fault|still faults|same code|same alarm|ground fault|oc alarm|oc",
    "faults",
  ],
  [
    "no fault|no alarm|runs fine|no faults|equal phases|no code|runs clean|without a fault|without faulting|no trip|doesnt fault|3 equal phases|three equal phases|runs ok|no error|no errors|no alarms|doesnt trip|didnt fault|stays running|no codes|runs with no fault",
    "no_fault",
  ],
  [
    "start|starts|on start|at start|starting|startup|tries to start|ramps|the second it ramps|ramp|starts up|on startup|at startup|when it starts|start up|tries|the second it starts|call|at start up|on start up|soon as it starts|kicks once|kicks",
    "starting",
  ],
  [
    "single phase|single phasing|single phased|one phase|lost a leg|lost a phase|missing a leg|two phases|missing a phase|missing phase",
    "one_leg",
  ],
  ["dim|flicker|dimming|flickering|flickers|dims|brown out", "dim"],
  // refrigerant
  [
    "stain|stains|stained|residue|spot|spots|on|around|at|under|wet|sprayed|weeping|seeping|coming out|everywhere|oily|below|dripping|film|by|near",
    "stain",
  ],
  [
    "flare|flares|joint|stub|braze|fitting|fittings|schrader|core|coil|u bend|ubend|valve|service valve|evap|line|lines|condenser|elbow|weld|cap|return bend|header|connection|nut|lineset|distributor|stubs|ball valve|port|bend|union|tee|brazed joint|joints|valves|caps|cores|pan|accumulator|rub out|chafe|suction stub",
    "leak_place",
  ],
  ["leak|leaks|leaking|leaked|leaky|leaker|leaks out", "leak"],
  [
    "found|at the|at|on|in the|by|see|got a|there it is|found it|it is at|located|pinpointed|bubbling|bubbles|hissing|hit on|detector|sniffer|screams|went off|picked up|there is a|have a|on the",
    "found",
  ],
  [
    "no leak|no leaks|no bubbles|bubble free|leak free|no leaks found|no leak found|not leaking|no sign of a leak|tight as a drum|didnt find a leak|cant find a leak|cant find the leak|couldnt find a leak|no drop on the nitrogen|no drop|no leakage|dry as a bone|no hits|leak check passed|leak checks passed|leak check good|leak check ok|leak check clean|leak checked ok|leak checked good|leak check negative|passed the leak check|passed leak check|passed its leak check|detector found nothing|detector finds nothing|detector found no leak|detector picked up nothing|detector shows nothing|detector came up with nothing|electronic detector found nothing|electronic detector finds nothing|electronic detector found no leak|electronic detector picked up nothing|electronic detector shows nothing|electronic detector came up with nothing|sniffer found nothing|sniffer finds nothing|sniffer found no leak|sniffer picked up nothing|sniffer shows nothing|sniffer came up with nothing|leak detector found nothing|leak detector finds nothing|leak detector found no leak|leak detector picked up nothing|leak detector shows nothing|leak detector came up with nothing|soap found nothing|soap finds nothing|soap found no leak|soap picked up nothing|soap shows nothing|soap came up with nothing|bubbles found nothing|bubbles finds nothing|bubbles found no leak|bubbles picked up nothing|bubbles shows nothing|bubbles came up with nothing|leak search found nothing|leak search finds nothing|leak search found no leak|leak search picked up nothing|leak search shows nothing|leak search came up with nothing|uv found nothing|uv finds nothing|uv found no leak|uv picked up nothing|uv shows nothing|uv came up with nothing|dye found nothing|dye finds nothing|dye found no leak|dye picked up nothing|dye shows nothing|dye came up with nothing|no hits on the detector|no hits on the sniffer|sniffed it and found nothing|could not find a leak|cannot find a leak",
    "no_leak",
  ],
  ["tight", "tight"],
  [
    "lug|lugs|screw|screws|terminal|terminals|bolt|bolts|belt|belts|wire|wires|spades|set screw|strap",
    "screwed",
  ],
  ["bubbles|bubbling|foaming|soap bubbles|blowing bubbles|bubbled|blew bubbles", "bubbles"],
  [
    "flashing|bubbles|bubbling|foaming|foamy|still flashing|flashes|flash gas|bubbly|half|half full|milky|not solid|not clear|bubble|full of flash|full of bubbles|all bubbles|all flash|flash",
    "glass_bubbles",
  ],
  [
    "clear|full|solid|no bubbles|clear as|clean|cleared up|cleared|solid liquid|solid column",
    "glass_clear",
  ],
  ["yellow|wet|moisture|pink|caution", "glass_wet"],
  // the ice is off
  [
    "ice clear|ice cleared|ice gone|ice is gone|ice is clear|ice is off|ice off|ice melted|ice melted off|ice all melted|ice all gone|ice thawed|ice is melted|ice came off|ice fell off|ice cleared off|ice is all gone|ice has melted|frost clear|frost cleared|frost gone|frost is gone|frost is clear|frost is off|frost off|frost melted|frost melted off|frost all melted|frost all gone|frost thawed|frost is melted|frost came off|frost fell off|frost cleared off|frost is all gone|frost has melted|snow clear|snow cleared|snow gone|snow is gone|snow is clear|snow is off|snow off|snow melted|snow melted off|snow all melted|snow all gone|snow thawed|snow is melted|snow came off|snow fell off|snow cleared off|snow is all gone|snow has melted|clear of ice|clear of frost|clear of snow|cleared of ice|cleared of frost|cleared of snow|free of ice|free of frost|free of snow|no more ice|no more frost|no more snow|thawed out|all thawed|ice free|frost free",
    "ice_off",
  ],
  [
    "frost|frosted|frosting|ice|iced|icing|frozen|froze|freezes|freezing|iced up|froze up|iced over|frosted over|frosts|frozen up|frosty|frozen over|block of ice|solid block|solid block of ice|one block of ice|solid ice|ice block|ice ball|iceball|frost line|freezing up|ices up|frosting over|frosted up|snow|solid white|white with frost|snowball|a snowball|frozen solid|froze solid|froze over",
    "frost",
  ],
  [
    "to the compressor|back to the comp|to the shell|back to the compressor|to the comp|compressor|comp|shell|all the way back|to compressor|back to the shell|back to comp|back to the unit|all the way to the compressor|up the compressor|to the service valve|over the compressor|to the can|back to the can|to the body",
    "to_compressor",
  ],
  [
    "equalized|equal|the same|level|equalize|even|equalised|balanced|same both sides|meet|match|equalizes|neck and neck",
    "equal",
  ],
  [
    "liquid in the shell|slugging|full of liquid|slugged|slugs|liquid in the crankcase|liquid in the compressor|flooded start|full of refrigerant|liquid slug|flooded|liquid refrigerant in|flooded with liquid|migrated",
    "liquid_shell",
  ],
  [
    "flooding back|floodback|flooding|liquid back|flood back|floods back|floodback to|flooded back|flooding the compressor|liquid coming back|floods|returning liquid",
    "flooding",
  ],
  ["foams|foaming|foam|foamed|foams up", "foams"],
  ["black|dark|burnt|smells burnt|like tar|like coffee|tar|nasty|sludge|black as|brown", "black"],
  ["acid|acid test|acid kit|acid test kit|acidic", "acid"],
  [
    "turned|positive|found|failed|shows|high|yellow|came back positive|bad|pink to yellow|present|tested positive|is high|orange|purple to|test positive|red",
    "positive",
  ],
  [
    "negative|clean|passed|good|no acid|no change|none|came back clean|acid free|came back negative|fine|clear|acid negative|ok",
    "negative",
  ],
  [
    "no acid|acid free|acid test clean|acid test good|acid negative|acid test negative|acid test passed|acid is clean",
    "no_acid",
  ],
  [
    "hunting|hunts|hunt|surging|swinging|all over the place|oscillating|cycling open and closed",
    "hunting",
  ],
  [
    "stuck|stuck open|stuck closed|jammed|frozen|not moving|wont move|doesnt move|no response|never moved|wont close|wont open|not opening|not closing|hung|not responding|seized|wont modulate|not modulating|wont shift|not shifting|hung up|didnt move|never moves|wont budge|mid position|half way|isnt opening|isnt moving|sticking|stuck shut",
    "stuck",
  ],
  [
    "not pumping|wont pump|no compression|isnt pumping|doesnt pump|barely pumping|pumping nothing|wont pump down|no pumping|not compressing|wont build pressure|not building pressure|wont pull down|pumps nothing|wont go under|not making pressure|isnt compressing|wont make pressure|hardly pumping|wont pull a vacuum|isnt building pressure",
    "no_pump",
  ],
  [
    "holding|steady|hasnt moved|holding solid|no drop|still holding|holds|held|held steady|rock solid|holding steady|flat|no decay|didnt move|hasnt budged|holding good|no movement on the gauge|unchanged|no rise|same as last night|stayed put|stable|holding fine|not moved|holding strong",
    "holding",
  ],
  [
    "dropping|falling|losing|going down|still dropping|keeps dropping|lost pressure|bleeding down|wont hold|not holding|didnt hold|losing pressure|doesnt hold|leaking down|drops overnight|climbing back|drifting down",
    "dropping",
  ],
  [
    "low on gas|low on charge|low charge|undercharged|short on gas|lo on gas|low on refrigerant|short of gas|low of gas|its low|it is short|its short|short on charge|low on freon|under charged|short charge|flat on gas|starving|starved|out of gas|no gas|empty|short of charge|low refrigerant|low on juice|its flat|running low|short on refrigerant|starving for gas|needs gas|low on 410",
    "low_charge",
  ],
  // air
  [
    "dirty|matted|plugged|clogged|filthy|fouled|impacted|packed|caked|blocked|grease|greasy|cottonwood|plugged solid|plugged up|dirty as hell|covered|stopped up|restricted|choked|full of lint|disgusting|nasty|clogged up|loaded|loaded up|full of grease|like felt|like a carpet|felt|carpet|carpeted|solid|black|packed with lint|full of dirt|full of dog hair|dog hair|lint|dusty|full|crud|gunked|bad|blanket|full of cottonwood|hairy|mud|packed solid|matted up|matted over|gunk|seeds|dirt|dust|fluff",
    "dirty",
  ],
  [
    "clean|cleaned|washed|new|spotless|just washed|just cleaned|fresh|look good|looks good|looks clean|good|replaced|changed|brand new|clean both sides",
    "clean",
  ],
  [
    "slow|running slow|turning slow|slowly|sluggish|low speed|barely turning|half speed|dragging",
    "slow",
  ],
  [
    "push|pushed|pushing|with a stick|by hand|spin it by hand|give it a push|give it a spin|help|nudge|pushes|kick start it",
    "pushed",
  ],
  [
    "spins free|spins fine|free by hand|turns free|spins freely|free|spin free|turns freely|freewheels",
    "free",
  ],
  [
    "stiff|tight|bearings|bearing|hard to turn|drags|seized bearings|rough bearing|binding|wont spin by hand",
    "stiff",
  ],
  [
    "broken|snapped|shredded|gone|thrown|missing|broke|off|came off|threw|torn|in pieces|on the floor|laying|in half|ripped|popped off|threw a",
    "broken",
  ],
  ["slipping|slips|squealing|loose|glazed|squeals|worn|slipped|squeaking", "slipping"],
  [
    "airflow|air flow|air|registers|ducts|duct|vents|return|grille|blower wheel|wheel|supply vents|plenum",
    "air",
  ],
  [
    "blocked|no airflow|weak|nothing|like nothing|restricted|collapsed|plugged|covered|shut|low|poor|packed|packed with lint|choked|closed|crushed|barely any|hardly any|kinked|plastic|boxes|clogged|terrible",
    "air_low",
  ],
  [
    "recirculating|recirculation|short circuiting air|hot air coming back|recirc|recirculates|own discharge air|short circuiting",
    "recirculating",
  ],
  // the call
  [
    "no cooling|not cooling|wont cool|warm air|blowing warm|blows warm|blows hot|blowing hot|not cold|isnt cooling|no ac|no a c|not keeping up|cant keep up|warm again|too warm|doesnt cool|not getting cold|no cool|not cool|its hot|wont get cold|is warm|hot and getting hotter|getting hotter|not holding temp|wont hold temp|not keeping temp|wont keep temp|is hot|hot by noon|arent cooling|barely cooling|hardly cooling|poor cooling|losing temp|blowing room temp",
    "no_cool",
  ],
  [
    "no heat|not heating|wont heat|blowing cold in heat|isnt heating|cold in the morning|no heating|doesnt heat|not warm|no hot air|too cold|blowing cold air in heat|arent heating",
    "no_heat",
  ],
  [
    "cooling again|pulling down|cooling good|back to cooling|blowing cold|cooling fine|cooling great|back up and cooling|cooling now|cooling well|making cold|making ice again|is cooling|cooling nicely|box is pulling down|dropping nicely|getting cold",
    "cools",
  ],
  ["fine|ok|good|okay|alright", "fine_word"],
  [
    "wont defrost|not defrosting|never defrosts|doesnt defrost|no defrost|stuck in defrost|not going into defrost|wont go into defrost|defrost not working|isnt defrosting|defrost stuck|never goes into defrost|didnt defrost|defrost is not working|wont terminate defrost|defrost wont",
    "no_defrost",
  ],
  [
    "even|balanced|equal|dead even|match|all the same|good|fine|ohm out fine|look good|look fine|all good|ohm out good|check good|check fine|are even|ohm good|all even|test good|check out",
    "even_word",
  ],
  [
    "continuity to ground|dead ground|dead grounded|shorted to ground|dead to ground|to ground|short to ground|grounded|dead short to ground",
    "to_ground",
  ],
  [
    "continuity to ground|shorted to ground|short to ground|dead short to ground|grounded out|dead grounded|dead to ground",
    "short_ground",
  ],
  [
    "no continuity to ground|nothing to ground|not grounded|no short to ground|clear to ground|none to ground|no ground",
    "no_ground",
  ],
  [
    "megs fine|megs good|megs out fine|insulation is good|megs out good|meg good|meg ok|meg okay|meg fine|meg clean|megs ok|megs okay|megs out clean|meg to ground good|meg to ground ok|meg to ground fine|meg to gnd good|meg to gnd ok|meg to gnd fine|megs to ground good|megs to ground fine|megged clean|megged okay|megged good|megged fine|insulation good|insulation is fine|megs are good|megs are fine|megger is good|megs clean|new one is fine|insulation fine|megs out ok|megged ok|meggers good",
    "insulation_ok",
  ],
  [
    "all three legs good|three phase is good|power is good|voltage is good|good voltage|supply is good|voltage good|power good|three phase good|good power|all legs good|line voltage is good|legs are good|volts are good|power is fine|supply good|good three phase|voltages are good|incoming power is good",
    "supply_ok",
  ],
  [
    "balanced|even|equal|equal phases|3 equal phases|three equal phases|all the same|even across|even phases|three even phases|3 even phases|all three even|three even outputs|even on all three",
    "balanced",
  ],
  ["unbalanced|uneven|out of balance|way off|not balanced|lopsided", "unbalanced"],
  [
    "cooled off|cools off|cooled down|after it cools|sat a while|let it cool|resets after|reset after an hour|after cooling|once it cools|after it cooled|cools down",
    "cooled",
  ],
  [
    "power blinked|power outage|power went out|lost power|power was out|outage|blackout|power bumped|brownout|power was off|was off all|power loss|power flickered|off since|breaker was off|found the breaker off|found breaker off|been off since|shut off all winter|power failure",
    "no_power",
  ],
  [
    "lightning|storm|since the storm|hit by lightning|power surge|surge|thunderstorm|after the storm|struck by lightning|lightning strike",
    "storm",
  ],
  [
    "calling|call for cooling|call for cool|call for heat|calls for cooling|calls for cool|calls for heat|calls for heating|calls for ac|is calling|calls|called again|asking for cooling|stat is calling|thermostat is calling|calling for cooling|calling for cool|calling for heat",
    "calls",
  ],
  [
    "plate calls for|nameplate calls for|tag calls for|sticker calls for|label calls for|chart calls for|book calls for|spec calls for|print calls for",
    "asked_by_plate",
  ],
  [
    "not calling|satisfied|no call|isnt calling|stat is satisfied|not asking|no call for cooling|thermostat is satisfied",
    "no_call",
  ],
  ["open|tripped|locked out|out on|off on|down on|cut out|is out|opened", "open_word"],
  [
    "reads wrong|way off|reading wrong|out of range|reads high|reads low|off by|not accurate|says|out of calibration|bad reading|reads zero|inaccurate|drifted|doesnt match|reading high|reading low",
    "reads_wrong",
  ],
  [
    "damaged|rubbed through|chewed|nicked|rat nest|skinned|cut|frayed|rubbed|rat|rats|mice|squirrel|squirrels|chafed|rodents|chewed up|pinched|bare|mouse|broken|skint|shorted",
    "damaged",
  ],
  [
    "no change|no difference|same thing|same result|didnt help|didnt change|no improvement|still the same|nothing changed|made no difference|didnt make a difference|same as before|still does it",
    "no_change",
  ],
  [
    "cba|reversed|reverse sequence|phases reversed|wrong sequence|legs swapped|backwards rotation|acb|counterclockwise|reverse phase|phase reversal|wrong phase",
    "cba",
  ],
  [
    "rotation meter|phase sequence|rotation|phase rotation|sequence|legs|phases|phase meter",
    "sequence_word",
  ],
  [
    "utility|new service drop|new service|service drop|electrician|electricians|power company|line crew|lineman|linemen|new transformer|meter swap|meter change",
    "line_work",
  ],
  [
    "worked on|swapped|changed|replaced|put in|put in by|installed|was here|were here|redid|rewired|friday|upgraded|rebuilt",
    "worked",
  ],
  ["boost|boosted|pfc|boost pfc|power factor correction|active rectifier", "boost"],
  // parts that are fitted
  [
    "yes|yeah|yep|yup|correct|thats right|confirmed|affirmative|right|yes it is|that is right|ok yes|yessir|ya",
    "yes",
  ],
  ["no|nope|nah|negative|wrong|no it isnt", "no_word"],
  ...actionWords.map(({ action, words }) => [words, `do:${action}`] as const),
];
