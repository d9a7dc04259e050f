import { describe, expect, test } from 'vitest';
import { openingPlan } from '../../../bot/outlook/opening-plan.ts';
import type { Reply } from '../../../bot/talk/reply.ts';
import { closingReply, openingReply, pickingReply } from '../../../bot/text/opening-reply.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { dayFrom } from '../../../rules/index.ts';
import { type EvenWeather, evenForecast, gardenBed, PLAIN_GARDEN } from '../outlook/day-garden.ts';

/** What a phone shows without scrolling sideways or losing the thread: some four lines of a message. */
const LONGEST_LINE = 220;
const MARCH = new Date('2026-03-15T07:00:00Z');
const JANUARY = new Date('2026-01-15T08:00:00Z');

const BEDS = [
  gardenBed('Frame', ['cold-frame'], ['spinach', 'leaf-lettuce']),
  gardenBed('Tunnel', ['low-tunnel'], ['kale'], { hardeningIndex: 0.75 }),
  gardenBed('Quilted', ['quilt', 'low-tunnel'], ['chard']),
  gardenBed('Row', [], ['leek']),
];

function telling(now: Date, weather: EvenWeather, { beds = BEDS, locale = 'en-US' } = {}) {
  const day = dayFrom(now, PLAIN_GARDEN.latitudeDeg, PLAIN_GARDEN.longitudeDeg);
  if (day === undefined) throw new Error('the sun rises there');
  const plan = openingPlan({ ...PLAIN_GARDEN, beds }, evenForecast(now, weather), day, now);
  return { plan, reader: readerOf(locale), now, dayWords: 'today' };
}

const titled = ({ sections }: Reply, title: string) => sections.find((section) => section.title === title)?.lines ?? [];
const SUNNY: EvenWeather = { lowC: -1, rangeK: 13 };
const FROST: EvenWeather = { lowC: -12, rangeK: 5, cloud: 1 };

describe('a sunny day in March', () => {
  const reply = openingReply(telling(MARCH, SUNNY));

  test('begins with what to do and when', () => {
    expect(reply.headline).toMatch(/^Home: open 3 of 4 beds today, the first at \d+:\d[05] am\.$/);
    expect(reply.sections[0]?.title).toBe('Open');
  });

  test('tells how, when, until when, and what comes of not doing it', () => {
    const lines = titled(reply, 'Open');
    expect(lines).toHaveLength(3);
    for (const line of lines) {
      expect(line).toMatch(
        /: (prop|raise|take) .+ at \d+:\d[05] am, (shut|back on) by \d+:\d[05] pm\. Left shut it reaches \d+ °F near \d+:[03]0 pm\./,
      );
    }
  });

  test('tells the beds in the order in which they are opened', () => {
    const minutes = titled(reply, 'Open').map((line) => {
      const [, hour = '', minute = ''] = / at (\d+):(\d+) am/.exec(line) ?? [];
      return Number(hour) * 60 + Number(minute);
    });
    expect(minutes).toEqual([...minutes].sort((a, b) => a - b));
  });

  test('says whose limit is lower, and how hard the plants are', () => {
    const lines = titled(reply, 'Open').join('\n');
    expect(lines).toMatch(/(Kept near|Opened at) 60 °F for the spinach/);
    expect(lines).toContain('Tunnel (kale, three quarters hardened)');
  });

  test('has blankets off in the morning and back by the time to shut', () => {
    expect(titled(reply, 'Take off by day')).toEqual([
      expect.stringMatching(/^Quilted: the quilt off at \d+:\d[05] am, back by \d+:\d[05] pm\.$/),
    ]);
  });

  test('is asked when to shut: the time comes first', () => {
    const closing = closingReply(telling(MARCH, SUNNY));
    expect(closing.headline).toMatch(/^Home: shut by \d+:\d[05] pm today, two hours before sunset\.$/);
  });
});

test('tells to take off what is left under the film where that alone is still too hot', () => {
  const beds = [gardenBed('Tunnel', ['low-tunnel', 'row-cover'], ['kale'])];
  const warm = openingReply(telling(MARCH, { lowC: 12, rangeK: 14 }, { beds }));
  expect(titled(warm, 'Open')[0]).toMatch(/ Under row cover alone it still gets to \d+ °F: take that off too\.$/);
});

