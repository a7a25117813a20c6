import {
  date,
  list,
  massFactors,
  measured,
  numberWith,
  oneOf,
  positive,
  text,
  yesOrNo,
} from "../column.ts";
import type { FileKind } from "../file-kind.ts";
import { joinCircuits } from "./circuits.ts";
import { lineColumns, withLines } from "./line-set.ts";
import { plateSupply, withSupply } from "./plate-supply.ts";

const metering = oneOf([
  // letters that stand in other words too count as a word alone: "whatever" is no valve
  [/expansion|electronic|valve|(?<![a-z])(?:t[xe]v|e[ex]v)s?(?![a-z])/, "expansion_valve"],
  [/orifice|piston|capillar|(?<![a-z])caps?(?![a-z])|fixed|accurator/, "fixed_orifice"],
]);
const drive = oneOf([
  [/inverter|vfd|variable/, "inverter"],
  [/(?<![a-z])line|across|fixed|contactor|none|(?<![a-z])dol(?![a-z])/, "line"],
]);
const use = oneOf([
  [/comfort/, "comfort_cooling"],
  [/commercial|refrigeration/, "commercial_refrigeration"],
  [/industrial|process/, "industrial_process"],
]);
const regime = oneOf([
  [/(?<!\d)82(?!\d)/, "us_82"],
  [/(?<!\d)84(?!\d)/, "us_84"],
  [/(?<![a-z])eu(?:rope(?:an)?)?(?![a-z])/, "eu"],
  [/(?<![a-z])ask|office|unsure/, "ask_office"],
]);
const method = oneOf([
  [/annual/, "annualizing"],
  [/roll/, "rolling"],
]);
const amps = positive(numberWith("a|amps?|amperes?"));
const volts = positive(numberWith("v|volts?|vac|v ac"));
const phases = positive(numberWith("ph|phases?|~|\u00f8"));

/** Units with their plates, circuits and place in the tree. */
export const equipment: FileKind = {
  kind: "equipment",
  plural: "equipment",
  tells: (headings) => headings.has("tag"),
  key: ["site", "tag"],
  parts: { field: "circuit", join: joinCircuits },
  finish: (facts) => withLines(withSupply(facts)),
  makes: {
    supply: ["supply_V", "phases"],
    circuit: ["circuits", "charge_kg"],
    liquid_in: ["line_set"],
    suction_in: ["line_set"],
    length_m: ["line_set"],
  },
  columns: [
    {
      field: "tag",
      names: [
        "tag",
        "unit",
        "equipment",
        "unit tag",
        "equipment tag",
        "asset tag",
        "asset",
        "mark",
        "designation",
        "unit id",
      ],
      read: text,
      required: true,
    },
    {
      field: "site",
      names: [
        "site",
        "building",
        "customer",
        "location",
        "property",
        "job site",
        "facility",
        "client",
        "account",
        "store",
      ],
      read: text,
    },
    {
      field: "kind",
      names: [
        "what it is",
        "kind",
        "type",
        "description",
        "what",
        "equipment type",
        "unit type",
        "asset type",
        "machine",
        "category",
      ],
      read: text,
    },
    {
      field: "parent",
      names: [
        "fed from",
        "parent",
        "fed by",
        "part of",
        "connected to",
        "belongs to",
        "upstream",
        "parent unit",
        "parent tag",
        "served by",
        "feeds from",
      ],
      read: text,
    },
    {
      field: "places",
      names: [
        "rooms served",
        "rooms",
        "room",
        "places",
        "serves",
        "areas served",
        "area served",
        "areas",
        "area",
        "zones",
        "zone",
        "spaces",
      ],
      read: list,
    },
    { field: "circuit", names: ["circuit", "ckt", "refrigerant circuit"], read: text },
    {
      field: "supply_V",
      names: [
        "volts",
        "voltage",
        "supply voltage",
        "supply volts",
        "rated voltage",
        "nominal voltage",
        "rated volts",
        "nominal volts",
        "plate volts",
        "plate voltage",
        "nameplate volts",
        "nameplate voltage",
        "supply",
      ],
      read: volts,
    },
    {
      field: "supply",
      names: [
        "v ph hz",
        "v ph",
        "volts ph hz",
        "volt phase hz",
        "volts phase hz",
        "voltage phase hz",
        "volts phase",
        "voltage phase",
        "electrical",
        "power supply",
      ],
      read: plateSupply,
    },
    { field: "phases", names: ["phase", "phases", "ph"], read: phases },
    {
      field: "rla_A",
      names: ["rla", "rated load amps", "rated load current", "compressor rla"],
      read: amps,
    },
    {
      field: "lra_A",
      names: ["lra", "locked rotor amps", "locked rotor current", "compressor lra"],
      read: amps,
    },
    {
      field: "moc_A",
      names: ["moc", "maximum operating current", "max operating current", "max current"],
      read: amps,
    },
    {
      field: "refrigerant",
      names: ["refrigerant", "gas", "refrigerant type", "coolant", "freezing agent"],
      read: text,
    },
    {
      field: "charge_kg",
      names: [
        "factory charge",
        "charge",
        "nameplate charge",
        "full charge",
        "refrigerant charge",
        "system charge",
        "plate charge",
        "charge weight",
        "refrigerant amount",
      ],
      read: positive(measured(massFactors, "lb")),
    },
    {
      field: "metering",
      names: ["metering", "metering device", "expansion device"],
      read: metering,
    },
    {
      field: "drive",
      names: ["drive", "drive kind", "drive type", "compressor drive", "starter"],
      read: drive,
    },
    {
      field: "model",
      names: [
        "model",
        "model no",
        "model number",
        "mod",
        "type number",
        "make model",
        "make and model",
        "manufacturer model",
        "model name",
      ],
      read: text,
    },
    {
      field: "serial",
      names: ["serial", "serial no", "serial number", "s n", "sn", "ser no"],
      read: text,
    },
    {
      field: "installed",
      names: [
        "installed",
        "install date",
        "date installed",
        "installation date",
        "commissioned",
        "commissioned on",
        "installed date",
        "installed on",
        "in service since",
        "year installed",
      ],
      read: text,
    },
    { field: "use", names: ["use", "appliance", "application", "appliance use"], read: use },
    {
      field: "leak_regime",
      names: ["leak regime", "leak rule", "leak rules", "regime"],
      read: regime,
    },
    { field: "leak_method", names: ["leak method", "leak rate method", "method"], read: method },
    {
      field: "last_addition",
      names: ["last addition", "last added", "last charge added", "last top up"],
      read: date,
    },
    { field: "receiver", names: ["receiver", "liquid receiver"], read: yesOrNo },
    {
      field: "winding_class",
      names: ["winding class", "insulation class", "thermal class"],
      read: text,
    },
    ...lineColumns,
    {
      field: "notes",
      names: ["notes", "note", "remarks", "remark", "comments", "comment"],
      read: text,
    },
  ],
};
