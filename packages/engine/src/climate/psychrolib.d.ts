/** The functions of the reference library that the tests compare with; it ships no types. */
declare module 'psychrolib' {
  const library: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temperature: number): number;
    GetTDewPointFromRelHum(temperature: number, relativeHumidity: number): number;
    GetTWetBulbFromRelHum(temperature: number, relativeHumidity: number, pressure: number): number;
    GetHumRatioFromRelHum(temperature: number, relativeHumidity: number, pressure: number): number;
    GetMoistAirEnthalpy(temperature: number, humidityRatio: number): number;
    GetMoistAirVolume(temperature: number, humidityRatio: number, pressure: number): number;
    GetMoistAirDensity(temperature: number, humidityRatio: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
  };
  export default library;
}
