import { z } from 'zod';
import { CAUTIONS } from '../../../rules/index.ts';
import type { Reply } from '../../chat/reply.ts';
import type { Press, Request } from '../../chat/request.ts';
import { cropVocabulary } from '../../language/crop-vocabulary.ts';
import { understand } from '../../language/understand.ts';
import { readerOf } from '../../text/reader.ts';
import type { UnitSystem } from '../../text/units.ts';
import type { ButtonHandler, Command } from '../command.ts';
import type { Services } from '../services.ts';
import { ANSWER_BUTTON, answerQuestion } from './answer-question.ts';
import type { Answered } from './answered.ts';
import { statedNight } from './asked-night.ts';
import { Conversations } from './conversations.ts';

const optionsSchema = z.object({ question: z.string().default('') });
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
  const member = await services.store?.members.find(asking.memberId);
  const conversation = `${asking.place.conversationId}/${asking.memberId}`;
  const previous = conversations.previous(conversation, asking.now);
  const answered = answerText(question, {
    locale: asking.locale,
    now: asking.now,
    ...(member?.units !== undefined && { units: member.units }),
    ...(previous && { previous }),
  });
  conversations.remember(conversation, answered.understood, asking.now);
  return withCautions(answered);
}

export interface AskedText {
  readonly locale: string;
  readonly now: Date;
  readonly units?: UnitSystem;
  readonly previous?: Answered['understood'];
}

/** Understands and answers one question without any store or forecast. */
export function answerText(question: string, asked: AskedText): Answered {
  const vocabulary = cropVocabulary();
  const reader = readerOf(asked.locale, asked.units);
  const understood = understand(question, {
    vocabulary,
    units: reader.units,
    locale: asked.locale,
    ...(asked.previous && { previous: asked.previous }),
  });
  const inReach = understood.lowC !== undefined && understood.lowC >= -45 && understood.lowC <= 25;
  const night =
    inReach && understood.lowC !== undefined ? statedNight(understood.lowC, understood.sky, asked.now) : undefined;
  return answerQuestion(understood, vocabulary, { reader, now: asked.now, night });
}

/** The reply with its cautions in words; safety questions carry theirs in the text already. */
export function withCautions({ reply, cautions, understood }: Answered): Reply {
  return understood.intent === 'caution' || cautions.length === 0
    ? reply
    : { ...reply, cautions: cautions.map((key) => CAUTIONS[key].text) };
}
