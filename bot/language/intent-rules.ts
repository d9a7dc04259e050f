import { asksOfFate, type Facts } from './facts.ts';
import { holds, type IntentRule } from './intent-rule.ts';
import { COMPARE_COVERS, WHAT_COVER } from './intents-of-cover.ts';
import { HOW_COLD, SURVIVE, WHICH_CROPS } from './intents-of-life.ts';
import { CLOSE, VENT } from './intents-of-opening.ts';
import { OUTLOOK } from './intents-of-outlook.ts';
import { PICK, SEASON } from './intents-of-season.ts';
import type { Intent } from './understood.ts';

const CAUTION: IntentRule = { intent: 'caution', when: [({ asksCaution }) => asksCaution] };

/** Opening keeps its name where the advice is on it. */
const ADVICE: IntentRule = {
  intent: 'advice',
  when: [({ advice }) => advice !== undefined],
  unless: [(facts) => holds(VENT, facts), (facts) => holds(CLOSE, facts)],
};

/** Cooking, buying, pests: of the garden, but not of the night. */
const OTHER_MATTER: IntentRule = {
  intent: 'decline',
  when: [({ says }) => says('other-matter')],
  unless: [
    (facts) => facts.hasLow || (facts.when !== undefined && asksOfFate(facts)),
    ({ hasCover, hasCrop }) => hasCover && hasCrop,
    ({ says }) => says('limit', 'sow', 'daylight'),
    ({ advice }) => advice !== undefined,
  ],
};

/** "Low 2 °C, dew point −7, clear and still. Frost?": no crop, but a night. */
const OPEN: IntentRule = { intent: 'survive', when: [({ tellsNight }) => tellsNight] };

/** The first rule that holds gives the intent. What can hurt somebody comes first. */
const INTENT_RULES: readonly IntentRule[] = [
  CAUTION,
  OTHER_MATTER,
  PICK,
  ADVICE,
  SEASON,
  VENT,
  CLOSE,
  COMPARE_COVERS,
  OUTLOOK,
  WHAT_COVER,
  HOW_COLD,
  WHICH_CROPS,
  SURVIVE,
  OPEN,
];

export function intentOf(facts: Facts): Intent {
  return INTENT_RULES.find((rule) => holds(rule, facts))?.intent ?? 'decline';
}
