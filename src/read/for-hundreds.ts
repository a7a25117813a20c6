import { type Token, tokenKind } from "./token.ts";

/** What the phone writes for the hundreds, before their rest in digits. */
const heard: ReadonlyMap<string, readonly [digit: string, rest: RegExp]> = new Map([
  ["for", ["4", /^\d\d$/]],
  ["fore", ["4", /^\d\d$/]],
  // "to 40" is a way, "to 08" none
  ["to", ["2", /^0\d$/]],
  ["too", ["2", /^0\d$/]],
]);

const volts = /^(?:volts?|voltage|voltages|vac|incoming|mains|bus|l[123]|l1-l[23]|l2-l3)$/;
const gauges = /^(?:head|discharge|pressure|high|side)$/;
/** Behind these stands a figure, nothing that is for something. */
const leads =
  /^(?:in|got|get|getting|is|at|reads|reading|read|incoming|have|has|having|bus|head|discharge|pressure|side|and|,|l[123]|l1-l[23]|l2-l3)$/;

const verbs = /^(?:got|is|at|reads|reading|getting|have)$/;

/** A rest of hundreds at `i`, told of volts or a gauge. */
function heardAt(tokens: readonly Token[], i: number): string | undefined {
  const [before, word, rest, unit] = [tokens[i - 1], tokens[i], tokens[i + 1], tokens[i + 2]];
  const [digit, of] = heard.get(word?.text ?? "") ?? [];
  if (digit === undefined || of === undefined || rest === undefined || before === undefined)
    return undefined;
  if (rest.kind !== tokenKind.number || rest.glued || !of.test(rest.text)) return undefined;
  const dimension = unit?.word?.unit?.dimension;
  const fits = dimension === undefined || dimension === "voltage" || dimension === "pressure";
  if (!fits || unit?.word?.noun?.kind === "subject") return undefined;
  const led = leads.test(before.text) || before.apostrophe || before.kind === tokenKind.number;
  return led ? digit + rest.text : undefined;
}

/** "voltage coming in for 61 for 58 and 462", "got for 80 volts": the word before two digits is their hundreds. */
export function forHundreds(tokens: Token[]): void {
  const found = tokens.flatMap((_, i) => (heardAt(tokens, i) === undefined ? [] : [i]));
  if (found.length === 0) return;
  const fellow = tokens.some(
    ({ kind, text }) => kind === tokenKind.number && /^[24]\d\d$/.test(text),
  );
  const ofVolts = tokens.some(({ text }) => volts.test(text));
  for (const i of found.reverse()) {
    const [word, rest] = [tokens[i], tokens[i + 1]];
    const text = heardAt(tokens, i);
    if (word === undefined || rest === undefined || text === undefined) continue;
    const before = tokens[i - 1]?.text ?? "";
    const behind = tokens[i + 2]?.word?.unit?.dimension === "voltage";
    const told = fellow || found.length > 1 || behind || volts.test(before) || verbs.test(before);
    if (!gauges.test(before) && !(ofVolts && told)) continue;
    tokens.splice(i, 2, { ...rest, from: word.from, text, value: Number(text), glued: word.glued });
  }
}
