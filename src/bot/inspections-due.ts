import type { EquipmentFacts, Job } from "../model.ts";
import { carbonEquivalentT, leakCheckMonths } from "../physics/carbon-equivalent.ts";
import { inspectionMonths, inspectionsEnd, monthsLater } from "../physics/leak-rules.ts";
import { refrigerantNamed } from "../physics/refrigerant.ts";
import { refrigerantFacts } from "../physics/tables/refrigerant-facts.ts";
import type { DueItem, ExportJob } from "../show/exports/sheet-source.ts";
import { asksRepair, circuitOf, fromOf, inEurope, isLeakCheck, momentsOf } from "./leak-moments.ts";

/** A job with every other one on its unit. */
export interface OnUnit {
  readonly entry: ExportJob;
  readonly others: readonly Job[];
}

/**
 * The periodic leak checks of each unit: where its rate was over a federal limit, or by its charge
 * in Europe. Of a unit the newest job of the record counts. `day`: the company's day of a moment.
 */
export function inspectionsDue(
  units: readonly OnUnit[],
  day: (iso: string) => string,
): readonly DueItem[] {
  const items = new Map<string, DueItem>();
  for (const unit of units) {
    const { site, equipment } = unit.entry.job;
    const found =
      unit.entry.equipment.leak_regime === "eu" ? europe(unit, day) : federal(unit, day);
    for (const { circuit, item } of found) items.set([site, equipment, circuit].join("\n"), item);
  }
  return [...items.values()];
}

interface Found {
  readonly circuit: string;
  readonly item: DueItem;
}

/** 40 CFR 82.157(g), 84.106(g): after a rate over its limit, until it was not over for long enough. */
function federal({ entry, others }: OnUnit, day: (iso: string) => string): readonly Found[] {
  const { job, equipment, judgement } = entry;
  return judgement.findings
    .filter((one) => one.check === "leak_rate" && asksRepair(one) && !inEurope(one))
    .map((finding) => {
      const circuit = circuitOf(finding);
      const months = inspectionMonths(chargeKg(equipment, circuit), equipment.use);
      const from = fromOf(job, circuit);
      const last = momentsOf([job, ...others], from, isLeakCheck).at(-1);
      const every = months === 12 ? "once a calendar year" : `every ${months} months`;
      const unsure =
        months === 3 && equipment.use === undefined
          ? ", once a calendar year where it cools for comfort"
          : "";
      return {
        circuit: circuit ?? "",
        item: {
          job: job.job,
          kind: "inspection",
          what: `${circuit === undefined ? "" : `${circuit}: `}periodic leak inspection, ${every}${unsure}, ${inspectionsEnd(months)}; not where an automatic detector watches it`,
          due: monthsLater(day(last ?? from), months),
          basis: finding.basis,
          state: "open",
          proof: proofOf(last, day),
        },
      };
    });
}

/** Regulation (EU) 2024/573 Art. 5: by the charge, whether it leaks or not. */
function europe({ entry, others }: OnUnit, day: (iso: string) => string): readonly Found[] {
  const { job, equipment } = entry;
  const gas =
    equipment.refrigerant === undefined ? undefined : refrigerantNamed(equipment.refrigerant);
  const gwp = gas === undefined ? undefined : refrigerantFacts[gas].gwpEu;
  const kg = equipment.charge_kg;
  if (gwp === undefined || kg === undefined) return [];
  const tonnes = carbonEquivalentT(kg, gwp);
  const months = leakCheckMonths(tonnes, false);
  const twice = leakCheckMonths(tonnes, true);
  if (months === undefined) return [];
  const last = momentsOf([job, ...others], "", isLeakCheck).at(-1);
  return [
    {
      circuit: "",
      item: {
        job: job.job,
        kind: "inspection",
        what: `leak check every ${months} months, ${twice} with a detection system (${tonnes.toFixed(1)} t of CO2 equivalent)`,
        // none on the record: it is asked for now
        due: last === undefined ? day(job.opened) : monthsLater(day(last), months),
        basis: "EU 2024/573 Art. 5",
        state: "open",
        proof: proofOf(last, day),
      },
    },
  ];
}

const proofOf = (last: string | undefined, day: (iso: string) => string): string =>
  `a leak check in the record by then; ${last === undefined ? "none is there yet" : `the last was on ${day(last)}`}`;

function chargeKg(equipment: EquipmentFacts, circuit: string | undefined): number {
  const bare = (text: string): string => text.toLowerCase().replace(/^circuit\s*/, "");
  const own = equipment.circuits?.find(
    (one) => circuit !== undefined && bare(one.circuit) === bare(circuit),
  );
  return own?.charge_kg ?? equipment.charge_kg ?? 0;
}
