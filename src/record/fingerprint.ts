import { createHash } from "node:crypto";

/** SHA-256 of a text or of bytes, in hex. */
export function fingerprint(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}

/** The same of a text that comes in pieces and is never held whole. */
export function fingerprintOf(pieces: Iterable<string>): string {
  const hash = createHash("sha256");
  for (const piece of pieces) hash.update(piece);
  return hash.digest("hex");
}
