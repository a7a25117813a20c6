import type { SignGroup } from "../sign.ts";
import { gasRemarks } from "./gas-remarks.ts";

const ours = "common practice, no source";
const remark = (group: string, background: Readonly<Record<string, number>>): SignGroup => ({
  group,
  background,
  remarks: true,
  source: ours,
});

/** What is noticed in passing on the electrical side; the outcomes are observation names. */
const electricalRemarks: readonly SignGroup[] = [
  remark("starting", {
    hums: 0.05,
    will_not_start: 0.1,
    kicks_without_turning: 0.015,
    starts_then_trips: 0.05,
    overload_trips: 0.05,
    hums_on_one_phase: 0.01,
    drive_faults_at_start: 0.05,
    short_cycles: 0.06,
  }),
  remark("dimming", { lights_dim_at_start: 0.03 }),
  remark("protection", { breaker_trips: 0.06, fuse_blown: 0.05, upstream_fuse_open: 0.01 }),
  remark("burning", { burnt_smell: 0.02, oil_black: 0.008, acid_found: 0.008, no_acid: 0.1 }),
  remark("joint", { burnt_connection: 0.015, connection_loose: 0.02 }),
  remark("dead", { unit_dead: 0.08, display_dead: 0.03, transformer_failed: 0.008 }),
  remark("water", { water_inside: 0.02, wet_weather: 0.04 }),
  remark("contacts", {
    contactor_pitted: 0.04,
    contactor_welded: 0.006,
    contactor_chatters: 0.02,
    contactor_not_pulling_in: 0.04,
    contactor_pulls_in: 0.1,
  }),
  remark("bulged", { capacitor_bulged: 0.015 }),
  remark("monitor", { phase_monitor_open: 0.01, supply_part_failed: 0.006 }),
  remark("board", { board_burnt: 0.008, board_suspected: 0.03 }),
  remark("network", { communication_lost: 0.03, communication_returns_unplugged: 0.006 }),
  remark("unplugged", { drive_faults_without_motor: 0.02, drive_fine_without_motor: 0.08 }),
  remark("shell", { shell_hot: 0.05, shell_cold: 0.06 }),
  remark("sound", { runs_backward: 0.004, noisy: 0.05, vibrates: 0.03, no_pumping: 0.02 }),
  remark("sequence", { phase_sequence_reversed: 0.006, line_work_done: 0.015 }),
  remark("fans", {
    outdoor_fan_not_turning: 0.03,
    indoor_fan_not_turning: 0.03,
    fan_not_turning: 0.03,
    fans_turning: 0.2,
    fan_slow: 0.02,
    fan_hums: 0.02,
    fan_starts_when_pushed: 0.01,
    fan_spins_free: 0.05,
    fan_stiff: 0.01,
  }),
  remark("well", { runs_normally: 0.15, cooling_again: 0.1, fine: 0.1 }),
  remark("liquid", {
    liquid_in_shell: 0.02,
    oil_foams: 0.008,
    crankcase_heater_off: 0.02,
    was_without_power: 0.03,
  }),
  remark("start_pressures", { pressures_equal: 0.1, pressures_unequal: 0.03 }),
  remark("ground", { no_continuity_to_ground: 0.2 }),
  remark("cooled", { resets_after_cooling: 0.03 }),
  remark("storm", { struck_by_storm: 0.02 }),
  remark("call", { calling: 0.15, not_calling: 0.04 }),
  remark("safety", { safety_open: 0.04 }),
  remark("probe", { sensor_reads_wrong: 0.02 }),
  remark("cable", { cable_damaged: 0.01 }),
  remark("drive_code", { fault_returns: 0.06 }),
];

/** What is noticed in passing; a remark stands in one group. */
export const remarkSigns: readonly SignGroup[] = [...electricalRemarks, ...gasRemarks];
