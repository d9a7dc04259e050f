import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type CoverKey, soilOf } from '../../rules/index.ts';
import { REFERENCE_LOW_C, REFERENCE_NIGHT_COVER, referenceLows } from '../rules/covers/reference-night.ts';
import table from './cover-gains.json' with { type: 'json' };

const K_PER_F = 5 / 9;
/** Ranges are printed in whole °F: half of one either way. */
const ROUNDING_K = 0.3;
/** One printed figure is a middle of nights that differ by about this much under a single cover. */
const SINGLE_FIGURE_K = 1;
const COMPILATION = new URL('../../../shared/reference/covers.csv', import.meta.url);

interface Night {
  readonly lowC?: number;
  readonly soil10CmC?: number;
  readonly deepC?: number;
  readonly windMPerS?: number;
  readonly mulch?: 'plastic';
  readonly freshSnowM?: number;
}

interface Row {
  readonly cover: string;
  readonly structure: string;
  readonly gainLowF: number | null;
  readonly gainHighF: number | null;
  readonly source: string;
  readonly covers?: CoverKey[];
  readonly measure?: 'leaf' | 'air' | 'net' | 'added';
  readonly over?: CoverKey[];
  readonly night?: Night;
  /** Why the computed gain lies outside. */
  readonly exception?: string;
  readonly notCompared?: string;
}

const ROWS = table.rows as Row[];
const COMPARED = ROWS.filter(({ notCompared }) => notCompared === undefined);
const INSIDE = COMPARED.filter(({ exception }) => exception === undefined);
const OUTSIDE = COMPARED.filter(({ exception }) => exception !== undefined);

function computedGainK({ covers = [], measure, over = [], night = {} }: Row): number {
  const { mulch, freshSnowM, ...departures } = night;
  const lows = (keys: CoverKey[]) =>
    referenceLows(keys, {
      ...departures,
      soil: soilOf('moist', mulch),
      stack: {
        nightCover: REFERENCE_NIGHT_COVER,
        ...(freshSnowM !== undefined && { snowDepthM: freshSnowM, snowIsFresh: true }),
      },
    });
  const under = lows(covers);
  if (measure === 'air') return under.airC - under.outsideC;
  if (measure === 'net') return under.leafC - (departures.lowC ?? REFERENCE_LOW_C);
  return under.leafC - lows(measure === 'added' ? over : []).leafC;
}

function printedRangeK({ gainLowF, gainHighF }: Row): readonly [number, number] {
  const lowK = (gainLowF ?? Number.NEGATIVE_INFINITY) * K_PER_F;
  const highK = (gainHighF ?? Number.POSITIVE_INFINITY) * K_PER_F;
  const slackK = gainLowF === gainHighF ? SINGLE_FIGURE_K : ROUNDING_K;
  return [lowK - slackK, highK + slackK];
}

describe('published gains under covers', () => {
  test('are all accounted for: compared, or told why not', () => {
    expect(ROWS).toHaveLength(53);
    expect(COMPARED).toHaveLength(44);
    expect(OUTSIDE).toHaveLength(12);
    for (const { exception, notCompared } of ROWS) expect(exception ?? notCompared ?? 'inside').not.toBe('');
  });

  test('are as the compilation has them', (context) => {
    if (!existsSync(COMPILATION)) context.skip('the compilation of published figures is not at hand');
    const lines = readFileSync(COMPILATION, 'utf8');
    for (const { cover, source } of ROWS) {
      expect(lines).toContain(cover);
      expect(lines.replaceAll('""', '"')).toContain(source);
    }
  });

  test.each(INSIDE)('$cover, $structure: the computed gain lies inside', (row) => {
    const [lowK, highK] = printedRangeK(row);
    const gainK = computedGainK(row);
    expect(gainK).toBeGreaterThanOrEqual(lowK);
    expect(gainK).toBeLessThanOrEqual(highK);
  });

  // An exception that no longer is one must leave the list.
  test.each(OUTSIDE)('$cover, $structure: the computed gain lies outside, for a reason', (row) => {
    const [lowK, highK] = printedRangeK(row);
    const gainK = computedGainK(row);
    expect(gainK < lowK || gainK > highK, `${gainK} in ${lowK}…${highK}`).toBe(true);
  });
});
