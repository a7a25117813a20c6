/** Locked-rotor current: from the nameplate's code letter, and at another voltage. */

/** Least kVA per horsepower of each code letter. Source: NFPA 70, table 430.7(B). */
const codeLetters: readonly (readonly [letter: string, fromKvaPerHp: number])[] = [
  ["A", 0],
  ["B", 3.15],
  ["C", 3.55],
  ["D", 4],
  ["E", 4.5],
  ["F", 5],
  ["G", 5.6],
  ["H", 6.3],
  ["J", 7.1],
  ["K", 8],
  ["L", 9],
  ["M", 10],
  ["N", 11.2],
  ["P", 12.5],
  ["R", 14],
  ["S", 16],
  ["T", 18],
  ["U", 20],
  ["V", 22.4],
];

export interface MotorRating {
  /** 1 or 3 */
  readonly phases: number;
  readonly horsepower: number;
  /** V, line to line */
  readonly volts: number;
}

/**
 * kVA per horsepower of a letter; `to` is the printed upper end, 0.01 below the next letter, and
 * absent for V. Undefined for a letter that is not used. Source: NFPA 70, table 430.7(B).
 */
export function kvaPerHpOfLetter(letter: string): { from: number; to?: number } | undefined {
  const at = codeLetters.findIndex(([one]) => one === letter.toUpperCase());
  const row = codeLetters[at];
  if (row === undefined) return;
  const next = codeLetters[at + 1];
  return next === undefined ? { from: row[1] } : { from: row[1], to: next[1] - 0.01 };
}

/** Locked-rotor current, A, from kVA per horsepower. Source: NFPA 70, 430.7(B). */
export function lockedRotorA(kvaPerHp: number, motor: MotorRating): number | undefined {
  const { phases, horsepower, volts } = motor;
  if (!(volts > 0) || (phases !== 1 && phases !== 3)) return;
  return (1000 * kvaPerHp * horsepower) / ((phases === 3 ? Math.sqrt(3) : 1) * volts);
}

/** kVA per horsepower of a locked-rotor current, A. Source: NFPA 70, 430.7(B), turned round. */
export function kvaPerHpFromLockedRotorA(amps: number, motor: MotorRating): number | undefined {
  const { phases, horsepower, volts } = motor;
  if (!(horsepower > 0) || (phases !== 1 && phases !== 3)) return;
  return ((phases === 3 ? Math.sqrt(3) : 1) * volts * amps) / (1000 * horsepower);
}

/** Code letter of kVA per horsepower, bands contiguous; undefined below 0. Source: as the table. */
export function codeLetterFromKvaPerHp(kvaPerHp: number): string | undefined {
  return codeLetters.findLast(([, from]) => kvaPerHp >= from)?.[0];
}

/** Locked-rotor current at another voltage, A: in proportion. Source: NEMA MG 1, 14.30. */
export function lockedRotorAAtVolts(ratedA: number, ratedV: number, actualV: number) {
  return ratedV > 0 ? (ratedA * actualV) / ratedV : undefined;
}

/** Starting torque at another voltage over the rated one: by the square. Source: NEMA MG 1, 14.30. */
export function startingTorqueRatio(ratedV: number, actualV: number): number | undefined {
  return ratedV > 0 ? (actualV / ratedV) ** 2 : undefined;
}

/** Worst crest of the first half cycle, A, from the locked-rotor rms. Source: circuit theory: 2 sqrt 2. */
export function worstCrestA(lockedRotorRmsA: number): number {
  return 2 * Math.SQRT2 * lockedRotorRmsA;
}

/** Current in two lines of a motor that stands with one line dead, A. Source: symmetrical components. */
export function lockedOnTwoLinesA(lockedRotorRmsA: number): number {
  return (Math.sqrt(3) / 2) * lockedRotorRmsA;
}

/** Current in two lines of a motor that runs on with one dead, A. Source: P = V I pf against sqrt(3). */
export function runningOnTwoLinesA(beforeA: number): number {
  return Math.sqrt(3) * beforeA;
}
