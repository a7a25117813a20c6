import { emojiSign } from "./emoji.ts";

export interface Naming {
  /** what to call a user id */
  readonly user: (id: string) => string | undefined;
  readonly channel: (id: string) => string | undefined;
}

/**
 * Slack's marked-up text as the person typed it. Marks in angle brackets first, then emoji names,
 * entities last and only once, so that a typed "&lt;" stays what was typed.
 */
export function plainText(text: string, naming: Naming): string {
  return text
    .split(/(<[^<>\n]+>)/)
    .map((piece, index) => (index % 2 === 1 ? markText(piece.slice(1, -1), naming) : words(piece)))
    .join("");
}

function words(piece: string): string {
  const named = piece.replace(
    /:([a-z0-9_+'-]+):/g,
    (whole, name: string) => emojiSign(name) ?? whole,
  );
  // a technician who pastes in backquotes or bold means the text
  const unmarked = named
    .replace(/```|`/g, "")
    .replace(/(?<![\p{L}\p{N}*])([*_])(?=\S)([^*_\n]+?)(?<=\S)\1(?![\p{L}\p{N}*])/gu, "$2");
  return entities(unmarked);
}

const entities = (text: string): string =>
  text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");

function markText(mark: string, naming: Naming): string {
  const bar = mark.indexOf("|");
  const target = bar < 0 ? mark : mark.slice(0, bar);
  const label = bar < 0 ? undefined : entities(mark.slice(bar + 1));
  if (target.startsWith("@")) {
    const name = naming.user(target.slice(1)) ?? label ?? "someone";
    return `@${name.replace(/^@/, "")}`;
  }
  if (target.startsWith("#")) return `#${label ?? naming.channel(target.slice(1)) ?? "channel"}`;
  if (target.startsWith("!")) return label ?? `@${target.slice(1).split("^")[0] ?? ""}`;
  return label ?? entities(target.replace(/^(?:mailto:|tel:|https?:\/\/)/, ""));
}

/** Escapes what people or files said, so that nothing of it becomes a mention, a link or a call to all. */
export const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
