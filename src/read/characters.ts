export const OTHER = 0;
export const LETTER = 1;
export const DIGIT = 2;
export const SPACE = 3;

export const ascii = new Uint8Array(128);
for (let code = 97; code <= 122; code++) ascii[code] = LETTER;
for (let code = 48; code <= 57; code++) ascii[code] = DIGIT;
ascii[32] = SPACE;

export function classOf(text: string, i: number): number {
  const code = text.charCodeAt(i);
  if (code < 128) return ascii[code] ?? OTHER;
  if (code === 0xb5 || code === 0x3c9 || code === 0x3b4) return LETTER;
  const char = text.charAt(i);
  return char.toLowerCase() !== char.toUpperCase() ? LETTER : OTHER;
}
