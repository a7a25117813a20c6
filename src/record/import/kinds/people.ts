import { list, text } from "../column.ts";
import type { FileKind, RowFacts } from "../file-kind.ts";

const own = ["role", "certificate", "nickname", "handles", "slack", "matrix", "phone"];

/** The crew: the names that they go by on each platform, roles, certificates. */
export const people: FileKind = {
  kind: "person",
  plural: "people",
  tells: (headings) =>
    (headings.has("name") || (headings.has("nickname") && headings.has("family"))) &&
    own.some((field) => headings.has(field)),
  key: ["name"],
  makes: { family: ["name"] },
  finish: named,
  columns: [
    {
      field: "name",
      names: [
        "person",
        "name",
        "technician",
        "tech",
        "employee",
        "full name",
        "worker",
        "mechanic",
      ],
      read: text,
    },
    { field: "family", names: ["last name", "family name", "surname"], read: text },
    {
      field: "role",
      names: ["role", "job", "position", "function", "job title", "title", "trade"],
      read: text,
    },
    {
      field: "nickname",
      names: [
        "nickname",
        "called",
        "short",
        "goes by",
        "known as",
        "preferred name",
        "short name",
        "first name",
        "given name",
        "forename",
      ],
      read: text,
    },
    {
      field: "phone",
      names: ["phone", "telephone", "tel", "mobile", "cell", "phone no"],
      read: text,
    },
    {
      field: "certificate",
      names: [
        "certificate",
        "cert",
        "certification",
        "certificate no",
        "cert no",
        "licence",
        "license",
        "license no",
        "licence no",
        "epa",
        "epa cert",
        "epa 608",
        "epa 608 cert",
        "608 cert",
        "section 608 cert",
        "epa license",
        "f gas cert",
        "f gas license",
        "refrigerant cert",
        "refrigerant license",
      ],
      read: text,
    },
    {
      field: "handles",
      names: [
        "chat name",
        "chat names",
        "handle",
        "handles",
        "user id",
        "user name",
        "username",
        "chat id",
        "login",
      ],
      read: list,
    },
    {
      field: "slack",
      names: [
        "slack",
        "slack id",
        "slack name",
        "slack user",
        "slack handle",
        "slack user id",
        "slack member",
      ],
      read: list,
    },
    {
      field: "matrix",
      names: [
        "matrix",
        "matrix id",
        "matrix name",
        "matrix user",
        "matrix handle",
        "matrix user id",
        "mxid",
      ],
      read: list,
    },
  ],
};

/** A first and a last name in two columns are one name; the first is what they go by. */
function named({ family, ...facts }: RowFacts): RowFacts | string {
  const parts = [facts.nickname, family].filter((part) => part !== undefined);
  const name = facts.name ?? (parts.length === 0 ? undefined : parts.join(" "));
  return name === undefined
    ? "the name is missing; fill it in or delete the line"
    : { ...facts, name };
}
