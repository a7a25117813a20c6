import type { Label } from "../label.ts";

type Row = readonly [words: string, label: Label];

/** Places on the machine. */
const places: readonly Row[] = [
  ["line|ln|pipe", { hint: "temperature" }],
  [
    "suction|sucking pressure|suct|suc|suctn|sct p|low side|lowside|low|suction pressure|suct press|suct p|suction press|lo side|low side pressure|back pressure|suction side|suction psi|suct psi|low pressure|low pressure control|low pressure controls|lp control|lp ctrl|lp ctl|low pressure ctl|lpc|lpco|lpcos|low press control|low press ctrl|low pressure ctrl|lo press control|low side control|suction pressure control|suction control|suction service port|vapor pressure|section pressure|suctions|suction gauge|low sides|sp side|loside|sucks in|sucksin|suck shin|sucshun|sukshun|suckshun|sucktun|evaporator pressure|evap pressure|evaporating pressure|psuc|psuct|section side|suckshin|lp|lsp|nd|vapor|vapor side",
    { place: "suction", hint: "pressure" },
  ],
  [
    "suction line|return gas|rtn gas|return gas temp|rtn gas temp|ret gas|suction gas|suction gas temp|vap|vapor|vap line|vapor temp|suction pipes|suction lines|gas pipes|suct line|suction temp|suction temperature|suct temp|suction line temp|suction line temperature|suct line temp|sl|slt|vapor line|suction tmp|suct tmp|suction pipe|vapor line temp|sl temp|vapor temp|gas line|suction line's|suct ln|suctline|suction gas temp|suction gas|ssline|suction ln|line at the suction|suction line at|suct line tmp|gas pipe|tg|tgas|suction stub|tsuc|tsuct|sucshun line|sucshun temp|big line|large line|fat line|big pipe|st|slt",
    { place: "suction", hint: "temperature" },
  ],
  [
    "head|hd|head pressure|disch|discharge|disch press|discharge pressure|head press|disch p|discharge press|dis|hed|hed pressure|discharg|pdis|pdisch|dischrg|head psi|hot gas pressure|discharge side|disc pressure|head pres|discharge psi|dischg|condensing pressure|condenser pressure|cond pressure|hp side|head pressure control|head control|high pressure control|hp control|hp ctrl|hp ctl|high pressure ctl|hpc|hpco|head pressure ctrl|head press control|head press ctrl|head ctrl|high press control|high press ctrl|high pressure ctrl|hi press control|hi pressure control|fan cycle switch|fan cycle control|fan cycling|fan cycling switch|fan cycling control|fan cycle|discharge pressure control",
    { place: "discharge", hint: "pressure" },
  ],
  [
    "high side|highside|high side pressure|hi side|high|high pressure|hiside|hi press|hp",
    { place: "discharge", hint: "pressure" },
  ],
  [
    "discharge line|disch line|dlt|discharge temp|discharge temperature|disch temp|disch tmp|discharge line temp|discharge line temperature|dl|dl temp|hot gas line|discharge gas temp|discharge tmp|disch line temp|discharge gas|disch pipe|discharge pipe|d l t|comp discharge temp|hot gas temp|dsh temp|tdis|tdisch|t dis|disch ln|hot gas",
    { place: "discharge", hint: "temperature" },
  ],
  [
    "gas cooler|gascooler|gas cooler pressure|gc pressure|gc press",
    { place: "discharge", hint: "pressure" },
  ],
  [
    "gas cooler out|gas cooler outlet|gas cooler leaving|gas cooler out temp|gas cooler outlet temp|gc out|gc outlet|gc out temp|gc outlet temp|gascooler out|gcot",
    { hint: "temperature" },
  ],
  [
    "epr|eprs|epr valve|evap pressure regulator|evaporator pressure regulator",
    { hint: "pressure" },
  ],
  ["lps at|on lps at", { place: "suction", hint: "pressure" }],
  ["hps at|on hps at", { place: "discharge", hint: "pressure" }],
  ["flash tank|flashtank|flash tank pressure|flash tank press", { hint: "pressure" }],
  [
    "liquid|liq|lq|lqd|likwid|liquid pressure|liquid press|liquid side|liq press|liquids|liq p",
    { place: "liquid" },
  ],
  [
    "liquid line|liquid return|liquid return line|liquid pipes|liquid lines|liq line|liquid temp|liquid line temp|liquid line temperature|liquid temperature|ll|llt|liq tmp|liq temp|lq temp|lq line|lqd line|tliq|tl|liq ln|ll temp|liquid tmp|liquid pipe|liq line temp|liqline|liquid ln|liquid line tmp|liq pipe|small line|little line|small pipe|little pipe|skinny pipe|skinny line|drop leg|drop leg temp|lt|ltemp|high side temp|high side temperature",
    { place: "liquid", hint: "temperature" },
  ],
  [
    "liquid line pressure|liquid line psi|ll pressure|liq line pressure",
    { place: "liquid", hint: "pressure" },
  ],
  [
    "shell|shl|shell temp|shell temperature|dome|comp body|compressor shell|shell tmp|comp shell|compressor body|dome temp|can temp|comp dome|shells|shell is|body temp|housing|compressor dome|casing|housing temp|casing temp",
    { place: "shell", hint: "temperature" },
  ],
  ["hot to the touch|hot to touch|too hot to touch", { hint: "temperature" }],
  [
    "winding temp|winding temperature|windings temp|wdg temp|windings temperature|motor temp|motor temperature|stator temp|winding tmp|motor rtds|winding rtds|motor rtd|winding rtd|stator rtd|stator rtds",
    { place: "shell", hint: "temperature" },
  ],
  [
    "oil|oil pressure|oil press|net oil pressure|oil psi|oil pump|oilpress|oil psi|oil pres",
    { place: "oil", hint: "pressure" },
  ],
  [
    "oil temp|oil temperature|sump temp|oil sump temp|sump|sump temperature|oil tmp",
    { place: "oil", hint: "temperature" },
  ],
  [
    "return air|extract air|extract air temp|extract temp|ent air|entering air temp|return|ra|rat|ret|return temp|return air temp|ret air|return air temperature|entering air|entering air temp|eat|return tmp|ra temp|rtn|rtn air|return temperature|return duct|rtrn air|returns|air in|ret temp|return drybulb|return dry bulb|r a|return grille|dry bulb return|air on|air on temp|air on coil|entering the coil|entering coil|going into the coil|onto the coil|on coil|on coil temp|coil on|air entering",
    { place: "return_air", hint: "temperature" },
  ],
  [
    "supp|supp air|supp temp|da|lvg air|lvg air temp|supply air|outlet air|outlet air temp|sa|sup|supply temp|supply air temp|sup air|supply air temperature|leaving air|leaving air temp|lat|discharge air|discharge air temp|dat|supply tmp|sa temp|splt air|supply temperature|supply duct|air out|sup temp|supply|plenum|supply plenum|s a|supply register|vent temp|supply air's|discharge air temperature|supply grille|off the grille|out of the grille|out of the grilles|out the grille|off the grilles|at the grille|at the grilles|off the register|at the register|off the diffuser|at the diffuser|dis air|disch air|air off|air off temp|air off coil|off coil|off coil temp|off the coil|air leaving",
    { place: "supply_air", hint: "temperature" },
  ],
  [
    "outdoor air|fresh air|fresh air temp|oat|od|tamb|oa|outside|outdoor|outdoors|ambient|amb|outside air|outdoor temp|outdoor air temp|outside temp|outside air temp|odt|od temp|ambient temp|out door|outdoor ambient|outdoor temperature|outside temperature|outside air temperature|outdoor air temperature|ambient air|amb temp|out side|odb|outdoor dry bulb|oadb|outside's|o a|ambient temperature|air on the condenser|condenser entering air|ambents|amb air|outdoor tmp|around the condenser|around the condensing unit|around the outdoor unit|around the cond|around the outdoor coil",
    { place: "outdoor_air", hint: "temperature" },
  ],
  [
    "indoor air|rm temp|rm is|rm at|room temp|room temperature|space temp|space temperature|iat|indoor temp|indoor|inside|inside temp|room|space|indoor temperature|indoor air temp|zone temp|zone temperature|indoor dry bulb|idb|inside air|room's|inside temperature|room air|indoor tmp|space tmp|server room temp|t stat|t stat reads|stat reads|tstat reads",
    { place: "indoor_air", hint: "temperature" },
  ],
  [
    "sst|t0|saturated suction|suction saturation|sat suction|suction sat|evaporating temp|evap temp|evaporating temperature|saturated suction temp|suction saturation temp|low side saturation|low side sat|suct sat|sat suct|evaporating|evaporator saturation|saturated suction temperature|evap sat|suction saturated|s s t|saturation suction|evap saturation|evaporator temp|coil temp sat|suction saturation temperature|low sat|sat on the suction|low side saturated|saturated evap|saturated evaporator|sat evap|te|evaporation|evaporation temp|evaporation temperature|evaporation at|evaporates at",
    { place: "suction_saturation", quantity: "temperature" },
  ],
  [
    "sct|condensation|condensation temp|saturated condensing|sat discharge|saturated discharge|condensing temp|condensing temperature|saturated condensing temp|sat condensing|cond sat|high side saturation|high side sat|disch sat|sat disch|head sat|liquid sat|condensing|sdt|discharge saturation|saturated discharge|condenser saturation|saturated condensing temperature|liq sat|sat cond|s c t|saturated head|discharge sat|cond saturation|condensing sat|saturated discharge temp|condenser sat|saturation on the head|condensing saturation|high side saturated|saturated liquid|tc|liquid saturation|condensation temp|condensation temperature|condensation at|condenses at|cond temp|cond temperature",
    { place: "discharge_saturation", quantity: "temperature" },
  ],
  [
    "db|tdb|t db|tower basin|basin temp|basin water|tower basin temp|dry bulb|drybulb|dry bulb temp|line temp|line temperature|pipe temp|pipe temperature|stack|net stack|stack temp|stack temperature|flue temp|flue temperature|flue gas temp|flue gas temperature|exhaust gas temp",
    { quantity: "temperature" },
  ],
  [
    "rise of|a rise of|temp rise|temperature rise|a rise|rise across|air rise|temp rise of|temperature rise of",
    { quantity: "temperature_difference" },
  ],
  [
    "draft|stack draft|overfire draft|over fire draft|flue draft|breech draft|vent draft|chimney draft",
    { quantity: "static_pressure" },
  ],
  ["o two|o2|oxygen|excess air", { thing: "level" }],
  ["return trip|return trip fee|return visit|return call", { thing: "level" }],
  ["chw|chilled water|hhw|heating water", { hint: "temperature" }],
  ["oil sep temp|oil separator temp|oil separator|oil sep", { hint: "temperature" }],
  ["mix air|mixed air|mixed|mixed air temp|mat|mixed air temperature", { hint: "temperature" }],
  ["sat", { place: "supply_air", hint: "temperature" }],
  [
    "return wet bulb|return wb|ret wb|ret wet bulb|ra wb|return air wet bulb|return air wb",
    { place: "return_air", quantity: "wet_bulb_temperature" },
  ],
  [
    "iwb|indoor wb|inside wb|room wb|indoor wet bulb|room wet bulb",
    { place: "indoor_air", quantity: "wet_bulb_temperature" },
  ],
  ["owb|outdoor wb|outdoor wet bulb", { place: "outdoor_air", quantity: "wet_bulb_temperature" }],
  [
    "supply wet bulb|supply wb|sup wb|sa wb|supply air wet bulb|supply air wb",
    { place: "supply_air", quantity: "wet_bulb_temperature" },
  ],
  [
    "saturation|sat temp|saturation temp|saturated temp|sat temperature|saturated|saturation temperature",
    { quantity: "temperature" },
  ],
  [
    "cond wtr in|condenser in|cond in|ecwt|entering condenser water|cond water in|condenser water in|condenser entering|cond ewt|entering condenser|condenser water entering|ecw|condenser inlet|cw in|cond inlet|condenser water supply|cws|tower water in|entering condenser water temp|condenser water going in|cond entering|cond ent|condenser water inlet|cdw in|cdw ent|cdw entering|ecdwt|cdw supply",
    { place: "condenser_in", hint: "temperature" },
  ],
  [
    "cond wtr out|condenser out|cond out|lcwt|leaving condenser water|cond water out|condenser water out|condenser leaving|cond lwt|leaving condenser|condenser water leaving|lcw|condenser outlet|cw out|cond outlet|condenser water return|cwr|tower water out|leaving condenser water temp|leaving the outdoor coil|leaving outdoor coil|leaving the outdoor|leaving the outdoor unit|out of the outdoor unit|off the outdoor unit|off the outdoor coil|coming off the outdoor coil|out of the outdoor coil|outdoor coil outlet|outdoor coil leaving|leaving the condenser|off the condenser|condenser water coming out|cond leaving|cond lvg|condenser water outlet|cdw out|cdw lvg|cdw leaving|lcdwt|cdw return",
    { place: "condenser_out", hint: "temperature" },
  ],
  [
    "condenser water|cond water|cond wtr|tower water|cdw|cdwtr|cndw",
    { place: "condenser_in", hint: "temperature" },
  ],
  [
    "evap in|evaporator in|evap wtr in|evap water in|entering evap|entering evaporator|evaporator inlet|evap inlet|coil inlet|at the coil inlet|evap ewt|evaporator entering|evap entering|evaporator water in|coil in|barrel in",
    { place: "evaporator_in", hint: "temperature" },
  ],
  [
    "evap out|evaporator out|evap wtr out|evap water out|leaving evap|leaving evaporator|evaporator outlet|evap outlet|coil outlet|at the coil outlet|outlet of coil|outlet of the coil|evap lwt|evaporator leaving|evap leaving|evaporator water out|coil out|case outlet|at the case outlet|outlet of the case|barrel out|coming out of the coil|out of the evap|out of the evaporator|leaving the evap|leaving the evaporator",
    { place: "evaporator_out", hint: "temperature" },
  ],
  [
    "ewt|ent|h2o in|h2o ent|h2o entering|boiler return|boiler in|boiler return water|chw in|chilled in|hw in|chilled water in|hot water in|entering water|entering water temp|water in|return water|return water temp|hwr|chwr|water inlet|ent water|entering chilled water|chilled water return|e w t|ecwt chw|entering water temperature|ent wtr|chw return|rwt|wtr in|hot water return|loop in|inlet water|water entering|entering loop|entering|water coming in|water is coming in|water is come in|water come in|water comes in|water going in|water goes in|water is going in|waters going in|chw entering|chw ent|entering wtr|ent chw",
    { place: "water_in", hint: "temperature" },
  ],
  [
    "lwt|h2o out|h2o lvg|h2o leaving|boiler supply|boiler out|boiler supply water|chw out|chilled out|hw out|chilled water out|hot water out|leaving water|leaving water temp|water out|supply water|supply water temp|hws|chws|water outlet|lvg water|leaving chilled water|chilled water supply|l w t|leaving water temperature|lvg wtr|chw supply|swt|wtr out|hot water supply|loop out|outlet water|water leaving|leaving loop|leaving|water coming out|water is coming out|water goes out|water going out|leaving wtr|lvg chw|leaving chw|chw leaving|chw lvg|wtr leaving",
    { place: "water_out", hint: "temperature" },
  ],
  [
    "box|cases|dairy|meat|veg case|fish case|deli|produce|seafood|meats|dairy box|meat box|produce box|dairy cooler|meat cooler|deli cooler|produce cooler|meet case|freezer room|cooling room|cooler room|case is|case is at|case at|case down to|case up to|case back to|case back down to|case dropped to|case pulled down to|case now|produce case|meat case|dairy case|deli case|display case|coldroom|coolroom|cool room|chill room|box temp|box temperature|walk in temp|cooler temp|freezer temp|case temp|box tmp|walkin temp|box air|cabinet temp|cabinet|cooler box|freezer box|walk in box|reach in temp|cold room|cold store|room box|walkin box|frzr box",
    { place: "box", hint: "temperature" },
  ],
  [
    "prep table|prep tables|prep cooler|walk in|walkin|wic|wif|cooler|freezer|reach in|frzr|walk in cooler|walk in freezer|walkin cooler|walkin freezer|reach ins|frzrs",
    { place: "box", hint: "temperature" },
  ],
  [
    "product|product temp|product temperature|probe|food temp|core temp|product probe|prod temp|product tmp|prod|prod tmp|product core|meat temp|milk temp|prods|product at",
    { place: "product", hint: "temperature" },
  ],
  [
    "line side|lineside|incoming|supply voltage|line voltage|supply volts|incoming power|incoming voltage|at the disconnect|at the disco|unit disconnect|at disconnect|disconnect|disco|mains|utility|feed|feeder|line volts|main power|incoming line|at the main|feed voltage|input voltage|input volts|at the panel|ahead of the disconnect|line in|feed side|supply side",
    { place: "supply", hint: "voltage" },
  ],
  [
    "drive output|vfd output|inverter output|output of the drive|output of the vfd|drive out|output voltage|output volts|vfd out|inverter out|out of the drive|out of the inverter|coming out of the inverter|coming out of the drive|off the drive|output of the inverter|out of the vfd|drive output voltage|output side of the drive|inverter out put|drive out put|drive outputs|inverter outputs|vfd outputs|drive putting out|drive is putting out|vfd putting out|inverter putting out|drive puts out|vsd out|vsd output|drive out to the motor",
    { place: "drive_output", hint: "voltage" },
  ],
  ["output amps|output current|output amperage", { place: "drive_output", quantity: "current" }],
  [
    "dc bus|d c boss|dc boss|bus|dc link|bus voltage|bus volts|dc bus voltage|dc bus volts|link voltage|d c bus|dc buss|buss|bus bar voltage|busses|dc link voltage|dcbus|p to n|p n|d c buss|d c link|bus cap|bus caps|bus caps voltage",
    { place: "dc_bus", kind: "dc", quantity: "voltage" },
  ],
  [
    "control|control voltage|control volts|ctrl|ctl|ctl voltage|ctrl volts|ctrl voltage|control power|low voltage|control circuit|cntrl|cntrl volts|cntrl voltage|24 volt side|ctl volts|control trans|at the coil|thermostat voltage|at the contactor coil|across the contactor coil|across the coil|at contactor coil|at the coil terminals",
    { place: "control", hint: "voltage" },
  ],
  [
    "transformer|xfmr|trans|transformer secondary|xfmr secondary|xfmr sec|secondary|secondary voltage|trafo|primary|pri|primary voltage|pri volts|xfmr primary|xfmr pri|transformer primary",
    { hint: "voltage", thing: "transformer" },
  ],
];

