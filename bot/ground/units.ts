/** The units a person reads. Inside the program everything is SI; only `bot/` converts, here. */
export const UNIT_SYSTEMS = ['us', 'metric'] as const;

export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

/** Regions that read their weather in °F (common practice, no source). */
const FAHRENHEIT_REGIONS = new Set(['US', 'PR', 'GU', 'VI', 'AS', 'MP', 'BS', 'BZ', 'KY', 'PW', 'FM', 'MH', 'LR']);

/** Unit system that people of a locale read; a bare `en` is taken as American, anything unknown as °C. */
export function unitSystemOf(locale: string): UnitSystem {
  const [language, ...rest] = locale.split(/[-_]/);
  const region = rest.find((part) => /^[A-Za-z]{2}$/.test(part))?.toUpperCase();
  if (region !== undefined) return FAHRENHEIT_REGIONS.has(region) ? 'us' : 'metric';
  return language?.toLowerCase() === 'en' ? 'us' : 'metric';
}

/** Does the person write "courgette" rather than "zucchini"? */
export function readsBritish(locale: string): boolean {
  return /^en[-_](GB|IE|AU|NZ|ZA|IN)\b/i.test(locale);
}

export function fahrenheitFrom(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}

export function celsiusFrom(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** A true minus sign, so that a phone never breaks the line after it. */
function signed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  const short = text.endsWith('.0') ? text.slice(0, -2) : text;
  return value < 0 && Number(text) !== 0 ? `−${short}` : short;
}

/** Number alone, as fine as the model is: whole °F, half °C. */
export function degrees(celsius: number, units: UnitSystem): string {
  return units === 'us' ? signed(Math.round(fahrenheitFrom(celsius)), 0) : signed(Math.round(celsius * 2) / 2, 1);
}

/** "21 °F" or "−6 °C". */
export function temperature(celsius: number, units: UnitSystem): string {
  return `${degrees(celsius, units)} °${units === 'us' ? 'F' : 'C'}`;
}

/** "21 °F (17 to 25)": the value and the range that holds four nights in five. */
export function temperatureWithRange(celsius: number, sdK: number, units: UnitSystem): string {
  const halfWidthK = EIGHTY_PERCENT_Z * sdK;
  const low = degrees(celsius - halfWidthK, units);
  const high = degrees(celsius + halfWidthK, units);
  return `${temperature(celsius, units)} (${low} to ${high})`;
}

/** Standard normal deviate that encloses 80 % (two-sided). */
export const EIGHTY_PERCENT_Z = 1.2816;

/** A difference: "3 °F" or "1.5 °C"; never shifted by 32. */
export function difference(kelvin: number, units: UnitSystem): string {
  const value = units === 'us' ? Math.round((kelvin * 9) / 5) : Math.round(kelvin * 2) / 2;
  return `${signed(value, units === 'us' ? 0 : 1)} °${units === 'us' ? 'F' : 'C'}`;
}

/** "5 mph" or "2 m/s". */
export function windSpeed(mPerS: number, units: UnitSystem): string {
  return units === 'us' ? `${Math.round(mPerS * 2.236_94)} mph` : `${Math.round(mPerS)} m/s`;
}

/** "4 in" or "10 cm". */
export function shortLength(metres: number, units: UnitSystem): string {
  return units === 'us' ? `${Math.round(metres / 0.0254)} in` : `${Math.round(metres * 100)} cm`;
}

/** Opening sizes as people set them: "½ in", "4 in" or "10 cm". */
export function propSize(metres: number, units: UnitSystem): string {
  if (units === 'metric') return shortLength(metres, units);
  const inches = metres / METRES_PER_INCH;
  return inches < 0.75 ? '½ in' : `${Math.round(inches)} in`;
}

const METRES_PER_INCH = 0.0254;
const POUNDS_PER_KG = 2.204_62;
const POUNDS_PER_SQ_FT = 0.204_82;

/** "45 lb" or "20 kg", rounded up to five: for what is to be laid on something. */
export function ballast(kilograms: number, units: UnitSystem): string {
  const fives = (value: number) => Math.max(5, Math.ceil(value / 5) * 5);
  return units === 'us' ? `${fives(kilograms * POUNDS_PER_KG)} lb` : `${fives(kilograms)} kg`;
}

/** "3 lb/ft²" or "15 kg/m²". */
export function load(kgPerM2: number, units: UnitSystem): string {
  if (units === 'metric') return `${Math.max(1, Math.round(kgPerM2))} kg/m²`;
  return `${signed(Math.max(0.5, Math.round(kgPerM2 * POUNDS_PER_SQ_FT * 2) / 2), 1)} lb/ft²`;
}

/** "0.3 in" or "8 mm" of rain. */
export function rainDepth(mm: number, units: UnitSystem): string {
  return units === 'us' ? `${Math.max(0.1, mm / 25.4).toFixed(1)} in` : `${Math.max(1, Math.round(mm))} mm`;
}
