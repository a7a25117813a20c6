import type { Message } from "../../src/model.ts";
import type { Door } from "../chat-platform.ts";

/**
 * A thumbs-up on the newest answer to oneself, or on one that still asks, is a "yes" to that answer
 * and to nothing else; a cross on any answer to oneself takes back what it answers. Other people's
 * reactions, and reactions to anything else, say nothing.
 * Gives what a message from that person would hold, or why it means nothing.
 */
export function reactionMeans(
  door: Pick<Door, "posted" | "kept" | "isLatest" | "stillAsks">,
  reaction: { readonly target: string; readonly says: "yes" | "no" },
  person: string,
): Partial<Pick<Message, "answers" | "deletes" | "text" | "thread">> | string {
  const row = door.posted(reaction.target);
  if (row?.answers === undefined || row.kind !== "reply") {
    return "a reaction to something that is no answer";
  }
  const answered = door.kept(row.answers)?.message;
  if (answered?.person !== person) return "a reaction to an answer to somebody else";
  const thread = row.thread === undefined ? {} : { thread: row.thread };
  const about = answered.edits ?? answered.id;
  if (reaction.says === "no") return { deletes: about, ...thread };
  return door.isLatest(row) || door.stillAsks(about)
    ? { text: "yes", answers: about, ...thread }
    : "a thumbs-up on an older answer";
}
