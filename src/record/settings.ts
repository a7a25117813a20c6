import { z } from "zod";
import type { UnitHabit } from "../model.ts";
import { type Store, sql } from "./store.ts";

export interface Settings {
  /** IANA zone of the company; absent: the offset of each message counts */
  readonly time_zone?: string;
  readonly units: UnitHabit;
  /** where the dispatcher's board is posted */
  readonly board_channel?: string;
  readonly board_platform?: string;
  /** where near misses are told, to one person alone */
  readonly safety_channel?: string;
  /** hours are billed in steps of so many minutes, rounded up */
  readonly rounding_min?: number;
}

const row = z.array(z.object({ name: z.string(), value: z.string() }));

export function readSettings(store: Store): Settings {
  const rows = row.parse(sql(store, "SELECT name, value FROM setting").all());
  const values = new Map(rows.map(({ name, value }) => [name, value]));
  const zone = values.get("time_zone");
  const board = values.get("board_channel");
  const platform = values.get("board_platform");
  const safety = values.get("safety_channel");
  const rounding = Number(values.get("rounding_min"));
  return {
    units: values.get("units") === "si" ? "si" : "us",
    ...(zone === undefined ? {} : { time_zone: zone }),
    ...(board === undefined ? {} : { board_channel: board }),
    ...(platform === undefined ? {} : { board_platform: platform }),
    ...(safety === undefined ? {} : { safety_channel: safety }),
    ...(rounding > 0 ? { rounding_min: rounding } : {}),
  };
}

export function writeSetting(store: Store, name: keyof Settings, value: string): void {
  sql(
    store,
    "INSERT INTO setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
  ).run(name, value);
}
