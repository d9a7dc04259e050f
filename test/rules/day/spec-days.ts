import type { CoverStack, NightInput } from '../../../rules/index.ts';
import { MOIST_LOAM, referenceInput } from '../night/spec-stacks.ts';

/**
 * Hourly air from 07 h, by the generator that the physics page states with its weather tables: sine from the minimum at 07 h to the
 * maximum at 14 h, quarter cosine to a quarter of the range below it at 16 h, then exponential to the minimum. [°C]
 */
export function dayCurveC(minC: number, maxC: number, hours: number): number[] {
  return Array.from({ length: hours }, (_, hour) => hourC(minC, maxC, 7 + (hour % 24)));
}

function hourC(minC: number, maxC: number, hour: number): number {
  const rangeK = maxC - minC;
  if (hour <= 14) return minC + rangeK * Math.sin((Math.PI / 2) * ((hour - 7) / 7));
  if (hour <= 16) return maxC - (rangeK / 4) * (1 - Math.cos((Math.PI / 2) * ((hour - 14) / 2)));
  const fall = (part: number) => Math.exp(-2.2 * part);
  return minC + ((0.75 * rangeK) / (1 - fall(1))) * (fall((hour - 16) / 15) - fall(1));
}

/** A day of section 15. Its text leaves open the soil within 3–11 °C and the start; these complete it. */
export interface SpecDay {
  readonly date: string;
  readonly minC: number;
  readonly maxC: number;
  readonly soil10CmC: number;
}

/** The run begins at 16 h of the day before on an even soil, covers shut; the day is the one after. Clear, 1.5 m/s unless said. */
export function dayInput(stack: CoverStack, day: SpecDay, windMPerS = 1.5): NightInput {
  const first = new Date(`${day.date}T12:00Z`);
  first.setUTCDate(first.getUTCDate() - 1);
  const screenC = dayCurveC(day.minC, day.maxC, 36);
  const input = referenceInput(stack, { first, screenC, windMPerS, soil10CmC: day.soil10CmC, soil: MOIST_LOAM });
  return { ...input, start: new Date(`${previousDay(first)}T21:00Z`) };
}

/** Hours that count: from 07 h local time to 18 h. */
export function dayWindow(day: SpecDay): { from: Date; to: Date } {
  return { from: new Date(`${day.date}T12:00Z`), to: new Date(`${day.date}T23:00Z`) };
}

function previousDay(first: Date): string {
  return first.toISOString().slice(0, 10);
}
