import type { ReplyInput } from "../model.ts";
import { figures } from "./figures.ts";
import { gasCharged } from "./gas-of.ts";
import { leadingZero, listed, unitName } from "./wording.ts";

/** A figure in several words, no time: "one" and "two" by themselves are talk. */
const spoken = /^\S+ (?!.*\b(?:seconds?|minutes?|hours?|days?|weeks?|months?)$)\S/;

/** Names each number that got no meaning, where the note was meant for the bot or the job. */
export function unreadSentence(input: ReplyInput): string {
  if (input.job === undefined && !input.addressed) return "";
  // the office talks of stock and dates; what it must be asked is asked
  if (input.message.role !== "tech" && input.readings.length === 0) return "";
  const asked = input.understood.ask.join(" ");
  // beside a question words may be what it asks about
  const isFigure = (said: string): boolean =>
    /\d/.test(said) || (asked === "" && spoken.test(said));
  const numbers = input.understood.unread.filter((n) => isFigure(n) && !asked.includes(n));
  if (numbers.length === 0) return "";
  return leadingZero(`${listed([...new Set(numbers)])} not read, not filed.`);
}

/** A weight whose gas is asked about is kept, and no charge yet; "" where none is. */
export function doubtedGas(input: ReplyInput): string {
  const doubtful = input.readings.filter(
    (one) => one.doubtful === true && one.replaced_by === undefined,
  );
  if (doubtful.length === 0 || !doubtsGas(input)) return "";
  const cylinders = input.understood.statements.filter(
    (one) => one.kind === "note" && one.about === "cylinder",
  );
  const words = [figures(doubtful), ...cylinders.map(({ said }) => said)].join(", ");
  const unit = input.job === undefined ? "" : `${unitName(input.job)}: `;
  return `${unit}${words}, kept in doubt.`;
}

/** Not the figure is doubted but the gas, and that is asked. */
function doubtsGas({ understood }: ReplyInput): boolean {
  return understood.statements.some((one) => one.kind === "note" && one.about === gasCharged);
}

/** A value that is hardly possible is kept and asked about, never mended. */
export function doubtQuestion(input: ReplyInput): string {
  const doubtful = [...input.released, ...input.readings].filter(
    (r) => r.doubtful === true && !input.confirmed.some((c) => c.id === r.id),
  );
  const first = doubtful[0];
  if (first === undefined || doubtsGas(input)) return "";
  const unit = input.job === undefined ? "" : `${unitName(input.job)}: `;
  return `${unit}${figures(doubtful)} is hardly possible: kept, not used. Is it right?`;
}
