import { isStrongBreak, isWeakBreak } from "../breaks.ts";
import { isGauges } from "../gauges-shape.ts";
import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, LIST } from "./near.ts";

const asked = /^(?:need|needs|order|ordering|needed|ordered|bring|grab)$/;
const reads = /^(?:at|about|around|only|now|pulls|pulling|drawing|draws|running|:|=)$/;
/** "comp 2 same order .6 .61 1.9": one behind another as before, nothing is bought. */
function isSequence(items: readonly Item[], i: number): boolean {
  if (items[i]?.text !== "order") return false;
  return /^(?:same|reverse|opposite|that|this|in|phase|leg|lead|right|wrong|other|any)$/.test(
    items[i - 1]?.text ?? "",
  );
}

/** What nobody orders: behind its name stands what was measured. */
const told: ReadonlySet<string> = new Set([
  "superheat",
  "subcooling",
  "temperature_difference",
  "static_pressure",
  "current",
  "voltage",
]);
const sides: ReadonlySet<string> = new Set([
  "suction",
  "discharge",
  "supply_air",
  "return_air",
  "box",
  "outdoor_air",
]);

/** "order a contactor and comp 14 amps": its own clause. */
function drawsThere(items: readonly Item[], name: number): boolean {
  const before = items[name - 1];
  const begins = before !== undefined && isWeakBreak(before);
  return begins && /^(?:comp|comps|compressor|compressor's)$/.test(items[name]?.text ?? "");
}

/** "need a 3/8 drier, static 0.95", "order 2 filters and superheat 14": behind a thing the name of something else, and its value. */
function namedBehind(items: readonly Item[], plan: number, at: number): boolean {
  let name = at - 1;
  while (reads.test(items[name]?.text ?? "") || ((items[name]?.roles ?? 0) & role.is) !== 0) name--;
  const { quantity, hint, place } = items[name]?.label ?? {};
  const volts =
    items[at]?.unit?.dimension === "voltage" && items[at + 1]?.label?.place === "supply";
  const drawn =
    items[at]?.unit?.dimension === "current" && (name < at - 1 || drawsThere(items, name));
  const measures = told.has(quantity ?? hint ?? "") || sides.has(place ?? "") || volts || drawn;
  if (!measures) return false;
  const thing = items.slice(plan + 1, volts ? at : name);
  return thing.some(
    (item) =>
      (item.owner !== undefined && item.owner !== plans.name && item.kind === itemKind.number) ||
      (item.kind === itemKind.word && item.roles === 0) ||
      item.label?.thing !== undefined,
  );
}

/** "need a 5k probe, 94/351", "going to get a relay - 9 sc": in a clause of its own a figure that no part is bought by. */
function apartFrom(items: readonly Item[], plan: number, at: number): boolean {
  const ends = items
    .slice(plan + 1, at)
    .some(
      ({ text, kind }) =>
        text === "," || text === "and" || (text === "-" && kind === itemKind.sign),
    );
  if (!ends) return false;
  const item = items[at];
  const next = items[at + 1]?.label;
  const tenths = item !== undefined && !Number.isInteger(item.value);
  if (/^(?:current|voltage)$/.test(item?.unit?.dimension ?? "")) return tenths;
  if (next?.quantity === "superheat" || next?.quantity === "subcooling") return true;
  return isGauges(items, at);
}

/** "need a fan motor, comp 1 drawing 14 A": behind the comma something was measured. */
function measuredBeside(items: readonly Item[], plan: number, at: number): boolean {
  const fetch = items
    .slice(plan, plan + 4)
    .some(({ text }) => /^(?:get|grab|order|pick)$/.test(text));
  if (!asked.test(items[plan]?.text ?? "") && !fetch) return false;
  if (items[plan + 1]?.text === "to" && !fetch) return false;
  if (apartFrom(items, plan, at)) return true;
  if (!asked.test(items[plan]?.text ?? "")) return false;
  if (namedBehind(items, plan, at)) return true;
  let comma = at;
  while (comma > plan && items[comma]?.text !== ",") comma--;
  if (comma === plan) return false;
  return items
    .slice(comma + 1, at)
    .some(
      (item) =>
        item.kind === itemKind.subject ||
        item.label?.place !== undefined ||
        item.label?.hint !== undefined ||
        item.label?.state !== undefined ||
        (item.roles & role.is) !== 0,
    );
}

/** "get me a 40uf cap", "pick up 2 caps", "parts: 7.5uf cap": what is to be fetched. */
function fetches(items: readonly Item[], i: number): boolean {
  const [text, next] = [items[i]?.text ?? "", items[i + 1]?.text ?? ""];
  if (text === "get" || text === "fetch") return /^(?:me|us)$/.test(next);
  if (text === "pick")
    return (
      next === "up" &&
      (items[i + 2]?.kind === itemKind.number || /^an?$/.test(items[i + 2]?.text ?? ""))
    );
  return next === ":" && i <= 1 && /^(?:parts?|materials?|list|todo|shopping|orders?)$/.test(text);
}

const bounds = role.atLeast | role.atMost | role.greater | role.less;
const measured: ReadonlySet<string> = new Set([
  "resistance",
  "low_pressure",
  "airflow",
  "temperature",
]);

/** "need at least 100M": what a measurement has to be, nothing to be fetched. */
function requires(items: readonly Item[], i: number): boolean {
  if (!/^needs?$/.test(items[i]?.text ?? "")) return false;
  const at = items.findIndex((item, index) => index > i && item.kind === itemKind.number);
  if (at < 0 || at > i + 3 || !measured.has(items[at]?.unit?.dimension ?? "")) return false;
  return items
    .slice(i + 1, at + 2)
    .some(({ roles, text }) => (roles & bounds) !== 0 || /^m(?:in|ax)(?:imum)?$/.test(text));
}

/** "the overload lets go, 5 seconds": it opens, nobody is asked along. */
function opens(items: readonly Item[], i: number): boolean {
  return (
    items[i]?.text === "lets" &&
    items[i + 1]?.text === "go" &&
    /^(?:overload|breaker|fuse|protector|internal|thermal|klixon|relay|ol|it)$/.test(
      items[i - 1]?.text ?? "",
    )
  );
}

const goesOn =
  /^(?:get|pull|put|weigh|charge|bring|run|set|take|let|hit|see|check|pump|add|recover|swap|change|braze|evacuate|vac|pressurize|pressure|test)$/;

/** "gonna swap the drier and get it under 500": a verb behind "and" is planned as well. */
function plansMore(items: readonly Item[], i: number): boolean {
  const left = items[i - 1];
  if (left === undefined || !goesOn.test(items[i]?.text ?? "")) return false;
  return left.text === "," || (left.roles & (role.conjunction | role.next)) !== 0;
}

const awaits = /^(?:until|till?|til|when|once|if|sure|that|before|unless|while)$/;

/** "gonna look at the suction it's 118": what it is was measured, but for "until it's under 500". */
function toldWithin(items: readonly Item[], plan: number, at: number): boolean {
  return items.slice(plan + 1, at).some((word, i, all) => {
    if (word.kind === itemKind.points || /^(?:is|reads|got|have)$/.test(word.text)) return true;
    const tied = word.apostrophe && (word.label !== undefined || /^(?:it|that)/.test(word.text));
    return tied && !all.slice(0, i).some(({ text }) => awaits.test(text));
  });
}

/** "going to charge 4 lb", "need to pull to 500": what is announced has not been measured. */
export const plans: Rule = {
  name: "going to <verb> <number>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    let plan = -1;
    let whole = false;
    let verb = -1;
    for (let i = 0; i < items.length; i++) {
      const item = items[i];
      if (item === undefined) continue;
      if (isStrongBreak(item) || item.text === "but" || (item.roles & role.now) !== 0) {
        plan = -1;
        whole = false;
      }
      // "comp will not turn over, 112 A": what it does not do is no plan
      const refuses = item.text === "will" && items[i + 1]?.text === "not";
      // "thermal might be out, shell is 190": a guess
      const guess = item.text === "might" && /^(?:be|have)$/.test(items[i + 1]?.text ?? "");
      const taken = refuses || guess || opens(items, i);
      if ((item.roles & role.plan) !== 0 && item.owner === undefined && !taken) plan = i;
      if (
        /^(?:need|needs|order|ordering|needed|bring|grab)$/.test(item.text) &&
        item.label?.rating === undefined &&
        !isSequence(items, i)
      ) {
        if (requires(items, i)) {
          item.kind = itemKind.label;
          item.label = { rating: "expected" };
        } else plan = i;
      }
      if (fetches(items, i)) plan = i;
      // "the plan for tomorrow is …": all that its sentence says
      if (
        /^plans?$/.test(item.text) &&
        /^(?:the|my|our|todays|tomorrows)$/.test(items[i - 1]?.text ?? "")
      )
        whole = true;
      if (item.text === "ordered" && items[i + 1]?.kind === itemKind.number) plan = i;
      if (plan < 0 || plan === i || plansMore(items, i)) verb = i;
      if (plan < 0 || !freeNumber(item)) continue;
      if (whole) {
        state(note, plans.name, [i, i + 1], { kind: "note", about: "plan" });
        continue;
      }
      // "need comp, drier, 2 caps, 12 lb of gas": a list goes on
      const listed = items[i - 1]?.text === "," && item.unit?.dimension === "mass";
      const numbered = items.slice(plan, i).some(({ owner }) => owner === LIST);
      const from = numbered || listed ? plan : Math.max(plan, verb);
      if (i - from > (listed ? 16 : numbered ? 24 : 8)) continue;
      if (measuredBeside(items, plan, i)) {
        plan = -1;
        continue;
      }
      if (toldWithin(items, plan, i)) continue;
      const weighed = item.unit === undefined || item.unit.dimension === "mass";
      const mass = weighed
        ? items.slice(plan, i).find((word) => word.label?.action !== undefined)?.label?.action
        : undefined;
      if (mass !== undefined)
        state(note, plans.name, [plan, i + 1], { kind: "action", action: mass, planned: true });
      else state(note, plans.name, [plan, i + 1], { kind: "note", about: "plan" });
    }
  },
};
