import { describe, expect, test } from 'vitest';
import { bedLine, siteLine } from '../../../bot/text/learned-words.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { type BedLearning, bedLearning } from '../../../rules/index.ts';

const GB = readerOf('en-GB');
const US = readerOf('en-US');
const LAID = { covers: ['cold-frame'] as const };
const BED = { name: 'Long bed', covers: LAID.covers };

function learned(
  offsets: { site?: number; cover?: number },
  nights: { outside?: number; under?: number },
): BedLearning {
  const none = bedLearning([], { laid: LAID, epochDays: 0 });
  return {
    ...none,
    belief: { ...none.belief, siteOffsetK: offsets.site ?? 0, coverOffsetK: offsets.cover ?? 0 },
    outsideNights: nights.outside ?? 0,
    underCoverNights: nights.under ?? 0,
  };
}

describe('what a bed has learned', () => {
  test('is said as a difference from the book, in the reader’s degrees, with its nights', () => {
    expect(bedLine(BED, learned({ cover: 1.4 }, { under: 9 }), GB)).toBe(
      'Long bed: your cold frame has run 1.5 °C warmer than the book, from 9 nights.',
    );
    expect(bedLine(BED, learned({ cover: -2 }, { under: 1 }), US)).toBe(
      'Long bed: your cold frame has run 4 °F colder than the book, from 1 night.',
    );
  });

  test('is said to be nothing where a thermometer could not tell it', () => {
    expect(bedLine(BED, learned({ cover: 0.2 }, { under: 9 }), GB)).toContain('runs as the book says, from 9 nights');
    expect(bedLine(BED, learned({ cover: 0.2 }, { under: 1 }), GB)).toContain('as the book says so far, from 1 night.');
  });

  test('is not spoken of before a reading under the cover', () => {
    expect(bedLine(BED, learned({ site: 2 }, { outside: 9 }), GB)).toBeUndefined();
  });
});

describe('what a place has learned', () => {
  test('is said as a difference from the forecast', () => {
    expect(siteLine(learned({ site: -1.9 }, { outside: 12 }), GB)).toBe(
      'Nights here have run 2 °C colder than the forecast, from 12 nights.',
    );
  });

  test('is not worth a word where it is small, or nothing was read outside', () => {
    expect(siteLine(learned({ site: 0.3 }, { outside: 12 }), GB)).toBeUndefined();
    expect(siteLine(learned({ site: 3 }, {}), GB)).toBeUndefined();
  });
});
