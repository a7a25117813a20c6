import { lookUp } from "./dictionary.ts";
import { type Token, tokenKind } from "./token.ts";

/** One word of the trade that a phone hears as two, by the first of them. */
const halves: ReadonlyMap<string, readonly [second: RegExp, meant: string]> = new Map([
  ["dis", [/^charg(?:e|es)$/, "discharge"]],
  ["dish", [/^charg(?:e|es)$/, "discharge"]],
  ["con", [/^denser$/, "condenser"]],
  ["evap", [/^orator$/, "evaporator"]],
  ["com", [/^pressor$/, "compressor"]],
  ["comp", [/^ressor$/, "compressor"]],
  ["ref", [/^rigerant$/, "refrigerant"]],
  ["mike", [/^(?:rons|crons)$/, "microns"]],
  ["my", [/^(?:crons|krons)$/, "microns"]],
  ["micro", [/^(?:ns|ones)$/, "microns"]],
]);

/** "dish charge is two thirty": joins what was heard apart. */
export function heardApart(tokens: Token[]): void {
  for (let i = 0; i < tokens.length - 1; i++) {
    const [first, rest] = [tokens[i], tokens[i + 1]];
    const half = first?.kind === tokenKind.word ? halves.get(first.text) : undefined;
    if (first === undefined || rest === undefined || half === undefined) continue;
    const [second, meant] = half;
    if (rest.kind !== tokenKind.word || !second.test(rest.text) || rest.glued) continue;
    const { to, apostrophe } = rest;
    tokens.splice(i, 2, { ...first, to, text: meant, word: lookUp(meant), apostrophe });
  }
}
