import type { Job, JobReading, Message, Reading, Statement, Understood } from "../model.ts";
import { equipmentOf } from "../record/case.ts";
import { isCurrent } from "../record/readings.ts";
import { mixedGas } from "../show/cylinder-question.ts";
import { gasCharged, gasOf } from "../show/gas-of.ts";
import type { Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";

/** What gas a charge was is set right within the hour or not in passing; our choice, no source. */
const settledAfterMs = 60 * 60_000;
const ofBefore = /\b(?:wrong|was|were|that|no|not|sorry|oops|actually|meant|instead)\b/i;

type Plate = Extract<Statement, { kind: "nameplate" }>;

/**
 * A charge of a gas that is not the unit's: the weight is kept and not used until he says yes, since
 * mixed gas spoils the machine and a slip of the tongue spoils the record. The gas of a charge is no
 * plate, so it never becomes the unit's own.
 */
export function askedOfGas(
  memory: Memory,
  message: Message,
  note: { readonly understood: Understood; readonly job: number },
): Understood {
  const { understood } = note;
  const job = jobAt(memory, note.job);
  const said = understood.statements.find(
    (one): one is Plate => one.kind === "nameplate" && one.field === "refrigerant",
  );
  const own = job === undefined ? null : gasOf(job, equipmentOf(job, memory.registry));
  if (job === undefined || said === undefined || own === null) return understood;
  const weighed = understood.readings.filter(isCharge);
  const before = weighed.length === 0 ? lastCharge(job, message) : undefined;
  if (weighed.length === 0 && before === undefined) return understood;
  const statements = understood.statements.map((one) => (one === said ? ofCharge(said) : one));
  const other = plain(own) !== plain(said.value);
  if (!other && before?.doubtful !== true) return { ...understood, statements };
  const again = before === undefined ? [] : [saidAgain(before, said)];
  const readings = [...understood.readings, ...again].map((one) =>
    isCharge(one) ? doubted(one, other) : one,
  );
  const ask = other ? [mixedGas({ said: said.value, own })] : understood.ask;
  return { ...understood, statements, readings, ask };
}

const plain = (name: string): string => name.toLowerCase().replace(/^r-?|[^a-z0-9]/g, "");

/** "2 lb of 134a" may be a charge though nobody said so. */
const isCharge = (one: Reading): boolean =>
  one.quantity === "mass" &&
  one.action !== "recovered" &&
  one.rating === undefined &&
  one.earlier !== true;

/** The charge that "wrong one, it was 134a" speaks of. */
function lastCharge(job: Job, message: Message): JobReading | undefined {
  if (!ofBefore.test(message.text)) return undefined;
  const now = Date.parse(message.at);
  return job.readings.findLast(
    (one) =>
      isCharge(one) &&
      isCurrent(one) &&
      one.who === message.person &&
      one.message !== message.id &&
      Math.abs(now - Date.parse(one.received)) <= settledAfterMs,
  );
}

function ofCharge({ said, spans, rule }: Plate): Statement {
  return { kind: "note", about: gasCharged, said, spans, rule };
}

/** The same weight, told anew with what is now said of it. */
function saidAgain(old: JobReading, { said, spans }: Plate): Reading {
  const { quantity, relation, value, unit, figure, action, assumed, rule, subject } = old;
  return {
    quantity,
    relation,
    value,
    unit,
    figure,
    assumed,
    rule,
    said,
    spans,
    corrects: true,
    ...(action === undefined ? {} : { action }),
    ...(subject === undefined ? {} : { subject }),
  };
}

function doubted({ doubtful: _, ...reading }: Reading, other: boolean): Reading {
  return other ? { ...reading, doubtful: true } : reading;
}
