import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { typedPlace } from '../../../../bot/commands/typed/place.ts';

const HERE = { latitudeDeg: 43.1, longitudeDeg: -76.3 };

function rounded(lat: string, lon?: string) {
  const place = typedPlace(lat, lon);
  if (!place.ok) return place.problem;
  const round = (deg: number) => Math.round(deg * 1e6) / 1e6;
  return { latitudeDeg: round(place.value.latitudeDeg), longitudeDeg: round(place.value.longitudeDeg) };
}

describe('a place is understood in every common form', () => {
  test.each([
    ['43.1', '-76.3'],
    ['43,1', '-76,3'],
    ['43.1', '−76.3'],
    ['43.1 N', '76.3 W'],
    ['N43.1', 'W76.3'],
    ['43° 6′ N', '76° 18′ W'],
    ['43°06\'00"N', '76°18\'00"W'],
    ['43 6 0 N', '76 18 0 W'],
    ['43:06:00', '-76:18:00'],
    ['43 deg 6 min', '-76 deg 18 min'],
    ['76.3 west', '43.1 north'],
  ])('%s and %s', (lat, lon) => expect(rounded(lat, lon)).toEqual(HERE));

  test.each([
    '43.1, -76.3',
    '43.1,-76.3',
    '43.1 -76.3',
    '43,1 -76,3',
    '43,1; -76,3',
    '43.1N 76.3W',
    '43.1 N, 76.3 W',
    'N 43.1 W 76.3',
    'N43 06 W76 18',
    '76.3W, 43.1N',
    '43°06′N 76°18′W',
    '43°06′00″N, 76°18′00″W',
    '43 06 -76 18',
    'lat 43.1 lon -76.3',
    'latitude: 43.1, longitude: -76.3',
    '43.1 north, 76.3 west',
  ])('%s in one', (both) => expect(rounded(both)).toEqual(HERE));
});

test.each([
  ['95', '10', 'Latitude 95 is off the globe'],
  ['-95', '10', 'it runs from −90 (south) to 90 (north)'],
  ['-120.5', '43', 'Perhaps latitude and longitude are swapped'],
  ['43', '200', 'Longitude 200 is off the globe'],
  ['Syracuse', '3', 'I cannot read "Syracuse" as a coordinate'],
  ['43 70 00', '3', 'Minutes and seconds of a coordinate run from 0 to 59'],
  ['-43 S', '3', 'with a sign or with a letter'],
  ['43 N', '76 S', 'Both coordinates are a latitude'],
  ['43', '', 'I cannot read ""'],
  ['1 2 3 4', '5', 'I cannot read "1 2 3 4"'],
])('%s and %s are refused with what would be right', (lat, lon, words) => {
  expect(rounded(lat, lon)).toContain(words);
});

test.each(['43.1', '', 'at the old mill', '43.1, -76.3, 15'])('"%s" alone is not enough', (lat) => {
  expect(typeof rounded(lat)).toBe('string');
});

test('a place said back as a map writes it is the same place', () => {
  const degrees = (most: number) => fc.integer({ min: -most * 1e4, max: most * 1e4 }).map((n) => n / 1e4);
  fc.assert(
    fc.property(degrees(90), degrees(180), (latitudeDeg, longitudeDeg) => {
      const letters = `${Math.abs(latitudeDeg)}°${latitudeDeg < 0 ? 'S' : 'N'} ${Math.abs(longitudeDeg)}°${longitudeDeg < 0 ? 'W' : 'E'}`;
      for (const form of [`${latitudeDeg}, ${longitudeDeg}`, letters]) {
        const place = typedPlace(form, undefined);
        expect(place.ok && place.value.latitudeDeg).toBeCloseTo(latitudeDeg, 9);
        expect(place.ok && place.value.longitudeDeg).toBeCloseTo(longitudeDeg, 9);
      }
    }),
  );
});

test('whatever is typed, a place on the globe or a sentence comes of it', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.option(fc.string(), { nil: undefined }), (lat, lon) => {
      const place = typedPlace(lat, lon);
      const { latitudeDeg, longitudeDeg } = place.ok ? place.value : { latitudeDeg: 0, longitudeDeg: 0 };
      expect(place.ok || place.problem).toSatisfy((said: unknown) => said === true || /[.!?]$/.test(String(said)));
      expect(Math.abs(latitudeDeg)).toBeLessThanOrEqual(90);
      expect(Math.abs(longitudeDeg)).toBeLessThanOrEqual(180);
    }),
  );
});
