import {
  ADVICE,
  type AdviceKey,
  CAUTIONS,
  type CautionKey,
  CROWNS,
  type CropId,
  type CrownFacts,
  cropById,
  HARVESTS,
  harvestKind,
} from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import type { Answered, AskContext } from './answered.ts';
import { statedNight } from './asked-night.ts';
import { measureLines } from './before-night.ts';
import { refused } from './refused.ts';
import { saidTemperature } from './understood-line.ts';

/** Open above this temperature among the leaves: 24 °C or 75 °F (common practice, no source). [°C] */
const OPEN_ABOVE_C = 23.9;
/** Thawed leaves: an hour above this (judgement, from the model's thaw). [°C] */
const THAWED_ABOVE_C = 1;

/** Low of the night on which heat is shown when none was named. [°C] */
const USUAL_LOW_C = -5;

/** Safety questions: the caution first and whole. */
export function cautionAnswer(understood: Understood, { night, now, reader }: AskContext): Answered {
  const isHeat = understood.cautionTopics.includes('electric-heat') && understood.measures?.heatWPerM2 !== undefined;
  const of = night ?? statedNight(USUAL_LOW_C, understood, now);
  const at = temperature(of.lowC, reader.units);
  const heat = isHeat
    ? measureLines(understood.covers ?? [], { ...understood, measures: { ...understood.measures } }, of, reader).map(
        (line) => `At ${at}: ${line}`,
      )
    : [];
  const topics = understood.cautionTopics.length > 0 ? understood.cautionTopics : (['official-first'] as const);
  const [first, ...others] = topics.map((key) => CAUTIONS[key].text);
  return answered(
    understood,
    first ?? '',
    [...heat, ...others, 'Local codes and licensed practice come before anything I say.'],
    topics,
  );
}

/** What no night's figures answer. */
export function adviceAnswer(understood: Understood, key: AdviceKey): Answered {
  const [crop] = understood.crops;
  const crown = crop && CROWNS[crop.id as CropId];
  if (crown !== undefined && OF_FROSTED.has(key)) return crownAdvice(understood, crown);
  const { headline, lines, cautions } = ADVICE[key];
  return answered(understood, headline, lines, cautions);
}

const OF_FROSTED: ReadonlySet<AdviceKey> = new Set<AdviceKey>([
  'frosted-plants',
  'limp-leaves',
  'frosted-roots',
  'frosted-tubers',
  'frosted-crown',
]);

/** The top is gone, the plant is not. */
function crownAdvice(understood: Understood, { tops, part, care }: CrownFacts): Answered {
  const lives = part.endsWith('s') ? 'are alive' : 'is alive';
  return answered(understood, `No loss: the ${tops} die back in frost, the ${part} ${lives}.`, [
    care,
    'It comes again in spring.',
  ]);
}

/** Pick before the freeze or cover, where neither a low nor a place is known: the rule of the trade. */
export function harvestRuleAnswer(understood: Understood): Answered {
  const kinds = new Set(understood.crops.flatMap(({ id }) => cropById(id) ?? []).map(harvestKind));
  const lines =
    kinds.size > 0
      ? [...kinds].flatMap((kind) => [HARVESTS[kind].pick, HARVESTS[kind].keeps])
      : [
          'Pick before the freeze: all fruit of tender crops, basil, squash, cauliflower, firm lettuce heads.',
          'Cover: lettuce, chard, Asian greens, broccoli, cabbage heads below a hard freeze.',
          'Leave: kale, spinach, leeks, sprouts, carrots and parsnips; cold sweetens them. Mulch roots before the soil freezes.',
        ];
  return answered(understood, 'Before the freeze, not after it: pick what freezing spoils, cover what it only burns.', [
    ...lines,
    'Name the low, or set your place with "site", and I say which it is tonight.',
  ]);
}

/** When to open, shut and pick where no place is known: the rules of the trade. */
export function dayRuleAnswer(understood: Understood, { reader }: AskContext): Answered {
  const limit = temperature(OPEN_ABOVE_C, reader.units);
  switch (understood.intent) {
    case 'vent':
      if (understood.lowC !== undefined && understood.lowC > OPEN_ABOVE_C) return openNow(understood, understood.lowC);
      return answered(
        understood,
        `Open when a thermometer among the leaves passes ${limit}, and on any sunny morning before it does.`,
        [
          'Prop the light or the end of the tunnel a hand wide first; wider is for warm or windless sun.',
          'Shut again two hours before sunset, so that the sun still warms the soil under it.',
          'Set your place with "site" and I work out the hour and the width from the forecast.',
        ],
      );
    case 'close':
      return answered(
        understood,
        'Shut two hours before sunset (common practice), while the sun still warms the soil under the cover.',
        ['Set your place with "site" and I tell you the time, every night.'],
      );
    default:
      return answered(
        understood,
        `Pick when the leaves have been above ${temperature(THAWED_ABOVE_C, reader.units)} for an hour after a frozen night.`,
        [],
        ['frozen-leaves'],
      );
  }
}

/** How wide, by how hot it is among the leaves (judgement). [°C] */
const HALF_OPEN_ABOVE_C = 29;
const WIDE_OPEN_ABOVE_C = 34;

/** "The cold frame is at 95F": leaves cook within the hour, so what to do comes first. */
function openNow(understood: Understood, insideC: number): Answered {
  const said = understood.temperature === undefined ? 'That' : saidTemperature(understood.temperature);
  return answered(understood, `Open now, ${widthWords(insideC)}: ${said} is too hot under a cover.`, [
    'Shade the plants if the sun stays out, and water the soil, not the leaves.',
    'Shut again two hours before sunset, so that the sun still warms the soil under it.',
  ]);
}

function widthWords(insideC: number): string {
  if (insideC > WIDE_OPEN_ABOVE_C) return 'as wide as it goes, or take the lid or film off';
  return insideC > HALF_OPEN_ABOVE_C ? 'half wide at least' : 'a hand wide, wider in full sun';
}

/** What the bot is for, to who asked something else. */
export function declinedAnswer(understood: Understood): Answered {
  return refused(understood, declinedWords(understood), [
    'Ask me, for example: will my spinach survive 14 °F under a blanket? How cold can leeks go uncovered? Blanket or low tunnel at 20 °F?',
  ]);
}

function declinedWords({ problem }: Understood): string {
  switch (problem ?? 'off-topic') {
    case 'empty':
      return 'There is no question in that. Name a crop, a temperature and what lies over it.';
    case 'too-long':
      return 'That is too long for me. Ask in a sentence or two: a crop, a temperature and what lies over it.';
    case 'not-english':
      return 'I only understand English so far: a crop, a temperature and what lies over it.';
    case 'impossible-cold':
      return 'That is colder than any garden gets; the low must be above −90 °C (−130 °F).';
    case 'impossible-heat':
      return 'That is no frost night; the low must be below 60 °C (140 °F).';
    case 'impossible-stack':
    case 'unknown-cover':
    case 'off-topic':
      return 'I answer questions about frost nights: crops, covers and when to open, shut and pick.';
  }
}

function answered(
  understood: Understood,
  headline: string,
  lines: readonly string[],
  cautions: readonly CautionKey[] = [],
): Answered {
  return { understood, judged: [], cautions, reply: { headline, sections: [{ lines }], private: false } };
}
