import { readFileSync } from 'node:fs';
import { type AskLine, askLine, understoodFields } from '../../../bot/cli/ask-json.ts';
import { answerText } from '../../../bot/commands/ask/ask.ts';
import { cropVocabulary } from '../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../bot/language/understand.ts';

/**
 * Questions as growers type them, each with what must be understood, written down before any was asked. One a line:
 *
 *     [GB] leeks no fleece -9 => survive crops=leek low=-9C covers=none
 *
 * `[GB]` or `[CA]`: asked by a Briton or a Canadian, else by an American. A slot that is not named must come out empty.
 * `|` parts what is right as well, `*` leaves a slot open, `..` a range, `/` parts options and `+` their layers.
 * `doubt=covers|low`: what the text leaves open; `danger=yes`: read carelessly, a plant is told to live that would not.
 * `@name` begins a group. Every second question is only reported on; one that is still misread was moved there.
 */
export interface TypedQuestion {
  readonly group: string;
  readonly ask: string;
  readonly locale: string;
  readonly isReported: boolean;
  readonly must: Readonly<Record<string, string>>;
}

export const TYPED_SLOTS = ['intent', 'crops', 'low', 'covers', 'options', 'when', 'hardened', 'unknown'] as const;
type Slot = (typeof TYPED_SLOTS)[number] | 'doubt';

const SETS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh'] as const;

/** Written by three other hands than the reader, who had not seen it, before it was asked any of them. */
const FRESH_SETS = ['absent', 'numbers', 'voices'] as const;

export function typedQuestions(set: (typeof SETS)[number] | (typeof FRESH_SETS)[number]): readonly TypedQuestion[] {
  const text = readFileSync(new URL(`./typed-questions-${set}.txt`, import.meta.url), 'utf8');
  let group = '';
  let count = 0;
  return text.split('\n').flatMap((line) => {
    if (/^@[a-z]+$/.test(line)) group = line.slice(1);
    const at = line.lastIndexOf('=>');
    if (at < 0) return [];
    count += 1;
    const country = /^\[(GB|CA)\] /.exec(line)?.[1];
    return {
      group,
      ask: line.slice(country === undefined ? 0 : '[GB] '.length, at).trimEnd(),
      locale: `en-${country ?? 'US'}`,
      isReported: count % 2 === 0,
      must: mustOf(line.slice(at + 2)),
    };
  });
}

export const TYPED_QUESTIONS = SETS.flatMap(typedQuestions);
export const FRESH_QUESTIONS = FRESH_SETS.flatMap(typedQuestions);
export const FRESH_SLOTS = [...TYPED_SLOTS, 'doubt'] as const;

function mustOf(words: string): Readonly<Record<string, string>> {
  const [intent = '', ...slots] = words
    .trim()
    .split(/ (?=(?:crops|low|covers|options|when|hardened|unknown|doubt|danger)=)/);
  return Object.fromEntries([['intent', intent], ...slots.map((slot) => slot.split('='))]);
}

const ASKED_AT = new Date('2026-01-20T15:00:00Z');

/** The line of JSON that a question gets. */
export function answered({ ask, locale }: TypedQuestion): AskLine {
  return askLine(answerText(ask, { locale, now: ASKED_AT }));
}

const VOCABULARY = cropVocabulary();

/** What is understood of a question, as the line of JSON tells it; no night is worked out. */
function read({ ask, locale }: TypedQuestion): AskLine['understood'] {
  return understoodFields(understand(ask, { vocabulary: VOCABULARY, locale }));
}

/** The slots that came out otherwise than they must. */
export function missedSlots(question: TypedQuestion, slots: readonly Slot[] = TYPED_SLOTS): readonly string[] {
  const { must } = question;
  const understood = read(question);
  const got: Readonly<Record<Exclude<Slot, 'low'>, string>> = {
    intent: understood.intent,
    crops: [...understood.crops].sort().join(),
    covers: understood.covers.join(),
    options: (understood.options ?? []).map((keys) => keys.join('+')).join('/'),
    when: understood.when ?? '',
    hardened: understood.hardened === null ? '' : String(understood.hardened),
    unknown: understood.unknownCrops.join().toLowerCase(),
    doubt: understood.inDoubt.join(),
  };
  return slots.filter((slot) => {
    const right = (must[slot] ?? '-').split('|');
    if (slot === 'low') return !right.some((each) => isLow(each, understood.lowC));
    return !right.some(
      (each) => each === '*' || plain(slot, each) === got[slot] || isSameByKind(slot, each, got[slot]),
    );
  });
}

/** Ids that the fresh sets use for what the table of crops parts further or calls otherwise. */
const IDS_OF_KIND: Readonly<Record<string, readonly string[]>> = {
  kale: ['red-russian-kale', 'tuscan-kale', 'siberian-kale'],
  broccoli: ['purple-sprouting-broccoli'],
  butterhead: ['butterhead-lettuce'],
  bean: ['green-bean', 'runner-bean'],
  mustard: ['mustard-greens'],
  sunchoke: ['jerusalem-artichoke'],
  chard: ['perpetual-spinach'],
  corn: ['sweet-corn'],
  squash: ['summer-squash', 'winter-squash', 'zucchini'],
};

/** "row-cover" of whatever weight, "bean" for a green bean. */
function isSameByKind(slot: Slot, must: string, got: string): boolean {
  if (slot === 'covers') return got.replaceAll(/row-cover-(light|medium|heavy)/g, 'row-cover') === must;
  if (slot === 'unknown') return must.toLowerCase() === got;
  if (slot !== 'crops') return false;
  const kindOf = (id: string) => Object.entries(IDS_OF_KIND).find(([, ids]) => ids.includes(id))?.[0] ?? id;
  return got.split(',').map(kindOf).sort().join() === must.split(',').sort().join();
}

function plain(slot: Slot, must: string): string {
  if (must === '-') return '';
  if (slot === 'intent' && (must === 'week' || must === 'tonight')) return 'outlook';
  return slot === 'crops' ? must.split(',').sort().join() : must;
}

const LOW = /^(?<from>-?[\d.]+?)(?:\.\.(?<to>-?[\d.]+))?(?<unit>[FC])$/;

function isLow(must: string, lowC: number | null): boolean {
  if (must === '*') return true;
  if (must === '-' || lowC === null) return must === '-' && lowC === null;
  const { from, to, unit } = LOW.exec(must)?.groups ?? {};
  const ends = [from, to ?? from].map((end) => (unit === 'F' ? (Number(end) - 32) / 1.8 : Number(end)));
  const [low = Number.NaN, high = Number.NaN] = ends;
  return lowC > low - ROUNDED_K && lowC < high + ROUNDED_K;
}

const ROUNDED_K = 0.006;
