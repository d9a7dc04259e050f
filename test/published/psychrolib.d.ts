declare module 'psychrolib' {
  /** The part of the library that the tests use; SI means °C and Pa. */
  interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulbC: number): number;
    GetTDewPointFromRelHum(dryBulbC: number, relativeHumidity: number): number;
  }
  const psychrolib: Psychrometrics;
  export = psychrolib;
}
