import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { isGauges } from "./gauges-shape.ts";
import { type Item, isOneWord, itemKind } from "./item.ts";
import { onlyDrops } from "./only-drops.ts";
import { ranOther } from "./ran-other.ts";
import { signIndex } from "./signs.ts";
import { valveMoved } from "./valve-moved.ts";
import { whenItTrips } from "./when-it-trips.ts";
import { role } from "./word.ts";

const calling = signIndex("calls");

/** "superheat's a little high at 19", "high superheat at 35": how much it is, no side of the machine. */
function onlyHigh(item: Item, index: number, items: readonly Item[]): boolean {
  if (!/^(?:high|low)$/.test(item.text) || !isOneWord(item)) return false;
  // "high leg", "low fire": what it is called
  const kinds = /^(?:leg|fire|stage|speed|tap|heat|flame|voltage|volts|limit|ambient)$/;
  if (kinds.test(items[index + 1]?.text ?? "")) return true;
  const heat = items[index + 1]?.label?.quantity;
  // "low airflow: esp .94 in"
  if (heat === "airflow" || heat === "static_pressure" || heat === "current") return true;
  if (item.text === "low") return false;
  if (heat === "superheat" || heat === "subcooling") return true;
  const before = items[index - 1]?.text ?? "";
  return /^(?:little|bit|way|too|kinda|pretty|real|really|running|sitting|super|still|so|very|tad|touch)$/.test(
    before,
  );
}

/** "sc 4 low i think": how much it is. */
function heatLow(draft: Draft, index: number, items: readonly Item[]): boolean {
  const item = items[index];
  if (item === undefined || index < draft.index || !isOneWord(item)) return false;
  if (draft.named !== "superheat" && draft.named !== "subcooling") return false;
  return /^(?:high|low)$/.test(item.text);
}

/** "weighed in 8 lb 13 oz factory charge", "put in the nameplate charge 6 lb": what went in, no plate's figure. */
function wentIn(draft: Draft, index: number, items: readonly Item[]): boolean {
  if (items[index]?.label?.rating !== "nameplate_charge") return false;
  if (index > draft.index) return draft.action === "charged";
  const verb = items[index - 1]?.text === "the" ? items[index - 2] : items[index - 1];
  return verb?.label?.action === "charged";
}

/** "charged 44 oz by the chart": so much went in, as the chart has it. */
function byTheChart(draft: Draft, index: number, items: readonly Item[]): boolean {
  const item = items[index];
  if (item?.label?.rating !== "expected" || index < draft.index || draft.action !== "charged")
    return false;
  const before = items[index - 1];
  const led = before?.text === "the" ? items[index - 2] : before;
  return /^per\b/.test(item.text) || /^(?:per|by|to|as)$/.test(led?.text ?? "");
}

/** "it hums and then trips at 104 amps": what it drew when it tripped, nothing that was set. */
function drewThen(draft: Draft, index: number, items: readonly Item[]): boolean {
  if (!/^tripp?/.test(items[index]?.text ?? "") || draft.unit?.dimension !== "current")
    return false;
  return items
    .slice(0, index)
    .some(({ text }) =>
      /^(?:then|hums?|starts?|started|tries|tried|ran|runs|pulls|locks)$/.test(text),
    );
}

/** "cold shell, C-R 0.9": how the shell was, where a pair of pins stands between it and the figure. */
function beforePins(draft: Draft, index: number, items: readonly Item[]): boolean {
  if (items[index]?.label?.place !== "shell" || draft.unit?.dimension === "temperature")
    return false;
  return items.slice(index + 1, draft.index).some(({ points }) => points?.[0]?.length === 2);
}

/** "after the second pull we're at 390": one evacuation of several, no amps. */
function onePull(index: number, items: readonly Item[]): boolean {
  if (items[index]?.text !== "pull") return false;
  const nth = /^(?:second|first|third|last|next|the|this|final|deep)$/;
  return nth.test(items[index - 1]?.text ?? "");
}

/** "mini split head's blowing 108", "hot gas bypass opens at 58": what it is called. */
function called(index: number, items: readonly Item[]): boolean {
  const [before, item, next] = [items[index - 1], items[index], items[index + 1]];
  if (item?.text === "hot") return next?.text === "bypass";
  if (item?.text !== "split") return false;
  return (
    /^(?:mini|ductless|multi)$/.test(before?.text ?? "") ||
    /^(?:system|unit|ac|head)$/.test(next?.text ?? "")
  );
}

/** Inches of water at most that a chimney draws; common practice, no source. */
const mostDraft = 1;

/** "draft cooler 38", "beer draft 36": what is drawn there, no chimney's draft. */
function beerDraft(draft: Draft, index: number, items: readonly Item[]): boolean {
  if (items[index]?.text !== "draft") return false;
  const beside = `${items[index - 1]?.text} ${items[index + 1]?.text}`;
  if (/\b(?:beer|tap|cooler|tower|lines?|system|box|inducer|hood)\b/.test(beside)) return true;
  return draft.unit === undefined && Math.abs(draft.value) > mostDraft;
}

