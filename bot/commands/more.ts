import { BoundedMap } from '../ground/bounded-map.ts';
import { PlainProblem } from '../ground/errors.ts';
import type { Reply } from '../talk/reply.ts';
import type { Press, Request } from '../talk/request.ts';
import { shortReply } from '../talk/short-reply.ts';
import type { ButtonHandler, Command } from './command.ts';
import { answer, answerPress } from './dispatch.ts';

const PREFIX = 'more:';
/** Answers whose rest is kept, in memory only. */
const KEPT = 2000;
const GONE = 'I no longer have the rest of that answer. Please ask again.';
/** Discord shows no more than 25 buttons. */
const MOST_BUTTONS = 24;

type Asking = Pick<Request | Press, 'memberId' | 'place'>;

/** What has been left out of answers, until it is asked for. */
class KeptRests {
  readonly #rests = new BoundedMap<string, { readonly rest: Reply; readonly memberId: string }>(KEPT);
  readonly #lastIn = new BoundedMap<string, string>(KEPT);
  #count = 0;

  keep(rest: Reply, asking: Asking): string {
    this.#count += 1;
    const id = String(this.#count);
    this.#rests.set(id, { rest, memberId: asking.memberId });
    this.#lastIn.set(placeOf(asking), id);
    return id;
  }

  /** The answer has no rest: "more" asks for none from before. */
  forget(asking: Asking): void {
    this.#lastIn.delete(placeOf(asking));
  }

  /** A private rest is shown to its asker alone. */
  byId(id: string, memberId: string): Reply {
    const found = this.#rests.get(id);
    if (found === undefined || (found.rest.private && found.memberId !== memberId)) throw new PlainProblem(GONE);
    return found.rest;
  }

  last(asking: Asking): Reply {
    const id = this.#lastIn.get(placeOf(asking));
    if (id === undefined) throw new PlainProblem('There is no more to show of the last answer.');
    return this.byId(id, asking.memberId);
  }
}

function placeOf({ memberId, place }: Asking): string {
  return `${place.conversationId}/${memberId}`;
}

const kept = new KeptRests();

export const MORE: Command = {
  name: 'more',
  description: 'The rest of the last answer, where it was long',
  action: {
    description: 'The rest of the last answer, where it was long',
    example: 'more',
    options: [],
    private: true,
    run: async (request) => ({ ...kept.last(request), private: true }),
  },
};

export const MORE_BUTTON: ButtonHandler = {
  prefix: PREFIX,
  private: true,
  press: async ({ buttonId, memberId }) => ({ ...kept.byId(buttonId.slice(PREFIX.length), memberId), private: true }),
};

/** As {@link answer}, short enough for a phone; the rest comes on request. */
export const shortAnswer: typeof answer = async (request, services, commands) =>
  short(await answer(request, services, commands), request);

/** As {@link answerPress}, short enough for a phone. */
export const shortAnswerPress: typeof answerPress = async (press, services, handlers) =>
  short(await answerPress(press, services, handlers), press);

function short(reply: Reply, asking: Asking): Reply {
  const { short: first, rest } = shortReply(reply);
  if (rest === undefined) {
    kept.forget(asking);
    return reply;
  }
  const button = { id: `${PREFIX}${kept.keep(rest, asking)}`, label: 'More' };
  return { ...first, buttons: [...(first.buttons ?? []).slice(0, MOST_BUTTONS), button] };
}
