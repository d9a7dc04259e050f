import { z } from 'zod';
import type { UnitSystem } from '../../ground/units.ts';
import { cropVocabulary } from '../../language/crop-vocabulary.ts';
import { understand } from '../../language/understand.ts';
import type { Understood } from '../../language/understood.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Press, Request } from '../../talk/request.ts';
import { type Reader, readerOf } from '../../text/reader.ts';
import type { ButtonHandler, Command } from '../command.ts';
import { readerFor } from '../kept-for.ts';
import type { Services } from '../services.ts';
import type { NightOrWeek } from '../tonight/night-option.ts';
import { sampleNight } from '../tonight/tonight.ts';
import { ANSWER_BUTTON, answerQuestion } from './answer-question.ts';
import { type Answered, withCautions } from './answered.ts';
import { COLDEST_ASKED_C, type HardeningUnder, statedNight, WARMEST_ASKED_C } from './asked-night.ts';
import { Conversations } from './conversations.ts';
import { needsOwnPlace, ownAnswer } from './own-answer.ts';
import { asksOfDay, ownDayAnswer } from './own-day.ts';
import { hardeningAt, needsHardening } from './own-hardening.ts';
import { nightName, ownPlace } from './own-place.ts';
import { wordAsked } from './word-asked.ts';

const optionsSchema = z.object({ question: z.string().catch('') });
const conversations = new Conversations();

export const ASK: Command = {
  name: 'ask',
  description: 'Ask about a frost night in your own words',
  action: {
    description: 'Ask about a frost night in your own words',
    example: 'ask will my spinach survive 14 °F under a blanket?',
    options: [
      {
        name: 'question',
        description: 'A crop, how cold it gets, and what lies over it',
        kind: 'text',
        required: true,
      },
    ],
    private: false,
    run: (request, services) => answerTo(optionsSchema.parse(request.options).question, request, services),
  },
};

/** A choice pressed under a question that was asked back. */
export const ASK_CHOICE: ButtonHandler = {
  prefix: ANSWER_BUTTON,
  private: false,
  press: (press, services) => answerTo(press.buttonId.slice(ANSWER_BUTTON.length), press, services),
};

type Asking = Pick<Request | Press, 'memberId' | 'place' | 'locale' | 'now'>;

async function answerTo(question: string, asking: Asking, services: Services): Promise<Reply> {
  const { memberId, locale, now } = asking;
  const reader = await readerFor(asking, services);
  const word = wordAsked(question, reader);
  if (word !== undefined) return word;
  const own = await ownPlace(memberId, services);
  const conversation = `${asking.place.conversationId}/${memberId}`;
  const previous = conversations.previous(conversation, now);
  const understood = understand(question, {
    vocabulary: cropVocabulary(),
    units: reader.units,
    locale,
    ...(own && { hasPlace: true, hasBeds: own.beds.length > 0, bedNames: own.beds.map(({ name }) => name) }),
    ...(previous && { previous }),
  });
  // "Thanks!" ends no talk.
  if (understood.intent !== 'decline') conversations.remember(conversation, understood, now);
  if (own !== undefined && asksOfDay(understood))
    return ownDayAnswer({ understood, own, reader, now }, question, services);
  if (own !== undefined && needsOwnPlace(understood, own)) return ownAnswer({ understood, own, reader, now }, services);
  const sample = asksOfNights(understood)
    ? await sampleNight(nightOrWeek(understood), memberId, reader, services)
    : undefined;
  if (sample !== undefined) return sample;
  const hardeningUnder = own && needsHardening(understood) ? await hardeningAt(own.site, now, services) : undefined;
  return withCautions(answerUnderstood(understood, reader, now, hardeningUnder));
}

/** A night as a whole, of which no low is said. */
function asksOfNights({ intent, lowC, problem }: Understood): boolean {
  return intent === 'outlook' && lowC === undefined && problem === undefined;
}

function nightOrWeek({ when }: Understood): NightOrWeek {
  return when === 'week' ? 'week' : nightName(when);
}

export interface AskedText {
  readonly locale: string;
  readonly now: Date;
  readonly units?: UnitSystem;
  readonly previous?: Answered['understood'];
}

/** Understands and answers one question without any store or forecast. */
export function answerText(question: string, asked: AskedText): Answered {
  const reader = readerOf(asked.locale, asked.units);
  const understood = understand(question, {
    vocabulary: cropVocabulary(),
    units: reader.units,
    locale: asked.locale,
    ...(asked.previous && { previous: asked.previous }),
  });
  const word = wordAsked(question, reader);
  return word === undefined
    ? answerUnderstood(understood, reader, asked.now)
    : { understood, judged: [], cautions: [], reply: word };
}

function answerUnderstood(
  understood: Understood,
  reader: Reader,
  now: Date,
  hardeningUnder?: HardeningUnder,
): Answered {
  const { lowC } = understood;
  const inReach = lowC !== undefined && lowC >= COLDEST_ASKED_C && lowC <= WARMEST_ASKED_C;
  const there = hardeningUnder && { hardeningUnder };
  const night = inReach ? { ...statedNight(lowC, understood, now), ...there } : undefined;
  return answerQuestion(understood, cropVocabulary(), { reader, now, night, ...there });
}