/** "tag HP-3. U-V 1.12": the machine's name, and then what was measured; "500 volt setting": of the tester. */
function namesOnly(draft: Draft, index: number, items: readonly Item[]): boolean {
  const [before, item, next] = [items[index - 1], items[index], items[index + 1]];
  if (/^(?:setting|range|scale)$/.test(item?.text ?? ""))
    return before?.unit?.figure === "V" && before.value >= 50 && index < draft.index;
  if (item?.text !== "tag" || next?.kind !== itemKind.subject || index > draft.index) return false;
  const behind = items[index + 2];
  return behind !== undefined && isStrongBreak(behind);
}

/** "on low speed it's pulling 2.1", "0 on the speed wire": how it runs, what the wire is for, no turns of it. */
function gear(index: number, items: readonly Item[]): boolean {
  const wire = /^(?:wire|tap|lead|signal|command|pin|input|terminal|conductor)$/;
  if (
    items[index]?.label?.quantity === "rotational_speed" &&
    wire.test(items[index + 1]?.text ?? "")
  )
    return true;
  if (items[index]?.text !== "speed") return false;
  const which = /^(?:low|lo|high|hi|med|medium|full|half|first|second|third|top)$/;
  return which.test(items[index - 1]?.text ?? "") && items[index + 1]?.kind !== itemKind.number;
}

const boxes =
  /^(?:junction|mixing|breaker|electrical|splice|pull|tool|shadow|vav|terminal|powered|starter|relay|disconnect|fuse|gear|switch)$/;

/** "junction box 3", "VAV box four's at 430": no cold box. */
function otherBox(index: number, items: readonly Item[]): boolean {
  if (items[index]?.text !== "box") return false;
  return boxes.test(items[index - 1]?.text ?? "");
}

/** "calling for heat and the supply's 68": what it wants is no figure, unless one stands right behind. */
function callsFor(draft: Draft, index: number, items: readonly Item[]): boolean {
  const item = items[index];
  if (item?.label?.rating !== "setpoint" || !item.signs?.includes(calling)) return false;
  if (index > draft.index) return true;
  const small = role.about | role.article | role.is | role.to | role.preposition;
  return items.slice(index + 1, draft.index).some(({ roles }) => (roles & small) === 0);
}

/** "74 in 55 out, spring PM" at the end: what this visit is called. */
export function namesToday(items: readonly Item[], from: number, index: number): boolean {
  const [item, next] = [items[index], items[index + 1]];
  if (index < from || items[index - 1]?.text !== ",") return false;
  if (!/^(?:spring|fall|summer|winter|annual)/.test(item?.text ?? "")) return false;
  return next === undefined || isStrongBreak(next);
}

/** "71 by my probe": what it was read with, no food's. */
function ownProbe(index: number, items: readonly Item[]): boolean {
  if (items[index]?.text !== "probe") return false;
  const [by, whose] = [items[index - 2]?.text ?? "", items[index - 1]?.text ?? ""];
  return (
    /^(?:my|a|wrong|other|bad|same|old|dead)$/.test(whose) ||
    (whose === "the" && /^(?:by|with|using)$/.test(by))
  );
}

/** "put my clamp on it": a tool, no gas that went in. */
function putsTool(index: number, items: readonly Item[]): boolean {
  if (!/^(?:put|putting|threw|stuck)$/.test(items[index]?.text ?? "")) return false;
  const tool = /^(?:clamp|amp|meter|gauges?|probes?|megger|tester|thermometer)$/;
  return items.slice(index + 1, index + 3).some(({ text }) => tool.test(text));
}

const pipe = /^(?:suction|liquid|discharge)$/;

/** A unit behind "with" is of something else that is spoken of beside the value; "500 plus meg" is at least so much. */
export function withOther(items: readonly Item[], from: number, to: number): boolean {
  if (to === from + 2 && items[from + 1]?.text === "plus") return false;
  return items.slice(from + 1, to).some(({ text }) => /^(?:with|including|minus|plus)$/.test(text));
}

/** "box holds 36", "the walk-in hold 38": a cold room stands before the word. */
export function boxAhead(items: readonly Item[], index: number): boolean {
  const before = items[index - 1];
  return (
    before?.label?.place === "box" ||
    /^(?:box|cooler|freezer|case|walk-in|walkin|reach-in|walk in|reach in)$/.test(
      before?.text ?? "",
    )
  );
}

/** "liquid pipe at the outdoor 98", "suction at the case 39": where on its pipe, no air of that place. */
function whereOnPipe(index: number, items: readonly Item[]): boolean {
  const place = items[index]?.label?.place ?? "";
  if (!/^(?:outdoor_air|indoor_air|box)$/.test(place)) return false;
  if (!/^(?:at|by|near)(?: the)?$/.test(joinedBefore(index, items))) return false;
  const back = items[index - 1]?.text === "the" ? index - 3 : index - 2;
  return pipe.test(items[back]?.label?.place ?? "");
}

