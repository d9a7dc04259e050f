import { type Facts, follows, isFragment, isThing, namesBeds, namesPlant } from './facts.ts';
import type { IntentRule } from './intent-rule.ts';
import { isCue, senseOf } from './span.ts';

/** "Blanket or tunnel?" */
export const COMPARE_COVERS: IntentRule = {
  intent: 'compare-covers',
  when: [({ optionCount }) => optionCount > 1, asksWhichCoverIsBetter, asksForGain],
  // "How cold can kale go under a sheet or a blanket?" asks for the limit under each.
  unless: [({ says, hasCrop, hasLow }) => says('limit') && says('how', 'what', 'can') && hasCrop && !hasLow],
};

/** "Which cover is better?", before any is named. */
function asksWhichCoverIsBetter({ says, spans, hasCrop, hasLow }: Facts): boolean {
  const namesCovers = spans.some(({ plain }) => plain === 'cover' || plain === 'covers');
  return says('compare') && says('which', 'what') && namesCovers && !hasCrop && !hasLow;
}

/** "How much warmer is it under row cover?": that cover against none. */
export function asksForGain({ says, hasCover, hasCrop, hasLow }: Facts): boolean {
  return says('gain') && hasCover && !hasCrop && !hasLow && !says('need');
}

/** "What must I lay over the lettuce?" */
export const WHAT_COVER: IntentRule = {
  intent: 'what-cover',
  when: [
    asksForRemedy,
    asksForLayers,
    needsCover,
    asksWhatToLay,
    asksWhatGoesOver,
    asksForSomeCover,
    asksWhatHelps,
    ({ spans, hasCrop }) => hasCrop && follows(spans, 'cover', 'everything', 2),
    beginsWithCovering,
  ],
  unless: [
    asksWhichNeedsCover,
    asksWhichToCover,
    ({ says }) => says('limit', 'worry', 'risk') && !says('need'),
    (facts) => !namesSomething(facts) && !asksOfCoverAlone(facts),
  ],
};

function namesSomething(facts: Facts): boolean {
  return namesPlant(facts) || facts.hasBed || facts.hasLow || facts.hasCover || facts.says('it');
}

/** "Do I need to cover?": nothing is named yet, so it is asked back. */
function asksOfCoverAlone(facts: Facts): boolean {
  const { says, when } = facts;
  return isFragment(facts) && when === undefined && !namesBeds(facts) && !says('what', 'which', 'when', 'everything');
}

/** "What should I do for my peas tonight?" */
function asksForRemedy(facts: Facts): boolean {
  return facts.says('remedy') && (namesPlant(facts) || facts.hasBed || facts.hasCover);
}

function asksForLayers({ says, hasCrop }: Facts): boolean {
  return says('layers') && (hasCrop || says('what', 'which', 'need', 'will', 'should', 'how'));
}

/** "Do I need to cover kale?", "Does spinach need anything on it?", "Should I use a blanket?" */
function needsCover(facts: Facts): boolean {
  const { says } = facts;
  if (covers(facts)) return says('should', 'need');
  return says('need') && says('everything', 'what', 'which');
}

/** "What should I cover it with?", "How do I protect broccoli?" */
function asksWhatToLay(facts: Facts): boolean {
  const { says, hasBed, spans } = facts;
  const isYesNo = isCue(spans[0], 'will', 'can') && !isCue(spans[0], 'should');
  const about = namesPlant(facts) || hasBed || says('with') || spans.some(isThing);
  return covers(facts) && says('what', 'which', 'how') && about && !isYesNo;
}

/** "What should go over my garlic?" */
function asksWhatGoesOver({ spans, says, hasCover }: Facts): boolean {
  const over = spans.some((span, at) => {
    const next = isCue(spans[at + 1], 'the', 'mine') ? spans[at + 2] : spans[at + 1];
    return isCue(span, 'over') && (senseOf(next, 'crop') ?? senseOf(next, 'bed')) !== undefined;
  });
  const isOverIt = spans.some((span) => isCue(span, 'on-it')) && says('should', 'need');
  return (over || isOverIt) && says('what', 'which') && !hasCover;
}

/** "Best cover for spinach at 5F?", "is there a cover that gets chard through?" */
function asksForSomeCover(facts: Facts): boolean {
  const namesCovers = facts.spans.some(({ plain }) => /^(cover|covers|covering|protection)$/.test(plain));
  return namesCovers && namesPlant(facts) && !facts.hasCover && !facts.says('survive', 'harm', 'fine', 'risk', 'when');
}

/** "What would be enough for chard at 10F?", "what gets my lettuce through 14F?" */
function asksWhatHelps({ spans, says, hasCrop, hasLow, hasCover }: Facts): boolean {
  const isOpen = isCue(spans[0], 'what') && !/^what(s| is| are)\b/.test(spans[0]?.plain ?? '');
  const helps = says('cover', 'fine', 'remedy', 'need') && !says('harm', 'limit', 'risk');
  return isOpen && helps && hasCrop && hasLow && !hasCover;
}

/** "Protect peas 20F", "cover lettuce tonight?" */
function beginsWithCovering(facts: Facts): boolean {
  const { spans, says, hasCover } = facts;
  const isRescue = ['keep', 'save', 'protect'].includes(spans[0]?.plain ?? '');
  const asksFate = says('survive', 'harm') && !isRescue;
  return isCue(spans[0], 'cover') && namesPlant(facts) && !hasCover && !asksFate && !says('when');
}

/** "Which vegetables don't need cover?" asks for the crops. */
function asksWhichNeedsCover(facts: Facts): boolean {
  return facts.says('which') && facts.says('garden') && !namesPlant(facts) && !facts.hasBed;
}

/** "What should I cover tonight?" asks for the crops as well. */
function asksWhichToCover(facts: Facts): boolean {
  const { spans, says, hasBed } = facts;
  const coversAll = spans.some(
    ({ plain }, at) =>
      /^(cover|protect)$/.test(plain) && (spans[at + 1] === undefined || senseOf(spans[at + 1], 'when')),
  );
  const isOpen = isCue(spans[0], 'what', 'which') && says('should') && !spans.some(isThing);
  return isOpen && coversAll && !namesPlant(facts) && !hasBed;
}

function covers({ says, hasCover }: Facts): boolean {
  return says('cover') || (hasCover && says('need', 'should') && !says('survive', 'fine', 'harm'));
}
