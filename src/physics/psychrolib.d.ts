/** The functions of the npm package `psychrolib` that we use; its units are those set by SetUnitSystem. */
declare module "psychrolib" {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** Cel, Cel, Pa -> kg/kg */
    GetHumRatioFromTWetBulb(dryBulbCel: number, wetBulbCel: number, pressurePa: number): number;
    /** Cel, 0 to 1, Pa -> kg/kg */
    GetHumRatioFromRelHum(dryBulbCel: number, relative: number, pressurePa: number): number;
    /** Cel, 0 to 1, Pa -> Cel */
    GetTWetBulbFromRelHum(dryBulbCel: number, relative: number, pressurePa: number): number;
    /** Cel, kg/kg, Pa -> 0 to 1 */
    GetRelHumFromHumRatio(dryBulbCel: number, humidityRatio: number, pressurePa: number): number;
    /** Cel, kg/kg, Pa -> Cel */
    GetTDewPointFromHumRatio(dryBulbCel: number, humidityRatio: number, pressurePa: number): number;
    /** Cel, kg/kg -> J/kg dry air */
    GetMoistAirEnthalpy(dryBulbCel: number, humidityRatio: number): number;
    /** Cel -> Pa, over ice below the triple point */
    GetSatVapPres(dryBulbCel: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
