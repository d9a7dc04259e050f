import type { ForecastNight, HourlyForecast } from './forecast.ts';
import { nightLowC } from './night-low.ts';
import { allCredits } from './past.ts';

/** Closer than this two services agree as well as either forecasts. */
const AGREE_WITHIN_K = 3;

/** The first forecast, or the second where its night is more than 3 K colder; a wide difference is noted either way. */
export function colderOf(one: HourlyForecast, other: HourlyForecast, night: ForecastNight): HourlyForecast {
  const oneC = nightLowC(one, night);
  const otherC = nightLowC(other, night);
  if (oneC === undefined || otherC === undefined || Math.abs(oneC - otherC) <= AGREE_WITHIN_K) return one;
  const [colder, warmer] = oneC < otherC ? [one, other] : [other, one];
  return {
    ...colder,
    credits: allCredits(colder, warmer),
    notes: [
      ...colder.notes,
      {
        code: 'services-differ',
        other: warmer.service,
        lowC: Math.min(oneC, otherC),
        otherLowC: Math.max(oneC, otherC),
      },
    ],
  };
}
