import { describe, expect, it } from 'vitest';
import { COVER_WORDS } from '../../../bot/language/cover-words-table.ts';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { phrasesOf } from '../../../bot/language/phrases.ts';
import { understand } from '../../../bot/language/understand.ts';
import { buildVocabulary } from '../../../bot/language/vocabulary.ts';
import { AMBIGUOUS_WORDS, cropNames, GROUP_WORDS, ORDINARY_WORDS } from '../../../rules/index.ts';

const vocabulary = cropVocabulary();
const read = (text: string) => understand(text, { vocabulary });
const unsure = new Set(AMBIGUOUS_WORDS.map(({ word }) => word));

describe('the words of the crop table', () => {
  const certain = cropNames().filter(({ phrase }) => !ORDINARY_WORDS.has(phrase) && !unsure.has(phrase));

  it('are each understood as their crop in a question', () => {
    const wrong = certain.filter(({ cropId, phrase }) => {
      const { crops, intent } = read(`will my ${phrase} survive 14 F under a blanket?`);
      return intent !== 'survive' || crops.map(({ id }) => id).join() !== cropId;
    });
    expect(wrong).toEqual([]);
  });

  it('are understood with nothing but a temperature beside them', () => {
    const wrong = certain.filter(
      ({ cropId, phrase }) =>
        read(`${phrase} 14F`)
          .crops.map(({ id }) => id)
          .join() !== cropId,
    );
    expect(wrong).toEqual([]);
  });

  it('keep their crop behind the name of a variety', () => {
    const varieties = cropNames().filter(({ kind }) => kind === 'variety');
    const nameOf = new Map(
      cropNames()
        .filter(({ kind }) => kind === 'name')
        .map(({ cropId, phrase }) => [cropId, phrase]),
    );
    const wrong = varieties.filter(({ cropId, phrase }) => {
      const name = nameOf.get(cropId) ?? '';
      const { crops, lowC } = read(`will ${phrase} ${name} survive 14 F`);
      return crops.map(({ id }) => id).join() !== cropId || lowC !== -10;
    });
    expect(wrong).toEqual([]);
  });

  it('that are several crops are asked back, or the usual one is taken and said', () => {
    for (const { word, usualId } of AMBIGUOUS_WORDS) {
      const { crops, choices, missing } = read(`will ${word} survive 14 F`);
      if (usualId === undefined) expect({ word, crops, missing }).toEqual({ word, crops: [], missing: 'crop-choice' });
      else expect({ word, ids: crops.map(({ id }) => id), choices }).toEqual({ word, ids: [usualId], choices: [] });
    }
  });

  it('need no code for a crop that is added to the table', () => {
    const grown = buildVocabulary({
      names: [...cropNames(), { cropId: 'moonroot', phrase: 'moonroot', kind: 'name' }],
      ambiguous: AMBIGUOUS_WORDS,
      groups: GROUP_WORDS,
      ordinary: ORDINARY_WORDS,
    });
    expect(read('will moonroots survive 14F').intent).toBe('unknown-crop');
    const { intent, crops } = understand('will moonroots survive 14F', { vocabulary: grown });
    expect({ intent, crops }).toEqual({ intent: 'survive', crops: [{ id: 'moonroot', said: 'moonroots' }] });
  });
});

describe('the words of the cover table', () => {
  it('are each understood as their cover', () => {
    const wrong = COVER_WORDS.flatMap(({ key, phrases, fronts }) =>
      phrasesOf(phrases, fronts).filter((phrase) => {
        const { covers, crops } = read(`spinach at 14 F, ${phrase}`);
        const alone = key === 'hoops' ? 'low-tunnel' : key;
        return covers?.join() !== alone || crops.length !== 1;
      }),
    );
    expect(wrong).toEqual([]);
  });
});