/** Nameplate values, limits and wishes. */
const ratings: readonly Row[] = [
  [
    "rla|r l a|running load amps|running load amperage|rated load amps|rated load|rated load current|rla's|rated load amperage|rlas|our la|are la|our l a|are l a",
    { rating: "RLA", quantity: "current" },
  ],
  [
    "lra|l r a|locked rotor amps|locked rotor|locked rotor current|lras|lock rotor|lock rotor amps|el ra|el are a|l are a",
    { rating: "LRA", quantity: "current" },
  ],
  [
    "moc|m o c|max operating current|maximum operating current|max operating amps|max oper current",
    { rating: "MOC", quantity: "current" },
  ],
  [
    "mcc|m c c|max continuous current|maximum continuous current|max continuous amps",
    { rating: "MCC", quantity: "current" },
  ],
  [
    "mca|m c a|minimum circuit ampacity|min circuit ampacity|minimum circuit amps|min circuit amps|minimum ampacity|circuit ampacity|min ckt amps|min ckt ampacity|m see a|em ca",
    { rating: "MCA", quantity: "current" },
  ],
  [
    "mop|mocp|m o p|m o c p|max overcurrent|max fuse|maximum overcurrent protection|max overcurrent protection|maximum fuse|max breaker|max ocp|max fuse size|maximum overcurrent|max overcurrent protective device|maximum fuse size|maximum breaker|mopd|max ckt brkr|max circuit breaker",
    { rating: "MOP", quantity: "current" },
  ],
  [
    "fla|f l a|full load amps|full load|full load current|flas|full load amperage",
    { rating: "FLA", quantity: "current" },
  ],
  [
    "nameplate|name plate|np|npl|pl|data plate|dataplate|tag|on tag|on the tag|on the plate|plate|off the plate|per the plate|from the plate|off the tag|nmplt|rating plate|serial plate|on the nameplate|name tag|nametag|off the nameplate|data tag|on the data plate|tag says|plate says|nameplate says|per nameplate|per tag|per plate|nameplated|says on the can|stamped on it|on the can|says on the can",
    { rating: "nominal", plate: true },
  ],
  [
    "factory|on it stands|on the can stands|on the label stands|on the plate stands|from the factory|factory says|rated|rated at|rated for|rating|nominal|label|labeled|sticker|marked|its rated|label says|nom|on the label|stamped|rated value|printed|markings|on the sticker|sticker says|rated cap|rating is|per label|stated|labelled|rated as|can is marked|label on it says|is stamped|lists|listed",
    { rating: "nominal" },
  ],
  [
    "factory charge|nameplate charge|charge on tag|tag charge|plate charge|nominal charge|charge on the tag|charge on the plate|unit charge|system charge|factory charged|charge per tag|total charge|charge per nameplate|full charge|factory chg|charge on nameplate|charge on the nameplate|charge on plate|charge tag|rated charge|original charge|chg on tag|charge per plate|charge weight on the tag|tag chg|holds|charge is|design charge|factory charge on the tag|specified charge|charge on sticker|charge on the sticker|charge spec|charge from the plate|charge says|plate chg|np charge|np chg|charge listed|charge on the data plate|data plate charge|listed charge|charge off the plate|charge off the tag|per tag charge|stated charge",
    { rating: "nameplate_charge", quantity: "mass" },
  ],
  [
    "closes|closes at|setp|reopens at|recloses at|resets at|resets @|setpoint|set point|set to|setpt|set pt|stpt|set it at|set it to|set it for|set it @|set it back to|set it up to|set it down to|set them at|set them to|set them for|set em at|set em to|set em for|sets it at|sets it to|set that at|set that to|set these at|set these to|cutout set|cut out set|cutout|cut out|cut in|cutin|set at|set for|setting|set points|sp|setpoints|its cutout is set|cutout is set|cut out is set|cutout's set|set|stpnt|min sp|max sp|dialed to|dialed in at|dialed|setpont|set pont|spt|target setpoint|cutout setting|trips at|trip point|trip setting|set pint|adjusted to|programmed for|programmed to|limit set|limit is set|set low at|alarm set|alarm set at|cutout is|switch opens at|opens at|closes at|breaks at|set high at|cuts out at|cuts in at|setpoint is|csp|hsp|kicks out at|clg sp|htg sp|hpc set|lpc set|opens @|closes @|cuts in @|cuts out @|kicks out @|trips @|opens on|set @|cuts out|cuts in",
    { rating: "setpoint" },
  ],
  [
    "hp cutout|hp cut out|hp cutout set|hp cut out set|hp cutout is set|hi cutout|hi cut out|hi cutout set|hi cut out set|hi cutout is set|high cutout|high cut out|high cutout set|high cut out set|high cutout is set|head cutout|head cut out|head cutout set|head cut out set|head cutout is set|high pressure cutout|high pressure cut out|high pressure cutout set|high pressure cut out set|high pressure cutout is set|high press cutout|high press cut out|high press cutout set|high press cut out set|high press cutout is set|discharge cutout|discharge cut out|discharge cutout set|discharge cut out set|discharge cutout is set",
    { rating: "setpoint", place: "discharge", hint: "pressure" },
  ],
  [
    "lp cutout|lp cut out|lp cutout set|lp cut out set|lp cutout is set|lp cut in|lp cutin|lo cutout|lo cut out|lo cutout set|lo cut out set|lo cutout is set|lo cut in|lo cutin|low cutout|low cut out|low cutout set|low cut out set|low cutout is set|low cut in|low cutin|low pressure cutout|low pressure cut out|low pressure cutout set|low pressure cut out set|low pressure cutout is set|low pressure cut in|low pressure cutin|low press cutout|low press cut out|low press cutout set|low press cut out set|low press cutout is set|low press cut in|low press cutin|suction cutout|suction cut out|suction cutout set|suction cut out set|suction cutout is set|suction cut in|suction cutin",
    { rating: "setpoint", place: "suction", hint: "pressure" },
  ],
  [
    "that should be|should be|should b|shud b|shld be|shld b|supposed to be|shud be|s b|sb|spec|specs|design|designed for|target|expected|expect|expecting|ought to be|suppose to be|spec is|specification|should read|should have|calls for|chart says|wants|supposed to read|is supposed to be|its supposed to be|was supposed to be|want|wanted|needs to be|chart|should of been|shld be|should run|supposed to run|supposed to have|per chart|should be at|designed|shd be|shouldve been|meant to be|spossed to be|sposed to be|shood be|book says|book value|manual says|minimum is|spec says|limit is|goal|goal is|aiming for|shooting for|looking for|should draw|should pull|we want|i want|design is|should sit|per spec|normal is|normally|normally runs|usually|usually runs|normal|supposed to|must be|has to be|ideal|should see|should get|required|requires|require|spec'd|specd|spec is|should|sb at|min spec|max spec|table says|needs|typical|typically|allowed|allowable|acceptable|required is|max allowed|want to see|like to see|wants to be|should hold|ought to|calcs say|should come out|target is|tgt|trgt|supposedly|should weigh|sposed to|spose to be|factory spec|its design|designs|suppose to read|supose to|supossed to be|shld read|is sposed to be",
    { rating: "expected" },
  ],
  [
    "defrost term|defrost termination|dfrst term|termination temp|stat set|stat is set|thermostat set|thermostat is set to|thermostat is set|thermostat set to|tstat set|stat set to|stat is set to|thermostats set|thermostat at|stat at|stat calling|tstat at|occupied setpoint|cooling setpoint|heating setpoint|cooling set point|heating set point|occupied set point|set point for cooling|set point for heating|setpoint for cooling|setpoint for heating|set temp|thermostat is calling for|thermostat set at|stat is at|stats set at|stats set to|tstat set to|room setpoint|space setpoint|box setpoint|chw setpt|chw setpoint|chilled water setpoint|thermostat setting|csp|hsp|stat setpoint|thermostat setpoint|water setpoint|thermostat calling|tstat calling|stat calling for|tstat calling for|thermostat calling for|calling for|tstat is calling for|stat is calling for|thermostat cuts in|thermostat cuts out|stat cuts in|stat cuts out|tstat cuts in|tstat cuts out|thermostat cuts in at|thermostat cuts out at|stat cuts in at|stat cuts out at|defrost terminates|defrost terminates at|terminates at|termination temperature|termination",
    { rating: "setpoint", hint: "temperature" },
  ],
];

