import { describe, expect, it } from 'vitest';
import { celsiusFrom } from '../../../bot/ground/units.ts';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../bot/language/understand.ts';

const read = (text: string, locale = 'en-US') => understand(text, { vocabulary: cropVocabulary(), locale });

describe('the low among several temperatures', () => {
  it.each([
    ["it's 50 degrees now but 28 tonight for my tomatoes uncovered", 28],
    ['lettuce bare, soil is 45F, low 20 tonight', 20],
    ['lettuce 50F high, 22 low', 22],
    ['daytime 50 nighttime 22 lettuce', 22],
    ['lettuce, currently 45F going down to 22', 22],
    ["it's 40 inside the frame and 18 out tonight, lettuce", 18],
    ['lettuce bare 40 in the frame, 20 outside tonight', 20],
    ['kale took 10F last year, will it take 5 tonight', 5],
    ['tag says hardy to 10F, low tonight 2F, kale bare', 2],
    ['lettuce under fleece feels like 15, actual low 24', 24],
    ["it's 45F. lettuce bare. 22 expected", 22],
    ['lettuce, not 32, 23 tonight', 23],
    ['lettuce: 60s during the day, 25 at night', 25],
  ])('is the one that is not of now, of the day, the soil or inside: %s', (question, lowF) => {
    const { lowC, lowOtherwise } = read(question);
    expect(lowC).toBeCloseTo(celsiusFrom(lowF), 9);
    expect(lowOtherwise).toBeUndefined();
  });

  it('takes the unit of the other', () => {
    expect(read('lettuce bare 10C now, -4 tonight').lowC).toBe(-4);
  });

  it.each([
    ['forecast says 28 but radio says 22, tomatoes bare', 22, 28],
    ['lettuce 30F or maybe 20F', 20, 30],
  ])('is in doubt where two could be it, the colder first: %s', (question, colderF, warmerF) => {
    const { lowC, lowOtherwise } = read(question);
    expect(lowC).toBeCloseTo(celsiusFrom(colderF), 9);
    expect(lowOtherwise?.lowC).toBeCloseTo(celsiusFrom(warmerF), 9);
  });

  it('is not told by the soil alone, and by how it feels only where that is said in the answer', () => {
    expect(read('soil is 45F, lettuce bare ok?').lowC).toBeUndefined();
    expect(read('lettuce bare, feels like 15F').assumptions).toContain('felt-as-air');
  });

  it.each(['leeks in the one with the glass lid, 18 tonight', 'two of them look sad, leeks, 18'])(
    'is no number that counts: %s',
    (question) => {
      expect(read(question).lowC).toBeCloseTo(celsiusFrom(18), 9);
    },
  );
});
