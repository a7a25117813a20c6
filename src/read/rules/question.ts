import type { QuestionName } from "../../vocabulary.ts";
import type { Note, Rule } from "../note.ts";
import { forms } from "./question-forms.ts";

/** "what's the superheat": a figure that is worked out as well as one that was read. */
const figureAsked =
  /^(?:so )?(?:what'?s|what is|what was) (?:the |my |our )?(?:super ?heat|sub ?cool(?:ing)?|sh|sc|split|delta t|ratio|approach|imbalance|unbalance)(?: now| right now| today)?(?: (?:at|on|for|of|over at) (?:the )?[a-z][a-z0-9' -]{1,30})?$/;

/** Asked without a question mark too, where hardly a word stands beside it. */
const brief = new Set<QuestionName>([
  "product",
  "hours",
  "worked",
  "weights",
  "handover",
  "customer",
  "bring",
  "who",
  "locks",
  "parts",
  "rooms",
  "law",
  "told",
]);
/** Nothing but a question reads so. */
const plainly = new Set<QuestionName>(["summary", "next", "export", "shared"]);
/** Asked so without the mark, nobody tells it of himself. */
const leave =
  /^(?:(?:so|ok|okay|and) )*(?:(?:can|may) i (?:go|leave|close)|(?:am i|are we) (?:good|ok|okay|clear|done|all set|missing)|did i (?:miss|forget)|anything (?:else )?(?:left|missing)|what(?:'?s| is)(?: still)? (?:left|missing|outstanding))\b/;

/** Whole sentences that hand a job over are longer than other questions without a mark. */
const longestTaking = 14;
const takingOver =
  /\b(?:taking|took|i'?ll take|i will take|i have|i'?ve got) (?:over\b|it\b|this\b|[a-z]+[- ]?\d+\b|[a-z'&-]+(?: [a-z'&-]+)? from\b)|\bbefore (?:i|we) (?:take|start|go|get|head|touch)\b/;

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
  /^(?:(?:so|and|ok|hey) )*(?:(?:what'?s|what is) (?:the (?:story|latest|situation|deal)|going on|happening) (?:at|with|on|over at) (?!(?:this|the) (?:unit|machine|one|thing|box|system)$).{2,40}|where (?:are we|am i) (?:at|with|on) .{2,40}|what(?:'s| has| was)? (?:happened|wrong|the (?:trouble|problem|fault)) (?:so far )?(?:at|with|on|over at) (?!.*\blast (?:time|visit)).{2,40}|what do we (?:know|have) (?:about|on|at|for) .{2,40}|(?:catch me up|fill me in|bring me up to speed)(?: (?:at|with|on) .{2,40})?|how did (?!it\b|that\b|this\b).{2,40} (?:end up|turn out|come out|finish(?: up)?|go)|how(?:'?s| is| are| did) (?:it|things|everything|that|the job|we)? ?(?:go|going|coming|coming along|looking|doing|shaping up)? ?(?:at|with|on|over at) .{2,40}|how(?:'?s| is| did) (?!(?:it|that|this|the (?!job\b)[a-z]+ (?:look|read))\b).{2,40} (?:go|going|coming|coming along|doing|getting on|looking|holding up|shaping up))$/;

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
      /^(?:where am i|hows?|what (?:do we|happened|was wrong|was the)|what(?:'?s| is) (?:the (?:story|latest|situation|deal)|going on|happening))\b/.test(
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
          (/^what did [a-z0-9][a-z0-9 .-]{0,40} (?:read|show|meg|measure)(?: (?:at|out at))?(?: (?:before|when|after|last|this|at)\b.{1,40})?$/.test(
            text,
          ) ||
            /^what (?:did|do|was|were) (?:we|i|you|he|she|they|the|my|our)\b/.test(text) ||
            whatIs.test(text) ||
            /^(?:(?:so|and|ok) )*how (?:many|warm|cold|hot) /.test(text) ||
            figureAsked.test(text))) ||
        brief.has(question)) &&
      text.split(" ").length <= wordsOf(question, text)
    )
      return question;
  }
  return undefined;
}

