import type { Job, JobPart, Statement, Understood } from "../model.ts";
import { waitedFor } from "../record/parts.ts";
import { whichOrdered } from "../show/arrived.ts";

const every = /\b(?:all|both|everything|them|parts)\b/i;

/**
 * "Ordered, due Thursday" names nothing: it is what the job needs, where that is one thing or all of
 * them are meant; of several it is asked which.
 */
export function withNamedOrder(understood: Understood, text: string, job: Job): Understood {
  const order = understood.statements.find(isBare);
  if (order === undefined) return understood;
  const waited = waitedFor(job.parts);
  const needed = waited.filter(({ state }) => state === "needed");
  const meant = needed.length > 0 ? needed : waited;
  const rest = understood.statements.filter((said) => said !== order);
  if (meant.length > 1 && !every.test(text)) {
    const ask = understood.ask.length > 0 ? understood.ask : [whichOrdered(meant, job)];
    return { ...understood, statements: rest, ask };
  }
  const named = meant.length === 0 ? [{ ...order, part: "part" }] : meant.map(namedAs(order));
  return { ...understood, statements: [...rest, ...named] };
}

type Order = Extract<Statement, { kind: "part" }>;

/** An order without a thing and without a number. */
export function isBare(said: Statement): said is Order {
  return (
    said.kind === "part" &&
    said.part === "" &&
    said.number === undefined &&
    said.state === "ordered"
  );
}

const namedAs =
  (order: Order) =>
  ({ part, number, quantity }: JobPart): Order => ({
    ...order,
    part,
    ...(number === undefined ? {} : { number }),
    ...(quantity === undefined ? {} : { quantity }),
  });