/** How the machine ran while it was measured, and which of a changing value it is. */
const conditions: readonly Row[] = [
  [
    "inrush|start amps|starting amps|start up amps|startup amps|starting current|start current|in rush|inrush current|inrush amps|in rush amps|start amp|starting amperage|start draw|starting draw|inrush of|inrushes",
    { state: "start", quantity: "current" },
  ],
  [
    "on start|restart|on restart|at restart|on the restart|upon restart|at start|starting|at start up|on startup|on start up|when it starts|when starting|during start|kick|at startup|start up|startup|starts at|tries to start|trying to start|on the start|during startup|as it starts|when it kicks on|attempting to start|upon start|upon startup|start|when the compressor starts|when the comp starts|when she starts|when it tries|when it tries to start|every time it tries|each time it tries|every time it tries to start|while the thing was starting|was starting|when the compressor tries|while it tries|compressor starts|comp starts|comp kicks on|when comp kicks on|when the comp kicks on|when comp kicks in|when comp starts|when compressor starts|when compressor kicks on|when the compressor kicks on|compressor kicks on|comp kicks in|compressor kicks in|comp tries to start|compressor tries to start|when it starts up|while it was starting|when it kicks in|as it kicks on",
    { state: "start" },
  ],
  [
    "hard start|hard start cap|hard start capacitor|start cap|start capacitor",
    { quantity: "capacitance" },
  ],
  ["locked rotor draw|locked up|locks up|locked rotor at", { state: "start" }],
  [
    "running|rning|run|running amps|runs|run amps|runs at|running current|running at|rn amps|ran|ran at|running amp|run amp|running load|running draw|while running|under load|loaded|when it loads|when it loads up|as it loads|as it loads up|when loaded|loaded up|at full load|under full load|at load|on load",
    { state: "running" },
  ],
  [
    "running amps|run amps|running current|running amperage|running amp draw",
    { state: "running", quantity: "current" },
  ],
  ["pulling|pulls|pull", { hint: "current" }],
  [
    "capacitor is for|cap is for|its for|it is for|capacitor for|capacitor of",
    { rating: "nominal", quantity: "capacitance" },
  ],
  [
    "pumped down to|pumped dn to|pumped it down to|pump down to|pumps down to|pumping down to",
    { hint: "pressure" },
  ],
  ["voltage drop|volt drop|drop in voltage|v drop", { hint: "voltage" }],
  ["blow|blows|blowing", { place: "supply_air", hint: "temperature" }],
  [
    "drier out|drier outlet|drier inlet|dryer out|dryer outlet|dryer inlet|in to the drier|after the drier|before the drier|ahead of the drier|out of the drier|into the drier|past the drier|downstream of the drier|upstream of the drier|after the dryer|before the dryer|across the liquid line",
    { place: "liquid", hint: "temperature" },
  ],
  [
    "herm side|herm terminal|hermetic side|compressor side of the cap",
    { quantity: "capacitance", thing: "side" },
  ],
  ["fan side|fan terminal", { thing: "side" }],
  [
    "can is marked|the can is marked|can says|marked on the can|can reads|can is a",
    { rating: "nominal", quantity: "capacitance" },
  ],
  ["load side|load side of the contactor|contactor load side", { hint: "voltage" }],
  [
    "peak|the most i caught|most i caught|the most i saw|most i saw|the most it hit|the most it pulled|highest i saw|highest i caught|peaks|peaked|pegged|max|maximum|peak amps|peaks at|peaked at|highest|topped out|spikes|spiked|spikes to|peak of|hits a peak of|spike|spiking|peaking|peaking at|spiked to|high of|high point|tops out|maxed|maxed out at|hi",
    { stat: "peak" },
  ],
  [
    "minimum|min|dips|dip|dipped|lowest|low of|sags|sagged|dips to|sags to|sag|dipping|bottomed|bottomed out|dropped as low as|lowest i saw|sagging|sag to",
    { stat: "minimum" },
  ],
  // what a clamp meter's button is called
  ["peak hold|max hold|peak-hold|max-hold|inrush hold", { stat: "peak", hint: "current" }],
  ["average|avg|averages|averaging|mean|averaged|on average|avging|avrg|ave", { stat: "average" }],
  ["ac", { kind: "ac" }],
  ["dc|d c", { kind: "dc" }],
  ["gauge|gage", { reference: "gauge" }],
  ["absolute|abs", { reference: "absolute" }],
];

