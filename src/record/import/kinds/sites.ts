import { lengthFactors, measured, oneOf, positive, text, volumeFactors } from "../column.ts";
import type { FileKind } from "../file-kind.ts";

/** Buildings with what matters about them. */
export const sites: FileKind = {
  kind: "site",
  plural: "sites",
  // "name" alone could be a person's
  tells: (headings) =>
    headings.has("name") &&
    (headings.get("name") !== "name" || headings.has("street") || headings.has("town")),
  key: ["name"],
  columns: [
    {
      field: "name",
      names: [
        "site",
        "building",
        "site name",
        "building name",
        "location",
        "property",
        "facility",
        "customer",
        "account",
        "store",
        "client",
        "job site",
        "name",
      ],
      read: text,
      required: true,
    },
    {
      field: "street",
      names: [
        "street",
        "address",
        "street address",
        "address 1",
        "address line 1",
        "job address",
        "site address",
        "service address",
      ],
      read: text,
    },
    {
      field: "town",
      names: ["town", "city", "place", "municipality", "suburb", "town city", "city town"],
      read: text,
    },
    {
      field: "contact",
      names: [
        "customer contact",
        "contact",
        "contact person",
        "site contact",
        "contact name",
        "manager",
        "site manager",
        "facility manager",
        "caretaker",
      ],
      read: text,
    },
    {
      field: "phone",
      names: ["phone", "telephone", "tel", "phone no", "contact phone", "mobile", "cell"],
      read: text,
    },
    {
      field: "altitude_m",
      names: ["elevation", "altitude", "height above sea level", "elevation above sea level"],
      read: measured(lengthFactors, "ft"),
    },
    {
      field: "smallest_room_m3",
      names: ["smallest room", "smallest room volume", "room volume"],
      read: positive(measured(volumeFactors, "ft3")),
    },
    { field: "use", names: ["use", "kind", "type", "building use", "site type"], read: text },
    { field: "occupancy", names: ["occupancy", "occupancy class"], read: text },
    {
      field: "rules",
      names: ["rules", "rule", "standard", "code of practice"],
      read: oneOf([
        [/ashrae|(?<![a-z])usa?(?![a-z])/, "ashrae"],
        [/(?<![a-z])(?:iso|en|eu|europe(?:an)?)(?![a-z])/, "iso_en"],
      ]),
    },
    {
      field: "notes",
      names: ["notes", "note", "remarks", "comments", "access", "access notes"],
      read: text,
    },
  ],
};
