/** How a file's bytes were turned into text. */
export type Encoding = "UTF-8" | "UTF-16" | "Windows-1252";

export interface Decoded {
  readonly text: string;
  readonly encoding: Encoding;
}

/** Of the first bytes so many are looked at to tell UTF-16 without a mark by its zeros. */
const looked = 512;

/**
 * The text of an office file: by its byte order mark, else UTF-16 by its zero bytes, else UTF-8
 * where it is valid, else Windows-1252, which gives every byte a letter.
 */
export function decodeText(bytes: Uint8Array): Decoded {
  const marked = byMark(bytes);
  if (marked !== undefined) return { text: as(marked, bytes), encoding: "UTF-16" };
  const wide = byZeros(bytes);
  if (wide !== undefined) return { text: as(wide, bytes), encoding: "UTF-16" };
  try {
    return {
      text: new TextDecoder("utf-8", { fatal: true }).decode(bytes),
      encoding: "UTF-8",
    };
  } catch {
    return { text: as("windows-1252", bytes), encoding: "Windows-1252" };
  }
}

const as = (encoding: string, bytes: Uint8Array): string => new TextDecoder(encoding).decode(bytes);

function byMark([first, second]: Uint8Array): string | undefined {
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  return undefined;
}

/** Latin text in UTF-16 has a zero in every pair; other text has none at all. */
function byZeros(bytes: Uint8Array): string | undefined {
  const head = bytes.subarray(0, looked);
  const zeros = [0, 0];
  for (const [index, byte] of head.entries()) {
    if (byte === 0) zeros[index % 2] = (zeros[index % 2] ?? 0) + 1;
  }
  const [even = 0, odd = 0] = zeros;
  const enough = head.length / 4;
  if (odd > enough && even < odd / 4) return "utf-16le";
  return even > enough && odd < even / 4 ? "utf-16be" : undefined;
}