/** What was done with refrigerant. */
const masses: readonly Row[] = [
  [
    "total out|total recovered|came out|came back out|pulled the whole charge|pulled the entire charge|rec|recd|recovered|recuperate|recuperated it|recover|reclaimed|reclaim|pulled out|got out|took out|taken out|removed|recovery|recov|rec'd out|recvrd|recvred|evacuated out|out of it|recvd|recovering|drained|sucked out|recoved|recuperated|weighed out|weigh out|pulled|recovrd|reclmd|rcvd|rcvd out|bled off|recaptured|vented none recovered|extracted|got back|recouped|captured|recovered out|rcvrd|got back out|came back out",
    { action: "recovered" },
  ],
  [
    "charged|weighed in|added|put in|put|charge|charged in|charging|add|adding|topped off|topped up|topped|weigh in|weighed|back in|in it|dumped in|dumped|recharged|gave it|went in|putting in|charged up|charged with|refilled|filled|fill|filled with|threw in|poured in|chrgd|chgd|recharge|chg|topped it off|topped it up|fed|feed in|trickled in|trimmed|trimmed in|bumped in|charged back|added back|put back|reinstalled charge|charged it|adde|wtd in|weighed back|injected|gassed|gassed it|into it|squeezed in|added in|topped it up with|topping off|topping up|got in|slid in|shot in|finished charging|wghd in",
    { action: "charged" },
  ],
];

