import type { QuestionName } from "../../vocabulary.ts";
import type { Note, Rule } from "../note.ts";
import { partAsked } from "./part-question.ts";

/** "what's the superheat": a figure that is worked out as well as one that was read. */
const figureAsked =
  /^(?:so )?(?:what'?s|what is|what was) (?:the |my |our )?(?:super ?heat|sub ?cool(?:ing)?|sh|sc|split|delta t|ratio|approach|imbalance|unbalance)(?: now| right now| today)?(?: (?:at|on|for|of|over at) (?:the )?[a-z][a-z0-9' -]{1,30})?$/;

/** How questions to the record begin or read, in the order in which they are tried. */
const forms: readonly (readonly [question: QuestionName, form: RegExp, bare: RegExp])[] = [
  [
    "why",
    /^(?:why|how come|what makes you|is (?:that|this|it) (?:bad|good|ok|okay|normal|high|low))\b/,
    /^(?:why|is (?:that|this|it) (?:bad|good|ok|okay|normal|high|low))$/,
  ],
  [
    "lacking",
    /^(?:(?:so|ok|okay|and) )*(?:what(?:'?s| is| else is| do i have| do we have)?(?: still)? (?:left|missing|lacking|outstanding)(?: (?:to do|here|now|for me|on (?:this|it|here)|on this (?:one|job)|(?:for|in|from) (?:this|the|my) (?:job|file|ticket|report|paperwork)|(?:at|on|for|with|over at) (?:the )?[a-z0-9][a-z0-9' -]{1,30}))*|what (?:else |all )?(?:do|does) (?:i|you|we|it|the (?:file|office)) (?:still )?(?:need|lack|want)(?: (?:from me|to (?:do|close|finish|read|get|close (?:it|this)(?: out)?)|here|on this(?: one)?|for (?:this|the) (?:job|file)))*|(?:am i|are we|did i) (?:missing|forget(?:ting)?) (?:anything|something)|(?:is )?anything (?:else )?(?:missing|left|you need|still (?:open|missing|needed))(?: (?:to do|here|on this|from me|(?:on|at|for|with|over at) (?:the )?[a-z0-9][a-z0-9' -]{1,30}))?|(?:can|may) i (?:go|leave|close (?:it|this|it out|this out|the job|out))(?: now)?|(?:am i|are we) (?:good|ok|okay|clear) to (?:go|leave|close)(?: (?:it|this)(?: out)?)?|(?:am i|are we) (?:done|all set)(?: here)?)$/,
    /^(?:what(?:'?s| is) (?:left|missing)(?: to do)?|what do i still need|what am i missing|am i missing anything|did i (?:miss|forget) anything|anything missing)$/,
  ],
  ["parts", partAsked, /^(?:parts|open parts)$/],
  [
    "next",
    /\b(?:what next|whats next|what's next|what now|next step|what (?:else )?(?:should|can|could|do) (?:i|we) (?:check|do|try|look at)|what (?:else )?to check|anything else to (?:check|try|look at)|where do i (?:look|start))\b|^(?:so |ok |okay )*(?:what (?:do|would) (?:you|u) (?:think|reckon|make of (?:it|this|that))(?: it is| now)?|(?:any |your )?(?:ideas|thoughts)|what(?:'?s| is) your (?:take|guess))$/,
    /^(?:what do (?:you|u) think|any (?:ideas|thoughts)|thoughts|next|what next|whats next|what's next|what now)$/,
  ],
  [
    "customer",
    /\b(?:what (?:do|can|should) (?:i|we) tell\b|^(?:please )?tell the (?:customer|client|owner)|(?:line|word|something) for the customer)/,
    /^(?:customer|customer line)$/,
  ],
  [
    "bring",
    /\bwhat (?:do|should|must) (?:i|we) (?:need to )?(?:bring|take along|take with)\b|\bwhat to bring\b|\banything (?:to|i should) bring\b/,
    /^(?:what to bring|bring)$/,
  ],
  [
    "handover",
    /\b(?:anything (?:i|we) (?:should|need to|must) know|what (?:should|must|do) (?:i|we) (?:need to )?know|hand(?: ?over|off) note|(?:taking|i'?ll take|i will take) (?:(?:over )?(?:it|this(?: one| job)?|the job|[a-z]+[- ]?\d+|over)(?: over)? from|over (?:it|this(?: one| job)?|the job|[a-z]+-?\d+)$)|how was it left)\b|^(?:(?:ok|now|so|i'?m|i am|i'?ll be|we'?re) )*(?:taking|i'?ll take|i will take|took|i took) over(?: [a-z'&-]+){1,4}$/,
    /^(?:hand ?over|handoff)$/,
  ],
  [
    "reading",
    /\bwhat (?:did|do) (?:i|we|he|she|you|they) (?:read|get|measure|have|see)\b|\bwhat (?:did|does) (?:the |my |our )?[a-z0-9][a-z0-9 .-]{0,40} (?:read|show|meg|megger|measure|come in at|get to)\b|\bwhat(?: was| were| is| are|'?s) (?:the |my |our |his |her |their )?(?:last )?(?:readings?|values?|lead|leg|phase|winding|box|product|static|megs?|megohms?|ohms?|windings?|insulation|amps?|current|volts?|voltage|drops?|diodes?|microfarads?|suction|head|liquid|discharge|pressures?|temps?|temperatures?|superheat|subcooling|static|vacuum|microns?|weight)\b|^(?:super ?heat|sub ?cool(?:ing)?|sh|sc|split|delta t|ratio|approach|imbalance|unbalance)$/,
    /^readings?$/,
  ],
  [
    "shared",
    /^(?:so )?(?:what|which (?:part|box|unit|branch box)) (?:(?:do|does|is|are)\b.*\b(?:share|in common|common to|hang on)|(?:feeds|serves) (?:them|those|these|(?:all )?the (?:warm|bad|hot|cold|complaining) (?:rooms|zones))|is common to .*)(?: all)?$/,
    /^(?:what (?:do|does) they (?:all )?share|what is common|in common)$/,
  ],
  [
    "who",
    /^(?:who(?:s|'s| is) (?:at|on|over|out|with|going|there|still)\b|(?:who(?:s|'s| is)|is any(?:body|one)|any(?:body|one)) (?:free|available|idle)(?: (?:now|today|right now|this (?:morning|afternoon)))?$|(?:is )?any(?:body|one) (?:else )?(?:still|left) (?:over )?at (?!the (?:shop|office|store|yard)\b)|where(?:'s|s| is) (?!(?:everyone|everybody|it|that|this|the|my|our|your|we)\b)[a-z]+(?: (?:at|now|today|right now))?$)/,
    /^(?:who is there|whos there)$/,
  ],
  [
    "locks",
    /^(?:whose (?:lock|tag)|who(?:s|'s| has| put)? (?:has )?(?:(?:a|the|his|her) )?(?:lock(?:ed|s)?|tag(?:ged)?)\b|what(?:s|'s| is)? (?:still )?locked|(?:is|are) (?:it|that|this|everything|the [a-z]+) (?:still )?locked|any locks\b|(?:(?:(?:did|do|have|has|had|is|are|was|were) (?:we|i|you|he|she|they|any(?:body|one|thing)|some(?:body|one|thing)|there (?:a|any))|did (?!the\b)[a-z]+) (?:ever |still |have |got |put )*(?:(?:a|any|the|my|our) )?(?:lock|lockout|tag|locked|tagged)(?! (?:up|out of)\b)\b)|list (?:of )?(?:the )?locks|which (?:units?|machines?|jobs?) (?:is|are) locked|locks? (?:on|still on|out)\b)/,
    /^(?:locks|lock list|lockouts)$/,
  ],
  [
    "worked",
    /^(?:(?:so|and|ok|hey) )*what (?:did|has|have|had|all did) (?!(?:i|we|you|it|that|this|the|he|she|they)\b)[a-z]+ (?:do|done|did|fix|fixed|change|changed|find|found|put in|replace|replaced|get done|work on)\b(?! (?:with|for lunch|for dinner|to (?:you|me|my)))/,
    /^what was done$/,
  ],
  [
    "history",
    /\b(?:history|what did (?:i|we|he|she|they) (?:do|find|put in|change|fix|fit|install|replace|swap)|what (?:was (?:it|that|wrong|the (?:problem|trouble|fault|matter))|happened)\b.*\blast (?:time|visit)|last time we were|been here before|who was here|previous visits?|past visits?|when were we|anything done here|what was done)\b/,
    /^history$/,
  ],
  ["summary", /\b(?:summary|summarize|sum up|recap|wrap up for)\b/, /^(?:summary|recap)$/],
  ["export", /\b(?:export|spreadsheet|send the day)\b/, /^export$/],
  [
    "weights",
    /^(?:(?:so|and|ok) )*(?:how (?:much|many (?:pounds|lbs?|kilos?|kg|ounces))(?: (?:gas|refrigerant|charge|juice|r-?\d+[a-z]?))?(?: in total)? (?:went (?:in|into|back|out)|(?:have|has) (?:i|we|you|he|she|they|[a-z]+) (?:put|added|charged|recovered|pulled|taken|weighed)|did (?:we|i|you|he|she|they|[a-z]+) (?:put|add|charge|recover|pull|take|weigh)|was (?:charged|added|recovered|put in|pulled)|is (?:in|left to go|to go)|came out|(?:does|should) (?:it|that|this|[a-z]+-?\d+) (?:take|hold|get)|(?:more |still )?(?:to go|goes in))\b.*|(?:did|do|have|has) (?:we|i|you|he|she|they|any(?:body|one)) (?:ever )?(?:get|got|have|weigh|weighed|log|record|note|write down) (?:(?:the|a|any|that) )?(?:(?:charge|gas|refrigerant|recovery|recovered) )?(?:weights?|charge|gas|refrigerant)\b.*|what (?:does|did|should) (?:it|this|this one|that) (?:hold|take)|what(?:'?s| is) the target(?: weight)?(?: (?:on|for) (?:it|this|that|this one|circuit \d|ckt \d))?(?: and .*)?|what(?:'?s| is| was) the (?:target|total|full|plate|factory|nameplate)?(?: |$)?(?:target |total )?charge(?: (?:for|on|of|in|target) .*| target)?)$/,
    /^(?:charge target|target charge|total charge)$/,
  ],
  [
    "hours",
    /^(?:(?:so|and|ok|hey) )*(?:how long (?:have|has|had|was|were) (?:i|we|you|he|she|they|[a-z]+) (?:(?:been|already) )*(?:here|there|out (?:here|there)|on (?:this|the (?:job|clock)|site)|at .{2,40})(?: (?:now|today|already|so far))*|how (?:many hours|much time)(?! (?:on|has|does|did|is|to|for|until|till) (?:the |that |this )?(?:comp|compressor|motor|unit|run|bearing|oil|filter|drier)\b)\b.{0,60}|(?:what(?:'?s| are) )?(?:my|our|the|total) hours(?: (?:so far|today|here|on|for|at)\b.{0,40})?|hours (?:on|for|at) .{2,40}|hours (?:today|so far|this week)|when did (?:i|we) (?:get (?:here|there)|start here|clock in|arrive)(?: (?:here|today))?)$/,
    /^(?:hours|my hours)$/,
  ],
  [
    "how",
    /^(?:how do i|how to|how should i|how do you|show me how|how(?! (?:much|many|long|far|come|about|'s|is|are|was|were|did|has|have|will)\b))\b/,
    /^how$/,
  ],
  [
    "status",
    /\b(?:status|where is (?:everyone|everybody)|what(?:'?s| is) (?:still |left |all )*(?:open|outstanding|unfinished)|open jobs|where are we|who is where|who'?s where|who all is where)\b/,
    /^(?:status|board|jobs)$/,
  ],
  ["help", /^(?:help|what can you do|commands)\b/, /^help$/],
];

/** Asked without a question mark too, where hardly a word stands beside it. */
const brief = new Set<QuestionName>([
  "hours",
  "worked",
  "weights",
  "handover",
  "customer",
  "bring",
  "who",
  "locks",
  "parts",
]);
/** Nothing but a question reads so. */
const plainly = new Set<QuestionName>(["summary", "next", "export", "shared"]);
/** Asked so without the mark, nobody tells it of himself. */
const leave =
  /^(?:(?:so|ok|okay|and) )*(?:(?:can|may) i (?:go|leave|close)|(?:am i|are we) (?:good|ok|okay|clear|done|all set|missing)|did i (?:miss|forget)|anything (?:else )?(?:left|missing)|what(?:'?s| is)(?: still)? (?:left|missing|outstanding))\b/;

/** Whole sentences that hand a job over are longer than other questions without a mark. */
const longestTaking = 14;
const takingOver =
  /\b(?:taking|took|i'?ll take|i will take|i have|i'?ve got) (?:over\b|it\b|this\b|[a-z]+[- ]?\d+\b)|\bbefore (?:i|we) (?:take|start|go|get|head|touch)\b/;

/** "so low charge?", "compressor looks good?": a verdict that he wants to hear; told, without the mark, it is his own. */
const machinery =
  "(?:(?:inverter|drive|gas|reversing|expansion|fan|blower|run|control|crankcase|branch|tx) )?(?:comp(?:ressor)?|motor|drive|inverter|board|txv|eev|valve|cap(?:acitor)?|contactor|fan|blower|coil|charge|superheat|subcooling|sh|sc|windings?|insulation|megs?|leads?|module|rectifier|bridge|transformer|pressures?|amps|volts|supply|vacuum|bus|sensor|thermistor|drier|filter|heater|belt|bearing)s?(?: [a-z0-9])?";
const guessed = new RegExp(
  `^(?:(?:so|and|then|ok|hmm) )*(?:(?:is )?(?:it|she|this one|(?:circuit|ckt|comp|compressor|system|unit)(?: [a-z0-9])?)(?:'s| is)? (?:a bit |a little |just |really )?(?:low|short|overcharged|undercharged|flat)(?: (?:on|of) (?:charge|gas|refrigerant))?|(?:(?:is|are|could|would|does) (?:it|that|this)(?: (?:be|mean))? ?|think (?:it'?s|its) |it'?s |is |are )?(?:a |an |the |my |our )?(?:low (?:on )?(?:charge|gas)|(?:over|under)charged?|(?:bad|blown|stuck|weak|failed|plugged|clogged|restricted) ${machinery}|leak|restriction|ground fault|(?:grounded|shorted|seized|shot|toast|leaking|shorted out|open wound)|${machinery} ?(?:is|are|looks?|seems?|sounds?)? ?(?:good|ok|okay|bad|fine|shot|toast|junk|grounded|shorted|seized|locked up)))(?: then)?$`,
);

/** "so is it tight?", "does it hold?", "is 38.8 ok?": how a figure or a test that was told came out. */
const ofTest =
  /^(?:(?:so|and|then|ok|hmm) )*(?:(?:is|does|did|will) (?:it|that|this)(?: (?:still|now|even))? (?:tight|hold|holding|holding up|leak|leaking|dry|wet|pass|within spec|in spec)|(?:is|are|was) (?:a |an )?\d+(?:\.\d+)?(?: [a-z]+)? (?:an? )?(?:ok|okay|good|bad|fine|normal|high|low|too (?:high|low|much|little)|enough|in spec|within spec|alright|all right)(?: (?:for|on|at) .{1,30})?|(?:how(?:'s| is| does| do| are)|hows|does|do) (?:it|that|this|those|these|they|everything|all that)(?: all)? (?:look|looking|sound|check out)(?: (?:ok|okay|good|right|to you|so far))?|what (?:does|do|did) (?:it|that|this|those|they) mean|(?:still )?(?:holding|tight|leaking|good|ok|okay))$/;

/** "what's the story at the market?", "where are we with the hotel?": all of a job, in short. */
const story =
  /^(?:(?:so|and|ok|hey) )*(?:(?:what'?s|what is) (?:the (?:story|latest|situation|deal)|going on|happening) (?:at|with|on|over at) .{2,40}|where (?:are we|am i) (?:at|with|on) .{2,40}|what(?:'s| has| was)? (?:happened|wrong|the (?:trouble|problem|fault)) (?:so far )?(?:at|with|on|over at) (?!.*\blast (?:time|visit)).{2,40}|(?:catch me up|fill me in|bring me up to speed)(?: (?:at|with|on) .{2,40})?)$/;

/** "error p08 in history", "fault history shows e4": what a board has kept is told. */
const kept =
  /\b(?:in (?:the |its )?(?:fault |error |alarm )?history|history (?:shows?|says|has|had|lists?|is))\b/;

function tellsCode(text: string): boolean {
  return kept.test(text) && /\b[a-z]{1,2}-?\d{1,3}\b/.test(text);
}

function questionOf(plain: string): QuestionName | undefined {
  const asked = plain.endsWith("?");
  const text = plain.replace(/[?!.\s]+$/, "").trim();
  if (/^(?:(?:so|and|ok) )*what (?:does|do) (?:it|that|this) mean$/.test(text)) return "why";
  if (
    /^(?:(?:so|and|ok) )*(?:how long (?:do|should|must) (?:i|we) (?:have to )?wait|when can (?:i|we) (?:open|touch|measure|read) (?:it|the bus|the drive))$/.test(
      text,
    )
  )
    return "status";
  if (
    (asked ||
      /^(?:where am i|what (?:happened|was wrong|was the)|what(?:'?s| is) (?:the (?:story|latest|situation|deal)|going on|happening))\b/.test(
        text,
      )) &&
    story.test(text)
  )
    return "summary";
  if (asked && (guessed.test(text) || ofTest.test(text))) return "why";
  for (const [question, form, bare] of forms) {
    if (bare.test(text)) return question;
    if (question === "history" && !asked && tellsCode(text)) continue;
    if (!form.test(text) && !(question === "reading" && figureAsked.test(text))) continue;
    if (asked || plainly.has(question) || (question === "lacking" && leave.test(text)))
      return text.length < 120 ? question : undefined;
    if (question === "why" && text.split(" ").length <= 6) return question;
    if (question === "how" && /^how (?:do|to|should)/.test(text)) return question;
    if (
      (question === "history" ||
        question === "status" ||
        question === "help" ||
        (question === "reading" &&
          (/^what did [a-z0-9][a-z0-9 .-]{0,40} (?:read|show|meg|measure)(?: (?:before|when|after|last|this|at)\b.{1,40})?$/.test(
            text,
          ) ||
            /^what (?:did|do|was|were) (?:we|i|you|he|she|they|the|my|our)\b/.test(text) ||
            figureAsked.test(text))) ||
        brief.has(question)) &&
      text.split(" ").length <= wordsOf(question, text)
    )
      return question;
  }
  return undefined;
}

function wordsOf(question: QuestionName, text: string): number {
  // no figure goes under in a question
  const bare = !/(?:^|\s)\d/.test(text.replace(takingOver, ""));
  if (question === "handover" && takingOver.test(text) && bare) return longestTaking;
  if (question === "bring") return 12;
  if (question === "reading" && /^what (?:did|do|was|were) [a-z]/.test(text)) return 14;
  if (question === "customer" && /^what (?:do|can|should) (?:i|we) tell\b/.test(text)) return 8;
  if (question === "worked" || question === "hours" || question === "locks") return 9;
  if (question === "weights" || question === "lacking") return 14;
  return question === "reading" ? 10 : question === "history" ? 8 : 5;
}

/** Where a question begins: "taking ou3 from bram, anything I should know?" is one from its start. */
function startOf(question: QuestionName, whole: string, tail: string): number {
  const from = whole.indexOf(tail);
  const before = whole.slice(0, from);
  const hands = question === "handover" && takingOver.test(before);
  return hands && before.trim().split(" ").length <= longestTaking ? 0 : from;
}

/** "why?", "what next?", "status?", "any history here?", "summary of the daycare" */
export const questions: Rule = {
  name: "<question>",
  heads:
    "anybody|anyone|know|target|charge|hours|long|much|many|have|has|do|story|latest|situation|deal|going|happening|catch|fill|speed|eta|word|news|due|come|comes|coming|arrive|arrived|ordered|order|parts|when|does|low|bad|leak|restriction|grounded|shorted|seized|plugged|clogged|restricted|stuck|weak|blown|failed|good|ok|okay|fine|shot|toast|junk|think|could|ideas|thoughts|reckon|take|guess|tag|tags|tagged|open|unfinished|missing|left|lacking|outstanding|missed|forget|miss|need|needed|can|am|did|looks|look|seems|sounds|so|which|whose|lock|locks|locked|lockouts|list|are|share|common|is|why|how|what|whats|next|history|summary|summarize|sum|recap|export|spreadsheet|status|help|where|board|jobs|who|whos|when|anything|previous|past|been|last|commands|show|send|wrap|tell|bring|taking|handover|handoff|hand|customer|readings|superheat|super|subcooling|subcool|sub|sh|sc|split|delta|ratio|approach|imbalance|unbalance",
  apply: (note: Note) => {
    if (note.plain.length > 300) return;
    const trimmed = note.plain.trim();
    const mark = trimmed.indexOf("?");
    const asked = mark >= 0 ? trimmed.slice(0, mark + 1) : trimmed;
    const tail = mark >= 0 ? lastSentence(asked) : trimmed;
    const question = questionOf(tail);
    if (question === undefined || tellsNew(note, tail)) return;
    const to = note.plain.indexOf(tail) + tail.length;
    const from = startOf(question, note.plain, tail);
    for (const item of note.items)
      if (item.from >= from && item.to <= to) item.owner = questions.name;
    const about = note.text.slice(from, to);
    note.statements.push({
      kind: "question",
      question,
      about,
      said: about,
      spans: [[from, to]],
      rule: questions.name,
    });
  },
};

/** "is 0.3 megohms bad?? that's T3 to the case": a figure with its unit that nobody told before is a reading. */
function tellsNew({ context }: Note, tail: string): boolean {
  const figure = /^(?:is|are|was) (?:an? )?(\d+(?:\.\d+)?) ?[a-z]/.exec(tail)?.[1];
  const unit =
    /^(?:is|are|was) (?:an? )?[\d.]+ ?(?:ok|okay|good|bad|fine|normal|high|low|too|enough|in|alright|all)\b/;
  if (figure === undefined || unit.test(tail)) return false;
  return !context.readings.some((one) => one.figure.number === figure);
}

/** "… pulls it down, what next?": the question is the last thought. */
function lastSentence(text: string): string {
  const cut = Math.max(
    text.lastIndexOf(". "),
    text.lastIndexOf(", "),
    text.lastIndexOf("! "),
    text.lastIndexOf("\n"),
  );
  return cut < 0 ? text : text.slice(cut + 1).trim();
}
