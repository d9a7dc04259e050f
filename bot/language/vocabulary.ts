import type { WallKey } from '../../rules/index.ts';
import { ADVICE_WORDS } from './advice-words-table.ts';
import { type CoverPairs, coverPairs } from './cover-pairs.ts';
import {
  BARE_WORDS,
  COVER_WORDS,
  LAYER_WORDS,
  OTHER_COVER_WORDS,
  WALL_WORDS,
  WEIGHT_WORDS,
} from './cover-words-table.ts';
import { CRITICAL_WORDS, TELLING_WORDS } from './critical-words-table.ts';
import { type CropWords, cropEntries } from './crop-entries.ts';
import { CUE_WORDS, type Cue } from './cue-words-table.ts';
import { HAZARD_WORDS } from './hazard-words-table.ts';
import { NEUTRAL_PHRASES } from './neutral-phrases-table.ts';
import { OTHER_NUMBERS, TEN_NUMBERS, UNIT_NUMBERS } from './number-words-table.ts';
import { isOrdinaryWord } from './ordinary-words.ts';
import { PhraseTrie } from './phrase-trie.ts';
import { phrasesOf, spellingsOf, wordsOf } from './phrases.ts';
import { STATE_WORDS } from './plant-state-words-table.ts';
import { NAMESAKES, OTHER_PLANTS } from './plant-words-table.ts';
import type { Entry, Sense, Weight } from './sense.ts';
import { SKY_WORDS } from './sky-words-table.ts';
import { SpellingIndex } from './spelling-index.ts';
import type { When } from './understood.ts';
import { WHEN_WORDS } from './when-words-table.ts';

/** All phrases that can be understood. Built once; reading never changes it. */
export interface Vocabulary {
  readonly trie: PhraseTrie;
  readonly spelling: SpellingIndex;
  /** Names of covers in two words, for slips that make another English word: "cold fame". */
  readonly pairs: CoverPairs;
  readonly crops: CropWords;
}

export function buildVocabulary(crops: CropWords): Vocabulary {
  const trie = new PhraseTrie();
  const spelling = new SpellingIndex();
  const named = cropEntries(crops);
  const names = new Set(named.map(([phrase]) => phrase));
  const plants = [OTHER_PLANTS, NAMESAKES]
    .flatMap((row) => phrasesOf(row))
    .flatMap(spellingsOf)
    .filter((phrase) => !names.has(phrase))
    .map((phrase): Entry => [phrase, { kind: 'plant' }]);
  for (const [phrase, sense] of [...named, ...plants, ...coverEntries(), ...nightEntries(), ...cueEntries()]) {
    trie.add(wordsOf(phrase), sense);
  }
  for (const word of [...UNIT_NUMBERS.keys(), ...TEN_NUMBERS.keys(), ...OTHER_NUMBERS.keys()]) spelling.know(word);
  for (const word of adviceWords()) spelling.know(word);
  for (const word of [...phrasesOf(CRITICAL_WORDS), ...bareWords()]) spelling.offerCritical(word);
  for (const word of phrasesOf(TELLING_WORDS)) spelling.offerUsual(word);
  trie.forEachWord(isPlainName, (word, such) => {
    if (such) spelling.offerUsual(word);
  });
  trie.forEachWord(isWorthCorrecting, (word, such) => {
    spelling.know(word);
    if (such && !isOrdinaryWord(word)) spelling.offer(word);
  });
  return { trie, spelling, pairs: coverPairs(coverEntries().map(([phrase]) => phrase)), crops };
}

/** What questions for advice are made of: "dusk" is no duck, "mist" is not most. */
function adviceWords(): readonly string[] {
  const rows = ADVICE_WORDS.flatMap(({ says, unless }) => [...says, ...(unless === undefined ? [] : [unless])]);
  return rows.flatMap((row) => phrasesOf(row)).flatMap((phrase) => wordsOf(phrase.replaceAll('*', '')));
}

/** Denials of one word: "umulched" must not become "mulched". */
function bareWords(): readonly string[] {
  return BARE_WORDS.filter(({ fronts }) => fronts === undefined)
    .flatMap(({ phrases }) => phrasesOf(phrases))
    .filter((phrase) => /^(?:un|non)[a-z]+$/.test(phrase));
}

/** Varieties and common misspellings are no words to mend others into. */
function isPlainName(sense: Sense): boolean {
  return sense.kind !== 'crop' || !(sense.variety || sense.misspelt);
}

/** A slip is looked for in what a question turns on: crops, covers and a few verbs. */
function isWorthCorrecting(sense: Sense): boolean {
  if (sense.kind === 'crop') return !sense.variety && !sense.misspelt && !sense.ordinary;
  if (sense.kind === 'cue') return CORRECTED_CUES.has(sense.cue);
  return sense.kind === 'cover' || sense.kind === 'layers';
}

const CORRECTED_CUES: ReadonlySet<Cue> = new Set<Cue>([
  'survive',
  'cover',
  'pick',
  'under',
  'degrees',
  'fahrenheit',
  'celsius',
  'limit',
  'minus',
]);

function rowEntries(row: string, sense: Sense, fronts?: string): readonly Entry[] {
  return phrasesOf(row, fronts).map((phrase) => [phrase, sense]);
}

function cueEntries(): readonly Entry[] {
  return Object.entries(CUE_WORDS).flatMap(([cue, row]) => rowEntries(row, { kind: 'cue', cue: cue as Cue }));
}

function coverEntries(): readonly Entry[] {
  const covers = COVER_WORDS.flatMap(({ key, fronts, phrases, assumes }) => {
    const sense: Sense = { kind: 'cover', key, ...(assumes && { assumes }) };
    const spellings = new Set(phrasesOf(phrases, fronts).flatMap(spellingsOf));
    return [...spellings].map((phrase): Entry => [phrase, sense]);
  });
  return [
    ...covers,
    ...BARE_WORDS.flatMap(({ phrases, fronts }) => rowEntries(phrases, { kind: 'bare' }, fronts)),
    ...rowEntries(OTHER_COVER_WORDS, { kind: 'other-cover' }),
    ...Object.entries(WEIGHT_WORDS).flatMap(([weight, row]) =>
      rowEntries(row, { kind: 'weight', weight: weight as Weight }),
    ),
    ...Object.entries(LAYER_WORDS).flatMap(([count, row]) =>
      rowEntries(row, count === 'any' ? { kind: 'layers' } : { kind: 'layers', count: Number(count) }),
    ),
    ...Object.entries(WALL_WORDS).flatMap(([walls, row]) =>
      rowEntries(row, { kind: 'walls', walls: walls as WallKey }),
    ),
  ];
}

function nightEntries(): readonly Entry[] {
  return [
    ...Object.entries(WHEN_WORDS).flatMap(([when, row]) =>
      rowEntries(row, { kind: 'when', when: when as When | 'tomorrow' }),
    ),
    ...STATE_WORDS.flatMap(({ phrases, fronts, ...state }) => rowEntries(phrases, { kind: 'state', ...state }, fronts)),
    ...SKY_WORDS.flatMap(({ phrases, sky }) => rowEntries(phrases, { kind: 'sky', sky })),
    ...HAZARD_WORDS.flatMap(({ phrases, topics, fronts }) => rowEntries(phrases, { kind: 'hazard', topics }, fronts)),
    ...rowEntries('bed, beds, raised bed, raised beds, bed number, bed no, beds number', { kind: 'bed' }),
    ...rowEntries(NEUTRAL_PHRASES, { kind: 'ordinary' }),
  ];
}
