/** Weight of superheat against subcooling. Source: Li & Braun 2009, typical 0.3 to 0.5. */
const superheatWeight = 0.4;

/**
 * What superheat and subcooling together say of the charge, in K: positive is too much.
 * (subcooling - rated subcooling) - 0.4 x (superheat - rated superheat)
 *
 * @param subcooling measured and rated, K
 * @param superheat measured and rated, K
 * Error: the weight moves it by a quarter; a restriction or weak airflow moves both terms.
 * Source: Li & Braun 2009, HVAC&R Research 15(1), virtual charge sensor; constants from memory.
 * Why: the pair falls together with the charge whatever the weather; each alone does not.
 */
export function chargeDeviationK(
  subcooling: { readonly measuredK: number; readonly ratedK: number },
  superheat: { readonly measuredK: number; readonly ratedK: number },
): number {
  return (
    subcooling.measuredK -
    subcooling.ratedK -
    superheatWeight * (superheat.measuredK - superheat.ratedK)
  );
}
