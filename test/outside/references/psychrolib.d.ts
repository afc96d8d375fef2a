/** The part of psychrolib that the checks use. */
declare module 'psychrolib' {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** kg of water to a kg of dry air, from °C, 0 to 1 and Pa. */
    GetHumRatioFromRelHum(temperature: number, humidity: number, pressure: number): number;
    /** kg/m³, from °C, kg/kg and Pa. */
    GetMoistAirDensity(temperature: number, humidityRatio: number, pressure: number): number;
    /** Pa, from m above sea level. */
    GetStandardAtmPressure(altitude: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
