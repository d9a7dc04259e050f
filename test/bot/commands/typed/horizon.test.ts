import fc from 'fast-check';
import { expect, test } from 'vitest';
import { COMPASS, compassIndex, compassPoint } from '../../../../bot/commands/typed/compass.ts';
import { typedHorizon } from '../../../../bot/commands/typed/horizon.ts';

test.each([
  ['open', []],
  ['0', []],
  ['15', [15]],
  ['12.5°', [12.5]],
  ['S 10', [0, 0, 0, 0, 10, 0, 0, 0]],
  ['n 5, southeast: 20; West 7.5', [5, 0, 0, 20, 0, 0, 7.5, 0]],
])('"%s" is read as heights round the compass', (text, heights) => {
  expect(typedHorizon(text)).toEqual({ ok: true, value: heights });
});

test.each(['', ',', 'high', '86', '-3', 'NaN', 'Infinity', 'S', 'S 10 W', '10 S', 'S ten', 'S -1'])(
  '"%s" is refused with what would be right',
  (text) => {
    expect(typedHorizon(text)).toEqual({ ok: false, problem: expect.stringContaining('such as S 10, SW 35') });
  },
);

test('whatever is typed, heights are those that a night can take', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), (text) => {
      const horizon = typedHorizon(text);
      for (const deg of horizon.ok ? horizon.value : []) expect(deg >= 0 && deg <= 85).toBe(true);
    }),
  );
});

test('a compass point is found by its name and letters, and from its azimuth', () => {
  for (const [at, point] of COMPASS.entries()) {
    const letters = point
      .split('-')
      .map(([letter]) => letter)
      .join('');
    expect([compassIndex(point), compassIndex(letters.toUpperCase()), compassIndex(point.replace('-', ''))]).toEqual([
      at,
      at,
      at,
    ]);
    expect(compassPoint(at * 45 + 20)).toBe(point);
    expect(compassPoint(at * 45 - 380)).toBe(point);
  }
});
