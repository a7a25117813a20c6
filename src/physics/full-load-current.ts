/** Full-load current of ordinary motors (fans, pumps), A; never of a hermetic compressor. */

type Row = readonly [hp: number, amps: readonly number[]];

const threePhaseVolts = [208, 230, 460, 575] as const;
/** Source: NFPA 70, table 430.250. */
const threePhase: readonly Row[] = [
  [0.5, [2.4, 2.2, 1.1, 0.9]],
  [0.75, [3.5, 3.2, 1.6, 1.3]],
  [1, [4.6, 4.2, 2.1, 1.7]],
  [1.5, [6.6, 6, 3, 2.4]],
  [2, [7.5, 6.8, 3.4, 2.7]],
  [3, [10.6, 9.6, 4.8, 3.9]],
  [5, [16.7, 15.2, 7.6, 6.1]],
  [7.5, [24.2, 22, 11, 9]],
  [10, [30.8, 28, 14, 11]],
  [15, [46.2, 42, 21, 17]],
  [20, [59.4, 54, 27, 22]],
  [25, [74.8, 68, 34, 27]],
  [30, [88, 80, 40, 32]],
  [40, [114, 104, 52, 41]],
  [50, [143, 130, 65, 52]],
];

const singlePhaseVolts = [115, 208, 230] as const;
/** Source: NFPA 70, table 430.248. */
const singlePhase: readonly Row[] = [
  [0.5, [9.8, 5.4, 4.9]],
  [0.75, [13.8, 7.6, 6.9]],
  [1, [16, 8.8, 8]],
  [1.5, [20, 11, 10]],
  [2, [24, 13.2, 12]],
  [3, [34, 18.7, 17]],
  [5, [56, 30.8, 28]],
  [7.5, [80, 44, 40]],
  [10, [100, 55, 50]],
];

/** Full-load current, A, for a size and voltage of the table; undefined between its rows. */
export function fullLoadA(horsepower: number, volts: number, phases: 1 | 3): number | undefined {
  const columns: readonly number[] = phases === 3 ? threePhaseVolts : singlePhaseVolts;
  const rows = phases === 3 ? threePhase : singlePhase;
  const column = columns.indexOf(volts);
  return rows.find(([hp]) => hp === horsepower)?.[1][column];
}