test('has a propped light hooked when gusts may lift it', () => {
  const beds = [gardenBed('Frame', ['cold-frame-twin-wall'], ['kale'])];
  const gusts = (gustMPerS: number) => {
    const gustMPerSByHour = new Array<number>(264).fill(gustMPerS);
    return titled(
      openingReply(telling(MARCH, { ...SUNNY, columns: { gustMPerS: gustMPerSByHour } }, { beds })),
      'Open',
    )[0];
  };
  expect(gusts(4)).not.toContain('Hook');
  expect(gusts(9)).toMatch(/ Hook the light to its prop: gusts may lift it\.$/);
  expect(gusts(16)).toMatch(/ In those gusts take the light right off instead, and lay it down flat\.$/);
});

test('a bed that only just passes the limit is not worth the walk, and says so', () => {
  const lows = Array.from({ length: 40 }, (_, step) => -12 + step / 4);
  const lines = lows.flatMap((lowC) => {
    const beds = [gardenBed('Tunnel', ['low-tunnel'], ['chard'])];
    return titled(openingReply(telling(MARCH, { lowC }, { beds })), 'Leave shut');
  });
  const above = lines.filter((line) => /highest 7[67] °F/.test(line));
  expect(above.length).toBeGreaterThan(0);
  for (const line of above) expect(line).toMatch(/, hardly above 75 °F: not worth opening for\.$/);
  expect(lines.some((line) => line.endsWith('; open it should a thermometer inside pass 75 °F.'))).toBe(true);
});

test('a bed that is hot just before it is time to shut is left, and the reason told', () => {
  const late = new Date('2026-03-15T16:00:00Z');
  const beds = [gardenBed('Frame', ['cold-frame'], ['chard'])];
  const lines = titled(openingReply(telling(late, { lowC: 4, rangeK: 14 }, { beds })), 'Leave shut');
  expect(lines).toEqual([expect.stringMatching(/ near 4:[03]0 pm, but soon it is time to shut\.$/)]);
});

describe('a dark frost day in January', () => {
  const reply = openingReply(telling(JANUARY, FROST));

  test('begins with that there is nothing to open', () => {
    expect(reply.headline).toBe('Home: nothing to open today.');
  });

  test('leaves blankets on, and tempts nobody to open a crack', () => {
    expect(titled(reply, 'Leave shut').join('\n')).toContain('the quilt may stay on, it freezes all day');
    expect(titled(reply, 'Take off by day')).toEqual([]);
    const words = JSON.stringify(reply.sections);
    expect(words).toContain('In these weeks of short days little or no opening is needed.');
    expect(words).not.toContain('A crack');
  });

  test('has frozen leaves left alone', () => {
    const picking = pickingReply(telling(JANUARY, FROST, { beds: [gardenBed('Row', [], ['leek', 'kale'])] }));
    expect(picking.headline).toBe('Home: do not pick today; the leaves stay frozen.');
    expect(picking.cautions?.join(' ')).toContain('while they are frozen');
  });
});

test('without a cloud figure it says that the sky is reckoned sunny', () => {
  const cloudFraction = new Array<undefined>(264).fill(undefined);
  const words = JSON.stringify(openingReply(telling(MARCH, { lowC: 2, columns: { cloudFraction } })).sections);
  expect(words).toContain('reckoned as clear, the sunny side');
  expect(words).not.toContain('night');
});

const ALL_KINDS = [MARCH, JANUARY].flatMap((now) =>
  [-12, -6, -1, 4, 9].flatMap((lowC) => [0, 0.6, 1].map((cloud) => ({ now, weather: { lowC, cloud } }))),
);

test.each(['en-US', 'en-GB'])('every line fits a phone in %s, and none opens and shuts at the same time', (locale) => {
  const lines = ALL_KINDS.flatMap(({ now, weather }) => {
    const { headline, sections } = openingReply(telling(now, weather, { locale }));
    return [headline, ...sections.flatMap((section) => section.lines)];
  });
  for (const line of lines) {
    expect(line.length).toBeLessThanOrEqual(LONGEST_LINE);
    const [, from, until] = / at ([\d:]+(?: [ap]m)?), (?:shut|back on) by ([\d:]+(?: [ap]m)?)/.exec(line) ?? [];
    expect(from === undefined || from !== until).toBe(true);
  }
});
