import type { Message } from "../../src/model.ts";
import type { Door } from "../chat-platform.ts";

type Sent = Pick<Message, "id" | "channel" | "thread" | "person">;

/** A file that will not be kept: its sender hears it where it was sent, or would take it for filed; the operator hears why. */
export function lostFile(
  door: Pick<Door, "tell" | "sayThere">,
  sent: Sent,
  { name, why }: { readonly name: string; readonly why: string },
): void {
  const { id, channel, person } = sent;
  door.sayThere(
    `file:${id}:${name}`,
    sent,
    `The file ${name} did not reach me and is not kept: please send it again. What you wrote is kept.`,
  );
  door.tell(
    `file:${id}:${name}`,
    `The file ${name} of ${person} in ${channel} could not be kept: ${why}.`,
  );
}
