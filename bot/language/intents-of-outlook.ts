import { type Facts, isFragment, namesPlant } from './facts.ts';
import type { IntentRule } from './intent-rule.ts';
import { isCue, type Span } from './span.ts';

/** "Do I need to cover tonight?", "which nights this week are bad?": the night itself, no crop, low or bed named. */
export const OUTLOOK: IntentRule = {
  intent: 'outlook',
  when: [asksWhetherToCover, asksOfNights, asksHowNightLooks],
  unless: [
    namesPlant,
    ({ hasLow, hasBed, optionCount }) => hasLow || hasBed || optionCount > 1,
    ({ says }) => says('everything', 'garden', 'with', 'how') && says('cover'),
    ({ spans, says }) => isCue(spans[0], 'what', 'which') && says('cover', 'leave', 'need') && !says('nights'),
  ],
};

/** "Cover or not?", "do I need the fleece tonight?" */
function asksWhetherToCover(facts: Facts): boolean {
  const { says, when, hasCover } = facts;
  const laying = says('cover') || hasCover;
  if (!laying || says('survive', 'limit', 'when', 'layers', 'remedy')) return false;
  const asks = says('should', 'need', 'or-not') || isBriefOfTonight(facts);
  return asks && (isOfNight(when) || (says('or-not') && isFragment(facts)));
}

/** "Cover tonight?" */
function isBriefOfTonight(facts: Facts): boolean {
  return facts.spans.length <= LONGEST_BRIEF && isCue(facts.spans[0], 'cover') && isFragment(facts);
}

const LONGEST_BRIEF = 4;

function isOfNight(when: Facts['when']): boolean {
  return when !== undefined && !['now', 'today', 'morning', 'last-night'].includes(when);
}

/** "Which nights are bad?", "when is the coldest night?", "does the cold let up soon?" */
function asksOfNights({ says, spans, when }: Facts): boolean {
  if (!says('nights') || says('survive')) return false;
  const asks = says('which', 'what', 'when', 'how', 'will', 'everything', 'need', 'should', 'cover', 'looks', 'bad');
  return asks || says('limit') || when === 'week' || spans.some(namesTheNight);
}

/** "How bad is tonight?", "what does the week look like?" */
function asksHowNightLooks({ says, when, spans }: Facts): boolean {
  const isBrief = spans.length <= LONGEST_BRIEF && says('how');
  const asks =
    isBrief ||
    (when === 'week' && says('at-temperature', 'limit', 'night-weather')) ||
    says('bad') ||
    (says('looks') && says('how', 'what', 'will', 'which'));
  return asks && isOfNight(when) && !says('garden', 'everything', 'mine', 'open', 'shut', 'pick');
}

/** "Which night", not "cold night tonight?" */
function namesTheNight({ plain }: Span): boolean {
  return /^(which|what) nights?/.test(plain);
}

/** Several nights are asked about, though no week is named. */
export function asksOfSeveralNights({ says }: Pick<Facts, 'says'>): boolean {
  return says('nights');
}
