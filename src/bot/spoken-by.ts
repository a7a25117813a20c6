import type { Message } from "../model.ts";
import type { Memory } from "./memory.ts";
import { personSaid } from "./people.ts";

const said = [
  /^\s*(?:hi,?\s+|hey,?\s+)?(?:this is|it'?s)\s+([\p{L}'-]+)(?:\s+(?:here|now|on\s+[\p{L}'-]+\s+phone))?\s*(?:[,.:;-]|$)/iu,
  /^\s*([\p{L}'-]+)\s+(?:here\s+)?on\s+[\p{L}]+(?:['’]s)?\s+phone\s*[,.:;-]/iu,
];

/**
 * A phone that is handed on: "this is Bram, lead 2 91" is Bram's message, the next one its owner's
 * again. Only names of people that are known count.
 */
export function spokenBy(memory: Memory, message: Message): Message {
  const name = said
    .map((saying) => saying.exec(message.text)?.[1])
    .find((one) => one !== undefined);
  const person = name === undefined ? undefined : personSaid(memory, name);
  return person === undefined || person === message.person ? message : { ...message, person };
}
