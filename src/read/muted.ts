import { dayTurned } from "./day-turned.ts";
import { type Item, isOneWord, itemKind } from "./item.ts";
import type { Label } from "./label.ts";
import { isCoilIn, isRide } from "./label-else.ts";
import { oilChanged } from "./oil-by-number.ts";
import { role } from "./word.ts";

const fine = /^(?:ok|okay|good|fine|normal|great|perfect|alright|stable|steady)$/;
const beyond = /^(?:over|above|under|below|past|beyond|at|near|of|exceeds|exceeding|than)$/;

/** Does a figure come right behind, past "is" and the like? */
function figureBehind(items: readonly Item[], at: number): boolean {
  const led = ((items[at + 1]?.roles ?? 0) & role.is) !== 0 ? 2 : 1;
  return items[at + led]?.kind === itemKind.number;
}

/** "freeze temp good, hi side 240": how it was found, and then another name and its figure. */
function foundFine(items: readonly Item[], at: number): boolean {
  const [item, told] = [items[at], items[at + 1]];
  if (item?.label?.quantity === undefined || item.label.place !== undefined) return false;
  if (!fine.test(told?.text ?? "")) return false;
  const next = items.findIndex((one, i) => i > at + 1 && one.kind !== itemKind.sign);
  return next > 0 && items[next]?.kind === itemKind.label;
}

/** "lwt 44 no flow", "flow switch open": whether any, or what is fed by it; no amount. */
function flowOrNone(items: readonly Item[], at: number): boolean {
  if (items[at]?.label?.quantity !== "water_flow" || figureBehind(items, at)) return false;
  // "flow pipe's forty one return thirty six"
  if (/^(?:pipe|pipes|line|temp|temperature)$/.test(items[at + 1]?.text ?? "")) return true;
  const none = ((items[at - 1]?.roles ?? 0) & role.not) !== 0 || items[at - 1]?.text === "no";
  return none || /^(?:sw|switch|alarm|fault|proof|proving|proven)$/.test(items[at + 1]?.text ?? "");
}

/** "won't pull down", "slow to pull down": what the box does, no vacuum. */
function pullsDown(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.label?.quantity !== "vacuum" || !/^pull/.test(item.text)) return false;
  const down = items[at + 1]?.text === "down" ? at + 1 : at;
  if (down === at && item.to - item.from < "pull down".length) return false;
  return items[down + 1] === undefined && items.some(({ label }) => label?.place !== undefined);
}

/** "low temp suct 14", "med temp rack": which half of the plant, no degrees. */
function halfOfPlant(items: readonly Item[], at: number): boolean {
  if (!/^(?:temp|temperature)$/.test(items[at]?.text ?? "")) return false;
  if (!/^(?:low|lo|med|medium|mid|high|hi|dual)$/.test(items[at - 1]?.text ?? "")) return false;
  const next = items[at + 1];
  if (next === undefined) return false;
  return (
    (next.label?.hint === "pressure" && next.label.place !== undefined) ||
    /^(?:rack|racks|side|group|grp|header|comps?|compressors?|suction)$/.test(next.text)
  );
}

/** "lt 3 on suct 11", "lt suct 195": the low temperature half of a plant, beside its other half or its machines. */
function lowHalf(items: readonly Item[], at: number): boolean {
  if (items[at]?.text !== "lt") return false;
  // "comps on LT 11.2 10.9, on MT 22 21.5"
  if (items.some(({ text }) => text === "mt")) return true;
  const next = items[at + 1];
  if (next?.label?.place === "suction") return true;
  const running = /^(?:on|off|comps?|compressors?|running|up|of)$/;
  const counted = next?.kind === itemKind.number && running.test(items[at + 2]?.text ?? "");
  return counted;
}

/** "24.8, that's over RLA": what the figure is held against, the plate's own is not told. */
function heldAgainst(items: readonly Item[], at: number): boolean {
  const rating = items[at]?.label?.rating;
  if (rating !== "RLA" && rating !== "FLA" && rating !== "MCA" && rating !== "LRA") return false;
  if (figureBehind(items, at) || items[at + 1]?.text === "of") return false;
  const article = /^(?:its|it's|the|their|his|rated|full|name|nameplate|tag|plate)$/;
  let led = at - 1;
  while (article.test(items[led]?.text ?? "")) led--;
  return beyond.test(items[led]?.text ?? "") && items[led - 1] !== undefined;
}

/** "bus caps 2x 1500uf read 1320 1295": where microfarads are told, what was measured of the capacitors. */
function capsOfBus(items: readonly Item[], at: number, plain: string): boolean {
  const item = items[at];
  if (item?.label?.place !== "dc_bus" || !/ caps?$/.test(plain.slice(item.from, item.to)))
    return false;
  const told = (dimension: string): boolean =>
    items.some(({ unit }) => unit?.dimension === dimension);
  return told("capacitance") && !told("voltage");
}

const plugs =
  /^(?:pins?|plug|molex|harness|connector|xfmr|transformer|fuse|disconnect|neutral|com|ecm)$/;

/** "ecm plug: 120 line 24 com": among wires the line is no pipe. */
function lineOfWires(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.text !== "line" || item.label?.hint !== "temperature" || item.label.place !== undefined)
    return false;
  return items.some(({ text }) => plugs.test(text)) && !items.some(({ label }) => ofPipes(label));
}

