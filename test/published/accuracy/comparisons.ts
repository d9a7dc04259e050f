import type { Comparison } from './comparison.ts';
import { coverGainComparisons } from './cover-gains.ts';
import { coverMaterialComparisons } from './cover-materials.ts';
import { dailyCourseComparison } from './daily-course.ts';
import { dayRiseComparison } from './day-rise.ts';
import { forecastErrorComparisons } from './forecast-error.ts';
import { frameComparison, frameNights } from './frame-series.ts';
import { hardinessConsistency, outcomeComparisons } from './hardiness.ts';
import { humidityComparisons } from './humidity.ts';
import { limitComparisons } from './limits.ts';
import { radiationComparisons } from './radiation.ts';
import { seasonComparisons } from './season.ts';
import { secondOpinionComparisons } from './second-opinion.ts';
import { sunComparisons } from './sun.ts';
import { tenHourComparison } from './ten-hour-days.ts';
import { tradeFactComparisons } from './trade-facts.ts';
import { hardComparison, trialComparisons, trialsInOurNumbers } from './trials.ts';
import { FROST_BELOW_C, winterGainComparison } from './winter-gains.ts';
import { winterNights } from './winters.ts';
import { workedComparisons } from './worked.ts';

/** Lines that say the same kind of thing. */
export interface Part {
  readonly title: string;
  /** What the lines of the part can show and what not. */
  readonly about: string;
  readonly comparisons: readonly Comparison[];
}

/** Everything that is held against something else, the strongest evidence first. */
export function parts(): readonly Part[] {
  const frame = frameComparison(frameNights());
  return [
    {
      title: '1. Measured or seen by others',
      about: 'No number of ours was made from these rows, but for the width of the range in a frame.',
      comparisons: [
        ...trialComparisons(),
        frame.mild,
        hardComparison(frame.hard),
        winterGainComparison(winterNights(['high-tunnel'], FROST_BELOW_C)),
        ...limitComparisons(),
        dayRiseComparison(),
        ...outcomeComparisons(),
        ...forecastErrorComparisons(),
        dailyCourseComparison(),
      ],
    },
    {
      title: '2. Other programs, libraries and published computations',
      about: 'The same formulas or better ones, worked out by somebody else.',
      comparisons: [
        ...sunComparisons(),
        ...radiationComparisons(),
        ...humidityComparisons(),
        ...workedComparisons(),
        tenHourComparison(),
      ],
    },
    {
      title: '3. The solver against a second one',
      about: 'Ours too, written anew: it shows that the equations are solved, not that they are right.',
      comparisons: [...secondOpinionComparisons()],
    },
    {
      title: '4. Consistency with our own inputs',
      about: 'Our numbers were made or chosen from these rows: no evidence, only a guard against slips.',
      comparisons: [
        ...coverGainComparisons(),
        ...trialsInOurNumbers(),
        ...coverMaterialComparisons(),
        ...hardinessConsistency(),
        ...tradeFactComparisons(winterNights(['cold-frame'])),
        ...seasonComparisons(),
      ],
    },
  ];
}

/** All of them, in the order of the table. */
export function comparisons(): readonly Comparison[] {
  return parts().flatMap((part) => part.comparisons);
}
