import { type Facts, follows, namesPlant } from './facts.ts';
import type { IntentRule } from './intent-rule.ts';
import { isCue, type Span, senseOf } from './span.ts';

/** "Can I pick the kale this morning?" */
export const PICK: IntentRule = {
  intent: 'pick',
  when: [
    ({ says }) => says('eat') && says('frozen', 'frost'),
    ({ says, spans }) => says('when') && spans.some(({ plain }) => plain.startsWith('thaw')),
    asksToPick,
    asksToLiftRoots,
  ],
  unless: [({ says }) => says('compare'), ({ spans }) => spans.some(isSowing), isAsideInSurvival],
};

function asksToPick(facts: Facts): boolean {
  const { says, spans, when } = facts;
  const picks = says('pick') && !follows(spans, 'pick', 'off', 2);
  const asks =
    says('when', 'should', 'can', 'what', 'which', 'fine', 'frozen', 'need', 'frost') || isCue(spans[0], 'pick');
  const something = namesPlant(facts) || says('garden', 'frost', 'frozen', 'it', 'everything') || when !== undefined;
  return picks && asks && something;
}

/** "Should I lift my carrots?": roots are lifted out of the soil, lids off it. */
function asksToLiftRoots({ spans, says }: Facts): boolean {
  const lifts = spans.some(
    ({ plain }, at) => plain.startsWith('lift') && spans.slice(at + 1, at + 3).some((next) => senseOf(next, 'crop')),
  );
  return lifts && says('should', 'when', 'can', 'need');
}

/** "Will lettuce survive 20F if I pick it hard?" */
function isAsideInSurvival({ hasLow, says }: Facts): boolean {
  return hasLow && says('survive', 'harm') && !says('should', 'when', 'can', 'eat');
}

/** "When do I sow spinach for winter?", "When are the ten-hour days?" */
export const SEASON: IntentRule = {
  intent: 'season',
  when: [
    ({ says }) => says('calendar'),
    ({ says, hasLow, hasCrop }) => says('daylight') && !(hasLow && hasCrop),
    ({ says, hasLow }) => says('growth') && says('when', 'will') && !hasLow,
    asksToSow,
  ],
};

function asksToSow(facts: Facts): boolean {
  const { says, spans, hasLow } = facts;
  const sows = spans.some((span, at) => isCue(span, 'sow') && isVerbAt(spans, at));
  const asks = says('when', 'late', 'can', 'should', 'what', 'winter', 'which') || spans.length <= SHORT_QUESTION;
  return sows && asks && !hasLow && !says('cover', 'survive');
}

const SHORT_QUESTION = 4;

/** "plant" and "seed" are things as well as deeds. */
function isVerbAt(spans: readonly Span[], at: number): boolean {
  const before = spans[at - 1];
  return !isCue(before, 'mine', 'the', 'it') && before?.plain !== 'a';
}

function isSowing({ plain }: Span): boolean {
  return plain.startsWith('sow');
}
