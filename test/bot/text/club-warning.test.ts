import { describe, expect, test } from 'vitest';
import { rendered } from '../../../bot/chat/discord/render.ts';
import type { OfficialWarning } from '../../../bot/forecast/forecast.ts';
import type { Garden, GardenBed } from '../../../bot/outlook/garden.ts';
import { nightOutlook, type OutlooksShared } from '../../../bot/outlook/night-outlook.ts';
import { SharedNights } from '../../../bot/outlook/shared-nights.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from '../../../bot/sample/sample-garden.ts';
import { PHONE_CHARACTERS } from '../../../bot/talk/short-reply.ts';
import { bedGroups } from '../../../bot/text/club-groups.ts';
import type { ClubTelling } from '../../../bot/text/club-telling.ts';
import { clubAllClear, clubWarning } from '../../../bot/text/club-warning.ts';
import { nightWhen } from '../../../bot/text/night-when.ts';
import { lastKnownLine } from '../../../bot/text/no-forecast-words.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { shutByLines, shutByWords } from '../../../bot/text/shut-by-words.ts';
import { COVER_KEYS, type CoverKey, type CropId, harmFraction, nightFrom } from '../../../rules/index.ts';

const NIGHT = nightFrom(SAMPLE_NOW, SAMPLE_GARDEN.latitudeDeg, SAMPLE_GARDEN.longitudeDeg);
if (NIGHT === undefined) throw new Error('the sample garden has nights');
const forecast = sampleForecast();
const shared: OutlooksShared = new SharedNights(false);
const us = readerOf('en-US');
const metric = readerOf('de-DE');

const STACKS: readonly (readonly CoverKey[])[] = [
  [],
  ['low-tunnel'],
  ['row-cover-medium'],
  ['cold-frame'],
  ['blanket', 'hoops'],
];
const CROPS: readonly CropId[] = ['leaf-lettuce', 'spinach', 'kale', 'tatsoi', 'mache', 'leek', 'claytonia', 'parsley'];
const bedOf = (covers: readonly CoverKey[], cropId: CropId, name = 'A secret bed'): GardenBed => ({
  ...{ name, covers },
  plantings: [{ cropId, stage: 'grown', hardeningIndex: 1 }],
});

function gardenOf(beds: readonly GardenBed[], more: Partial<Garden> = {}): ClubTelling['gardens'][number] {
  const garden = { ...SAMPLE_GARDEN, name: 'A secret site', shed: [], beds, ...more };
  return {
    outlook: nightOutlook(garden, forecast, NIGHT as never, SAMPLE_NOW, shared),
    official: { kind: 'not-covered' },
  };
}

function telling(gardens: ClubTelling['gardens'], more: Partial<ClubTelling> = {}): ClubTelling {
  return {
    ...{ gardens, gaps: [], failedCount: 0, markedBeds: 0, ahead: undefined, lowsAhead: [], worse: undefined },
    ...{ reader: us, now: SAMPLE_NOW, nightWords: 'tonight', buttons: [{ id: 'my-beds', label: 'My beds' }] },
    ...more,
  };
}

/** Forty growers with six beds each, hardly two alike. */
const bigClub = Array.from({ length: 40 }, (_, n) =>
  gardenOf(
    Array.from({ length: 6 }, (_, i) =>
      bedOf(STACKS[(n + i) % STACKS.length] ?? [], CROPS[(n * 3 + i) % CROPS.length] ?? 'kale'),
    ),
    { exposure: (['open', 'sheltered', 'hollow'] as const)[n % 3] ?? 'open' },
  ),
);
const textOf = (reply: ReturnType<typeof clubWarning>) =>
  [reply.headline, ...reply.sections.flatMap(({ title, lines }) => [title ?? '', ...lines])].join('\n');

