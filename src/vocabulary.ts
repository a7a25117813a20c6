/**
 * Closed lists of names that more than one folder speaks: the reader writes them,
 * record, judge and show read them. A name is added here once.
 */

/** Begins the name of a channel that is one person's own chat with the bot. */
export const directPrefix = "direct:";

export const statuses = [
  "on_the_way",
  "on_site",
  "left_site",
  "waiting_for_parts",
  "no_access",
  "done",
] as const;
export type Status = (typeof statuses)[number];

/** Where on the machine a reading was taken. */
export const places = [
  "suction",
  "discharge",
  "liquid",
  "shell",
  "oil",
  "return_air",
  "supply_air",
  "outdoor_air",
  "indoor_air",
  "suction_saturation",
  "discharge_saturation",
  "condenser_in",
  "condenser_out",
  "evaporator_in",
  "evaporator_out",
  "water_in",
  "water_out",
  "box",
  "product",
  "supply",
  "drive_output",
  "dc_bus",
  "control",
] as const;
export type Place = (typeof places)[number];

/** Why a number is no measurement. */
export const ratings = [
  "RLA",
  "LRA",
  "MOC",
  "MCC",
  "MCA",
  "MOP",
  "FLA",
  "nominal",
  "nameplate_charge",
  "setpoint",
  "expected",
] as const;
export type Rating = (typeof ratings)[number];

export const questions = [
  "why",
  "next",
  "status",
  "history",
  "summary",
  "how",
  "export",
  "help",
  /** what the next person must know: "anything I should know before I take it over" */
  "handover",
  /** what the file still lacks: "what's left", "am I missing anything" */
  "lacking",
  /** what to take along: "what do I need to bring" */
  "bring",
  /** two sentences for the customer: "tell the customer" */
  "customer",
  /** a value again: "what did we read on lead 3" */
  "reading",
  /** "who is at the library" */
  "who",
  /** which part the rooms that are out hang on: "what do the warm rooms share" */
  "shared",
  /** whose locks hang where: "whose lock is on it", "what is locked" */
  "locks",
  /** what became of a part: "when does the drive board come" */
  "parts",
  /** what one person did: "what did Osk do on HP-3" */
  "worked",
  /** what went in and what the plate asks for: "how much went in", "what's the target charge" */
  "weights",
  /** how long somebody was there: "how long have I been here", "how many hours on the dental job" */
  "hours",
  /** how long a box or its product was outside its limit: "how long was the product warm" */
  "product",
  /** whether something was done or seen: "did she clean the strainer" */
  "told",
  /** which rooms are out and which are fine: "which rooms are still out" */
  "rooms",
  /** what the leak rules ask for: "what does the law say about topping it off" */
  "law",
] as const;
export type QuestionName = (typeof questions)[number];

/**
 * What was seen, heard, smelled, or did not happen. The diagnosis reads these names,
 * so each means one thing and says nothing of its cause.
 */
export const observations = [
  // compressor
  "hums",
  "will_not_start",
  "kicks_without_turning",
  "starts_then_trips",
  "overload_trips",
  "short_cycles",
  "runs_backward",
  "noisy",
  "vibrates",
  "shell_hot",
  "shell_cold",
  "runs_normally",
  "runs_without_stopping",
  // electrical
  "breaker_trips",
  "fuse_blown",
  "unit_dead",
  "display_dead",
  "fault_returns",
  "burnt_smell",
  "burnt_connection",
  "connection_loose",
  "water_inside",
  "contactor_pitted",
  "contactor_welded",
  "contactor_chatters",
  "contactor_not_pulling_in",
  "contactor_pulls_in",
  "capacitor_bulged",
  "transformer_failed",
  "phase_monitor_open",
  "supply_part_failed",
  "board_burnt",
  "board_suspected",
  "communication_lost",
  "communication_returns_unplugged",
  "drive_faults_without_motor",
  "drive_fine_without_motor",
  "drive_faults_at_start",
  "hums_on_one_phase",
  "lights_dim_at_start",
  "windings_even",
  "continuity_to_ground",
  "no_continuity_to_ground",
  "insulation_fine",
  "supply_fine",
  "output_balanced",
  "output_unbalanced",
  "resets_after_cooling",
  "was_without_power",
  "struck_by_storm",
  "calling",
  "not_calling",
  "safety_open",
  "sensor_reads_wrong",
  "cable_damaged",
  "no_change",
  "phase_sequence_reversed",
  "line_work_done",
  "oil_foams",
  "bus_boosted",
  "wet_weather",
  "upstream_fuse_open",
  // refrigerant side
  "oil_stain",
  "leak_found",
  "no_leak_found",
  "bubbles_in_sight_glass",
  "sight_glass_clear",
  "sight_glass_shows_moisture",
  "frost_on_suction_line",
  "frost_to_compressor",
  "frost_at_restriction",
  "ice_on_indoor_coil",
  "ice_on_outdoor_coil",
  "ice_gone",
  "pressures_equal",
  "pressures_unequal",
  "liquid_in_shell",
  "flooding_back",
  "crankcase_heater_off",
  "oil_black",
  "acid_found",
  "no_acid",
  "bulb_loose",
  "valve_hunting",
  "valve_stuck",
  "reversing_valve_stuck",
  "no_pumping",
  "holding_steady",
  "dropping",
  "low_charge_said",
  // air side
  "outdoor_coil_dirty",
  "indoor_coil_dirty",
  "coil_clean",
  "filter_dirty",
  "filter_clean",
  "outdoor_fan_not_turning",
  "indoor_fan_not_turning",
  "fan_not_turning",
  "fans_turning",
  "fan_slow",
  "fan_hums",
  "fan_starts_when_pushed",
  "fan_spins_free",
  "fan_stiff",
  "belt_broken",
  "belt_slipping",
  "airflow_blocked",
  "recirculating_air",
  // the call
  "not_cooling",
  "not_heating",
  "cooling_again",
  "defrost_not_working",
  "fine",
] as const;
export type ObservationName = (typeof observations)[number];

