import { deflateRawSync, inflateRawSync } from "node:zlib";

/** One part of a ZIP archive; `told`: the inflated size that its directory tells, where that is a lie. */
export interface ZipPart {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly told?: number;
}

/** A ZIP archive (PKWARE APPNOTE 4.3), every part deflated. Its checksums are left out. */
export function zipped(parts: readonly ZipPart[]): Buffer {
  const files: Buffer[] = [];
  const entries: Buffer[] = [];
  let at = 0;
  for (const { name, bytes, told } of parts) {
    const spelled = Buffer.from(name);
    const packed = deflateRawSync(bytes);
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt16LE(8, 4);
    common.writeUInt32LE(packed.length, 14);
    common.writeUInt32LE(told ?? bytes.length, 18);
    common.writeUInt16LE(spelled.length, 22);
    const file = Buffer.concat([Buffer.from("PK\x03\x04"), common, spelled, packed]);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE(at, 10);
    entries.push(Buffer.concat([Buffer.from("PK\x01\x02\x14\x00"), common, rest, spelled]));
    files.push(file);
    at += file.length;
  }
  const directory = Buffer.concat(entries);
  const end = Buffer.alloc(22);
  end.write("PK\x05\x06", "latin1");
  end.writeUInt16LE(parts.length, 8);
  end.writeUInt16LE(parts.length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...files, directory, end]);
}

/** The parts of a whole archive without a comment. */
export function unzipped(archive: Buffer): readonly ZipPart[] {
  const end = archive.length - 22;
  const parts: ZipPart[] = [];
  let at = archive.readUInt32LE(end + 16);
  for (let left = archive.readUInt16LE(end + 10); left > 0; left--) {
    const [length, extra, comment] = [28, 30, 32].map((field) => archive.readUInt16LE(at + field));
    const name = archive.toString("utf8", at + 46, at + 46 + (length ?? 0));
    const file = archive.readUInt32LE(at + 42);
    const from = file + 30 + archive.readUInt16LE(file + 26) + archive.readUInt16LE(file + 28);
    const packed = archive.subarray(from, from + archive.readUInt32LE(at + 20));
    const stored = archive.readUInt16LE(at + 10) === 0;
    parts.push({ name, bytes: stored ? packed : inflateRawSync(packed) });
    at += 46 + (length ?? 0) + (extra ?? 0) + (comment ?? 0);
  }
  return parts;
}
