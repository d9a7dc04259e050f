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
    asksPickOrCover,
    ({ says, spans }) => says('frozen') && spans.some(({ plain }) => plain.startsWith('touch')),
  ],
  unless: [
    (facts) => facts.says('compare') && !asksPickOrCover(facts),
    (facts) => facts.says('cover') && facts.says('what', 'which') && !namesPlant(facts) && !facts.says('frozen'),
    ({ spans }) => spans.some(isSowing),
    isAsideInSurvival,
  ],
};

function asksToPick(facts: Facts): boolean {
  const { says, spans, when } = facts;
  const picks = says('pick') && !follows(spans, 'pick', 'off', 2);
  const asks =
    says('when', 'should', 'can', 'what', 'which', 'fine', 'safely', 'frozen', 'need', 'frost') ||
    isCue(spans[0], 'pick');
  const isAsked = facts.hasLow && spans.slice(-3).some((span) => isCue(span, 'pick'));
  const ready = spans.some(({ plain }) => plain.startsWith('ready to'));
  const isOpenQuestion = says('what', 'which') && says('should', 'can');
  const something =
    isOpenQuestion || namesPlant(facts) || says('garden', 'frost', 'frozen', 'it', 'everything') || when !== undefined;
  return picks && (asks || ready || isAsked) && something;
}

/** "Pick or cover?", "cover it or bring it in?", "leave them or harvest?" */
function asksPickOrCover({ says, spans }: Facts): boolean {
  const or = spans.findIndex((span) => isCue(span, 'or'));
  const isAmong = (some: readonly Span[], ...cues: Parameters<typeof isCue>[1][]) =>
    some.some((span) => isCue(span, ...cues));
  const [before, after] = [spans.slice(0, Math.max(0, or)), spans.slice(or + 1)];
  const picks = or >= 0 && says('pick');
  return (
    picks &&
    ((isAmong(before, 'pick') && isAmong(after, 'cover', 'leave')) ||
      (isAmong(before, 'cover', 'leave') && isAmong(after, 'pick')))
  );
}

/** A night to come, not what to do after one: "before the freeze", "tonight", "when it drops to 15". */
export function isBeforeNight(facts: Facts): boolean {
  const { says, spans, when, hasLow } = facts;
  const isAfter = spans.some(({ plain }) => AFTER.has(plain)) || when === 'last-night' || when === 'morning';
  if (isAfter || says('frozen')) return false;
  const isAhead = when !== undefined && !['now', 'today'].includes(when);
  return hasLow || isAhead || asksPickOrCover(facts) || spans.some(({ plain }) => BEFORE.has(plain));
}

const AFTER: ReadonlySet<string> = new Set(['after', 'since', 'already', 'thawed', 'following']);
const BEFORE: ReadonlySet<string> = new Set(['before', 'ahead of', 'ahead', 'first', 'coming', 'until', 'till']);

/** "Should I lift my carrots?", "get the beets out?": roots are lifted out of the soil, lids off it. */
function asksToLiftRoots({ spans, says }: Facts): boolean {
  const lifts = spans.some((span, at) => {
    const ahead = spans.slice(at + 1, at + 4);
    const root = ahead.findIndex((next) => senseOf(next, 'crop'));
    const isOut = span.plain === 'get' && ahead[root + 1]?.plain === 'out';
    return root >= 0 && (isOut || (span.plain.startsWith('lift') && root < 2));
  });
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
    ({ says, hasLow, hasCrop }) => says('calendar') && !(hasLow && hasCrop),
    ({ says, hasLow, hasCrop }) => says('daylight') && !(hasLow && hasCrop),
    ({ says, hasLow }) => says('growth') && says('when', 'will') && !hasLow,
    asksToSow,
    isTooLate,
  ],
};

function asksToSow(facts: Facts): boolean {
  const { says, spans, hasLow } = facts;
  const sows = goesIn(facts) || spans.some((span, at) => isCue(span, 'sow') && isVerbAt(spans, at));
  const asks = says('when', 'late', 'can', 'should', 'what', 'winter', 'which') || spans.length <= SHORT_QUESTION;
  return sows && asks && !hasLow && !says('cover', 'survive');
}

/** "When does garlic go in?" */
function goesIn({ spans, says, hasCrop }: Facts): boolean {
  return hasCrop && says('when') && /^(go|goes|going)$/.test(spans.at(-2)?.plain ?? '') && spans.at(-1)?.plain === 'in';
}

/** "Is October too late for fava beans?" */
function isTooLate(facts: Facts): boolean {
  const { says, hasLow, when, spans } = facts;
  const isOther = says('shut', 'open', 'pick', 'harm') || spans.some(isCovering);
  return says('late') && namesPlant(facts) && !hasLow && when === undefined && !isOther;
}

function isCovering({ plain }: Span): boolean {
  return /^(cover|protect)/.test(plain);
}

const SHORT_QUESTION = 4;

/** "plant" and "seed" are things as well as deeds. */
function isVerbAt(spans: readonly Span[], at: number): boolean {
  const before = spans[at - 1];
  const after = spans[at + 1];
  const isOther = after?.plain === 'to' || isCue(after, 'open', 'shut', 'pick', 'cover');
  if (spans[at]?.plain === 'start' && isOther) return false;
  return !isCue(before, 'mine', 'the', 'it') && before?.plain !== 'a';
}

function isSowing({ plain }: Span): boolean {
  return plain.startsWith('sow');
}
