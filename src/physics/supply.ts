/** Supply voltage ranges. */

export interface VoltRange {
  readonly from: number;
  readonly to: number;
}

interface SystemRow {
  readonly A_service: VoltRange;
  readonly A_utilization: VoltRange;
  readonly B_service: VoltRange;
  readonly B_utilization: VoltRange;
}

const range = (from: number, to: number): VoltRange => ({ from, to });

/** V, 60 Hz systems. Source: ANSI C84.1, table 1 (from memory). */
export const systemRanges: Readonly<Record<string, SystemRow>> = {
  "120": {
    A_service: range(114, 126),
    A_utilization: range(108, 126),
    B_service: range(110, 127),
    B_utilization: range(104, 127),
  },
  "208": {
    A_service: range(197, 218),
    A_utilization: range(187, 218),
    B_service: range(191, 220),
    B_utilization: range(180, 220),
  },
  "240": {
    A_service: range(228, 252),
    A_utilization: range(216, 252),
    B_service: range(220, 254),
    B_utilization: range(208, 254),
  },
  "480": {
    A_service: range(456, 504),
    A_utilization: range(432, 504),
    B_service: range(440, 508),
    B_utilization: range(416, 508),
  },
  "600": {
    A_service: range(570, 630),
    A_utilization: range(540, 630),
    B_service: range(550, 635),
    B_utilization: range(520, 635),
  },
};

/** Share about the nameplate within which a motor runs. Source: NEMA MG 1, 12.44. */
export const nameplateShare = 0.1;

/** V about a nameplate of one voltage or two (the lower first). Source: NEMA MG 1, 12.44. */
export function nameplateRange(lowV: number, highV: number = lowV): VoltRange | undefined {
  if (!(lowV > 0) || highV < lowV) return;
  // 1.1 times 460 is a little more than 506 to a computer, and 507 V was let pass
  return { from: lowV - nameplateShare * lowV, to: highV + nameplateShare * highV };
}

export function isWithin(value: number, within: VoltRange): boolean {
  return value >= within.from && value <= within.to;
}
