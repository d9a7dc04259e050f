import type { Advice, AdviceKey } from './advice-key.ts';
import { FURTHER_ADVICE } from './further-advice.ts';

export type { Advice, AdviceKey } from './advice-key.ts';
export { ADVICE_KEYS } from './advice-key.ts';

/** The usual advice, first what to do. */
export const ADVICE: Readonly<Record<AdviceKey, Advice>> = {
  'frozen-fabric': {
    headline: 'Leave it on until it lets go by itself: pulling tears the leaves and the fabric.',
    lines: [
      'Sun or air above freezing loosens it, usually by mid-morning; on a day that stays below freezing it stays on.',
      'Then lift it straight up, let it dry and lay it back before dark. On hoops it will not freeze to the leaves.',
    ],
    cautions: ['frozen-leaves'],
    source: 'common-practice',
  },
  'rinse-frost': {
    headline: 'No: do not hose the frost off. Shade the plants and let them thaw slowly.',
    lines: [
      'Water on frozen leaves freezes on them first, or thaws them so fast that more cells burst.',
      'Look again at midday: hardy leaves that were stiff and dark stand up again.',
    ],
    cautions: ['frozen-leaves'],
    source: 'common-practice',
  },
  'limp-leaves': {
    headline: 'Leave them alone until they have thawed all through, about midday; then judge.',
    lines: [
      'Hardy leaves (spinach, kale, lettuce, chard, leeks) go limp and dark when they freeze and stand up again after the thaw.',
      'What is still glassy, limp or black in the afternoon is dead: cut it off. Leave the heart, which often grows again.',
      'Keep the cover on if tonight freezes again; shade from strong sun helps them thaw slowly.',
    ],
    cautions: ['frozen-leaves'],
    source: 'common-practice',
  },
  'frosted-fruit': {
    headline: 'Pick today: sound fruit now, and use what was touched by frost within a day or two.',
    lines: [
      'Firm fruit without glassy or soft spots is good: eat or cook it; full-size green tomatoes ripen indoors.',
      'Fruit that froze is watery and glassy: it does not keep and is not for canning. Throw away what is soft or leaks.',
      'Black leaves do not recover. If stems and the inner leaves are green, cover tonight and the plant may go on.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'frosted-squash': {
    headline: 'Bring them in today and use the touched ones first: frosted skin rots in store.',
    lines: [
      'A light frost that only blackened the leaves does no harm to squash with a hard skin.',
      'Skin that is glassy, soft or stained: eat within days. Only store what is sound and cured.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'frosted-tubers': {
    headline: 'Black tops are no loss: the tubers are safe while the soil has not frozen. Dig in a dry spell soon.',
    lines: [
      'Potatoes: wait ten days or so for the skins to set. Sweet potatoes: cut the tops and dig at once.',
      'Tubers that froze turn glassy and wet: throw them away, they do not keep.',
    ],
    cautions: ['potato'],
    source: 'common-practice',
  },
  'frosted-roots': {
    headline: 'Leave them in the ground: frosted tops do no harm to the roots, and cold sweetens them.',
    lines: [
      'Only shoulders that stood out and froze go soft: use those first and earth up or mulch the rest.',
      'Lift or mulch a foot deep before the soil freezes so hard that you cannot dig.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'frozen-heads': {
    headline: 'Let them thaw on the stalk before you touch them; then cut and use the soft ones first.',
    lines: [
      'Cabbage and sprouts that froze lightly are sound after the thaw: peel off the outer leaves.',
      'Broccoli and cauliflower that turn glassy, brown or soft: use at once or compost; they do not keep.',
      'A head that is slimy or smells inside is lost; a lettuce head that froze through does not keep.',
    ],
    cautions: ['frozen-leaves'],
    source: 'common-practice',
  },
  'frosted-plants': {
    headline: 'Do not cut or pull anything today: wait some days until you see what is dead.',
    lines: [
      'Black and soft is dead; green stems and a firm heart grow again. Cut back to sound tissue once it shows.',
      'Keep covering at night: a hurt plant stands less than before. Do not feed it now.',
    ],
    cautions: ['frozen-leaves'],
    source: 'common-practice',
  },
  'eat-frosted': {
    headline: 'Yes, if it is firm and fresh after the thaw: but never limp rhubarb or frozen potatoes.',
    lines: [
      'Frost makes nothing else poisonous; kale, sprouts, leeks, carrots and parsnips are sweeter for it.',
      'Eat frosted leaves and fruit soon: burst cells spoil within a day or two. What is slimy, leaks or smells goes on the compost.',
      'Frosted tomatoes and beans are not for canning.',
    ],
    cautions: ['frozen-leaves'],
    source: 'common-practice',
  },
  'uncover-after': {
    headline:
      'Take opaque covers off once it is above freezing and the leaves have thawed, an hour or two after sunrise.',
    lines: [
      'Sheets, blankets, tarps, buckets and boxes come off every day: plants need the light and the soil the sun.',
      'Row cover and film may stay on while days are cold: open film and frames in sun, leave fabric on.',
      'On a day that stays below freezing leave everything on. All back before the sun leaves the bed.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'water-soil': {
    headline: 'Yes, if the soil is dry: water the soil, not the leaves, by noon on the day before.',
    lines: [
      'Moist soil takes in and gives back far more heat than dry soil. Soil that is moist already gains nothing.',
      'Not once the soil is frozen, and leave leaves and covers dry: wet ones freeze together.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'sprinkle-plants': {
    headline: 'No: a garden sprinkler does more harm than good. Cover instead.',
    lines: [
      'Ice protects only while water keeps freezing on it all night, evenly, until it melts; stop early or let wind dry it and it cools the plants.',
      'Water the soil by noon instead, if it is dry.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'heaved-plants': {
    headline: 'Press them back and mulch once the soil has thawed: roots in the air dry out.',
    lines: ['Straw or leaves laid on after the soil has frozen keep it from thawing and heaving again.'],
    cautions: [],
    source: 'common-practice',
  },
  ...FURTHER_ADVICE,
};
