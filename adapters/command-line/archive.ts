import { inflateRawSync } from "node:zlib";

/** Marks and lengths of a ZIP archive's records: PKWARE APPNOTE 4.3.7, 4.3.12, 4.3.16 (from memory). */
const entryMark = 0x02014b50;
const endMark = 0x06054b50;
const endLength = 22;
const entryLength = 46;
const headLength = 30;

export interface ArchivePart {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * An archive's parts whose name ends so, inflated; "too large" where all its parts together are, or turn
 * out to be, more than `most` bytes; "broken" where the archive cannot be followed.
 */
export function partsOf(
  bytes: Uint8Array,
  named: RegExp,
  most: number,
): readonly ArchivePart[] | "broken" | "too large" {
  const archive = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries = entriesOf(archive);
  if (entries === undefined) return "broken";
  if (entries.reduce((sum, { toldSize }) => sum + toldSize, 0) > most) return "too large";
  const parts: ArchivePart[] = [];
  let left = most;
  for (const entry of entries.filter(({ name }) => named.test(name))) {
    // what an archive tells of its sizes may be a lie
    const part = inflated(archive, entry, left);
    if (typeof part === "string") return part;
    left -= part.length;
    parts.push({ name: entry.name, bytes: part });
  }
  return parts;
}

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly packedSize: number;
  readonly toldSize: number;
  /** where its head stands */
  readonly at: number;
}

function entriesOf(archive: Buffer): readonly Entry[] | undefined {
  const end = endOf(archive);
  if (end === undefined) return undefined;
  const entries: Entry[] = [];
  let at = archive.readUInt32LE(end + 16);
  for (let left = archive.readUInt16LE(end + 10); left > 0; left--) {
    if (at + entryLength > archive.length || archive.readUInt32LE(at) !== entryMark) {
      return undefined;
    }
    const nameLength = archive.readUInt16LE(at + 28);
    const from = at + entryLength;
    entries.push({
      name: archive.toString("utf8", from, from + nameLength),
      method: archive.readUInt16LE(at + 10),
      packedSize: archive.readUInt32LE(at + 20),
      toldSize: archive.readUInt32LE(at + 24),
      at: archive.readUInt32LE(at + 42),
    });
    at = from + nameLength + archive.readUInt16LE(at + 30) + archive.readUInt16LE(at + 32);
  }
  return entries;
}

/** Where the end record stands: before a comment of at most 65,535 bytes. */
function endOf(archive: Buffer): number | undefined {
  const last = archive.length - endLength;
  for (let at = last; at >= Math.max(0, last - 0xffff); at--) {
    if (archive.readUInt32LE(at) === endMark) return at;
  }
  return undefined;
}

function inflated(archive: Buffer, entry: Entry, most: number): Buffer | "broken" | "too large" {
  if (entry.at + headLength > archive.length) return "broken";
  const more = archive.readUInt16LE(entry.at + 26) + archive.readUInt16LE(entry.at + 28);
  const from = entry.at + headLength + more;
  const packed = archive.subarray(from, from + entry.packedSize);
  if (entry.method === 0) return packed.length > most ? "too large" : packed;
  if (entry.method !== 8) return "broken";
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, most) });
  } catch (error) {
    return error instanceof RangeError ? "too large" : "broken";
  }
}

/** An archive of just these parts, as they are: nothing is hidden between them. Its checksums are left out. */
export function plainArchive(parts: readonly ArchivePart[]): Buffer {
  const heads: Buffer[] = [];
  const entries: Buffer[] = [];
  let at = 0;
  for (const { name, bytes } of parts) {
    const spelled = Buffer.from(name);
    const sizes = Buffer.alloc(12);
    sizes.writeUInt32LE(bytes.length, 0);
    sizes.writeUInt32LE(bytes.length, 4);
    sizes.writeUInt16LE(spelled.length, 8);
    // version 2.0; no flags, not packed, no time, no checksum
    const common = Buffer.concat([Buffer.from([20, 0]), Buffer.alloc(12), sizes]);
    const place = Buffer.alloc(14);
    place.writeUInt32LE(at, 10);
    entries.push(Buffer.concat([Buffer.from("PK\x01\x02\x14\x00"), common, place, spelled]));
    heads.push(Buffer.from("PK\x03\x04"), common, spelled, Buffer.from(bytes));
    at += headLength + spelled.length + bytes.length;
  }
  const directory = Buffer.concat(entries);
  const end = Buffer.alloc(endLength);
  end.writeUInt32LE(endMark, 0);
  end.writeUInt16LE(parts.length, 8);
  end.writeUInt16LE(parts.length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...heads, directory, end]);
}
