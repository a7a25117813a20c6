import type { Noun } from "../word.ts";

type Row = readonly [words: string, noun: Noun];

/** Nouns that take a number or a letter behind them. */
export const nounWords: readonly Row[] = [
  [
    "compressor|comp|cpr|cmp|compr|compressors|comps|compressor number|comp number|compressor no|compressor #|comp #|kompressor|cmpr|compr",
    { kind: "subject", name: "compressor", letters: true, upTo: 16 },
  ],
  [
    "fan|fans|fan number|fan motor number|fan #|fan no",
    { kind: "subject", name: "fan", letters: true, upTo: 24 },
  ],
  [
    "condenser fan|cond fan|condenser fans|cond fans|condenser fan motor|cond fan motor|cond fan #|condenser fan number",
    { kind: "subject", name: "condenser fan", upTo: 24 },
  ],
  [
    "evaporator fan|evap fan|evaporator fans|evap fans|evap fan motor",
    { kind: "subject", name: "evaporator fan", upTo: 24 },
  ],
  [
    "outdoor fan|od fan|outdoor fan motor|odf|outdoor fans",
    { kind: "subject", name: "outdoor fan", upTo: 12 },
  ],
  ["indoor fan|id fan|indoor fan motor|idf", { kind: "subject", name: "indoor fan", upTo: 24 }],
  ["supply fan|sf", { kind: "subject", name: "supply fan", upTo: 24 }],
  ["return fan|rf", { kind: "subject", name: "return fan", upTo: 24 }],
  ["exhaust fan|ef", { kind: "subject", name: "exhaust fan", upTo: 40 }],
  ["fan motor|motor|motors|fan motors", { kind: "subject", name: "motor", upTo: 24 }],
  ["blower|blower motor|blowers", { kind: "subject", name: "blower", upTo: 12 }],
  [
    "circuit|ckt|circ|cir|circuit number|cct|crkt|ckts|circuits|circuit #|ckt #",
    { kind: "subject", name: "circuit", letters: true, upTo: 12 },
  ],
  ["system|sys|systems", { kind: "subject", name: "system", letters: true, upTo: 40 }],
  ["unit|units", { kind: "subject", name: "unit", letters: true, upTo: 99 }],
  ["indoor unit|indoor units", { kind: "subject", name: "indoor unit", letters: true, upTo: 64 }],
  ["indoor", { kind: "subject", name: "indoor unit", upTo: 9 }],
  ["outdoor", { kind: "subject", name: "outdoor unit", upTo: 9 }],
  ["outdoor unit", { kind: "subject", name: "outdoor unit", letters: true, upTo: 64 }],
  ["pump|pumps|water pump", { kind: "subject", name: "pump", letters: true, upTo: 24 }],
  ["chiller|chlr", { kind: "subject", name: "chiller", letters: true, upTo: 24 }],
  [
    "rooftop|roof top|roof top unit|rooftop unit",
    { kind: "subject", name: "rooftop unit", upTo: 99 },
  ],
  ["stage|stg", { kind: "subject", name: "stage", upTo: 8 }],
  ["module|mod", { kind: "subject", name: "module", letters: true, upTo: 16 }],
  ["evaporator|evap", { kind: "subject", name: "evaporator", upTo: 12 }],
  ["condenser|cond", { kind: "subject", name: "condenser", upTo: 12 }],
  ["suction group|group|grp", { kind: "subject", name: "group", letters: true, upTo: 8 }],
  ["rack|racks", { kind: "subject", name: "rack", letters: true, upTo: 16 }],
  ["pack|packs", { kind: "subject", name: "pack", upTo: 20 }],
  ["reach in|reachin", { kind: "subject", name: "reach-in", upTo: 20 }],
  ["walk in|walkin|walk in cooler|walk in freezer", { kind: "subject", name: "walk-in", upTo: 24 }],
  ["heat strip|strip heater|strip", { kind: "subject", name: "heat strip", upTo: 12 }],
  ["tower|cooling tower", { kind: "subject", name: "tower", upTo: 12 }],
  ["boiler", { kind: "subject", name: "boiler", upTo: 12 }],
  ["drive|vfd|inverter", { kind: "subject", name: "drive", upTo: 12 }],
  [
    "vav box|vav bx|v a v box|v a v|terminal box|fan powered box",
    { kind: "subject", name: "VAV box", letters: true, upTo: 999 },
  ],
  [
    "branch box|bran box|brnch box|branch bx",
    { kind: "subject", name: "branch box", letters: true, upTo: 40 },
  ],
  ["heater|htr|heaters", { kind: "subject", name: "heater", upTo: 12 }],
  ["case", { kind: "subject", name: "case", upTo: 60 }],
  ["cooler", { kind: "subject", name: "cooler", upTo: 40 }],
  ["freezer", { kind: "subject", name: "freezer", upTo: 40 }],
  [
    "cold room|coldroom|cool room|coolroom|chill room|cold store",
    { kind: "subject", name: "cold room", upTo: 12 },
  ],
  ["crankcase heater|cch", { kind: "subject", name: "crankcase heater", upTo: 8 }],
  ["lead|leads|led|leed|ld|lds", { kind: "point", name: "lead", upTo: 12 }],
  ["leg|legs", { kind: "point", name: "L", upTo: 3 }],
  ["line|ln", { kind: "point", name: "L", upTo: 3 }],
  ["l|el|ell", { kind: "point", name: "L", upTo: 3 }],
  ["t|tea|tee", { kind: "point", name: "T", upTo: 9 }],
  ["phase|ph|phases|faze|fase", { kind: "point", name: "phase", letters: true, upTo: 3 }],
  ["terminal|term|terminals", { kind: "point", name: "terminal", letters: true, upTo: 12 }],
  [
    "rtu|ahu|ch|chp|dx|hp|ac|ou|odu|idu|iu|fcu|fan coil|fan coil unit|bb|wic|wif|chwp|cwp|hwp|mau|erv|doas|vrf|vrv|cru|crac|crah|ct|ewh|uh|cuh|acu|acc|ccu|cu|rac|rtac|hru|bs|bc|mbx|wcc|wshp|ptac|vav|fpb|ivs|cdu|evr|wi|ri|frz|clr",
    { kind: "tag", name: "", upTo: 9999 },
  ],
  [
    "pole|poles|room|rooms|rm|rms|suite|suites|ste|apt|apts|apartment|apartments|floor|floors|flr|flrs|bay|dock|gate|door|spot|space number|zone|zones|aisle|building|bldg|lot|house|store|site|shop|job|ticket|wo|work order|po|invoice|order|account|acct|route|highway|hwy|exit|interstate|panel|breaker number|step|page|row|cell|unit number at|desk|station|locker|key|code number|stall|pier|deck|dock number|spaces|hall|wing|tank|cylinder|cyl|bottle|truck|van|rev|revision|version|option|channel|line item|item|ext|extension|gate code|chapter|position|pos|parking|stair|stairwell|elevator|crew of|party of|ladder|slot|address|street|avenue|ave|road|rd|terminal block|tb|jack|port|ports|bus stop|relay|output number|input number|dip switch|dip sw|dip|dips|dip switches|switch|pin|pins|screen|menu|parameter|param|figure|fig|table|stop|box number|drum|number|numbers|nbr|no\\.|keypad|passcode|combo|lockbox|padlock|door code|lock code|elevator code|alarm code|entry code|access code|keycode|key pad|frame",
    { kind: "aside", name: "", letters: true, upTo: 99999 },
  ],
];

/** Single letters and short names that are electrical points where a point is expected. */
export const pointWords: readonly (readonly [words: string, point: string])[] = [
  ["common|commons", "C"],
  ["run|run terminal|run pin", "R"],
  ["start|start terminal|start pin", "S"],
  ["neutral|neut", "N"],
  ["hot", "hot"],
  [
    "dc+|dc plus|dc positive|positive bus|bus plus|p bus|d c plus|plus bus|positive dc|bus positive|dc plus side|dc pos|bus+|b+|d c positive|plus",
    "DC+",
  ],
  [
    "dc-|dc minus|dc negative|negative bus|bus minus|n bus|d c minus|minus bus|negative dc|bus negative|dc neg|d c negative|dc-minus",
    "DC-",
  ],
];
