import type { Comparison } from './comparison.ts';
import { coverGainComparisons } from './cover-gains.ts';
import { coverMaterialComparisons } from './cover-materials.ts';
import { dailyCourseComparison } from './daily-course.ts';
import { dayRiseComparison } from './day-rise.ts';
import { forecastErrorComparisons } from './forecast-error.ts';
import { hardinessComparisons } from './hardiness.ts';
import { humidityComparisons } from './humidity.ts';
import { limitComparisons } from './limits.ts';
import { radiationComparisons } from './radiation.ts';
import { seasonComparisons } from './season.ts';
import { secondOpinionComparisons } from './second-opinion.ts';
import { sunComparisons } from './sun.ts';
import { tenHourComparison } from './ten-hour-days.ts';
import { tradeFactComparisons } from './trade-facts.ts';
import { trialComparisons } from './trials.ts';
import { FROST_BELOW_C, winterGainComparison } from './winter-gains.ts';
import { winterNights } from './winters.ts';
import { workedComparisons } from './worked.ts';

/** Everything that is held against a source outside the project, in the order of the table. */
export function comparisons(): readonly Comparison[] {
  return [
    ...coverGainComparisons(),
    ...trialComparisons(),
    winterGainComparison(winterNights(['high-tunnel'], FROST_BELOW_C)),
    ...limitComparisons(),
    dayRiseComparison(),
    ...secondOpinionComparisons(),
    ...coverMaterialComparisons(),
    ...hardinessComparisons(),
    ...tradeFactComparisons(winterNights(['cold-frame'])),
    ...seasonComparisons(),
    ...forecastErrorComparisons(),
    dailyCourseComparison(),
    tenHourComparison(),
    ...sunComparisons(),
    ...radiationComparisons(),
    ...humidityComparisons(),
    ...workedComparisons(),
  ];
}
