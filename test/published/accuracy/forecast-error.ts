import { forecastLowSdK } from '../../../rules/index.ts';
import { normalFraction } from '../../../rules/verdict/normal-fraction.ts';
import type { ComparedRow, Comparison } from './comparison.ts';

const OPEN = { site: { inversionK: 3 }, cloudFraction: 0.5, windMPerS: 3 } as const;
const HARD = { ...OPEN, site: { inversionK: 5.5 } } as const;
/** Mean absolute error of normal errors in standard deviations. */
const MEAN_ABSOLUTE = Math.sqrt(2 / Math.PI);

const usualSdK = (nightsAhead: number) => forecastLowSdK({ kind: 'forecast', nightsAhead }, OPEN);
const hardSdK = forecastLowSdK({ kind: 'forecast', nightsAhead: 0 }, HARD);

/** The stated error of a forecast low against what was measured and published of forecasts. */
export function forecastErrorComparisons(): readonly Comparison[] {
  return [
    {
      quantity: 'Nights much colder than forecast, hard site',
      unit: '% of nights',
      source: 'our comparison: coarse ensemble, Innsbruck 2000–2016',
      standing: 'read',
      tolerance: '5 of 100 nights: tails of a valley floor are heavier than normal',
      rows: (
        [
          [1, 36],
          [2, 23],
          [3, 16],
          [5, 5.5],
        ] as const
      ).map(([colderK, measured]) => ({
        id: `more than ${colderK} K colder`,
        ours: 100 * normalFraction(-colderK / hardSdK),
        theirs: measured,
        tolerance: 5,
      })),
    },
    {
      quantity: 'Mean error of a forecast low',
      unit: 'K',
      source: 'the same; Baars & Mass 2005; growth with lead',
      standing: 'memory',
      tolerance: 'the range as remembered or measured',
      rows: [
        row('first night, cities of the United States', MEAN_ABSOLUTE * usualSdK(0), [1.4, 1.8]),
        row('growth per day of lead', MEAN_ABSOLUTE * (usualSdK(3) - usualSdK(0)) * (1 / 3), [0.15, 0.25]),
        {
          ...row('Innsbruck, a valley floor', MEAN_ABSOLUTE * hardSdK, [2.2, 2.6]),
          excuse:
            'Measured as the worst that a bad site can do with a coarse model; the book lies between it and the usual, readings of the garden replace it.',
        },
      ],
    },
    {
      quantity: 'Lows within 2 K of the forecast',
      unit: '%',
      source: 'MET Norway, usual hit rate',
      standing: 'read',
      tolerance: 'the printed 70 to 80 %',
      rows: [row('usual night', 100 * (1 - 2 * normalFraction(-2 / usualSdK(0))), [70, 80])],
    },
  ];
}

function row(id: string, ours: number, theirs: readonly [number, number]): ComparedRow {
  return { id, ours, theirs, tolerance: 0 };
}
