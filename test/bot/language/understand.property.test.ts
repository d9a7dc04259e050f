import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsiusFrom } from '../../../bot/ground/units.ts';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { LONGEST_QUESTION, understand, understandUnbounded } from '../../../bot/language/understand.ts';
import type { Understood } from '../../../bot/language/understood.ts';
import { cropNames, ORDINARY_WORDS } from '../../../rules/index.ts';

const vocabulary = cropVocabulary();
const read = (text: string, locale = 'en-US') =>
  understand(text, { vocabulary, locale, hasPlace: true, hasBeds: true });

const CROPS = cropNames().filter(({ kind, phrase }) => kind === 'name' && !ORDINARY_WORDS.has(phrase));
const cropPhrase = fc.constantFrom(...CROPS.map(({ phrase }) => phrase));
const coverPhrase = fc.constantFrom('under a blanket', 'in a cold frame', 'under fleece', 'in a high tunnel', 'bare');
const nightPhrase = fc.constantFrom('tonight', 'tomorrow night', 'on friday night', '');
const fahrenheit = fc.integer({ min: -40, max: 60 });

/** Everything that an answer turns on. */
function meaning({ intent, crops, unknownCrops, choices, lowC, covers, options, when, hardened, sky }: Understood) {
  const ids = crops.map(({ id }) => id).sort();
  return { intent, ids, unknownCrops, choices, lowC, covers, options, when, hardened, sky };
}

describe('the meaning of a question', () => {
  it('does not change with the order of its phrases', () => {
    fc.assert(
      fc.property(
        fc.record({ crop: cropPhrase, low: fahrenheit, cover: coverPhrase, night: nightPhrase }),
        fc.integer({ min: 0, max: 23 }),
        ({ crop, low, cover, night }, turn) => {
          const phrases = [crop, `${low} F`, cover, night].filter((phrase) => phrase !== '');
          expect(meaning(read(permuted(phrases, turn).join(', ')))).toEqual(meaning(read(phrases.join(', '))));
        },
      ),
    );
  });

  it('does not change with capitals', () => {
    const byCase = fc.constantFrom(
      (text: string) => text.toUpperCase(),
      (text: string) => text.replace(/\b\w/g, (letter) => letter.toUpperCase()),
    );
    fc.assert(
      fc.property(cropPhrase, fahrenheit, coverPhrase, byCase, (crop, low, cover, inCase) => {
        const question = `will my ${crop} survive ${low} f ${cover} tonight`;
        expect(meaning(read(inCase(question)))).toEqual(meaning(read(question)));
      }),
    );
  });

  it('does not change with the marks at its end and the spaces between its words', () => {
    const marks = fc.constantFrom('', '?', '??', '!', '...', ' ?!', '.');
    fc.assert(
      fc.property(
        cropPhrase,
        fahrenheit,
        coverPhrase,
        marks,
        fc.integer({ min: 1, max: 4 }),
        (crop, low, cover, end, gap) => {
          const question = `will ${crop} survive ${low} F ${cover}`;
          const spaced = `  ${question.replaceAll(' ', ' '.repeat(gap))}${end}\n`;
          expect(meaning(read(spaced))).toEqual(meaning(read(question)));
        },
      ),
    );
  });

  it('does not change with the spelling of the unit or of the minus sign', () => {
    const unit = fc.constantFrom(
      'C',
      '°C',
      ' °C',
      'º C',
      ' degrees C',
      ' celsius',
      '℃',
      ' deg C',
      ' centigrade',
      'ｃ',
      ' ˚c',
    );
    const minus = fc.constantFrom('-', '−', '–', '－', 'minus ', 'negative ', '‑', '﹣', '— '.trim());
    fc.assert(
      fc.property(cropPhrase, fc.integer({ min: 1, max: 40 }), unit, minus, (crop, below, inUnit, sign) => {
        const { lowC, temperature } = read(`will ${crop} survive ${sign}${below}${inUnit} under fleece`);
        expect({ lowC, reason: temperature?.unitReason }).toEqual({ lowC: -below, reason: 'said' });
      }),
    );
  });

  it('is the same for a number in digits, in full-width digits and in words', () => {
    fc.assert(
      fc.property(cropPhrase, fc.integer({ min: 0, max: 99 }), (crop, low) => {
        const lowOf = (number: string) => read(`${crop} at ${number} fahrenheit`).lowC;
        const wide = [...String(low)].map((digit) => String.fromCharCode(digit.charCodeAt(0) + 0xfee0)).join('');
        expect(lowOf(String(low))).toBeCloseTo(celsiusFrom(low), 9);
        expect(lowOf(wide)).toBeCloseTo(celsiusFrom(low), 9);
        expect(lowOf(inWords(low))).toBeCloseTo(celsiusFrom(low), 9);
      }),
    );
  });

  it('takes the colder end of any range, whichever end is named first', () => {
    fc.assert(
      fc.property(fahrenheit, fahrenheit, fc.constantFrom(' to ', ' or ', '/'), (one, other, link) => {
        const { lowC } = read(`kale at ${one}${link}${other} F`);
        expect(lowC).toBeCloseTo(celsiusFrom(Math.min(one, other)), 9);
      }),
    );
  });
});