/** "whats the product temp at cobalt": a name, and no figure behind it. */
const whatIs =
  /^what(?:'?s| is) the (?:last )?(?:product|box|head|suction|liquid|discharge|supply|return|bus|oil)(?: (?:temp|temperature|pressure|line|air|volts|voltage))?(?: (?:at|on|of|for|in|now|there)\b[^\d]{0,40})?$/;

const turned: ReadonlySet<QuestionName> = new Set(["parts", "who", "history"]);

function wordsOf(question: QuestionName, text: string): number {
  // no figure goes under in a question
  const bare = !/(?:^|\s)\d/.test(text.replace(takingOver, ""));
  if (question === "handover" && takingOver.test(text) && bare) return longestTaking;
  if (question === "handover" && /^(?:(?:so|and|ok) )*what\b/.test(text)) return 9;
  if (question === "bring") return 12;
  if (question === "reading" && /^what (?:did|do|was|were) [a-z]/.test(text)) return 14;
  if (question === "customer" && /^what (?:do|can|should) (?:i|we) tell\b/.test(text)) return 12;
  if (
    question === "worked" ||
    question === "hours" ||
    question === "locks" ||
    question === "rooms" ||
    question === "told" ||
    question === "law" ||
    question === "product"
  )
    return 9;
  // nobody tells what begins so
  if (
    /^(?:(?:so|and|ok) )*(?:is|are|was|did|has|what|who|when|how long)\b/.test(text) &&
    turned.has(question)
  )
    return 9;
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
    "any|rooms|room|flats|flat|zones|suites|law|rule|rules|regs|legal|allowed|gas|warm|cold|hot|amps|volts|free|product|hows|jumped|jumpered|jumpers|bypassed|bypasses|limit|floor|minimum|maximum|min|max|spec|cutoff|anybody|anyone|know|target|charge|hours|long|much|many|have|has|do|story|latest|situation|deal|going|happening|catch|fill|speed|eta|word|news|due|come|comes|coming|arrive|arrived|ordered|order|parts|when|does|low|bad|leak|restriction|grounded|shorted|seized|plugged|clogged|restricted|stuck|weak|blown|failed|good|ok|okay|fine|shot|toast|junk|think|could|ideas|thoughts|reckon|take|guess|tag|tags|tagged|open|unfinished|missing|left|lacking|outstanding|missed|forget|miss|need|needed|can|am|did|looks|look|seems|sounds|so|which|whose|lock|locks|locked|lockouts|padlock|padlocks|list|are|share|common|is|why|how|what|whats|next|history|summary|summarize|sum|recap|export|spreadsheet|status|help|where|wheres|board|jobs|who|whos|when|anything|previous|past|been|last|commands|show|send|wrap|tell|bring|taking|handover|handoff|hand|customer|readings|superheat|super|subcooling|subcool|sub|sh|sc|split|delta|ratio|approach|imbalance|unbalance",
  apply: (note: Note) => {
    if (note.plain.length > 300) return;
    // "customer line please"
    const trimmed = note.plain.trim().replace(/,? (?:please|pls|plz)[.!]*$/, "");
    const mark = trimmed.indexOf("?");
    const asked = mark >= 0 ? trimmed.slice(0, mark + 1) : trimmed;
    const whole = mark >= 0 ? lastSentence(asked) : trimmed;
    const last = mark >= 0 ? whole : lastSentence(trimmed);
    // "kids fine just a fever. how did goslin end up": the last thought asks, without its mark
    const tail = askedLast.test(last) && questionOf(whole) === undefined ? last : whole;
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

const askedLast =
  /^(?:how did|what (?:did|has) [a-z]+ (?:leave|left)\b|hows|what was wrong|what did they find|who(?:s| is) at)\b/;

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