function ofPipes(label: Label | undefined): boolean {
  const heat = label?.quantity === "superheat" || label?.quantity === "subcooling";
  return heat || /^(?:suction|liquid|discharge)/.test(label?.place ?? "");
}

/** "north condensing unit", "the indoor blower", "the office split makes nineteen": a machine, no degrees. */
function namesMachine(items: readonly Item[], at: number): boolean {
  const [item, next] = [items[at], items[at + 1]];
  if (item === undefined || next === undefined || item.to - item.from > item.text.length)
    return false;
  if (item.text === "condensing") return /^(?:unit|units|section)$/.test(next.text);
  if (item.text === "split")
    return /^(?:makes|making|blows|blowing|runs|unit|units|system)$/.test(next.text);
  return (
    /^(?:indoor|outdoor)$/.test(item.text) &&
    /^(?:blower|fan|motor|board|breaker)s?$/.test(next.text)
  );
}

/** "37.9 today same temperature": how the test was, no figure's name. */
function sameWarmth(items: readonly Item[], at: number): boolean {
  if (!/^(?:temp|temps|temperature|weather)$/.test(items[at]?.text ?? "")) return false;
  return items[at - 1]?.text === "same" && !figureBehind(items, at);
}

const thinks = /^(?:think|thinks|guess|believe|suppose|figure|probably|looks|seems|pretty|which)$/;

/** "12 to 55 volts which I think's normal": what somebody makes of it, no figure that it should have. */
function saysNormal(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.label?.rating !== "expected" || item.text !== "normal" || figureBehind(items, at))
    return false;
  return items.slice(Math.max(0, at - 4), at).some(({ text }) => thinks.test(text));
}

/** "temperature rise is return 68 and supply 126": what is told next, and then both its sides. */
function headsPair(items: readonly Item[], at: number): boolean {
  if (items[at]?.label?.quantity !== "temperature_difference") return false;
  const next = items.findIndex(
    (item, i) => i > at && (item.roles & role.is) === 0 && !/^(?:u[hm]|the|so|:)$/.test(item.text),
  );
  const sides = items
    .slice(next)
    .filter(({ label }) => /^(?:return|supply)_air$/.test(label?.place ?? ""));
  return sides.length > 1 && sides[0] === items[next] && figureBehind(items, next);
}

const howItIs =
  /^(?:is|was|thats|ones|too|bit|little|kinda|kind of|way|pretty|very|running|seems|looks|awful|so|its|bit on the)$/;

/** "dairy 41 thats high, meat 29", "44 that one's low": how a figure is found, no side of a circuit. */
function highOrLow(items: readonly Item[], at: number): boolean {
  const [before, item, next] = [items[at - 1], items[at], items[at + 1]];
  if (item === undefined || !/^(?:high|low)$/.test(item.text) || !isOneWord(item)) return false;
  // "phase C 33.0 thats the high one"
  if (before?.text === "the" && /^ones?$/.test(next?.text ?? "") && !figureBehind(items, at + 1))
    return items.slice(0, at).some(({ kind }) => kind === itemKind.number);
  if (before === undefined || !(howItIs.test(before.text) || before.apostrophe)) return false;
  if (next !== undefined && next.kind !== itemKind.sign && next.kind !== itemKind.line)
    return false;
  return items.slice(0, at).some(({ kind }) => kind === itemKind.number);
}

/** "after the hard start it's 62 on the inrush": what was fitted when it was measured, no capacitance. */
function kitFitted(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.text !== "hard" || item.label?.quantity !== "capacitance") return false;
  const led = /^(?:the|a|that|this|new)$/.test(items[at - 1]?.text ?? "") ? at - 2 : at - 1;
  const of = figureBehind(items, at) && !/^it/.test(items[at + 1]?.text ?? "");
  return /^(?:after|with|without|since)$/.test(items[led]?.text ?? "") && !of;
}

const plant = /^(?:rack|racks|system|booster|plant|unit|circuit|pack|gas)$/;
const exchanger = /^(?:exchanger|exchangers|hx|heat|hex)$/;

/** "heat exchanger primary 12/7 secondary 14/9": the sides of an exchanger of heat, no transformer's. */
function sideOfExchanger(items: readonly Item[], item: Item): boolean {
  if (!/^(?:primary|secondary)$/.test(item.text) || !isOneWord(item)) return false;
  return items.some(({ text }) =>
    /^(?:exchanger|exchangers|hx|hex|glycol|chilled|loop)$/.test(text),
  );
}

/** "the supplies add up to 390": a sum, nothing was put in. */
function addsUp(items: readonly Item[], at: number): boolean {
  return /^add(?:s|ed|ing)?$/.test(items[at]?.text ?? "") && items[at + 1]?.text === "up";
}

const ofCharge =
  /^(?:the|whole|full|entire|all|its|old|what|remaining|rest|of|that|this|unit|system)$/;

