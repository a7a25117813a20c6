import type { Job } from "../model.ts";
import { personsOwn, sentence, unitName } from "./wording.ts";

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