function joinedBefore(index: number, items: readonly Item[]): string {
  const [far, near] = [items[index - 2]?.text, items[index - 1]?.text ?? ""];
  return near === "the" ? `${far} the` : near;
}

/** "economizer wide open, mixed air 58": the air, no opening, where the air's own name stands nearer. */
function openingAhead(draft: Draft, index: number, items: readonly Item[]): boolean {
  if (items[index]?.label?.quantity !== "valve_opening" || index > draft.index) return false;
  if (draft.unit !== undefined) return false;
  return items.slice(index + 1, draft.index).some(({ label }) => label?.hint === "temperature");
}

/** "new lineset blown out. isolated at 480": a length ends with its sentence, where no unit says it. */
function lengthOfOther(draft: Draft, index: number, items: readonly Item[]): boolean {
  if (items[index]?.label?.quantity !== "length" || draft.unit !== undefined) return false;
  return items.slice(index + 1, draft.index).some(isStrongBreak);
}

const sold =
  /^(?:gasket|seal|bearing|tool|wrench|gauge|socket|bit|belt|filter|screw|bolt|fuse|contact|brush|ring|piston|reed|drill|key|spare|parts?|sheave|blade|hose)s?$/;

/** "waiting on a gasket set", "txv's set, sh 12": things sold together, or a deed whose clause ends. */
function setOfThings(draft: Draft, index: number, items: readonly Item[]): boolean {
  const [before, item, next] = [items[index - 1], items[index], items[index + 1]];
  if (item?.text !== "set" || !isOneWord(item)) return false;
  if (sold.test(before?.text ?? "")) return true;
  // "a set of 20A fuses", "set in a new contactor"
  const [of, article] = [next?.text ?? "", items[index + 2]?.text ?? ""];
  if (of === "of" || (of === "in" && /^(?:an?|the|new)$/.test(article))) return true;
  if (index > draft.index || next === undefined) return false;
  const ends = isStrongBreak(next) || next.text === ",";
  return ends && items.slice(index + 2, draft.index).some(({ label }) => label !== undefined);
}

/** "calls for a 40A contactor, amps 17": of a size that is told, not of the figure behind it. */
function ratesSize(index: number, items: readonly Item[]): boolean {
  const rating = items[index]?.label?.rating;
  if (rating !== "expected" && rating !== "setpoint") return false;
  const article = /^(?:an?|the|to|set)$/.test(items[index + 1]?.text ?? "") ? 2 : 1;
  const next = items[index + article];
  return next?.kind === itemKind.number && next.owner !== undefined;
}

/** "new 45/5 cap, head 310", "replaced the cap. 118/342": a part in a clause of its own, where the figure has a name or is a gauge's. */
function capOfOther(draft: Draft, index: number, items: readonly Item[]): boolean {
  const cap = items[index];
  if (cap?.label?.quantity !== "capacitance" || index > draft.index) return false;
  const between = items.slice(index + 1, draft.index);
  const ends = between.findLastIndex(
    (item) => isStrongBreak(item) || /^(?:,|and|-|now)$/.test(item.text),
  );
  if (ends < 0) return false;
  const own = (item: Item | undefined): boolean =>
    item?.label !== undefined &&
    item.label.quantity !== "capacitance" &&
    (item.label.quantity !== undefined ||
      item.label.place !== undefined ||
      /^(?:pressure|temperature|voltage)$/.test(item.label.hint ?? ""));
  // "new cap in, fan 2 4.5 now": what the fan had before tells what it has
  const rest = between.slice(ends + 1);
  const machine = rest.some(({ subject }) => /^(?:fan|compressor|motor)\b/.test(subject ?? ""));
  if (machine && rest.every(({ label }) => label?.quantity === undefined)) return true;
  if (rest.some(own) || own(items[draft.index + 1])) return true;
  return isGauges(items, draft.index);
}

/** Words that are labels elsewhere and say nothing of this value. */
export function noLabel(draft: Draft, index: number, items: readonly Item[]): boolean {
  const item = items[index];
  if (item === undefined) return false;
  return (
    onlyDrops(item, draft, items) ||
    beforePins(draft, index, items) ||
    onlyHigh(item, index, items) ||
    heatLow(draft, index, items) ||
    wentIn(draft, index, items) ||
    byTheChart(draft, index, items) ||
    valveMoved(draft, index, items) ||
    drewThen(draft, index, items) ||
    whenItTrips(draft, index, items) ||
    onePull(index, items) ||
    called(index, items) ||
    beerDraft(draft, index, items) ||
    otherBox(index, items) ||
    gear(index, items) ||
    callsFor(draft, index, items) ||
    whereOnPipe(index, items) ||
    ownProbe(index, items) ||
    putsTool(index, items) ||
    openingAhead(draft, index, items) ||
    lengthOfOther(draft, index, items) ||
    namesOnly(draft, index, items) ||
    setOfThings(draft, index, items) ||
    capOfOther(draft, index, items) ||
    ranOther(draft, index, items) ||
    ratesSize(index, items)
  );
}
