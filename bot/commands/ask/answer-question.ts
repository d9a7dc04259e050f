import { type AdviceKey, CROWNS, type Crop, cropById, orderProblem } from '../../../rules/index.ts';
import { degrees, temperature } from '../../ground/units.ts';
import { doubtsOf } from '../../language/doubts.ts';
import { nearestCrops } from '../../language/nearest-crops.ts';
import type { Understood } from '../../language/understood.ts';
import type { Vocabulary } from '../../language/vocabulary.ts';
import type { Button, Reply } from '../../talk/reply.ts';
import { orderSentence } from '../../text/order-words.ts';
import { list, saidBack } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import type { Answered, AskContext } from './answered.ts';
import { COLDEST_ASKED_C, WARMEST_ASKED_C } from './asked-night.ts';
import { bothWaysAnswer } from './both-ways.ts';
import { compareAnswer } from './compare-covers.ts';
import { adviceAnswer, cautionAnswer, dayRuleAnswer, declinedAnswer, harvestRuleAnswer } from './guidance.ts';
import { harvestAnswer } from './harvest.ts';
import { howColdAnswer } from './how-cold.ts';
import { measureAnswer } from './measure-answer.ts';
import { layersAnswer, openAnswer } from './open-answer.ts';
import { type Plot, plotsAsked } from './plots.ts';
import { refused } from './refused.ts';
import { snowOnCoverAnswer } from './snow-on-cover.ts';
import { surviveAnswer } from './survive.ts';
import { saidTemperature, understoodLine } from './understood-line.ts';
import { whatCoverAnswer } from './what-cover.ts';
import { whichCropsAnswer } from './which-crops.ts';

/** Buttons of a question asked back begin with this; the rest is the answer to give. */
export const ANSWER_BUTTON = 'answer:';

/** The answer to what was understood, with the line that says back what that was. Never a verdict on what was not asked. */
export function answerQuestion(understood: Understood, vocabulary: Vocabulary, context: AskContext): Answered {
  const answered = plainAnswer(understood, vocabulary, context);
  const bedNames = new Set(context.plots?.flatMap(({ bedName }) => bedName ?? []));
  const line = understoodLine(understood, context.reader, [...bedNames]);
  if (line === undefined || understood.intent === 'decline') return answered;
  const { reply } = answered;
  const lines = [...strangerLines(understood), line];
  return { ...answered, reply: { ...reply, sections: [...reply.sections, { lines }] } };
}

/** Plants named beside a crop of the table. */
function strangerLines({ intent, unknownCrops }: Understood): readonly string[] {
  if (intent === 'unknown-crop' || unknownCrops.length === 0) return [];
  const names = list(unknownCrops.map((said) => `"${saidBack(said, 40)}"`));
  return [`Not in my table, so without a verdict: ${names}.`];
}

function plainAnswer(understood: Understood, vocabulary: Vocabulary, context: AskContext): Answered {
  const rule = ruleAnswer(understood, context);
  if (rule !== undefined) return rule;
  const problem = problemAnswer(understood, context);
  if (problem !== undefined) return problem;
  if (understood.intent === 'unknown-crop') return unknownCropAnswer(understood, vocabulary, context);
  if (understood.missing !== undefined && understood.missing !== 'place') return askedBack(understood, context);
  return byIntent(understood, context);
}

/** Advice that carries the caution with it. */
const SAFE_ADVICE: ReadonlySet<AdviceKey> = new Set(['led-lights', 'shovel-snow', 'frosted-tubers']);

const OF_ADVICE: ReadonlySet<Understood['intent']> = new Set(['advice', 'pick', 'vent', 'close']);

