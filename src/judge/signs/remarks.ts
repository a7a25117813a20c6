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
    hums: 0.0325,
    will_not_start: 0.065,
    kicks_without_turning: 0.0097,
    starts_then_trips: 0.0325,
    overload_trips: 0.0325,
    hums_on_one_phase: 0.0065,
    drive_faults_at_start: 0.0325,
    short_cycles: 0.039,
  }),
  remark("dimming", { lights_dim_at_start: 0.0195 }),
  remark("protection", {
    breaker_trips: 0.039,
    fuse_blown: 0.0325,
    upstream_fuse_open: 0.0065,
    control_fuse_open: 0.013,
    trips_unloaded: 0.004,
  }),
  remark("burning", { burnt_smell: 0.013, oil_black: 0.0052, acid_found: 0.0052, no_acid: 0.1 }),
  remark("joint", { burnt_connection: 0.0097, connection_loose: 0.013 }),
  remark("dead", { unit_dead: 0.052, display_dead: 0.0195, transformer_failed: 0.0052 }),
  remark("water", { water_inside: 0.013, wet_weather: 0.04 }),
  remark("contacts", {
    contactor_pitted: 0.026,
    contactor_welded: 0.0039,
    contactor_chatters: 0.013,
    contactor_not_pulling_in: 0.026,
    contactor_pulls_in: 0.1,
  }),
  remark("bulged", { capacitor_bulged: 0.0097 }),
  remark("monitor", { phase_monitor_open: 0.0065, supply_part_failed: 0.0039 }),
  remark("board", { board_burnt: 0.0052, board_suspected: 0.0195, main_suspected: 0.006 }),
  remark("network", {
    communication_lost: 0.0195,
    communication_returns_unplugged: 0.0039,
    dead_unloaded: 0.003,
  }),
  remark("unplugged", { drive_faults_without_motor: 0.013, drive_fine_without_motor: 0.08 }),
  remark("driven", { seized: 0.0006 }),
  remark("rolled", { stays_with_line: 0.01, goes_with_lead: 0.01 }),
  remark("shell", { shell_hot: 0.0325, shell_cold: 0.06 }),
  remark("sound", { runs_backward: 0.0026, noisy: 0.0325, vibrates: 0.0195, no_pumping: 0.013 }),
  remark("sequence", {
    phase_sequence_reversed: 0.0039,
    line_work_done: 0.0097,
    right: 0.05,
  }),
  remark("fans", {
    outdoor_fan_not_turning: 0.0195,
    indoor_fan_not_turning: 0.0195,
    fan_not_turning: 0.0195,
    fans_turning: 0.2,
    fan_slow: 0.013,
    fan_backward: 0.004,
    outdoor_fan_backward: 0.003,
    indoor_fan_backward: 0.002,
    fan_hums: 0.013,
    fan_starts_when_pushed: 0.0065,
    fan_spins_free: 0.05,
    fan_stiff: 0.0065,
  }),
  remark("well", { runs_normally: 0.15, cooling_again: 0.1, fine: 0.1 }),
  remark("liquid", {
    liquid_in_shell: 0.013,
    oil_foams: 0.0052,
    crankcase_heater_off: 0.013,
    was_without_power: 0.0195,
  }),
  remark("start_pressures", { pressures_equal: 0.1, pressures_unequal: 0.0195 }),
  remark("ground", { no_continuity_to_ground: 0.2 }),
  remark("cooled", { resets_after_cooling: 0.0195 }),
  remark("storm", { struck_by_storm: 0.013 }),
  remark("call", { calling: 0.15, not_calling: 0.026 }),
  remark("safety", { safety_open: 0.026, high_pressure: 0.06, low_pressure: 0.06 }),
  remark("probe", { sensor_reads_wrong: 0.013 }),
  remark("cable", { cable_damaged: 0.0065 }),
  remark("feed", { grounded: 0.002 }),
  remark("draft", { switch_open: 0.008 }),
  remark("motor", { winding_bad: 0.0008 }),
  remark("valve_coil", { open: 0.002, branch_open: 0.0015, expansion_open: 0.0015 }),
  remark("upstream", { same: 0.04 }),
  remark("equal_start", { free: 0.01 }),
  remark("start_kit", { relay_failed: 0.004 }),
  remark("forced_defrost", { works: 0.01 }),
  remark("drive_code", { fault_returns: 0.039, control_fault: 0.006 }),
];

/** What is noticed in passing; a remark stands in one group. */
export const remarkSigns: readonly SignGroup[] = [...electricalRemarks, ...gasRemarks];
