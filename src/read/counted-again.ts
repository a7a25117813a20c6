import type { Context } from "./context.ts";
import { lookUp } from "./dictionary.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** Machines of one kind that are told apart by a bare number; common practice, no source. */
const most = 12;

const mark = /^(?:number|numbers|no|num|#)$/;
const joint = /^(?:,|and|&|;|then|\.)$/;

/** The number behind "#" or "number" at `i`, 0 where none stands there. */
function numberAt(tokens: readonly Token[], i: number): number {
  const [sign, number] = [tokens[i], tokens[i + 1]];
  if (sign === undefined || !mark.test(sign.text)) return 0;
  if (sign.text === "#" && number?.glued !== true) return 0;
  const digit =
    number?.kind === tokenKind.number && /^\d{1,2}$/.test(number.text)
      ? number.value
      : number?.word?.number?.kind === "ones"
        ? number.word.number.value
        : 0;
  if (digit < 1 || digit > most) return 0;
  const roles = tokens[i + 2]?.word?.roles ?? 0;
  const at = (roles & role.is) !== 0 || tokens[i + 2]?.text === "at" ? i + 3 : i + 2;
  const at2 = tokens[at]?.text === "at" ? at + 1 : at;
  return isNumber(tokens[at2]) ? digit : 0;
}

/** "compressor 1": the kind of what was read last, or was turned to. */
function kindBefore({ readings, machine, kind }: Context): string {
  const last = machine ?? readings.at(-1)?.subject ?? "";
  return /^([a-z]+) \d{1,2}$/.exec(last)?.[1] ?? kind ?? "";
}

/**
 * "comp #1 18.2 amps #2 18.5 #3 22", "number one 18.2 number two 18.5" where compressors are being read: the
 * sign or the word before the next number stands for the machine's name.
 */
export function countedAgain(tokens: readonly Token[], context: Context): readonly Token[] {
  const found = tokens.flatMap((_, i) => (numberAt(tokens, i) > 0 ? [i] : []));
  const [first] = found;
  if (first === undefined) return tokens;
  const rises = found.every(
    (at, order) =>
      order === 0 || numberAt(tokens, at) === numberAt(tokens, found[order - 1] ?? 0) + 1,
  );
  const before = tokens[first - 1];
  const own = before?.word?.noun?.kind === "subject" ? before.word.noun.name : "";
  const noun = own === "" ? kindBefore(context) : own;
  if (!rises || noun === "" || (own !== "" && found.length < 2)) return tokens;
  const begins = before === undefined || joint.test(before.text) || before.kind === tokenKind.line;
  if (own === "" && !begins) return tokens;
  const renamed = own === "" ? found : found.slice(1);
  return tokens.map((token, i) =>
    renamed.includes(i)
      ? { ...token, kind: tokenKind.word, text: noun, word: lookUp(noun), glued: false }
      : token,
  );
}
