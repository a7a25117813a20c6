/** V between the legs of a supply, the least and the most; no winding, diode or amps of a leg is as much. Common practice, no source. */
export const lineVolts = { least: 90, most: 700 } as const;

export const isLineVolts = (value: number): boolean =>
  value >= lineVolts.least && value <= lineVolts.most;
