import type { Scene } from "./scene.ts";

/** Letters before "closed contactor" that name it as a place. */
const ahead = 14;

/**
 * "9 V across the closed contactor": where the volts were read. That it is in is no word for its
 * contacts, which are what the volts are about.
 */
export function isAcrossContacts(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "contactor_pulls_in") return false;
  const text = scene.notes.find(({ statements }) => statements.includes(one))?.text ?? "";
  const [from] = one.spans[0] ?? [0];
  return /\b(?:across|over|through)(?: the| a| each)? *$/i.test(
    text.slice(Math.max(0, from - ahead), from),
  );
}