/** "recovered the whole charge, got 6 lb": what was taken out, nothing went in. */
function chargeTakenOut(items: readonly Item[], at: number): boolean {
  const label = items[at]?.label;
  if (label?.action !== "charged" && label?.rating !== "nameplate_charge") return false;
  if (!/^(?:charge|full|whole|total|original|system|unit|remaining)$/.test(items[at]?.text ?? ""))
    return false;
  let verb = at - 1;
  while (ofCharge.test(items[verb]?.text ?? "")) verb--;
  return items[verb]?.label?.action === "recovered";
}

const opens =
  /^(?:pulled|pull|opened|open|threw|killed|kill|cut|locked|tagged|flipped|dropped|off|out|down)$/;

/** "pulled the disconnect and I'm reading 1.1 1.1 and 1.2 ohms": what was shut off, no place of the figures. */
function shutOff(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.label?.place !== "supply" || !/^(?:the |unit )?disco(?:nnect)?$/.test(item.text))
    return false;
  const led = /^(?:the|my|its|that)$/.test(items[at - 1]?.text ?? "") ? at - 2 : at - 1;
  const verb = ((items[at + 1]?.roles ?? 0) & role.is) !== 0 ? at + 2 : at + 1;
  if (!opens.test(items[led]?.text ?? "") && !opens.test(items[verb]?.text ?? "")) return false;
  const next = items.find((one, i) => i > at && one.kind === itemKind.number);
  return next !== undefined && next.value !== 0 && next.unit?.dimension !== "voltage";
}

/** "sc 2 it needs gas": what is to be done, and not what the figure before it should be. */
function needsThing(items: readonly Item[], at: number): boolean {
  const [item, next] = [items[at], items[at + 1]];
  if (item?.label?.rating !== "expected" || !/^(?:needs?|wants?)$/.test(item.text)) return false;
  if (next === undefined || next.kind === itemKind.sign || next.kind === itemKind.line)
    return false;
  const figure = items.slice(at + 1, at + 5).some(({ kind }) => kind === itemKind.number);
  return !figure && items[at - 1]?.kind !== itemKind.sign;
}

const comes = /^(?:here|there|back|home|done|finished|ready|able|delivered|shipped)$/;

/** "should be here by two, return 75", "should be done in an hour": what is to come, no figure that should be. */
function shouldCome(items: readonly Item[], at: number, plain: string): boolean {
  const [item, next] = [items[at], items[at + 1]];
  if (item?.label?.rating !== "expected") return false;
  return / be$/.test(plain.slice(item.from, item.to)) && comes.test(next?.text ?? "");
}

/** "sc 1, gonna add a couple pounds": pounds that nobody counts, of no figure before them. */
function vagueWeight(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item?.kind !== itemKind.unit || item.unit?.dimension !== "mass") return false;
  const before = /^(?:of|more)$/.test(items[at - 1]?.text ?? "") ? at - 2 : at - 1;
  return /^(?:couple|few|some|several|little|bit)$/.test(items[before]?.text ?? "");
}

/**
 * Names that say nothing of the figures beside them: how something was found, whether there is any, what it
 * is called, what it is held against.
 */
export function muted(items: readonly Item[], plain: string): void {
  items.forEach((item, at) => {
    if (vagueWeight(items, at)) {
      item.kind = itemKind.word;
      item.unit = undefined;
    }
    if (item.label === undefined) return;
    // "subcooler out 52": the part, whatever its letters are like
    if (plain.slice(item.from, item.to) === "subcooler") {
      item.label = undefined;
      item.text = "subcooler";
      return;
    }
    if (heldAgainst(items, at)) item.label = { hint: "current" };
    else if (lineOfWires(items, at)) item.label = { hint: "voltage" };
    else if (sideOfExchanger(items, item)) item.label = { hint: "temperature" };
    else if (capsOfBus(items, at, plain)) item.label = { quantity: "capacitance" };
    else if (halfOfPlant(items, at)) {
      item.label = undefined;
      const half = items[at - 1];
      if (half !== undefined) half.label = undefined;
    } else if (
      namesMachine(items, at) ||
      isRide(items, at) ||
      isCoilIn(items, at, plain) ||
      kitFitted(items, at) ||
      addsUp(items, at) ||
      chargeTakenOut(items, at) ||
      sameWarmth(items, at) ||
      dayTurned(items, at) ||
      saysNormal(items, at) ||
      needsThing(items, at) ||
      shouldCome(items, at, plain) ||
      lowHalf(items, at) ||
      headsPair(items, at) ||
      foundFine(items, at) ||
      flowOrNone(items, at) ||
      highOrLow(items, at) ||
      pullsDown(items, at) ||
      shutOff(items, at) ||
      oilChanged(items, at) ||
      // "CO2 rack suction 28": what gas it runs on
      (item.label.quantity === "concentration" && plant.test(items[at + 1]?.text ?? "")) ||
      (item.text === "plate" && exchanger.test(items[at + 1]?.text ?? ""))
    )
      item.label = undefined;
  });
}
