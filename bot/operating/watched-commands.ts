import type { Action, ButtonHandler, Command } from '../commands/command.ts';
import { PlainProblem } from '../ground/errors.ts';
import { StoreProblem } from '../store/store-problem.ts';
import type { Reply } from '../talk/reply.ts';
import type { CommandOutcome, Metrics } from './metrics.ts';

/** The same commands, each counted and timed. */
export function watchedCommands(commands: readonly Command[], metrics: Metrics): readonly Command[] {
  return commands.map((command) => {
    const { name, description } = command;
    if (command.action !== undefined) return { name, description, action: watched(command.action, name, metrics) };
    const actions = Object.entries(command.actions).map(
      ([action, each]) => [action, watched(each, `${name} ${action}`, metrics)] as const,
    );
    return { name, description, actions: Object.fromEntries(actions) };
  });
}

/** Buttons under the part of their id that is ours. */
export function watchedButtons(buttons: readonly ButtonHandler[], metrics: Metrics): readonly ButtonHandler[] {
  return buttons.map((button) => ({
    ...button,
    press: (press, services) => counted(`button ${button.prefix}`, metrics, () => button.press(press, services)),
  }));
}

function watched(action: Action, name: string, metrics: Metrics): Action {
  return { ...action, run: (request, services) => counted(name, metrics, () => action.run(request, services)) };
}

async function counted(name: string, metrics: Metrics, work: () => Promise<Reply>): Promise<Reply> {
  const begun = performance.now();
  let outcome: CommandOutcome = 'failed';
  try {
    const reply = await work();
    outcome = reply.refused === true ? 'refused' : 'answered';
    return reply;
  } catch (error) {
    if (isForThePerson(error)) outcome = 'refused';
    throw error;
  } finally {
    metrics.commandDone(name, outcome, (performance.now() - begun) / 1000);
  }
}

/** What a person can put right is no failure of ours. */
function isForThePerson(error: unknown): boolean {
  if (error instanceof StoreProblem) return ['name-taken', 'not-found', 'bad-value'].includes(error.code);
  return error instanceof PlainProblem;
}
