import type { Job, ReplyInput } from "../model.ts";
import { cylinderFillKg } from "../physics/cylinder-fill.ts";
import { refrigerantNamed } from "../physics/refrigerant.ts";
import { equipmentOf } from "../record/case.ts";
import { isCurrent } from "../record/readings.ts";
import { gasAtRest } from "../record/rest-table.ts";
import { cylindersIn } from "./cylinder.ts";
import { allJobs, type Memory } from "./memory.ts";

/** A cylinder's number follows its weight soon or is another's; our choice, no source. */
const saidNextMs = 10 * 60_000;

/** What a cylinder of the office's list holds with a message's weight in it, and may hold. */
export function fillOf(
  memory: Memory,
  job: Job | undefined,
  message: string,
): ReplyInput["cylinder"] {
  if (job === undefined) return undefined;
  const weighed = job.readings.filter((one) => one.message === message && isCurrent(one));
  if (!weighed.some(({ action }) => action === "recovered")) return undefined;
  const number = cylinderOf(job, message);
  const known = memory.registry.cylinders.find((one) => same(one.number, number));
  const own = equipmentOf(job, memory.registry).refrigerant;
  // another gas in it is challenged, not counted up to its limit
  if (known?.gas !== undefined && own !== undefined && !same(known.gas, own)) return undefined;
  const gas = refrigerantNamed(known?.gas ?? own ?? "");
  if (known?.capacity_kg === undefined || gas === undefined) return undefined;
  const limit_kg = cylinderFillKg(known.capacity_kg, gas);
  if (limit_kg === undefined) return undefined;
  const moved = allJobs(memory).reduce(
    (sum, one) => sum + movedKg(one, known.number),
    gasAtRest(memory.store, plain(known.number)),
  );
  return { number: known.number, in_kg: (known.net_kg ?? 0) + moved, limit_kg };
}

const plain = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, "");
const same = (a: string, b: string | undefined): boolean =>
  b !== undefined && plain(a) === plain(b);

/**
 * The cylinder that a message names; else what its author says next, before another weight: "cyl 22";
 * else the last that its job named before it.
 */
function cylinderOf(job: Job, message: string): string | undefined {
  const at = job.timeline.findIndex((line) => line.message === message);
  const before = job.timeline.slice(0, Math.max(0, at)).flatMap(({ says }) => cylindersIn(says));
  return cylinderSaid(job, message) ?? before.at(-1);
}

/** The cylinder that was said with a message's weight, before or after it; none is guessed. */
export function cylinderSaid(job: Job, message: string): string | undefined {
  const at = job.timeline.findIndex((line) => line.message === message);
  return cylindersIn(job.timeline[at]?.says ?? "").at(-1) ?? saidNext(job, at);
}

function saidNext(job: Job, at: number): string | undefined {
  const line = job.timeline[at];
  if (line === undefined) return undefined;
  for (const next of job.timeline.slice(at + 1)) {
    if (Date.parse(next.at) - Date.parse(line.at) > saidNextMs) return undefined;
    const weighs = job.readings.some(
      ({ message, quantity }) => message === next.message && quantity === "mass",
    );
    if (weighs) return undefined;
    const named = next.who === line.who ? cylindersIn(next.says).at(-1) : undefined;
    if (named !== undefined) return named;
  }
  return undefined;
}

/** kg that a job put into a cylinder, less what it took out. */
function movedKg(job: Job, number: string): number {
  return job.readings
    .filter((one) => one.quantity === "mass" && one.action !== undefined && isCurrent(one))
    .filter((one) => one.rating === undefined && one.earlier !== true && one.doubtful !== true)
    .filter((one) => same(number, cylinderOf(job, one.message)))
    .reduce((sum, { value, action }) => {
      const kg = typeof value === "number" ? value : 0;
      return action === "recovered" ? sum + kg : sum - kg;
    }, 0);
}

/** kg that a job moved into each cylinder that it names, by the number as it is compared. */
export function gasOf(job: Job): readonly (readonly [number: string, kg: number])[] {
  const named = new Set(job.timeline.flatMap(({ says }) => cylindersIn(says)).map(plain));
  return [...named]
    .map((number) => [number, movedKg(job, number)] as const)
    .filter(([, kg]) => kg !== 0);
}
