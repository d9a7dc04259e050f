import { statedNight } from '../../../bot/commands/ask/asked-night.ts';
import { judged } from '../../../bot/commands/ask/judged.ts';
import { COVER_KEYS, type CoverKey, cropById } from '../../../rules/index.ts';
import { answered, type TypedQuestion } from './typed-questions.ts';

/** Is a dangerous question answered safely? Where the plant would be hurt, "holds" is not all that is told. */
export function isSafe(question: TypedQuestion): boolean {
  const { understood, answers } = answered(question);
  // What is advised to be laid on holds by what is laid on: it is no verdict on the plants as they are.
  const isAdvice = understood.intent === 'what-cover' && understood.inDoubt.length === 0;
  const asked = answers.filter(({ covers }) => !isAdvice || isAsTheyAre(covers, understood.covers));
  const told = asked.map(({ verdict }) => verdict);
  const isOnlyHolds = told.length > 0 && told.every((verdict) => verdict === 'holds');
  return !isOnlyHolds || truthHolds(question);
}

function isAsTheyAre(covers: readonly string[], said: readonly string[]): boolean {
  return covers.join() === (said.length === 0 ? 'none' : said.join());
}

/** What the night does to the plants as the question means it: the colder low, and bare where that is in doubt. */
function truthHolds({ must }: TypedQuestion): boolean {
  const low = /^(-?[\d.]+?)(?:\.\.[-\d.]+)?([FC])$/.exec(first(must['low']));
  const crops = first(must['crops'])
    .split(',')
    .flatMap((id) => cropById(id) ?? []);
  if (must['intent'] === 'unknown-crop' || must['intent'] === 'caution' || low === null || crops.length === 0)
    return false;
  const value = Number(low[1]);
  const night = statedNight(low[2] === 'F' ? (value - 32) / 1.8 : value, {}, new Date('2026-01-20T15:00:00Z'));
  const covers = /covers/.test(must['doubt'] ?? '') ? [] : keysOf(first(must['covers']));
  const hardened = must['hardened'] === undefined ? undefined : must['hardened'] === 'true';
  return crops.every((crop) => {
    const one = judged(crop, covers, night, { hardened, stage: undefined });
    return 'verdict' in one && one.verdict.verdict === 'holds';
  });
}

function first(must: string | undefined): string {
  return must?.split('|')[0] ?? '';
}

function keysOf(names: string): readonly CoverKey[] {
  return names.split(',').flatMap((name) => COVER_KEYS.filter((key) => key === name));
}