describe('a club of forty growers with six beds each', () => {
  const reply = clubWarning(telling(bigClub));
  const text = textOf(reply);

  test('is told in one message that a phone shows whole, with nothing left to an attached text', () => {
    const { body, files } = rendered(reply, { reference: 'Notice abcdefgh', characters: PHONE_CHARACTERS });
    expect(body.content.length).toBeLessThanOrEqual(PHONE_CHARACTERS);
    // Only the list of all beds goes beside it.
    expect(files.map(({ name }) => name)).toEqual(['all-beds.txt']);
    const listed = String(files[0]?.data).split('\n');
    expect(listed.length).toBeGreaterThan(15);
    expect(listed.join()).not.toContain('secret');
    expect(text.split('\n').length).toBeLessThan(25);
  });

  test('counts every bed once, shown or summed up', () => {
    const groups = bedGroups(bigClub.map(({ outlook }) => outlook));
    expect(groups.reduce((sum, { beds }) => sum + beds.length, 0)).toBe(240);
    const [risky, all] = /^(\d+) of (\d+) beds at risk/.exec(reply.headline)?.slice(1).map(Number) ?? [];
    expect(all).toBe(240);
    const beds = bigClub.flatMap(({ outlook }) => outlook.beds);
    expect(risky).toBe(beds.filter(({ verdict }) => verdict.worst.verdict !== 'holds').length);
  });

  test('names the most urgent beds first', () => {
    const harms = bedGroups(bigClub.map(({ outlook }) => outlook)).map(({ beds }) =>
      harmFraction(beds[0].verdict.worst.odds),
    );
    expect(harms).toEqual(harms.toSorted((a, b) => b - a));
  });

  test('names no site, no bed and no place', () => {
    for (const secret of ['secret', '43.1', '76.3']) expect(JSON.stringify(reply)).not.toContain(secret);
  });

  test('tells the coach where the risk lies and how much is seen to', () => {
    expect(text).toMatch(/Beds at risk in \d+ of 40 gardens; no bed marked covered so far\./);
    expect(textOf(clubWarning(telling(bigClub, { markedBeds: 7 })))).toContain('7 beds marked covered so far.');
  });

  test('offers the button for the detail', () => {
    expect(reply.buttons?.map(({ label }) => label)).toEqual(['My beds']);
  });
});

