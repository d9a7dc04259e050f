import { expect, test } from 'vitest';
import { storedGarden } from '../../../bot/outlook/stored-garden.ts';
import type { Bed, Planting } from '../../../bot/store/port/beds.ts';
import type { Site } from '../../../bot/store/port/sites.ts';

const SINCE = new Date('2026-10-01T12:00:00Z');

const site: Site = {
  ...{ id: 's', memberId: 'm', name: 'Home', latitudeDeg: 43.1, longitudeDeg: -76.3, heightM: 150 },
  ...{ exposure: 'hollow', timeZone: 'America/New_York', horizonDeg: [], isDefault: true, since: SINCE },
};

const planting: Planting = {
  ...{ id: 'p', crop: 'kale', stage: 'grown', since: '2026-10-01', hardened: undefined, hardening: undefined },
};

const bed: Bed = {
  ...{ id: 'b', memberId: 'm', siteId: 's', name: 'Tunnel', soil: 'dry', mulch: 'straw', frame: undefined },
  ...{ hardeningNote: undefined, covers: ['blanket', 'low-tunnel'], coversSince: SINCE, since: SINCE },
  plantings: [planting],
};

test('a kept site becomes a garden with its beds and as many spare covers as there are pieces', () => {
  const spareCovers = [
    { cover: 'blanket', count: 2 },
    { cover: 'hoops', count: 1 },
  ];
  expect(storedGarden({ site, beds: [bed], spareCovers })).toEqual({
    ...{ name: 'Home', latitudeDeg: 43.1, longitudeDeg: -76.3, elevationM: 150, exposure: 'hollow' },
    timeZone: 'America/New_York',
    shed: ['blanket', 'blanket', 'hoops'],
    beds: [
      {
        ...{ name: 'Tunnel', covers: ['blanket', 'low-tunnel'], soilKind: 'dry', mulch: 'straw' },
        plantings: [{ cropId: 'kale', stage: 'grown' }],
      },
    ],
  });
});

test.each([
  [{ hardened: true }, 1],
  [{ hardened: false }, 0],
  [{}, undefined],
  [{ hardened: true, hardening: { fraction: 0.4, at: SINCE } }, 0.4],
])('hardening is as followed, else as said, else unknown: %o', (state, index) => {
  const [first] = storedGarden({
    site,
    beds: [{ ...bed, plantings: [{ ...planting, ...state }] }],
    spareCovers: [],
  }).beds;
  expect(first?.plantings[0]?.hardeningIndex).toBe(index);
});

test('keys that this version does not know are passed over, not refused', () => {
  const odd: Bed = {
    ...bed,
    ...{ covers: ['force-field', 'low-tunnel'], soil: 'moon-dust', mulch: 'glitter' },
    plantings: [{ ...planting, crop: 'triffid' }],
  };
  const [first] = storedGarden({ site, beds: [odd], spareCovers: [{ cover: 'force-field', count: 1 }] }).beds;
  expect(first).toEqual({ name: 'Tunnel', covers: ['low-tunnel'], plantings: [] });
});

test('an unknown height stays unknown', () => {
  const { elevationM } = storedGarden({ site: { ...site, heightM: undefined }, beds: [], spareCovers: [] });
  expect(elevationM).toBeUndefined();
});
