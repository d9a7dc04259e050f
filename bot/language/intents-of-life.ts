import { asksOfFate, type Facts, isFragment, isThing, namesBeds, namesNight, namesPlant } from './facts.ts';
import type { IntentRule } from './intent-rule.ts';
import { isCue, type Span, senseOf } from './span.ts';

/** "How cold can kale go?" */
export const HOW_COLD: IntentRule = {
  intent: 'how-cold',
  when: [asksForLimit, asksWhenItDies, asksWhatItTakes, asksForTemperature],
  unless: [
    ({ hasLow }) => hasLow,
    (facts) => !(namesPlant(facts) || facts.hasCover || facts.hasBed || facts.says('it')),
    asksOfOneNight,
    isTooColdForNow,
  ],
};

function asksForLimit({ says, hasCrop }: Facts): boolean {
  return says('limit') && (hasCrop || !says('night-weather'));
}

/** "Survival temperature of collards", "degrees that kill peas": a crop and the word, but no figure and no night. */
function asksForTemperature({ spans, hasCrop, when }: Facts): boolean {
  return hasCrop && when === undefined && spans.some(({ plain }) => /\b(temps?|temperatures?|degrees)\b/.test(plain));
}

/** "When do turnips die?" */
function asksWhenItDies(facts: Facts): boolean {
  return facts.says('when') && facts.says('harm') && facts.when === undefined && namesPlant(facts);
}

/** "What can parsley take under a blanket?" */
function asksWhatItTakes(facts: Facts): boolean {
  const { says, when } = facts;
  return says('what') && says('can') && says('survive', 'fare') && when === undefined && facts.hasCrop;
}

/** "Is it too cold for peas?" asks of a night, "how cold is too cold?" of the plant. */
function isTooColdForNow({ spans, says }: Facts): boolean {
  const others = spans.some((span) => isCue(span, 'limit') && !span.plain.startsWith('too cold'));
  return spans.some(({ plain }) => plain.startsWith('too cold')) && !others && !says('when', 'what', 'how', 'can');
}

/** "What temperature will my lettuce be tonight?" */
function asksOfOneNight({ when, says }: Facts): boolean {
  return when !== undefined && says('will') && !says('can', 'harm');
}

/** "Which of my beds are at risk?" */
export const WHICH_CROPS: IntentRule = {
  intent: 'which-crops',
  when: [
    ({ says }) => says('night-weather'),
    ({ says, spans }) => says('frost') && spans.some(({ plain }) => COMING.has(plain)),
    ({ says, when }) => says('limit') && when !== undefined,
    ({ says, hasBed, hasCover }) => says('risk', 'worry') && !hasBed && !hasCover,
    asksOfEverything,
    ({ says, when, spans }) => says('fine') && when === 'tonight' && spans.some(isWe),
    ({ says, when }) => says('remedy') && when !== undefined,
    asksWhich,
    asksOfGarden,
    asksOfLowAlone,
  ],
  unless: [(facts) => namesPlant(facts) && !asksWhichOfKind(facts), isAboutNothing],
};

/** "Is 20F bad?": for what, is not said. */
function asksOfLowAlone({ says, spans, hasLow, hasCover, hasBed }: Facts): boolean {
  const judges = says('bad', 'fine', 'risk', 'worry') && !spans.some(isThing);
  return hasLow && judges && !hasCover && !hasBed && !says('cover', 'need');
}

/** "Are we safe tonight?" */
function isWe({ plain }: Span): boolean {
  return plain === 'i' || plain === 'we';
}

const COMING: ReadonlySet<string> = new Set([
  'coming',
  'expected',
  'due',
  'likely',
  'forecast',
  'possible',
  'on the way',
]);

function isAboutNothing(facts: Facts): boolean {
  const isBriefRisk = facts.says('risk') && isFragment(facts);
  return !namesNight(facts) && !isBriefRisk && !facts.says('garden', 'mine', 'frost', 'night-weather');
}

function asksOfFateOrCover(facts: Facts): boolean {
  return asksOfFate(facts) || facts.says('cover', 'need');
}

/** "Will everything live?", "anything in trouble?" */
function asksOfEverything(facts: Facts): boolean {
  return facts.says('everything') && asksOfFateOrCover(facts);
}

/** "What dies at 20F?", "which beds need covering?" */
function asksWhich(facts: Facts): boolean {
  const { says, hasBed } = facts;
  const asks = asksOfFateOrCover(facts) || says('leave') || (says('limit') && (says('garden') || facts.hasLow));
  return says('which', 'what') && asks && !facts.spans.some(isThing) && !hasBed;
}

/** "Which greens make it through 10F?": a word for many crops, and which of them is the question. */
function asksWhichOfKind({ spans }: Facts): boolean {
  return spans.some((span, at) => {
    const crop = senseOf(span, 'crop');
    const isKind = crop !== undefined && crop.ids.length > 1 && crop.usualId === undefined;
    return isKind && isCue(spans[at - 1], 'which', 'what');
  });
}

/** "How are my beds looking for tonight?", "is my garden safe?" */
function asksOfGarden(facts: Facts): boolean {
  const { says, hasBed, when } = facts;
  const asks = asksOfFateOrCover(facts) || says('how', 'check') || when !== undefined;
  return (namesBeds(facts) || says('garden')) && !hasBed && asks;
}

/** "Will my spinach survive 14 °F under a blanket?" */
export const SURVIVE: IntentRule = {
  intent: 'survive',
  when: [
    asksOfPlant,
    asksOfBed,
    (facts) => facts.hasRoof && facts.when !== undefined && asksOfFate(facts),
    (facts) => facts.says('it') && asksOfFate(facts) && (namesNight(facts) || isFragment(facts)),
    (facts) => facts.says('follow-on') && namesNight(facts),
    isNightAlone,
  ],
};

function asksOfPlant(facts: Facts): boolean {
  const asks = asksOfFate(facts) || namesNight(facts) || facts.says('frost', 'frozen');
  return namesPlant(facts) && (asks || isFragment(facts));
}

function asksOfBed(facts: Facts): boolean {
  return facts.hasBed && (asksOfFate(facts) || namesNight(facts) || isFragment(facts));
}

/** "14F", "under fleece": a piece of a question. */
function isNightAlone(facts: Facts): boolean {
  const { says, hasLow, hasCover } = facts;
  const isOther = says('what', 'which', 'how', 'when');
  return (hasLow || hasCover) && isFragment(facts) && !isOther;
}
