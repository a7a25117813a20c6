import { directPrefix } from "../vocabulary.ts";

/** Whether a channel is a person's own chat with the bot. */
export function isDirect(channel: string): boolean {
  return channel.startsWith(directPrefix);
}
