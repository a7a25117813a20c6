import type { RegistryKind } from "../registry.ts";
import {
  type Column,
  lengthFactors,
  list,
  massFactors,
  measured,
  number,
  oneOf,
  positive,
  text,
  volumeFactors,
} from "./column.ts";

/** One kind of office file: told by its headings, read by its columns. */
export interface FileKind {
  readonly kind: RegistryKind;
  readonly plural: string;
  /** headings that only this kind has, all of them */
  readonly marks: readonly RegExp[];
  readonly columns: readonly Column[];
  /** the fields that make a row one of its kind */
  readonly key: readonly string[];
}

const metering = oneOf([
  [/expansion|electronic|txv|tev|eev|exv|valve/, "expansion_valve"],
  [/orifice|piston|cap(illary)?|fixed|accurator/, "fixed_orifice"],
]);
const drive = oneOf([
  [/inverter|vfd|variable/, "inverter"],
  [/line|across|fixed|contactor|none|dol/, "line"],
]);

const equipment: FileKind = {
  kind: "equipment",
  plural: "equipment",
  marks: [/^(tag|unit|equipment)( tag| no\.?| id)?$/],
  key: ["site", "tag"],
  columns: [
    {
      field: "tag",
      heading: /^(tag|unit|equipment)( tag| no\.?| id)?$/,
      read: text,
      required: true,
    },
    { field: "site", heading: /^(site|building|customer)( name)?$/, read: text },
    { field: "kind", heading: /^(what it is|kind|type|description|what)$/, read: text },
    { field: "parent", heading: /^(fed from|parent|fed by|part of|connected to)$/, read: text },
    {
      field: "places",
      heading: /^(rooms?( served)?|places?|serves|areas?( served)?)$/,
      read: list,
    },
    { field: "supply_V", heading: /^(supply )?volt(s|age)?( v)?$/, read: positive(number) },
    { field: "phases", heading: /^phases?$/, read: positive(number) },
    { field: "rla_A", heading: /^rla( a| amps)?$/, read: positive(number) },
    { field: "lra_A", heading: /^lra( a| amps)?$/, read: positive(number) },
    { field: "moc_A", heading: /^moc( a| amps)?$/, read: positive(number) },
    { field: "refrigerant", heading: /^(refrigerant|gas)$/, read: text },
    {
      field: "charge_kg",
      heading: /^((factory|nameplate|full) )?charge\b/,
      read: positive(measured(massFactors, "lb")),
    },
    { field: "metering", heading: /^metering( device)?$/, read: metering },
    { field: "drive", heading: /^drive( kind| type)?$/, read: drive },
    { field: "model", heading: /^model( no\.?| number)?$/, read: text },
    { field: "serial", heading: /^serial( no\.?| number)?$/, read: text },
    { field: "installed", heading: /^(installed|install date|date installed)$/, read: text },
    {
      field: "use",
      heading: /^(use|appliance)$/,
      read: oneOf([
        [/comfort/, "comfort_cooling"],
        [/commercial|refrigeration/, "commercial_refrigeration"],
        [/industrial|process/, "industrial_process"],
      ]),
    },
    { field: "notes", heading: /^(notes?|remarks?|comments?)$/, read: text },
  ],
};

const sites: FileKind = {
  kind: "site",
  plural: "sites",
  marks: [/^(site|building)( name)?$/],
  key: ["name"],
  columns: [
    { field: "name", heading: /^(site|building|name)( name)?$/, read: text, required: true },
    { field: "street", heading: /^(street|address)$/, read: text },
    { field: "town", heading: /^(town|city|place)$/, read: text },
    { field: "contact", heading: /^(customer )?contact( person)?$/, read: text },
    { field: "phone", heading: /^(phone|telephone|tel)( no\.?| number)?$/, read: text },
    {
      field: "altitude_m",
      heading: /^(elevation|altitude)\b/,
      read: measured(lengthFactors, "ft"),
    },
    {
      field: "smallest_room_m3",
      heading: /^smallest room\b/,
      read: positive(measured(volumeFactors, "ft3")),
    },
    { field: "use", heading: /^(use|kind|type)$/, read: text },
    { field: "occupancy", heading: /^occupancy$/, read: text },
    {
      field: "rules",
      heading: /^rules?$/,
      read: oneOf([
        [/ashrae|us/, "ashrae"],
        [/iso|en|eu/, "iso_en"],
      ]),
    },
    { field: "notes", heading: /^(notes?|remarks?|comments?|access)$/, read: text },
  ],
};

const codes: FileKind = {
  kind: "code",
  plural: "fault codes",
  marks: [/^(fault )?codes?$/, /^(meaning|means|description)$/],
  key: ["code", "shown_on"],
  columns: [
    { field: "code", heading: /^(fault )?codes?$/, read: text, required: true },
    { field: "shown_on", heading: /^(shown on|shown at|on|where( shown)?|equipment)$/, read: text },
    { field: "meaning", heading: /^(meaning|means|description)$/, read: text, required: true },
    { field: "first", heading: /^(look at first|first|check first|first check)$/, read: text },
  ],
};

const people: FileKind = {
  kind: "person",
  plural: "people",
  marks: [/^(person|name|technician)$/, /^(role|phone|certificate|cert|nickname)/],
  key: ["name"],
  columns: [
    { field: "name", heading: /^(person|name|technician)$/, read: text, required: true },
    { field: "role", heading: /^(role|job)$/, read: text },
    { field: "nickname", heading: /^(nickname|called|short)$/, read: text },
    { field: "phone", heading: /^(phone|telephone|tel)( no\.?| number)?$/, read: text },
    { field: "certificate", heading: /^cert(ificate)?( no\.?| number)?$/, read: text },
  ],
};

const cylinders: FileKind = {
  kind: "cylinder",
  plural: "cylinders",
  marks: [/^(cylinder|bottle)( no\.?| number| id)?$/],
  key: ["number"],
  columns: [
    {
      field: "number",
      heading: /^(cylinder|bottle)( no\.?| number| id)?$/,
      read: text,
      required: true,
    },
    { field: "gas", heading: /^(gas|refrigerant|contents?)$/, read: text },
    { field: "owner", heading: /^owner$/, read: text },
    {
      field: "net_kg",
      heading: /^(net( weight)?|contents? weight)\b/,
      read: measured(massFactors, "lb"),
    },
    {
      field: "capacity_kg",
      heading: /^(water capacity|wc|capacity)\b/,
      read: positive(measured(massFactors, "lb")),
    },
    {
      field: "tare_kg",
      heading: /^(tare( weight)?|tw)\b/,
      read: positive(measured(massFactors, "lb")),
    },
  ],
};

/** Most telling first: a file of equipment has a column for its site too. */
export const fileKinds: readonly FileKind[] = [cylinders, codes, equipment, sites, people];
