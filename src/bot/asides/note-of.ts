import type { Message, Statement } from "../../model.ts";
import type { Draft } from "../../record/entries-table.ts";
import { draftFor, noteFacts, nothingRead } from "../filing.ts";
import type { Memory } from "../memory.ts";

/** An entry that holds one remark over the whole message: `about` says what it is. */
export function noteOf(
  memory: Memory,
  message: Message,
  note: { readonly job: number; readonly about: string },
): Draft {
  const said: Statement = {
    kind: "note",
    about: note.about,
    said: message.text,
    spans: [[0, message.text.length]],
    rule: "<aside>",
  };
  const understood = { ...nothingRead, statements: [said] };
  return draftFor(message, note.job, noteFacts(memory, message, { understood, job: note.job }));
}
