import {
  date,
  inches,
  lengthFactors,
  list,
  massFactors,
  measured,
  numberWith,
  oneOf,
  positive,
  text,
  yesOrNo,
} from "../column.ts";
import type { FileKind, RowFacts } from "../file-kind.ts";

const metering = oneOf([
  [/expansion|electronic|txv|tev|eev|exv|valve/, "expansion_valve"],
  [/orifice|piston|cap(illary)?|fixed|accurator/, "fixed_orifice"],
]);
const drive = oneOf([
  [/inverter|vfd|variable/, "inverter"],
  [/line|across|fixed|contactor|none|dol/, "line"],
]);
const use = oneOf([
  [/comfort/, "comfort_cooling"],
  [/commercial|refrigeration/, "commercial_refrigeration"],
  [/industrial|process/, "industrial_process"],
]);
const regime = oneOf([
  [/82/, "us_82"],
  [/84/, "us_84"],
  [/eu/, "eu"],
  [/ask|office|unsure/, "ask_office"],
]);
const method = oneOf([
  [/annual/, "annualizing"],
  [/roll/, "rolling"],
]);
const amps = positive(numberWith("a|amps?|amperes?"));
const volts = positive(numberWith("v|volts?|vac|v ac"));
const phases = positive(numberWith("ph|phases?|~|\u00f8"));
const feet = positive(measured(lengthFactors, "ft"));

/** Units with their plates, circuits and place in the tree. */
export const equipment: FileKind = {
  kind: "equipment",
  plural: "equipment",
  tells: (headings) => headings.has("tag"),
  key: ["site", "tag"],
  parts: { field: "circuit", join: joinCircuits },
  finish: withLines,
  makes: {
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
        "supply",
      ],
      read: volts,
    },
    { field: "phases", names: ["phase", "phases", "ph"], read: phases },
    { field: "rla_A", names: ["rla", "rated load amps", "rated load current"], read: amps },
    { field: "lra_A", names: ["lra", "locked rotor amps", "locked rotor current"], read: amps },
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
      names: ["model", "model no", "model number", "mod", "type number"],
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
    {
      field: "liquid_in",
      names: ["liquid line", "liquid line size", "liquid line od"],
      read: positive(inches),
    },
    {
      field: "suction_in",
      names: ["suction line", "suction line size", "gas line", "suction line od"],
      read: positive(inches),
    },
    {
      field: "length_m",
      names: ["line length", "line set length", "lineset length", "pipe length", "line run"],
      read: feet,
    },
    {
      field: "covered_m",
      names: [
        "line covered",
        "length covered",
        "covered by charge",
        "precharged length",
        "plate covers",
      ],
      read: feet,
    },
    {
      field: "notes",
      names: ["notes", "note", "remarks", "remark", "comments", "comment"],
      read: text,
    },
  ],
};

/** Columns of a line set become the one field that judging knows. */
function withLines(facts: RowFacts): RowFacts | string {
  const { liquid_in, suction_in, length_m, covered_m, ...rest } = facts;
  if (liquid_in === undefined && suction_in === undefined) return rest;
  if (length_m === undefined)
    return "a line's size without its length; fill in the line length too";
  const shared = { length_m, ...(covered_m === undefined ? {} : { covered_m }) };
  const lines = [
    ...(liquid_in === undefined ? [] : [{ line: "liquid", size_in: liquid_in, ...shared }]),
    ...(suction_in === undefined ? [] : [{ line: "suction", size_in: suction_in, ...shared }]),
  ];
  return { ...rest, line_set: lines };
}

/** Rows of one unit, a circuit each: the first row's plate, every circuit's gas and charge. */
function joinCircuits(rows: readonly RowFacts[]): RowFacts {
  const [first = {}] = rows;
  const { circuit: _circuit, charge_kg: _charge, ...plate } = first;
  const circuits = rows.map(({ circuit, refrigerant, charge_kg }) => ({
    circuit,
    ...(refrigerant === undefined ? {} : { refrigerant }),
    ...(charge_kg === undefined ? {} : { charge_kg }),
  }));
  // one full charge stands for each circuit only where all have the same
  const charges = new Set(circuits.map(({ charge_kg }) => charge_kg));
  const [charge] = charges;
  const same = charges.size === 1 && charge !== undefined ? { charge_kg: charge } : {};
  return { ...plate, ...same, circuits };
}