/** What needs no night: cautions, advice, and what is none of its business. */
function ruleAnswer(understood: Understood, context: AskContext): Answered | undefined {
  const { intent, advice, lowC } = understood;
  if (intent === 'caution' && advice && SAFE_ADVICE.has(advice)) return adviceAnswer(understood, advice);
  if (intent === 'caution') return snowOnCoverAnswer(understood, context.reader) ?? cautionAnswer(understood, context);
  if (advice && (lowC === undefined || OF_ADVICE.has(intent))) {
    return adviceAnswer(understood, advice);
  }
  const asked = understood.crops.length === 0 && MEASURED.has(intent) ? openQuestion(understood, context) : undefined;
  return asked ?? (intent === 'decline' ? declinedAnswer(understood) : undefined);
}

/** No crop is named, and still there is something to tell: what a measure brings, what a second layer does. */
function openQuestion(understood: Understood, context: AskContext): Answered | undefined {
  if (context.plots !== undefined || understood.problem === 'impossible-stack') return undefined;
  return measureAnswer(understood, context) ?? layersAnswer(understood, context) ?? openAnswer(understood, context);
}

function byIntent(understood: Understood, context: AskContext): Answered {
  const crops = understood.crops.flatMap(({ id }) => cropById(id) ?? []);
  const plots = context.plots ?? plotsAsked(understood, crops);
  if (plots.length === 0 && OF_A_PLANT.has(understood.intent)) return nothingThere(understood, context);
  switch (understood.intent) {
    case 'survive':
    case 'what-cover':
    case 'which-crops':
    case 'outlook':
      return nightAnswer(understood, crops, plots, context);
    case 'how-cold':
      return howColdAnswer(understood, plots, context);
    case 'compare-covers':
      return compareAnswer(understood, crops, context);
    case 'pick':
      return pickAnswer(understood, plots, context);
    case 'vent':
    case 'close':
      return dayRuleAnswer(understood, context);
    case 'season':
      return refused(understood, 'For that I need your place: set it with "site", then ask again.');
    case 'caution':
    case 'advice':
    case 'unknown-crop':
    case 'decline':
      return declinedAnswer(understood);
  }
}

/** Before a night it is whether to pick, after one when. */
function pickAnswer(understood: Understood, plots: readonly Plot[], context: AskContext): Answered {
  if (understood.beforeNight !== true) return dayRuleAnswer(understood, context);
  return context.night === undefined
    ? harvestRuleAnswer(understood)
    : harvestAnswer(understood, plots, context, context.night);
}

/** What hangs on a night: of the low that was said, or of a forecast. */
function nightAnswer(
  understood: Understood,
  crops: readonly Crop[],
  plots: readonly Plot[],
  context: AskContext,
): Answered {
  const { night } = context;
  if (night === undefined) return askedBack(understood, context);
  if (understood.intent === 'which-crops' && context.plots === undefined)
    return whichCropsAnswer(understood, crops, context, night);
  if (doubtsOf(understood).length > 0) return bothWaysAnswer(understood, plots, context, night);
  const [plot] = plots;
  const isCrown = plots.length === 1 && plot !== undefined && CROWNS[plot.crop.id] !== undefined;
  return understood.intent === 'what-cover' && areAlike(plots) && !isCrown && understood.shed === undefined
    ? whatCoverAnswer(understood, plots, context, night)
    : surviveAnswer(understood, plots, context, night);
}

/** Where no crop is named a measure can still be answered. */
const MEASURED: ReadonlySet<Understood['intent']> = new Set([
  'survive',
  'what-cover',
  'which-crops',
  'outlook',
  'close',
  'decline',
]);

const OF_A_PLANT: ReadonlySet<Understood['intent']> = new Set(['survive', 'what-cover', 'how-cold']);

const OF_A_DAY: ReadonlySet<Understood['intent']> = new Set(['vent', 'close', 'pick', 'season']);

/** No crop to judge: never a verdict on nothing. */
function nothingThere(understood: Understood, context: AskContext): Answered {
  return context.plots === undefined
    ? askedBack({ ...understood, missing: 'crop' }, context)
    : refused(understood, 'Nothing grows there as far as I know: tell me with "bed" what does.');
}

/** One search for further covers serves them all. */
function areAlike(plots: readonly Plot[]): boolean {
  return new Set(plots.map(({ covers, state }) => JSON.stringify([covers, state]))).size < 2;
}

