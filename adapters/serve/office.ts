import { z } from "zod";
import { exportRecord } from "../../src/bot/export-record.ts";
import { keptFile } from "../../src/bot/kept-file.ts";
import { relearn } from "../../src/bot/memory.ts";
import type { Bot } from "../../src/bot.ts";
import type { Message } from "../../src/model.ts";
import { decodeText } from "../../src/record/import/decode.ts";
import { importRows } from "../../src/record/import/import-rows.ts";
import { type InboxRow, markMessage, messagesIn } from "../../src/record/inbox.ts";
import { type Attached, type OutboxRow, putOut } from "../../src/record/outbox.ts";
import { transact } from "../../src/record/store.ts";
import { fileKey, getWords } from "../../src/record/words-table.ts";
import { exportFiles } from "../../src/show/exports/export-files.ts";
import type { ExportRecord } from "../../src/show/exports/export-record.ts";
import { zoneOf } from "../../src/show/local-time.ts";
import { rowsOf } from "../command-line/csv-rows.ts";
import { type OfficeOrder, officeOrder } from "./office-order.ts";

/** Does what the office asked for, in one step with its answer; other messages are left alone. */
export function officeWork(bot: Bot): number {
  const orders = messagesIn(bot.store, "new").flatMap((row) => {
    const zone = bot.memory.settings.time_zone ?? zoneOf(row.message.at);
    const order = officeOrder(row.message, zone);
    return order === undefined ? [] : [{ row, order }];
  });
  for (const { row, order } of orders) {
    transact(bot.store, () => carryOut(bot, row, order));
    if (order.kind === "import") relearn(bot.memory, bot.store);
  }
  return orders.length;
}

function carryOut(bot: Bot, { message }: InboxRow, order: OfficeOrder): void {
  const { platform, id, channel, thread } = message;
  putOut(bot.store, {
    id: `reply:${platform}:${id}:0`,
    platform,
    channel,
    ...(thread === undefined ? {} : { thread }),
    kind: "reply",
    answers: id,
    text: answerTo(bot, message, order),
    files: [],
    ...(order.kind === "export" ? { detail: JSON.stringify({ export: order.day }) } : {}),
  });
  markMessage(bot.store, message, { state: "done" });
}

function answerTo(bot: Bot, message: Message, order: OfficeOrder): string {
  switch (order.kind) {
    case "refused":
      return "Exports and imports are the office's; ask there.";
    case "export":
      return `The files of ${order.day}:`;
    case "import":
      return message.files.map((file) => imported(bot, file)).join("\n");
  }
}

function imported(bot: Bot, file: Message["files"][number]): string {
  const bytes = getWords(bot.store, fileKey(file.sha256))?.bytes;
  if (bytes === undefined) return `${file.name}: its bytes did not arrive; send it again.`;
  const rows = rowsOf(decodeText(bytes).text);
  const result = typeof rows === "string" ? rows : importRows(bot.store, rows);
  if (typeof result === "string") return `${file.name}: ${result}`;
  const { plural, counts, bad } = result;
  const head = `${plural}: ${counts.added} added, ${counts.changed} changed, ${counts.same} as before, ${bad.length} refused.`;
  return [head, ...bad.map(({ line, reason }) => `Line ${line}: ${reason}`)].join("\n");
}

const detailSchema = z.object({ export: z.string().optional() });

/** What a row says with its files. */
export type Saying = Pick<OutboxRow, "text" | "files">;

/**
 * A row with the files that it promises, made when it is sent and kept under their hashes until
 * then. The digest of the record goes out with them: kept in the channel, where nobody can rewrite
 * it, it proves later that these files and the store are what they were.
 */
export async function attachedTo(bot: Bot, row: OutboxRow): Promise<Saying> {
  const { export: day } = detailSchema.parse(JSON.parse(row.detail ?? "{}"));
  if (day === undefined) return row;
  const record = exportRecord(bot, { kind: "day", day });
  const files: Attached[] = [];
  for await (const file of exportFiles(record)) files.push(keptFile(bot, file));
  return { text: exported(day, record), files };
}

function exported(day: string, { jobs, about, changes = [] }: ExportRecord): string {
  const what =
    jobs.length === 0
      ? `Nothing was recorded on ${day}: the files hold only their headings.`
      : `The files of ${day}, ${jobs.length} ${jobs.length === 1 ? "job" : "jobs"}, revision ${about.revision}.`;
  const since =
    about.since === undefined
      ? []
      : [`${changes.length} changed since revision ${about.since}: see the sheet of changes.`];
  return [what, ...since, `Digest of the record: ${about.digest}`].join("\n");
}