/** Parts of the machine that end a numbered subject, and components with a resistance of their own. */
const things: readonly Row[] = [
  [
    "oil level|oil lvl|oil res|oil res level|sump level|sump lvl|level glass|efficiency|burner eff|dewpoint|dew point|enthalpy|tonnage|service factor|draft|imbalance|unbalance|eff|cop|eer|seer",
    { thing: "level" },
  ],
  [
    "thermistor|sensor|probe sensor|rtd|ntc|thermistors|sensors|therm|pipe sensor|coil sensor|transducer|snsr|sensor reads|air sensor",
    { component: true, quantity: "resistance" },
  ],
  [
    "heater|htr|htrs|defrost heaters|defrost htrs|drain htr|pan htr|crankcase heaters|crankcase heater|cch|crank case heater|crankcase htr|heat strip|strip heater|element|heating element|defrost heater|belly band|sump heater|sump htr|heaters|cc heater|cc htr|drain heater|band heater|defrost htr|pan heater|heater band|door heater|belly band heater|crankcase",
    { component: true, quantity: "resistance" },
  ],
  [
    "contactor coil|ptc|reactor|choke|sol valve|solenoid valve|sv coil|coil|solenoid coil|solenoid|contactor|relay coil|reversing valve coil|sol coil|rv coil|valve coil|eev coil|txv coil|contacts|fuse|relay|igniter|ignitor|hsi|flame sensor|potentiometer|trimmer|resistor|precharge resistor|thermal switch|eev winding coil|pressure switch",
    { component: true, thing: "coil" },
  ],
  [
    "flt|fltr|fltrs|mtr|extract fan|extract fans|fan mtr|blower mtr|cond fan mtr|cond fan motor|evap fan mtr|cap tube|cap tubes|capillary tube|capillary|captube|blower|blower motor|fan motor|condenser fan motor|condenser motor|cond motor|evaporator fan motor|evap fan motor|evap motor|outdoor fan motor|indoor fan motor|inducer|inducer motor|draft inducer|pump|evaporator fan|evap fan|evaporator fans|evap fans|condenser fan|cond fan|cond fans|condenser fans|supply fan|return fan|exhaust fan|fan|fans|vfd|drive|motor|drier|dryer|filter|filters|eev|txv|board|panel|belt|pulley|tower|sheave|indoor fan|outdoor fan|filter drier|strainer|accumulator|receiver|economizer|damper|inverter|combustion blower|circulator",
    { thing: "part" },
  ],
  ["compressor|comp|compressors", { thing: "compressor" }],
];

export const labelWords: readonly Row[] = [
  ...things,
  ...places,
  ...ratings,
  ...conditions,
  ...masses,
];