function problemAnswer(understood: Understood, { reader }: AskContext): Answered | undefined {
  const { problem, covers } = understood;
  if (problem === 'unknown-cover') {
    const names = list(understood.unknownCovers.map((each) => `"${saidBack(each)}"`));
    return refused(understood, `I do not know ${names} as a cover, so I give no verdict.`, [
      'I know row cover, sheet, blanket, quilt, tarp, straw, snow, low tunnel, cold frame and high tunnel.',
    ]);
  }
  if (problem === 'impossible-stack') {
    const unsound = orderProblem(covers ?? []);
    if (unsound !== undefined) return refused(understood, orderSentence(unsound, reader));
  }
  if (problem === 'impossible-cold' || problem === 'impossible-heat') return declinedAnswer(understood);
  return OF_A_DAY.has(understood.intent) ? undefined : lowOutOfReach(understood, reader);
}

/** A night colder or warmer than the balance of heat is made for. */
function lowOutOfReach(understood: Understood, { units }: Reader): Answered | undefined {
  const { lowC = 0, temperature: said } = understood;
  if (lowC >= COLDEST_ASKED_C && lowC <= WARMEST_ASKED_C) return undefined;
  const value = said === undefined ? '' : `${saidTemperature(said)} is `;
  const range = `${degrees(COLDEST_ASKED_C, units)} and ${temperature(WARMEST_ASKED_C, units)}`;
  return refused(understood, `${value}outside what I can reckon with: name a low between ${range}.`);
}

function unknownCropAnswer(understood: Understood, vocabulary: Vocabulary, context: AskContext): Answered {
  const [said = 'that'] = understood.unknownCrops;
  const nearest = nearestCrops(said, vocabulary.crops).flatMap((id) => cropById(id) ?? []);
  const names = list(
    nearest.map((crop) => cropWord(crop, context.reader)),
    'or',
  );
  return refused(understood, `"${saidBack(said, 40)}" is not in my table, so I give no verdict.`, [
    `Nearest in the table: ${names}.`,
  ]);
}

/** One short question for the one thing that matters, with buttons where there are choices. */
function askedBack(understood: Understood, context: AskContext): Answered {
  const { headline, buttons } = question(understood, context);
  const reply: Reply = {
    headline,
    sections: [],
    private: false,
    refused: true,
    ...(buttons.length > 0 && { buttons }),
  };
  return { understood, judged: [], cautions: [], reply };
}

function question(understood: Understood, context: AskContext): { headline: string; buttons: readonly Button[] } {
  const plain = (headline: string) => ({ headline, buttons: [] });
  switch (understood.missing ?? 'temperature') {
    case 'crop':
      return plain('Which crop is it?');
    case 'crop-choice': {
      const choices = understood.choices.flatMap((id) => cropById(id) ?? []);
      const names = list(
        choices.map((crop) => cropWord(crop, context.reader)),
        'or',
      );
      return {
        headline: `Which one is it: ${names}?`,
        buttons: choices.slice(0, 5).map((crop) => choiceButton(crop, context)),
      };
    }
    case 'covers':
      return plain('Which covers shall I compare? For example: blanket or low tunnel.');
    case 'temperature':
    case 'place':
      if (understood.intent === 'outlook') return plain(twoFacts(context));
      return plain(
        `How cold will it get outside? Name a low, such as ${temperature(-10, context.reader.units)}, or set your place with "site" and I use the forecast.`,
      );
  }
}

/** A night as a whole hangs on what grows there and on how cold it gets. */
function twoFacts({ reader }: AskContext): string {
  return `Which crop is it, and how cold will it get outside? For example: kale, ${temperature(-7, reader.units)}. Or set your place with "site" and I look at your forecast.`;
}

function choiceButton(crop: Crop, { reader }: AskContext): Button {
  const label = cropWord(crop, reader);
  return { id: `${ANSWER_BUTTON}${label}`, label };
}
