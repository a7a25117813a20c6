/**
 * The chance of at least `count` events where `expected` are expected and each comes by itself.
 * `count`: whole, 0 or more. `expected`: 0 to 700; undefined outside. Result: 0 to 1.
 * Error: below 1e-12 absolute. Source: Poisson distribution (NIST/SEMATECH e-Handbook, 1.3.6.6.19).
 * Why: failures of unlike machines are rare and independent unless something in the building joins them.
 */
export function poissonTail(count: number, expected: number): number | undefined {
  if (!Number.isInteger(count) || count < 0 || !(expected >= 0) || expected > 700) return undefined;
  let term = Math.exp(-expected);
  let below = 0;
  for (let k = 0; k < count; k++) {
    below += term;
    term *= expected / (k + 1);
  }
  return Math.min(1, Math.max(0, 1 - below));
}
