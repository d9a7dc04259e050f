import { CAUTION_KEYS, type CautionKey } from '../../rules/index.ts';
import type { Cue } from './cue-words-table.ts';
import { isCue, type Span, senseOf } from './span.ts';

/** Cautions that are answered before anything else is. */
const ALWAYS_FIRST: ReadonlySet<CautionKey> = new Set<CautionKey>([
  'fuel-heat',
  'electric-heat',
  'treated-timber',
  'antifreeze',
  'salt',
  'hot-water',
  'nitrate',
  'rhubarb',
  'potato',
]);

export interface CautionFacts {
  readonly spans: readonly Span[];
  readonly cropIds: readonly string[];
  /** A frame or tunnel is named. */
  readonly hasRoof: boolean;
  readonly hasLow: boolean;
  readonly says: (...cues: readonly Cue[]) => boolean;
}

/** Cautions that several words make together; those that one word makes stand in the table of hazards. */
const TOPIC_RULES: readonly { readonly topic: CautionKey; readonly when: (facts: CautionFacts) => boolean }[] = [
  { topic: 'rhubarb', when: (facts) => facts.cropIds.includes('rhubarb') && asksOfEatingAfterFrost(facts) },
  { topic: 'potato', when: (facts) => facts.cropIds.includes('potato') && asksOfEatingAfterFrost(facts) },
  {
    topic: 'nitrate',
    when: ({ spans, hasLow }) =>
      spans.some((span, at) => isInfant(span, at, spans) && !(hasLow && KIN.has(span.plain))),
  },
  { topic: 'snow-load', when: weighsOnRoof },
  {
    topic: 'frozen-leaves',
    when: (facts) => facts.says('frozen') && facts.says('pick', 'eat') && !isUnsafeCrop(facts),
  },
];

/** What in a question can hurt somebody. */
export function cautionTopics(facts: CautionFacts): readonly CautionKey[] {
  const named = facts.spans.flatMap((span) => senseOf(span, 'hazard')?.topics ?? []);
  const made = TOPIC_RULES.filter(({ when }) => when(facts)).map(({ topic }) => topic);
  return CAUTION_KEYS.filter((key) => named.includes(key) || made.includes(key));
}

/** Is the caution itself what is asked for? */
export function isCautionQuestion(topics: readonly CautionKey[], asksOfCrop: boolean): boolean {
  return topics.some((topic) => ALWAYS_FIRST.has(topic) || (topic !== 'frozen-leaves' && !asksOfCrop));
}

function isUnsafeCrop({ cropIds }: CautionFacts): boolean {
  return cropIds.includes('rhubarb') || cropIds.includes('potato');
}

/** "Can I eat rhubarb after a frost?", but not "will rhubarb survive a frost?" */
function asksOfEatingAfterFrost({ says, spans }: CautionFacts): boolean {
  if (says('eat')) return true;
  const isAfter = says('frozen') || (says('frost') && spans.some(({ plain }) => plain === 'after'));
  return isAfter && !says('survive', 'harm', 'at-temperature');
}

/** "Snow is piling on my tunnel". */
function weighsOnRoof({ says, spans, hasRoof, hasLow, cropIds }: CautionFacts): boolean {
  const falls = spans.some((span) => senseOf(span, 'sky')?.sky.snow === true);
  const lies = spans.some((span) => senseOf(span, 'cover')?.key === 'snow') && says('under-load');
  const isForRoof = cropIds.length === 0 && !hasLow && says('worry', 'risk', 'survive', 'fine', 'harm', 'fare');
  const roof = hasRoof || says('lid') || spans.some((span) => span.plain === 'roof' || isGlass(span));
  const isAsked =
    cropIds.length === 0 &&
    spans.some(({ plain }) => /^(brush|clear|shovel|leave|wet|heavy|rain|powder|dry|melt)/.test(plain));
  const snows = falls || spans.some(({ plain }) => plain.includes('snow'));
  return roof && (lies || (snows && (says('under-load', 'safely') || isForRoof || isAsked)));
}

function isGlass(span: Span): boolean {
  return senseOf(span, 'hazard')?.topics.includes('glass') ?? false;
}

/** Of any age: beside a low they are those who garden. */
const KIN: ReadonlySet<string> = new Set(['my son', 'my daughter', 'babies', 'baby', 'little one']);

/** A child, not "baby kale" or "baby leaf". */
function isInfant(span: Span, at: number, spans: readonly Span[]): boolean {
  if (!isCue(span, 'infant')) return false;
  const next = spans[at + 1];
  return span.plain !== 'baby' || !(senseOf(next, 'crop') || next?.plain.startsWith('lea'));
}
