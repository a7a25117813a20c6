import { gasConstant, zeroCelInK } from "./constants.ts";

/** Cel and Pa absolute, where the fit of nitrogen's virial coefficients holds. */
export const nitrogenRange = { cel: [-40, 80], pa: [1, 6_000_000] } as const;

/** Polynomials in 1/T: second coefficient in m3/mol, third in m6/mol2. */
const second = [4.08677383e-5, -9.56287481e-3, -1.3614598, 42.0670253] as const;
const third = [1.3088338e-9, -1.25649838e-7, 4.96801745e-5] as const;

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

function compressibility(densityMolM3: number, kelvin: number): number {
  const b = polynomial(second, 1 / kelvin);
  const c = polynomial(third, 1 / kelvin);
  return 1 + b * densityMolM3 + c * densityMolM3 ** 2;
}

/** mol/m3; the ideal density is within 3 % and each pass divides the error by a hundred */
function densityMolM3(absolutePa: number, kelvin: number): number {
  const ideal = absolutePa / (gasConstant * kelvin);
  let density = ideal;
  for (let pass = 0; pass < 8; pass++) density = ideal / compressibility(density, kelvin);
  return density;
}

function covers(cel: number): boolean {
  return cel >= nitrogenRange.cel[0] && cel <= nitrogenRange.cel[1];
}

/**
 * Pressure of nitrogen shut in a fixed volume after its temperature has changed, in Pa absolute.
 *
 * @param startPa absolute pressure at the start, to 6 MPa
 * @param startCel temperature of the gas at the start, -40 to 80 Cel
 * @param endCel temperature of the gas at the end, -40 to 80 Cel
 * Error: 0.004 % of the pressure (200 Pa at 5 MPa) against the reference equation; a probe 1 K off
 * makes 0.35 %. Source: own fit of virial coefficients to values computed with CoolProp 8.0.0
 * (Span et al. 2000, equation of state of nitrogen).
 * Why: the ideal gas law alone is 3 psi wrong at 550 psig over 30 F, more than a slow leak.
 */
export function nitrogenPaAtConstantVolume(
  startPa: number,
  startCel: number,
  endCel: number,
): number | undefined {
  if (!covers(startCel) || !covers(endCel)) return undefined;
  if (!(startPa >= nitrogenRange.pa[0] && startPa <= nitrogenRange.pa[1])) return undefined;
  const density = densityMolM3(startPa, startCel + zeroCelInK);
  const kelvin = endCel + zeroCelInK;
  return density * gasConstant * kelvin * compressibility(density, kelvin);
}
