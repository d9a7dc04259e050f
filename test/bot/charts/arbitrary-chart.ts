import fc from 'fast-check';
import type { CurveChart } from '../../../bot/charts/curve-chart.ts';
import type { PlacedLabel } from '../../../bot/charts/curve-layout.ts';
import { MS_PER_H } from '../../../rules/index.ts';

const FROM = new Date('2026-01-20T19:30:00Z');
const HOURS = 20;
const at = (hour: number) => new Date(FROM.getTime() + hour * MS_PER_H);
const tempC = fc.double({ min: -25, max: 15, noNaN: true });
/** Through a few points, so that a counterexample can be read. */
const KNOTS = 5;
const curve = fc.array(tempC, { minLength: KNOTS, maxLength: KNOTS });

/** Charts as nights make them, with curves and limits wherever they may be. */
export const nightCharts: fc.Arbitrary<CurveChart> = fc
  .record({
    outside: curve,
    leaf: curve,
    halfBandK: fc.double({ min: 0.3, max: 5, noNaN: true }),
    limits: fc.array(fc.record({ tempC, crop: fc.constantFrom('kale', 'Brussels sprouts', 'lamb’s lettuce', 'pea') }), {
      maxLength: 4,
    }),
    units: fc.constantFrom('us' as const, 'metric' as const),
    times: fc.tuple(...[0.5, 2.5, 14, 16].map((hour) => fc.double({ min: hour, max: hour + 3, noNaN: true }))),
  })
  .map(({ outside, leaf, halfBandK, limits, units, times }) => ({
    title: 'Long tunnel',
    subtitle: 'Leaf low 21 °F (17 to 25), outside 14 °F',
    units,
    timeZone: 'America/New_York',
    from: FROM,
    to: at(HOURS),
    night: { from: at(2), to: at(16) },
    curves: [
      { label: 'outside', role: 'beside' as const, points: points(outside) },
      { label: 'leaf', role: 'main' as const, points: points(leaf), halfBandK },
    ],
    limits: limits.map(({ crop, tempC: limitC }, index) => ({
      label: `${crop} ${index % 2 === 0 ? 'marks' : 'dies'}`,
      tempC: limitC,
      weight: index % 2 === 0 ? ('mark' as const) : ('loss' as const),
    })),
    moments: ['shut by', 'sunset', 'sunrise', 'thawed'].map((label, index) => ({ label, at: at(times[index] ?? 0) })),
    altText: 'A night.',
  }));

function points(knots: readonly number[]) {
  return Array.from({ length: 6 * HOURS }, (_, index) => {
    const place = (index / (6 * HOURS)) * (KNOTS - 1);
    const before = knots[Math.floor(place)] ?? 0;
    const after = knots[Math.ceil(place)] ?? before;
    return { at: at(index / 6), tempC: before + (place % 1) * (after - before) };
  });
}

/** Pairs of labels that meet. */
export function meeting(labels: readonly PlacedLabel[]): string[] {
  return labels.flatMap((one, index) =>
    labels
      .slice(index + 1)
      .filter(
        ({ box }) =>
          one.box.left < box.right && box.left < one.box.right && one.box.top < box.bottom && box.top < one.box.bottom,
      )
      .map((other) => `${one.lines.join(' ')} / ${other.lines.join(' ')}`),
  );
}