describe('any text at all', () => {
  const words = fc.array(
    fc.oneof(
      fc.constantFrom(
        ...'will my the kale spinach survive under blanket tunnel fleece or in at no 14 -5 F C ° degrees'.split(' '),
      ),
      fc.constantFrom(
        ...'below zero teens low 20s tonight bed 3 open shut pick sow candle snow and , ? - − ( " layers of two'.split(
          ' ',
        ),
      ),
      fc.string({ unit: 'grapheme', maxLength: 8 }),
    ),
    { maxLength: 30 },
  );
  const anyText = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 300 }),
    fc.string({ unit: 'grapheme', maxLength: 300 }),
    words.map((each) => each.join(' ')),
  );

  it('is read without an error, and is given no crop and no low that it does not hold', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { crops, unknownCrops, lowC, covers } = read(text);
        for (const said of [...crops.map((crop) => crop.said), ...unknownCrops])
          expect(folded(text)).toContain(folded(said));
        if (lowC !== undefined) expect(text.normalize('NFKC')).toMatch(NUMBER_LIKE);
        if (covers !== undefined) expect(text).not.toBe('');
      }),
      { numRuns: 400 },
    );
  });

  it('yields no crop when it is made of letters that name none', () => {
    const nonsense = fc
      .array(fc.constantFrom(...'bcdfghjkqvwxz'), { minLength: 6, maxLength: 12 })
      .map((letters) => letters.join(''));
    fc.assert(
      fc.property(nonsense, (word) => {
        const { intent, crops, unknownCrops } = read(`will my ${word} survive 14F under a blanket`);
        expect({ intent, crops, unknownCrops }).toEqual({ intent: 'unknown-crop', crops: [], unknownCrops: [word] });
      }),
    );
  });

  it('is declined when it is longer than a question is, and is read all the same without the limit', () => {
    const long = `will my spinach survive 14F${' please'.repeat(LONGEST_QUESTION / 6)}`;
    expect(read(long).problem).toBe('too-long');
    expect(understandUnbounded(long, { vocabulary }).crops).toEqual([{ id: 'spinach', said: 'spinach' }]);
  });

  it('is read twice with the same result', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(read(text)).toEqual(read(text));
      }),
    );
  });
});

const NUMBER_LIKE =
  /\d|zero|nought|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|teen|twenty|thirty|forty|fourty|fifty|sixty|seventy|eighty|ninety|hundred|twenties|thirties|forties|single (digit|figure)|freezing/i;

/** As the reader compares words: no case, no accents, no apostrophes, single spaces. */
function folded(text: string): string {
  return text
    .replace(/\p{Cf}|\ufe0f/gu, '')
    .normalize('NFKD')
    .replace(/\p{M}|['’‘‛ʼ´`]/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '');
}

function permuted<T>(items: readonly T[], turn: number): readonly T[] {
  const rest = [...items];
  let left = turn;
  return items.map((_, index) => {
    const size = items.length - index;
    const [picked] = rest.splice(left % size, 1);
    left = Math.floor(left / size);
    return picked as T;
  });
}

function inWords(value: number): string {
  const units =
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
      ' ',
    );
  const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
  if (value < 20) return units[value] ?? '';
  const ten = tens[Math.floor(value / 10) - 2] ?? '';
  return value % 10 === 0 ? ten : `${ten}-${units[value % 10]}`;
}
