import { list, text } from "../column.ts";
import type { FileKind } from "../file-kind.ts";

const own = ["role", "certificate", "nickname", "handles", "slack", "matrix", "phone"];

/** The crew: the names that they go by on each platform, roles, certificates. */
export const people: FileKind = {
  kind: "person",
  plural: "people",
  tells: (headings) => headings.has("name") && own.some((field) => headings.has(field)),
  key: ["name"],
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
      required: true,
    },
    {
      field: "role",
      names: ["role", "job", "position", "function", "job title", "title"],
      read: text,
    },
    {
      field: "nickname",
      names: ["nickname", "called", "short", "goes by", "short name", "first name"],
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
      names: ["slack", "slack id", "slack name", "slack user", "slack handle", "slack user id"],
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
