import { gasOf } from "../gas-of.ts";
import { stands } from "../standing-reading.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type DayRecord, type ExportJob, onDay, pounds } from "./sheet-source.ts";

/** lb of full charge between which the amounts from disposed appliances are kept: 40 CFR 82.156(a)(3). */
const [leastLb, mostLb] = [5, 50];

const scrapWords =
  /\b(?:scrap|dispos|decommission|junk|haul(?:ed|ing)? (?:it |the unit )?away|demol|tear(?:ing)? out|torn out)/i;

/** Gas taken out of units of 5 to 50 lb, by month; the office says which of them were scrapped. */
export const recoveredSheet: SheetMaker = {
  name: "recovered",
  spare: true,
  columns: [
    { name: "month", kind: "text", about: "of the weight, company time" },
    { name: "gas", kind: "text", about: "from the plate as read, else the office's list" },
    { name: "kg", kind: "number", about: "taken out" },
    { name: "lb", kind: "number", about: "the same in pounds" },
    {
      name: "month kg so far",
      kind: "number",
      about: "of this gas in this export, with this row: export the whole month for its total",
    },
    {
      name: "scrapped kg so far",
      kind: "number",
      about: "the same of the rows alone whose unit was scrapped by the words of the job",
    },
    { name: "scrapped", kind: "text", about: "yes where the words of the job say so; else ask" },
    { name: "at", kind: "time", about: "when it was weighed" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "full charge lb", kind: "number", about: "from the office's list" },
    { name: "job", kind: "number", about: "job number" },
    { name: "message", kind: "text", about: "message that it came with" },
  ],
  rows: (record) => {
    const sums = new Map<string, number>();
    return record.jobs
      .filter(ofSize)
      .flatMap((entry) => weights(record, entry))
      .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
      .map(({ entry, kg, at, message }) => {
        const { job, equipment } = entry;
        const gas = gasOf(job, equipment);
        const key = `${at.slice(0, 7)} ${gas}`;
        const isScrapped = job.timeline.some(({ says }) => scrapWords.test(says));
        const add = (name: string, more: number): number => {
          const sum = (sums.get(name) ?? 0) + more;
          sums.set(name, sum);
          return rounded(sum);
        };
        return [
          at.slice(0, 7),
          gas,
          rounded(kg),
          pounds(kg),
          add(key, kg),
          add(`${key} scrapped`, isScrapped ? kg : 0),
          isScrapped ? "yes" : "ask",
          at,
          job.site,
          job.equipment,
          pounds(equipment.charge_kg ?? 0),
          job.job,
          message,
        ];
      });
  },
};

function ofSize({ equipment }: ExportJob): boolean {
  const lb = pounds(equipment.charge_kg ?? 0);
  return lb > leastLb && lb < mostLb;
}

function weights(
  record: DayRecord,
  entry: ExportJob,
): readonly {
  readonly entry: ExportJob;
  readonly kg: number;
  readonly at: string;
  readonly message: string;
}[] {
  return entry.job.readings.flatMap((r) =>
    r.quantity === "mass" &&
    r.action === "recovered" &&
    stands(r) &&
    typeof r.value === "number" &&
    onDay(record, r.taken)
      ? [{ entry, kg: r.value, at: cellTime(record, r.taken), message: r.message }]
      : [],
  );
}

const rounded = (kg: number): number => Math.round(kg * 1000) / 1000;
