import type { Building } from "./items.ts";
import type { SubjectSaid } from "./subject-name.ts";
import { type Token, tokenKind } from "./token.ts";

const called =
  /^(?:codes?|alarms?|errors?|faults?|err|flt|models?|mod|parts?|pn|number|no|serial|sn|belts?|need|needs|order|ordered|fuses?|filters?|gas|refrigerant|sensor|terminal|plug|pin|type|size)$/;
/** Letters that name phases and pins in pairs. */
const points = /^(?:[abc]{2}|[uvw]{2}|[csr]{2}|[lnt]+|[xh]+)$/;
/** Refrigerants and such, which are numbered as well. */
const numbered = /^(?:hfc|hcfc|hfo|cfc|hc|awg|sae|iso|poe|sch|rev)$/;

/** Does the dictionary know nothing of it that could be told with a figure? */
function isStrange({ word, kind, text }: Token): boolean {
  if (kind !== tokenKind.word || !/^[a-z]{2,5}$/.test(text)) return false;
  if (points.test(text) || numbered.test(text)) return false;
  if (word === undefined) return true;
  const { label, unit, noun, point, number } = word;
  return (label ?? unit ?? noun ?? point ?? number) === undefined && word.roles === 0;
}

/** "CH-1 chw 54/44", "CHP-3 amps 44": letters, a dash and a number at the head of what is told of a machine. */
export function dashedTag(build: Building, i: number): SubjectSaid | undefined {
  const { tokens, typed } = build;
  const [letters, dash, number, next] = tokens.slice(i, i + 4);
  if (letters === undefined || dash?.text !== "-" || !dash.glued) return undefined;
  if (number?.kind !== tokenKind.number || !number.glued || !/^[1-9]\d?$/.test(number.text))
    return undefined;
  const before = tokens[i - 1];
  // "P-1 amps 22.1", "B-2 supply 160"
  const one =
    /^[bp]$/.test(letters.text) && before === undefined && next?.word?.label !== undefined;
  if (!(one || isStrange(letters)) || next === undefined || next.kind === tokenKind.line)
    return undefined;
  if (next.glued && next.text !== ":" && next.text !== ",") return undefined;
  if (called.test(before?.text ?? "")) return undefined;
  const said = typed.slice(letters.from, letters.to);
  const head = before === undefined || before.kind === tokenKind.line;
  const told =
    next.word?.label !== undefined ||
    next.word?.noun !== undefined ||
    next.kind === tokenKind.number;
  if (said !== said.toUpperCase() && !(head && told)) return undefined;
  const name = typed.slice(letters.from, number.to);
  return { name, end: i + 3, label: undefined, aside: false };
}
