const together =
  /\b(?:w|with|me and|myself and)[/ ]\s*@?(?!(?:no|the|a|an|my|our|it|him|her|them)\b)(\p{L}[\p{L}'-]+)/iu;

/** "on site w jo": who is said to be there too. */
export function alongWith(text: string): string | undefined {
  return together.exec(text.slice(0, 80))?.[1]?.toLowerCase();
}
