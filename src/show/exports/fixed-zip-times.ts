const centralHeader = 0x02014b50;
const endOfDirectory = 0x06054b50;
/** 1 January 1980, 00:00: the first moment that a zip file can name. */
const firstDosDate = 0x0021;

/**
 * The same zip file with every entry dated at the first moment the format knows, so that two
 * exports of one record are the same bytes. A file without a directory comes back unchanged.
 */
export function fixedZipTimes(zip: Uint8Array): Uint8Array {
  const bytes = Uint8Array.from(zip);
  const view = new DataView(bytes.buffer);
  const end = directoryEnd(view);
  if (end === undefined) return bytes;
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
    if (view.getUint32(at, true) !== centralHeader) return bytes;
    setTime(view, at + 12);
    setTime(view, view.getUint32(at + 42, true) + 10);
    at +=
      46 +
      view.getUint16(at + 28, true) +
      view.getUint16(at + 30, true) +
      view.getUint16(at + 32, true);
  }
  return bytes;
}

function setTime(view: DataView, at: number): void {
  view.setUint16(at, 0, true);
  view.setUint16(at + 2, firstDosDate, true);
}

function directoryEnd(view: DataView): number | undefined {
  for (let at = view.byteLength - 22; at >= 0; at -= 1) {
    if (view.getUint32(at, true) === endOfDirectory) return at;
  }
  return undefined;
}
