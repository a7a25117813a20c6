/** Physical constants and units that more than one formula needs. */

/** Pa. Source: definition of the standard atmosphere, ISO 2533. */
export const standardAtmospherePa = 101_325;

/** K. Source: definition of the degree Celsius. */
export const zeroCelInK = 273.15;

/** K for each degree Fahrenheit of a difference. Source: definition. */
export const kelvinPerFahrenheit = 5 / 9;

/** Pa. Source: definition, lbf/in2. */
export const pascalPerPsi = 6_894.757293168361;

/** Pa for a thousandth of a millimetre of mercury. Source: definition. */
export const pascalPerMicron = standardAtmospherePa / 760_000;

/** Pa for an inch of water at 4 Cel. Source: definition. */
export const pascalPerInchOfWater = 249.08891;

/** Pa for an inch of mercury at 0 Cel. Source: definition. */
export const pascalPerInchOfMercury = 3_386.389;

/** kg. Source: definition of the avoirdupois pound. */
export const kilogramPerPound = 0.45359237;

/** m. Source: definition. */
export const metrePerInch = 0.0254;

/** m. Source: definition. */
export const metrePerFoot = 0.3048;

/** J/(mol K). Source: SI, exact since 2019. */
export const gasConstant = 8.314462618;

/** Cel from degrees Fahrenheit, for thresholds that their source prints in Fahrenheit. */
export function celFromFahrenheit(fahrenheit: number): number {
  return (fahrenheit - 32) * kelvinPerFahrenheit;
}

/** Degrees Fahrenheit from Cel, for formulas that their source gives in Fahrenheit. */
export function fahrenheitFromCel(cel: number): number {
  return cel / kelvinPerFahrenheit + 32;
}
