/**
 * Value of a Chebyshev series.
 *
 * @param coefficients of T0, T1, T2 ...
 * @param u -1 to 1
 * Error: rounding only. Source: C. W. Clenshaw 1955, backward recurrence.
 * Why: stable at any degree, and no power of u is ever formed.
 */
export function chebyshev(coefficients: readonly number[], u: number): number {
  let next = 0;
  let afterNext = 0;
  for (let k = coefficients.length - 1; k > 0; k--) {
    const here = 2 * u * next - afterNext + (coefficients[k] ?? 0);
    afterNext = next;
    next = here;
  }
  return u * next - afterNext + (coefficients[0] ?? 0);
}

/** Slope of the same series by u; the derivative's series is summed with T'k = k U(k-1). */
export function chebyshevSlope(coefficients: readonly number[], u: number): number {
  let next = 0;
  let afterNext = 0;
  for (let k = coefficients.length - 1; k > 0; k--) {
    const here = 2 * u * next - afterNext + k * (coefficients[k] ?? 0);
    afterNext = next;
    next = here;
  }
  return next;
}
