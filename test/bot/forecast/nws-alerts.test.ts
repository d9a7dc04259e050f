import { expect, it } from 'vitest';
import { readWarnings } from '../../../bot/forecast/nws-alerts.ts';
import { FIXTURE_NOW, fixture } from '../../fakes/forecast-services.ts';

const alerts = () => JSON.parse(fixture('nws-alerts.json')) as { features: { properties: Record<string, unknown> }[] };
const events = (body: unknown, now = FIXTURE_NOW) => readWarnings(body, now).map(({ event }) => event);

it('lists what is in force, soonest first, and nothing that is cancelled, replaced, a test, over or about wind', () => {
  expect(events(alerts())).toEqual(['Cold Weather Advisory', 'Freeze Warning', 'Extreme Cold Warning']);
});

it('keeps one of several messages about the same warning: the newest', () => {
  const freeze = readWarnings(alerts(), FIXTURE_NOW).find(({ kind }) => kind === 'freeze');
  expect(freeze).toMatchObject({
    key: 'KXYZ.FZ.W.0003',
    headline: 'Freeze Warning remains in effect',
    from: new Date('2026-01-21T06:00:00Z'),
    until: new Date('2026-01-21T15:00:00Z'),
    sender: 'NWS Invented',
    url: 'https://www.weather.gov/',
  });
});

it('drops a warning whose newest message cancels it', () => {
  const body = alerts();
  const latest = structuredClone(body.features[1]);
  if (latest === undefined) throw new Error('fixture');
  latest.properties['sent'] = '2026-01-20T13:30:00-06:00';
  latest.properties['parameters'] = { VTEC: ['/O.CAN.KXYZ.FZ.W.0003.260121T0600Z-260121T1500Z/'] };
  body.features.push(latest);
  expect(events(body)).not.toContain('Freeze Warning');
});

it('keeps it when a cancellation for one zone and a continuation for another were sent together', () => {
  const body = alerts();
  const other = structuredClone(body.features[1]);
  if (other === undefined) throw new Error('fixture');
  other.properties['parameters'] = { VTEC: ['/O.CAN.KXYZ.FZ.W.0003.260121T0600Z-260121T1500Z/'] };
  body.features.unshift(other);
  expect(events(body)).toContain('Freeze Warning');
});

it('counts the hazard as over when it ends, not when the message expires, and by the expiry when no end is told', () => {
  expect(events(alerts(), new Date('2026-01-21T03:00:00Z'))).toContain('Freeze Warning');
  expect(events(alerts(), new Date('2026-01-21T04:30:00Z'))).not.toContain('Cold Weather Advisory');
  expect(events(alerts(), new Date('2026-01-21T15:00:00Z'))).toEqual([]);
});

it('knows frost, hard freeze and extreme cold by code', () => {
  const kinds = ['FR', 'HZ', 'EC', 'FZ', 'CW'].map((phenomenon) => {
    const body = alerts();
    for (const feature of body.features) {
      feature.properties['parameters'] = { VTEC: [`/O.NEW.KXYZ.${phenomenon}.W.0001.260121T0600Z-260121T1500Z/`] };
    }
    return readWarnings(body, FIXTURE_NOW)[0]?.kind;
  });
  expect(kinds).toEqual(['frost', 'hard-freeze', 'extreme-cold', 'freeze', 'cold']);
});

it('knows them by name where there is no code', () => {
  const names = [
    'Hard Freeze Watch',
    'Freeze Watch',
    'Frost Advisory',
    'Extreme Cold Watch',
    'Cold Weather Advisory',
    'Heat Advisory',
  ];
  const kinds = names.map((event) => {
    const body = alerts();
    for (const feature of body.features) {
      feature.properties['parameters'] = null;
      feature.properties['event'] = event;
    }
    return readWarnings(body, FIXTURE_NOW)[0]?.kind;
  });
  expect(kinds).toEqual(['hard-freeze', 'freeze', 'frost', 'extreme-cold', 'cold', undefined]);
});

it('leaves out a message that cannot be read without losing the others', () => {
  const body = alerts();
  for (const feature of body.features.slice(0, 2)) feature.properties['sent'] = 'at noon';
  expect(events(body)).toEqual(['Cold Weather Advisory', 'Extreme Cold Warning']);
});

it('reads an empty list as no warnings, and something else as an error', () => {
  expect(readWarnings({ type: 'FeatureCollection', features: [] }, FIXTURE_NOW)).toEqual([]);
  expect(() => readWarnings({ title: 'Sorry' }, FIXTURE_NOW)).toThrow('The list of warnings is not as documented');
});

it("links only to the service's own site", () => {
  const links = [
    'https://evil.example/weather.gov',
    'javascript:alert(1)',
    'http://api.weather.gov/x',
    'https://notweather.gov/',
    7,
  ].map((web) => {
    const body = alerts();
    for (const feature of body.features) feature.properties['web'] = web;
    return readWarnings(body, FIXTURE_NOW)[0]?.url;
  });
  expect(links).toEqual([
    'https://www.weather.gov/',
    'https://www.weather.gov/',
    'https://api.weather.gov/x',
    'https://www.weather.gov/',
    'https://www.weather.gov/',
  ]);
});
