import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { capitalised } from '../../text/phrases.ts';
import { atWords, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import { statedNight } from './asked-night.ts';
import { nightWords } from './assumed.ts';
import { measureLines } from './before-night.ts';

/** Low of the night on which a measure is shown when none was named: a light freeze. [°C] */
const USUAL_LOW_C = -5;

/** "Do jugs of water help in a cold frame?": what the measure brings, no crop being named; undefined where no measure is. */
export function measureAnswer(understood: Understood, context: AskContext): Answered | undefined {
  const covers = understood.covers ?? [];
  const night = context.night ?? statedNight(USUAL_LOW_C, understood, context.now);
  const [first, ...lines] = measureLines(covers, understood, night, context.reader);
  if (first === undefined) return undefined;
  const low = temperature(night.lowC, context.reader.units);
  const named = context.night === undefined ? [`You named no low, so I took ${low}.`] : [];
  const assumed = nightWords(understood, night, context.reader).join(', ');
  return {
    understood,
    judged: [],
    cautions: [],
    reply: {
      headline: `${capitalised(atWords(night, context.reader))}, ${underWords(covers, context.reader)}. ${first}`,
      sections: [{ lines }, { lines: [...named, ...(assumed === '' ? [] : [`Assumed: ${assumed}.`])] }].filter(
        (section) => section.lines.length > 0,
      ),
      private: false,
    },
  };
}