/** What was done. Those that change the machine's state carry it in the statement too. */
export const actions = [
  "locked",
  "tagged",
  "unlocked",
  "power_off",
  "power_on",
  "proved_dead",
  "leads_lifted",
  "leads_landed",
  "jumper_on",
  "jumper_off",
  "recovered",
  "pumped_down",
  "circuit_opened",
  "brazed",
  "repaired",
  "nitrogen_in",
  "nitrogen_out",
  "vacuum_started",
  "vacuum_isolated",
  "vacuum_broken",
  "charged",
  "replaced",
  "cleaned",
  "tightened",
  "adjusted",
  "reset",
  "started",
  "stopped",
  "swapped",
  "tested",
  "called",
  "waited",
  "other",
] as const;
export type ActionName = (typeof actions)[number];

export const faults = [
  "compressor_rotor_locked",
  "compressor_winding_grounded",
  "compressor_winding_shorted",
  "compressor_winding_open",
  "compressor_insulation_degraded",
  "compressor_valves_leaking",
  "drive_output_failed",
  "drive_rectifier_failed",
  "drive_control_failed",
  "supply_phase_lost",
  "supply_voltage_unbalanced",
  "supply_voltage_low",
  "supply_voltage_high",
  "flooded_start",
  "start_against_pressure",
  "connection_loose",
  "capacitor_failed",
  "contactor_failed",
  "fan_motor_failed",
  "sensor_failed",
  "communication_failed",
  "control_board_failed",
  "refrigerant_undercharge",
  "refrigerant_overcharge",
  "noncondensables",
  "liquid_line_restricted",
  "condenser_airflow_low",
  "evaporator_airflow_low",
  "expansion_valve_underfeeding",
  "expansion_valve_overfeeding",
  "reversing_valve_leaking",
  "branch_valve_stuck",
  "system_leaking",
  "system_wet",
  "compressor_overload_open",
  "compressor_reversed",
  "control_voltage_lost",
  "defrost_failed",
  "refrigerant_wrong_or_mixed",
  "other",
  "no_fault",
] as const;
export type FaultName = (typeof faults)[number];

export const checkNames = [
  "insulation",
  "polarization",
  "winding",
  "start_current",
  "running_current",
  "supply",
  "control_voltage",
  "dc_bus",
  "bridge",
  "capacitor",
  "contactor",
  "fan",
  "sensor",
  "communication",
  "superheat",
  "subcooling",
  "saturation",
  "compression",
  "discharge_temperature",
  "circuit_pattern",
  "valve",
  "airflow",
  "temperature_split",
  "gas_heat",
  "evacuation",
  "pressure_test",
  "charge",
  "line_charge",
  "leak_rate",
  "room_concentration",
  "places",
  "history",
  "commissioning",
  "box_temperature",
] as const;
export type CheckName = (typeof checkNames)[number];

/** What a company may set a limit of its own for: the figure that is judged, one name a figure. */
export const limitNames = [
  "insulation",
  "insulation_clean",
  "voltage_unbalance",
  "voltage_off_plate",
  "current_unbalance",
  "winding_unbalance",
  "capacitance_error",
  "vacuum_hold",
  "superheat",
  "subcooling",
  "compression_ratio",
  "discharge_temperature",
  "temperature_split",
  "static_pressure",
  "leak_rate",
  "box_temperature",
] as const;
export type LimitName = (typeof limitNames)[number];

/** What of a lock its owner's word says: "my lock is yours to pull". The reader writes it, the record knows it. */
export const mayComeOff = "may come off";

/** "morning all. New job: …": a greeting ahead of what is said, as the source of a regular expression for its beginning. */
export const greetingAhead = String.raw`(?:(?:good )?(?:morning|mornin|afternoon|evening|hi|hey|hello|ok|okay|all right|alright)(?: (?:all|everyone|everybody|team|guys|folks|crew|gang|people|again))?[\s,.!:-]+)?`;

/** "Marek: Tamarack Grocer, …": whose a job is stands before a site of several words. */
export const whoseJob = /^@?(\p{Lu}[\p{L}'-]+):\s*(?=\p{Lu}[\p{L}'-]+ \p{Lu})/u;

/** What the note of a message that turns to a machine is about, ahead of that machine's name. */
export const IN_HAND = "in hand ";

/** How a note says whom the desk gave the job to, behind who was sent first. */
export const SENT = "sent to ";

/** How parts are called for short, and the name that the record keeps. */
const shortParts: ReadonlyMap<string, string> = new Map([
  ["stat", "thermostat"],
  ["tstat", "thermostat"],
  ["txv", "expansion valve"],
  ["tx valve", "expansion valve"],
  ["cap", "capacitor"],
  ["comp", "compressor"],
  ["xfmr", "transformer"],
  ["ignitor", "igniter"],
  ["dryer", "drier"],
]);

/** A part's name in full: "txv" is an expansion valve, "run cap" a run capacitor. */
export function fullPartName(name: string): string {
  const [word = ""] = /[\p{L}]+$/u.exec(name) ?? [];
  const whole = shortParts.get(name);
  if (whole !== undefined) return whole;
  const full = shortParts.get(word);
  return full === undefined ? name : `${name.slice(0, name.length - word.length)}${full}`;
}

/** The short names of a part's last word: "expansion valve" is said "txv". */
export function shortPartNames(name: string): readonly string[] {
  return [...shortParts].flatMap(([short, full]) => (name.endsWith(full) ? [short] : []));
}
