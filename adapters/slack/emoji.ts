/** Signs that a crew uses in notes, and every name that holds a digit: a digit must not be read as a value. */
const signs: Readonly<Record<string, string>> = {
  "+1": "👍",
  thumbsup: "👍",
  "-1": "👎",
  thumbsdown: "👎",
  white_check_mark: "✅",
  heavy_check_mark: "✔",
  x: "❌",
  heavy_multiplication_x: "✖",
  ok_hand: "👌",
  warning: "⚠",
  zap: "⚡",
  fire: "🔥",
  snowflake: "❄",
  thermometer: "🌡",
  wrench: "🔧",
  hammer_and_wrench: "🛠",
  lock: "🔒",
  unlock: "🔓",
  pray: "🙏",
  coffee: "☕",
  "100": "💯",
  "1234": "🔢",
  "8ball": "🎱",
  "1st_place_medal": "🥇",
  "2nd_place_medal": "🥈",
  "3rd_place_medal": "🥉",
};

/** The sign of an emoji's name; undefined leaves the name as it stands. */
export function emojiSign(name: string): string | undefined {
  const sign = Object.hasOwn(signs, name) ? signs[name] : undefined;
  if (sign !== undefined) return sign;
  if (/^skin-tone-[2-6]$/.test(name)) return "";
  const [, hour, half] = /^clock(1[0-2]|[1-9])(30)?$/.exec(name) ?? [];
  // the clock faces stand in a row from one o'clock, the half hours after them
  if (hour === undefined) return undefined;
  return String.fromCodePoint((half === undefined ? 0x1f550 : 0x1f55c) + Number(hour) - 1);
}

/** What a reaction says: its name may carry a skin tone, and some signs have two names. */
export function reactionSays(name: string): "yes" | "no" | undefined {
  const [plain = ""] = name.split("::");
  if (plain === "+1" || plain === "thumbsup") return "yes";
  return plain === "x" || plain === "heavy_multiplication_x" ? "no" : undefined;
}
