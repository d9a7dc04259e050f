import fc from 'fast-check';
import { type CoverStack, type NightInput, nightRun, windowLow } from '../../../rules/index.ts';
import { BARE, hoops, laid, MOIST_LOAM, referenceInput } from '../../rules/night/spec-stacks.ts';
import { secondLeafLowC } from '../second-opinion/second-night.ts';
import type { ComparedRow, Comparison } from './comparison.ts';
import { evenly, sampled } from './sampled.ts';

const HOUR_MS = 3_600_000;
/** From dusk to dawn at 40° N on 1 December, without sun. */
const DUSK = new Date('2025-12-01T22:00Z');
const NIGHT_H = 14;
const MOST_CLOUD_TURN = 0.3;
const MOST_WIND_TURN_M_PER_S = 1.5;
const BARE_NIGHTS = 8;
const COVERED_NIGHTS = 4;
/**
 * Steps of ten minutes and ten soil layers against seconds and thirty: the specification measures up to 0.1 K between such solutions.
 * The second opinion also has one temperature for both faces of a cover.
 */
const SECOND_OPINION_K = 0.15;
/** On the verge of wetting a cover tips an hour sooner in one of them: 0.3 K in one night of a hundred. */
export const VERGE_OF_WETTING_K = 0.4;

const draws = fc.record({
  eveningC: evenly(-2, 10),
  fallK: evenly(2, 12),
  dewBelowK: evenly(0, 8),
  cloud: evenly(0, 1),
  wind: evenly(0, 6),
  /** From hour to hour, as a share of the most that sky and wind change. */
  turns: fc.array(evenly(-1, 1), { minLength: NIGHT_H + 1, maxLength: NIGHT_H + 1 }),
  isCloudy: fc.boolean(),
  soil10CmC: evenly(-1, 12),
  leafAreaIndex: evenly(0.3, 3),
  skyViewFraction: evenly(0.6, 1),
  inversionK: evenly(0, 5),
  isDry: fc.boolean(),
});

/** A night without sun under a stack. */
export function randomNight(stack: CoverStack): fc.Arbitrary<NightInput> {
  return draws.map(({ eveningC, fallK, dewBelowK, cloud, wind, turns, isCloudy, soil10CmC, isDry, ...rest }) => {
    const { leafAreaIndex, skyViewFraction, inversionK } = rest;
    const screenC = turns.map((_, hour) => eveningC - fallK * Math.sqrt(hour / NIGHT_H));
    const plain = referenceInput(stack, {
      first: DUSK,
      screenC,
      soil10CmC,
      leafAreaIndex,
      soil: isDry ? { ...MOIST_LOAM, surfaceResistanceSPerM: 2500, conductivityWPerMK: 0.35 } : MOIST_LOAM,
      site: { skyViewFraction, inversionK },
    });
    const weather = {
      ...plain.weather,
      dewPointC: screenC.map((airC) => airC - dewBelowK),
      cloudFraction: turns.map((turn) => (isCloudy ? Math.max(0, Math.min(1, cloud + MOST_CLOUD_TURN * turn)) : 0)),
      wind10MPerS: turns.map((turn) => Math.max(0, wind - MOST_WIND_TURN_M_PER_S * turn)),
    };
    return { ...plain, weather };
  });
}

/** Ours less the second opinion's. [K] */
export function leafLowOffK(input: NightInput): number {
  const from = new Date(input.start.getTime() + HOUR_MS);
  return windowLow(nightRun(input), 'leafC', from, input.end).valueC - secondLeafLowC(input);
}

const COVERED: readonly (readonly [string, CoverStack])[] = [
  ['fabric on hoops', hoops('F30')],
  ['film tunnel', hoops('PE')],
  ['glass', hoops('GL')],
  ['fabric laid on', laid('F30')],
];

export function secondOpinionComparisons(): readonly Comparison[] {
  const line = {
    unit: 'K',
    source: 'second model in a general ODE solver (odex)',
    standing: 'library',
    tolerance: '0.15 K: ten-minute steps and ten soil layers, one temperature for both faces of the cover',
  } as const;
  return [
    { ...line, quantity: 'Leaf low of a bare bed', rows: rowsUnder('bare', BARE, BARE_NIGHTS) },
    {
      ...line,
      quantity: 'Leaf low under one cover',
      rows: COVERED.flatMap(([name, stack]) => rowsUnder(name, stack, COVERED_NIGHTS)),
    },
  ];
}

function rowsUnder(name: string, stack: CoverStack, nights: number): readonly ComparedRow[] {
  return sampled(randomNight(stack), nights).map(([draw, input]) => ({
    id: `${name}, ${draw}`,
    ours: leafLowOffK(input),
    theirs: 0,
    tolerance: SECOND_OPINION_K,
  }));
}
