import type { Job } from "../model.ts";
import { served, waitsUnclaimed } from "./board-order.ts";
import { hoursAndMinutes } from "./days.ts";
import { localTime } from "./local-time.ts";
import { partsAreIn } from "./open-parts.ts";
import { type BoxLimitOf, productAtRisk } from "./product.ts";
import { personName } from "./wording.ts";

interface Scene {
  readonly now: string;
  readonly zone: string;
  readonly names: Readonly<Record<string, string>>;
  readonly boxLimitOf?: BoxLimitOf;
}

/** Status in one word: a board's line is short. */
const stateWords = {
  open: "new",
  on_the_way: "driving",
  on_site: "there",
  left_site: "left",
  waiting_for_parts: "parts",
  no_access: "no access",
  done: "done",
} as const satisfies Record<Job["status"], string>;

/** What fits beside a thumb on a phone held upright. */
const width = 46;
/** A unit's tag is seldom longer: so much of the place stands, however long the names are. */
const placeWidth = 12;
const mostExtra = 2;

/** A job's line on the board, and at most two more where someone must act. */
export function jobRow(job: Job, scene: Scene): readonly string[] {
  const room = width - `${job.job} , `.length;
  const state = stateOf(job, scene, room - Math.min(placeWidth, placeOf(job).length));
  const place = narrowed(placeOf(job), room - state.length);
  const extra = extras(job, scene).slice(0, mostExtra);
  return [`${job.job} ${place}, ${state}`, ...extra.map((line) => narrowed(`   ${line}`, width))];
}

function placeOf(job: Job): string {
  return [job.equipment, job.site].filter((w) => w !== null).join(" ") || "no unit named";
}

function narrowed(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, Math.max(1, most - 3)).trimEnd()}...`;
}

/** Who, what and since when; a long name is cut, never the rest. */
function stateOf(job: Job, scene: Scene, most: number): string {
  const since = hoursAndMinutes(Date.parse(scene.now) - Date.parse(job.status_at));
  const who = job.person ?? job.assigned;
  const name = who === undefined ? "nobody" : personName(who, scene.names);
  const state = partsAreIn(job) ? "parts in" : stateWords[job.status];
  const rest = ` ${state} ${since}`;
  return `${narrowed(name, most - rest.length)}${rest}`;
}

/** What someone must do or know, the most pressing first. */
function extras(job: Job, scene: Scene): readonly string[] {
  return [
    ...job.machine.bypasses.map((b) => `bypassed: ${b.what}`),
    waitsUnclaimed(job, scene.now) ? "name somebody" : "",
    job.status === "no_access" ? "call the site for a time" : "",
    ...job.parts
      .filter((p) => p.state === "needed" && !served(job, p))
      .map((p) => `order: ${partName(p)}`),
    partsAreIn(job) ? "ready: send somebody" : "",
    ...dueParts(job),
    productLine(job, scene),
    ...new Set(
      job.machine.locks.map(
        (lock) =>
          `${lock.tag === true ? "tagged" : "locked"} by ${personName(lock.who, scene.names)}`,
      ),
    ),
    ...job.clocks.slice(0, 1).map((clock) => clockLine(clock.due, scene)),
  ].filter((line) => line !== "");
}

/** "box 46 F, over 41 F since 09:12". */
function productLine(job: Job, scene: Scene): string {
  const risk = productAtRisk(job, scene.boxLimitOf?.(job));
  const since = risk === undefined ? undefined : localTime(risk.since, scene.zone)?.time;
  return risk === undefined || since === undefined
    ? ""
    : `${risk.figure}, ${risk.limit} since ${since}`;
}

function partName(part: Job["parts"][number]): string {
  return part.number === undefined ? part.part : `${part.number} ${part.part}`;
}

function dueParts(job: Job): readonly string[] {
  const ordered = job.parts.filter((p) => p.state === "ordered" && p.arrived !== true);
  const open = ordered.filter(
    (p) => !job.parts.some((f) => f.state === "fitted" && f.part === p.part),
  );
  return open.map((p) => `ordered: ${partName(p)}${p.due === undefined ? "" : `, due ${p.due}`}`);
}

function clockLine(due: string, scene: Scene): string {
  const time = localTime(due, scene.zone)?.time;
  return time === undefined ? "" : `value due ${time}`;
}
