import { forecastDesk } from '../../bot/forecast/choose.ts';
import { FIXTURE_NIGHT, FIXTURE_NOW, ForecastServices } from '../fakes/forecast-services.ts';
import type { Row } from './row.ts';

const MEMBERS = 200;
const COLUMNS = 20;

/** Members of as many cells ask at once, at the pace that the services are really asked at. */
export async function benchCrowd(): Promise<readonly Row[]> {
  const services = await ForecastServices.start();
  const desk = forecastDesk({ bases: services.bases, contact: 'grower@example.org' });
  const tookS: number[] = [];
  let refused = 0;
  let unwarned = 0;
  await Promise.all(
    Array.from({ length: MEMBERS }, async (_, member) => {
      const place = {
        latitudeDeg: 40 + 0.04 * Math.floor(member / COLUMNS),
        longitudeDeg: -97 + 0.04 * (member % COLUMNS),
      };
      const begun = performance.now();
      const [forecast, official] = await Promise.allSettled([
        desk.forecastFor(place, FIXTURE_NOW, { night: FIXTURE_NIGHT }),
        desk.warningsFor(place, FIXTURE_NOW),
      ]);
      tookS.push((performance.now() - begun) / 1000);
      if (forecast.status === 'rejected') refused += 1;
      if (official.status === 'fulfilled' && official.value.kind === 'unknown') unwarned += 1;
    }),
  );
  await desk.close();
  await services.close();
  const inOrder = tookS.toSorted((a, b) => a - b);
  const at = (share: number) => inOrder[Math.ceil(share * MEMBERS) - 1] ?? Number.NaN;
  return [
    { name: `${MEMBERS} members of ${MEMBERS} cells at once, half of the answers within`, value: at(0.5), unit: 's' },
    { name: '99 of 100 within', value: at(0.99), unit: 's' },
    { name: 'without a forecast', value: refused, unit: 'members' },
    { name: 'sent to look up official warnings themselves', value: unwarned, unit: 'members' },
  ];
}
