import type { Message } from "../model.ts";

/** Half a surrogate pair cannot be stored and found again; a mark of the same length takes its place. */
export function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, "\uFFFD");
}

/** A message whose every word, id and name can be stored and found again. */
export function storable(message: Message): Message {
  const { thread, edits, deletes } = message;
  return {
    ...message,
    id: wellFormed(message.id),
    channel: wellFormed(message.channel),
    person: wellFormed(message.person),
    text: wellFormed(message.text),
    files: message.files.map((file) => ({
      ...file,
      name: wellFormed(file.name),
      type: wellFormed(file.type),
    })),
    ...(thread === undefined ? {} : { thread: wellFormed(thread) }),
    ...(edits === undefined ? {} : { edits: wellFormed(edits) }),
    ...(deletes === undefined ? {} : { deletes: wellFormed(deletes) }),
  };
}
