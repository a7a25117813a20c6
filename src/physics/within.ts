/** Units of the range; a figure that went from Fahrenheit to Cel and back still meets an end. */
const roundingAllowed = 0.01;

/** Whether a value lies in a range, its ends included whatever rounding a conversion left. */
export function within(value: number, range: readonly [number, number]): boolean {
  return value >= range[0] - roundingAllowed && value <= range[1] + roundingAllowed;
}
