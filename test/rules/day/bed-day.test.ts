import { describe, expect, test } from 'vitest';
import { type BedDayInput, bedDay, type CoverKey, cropById, sharedDay, soilAt } from '../../../rules/index.ts';
import { plainDay } from './arbitrary-day.ts';

const MARCH = plainDay({
  date: '2026-03-15',
  latitudeDeg: 43,
  lowC: -1,
  rangeK: 13,
  cloudFraction: 0,
  windMPerS: 1.5,
  soilC: 7,
});
/** A dark day far below freezing. */
const HARD = { date: '2026-01-15', latitudeDeg: 45, lowC: -22, rangeK: 6, windMPerS: 3, soilC: 0 };
const shared = sharedDay(MARCH.site, MARCH.weather, MARCH.day);

function dayUnder(covers: readonly CoverKey[], more: Partial<BedDayInput> = {}) {
  const day = bedDay(
    {
      site: MARCH.site,
      weather: MARCH.weather,
      soil: soilAt(7, 6, 1.5),
      bed: { covers },
      plantings: [],
      from: MARCH.day.sunrise,
      ...more,
    },
    shared,
  );
  if (day.kind !== 'day') throw new Error('the covers cannot lie so');
  return day;
}

function planted(cropId: string, hardeningIndex: number) {
  const crop = cropById(cropId);
  if (crop === undefined) throw new Error(`no crop ${cropId}`);
  return { plantings: [{ crop, hardeningIndex }] };
}

describe('the day of a bed', () => {
  test('opens nothing over a bare bed or straw, and still tells when to pick', () => {
    for (const covers of [[], ['straw']] as const) {
      const day = dayUnder(covers);
      expect(day.opening).toBeUndefined();
      expect(day.pick?.kind).toBe(covers.length === 0 ? 'thawed' : 'not-frozen');
    }
  });

  test('takes blankets off an hour after sunrise, and opens what is under them', () => {
    const day = dayUnder(['quilt', 'cold-frame']);
    expect(day.takenOff?.keys).toEqual(['quilt']);
    expect(day.takenOff?.at.getTime()).toBe(MARCH.day.sunrise.getTime() + 3_600_000);
    expect(day.opening?.openable.cover).toBe('cold-frame');
    expect(day.opening?.advice.kind).toBe('open');
  });

  test('leaves blankets on where it would freeze all day without them', () => {
    const { weather, ...rest } = plainDay({ ...HARD, cloudFraction: 1 });
    const input = { weather, site: rest.site, soil: soilAt(0, 2, 1.5), plantings: [], from: rest.day.sunrise };
    const day = bedDay({ ...input, bed: { covers: ['quilt', 'low-tunnel'] } }, sharedDay(rest.site, weather, rest.day));
    if (day.kind !== 'day') throw new Error('the covers cannot lie so');
    expect([day.takenOff, day.leftOn]).toEqual([undefined, ['quilt']]);
    expect(dayUnder(['quilt', 'low-tunnel']).leftOn).toBeUndefined();
  });

  test('is warmer by day for a quilt that kept the night’s warmth', () => {
    const highC = (covers: readonly CoverKey[]) => dayUnder(covers).opening?.advice.shut.thermometerHigh.valueC ?? 0;
    expect(highC(['quilt', 'cold-frame'])).toBeGreaterThanOrEqual(highC(['cold-frame']) - 0.2);
  });

  test('advises nothing for before somebody asks', () => {
    const from = new Date(MARCH.day.sunrise.getTime() + 5 * 3_600_000);
    const advice = dayUnder(['cold-frame'], { from }).opening?.advice;
    if (advice?.kind !== 'open') throw new Error('expected to open');
    expect(advice.openAt).toEqual(from);
  });

  test('keeps hardened plants hard by opening sooner than soft ones need', () => {
    const soft = dayUnder(['cold-frame-twin-wall'], planted('kale', 0)).opening;
    const hard = dayUnder(['cold-frame-twin-wall'], planted('kale', 1)).opening;
    expect([soft?.limit.because, hard?.limit.because]).toEqual(['usual', 'hardening']);
    if (soft?.advice.kind === 'stay-shut' || hard?.advice.kind === 'stay-shut')
      throw new Error('expected both to open');
    expect(hard?.advice.openAt.getTime()).toBeLessThan(soft?.advice.openAt.getTime() ?? 0);
  });

  test('does not tell of frozen leaves where the night is not known', () => {
    const { weather } = MARCH;
    const skipped = Math.ceil((MARCH.day.sunrise.getTime() - weather.first.getTime()) / 3_600_000);
    const cut = <T>(values: readonly T[]) => values.slice(skipped);
    const late = {
      first: new Date(weather.first.getTime() + skipped * 3_600_000),
      stepH: 1,
      screenC: cut(weather.screenC),
      dewPointC: cut(weather.dewPointC),
      cloudFraction: cut(weather.cloudFraction),
      wind10MPerS: cut(weather.wind10MPerS),
    };
    const input = {
      site: MARCH.site,
      weather: late,
      soil: soilAt(7, 6, 1.5),
      bed: { covers: ['cold-frame'] as const },
      plantings: [],
      from: MARCH.day.sunrise,
    };
    const day = bedDay(input, sharedDay(MARCH.site, late, MARCH.day));
    if (day.kind !== 'day') throw new Error('the covers cannot lie so');
    expect(day.pick).toBeUndefined();
    expect(day.opening?.advice.kind).toBe('open');
  });

  test('refuses covers that cannot lie so', () => {
    const input = {
      site: MARCH.site,
      weather: MARCH.weather,
      soil: soilAt(7, 6, 1.5),
      plantings: [],
      from: MARCH.day.sunrise,
    };
    expect(bedDay({ ...input, bed: { covers: ['cold-frame', 'low-tunnel'] } }, shared).kind).toBe('unsound');
  });
});
