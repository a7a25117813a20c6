import type { Job, ReplyInput } from "../model.ts";
import { thingsToBring } from "./answers/bring.ts";
import { dayAndMonth } from "./days.ts";
import { localTime } from "./local-time.ts";
import { lastDone } from "./past.ts";
import { listed, ownLock, sentence } from "./wording.ts";

/** A unit's note that says how to get to it; another tells of the machine. */
const wayTo =
  /\b(?:roof|ladder|hatch|keys?|keyed|gates?|doors?|fence|behind|basement|attic|mezzanine|floor|access|codes?|lift|stairs?|alley|yard|plant room|ceiling|escort|badge|sign in|park|parking|dock)\b/i;

/** What helps before the van stops: way in, hazards, what was found last, what to take along. Said once. */
export function arrivalLines(input: ReplyInput, job: Job): readonly string[] {
  if (!firstTime(input, job)) return [];
  const { notes: ofUnit = "" } = input.equipment;
  const leads = wayTo.test(ofUnit);
  const access = [input.site.notes, leads ? ofUnit : ""].filter((w) => w !== undefined && w !== "");
  const things = thingsToBring(input, job);
  return [
    access.length === 0 ? "" : sentence(`Way in: ${access.join("; ")}`),
    ofUnit === "" || leads ? "" : sentence(`On file: ${ofUnit}`),
    hazards(input, job),
    lastVisit(input),
    things.length === 0 ? "" : sentence(`Bring ${listed(things)}`),
  ].filter((line) => line !== "");
}

function firstTime(input: ReplyInput, job: Job): boolean {
  const rides = job.statements.filter(
    ({ statement, who, message }) =>
      statement.kind === "status" &&
      statement.status === "on_the_way" &&
      who === input.message.person &&
      message !== input.message.id,
  );
  return rides.length === 0;
}

function hazards(input: ReplyInput, job: Job): string {
  const { machine } = job;
  const locks = machine.locks.map((l) => `${ownLock(l, input.names)} hangs there`);
  const gas = machine.circuit === "nitrogen" ? ["nitrogen in the circuit"] : [];
  const bypasses = machine.bypasses.map((b) => `${b.what} bypassed`);
  const all = [...bypasses, ...gas, ...locks];
  return all.length === 0 ? "" : sentence(`Mind: ${listed(all)}`);
}

function lastVisit(input: ReplyInput): string {
  const last = input.earlier[input.earlier.length - 1];
  if (last === undefined) return "";
  const done = lastDone(last);
  const date = localTime(last.opened, input.time_zone)?.date ?? "";
  return sentence(`Last visit ${dayAndMonth(date)}${done === "" ? "" : `: ${done}`}`);
}
