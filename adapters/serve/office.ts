import { z } from "zod";
import { exportRecord } from "../../src/bot/export-record.ts";
import { type ExportScope, knownScope, scopeName } from "../../src/bot/export-scope.ts";
import { keptFile } from "../../src/bot/kept-file.ts";
import { locate } from "../../src/bot/locate.ts";
import { knownToScope } from "../../src/bot/scope-jobs.ts";
import type { Bot } from "../../src/bot.ts";
import type { Message } from "../../src/model.ts";
import { findMessage, type InboxRow, markMessage, messagesIn } from "../../src/record/inbox.ts";
import { type Attached, type OutboxRow, putOut } from "../../src/record/outbox.ts";
import { sealOfBytes } from "../../src/record/sealed.ts";
import { transact } from "../../src/record/store.ts";
import { exportFiles } from "../../src/show/exports/export-files.ts";
import type { ExportRecord } from "../../src/show/exports/export-record.ts";
import { zoneOf } from "../../src/show/local-time.ts";
import type { Asked } from "./export-words.ts";
import { importedFrom } from "./office-import.ts";
import { type OfficeOrder, officeOrder } from "./office-order.ts";

/** Does what the office asked for, in one step with its answer; other messages are left alone. */
export function officeWork(bot: Bot): number {
  const orders = messagesIn(bot.store, "new").flatMap((row) => {
    const zone = bot.memory.settings.time_zone ?? zoneOf(row.message.at);
    const order = officeOrder(row.message, zone);
    return order === undefined ? [] : [{ row, order }];
  });
  for (const { row, order } of orders) transact(bot.store, () => carryOut(bot, row, order));
  return orders.length;
}

function carryOut(bot: Bot, { message }: InboxRow, order: OfficeOrder): void {
  const { platform, id, channel, thread } = message;
  const { text, makes } = answerTo(bot, message, order);
  putOut(bot.store, {
    id: `reply:${platform}:${id}:0`,
    platform,
    channel,
    ...(thread === undefined ? {} : { thread }),
    kind: "reply",
    answers: id,
    text,
    files: [],
    ...(makes === undefined ? {} : { detail: JSON.stringify(makes) }),
  });
  markMessage(bot.store, message, { state: "done" });
}

interface OfficeAnswer {
  readonly text: string;
  /** what is made when it goes out: the files of a scope, or the lists that came taken in */
  readonly makes?:
    | { readonly export: ExportScope }
    | { readonly import: { readonly dry: boolean } };
}

function answerTo(bot: Bot, message: Message, order: OfficeOrder): OfficeAnswer {
  switch (order.kind) {
    case "refused":
      return { text: "Exports and imports are the office's; ask there." };
    case "export":
      return toExport(bot, message, order.asked);
    case "import":
      return { text: "", makes: { import: { dry: order.dry } } };
  }
}

function toExport({ memory }: Bot, message: Message, asked: Asked): OfficeAnswer {
  if ("problem" in asked) return { text: asked.problem };
  const scope = asked.scope === "here" ? jobHere(memory, message) : asked.scope;
  if (scope === undefined) return { text: "Which job? Say: export job 14." };
  const known = knownScope(knownToScope(memory, scope), scope);
  return typeof known === "string"
    ? { text: known }
    : { text: `The files of ${shortName(known)}:`, makes: { export: known } };
}

/** The job of the thread, or in hand. */
function jobHere(memory: Bot["memory"], message: Message): ExportScope | undefined {
  const found = locate(memory, message);
  return found.kind === "job" ? { kind: "job", job: found.job } : undefined;
}

/** "2026-05-12", "job 14" */
const shortName = (scope: ExportScope): string => scopeName(scope).replace(/^days? /, "");

const text = z.string();
const scopeSchema = z.union([
  // orders of an earlier version name the day alone
  text.transform((day): ExportScope => ({ kind: "day", day })),
  z.object({ kind: z.literal("day"), day: text }),
  z.object({ kind: z.literal("range"), day: text, to: text }),
  z.object({ kind: z.literal("job"), job: z.number() }),
  z.object({ kind: z.literal("site"), site: text }),
  z.object({ kind: z.literal("unit"), unit: text, site: z.exactOptional(text) }),
]);
const detailSchema = z.object({
  export: scopeSchema.optional(),
  import: z.object({ dry: z.boolean() }).optional(),
});

/** What a row says with its files. */
export type Saying = Pick<OutboxRow, "text" | "files">;

/**
 * A row with what it promises, made when it is sent: a workbook takes its time to read, and the same
 * lists taken in twice change nothing. Files are kept under their hashes until then. The digest of the record goes out with them: kept in the channel, where nobody can rewrite
 * it, it proves later that these files and the store are what they were.
 */
export async function attachedTo(bot: Bot, row: OutboxRow): Promise<Saying> {
  const { export: scope, import: lists } = detailSchema.parse(JSON.parse(row.detail ?? "{}"));
  const message =
    lists === undefined ? undefined : findMessage(bot.store, row.platform, row.answers ?? "");
  if (lists !== undefined && message !== undefined)
    return importedFrom(bot, message.message, lists.dry);
  if (scope === undefined) return row;
  const record = exportRecord(bot, scope);
  const files: Attached[] = [];
  let seal = "";
  for await (const file of exportFiles(record)) {
    files.push(keptFile(bot, file));
    if (file.type === "application/json") seal = sealOfBytes(file.bytes) ?? "";
  }
  return { text: `${exported(shortName(scope), record)}\nSeal of the files: ${seal}`, files };
}

function exported(name: string, { jobs, about, changes = [] }: ExportRecord): string {
  const what =
    jobs.length === 0
      ? `Nothing was recorded on ${name}: the files hold only their headings.`
      : `The files of ${name}, ${jobs.length} ${jobs.length === 1 ? "job" : "jobs"}, revision ${about.revision}.`;
  const since =
    about.since === undefined
      ? []
      : [`${changes.length} changed since revision ${about.since}: see the sheet of changes.`];
  return [what, ...since, `Digest of the record: ${about.digest}`].join("\n");
}
