import type { Job } from "../model.ts";
import type { ActionName, ObservationName } from "../vocabulary.ts";

/** What is worn or wrong by itself, and what would put it right. */
interface Wear {
  readonly seen: readonly ObservationName[];
  /** the part to fit, or the thing to work on */
  readonly thing: RegExp;
  /** work that mends it without a part */
  readonly by: readonly ActionName[];
}

/** Common practice, no source. */
const wear: readonly Wear[] = [
  {
    seen: ["contactor_pitted", "contactor_welded", "contactor_chatters"],
    thing: /contact/i,
    by: ["repaired"],
  },
  { seen: ["capacitor_bulged"], thing: /\bcap/i, by: [] },
  { seen: ["transformer_failed"], thing: /transformer/i, by: [] },
  { seen: ["board_burnt"], thing: /board/i, by: ["repaired"] },
  {
    seen: ["burnt_connection", "connection_loose", "cable_damaged"],
    thing: /wir|lug|connect|terminal|splice|lead|cable|plug|breaker/i,
    by: ["repaired", "tightened"],
  },
  { seen: ["belt_broken", "belt_slipping"], thing: /belt/i, by: ["tightened", "adjusted"] },
  { seen: ["filter_dirty"], thing: /filter/i, by: ["cleaned"] },
  { seen: ["outdoor_coil_dirty", "indoor_coil_dirty"], thing: /coil|cond|evap/i, by: ["cleaned"] },
  { seen: ["fan_stiff"], thing: /fan|motor|bearing/i, by: ["repaired"] },
  { seen: ["crankcase_heater_off"], thing: /heater/i, by: ["repaired"] },
  { seen: ["bulb_loose"], thing: /bulb/i, by: ["repaired", "tightened"] },
  {
    seen: ["leak_found", "oil_stain"],
    thing: /leak|flare|valve|core|joint|fitting|coil|line|cap|nut/i,
    by: ["repaired", "brazed", "tightened"],
  },
  { seen: ["sight_glass_shows_moisture", "acid_found"], thing: /drier|filter/i, by: [] },
];

const declined = /\bdeclin|\b(?:customer|owner|tenant|they|he|she) (?:said|says) no\b|n[o']t want/i;

export interface Found {
  readonly what: string;
  readonly message: string;
}

/** What was found wrong at all, mended since or not, as it was said. */
export function foundAtAll(job: Job): readonly string[] {
  const found = job.statements.flatMap(({ statement, undone, deleted }) => {
    if (statement.kind !== "observation" || undone === true || deleted === true) return [];
    if (statement.denied === true || statement.earlier === true) return [];
    return wear.some(({ seen }) => seen.includes(statement.observation)) ? [statement.said] : [];
  });
  return [...new Set(found)];
}

/** What was found worn and neither mended, fitted nor declined since: the next quote. */
export function foundNotFixed(job: Job): readonly Found[] {
  const told = new Set<string>();
  return job.statements.flatMap(({ statement, message, at, undone, deleted }) => {
    if (statement.kind !== "observation" || undone === true || deleted === true) return [];
    if (statement.denied === true || statement.earlier === true) return [];
    const kind = wear.find(({ seen }) => seen.includes(statement.observation));
    const name = `${statement.observation} ${statement.subject ?? ""}`;
    if (kind === undefined || told.has(name) || isSettled(job, kind, { at, message })) return [];
    told.add(name);
    const { subject, said } = statement;
    const what = subject === undefined ? said : `${subject}: ${said}`;
    return isRefused(job, kind, { what, at }) ? [] : [{ what, message }];
  });
}

interface Seen {
  readonly at: string;
  readonly message: string;
}

function isSettled(job: Job, { thing, by }: Wear, seen: Seen): boolean {
  const since = (at: string): boolean => Date.parse(at) >= Date.parse(seen.at);
  const fitted = job.parts.some((p) => p.state === "fitted" && since(p.at) && thing.test(p.part));
  const mended = job.statements.some(({ statement, at, undone, deleted }) => {
    if (undone === true || deleted === true || !since(at)) return false;
    if (statement.kind !== "action" || statement.planned === true) return false;
    return statement.what === undefined
      ? by.includes(statement.action)
      : [...by, "replaced", "swapped"].includes(statement.action) && thing.test(statement.what);
  });
  return fitted || mended || job.timeline.some((row) => since(row.at) && isDeclined(row, thing));
}

/** Nobody wants the part that would mend it, or the thing was declined by its own words. */
function isRefused(
  job: Job,
  { thing }: Wear,
  found: { readonly what: string; readonly at: string },
): boolean {
  const since = (at: string): boolean => Date.parse(at) >= Date.parse(found.at);
  return (
    job.parts.some((p) => p.decided === "declined" && since(p.at) && thing.test(p.part)) ||
    job.statements.some(
      ({ statement, at, undone, deleted }) =>
        undone !== true &&
        deleted !== true &&
        since(at) &&
        statement.kind === "note" &&
        statement.about === declinedNote(found.what),
    )
  );
}

/** How a thing that was declined stands in the record. */
export const declinedNote = (what: string): string => `declined: ${what}`;

const isDeclined = ({ says }: { readonly says: string }, thing: RegExp): boolean =>
  declined.test(says) && thing.test(says);
