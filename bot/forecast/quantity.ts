/** What the services measure, and how each unit they name becomes ours: °C, m/s, a fraction, mm of water, m of snow, W/m². */
export type Quantity = 'temperature' | 'speed' | 'fraction' | 'water' | 'snow' | 'radiation';

type ToSi = (value: number) => number;

const asIs: ToSi = (value) => value;
const times =
  (factor: number): ToSi =>
  (value) =>
    value * factor;
const fromFahrenheit: ToSi = (value) => ((value - 32) * 5) / 9;

const MPS_PER_KMH = 1 / 3.6;
const MPS_PER_MPH = 0.44704;
const MPS_PER_KNOT = 1852 / 3600;
const MM_PER_INCH = 25.4;
const M_PER_FOOT = 0.3048;

const UNITS: Readonly<Record<Quantity, ReadonlyMap<string, ToSi>>> = {
  temperature: new Map([
    ['degC', asIs],
    ['°C', asIs],
    ['celsius', asIs],
    ['C', asIs],
    ['degF', fromFahrenheit],
    ['°F', fromFahrenheit],
    ['fahrenheit', fromFahrenheit],
    ['F', fromFahrenheit],
    ['K', (value) => value - 273.15],
  ]),
  speed: new Map([
    ['m_s-1', asIs],
    ['m/s', asIs],
    ['km_h-1', times(MPS_PER_KMH)],
    ['km/h', times(MPS_PER_KMH)],
    ['mph', times(MPS_PER_MPH)],
    ['mp/h', times(MPS_PER_MPH)],
    ['kn', times(MPS_PER_KNOT)],
  ]),
  fraction: new Map([
    ['percent', times(0.01)],
    ['%', times(0.01)],
    ['1', asIs],
  ]),
  water: new Map([
    ['mm', asIs],
    ['cm', times(10)],
    ['inch', times(MM_PER_INCH)],
  ]),
  snow: new Map([
    ['m', asIs],
    ['cm', times(0.01)],
    ['mm', times(0.001)],
    ['inch', times(MM_PER_INCH / 1000)],
    ['ft', times(M_PER_FOOT)],
  ]),
  radiation: new Map([
    ['W/m²', asIs],
    ['W_m-2', asIs],
  ]),
};

/**
 * How values of a named unit become ours. A namespace before the last colon, as in `wmoUnit:degC`, is ignored.
 *
 * @returns `undefined` for a unit we do not know: its layer is refused, never guessed.
 */
export function toSi(quantity: Quantity, unit: string): ToSi | undefined {
  return UNITS[quantity].get(unit.slice(unit.lastIndexOf(':') + 1));
}
