import type { Job, ReplyInput } from "../model.ts";
import { personName, personsOwn, sentence, unitName } from "./wording.ts";

/** A lock that the office noted as removed by its procedure. */
export function lockGoneText(
  job: Job,
  owner: string,
  names: Readonly<Record<string, string>>,
): string {
  const own = personsOwn(owner, names);
  return sentence(
    `${unitName(job)}: filed, ${own} lock off by the office's procedure. Tell its owner before the next shift`,
  );
}

/** A colleague's lock that was told off, without its owner's word: it stays on the list. */
export function lockStays({ job, understood, names, message }: ReplyInput): string {
  const told = understood.statements.flatMap((said) =>
    said.kind === "action" && said.action === "unlocked" ? [said.what?.toLowerCase() ?? ""] : [],
  );
  const others = (job?.machine.locks ?? []).filter(
    ({ who, free }) => who !== message.person && free !== true,
  );
  // "lock is off", of who has none of his own there
  const own = job?.machine.locks.some(({ who }) => who === message.person) === true;
  const somebodys = told.some(
    (what) => /^(?:his|hers?|theirs?)$/.test(what) || (what === "" && !own),
  );
  const lock = others.find(({ who }) => somebodys || told.includes(`${who.toLowerCase()}'s`));
  if (lock === undefined) return "";
  const name = personName(lock.who, names);
  return sentence(
    `${name}'s lock stays on the list until ${name} says so, or the office by its procedure`,
  );
}
