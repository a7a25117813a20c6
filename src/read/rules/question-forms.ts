import type { QuestionName } from "../../vocabulary.ts";
import { partAsked } from "./part-question.ts";

/** How questions to the record begin or read, in the order in which they are tried. */
export const forms: readonly (readonly [question: QuestionName, form: RegExp, bare: RegExp])[] = [
  [
    "why",
    /^(?:(?:why|how come|what makes you|is (?:that|this|it) (?:bad|good|ok|okay|normal|high|low))\b|what(?:'?s| is) the (?:limit|floor|minimum|maximum|min|max|spec|cutoff)(?: (?:for|on|at|of|here|there)\b.{0,30})?$)/,
    /^(?:why|is (?:that|this|it) (?:bad|good|ok|okay|normal|high|low))$/,
  ],
  [
    "lacking",
    /^(?:(?:so|ok|okay|and) )*(?:what(?:'?s| is| else is| do i have| do we have)?(?: still)? (?:left|missing|lacking|outstanding)(?: (?:to do|here|now|for me|on (?:this|it|here)|on this (?:one|job)|(?:for|in|from) (?:this|the|my) (?:job|file|ticket|report|paperwork)|(?:at|on|for|with|over at) (?:the )?[a-z0-9][a-z0-9' -]{1,30}))*|what (?:else |all )?(?:do|does) (?:i|you|we|it|the (?:file|office)) (?:still )?(?:need|lack|want)(?: (?:from me|to (?:do|close|finish|read|get|close (?:it|this)(?: out)?)|here|on this(?: one)?|for (?:this|the) (?:job|file)))*|(?:am i|are we|did i) (?:missing|forget(?:ting)?) (?:anything|something)|(?:is )?anything (?:else )?(?:missing|left|you need|still (?:open|missing|needed))(?: (?:to do|here|on this|from me|(?:on|at|for|with|over at) (?:the )?[a-z0-9][a-z0-9' -]{1,30}))?|(?:can|may) i (?:go|leave|close (?:it|this|it out|this out|the job|out))(?: now)?|(?:am i|are we) (?:good|ok|okay|clear) to (?:go|leave|close)(?: (?:it|this)(?: out)?)?|(?:am i|are we) (?:done|all set)(?: here)?)$/,
    /^(?:what(?:'?s| is) (?:left|missing)(?: to do)?|what do i still need|what am i missing|am i missing anything|did i (?:miss|forget) anything|anything missing)$/,
  ],
  ["parts", partAsked, /^(?:parts|open parts)$/],
  [
    "rooms",
    /^(?:(?:so|and|ok|hey) )*(?:(?:which|what) (?:rooms?|flats?|apartments?|apts?|suites?|zones?|offices|wards?|classrooms?)|any (?:rooms?|flats?|apartments?|suites?|zones?)) (?:(?:are|is|were|was) )?(?:still |all |left )*(?:out|down|cold|warm|hot|off|bad|affected|not (?:working|cooling|heating)|without (?:heat|cooling|air|ac))(?: (?:at|in|on|over at|now|there)\b.{0,40})?$/,
    /^(?:which|what) rooms$/,
  ],
  [
    "law",
    /\bwhat(?:'?s| is| does| do)? (?:the )?(?:law|rules?|regs?|regulations?|epa) (?:says?|require|allow|on|about|for)\b|^(?:is (?:it|that) (?:legal|allowed)|are we allowed|am i allowed) (?:to|if)\b/,
    /^what does the law say$/,
  ],
  [
    "told",
    /^(?:(?:so|and|ok|hey) )*which (?:compressor|comp|fan|motor|circuit|board|valve|cap|capacitor|contactor|leg|phase|lead|coil|breaker|fuse|filter|belt|pump|drive)s?(?: (?:one )?(?:was|is|did|does|are|were)\b.{0,40})?$/,
    /^which (?:compressor|comp|fan|motor|circuit|board|valve)$/,
  ],
  [
    "parts",
    /^(?:what(?:'?s| is| parts are| parts is)? (?:still )?(?:needed|needs ordering) (?:for|at|on)|what parts (?:are )?(?:for|at)|what do (?:i|we) (?:still )?need (?:for|at)(?! (?:it|this|that)\b)) .{2,30}$|^what'?s (?!it\b|that\b|this\b|he\b|she\b)[a-z]+ (?:still )?waiting (?:on|for)$/,
    /^what'?s (?:still )?needed$/,
  ],
  [
    "parts",
    /^(?:(?:so|and|ok) )*what (?:(?:do|does|did) (?!(?:i|we|you|it|that|this|the)\b)[a-z]+ (?:still )?(?:need|want|order|ask for|use)|(?:are we|are they|is (?!it\b)[a-z]+|am i) (?:still )?waiting (?:on|for))(?: (?:at|on|for|there|here|now|today)\b.{0,40})?$/,
    /^what are we waiting on$/,
  ],
  [
    "next",
    /\b(?:what next|whats next|what's next|what now|next step|what (?:else )?(?:should|can|could|do) (?:i|we) (?:check|do|try|look at)|what (?:do|would|did) you (?:want|need|like) (?:me|us) to (?:check|do|try|look)|what (?:else )?to check|(?:what|which (?:one|job)) (?:do|should|can) (?:i|we) (?:do|take|hit) (?:now|next|then)|anything else to (?:check|try|look at)|where do i (?:look|start))\b|^(?:so |ok |okay )*(?:what (?:do|would) (?:you|u) (?:think|reckon|make of (?:it|this|that))(?: it is| now)?|(?:any |your )?(?:ideas|thoughts)|what(?:'?s| is) your (?:take|guess))$/,
    /^(?:what do (?:you|u) think|any (?:ideas|thoughts)|thoughts|next|what next|whats next|what's next|what now)$/,
  ],
  [
    "customer",
    /\b(?:what (?:do|can|should) (?:i|we) tell\b|^(?:please )?tell the (?:customer|client|owner)|(?:line|word|something) for the customer|^customer (?:line|text|note|update|message)(?: (?:for|on|at) .{2,40})?$)/,
    /^(?:customer|customer line)$/,
  ],
  [
    "bring",
    /\bwhat (?:do|should|must) (?:i|we) (?:need to )?(?:bring|take along|take with)\b|^(?:(?:so|and|ok) )*what (?:all |parts )?do (?:i|we) need (?:for|at) .{2,30}$|\bwhat to bring\b|\banything (?:to|i should) bring\b/,
    /^(?:what to bring|bring)$/,
  ],
  [
    "handover",
    /\b(?:anything (?:i|we) (?:should|need to|must) know|what (?:(?:should|must|do) (?:i|we) (?:need to )?|do (?:i|we) have to )know|what have we got here$|hand(?: ?over|off) note|(?:taking|i'?ll take|i will take) (?:(?:over )?(?:it|this(?: one| job)?|the job|[a-z]+[- ]?\d+|over)(?: over)? from|(?!(?:the|a|an|my|any|some|one|off|out|readings?|amps|volts|voltage|power|temps?|pressures?|measurements?|numbers|parts?|water|air|heat|gas|lunch)\b)[a-z'&-]+(?: [a-z'&-]+)? (?:over )?from (?!the\b)[a-z]+$|over (?:it|this(?: one| job)?|the job|[a-z]+-?\d+)$)|how was it left|what (?:did|has|have) (?!(?:i|we|you|it)\b)[a-z]+ (?:leave|left)(?: (?:on|at|in|for|behind|running|here|there|me|us))?)\b|^(?:(?:ok|now|so|i'?m|i am|i'?ll be|we'?re) )*(?:taking|i'?ll take|i will take|took|i took) over(?: [a-z'&-]+){1,4}$/,
    /^(?:(?:give|get|send) me (?:a |the )?)?hand(?: ?over|off)(?: note)?(?: (?:for|on) .{2,40})?$/,
  ],
  [
    "reading",
    /^(?:(?:so|and|ok) )*how (?:many (?:amps|volts|microns|psi|ohms|megohms|megs?)|(?:warm|cold|hot) (?:is|was|were|are))\b.{0,50}$|\bwhat (?:did|do) (?:i|we|he|she|you|they) (?:read|get|measure|have|see)\b|\bwhat (?:did|does) (?:the |my |our )?[a-z0-9][a-z0-9 .-]{0,40} (?:read|show|meg|megger|measure|come in at|get to)\b|\bwhat(?: was| were| is| are|'?s) (?:the |my |our |his |her |their )?(?:last )?(?:readings?|values?|lead|leg|phase|winding|box|product|static|megs?|megohms?|ohms?|windings?|insulation|amps?|current|volts?|voltage|drops?|diodes?|microfarads?|suction|head|liquid|discharge|pressures?|temps?|temperatures?|superheat|subcooling|static|vacuum|microns?|weight)\b|^(?:super ?heat|sub ?cool(?:ing)?|sh|sc|split|delta t|ratio|approach|imbalance|unbalance)$/,
    /^readings?$/,
  ],
  [
    "shared",
    /^(?:so )?(?:what|which (?:part|box|unit|branch box)) (?:(?:do|does|is|are)\b.*\b(?:share|in common|common to|hang on)|(?:feeds|serves) (?:them|those|these|(?:all )?the (?:warm|bad|hot|cold|complaining) (?:rooms|zones))|is common to .*)(?: all)?$/,
    /^(?:what (?:do|does) they (?:all )?share|what is common|in common)$/,
  ],
  [
    "who",
    /^(?:who (?:all )?(?:was|were|went|has been) (?:at|on|over at|out at|to|there)\b.{0,40}$|how long (?:till|until|til|before) (?!(?:i|we|it|that|this|the)\b)[a-z]+ (?:is|gets) (?:free|done|finished|out|back)\b.{0,20}$|when (?:is|will) (?!(?:it|that|this|the|she|he)\b)[a-z]+ (?:be )?(?:free|done|finished)$|(?:which|what) (?:one|unit|job|machine) is (?!(?:it|that|this|the)\b)[a-z'-]+ (?:on|at|working on|doing)(?: (?:now|right now))?$|who(?:s|'s| is) (?:at|on|over|out|with|going|there|still)\b|is (?!(?:it|that|this|the|there|any(?:body|one))\b)[a-z]+ (?:free|available|idle|busy)(?: (?:now|yet|today|right now|this (?:morning|afternoon)))?$|(?:who(?:s|'s| is)|is any(?:body|one)|any(?:body|one)) (?:free|available|idle)(?: (?:now|today|right now|this (?:morning|afternoon)))?$|(?:is )?any(?:body|one) (?:else )?(?:(?:still|left) )?(?:over )?at (?!the (?:shop|office|store|yard)\b)|(?:did|has) (?!(?:i|we|you|it|that|this|the|any(?:body|one|thing))\b)[a-z]+ (?:leave|left|arrive|arrived|get there|got there|show up|gone)(?: yet| already| there)*$|(?:is|are) (?!(?:it|that|this|we|you|there|the)\b)[a-z]+ (?:still )?(?:there|here|on (?:it|site)|at .{2,40}|(?:done|finished)(?: (?:at|with|on) .{2,40})?)(?: yet| already| now| still)*$|what(?:'s|s| is) (?!(?:it|that|this|the|he|she|everyone|everybody|everything|any(?:one|body|thing)|my|our|your|we)\b)[a-z]+ (?:doing|up to)(?: now| right now)?$|where(?:'s|s| is) (?!(?:everyone|everybody|it|that|this|the|my|our|your|we)\b)[a-z]+(?: (?:at|now|today|right now))?$)/,
    /^(?:who is there|whos there)$/,
  ],
  [
    "locks",
    /^(?:whose (?:pad)?(?:lock|tag)|who(?:['’]?s| is| has)?(?: still| all)*(?: got| has| have| left)?(?: still)? (?:a |an |any |his |her |their |the )?(?:pad)?lock(?:s|out)?\b|who(?:s|'s| has| put)? (?:has )?(?:(?:a|the|his|her) )?(?:lock(?:ed|s)?|tag(?:ged)?)\b|what(?:s|'s| is)? (?:still )?locked|(?:is|are) (?:it|that|this|everything|the [a-z]+) (?:still )?locked|any locks\b|(?:(?:(?:did|do|have|has|had|is|are|was|were) (?:we|i|you|he|she|they|any(?:body|one|thing)|some(?:body|one|thing)|there (?:a|any))|did (?!the\b)[a-z]+) (?:ever |still |have |got |put )*(?:(?:a|any|the|my|our) )?(?:lock|lockout|tag|locked|tagged)(?! (?:up|out of)\b)\b)|(?:is|are|was) (?:there (?:still )?(?:a|any|another|no)|(?:the|his|her|my|your|our|their|any|[a-z]+'s)) (?:locks?|tags?)\b.{0,40}|list (?:of )?(?:the )?locks|which (?:units?|machines?|jobs?) (?:is|are) locked|locks? (?:on|still on|out)\b|(?:(?:is|are) )?any(?:thing|one)? (?:still |left |all )*(?:jump(?:ed|ered|ers)|bypass(?:ed|es)|locked)(?: (?:left|on|out|there|still|off))*(?: (?:at|on|over at) .{2,40})?$)/,
    /^(?:locks|lock list|lockouts|(?:(?:is|are) )?(?:anything|any|what(?:'?s| is)?) (?:still |left )*(?:jumped|jumpered|jumpers|bypassed|bypasses)(?: (?:left|on|out|there|still))*)$/,
  ],
  [
    "worked",
    /^(?:(?:so|and|ok|hey) )*what (?:did|has|have|had|all did) (?!(?:i|we|you|it|that|this|the|he|she|they)\b)[a-z]+ (?:do|done|did|fix|fixed|change|changed|find|found|put in|replace|replaced|get done|work on)\b(?! (?:with|for lunch|for dinner|to (?:you|me|my)))/,
    /^what was done$/,
  ],
  [
    "history",
    /\b(?:history|what(?:'?s| is) the (?:story|background|past) (?:on|with|of|here with) (?:this|the) (?:unit|machine|one|thing|box|system|rtu|compressor)|what did (?:i|we|he|she|they) (?:do|find|put in|change|fix|fit|install|replace|swap)|what (?:was (?:it|that|wrong|the (?:problem|trouble|fault|matter))|happened)\b.*\blast (?:time|visit)|last time we were|been here before|^(?:has|have|did) (?:this|that|it|the|these|those|we)\b.{0,40}\bbefore$|^who (?:worked on|was on|looked at|fixed|did) (?:it|this|that|this one|the [a-z]+)(?: (?:last|before|yesterday|last time|last week))?$|^when (?:was|were) (?:we|he|she|they|[a-z]+) last (?:there|here|out|at .{2,30})$|who was here|previous visits?|past visits?|when were we|anything done here|what was done)\b/,
    /^history$/,
  ],
  ["summary", /\b(?:summary|summarize|sum up|recap|wrap up for)\b/, /^(?:summary|recap)$/],
  ["export", /\b(?:export|spreadsheet|send the day)\b/, /^export$/],
  [
    "weights",
    /^(?:(?:so|and|ok) )*(?:what (?:gas|refrigerant) (?:is (?:in|on)|does|do|was|are)\b.{0,40}|how much (?:gas|refrigerant|charge) (?:at|into|in|on|for|over at) (?!(?:it|and|out)\b).{2,40}|how much (?:gas |refrigerant )?(?:in and out|out and in|in|out)(?: (?:at|on|for)\b.{0,40})?|how (?:much|many (?:pounds|lbs?|kilos?|kg|ounces))(?: (?:gas|refrigerant|charge|juice|r-?\d+[a-z]?))?(?: in total)? (?:went (?:in|into|back|out)|(?:have|has) (?:i|we|you|he|she|they|[a-z]+) (?:put|added|charged|recovered|pulled|taken|weighed)|did (?:we|i|you|he|she|they|[a-z]+) (?:put|add|charge|recover|pull|take|weigh)|was (?:charged|added|recovered|put in|pulled)|is (?:in|left to go|to go)|came out|(?:does|should) (?:it|that|this|[a-z]+-?\d+) (?:take|hold|get)|(?:more |still )?(?:to go|goes in))\b.*|(?:did|do|have|has) (?:we|i|you|he|she|they|any(?:body|one)) (?:ever )?(?:get|got|have|weigh|weighed|log|record|note|write down) (?:(?:the|a|any|that) )?(?:(?:charge|gas|refrigerant|recovery|recovered) )?(?:weights?|charge|gas|refrigerant)\b.*|what (?:does|did|should) (?:it|this|this one|that) (?:hold|take)|what(?:'?s| is) the target(?: weight)?(?: (?:on|for) (?:it|this|that|this one|circuit \d|ckt \d))?(?: and .*)?|(?:what(?:'?s| is| was) the )?leak rate(?: (?:on|of|for|at) .{2,30})?|how (?:much|far) (?:over|under|above|below|short) (?:of )?(?:the )?(?:plate|charge|target)?(?: is (?:that|it|this)| are we)?|(?:what(?:'?s| is| was) )?(?:the )?(?:factory|plate|nameplate) charge|what(?:'?s| is| was) the (?:target|total|full|plate|factory|nameplate)?(?: |$)?(?:target |total )?charge(?: (?:for|on|of|in|target) .*| target)?)$/,
    /^(?:charge target|target charge|total charge|target|(?:the )?(?:factory|plate|nameplate) charge)$/,
  ],
  [
    "hours",
    /^(?:(?:so|and|ok|hey) )*(?:how long (?:have|has|had|was|were) (?:i|we|you|he|she|they|[a-z]+) (?:(?:been|already) )*(?:here|there|out (?:here|there)|on (?:this|the (?:job|clock)|site)|at .{2,40})(?: (?:now|today|already|so far))*|how (?:many hours|much time)(?! (?:on|has|does|did|is|to|for|until|till) (?:the |that |this )?(?:comp|compressor|motor|unit|run|bearing|oil|filter|drier)\b)\b.{0,60}|(?:what(?:'?s| are) )?(?:my|our|the|total) hours(?: (?:so far|today|here|on|for|at)\b.{0,40})?|hours (?:each )?(?:on|for|at) .{2,40}|hours each|hours (?:today|so far|this week)|when did (?:i|we|he|she|they|(?!it\b|this\b|that\b|the\b)[a-z]+) (?:get (?:here|there|in)|start here|start there|clock in|arrive|leave|clock out)(?: (?:here|today))?)$/,
    /^(?:hours|my hours)$/,
  ],
  [
    "product",
    /^(?:(?:so|and|ok) )*(?:how long (?:was|were|is|are|has|have|did|had) (?:the |that |this |their )?(?:product|food|milk|meat|dairy|produce|stuff|goods|stock|box|case|cooler|freezer|walk-?in)s?(?: [a-z0-9]{1,3})?(?: been)? (?:at risk|out of (?:temp|temperature|range)|over|warm|above|sit|warm for|(?:over|above) (?:the )?(?:limit|\d\d))\b.{0,40}|(?:any|is (?:the|any)|was (?:the|any)|is|was) product (?:at risk|loss|lost|ok|okay|safe)\b.{0,40})$/,
    /^any product at risk$/,
  ],
  [
    "how",
    /^(?:how do i|how to|how should i|how do you|show me how|how(?! (?:much|many|long|far|come|about|'s|is|are|was|were|did|has|have|will)\b))\b/,
    /^how$/,
  ],
  [
    "status",
    /^(?:is )?any(?:thing| jobs?) (?:still |left )*open(?: (?:anywhere|today|out there|still))*$|\b(?:status|where is (?:everyone|everybody)|what(?:'?s| is) (?:still |left |all )*(?:open|outstanding|unfinished)|open jobs|where are we|who is where|who'?s where|who all is where|who(?:'s| has|s)(?: got)? (?:what|which)(?: jobs?)?$)(?:\b|$)|^(?:is|are) (?:the )?(?:[a-z]{1,4}[ -]?\d{1,3}|chillers?|unit|rack|boiler|freezer|cooler|walk-?in|heat pump|rooftop|system|furnace|compressor|comp \d) (?:back )?(?:up(?: and running)?|running|cooling|heating|working|going|on|down|off)(?: (?:again|now|yet)){0,2}(?: at .{2,30})?$/,
    /^(?:status|board|jobs)$/,
  ],
  ["help", /^(?:help|what can you do|commands)\b/, /^help$/],
];
