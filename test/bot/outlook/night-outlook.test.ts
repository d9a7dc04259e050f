import { describe, expect, test } from 'vitest';
import type { Garden } from '../../../bot/outlook/garden.ts';
import { nightOutlook } from '../../../bot/outlook/night-outlook.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from '../../../bot/sample/sample-garden.ts';
import { sampleWarning } from '../../../bot/sample/sample-warning.ts';
import { drawn } from '../../../bot/talk/plain-text.ts';
import { outlookReply } from '../../../bot/text/outlook-reply.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { type CoverKey, nightFrom } from '../../../rules/index.ts';

const NIGHT = nightFrom(SAMPLE_NOW, SAMPLE_GARDEN.latitudeDeg, SAMPLE_GARDEN.longitudeDeg);
if (NIGHT === undefined) throw new Error('the sample garden has nights');
const outlookOf = (garden: Garden) => nightOutlook(garden, sampleForecast(), NIGHT, SAMPLE_NOW);
const bed = (covers: readonly CoverKey[], ...crops: readonly ('kale' | 'tatsoi' | 'spinach' | 'tomato')[]) => ({
  name: `${crops.join(' ')} bed`,
  covers,
  plantings: crops.map((cropId) => ({ cropId, stage: 'grown' as const, hardeningIndex: 1 })),
});
const garden = (beds: Garden['beds'], shed: readonly CoverKey[] = []): Garden => ({ ...SAMPLE_GARDEN, beds, shed });

describe('steps', () => {
  test('a bed in which everything holds needs nothing', () => {
    const { beds } = outlookOf(garden([bed(['cold-frame', 'row-cover-medium'], 'spinach')]));
    expect(beds[0]?.verdict.worst.verdict).toBe('holds');
    expect(beds[0]?.step).toEqual({ kind: 'nothing' });
  });

  test('what lies in the shed comes before anything else', () => {
    const { beds } = outlookOf(garden([bed(['low-tunnel'], 'tatsoi')], ['quilt']));
    expect(beds[0]?.step).toMatchObject({ kind: 'add', fromShed: true, added: ['quilt'] });
  });

  test('one quilt in the shed serves one bed only', () => {
    const { beds } = outlookOf(garden([bed(['low-tunnel'], 'tatsoi'), bed(['low-tunnel'], 'tatsoi')], ['quilt']));
    expect(beds.filter(({ step }) => step.kind === 'add' && step.fromShed)).toHaveLength(1);
  });

  test('the quilt goes to the bed that it saves, not to one that is lost either way', () => {
    const { beds } = outlookOf(garden([bed([], 'tomato'), bed(['low-tunnel'], 'tatsoi')], ['quilt']));
    const users = beds.filter(({ step }) => step.kind === 'add' && step.fromShed);
    expect(users.map(({ bed: { name } }) => name)).toEqual(['tatsoi bed']);
  });

  test('the step that is said to make it hold does so when it is laid', () => {
    const { beds } = outlookOf(garden([bed(['low-tunnel'], 'tatsoi')], ['quilt', 'blanket']));
    const step = beds[0]?.step;
    if (step?.kind !== 'add' || !step.holds) throw new Error('expected a cover that helps');
    const after = outlookOf(garden([bed(step.keys, 'tatsoi')]));
    expect(after.beds[0]?.verdict.worst.verdict).toBe('holds');
  });

  test('the most urgent bed stands first', () => {
    const { beds } = outlookOf(
      garden([bed(['cold-frame'], 'spinach'), bed([], 'tomato'), bed(['low-tunnel'], 'kale')]),
    );
    expect(beds[0]?.bed.name).toBe('tomato bed');
  });

  test('a bed without a crop is left out', () => {
    expect(outlookOf(garden([{ name: 'empty', covers: [], plantings: [] }])).beds).toEqual([]);
  });
});

describe('words', () => {
  const words = (of: Garden) =>
    drawn(
      outlookReply({
        outlook: outlookOf(of),
        official: { kind: 'not-covered' },
        reader: readerOf('en-US'),
        now: SAMPLE_NOW,
        nightWords: 'tonight',
      }),
      10_000,
    );

  test('the headline counts the beds at risk and says by when to act', () => {
    expect(
      words(garden([bed([], 'tomato'), bed(['cold-frame', 'row-cover-medium'], 'spinach')])).split('\n')[0],
    ).toMatch(/: 1 of 2 beds at risk tonight\. Shut by \d+:\d\d pm\.$/);
  });

  test('two hours before sunset is the shutting time', () => {
    const text = words(garden([bed(['cold-frame'], 'spinach')]));
    // Sunset at 43.1° N, 76.3° W on 20 January is at 5:02 pm local time (computed by two astronomy libraries elsewhere).
    expect(text).toMatch(/by 3:00 pm/);
  });

  test('once the shutting time has passed, no hour is named that is over', () => {
    const night = outlookOf(garden([bed(['cold-frame'], 'spinach')]));
    const told = outlookReply({
      outlook: night,
      official: { kind: 'not-covered' },
      reader: readerOf('en-US'),
      now: new Date(NIGHT.sunset.getTime() + 3_600_000),
      nightWords: 'tonight',
    });
    expect(told.headline).toMatch(/Shut now\.$/);
  });

  test('what no cover saves is to be picked', () => {
    expect(words(garden([bed([], 'tomato')]))).toMatch(/Pick today what is ready:\n {2}Tomato bed|tomato bed/);
  });

  test('an official warning stands before our own figures, and unknown warnings are not passed over in silence', () => {
    const outlook = outlookOf(garden([bed(['cold-frame'], 'spinach')]));
    const told = (official: Parameters<typeof outlookReply>[0]['official']) =>
      drawn(
        outlookReply({ outlook, official, reader: readerOf('en-US'), now: SAMPLE_NOW, nightWords: 'tonight' }),
        500,
      );
    const warned = told({
      kind: 'known',
      credits: [],
      warnings: [
        {
          kind: 'freeze',
          event: 'Freeze Warning',
          headline: '',
          from: SAMPLE_NOW,
          until: new Date('2026-01-21T14:00:00Z'),
          sender: 'an office',
          url: 'https://www.weather.gov/',
          key: 'a',
        },
      ],
    });
    expect(warned.indexOf('Freeze Warning until Wed 21 Jan, 9:00 am')).toBeGreaterThan(0);
    expect(warned.indexOf('Freeze Warning')).toBeLessThan(warned.indexOf('Outside low'));
    expect(told({ kind: 'unknown', because: 'unavailable' })).toMatch(/could not read the official warnings/);
  });

  test('the sample is labelled as invented, has one bed at risk, and reads the same facts in both unit systems', async () => {
    const us = drawn(await sampleWarning(readerOf('en-US')));
    const metric = drawn(await sampleWarning(readerOf('en-GB')));
    expect(us).toMatch(/sample that we made up/);
    expect(us).toMatch(/: 1 of 4 beds at risk tonight/);
    expect(metric).toMatch(/: 1 of 4 beds at risk tonight/);
    expect(metric).not.toMatch(/°F/);
  });
});
