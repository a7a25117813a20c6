/**
 * Compression ratio, a plain number.
 *
 * @param dischargePa absolute pressure on the high side
 * @param suctionPa absolute pressure on the low side, above 0
 * Error: that of the pressures. Source: definition.
 * Why: absolute only; gauge values would give 3.4 where 2.9 is true.
 */
export function compressionRatio(dischargePa: number, suctionPa: number): number | undefined {
  return suctionPa > 0 && dischargePa > 0 ? dischargePa / suctionPa : undefined;
}
