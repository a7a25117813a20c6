import { endsClause } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { role } from "../word.ts";

const determiner = /^(?:the|it|that|this|them|those|these|my|her|him|everything|all|a)$/;
/** How a thing is left: on, hooked up, under nitrogen. */
const stays =
  /^(?:on|off|in|up|open|opened|closed|shut|running|hooked|connected|attached|plugged|unplugged|jumped|jumpered|locked|tagged|taped|capped|overnight|over|under|pressurized|pressurised|charged|live|dead|disconnected|wired|unwired|lifted|landed|there|as|like|alone|be)$/;

/**
 * "Leaving the 300 on overnight", "leaving the pump running": a thing is left as it is and nobody
 * goes away. `at` is the first word behind "leaving". A place, which is no word of the trade, is left.
 */
export function leavesThing(items: readonly Item[], at: number): boolean {
  const first = items[at];
  if (first === undefined) return false;
  const determined = determiner.test(first.text);
  const thing = items[determined ? at + 1 : at];
  const pronoun = /^(?:it|that|this|them|those|these|her|him|everything|all)$/.test(first.text);
  const known =
    pronoun ||
    (thing !== undefined &&
      (thing.kind === itemKind.number ||
        thing.kind === itemKind.label ||
        thing.kind === itemKind.points ||
        thing.label !== undefined ||
        tools.test(thing.text)));
  if (!known) return false;
  for (let i = determined ? at + 1 : at; i < Math.min(items.length, at + 6); i++) {
    const item = items[i];
    if (item === undefined || endsClause(item)) return false;
    if ((item.roles & role.conjunction) !== 0) return false;
    if (i > at && stays.test(item.text)) return items[i + 1]?.text !== "site";
  }
  return false;
}

/** "The suction leaving the rev valve is 61": what comes out of a part of the piping. */
export function leavesPart(items: readonly Item[], at: number): boolean {
  const behind = items.slice(at, at + 4);
  const breaks = behind.findIndex(({ kind }) => kind === itemKind.sign || kind === itemKind.line);
  // "the pair leaving head 8"
  if (behind[0]?.text === "head" && behind[1]?.kind === itemKind.number) return true;
  return (breaks < 0 ? behind : behind.slice(0, breaks)).some(({ text }) => piping.test(text));
}

const piping =
  /^(?:valve|txv|tev|eev|coil|condenser|cond|evap|evaporator|drier|dryer|filter-drier|receiver|accumulator|exchanger|hx|distributor|muffler|separator|header|headers|manifold|riser|branch)$/;

/** What a technician leaves behind on purpose. */
const tools =
  /^(?:gauges?|pump|vac|vacuum|nitrogen|n2|power|breaker|disconnect|heaters?|fans?|gate|door|panel|cover|ladder|recovery|scale|hoses?|manifold|tank|bottle|cylinder|leads?|jumper|lock|unit|system|compressor|comp|stat|thermostat|charger|tester|probe|logger)$/;
