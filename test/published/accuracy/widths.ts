import { type CoverKey, leafSpread } from '../../../rules/index.ts';

/** Stacks by what their growers call them. */
const STACKS: readonly (readonly [name: string, covers: readonly CoverKey[]])[] = [
  ['none', []],
  ['row cover (0.9 oz) on hoops', ['row-cover-medium', 'hoops']],
  ['low tunnel', ['low-tunnel']],
  ['glass frame', ['cold-frame']],
  ['blanket on a glass frame', ['blanket', 'cold-frame']],
  ['row cover in a high tunnel', ['high-tunnel', 'row-cover-medium', 'hoops']],
];

const USUAL = { site: { inversionK: 3 }, cloudFraction: 0.5, windMPerS: 3 } as const;
const CLEAR_AND_CALM = { site: { inversionK: 3 }, cloudFraction: 0, windMPerS: 1 } as const;
const SOIL_SD_K = 1.5;

/** What sets the width of the range that an answer gives: standard deviations of the leaf low. [K] */
export interface RangeWidth {
  readonly covers: string;
  /** The forecast's part on a usual and on a clear calm night; that of cover, soil and sky. */
  readonly forecastK: number;
  readonly hardForecastK: number;
  readonly modelK: number;
  readonly tonightK: number;
  readonly inThreeNightsK: number;
}

export function rangeWidths(): readonly RangeWidth[] {
  return STACKS.map(([covers, keys]) => {
    const spread = (night: typeof USUAL | typeof CLEAR_AND_CALM, nightsAhead: number) =>
      leafSpread({ covers: keys, ...night, soilSdK: SOIL_SD_K, forecast: { kind: 'forecast', nightsAhead } });
    const tonight = spread(USUAL, 0);
    const part = ({ parts }: typeof tonight, wanted: string) => parts.find(({ cause }) => cause === wanted)?.sdK ?? 0;
    return {
      covers,
      forecastK: part(tonight, 'forecast'),
      hardForecastK: part(spread(CLEAR_AND_CALM, 0), 'forecast'),
      modelK: part(tonight, 'model'),
      tonightK: tonight.sdK,
      inThreeNightsK: spread(USUAL, 3).sdK,
    };
  });
}