describe('each line says what to do', () => {
  test('with the cover from the shed before any other', () => {
    const text = textOf(clubWarning(telling([gardenOf([bedOf(['low-tunnel'], 'tatsoi')], { shed: ['quilt'] })])));
    expect(text).toMatch(
      /Tatsoi under low tunnel: a quilt from the shed (over|under) the low tunnel\. Without it tatsoi .*Leaf low −?\d+ °F \(−?\d+ to −?\d+\)\. With it all holds, −?\d+ °F\./,
    );
  });

  test('to pick, where no cover that is known helps', () => {
    const text = textOf(clubWarning(telling([gardenOf([bedOf([], 'tomato')])])));
    expect(text).toMatch(/Pick today what is ready\nTomato in the open: tomato winterkill/);
  });

  test('to shut only, where all holds once shut', () => {
    const reply = clubWarning(telling([gardenOf([bedOf(['cold-frame', 'row-cover-medium'], 'spinach')])]));
    expect(reply.headline).toMatch(/^Every bed holds tonight\. Shut by \d+:\d\d pm\.$/);
    expect(textOf(reply)).toMatch(
      /Only shut\n1 bed\. Spinach under cold frame over medium row cover comes nearest to harm\. Leaf low/,
    );
  });

  test('in the units that most members read', () => {
    expect(textOf(clubWarning(telling(bigClub, { reader: metric })))).toMatch(/Leaf low −?\d+(\.5)? °C \(/);
  });
});

describe('a second post', () => {
  test('speaks of the beds that have become worse and of no others', () => {
    const club = gardenOf([bedOf([], 'tatsoi'), bedOf(['cold-frame'], 'leek')]);
    const [worst] = club.outlook.beds;
    if (worst === undefined) throw new Error('there are beds');
    const reply = clubWarning(telling([club], { worse: new Set([worst]) }));
    expect(reply.headline).toMatch(/^Worse tonight than I said, for 1 bed\. Shut by/);
    expect(textOf(reply)).not.toContain('Leek');
    expect(textOf(reply)).toContain('Tatsoi in the open');
  });
});

test('official warnings stand first, once each, at most four with the rest counted', () => {
  const frost = (n: number): OfficialWarning => ({
    ...{
      kind: 'frost',
      event: `Frost Advisory ${n}`,
      headline: 'Frost',
      sender: 'NWS',
      url: `https://example.org/${n}`,
    },
    ...{ from: SAMPLE_NOW, until: NIGHT.sunrise, key: `X.FR.Y.${n}` },
  });
  const official = { kind: 'known' as const, warnings: [1, 2, 3, 4, 5, 6].map(frost), credits: [] };
  const garden = { ...gardenOf([bedOf([], 'kale')]), official };
  const [section] = clubWarning(telling([garden, garden])).sections;
  expect(section?.title).toBe('Official warning, which comes first');
  expect(section?.lines).toHaveLength(5);
  expect(section?.lines[0]).toContain('https://example.org/1');
  expect(section?.lines[4]).toBe('And 2 more warnings for other gardens.');
});

test('official warnings that could not be read are owned up to', () => {
  const garden = {
    ...gardenOf([bedOf([], 'kale')]),
    official: { kind: 'unknown' as const, because: 'unavailable' as const },
  };
  expect(textOf(clubWarning(telling([garden])))).toContain('I could not read the official warnings just now.');
});

test('every cover that can be laid has its words', () => {
  for (const key of COVER_KEYS.filter((each) => each !== 'hoops' && each !== 'jugs' && each !== 'snow')) {
    const garden = gardenOf([bedOf([key], 'leaf-lettuce')]);
    expect(textOf(clubWarning(telling([garden])))).not.toContain('undefined');
  }
});

test('a night that needs nothing is told in a line or two', () => {
  const reply = clubAllClear(telling([gardenOf([bedOf(['cold-frame', 'row-cover-medium'], 'spinach')])]));
  expect(reply.headline).toBe('Nothing to do tonight: the bed holds.');
});

describe('when to shut', () => {
  const at = (time: string, timeZone = 'America/New_York') => ({
    shutBy: new Date(`2026-12-01T${time}:00Z`),
    timeZone,
  });

  test('is the earliest time, never rounded up', () => {
    expect(shutByWords([at('19:44'), at('19:34')], us)).toBe('2:30 pm');
    expect(shutByLines([at('19:44'), at('19:34')], us)).toEqual([]);
  });

  test('is told by garden where they differ much, and by clock where they keep several', () => {
    expect(shutByLines([at('19:34'), at('20:10')], us)).toEqual(['2:30 pm to 3:10 pm, by garden']);
    const both = [at('19:34'), at('13:17', 'Europe/Vienna')];
    expect(shutByWords(both, metric)).toBe('14:15 Vienna time');
    expect(shutByLines(both, metric)).toEqual(['Vienna time: 14:15', 'New York time: 14:30']);
  });
});

test('without a forecast the last figures come with their age, else the coldest of late', () => {
  const lines = [
    lastKnownLine({ kind: 'old-forecast', lowC: -5, ageMs: 26 * 3_600_000 }, us),
    lastKnownLine({ kind: 'coldest-lately', lowC: -5 }, metric),
    lastKnownLine({ kind: 'nothing' }, us),
  ];
  expect(lines).toEqual([
    'The last one I had, 26 hours old, said an outside low of about 23 °F. Cover as for a colder night than that.',
    'The coldest of the last two weeks was about −5 °C: cover as for that night.',
    'Cover as for the coldest night you have had lately.',
  ]);
});

test('a night is named as people at the garden would', () => {
  const words = (now: string, zone = 'America/New_York') => nightWhen('2026-12-01', new Date(now), zone);
  expect(words('2026-12-01T17:00:00Z')).toBe('tonight');
  expect(words('2026-12-01T02:00:00Z')).toBe('tomorrow night');
  expect(words('2026-12-01T02:00:00Z', 'Pacific/Auckland')).toBe('tonight');
  expect(words('2026-11-29T17:00:00Z')).toBe('on Tuesday night');
});
