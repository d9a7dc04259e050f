import { PlainProblem } from '../ground/errors.ts';
import { StoreProblem } from '../store/store-problem.ts';
import type { Reply } from '../talk/reply.ts';
import type { Press, Request } from '../talk/request.ts';
import type { Action, ButtonHandler, Command } from './command.ts';
import type { Services } from './services.ts';

/** The action that a request names; undefined where there is none of that name. */
export function actionOf(
  request: Pick<Request, 'command' | 'action'>,
  commands: readonly Command[],
): Action | undefined {
  const command = commands.find((each) => each.name === request.command);
  if (command === undefined) return undefined;
  return command.action ?? (request.action === undefined ? undefined : command.actions[request.action]);
}

/** Answers a command. Never throws: what a person can put right is told, what is our fault is logged and regretted. */
export async function answer(request: Request, services: Services, commands: readonly Command[]): Promise<Reply> {
  const action = actionOf(request, commands);
  if (action === undefined) return refusal(`There is no command "${request.command}". Try help.`);
  // A person's own direct messages are that person's to manage.
  if (action.managersOnly === true && !request.mayManageChannel && request.place.kind === 'channel') {
    return refusal('Only members who may manage this server can change its warnings.');
  }
  return guarded(request.memberId, services, () => action.run(request, services));
}

/** Answers a pressed button. Never throws. */
export async function answerPress(
  press: Press,
  services: Services,
  handlers: readonly ButtonHandler[],
): Promise<Reply> {
  const handler = handlers.find((each) => press.buttonId.startsWith(each.prefix));
  if (handler === undefined) return refusal('That button is from an older message. Please ask again.');
  return guarded(press.memberId, services, () => handler.press(press, services));
}

async function guarded(memberId: string, services: Services, work: () => Promise<Reply>): Promise<Reply> {
  if (!services.allowance.take(memberId, services.clock.now())) {
    return refusal('That is a lot of questions at once. Please wait half a minute and ask again.');
  }
  try {
    return await work();
  } catch (error) {
    if (error instanceof PlainProblem) return refusal(error.message);
    if (error instanceof StoreProblem) return storeRefusal(error, services);
    services.log.error({ err: error }, 'a command failed');
    return refusal(
      'Something went wrong on my side, and I have noted it. Nothing you saved was lost. Please try again.',
    );
  }
}

/** What the person can put right is told; what the host must put right is logged, in words that hold no value. */
function storeRefusal({ code, message }: StoreProblem, { log }: Services): Reply {
  if (code === 'name-taken' || code === 'not-found' || code === 'bad-value') return refusal(message);
  log.error({ code }, `the store failed: ${message}`);
  return refusal('I cannot reach my notes just now, so nothing was changed. Please try again in a minute.');
}

/** A private reply that says why something was not done. */
export function refusal(sentence: string): Reply {
  return { headline: sentence, sections: [], private: true, refused: true };
}
