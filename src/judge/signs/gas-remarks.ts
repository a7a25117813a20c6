import type { SignGroup } from "../sign.ts";

const remark = (group: string, background: Readonly<Record<string, number>>): SignGroup => ({
  group,
  background,
  remarks: true,
  source: "common practice, no source",
});

/** What is noticed in passing on the refrigerant and air side; the outcomes are observation names. */
export const gasRemarks: readonly SignGroup[] = [
  remark("leak_traces", {
    oil_stain: 0.03,
    leak_found: 0.02,
    no_leak_found: 0.05,
    low_charge_said: 0.04,
  }),
  remark("sight_glass", {
    bubbles_in_sight_glass: 0.03,
    sight_glass_clear: 0.1,
    sight_glass_shows_moisture: 0.008,
  }),
  remark("frost", {
    frost_on_suction_line: 0.04,
    frost_to_compressor: 0.02,
    frost_at_restriction: 0.006,
    flooding_back: 0.015,
  }),
  remark("indoor_air", {
    ice_on_indoor_coil: 0.03,
    ice_on_cold_coil: 0.03,
    indoor_coil_dirty: 0.03,
    filter_dirty: 0.05,
    airflow_blocked: 0.015,
  }),
  remark("indoor_sound", { filter_clean: 0.15 }),
  remark("belt", { belt_broken: 0.008, belt_slipping: 0.01 }),
  remark("outdoor_air", { outdoor_coil_dirty: 0.04, recirculating_air: 0.008 }),
  remark("coil_sound", { coil_clean: 0.15 }),
  remark("outdoor_ice", { ice_on_outdoor_coil: 0.02, defrost_not_working: 0.008 }),
  remark("valve_look", { bulb_loose: 0.006, valve_hunting: 0.02, valve_stuck: 0.01 }),
  remark("reversing_look", { reversing_valve_stuck: 0.005 }),
];
