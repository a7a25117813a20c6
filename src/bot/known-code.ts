import type { FaultCode, Reading, Span, Understood } from "../model.ts";

/** A code is at least so long, and holds a digit: shorter words are words. */
const fewestLetters = 2;

/**
 * "Shows KX-12": only who knows the company's list can tell that this is a code. A code of the list
 * that nothing else was read from is a reading of what the machine shows.
 */
export function withKnownCode(
  understood: Understood,
  text: string,
  codes: readonly FaultCode[],
): Understood {
  if (understood.readings.some(({ quantity }) => quantity === "fault_code")) return understood;
  const match = [...text.matchAll(/[\p{L}\p{N}][\p{L}\p{N}-]*/gu)].find(([word]) =>
    codes.some(({ code }) => isCode(code) && plain(code) === plain(word)),
  );
  if (match === undefined) return understood;
  const span: Span = [match.index, match.index + match[0].length];
  // a bare number is more likely a value
  const isOurs = /\p{L}/u.test(match[0]) && !understood.readings.some((one) => touches(one, span));
  return isOurs ? withCode(understood, { code: match[0], span }) : understood;
}

function withCode(
  understood: Understood,
  found: { readonly code: string; readonly span: Span },
): Understood {
  const { code, span } = found;
  const reading: Reading = {
    quantity: "fault_code",
    relation: "=",
    value: code,
    unit: null,
    said: code,
    spans: [span],
    assumed: ["quantity"],
    figure: { number: code, unit: "" },
    rule: "<listed code>",
  };
  const isFree = (spans: readonly Span[]): boolean => !touches({ spans }, span);
  const kept = understood.unread_spans.map((one) => isFree([one]));
  return {
    ...understood,
    readings: [...understood.readings, reading],
    statements: understood.statements.filter(({ kind, spans }) => kind !== "note" || isFree(spans)),
    unread: understood.unread.filter((_, index) => kept[index] !== false),
    unread_spans: understood.unread_spans.filter((_, index) => kept[index]),
  };
}

function touches({ spans }: Pick<Reading, "spans">, [from, to]: Span): boolean {
  return spans.some((span) => span[0] < to && from < span[1]);
}

const isCode = (code: string): boolean => code.length >= fewestLetters && /\d/.test(code);

const plain = (code: string): string => code.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
