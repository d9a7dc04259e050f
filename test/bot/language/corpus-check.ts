import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../bot/language/understand.ts';
import type { Understood } from '../../../bot/language/understood.ts';
import type { CorpusQuestion, Expected } from './corpus-question.ts';

export const VOCABULARY = cropVocabulary();

/** A slot of a question that came out otherwise than it must. */
export interface Miss {
  readonly slot: string;
  readonly expected: string;
  readonly got: string;
}

export const SLOTS = [
  'intent',
  'crops',
  'unknown',
  'choices',
  'low',
  'unit',
  'hours',
  'covers',
  'options',
  'unknownCovers',
  'walls',
  'when',
  'hardened',
  'stage',
  'sky',
  'beds',
  'cautions',
  'missing',
  'problem',
] as const;

type Slots = Readonly<Record<(typeof SLOTS)[number], unknown>>;

/** Asked as the corpus says: °F, with a place and beds, unless a row says otherwise. */
export function asked({ ask, after, celsius, nowhere }: CorpusQuestion): Understood {
  const context = {
    vocabulary: VOCABULARY,
    locale: celsius ? 'de-DE' : 'en-US',
    hasPlace: !nowhere,
    hasBeds: !nowhere,
    bedNames: ['north bed', 'south frame'],
  };
  if (after === undefined) return understand(ask, context);
  return understand(ask, { ...context, previous: understand(after, context) });
}

export function missesOf(question: CorpusQuestion): readonly Miss[] {
  const got = slotsGot(asked(question));
  const expected = slotsExpected(question);
  return SLOTS.flatMap((slot) => {
    const [must, is] = [JSON.stringify(expected[slot]), JSON.stringify(got[slot])];
    return must === is ? [] : [{ slot, expected: must ?? 'nothing', got: is ?? 'nothing' }];
  });
}

function slotsGot(understood: Understood): Slots {
  const { sky, beds, temperature } = understood;
  return {
    intent: understood.intent,
    crops: understood.crops.map(({ id }) => id),
    unknown: understood.unknownCrops.map((said) => said.toLowerCase()),
    choices: understood.choices,
    low: understood.lowC === undefined ? undefined : tenths(understood.lowC),
    unit: understood.lowC === undefined ? undefined : temperature?.unitReason,
    hours: temperature?.hours,
    covers: understood.covers,
    options: understood.options,
    unknownCovers: understood.unknownCovers,
    walls: understood.walls,
    when: understood.when,
    hardened: understood.hardened,
    stage: understood.stage,
    sky: [sky?.cloud, sky?.wind, sky?.snow],
    beds: [beds.mine, beds.numbers, beds.named],
    cautions: [...understood.cautionTopics].sort(),
    missing: understood.missing,
    problem: understood.problem,
  };
}

function slotsExpected({ intent, expected }: CorpusQuestion): Slots {
  const low = lowExpected(expected);
  return {
    intent,
    crops: expected.crops ?? [],
    unknown: expected.unknown ?? [],
    choices: expected.choices ?? [],
    low,
    unit: low === undefined ? undefined : (expected.unit ?? 'said'),
    hours: expected.hours,
    covers: expected.covers,
    options: expected.options,
    unknownCovers: expected.unknownCovers ?? [],
    walls: expected.walls,
    when: expected.when,
    hardened: expected.hardened,
    stage: expected.stage,
    sky: [expected.cloud, expected.wind, expected.snow],
    beds: [expected.mine ?? false, expected.beds ?? [], expected.named ?? []],
    cautions: [...(expected.cautions ?? [])].sort(),
    missing: expected.missing,
    problem: expected.problem,
  };
}

function lowExpected({ lowF, lowC }: Expected): number | undefined {
  if (lowF !== undefined) return tenths(((lowF - 32) * 5) / 9);
  return lowC === undefined ? undefined : tenths(lowC);
}

function tenths(celsius: number): number {
  return Math.round(celsius * 10) / 10 + 0;
}
