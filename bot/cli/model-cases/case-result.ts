import {
  firstReaches,
  frozenFraction,
  type NightInput,
  type NightRun,
  nightRun,
  OPENING_LIMIT_C,
  solarPosition,
  thawedAt,
  valueAtC,
  windowHigh,
  windowLow,
} from '../../../rules/index.ts';
import { nightInputOf } from './case-input.ts';
import type { CaseResult, ModelCase } from './case-schema.ts';

/** The first hour only settles. */
const SETTLING_MS = 3_600_000;

/** Runs a case and reads off what its format asks for. Without a window the longest dark of the run is taken. */
export function caseResult(modelCase: ModelCase): CaseResult {
  const input = nightInputOf(modelCase.input);
  const run = nightRun(input);
  const window = modelCase.expected?.nightWindow;
  const [from, to] = window === undefined ? longestDark(run, input) : window.map((text) => new Date(text));
  if (from === undefined || to === undefined) throw new RangeError('the run is shorter than two hours');
  return resultOf(run, from, to);
}

function resultOf(run: NightRun, from: Date, to: Date): CaseResult {
  const end = new Date(run.timesMs[run.timesMs.length - 1] ?? Number.NaN);
  const leaf = windowLow(run, 'leafC', from, to);
  const lowIndex = run.timesMs.findIndex((atMs) => atMs >= leaf.at.getTime());
  const thermometer = windowHigh(run, 'thermometerC', to, end);
  const middle = new Date((from.getTime() + to.getTime()) / 2);
  return {
    nightWindow: [from.toISOString(), to.toISOString()],
    outsideScreenMin: rounded(windowLow(run, 'screenC', from, to).valueC),
    outsideCropLevelMin: rounded(windowLow(run, 'cropLevelAirC', from, to).valueC),
    leafMin: rounded(leaf.valueC),
    leafMinTime: leaf.at.toISOString(),
    airMin: rounded(windowLow(run, 'airC', from, to).valueC),
    surfaceMin: rounded(windowLow(run, 'soilSurfaceC', from, to).valueC),
    leafAt: [from, middle, to].map((at) => [
      at.toISOString(),
      rounded(valueAtC(run, 'leafC', at)),
      rounded(valueAtC(run, 'airC', at)),
    ]),
    thermoMax: rounded(thermometer.valueC),
    thermoMaxTime: thermometer.at.toISOString(),
    airMax: rounded(windowHigh(run, 'airC', to, end).valueC),
    first24: firstReaches(run, 'thermometerC', OPENING_LIMIT_C, to, end)?.toISOString() ?? null,
    frozenShare: rounded(frozenFraction(leaf.valueC)),
    thawTime: thawedAt(run, lowIndex)?.toISOString() ?? null,
  };
}

function longestDark(run: NightRun, { site }: NightInput): [Date, Date] | [] {
  const settled = [...run.timesMs].filter((atMs) => atMs >= (run.timesMs[0] ?? 0) + SETTLING_MS);
  let best: number[] = [];
  let current: number[] = [];
  for (const atMs of settled) {
    const { elevationDeg } = solarPosition(new Date(atMs), site.latitudeDeg, site.longitudeDeg);
    current = elevationDeg < 0 ? [...current, atMs] : [];
    if (current.length > best.length) best = current;
  }
  const window = best.length > 1 ? best : settled;
  const [firstMs, lastMs] = [window[0], window[window.length - 1]];
  if (firstMs === undefined || lastMs === undefined || firstMs === lastMs) return [];
  return [new Date(firstMs), new Date(lastMs)];
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
