import type { CaseNote, Job, JobReading, Span } from "../model.ts";

/** Which message a correction belongs to: "no, head 308" stands where the head was said first. */
export function hostsOf(readings: readonly JobReading[]): ReadonlyMap<string, string> {
  const was = new Map<string, string>();
  for (const { replaced_by, message } of readings)
    if (replaced_by !== undefined) was.set(replaced_by, message);
  const first = new Map<string, string>();
  const by = new Map<string, JobReading[]>();
  for (const reading of readings)
    by.set(reading.message, [...(by.get(reading.message) ?? []), reading]);
  for (const [message, own] of by) {
    const hosts = new Set(own.map(({ id }) => was.get(id)));
    const [host] = hosts;
    if (hosts.size === 1 && host !== undefined && host !== message) first.set(message, host);
  }
  return first;
}

/** The first message of a row of corrections. */
function rootOf(hosts: ReadonlyMap<string, string>, message: string): string {
  let at = message;
  for (let far = 0; far < hosts.size; far++) at = hosts.get(at) ?? at;
  return at;
}

const moved = <T extends { readonly spans: readonly Span[] }>(one: T, by: number): T => ({
  ...one,
  spans: one.spans.map(([from, to]): Span => [from + by, to + by]),
});

/** A note with what corrected it later behind its words, so that its figures are judged together. */
function joined(note: CaseNote, later: CaseNote): CaseNote {
  const text = `${note.text ?? ""}. ${later.text ?? ""}`;
  const by = text.length - (later.text ?? "").length;
  return {
    ...note,
    text,
    readings: [...note.readings, ...later.readings.map((one) => moved(one, by))],
    statements: [...note.statements, ...later.statements.map((one) => moved(one, by))],
  };
}

/** The notes of a job, each correction put where the figure was said that it corrects. */
export function withCorrections(
  job: Pick<Job, "readings" | "timeline">,
  notes: readonly CaseNote[],
): readonly CaseNote[] {
  const hosts = hostsOf(job.readings);
  if (hosts.size === 0) return notes;
  const place = new Map(job.timeline.map(({ message }, index) => [message, index] as const));
  const out: (CaseNote | undefined)[] = [...notes];
  job.timeline.forEach(({ message }, index) => {
    const root = place.get(rootOf(hosts, message));
    const [host, own] = [out[root ?? index], out[index]];
    if (root === undefined || root === index || host === undefined || own === undefined) return;
    out[root] = joined(host, own);
    out[index] = undefined;
  });
  return out.filter((note) => note !== undefined);
}
