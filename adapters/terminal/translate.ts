import type { Message, Role } from "../../src/model.ts";

export interface Speaker {
  readonly person: string;
  readonly role: Role;
}

/** A typed line as a message. */
export function translate(
  line: { readonly text: string; readonly at: string; readonly id: string },
  speaker: Speaker,
): Message {
  return { platform: "terminal", channel: "terminal", ...line, ...speaker, files: [] };
}

/** "/as Bram dispatcher"; without a role a technician. */
export function speakerFrom(text: string): Speaker | undefined {
  const [, person, role] = /^\/as\s+(\S+)(?:\s+(\S+))?/.exec(text) ?? [];
  if (person === undefined) return undefined;
  const known = (["tech", "dispatcher", "office"] as const).find((name) => name === role);
  // one person however the name is typed: jobs are given to "ife"
  return { person: person.toLowerCase(), role: known ?? "tech" };
}
