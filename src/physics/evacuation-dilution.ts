/**
 * Share of the foreign gas that is left after several pulls with nitrogen breaks, a plain number.
 *
 * @param vacuumPa absolute pressure that each pull reached
 * @param breakPa absolute pressure that each break brought it to
 * @param pulls how many
 * Error: it takes the gas as well mixed and leaves water out, which boils on.
 * Source: dilution at constant volume (physics).
 */
export function dilutionShare(vacuumPa: number, breakPa: number, pulls: number): number {
  return (vacuumPa / breakPa) ** pulls;
}
