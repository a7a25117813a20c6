import { readSettings, type Settings, writeSetting } from "../settings.ts";
import { type Store, transact } from "../store.ts";
import type { Imported, ImportOptions } from "./import-rows.ts";
import type { SheetRow } from "./sheet-row.ts";

/** Whether a zone is one of the IANA list that this machine knows. */
function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

const known: Readonly<Record<string, (value: string) => string | undefined>> = {
  time_zone: (value) => (isZone(value) ? undefined : `"${value}" is no IANA time zone`),
  units: (value) => (value === "us" || value === "si" ? undefined : "units are us or si"),
  board_channel: () => undefined,
  board_platform: () => undefined,
  rounding_min: (value) =>
    /^\d+$/.test(value) && Number(value) >= 1 && Number(value) <= 60
      ? undefined
      : `"${value}" is no step of 1 to 60 minutes`,
};

/** What people call them beside their own names. */
const otherNames: Readonly<Record<string, keyof Settings>> = {
  rounding: "rounding_min",
  hours_rounding: "rounding_min",
  rounding_minutes: "rounding_min",
  timezone: "time_zone",
};

function nameOf(cell: string): keyof Settings | undefined {
  const name = cell
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, "_");
  const own = ["time_zone", "units", "board_channel", "board_platform", "rounding_min"] as const;
  return own.find((setting) => setting === name) ?? otherNames[name];
}

/** A file of settings: "setting,value". */
export function importSettings(
  store: Store,
  rows: readonly SheetRow[],
  { dry = false }: ImportOptions = {},
): Imported {
  const counts = { added: 0, changed: 0, same: 0 };
  const bad: { line: number; reason: string }[] = [];
  const changes: { line: number; reason: string }[] = [];
  transact(store, () => {
    const before = readSettings(store);
    for (const { line, cells } of rows) {
      const [cell = "", raw = ""] = cells;
      const value = raw.trim();
      const name = nameOf(cell);
      const problem = name === undefined ? `"${cell}" is no setting` : known[name]?.(value);
      if (name === undefined || problem !== undefined) bad.push({ line, reason: problem ?? "" });
      else if (String(before[name] ?? "") === value) counts.same++;
      else {
        if (!dry) writeSetting(store, name, value);
        changes.push({ line, reason: `${name}: ${before[name] ?? "nothing"} becomes ${value}` });
        counts[before[name] === undefined ? "added" : "changed"]++;
      }
    }
  });
  const matched = [
    { heading: "setting", field: "setting" },
    { heading: "value", field: "value" },
  ];
  return { plural: "settings", counts, bad, notes: [], matched, unused: [], changes };
}
