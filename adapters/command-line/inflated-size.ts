/** Marks of a ZIP archive's directory: PKWARE APPNOTE 4.3.12 and 4.3.16 (from memory). */
const entryMark = 0x02014b50;
const endMark = 0x06054b50;
const endLength = 22;
const entryLength = 46;

/**
 * Bytes of an archive's parts once they are inflated, as its directory tells them; undefined where the
 * directory cannot be followed.
 */
export function inflatedSize(bytes: Uint8Array): number | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === undefined) return undefined;
  let at = view.getUint32(end + 16, true);
  let sum = 0;
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    if (at + entryLength > view.byteLength || view.getUint32(at, true) !== entryMark) {
      return undefined;
    }
    sum += view.getUint32(at + 24, true);
    const more = [28, 30, 32].reduce((size, field) => size + view.getUint16(at + field, true), 0);
    at += entryLength + more;
  }
  return sum;
}

/** Where the end record stands: before a comment of at most 65,535 bytes. */
function endOf(view: DataView): number | undefined {
  const last = view.byteLength - endLength;
  for (let at = last; at >= Math.max(0, last - 0xffff); at--) {
    if (view.getUint32(at, true) === endMark) return at;
  }
  return undefined;
}
