import assert from 'node:assert/strict';
import fc from 'fast-check';
import { LIMITS } from '../../bot/chat/discord/limits.ts';
import { rendered } from '../../bot/chat/discord/render.ts';
import { typedLine } from '../../bot/chat/terminal/typed-line.ts';
import type { Action, Command } from '../../bot/commands/command.ts';
import { COMMANDS } from '../../bot/commands/commands.ts';
import { answer } from '../../bot/commands/dispatch.ts';
import type { Services } from '../../bot/commands/services.ts';
import type { Request } from '../../bot/talk/request.ts';
import { CHANNEL, DIRECT, TERMINAL } from '../bot/commands/club.ts';
import { FIXTURE_NOW } from '../fakes/forecast-services.ts';
import { hostileText, hostileValue } from './hostile-words.ts';

/** Discord's client waits three seconds; a machine busy with tests is given more. [ms] */
const ANSWER_WITHIN_MS = 2500;

interface Named {
  readonly command: string;
  readonly action?: string;
  readonly spec: Action;
}

const ACTIONS: readonly Named[] = COMMANDS.flatMap(namedActions);

function namedActions({ name: command, action, actions }: Command): readonly Named[] {
  if (action !== undefined) return [{ command, spec: action }];
  return Object.entries(actions ?? {}).map(([each, spec]) => ({ command, action: each, spec }));
}

const filledIn = fc.constantFrom(...ACTIONS).chain(({ spec, command, action }) => {
  const values = Object.fromEntries(
    spec.options.map(({ name }) => [name, fc.option(hostileValue, { nil: undefined })]),
  );
  return fc.record({ options: fc.record(values), command: fc.constant(command), action: fc.constant(action) });
});

const asked: fc.Arbitrary<Request> = fc
  .record({
    filled: filledIn,
    memberId: fc.constantFrom('anna', 'ben', 'carla'),
    place: fc.constantFrom(CHANNEL, DIRECT, TERMINAL),
    locale: fc.constantFrom('en-US', 'en-GB', 'de', 'x-klingon', ''),
    mayManageChannel: fc.boolean(),
  })
  .map(({ filled: { action, ...filled }, ...who }) => ({
    ...who,
    ...filled,
    ...(action !== undefined && { action }),
    now: FIXTURE_NOW,
  }));

/**
 * Whatever is filled in, the person gets a sentence that fits into Discord, pings nobody, comes soon, and is none of
 * "something went wrong".
 *
 * @param logged - What has been logged at the level of errors.
 */
export function optionsProperty(services: Services, logged: () => string): fc.IAsyncProperty<[Request]> {
  return fc.asyncProperty(asked, async (request) => {
    const begun = performance.now();
    const reply = await answer(request, services, COMMANDS);
    const tookMs = performance.now() - begun;
    assert.ok(tookMs < ANSWER_WITHIN_MS, `the answer took ${tookMs} ms`);
    assert.ok(!reply.headline.includes('Something went wrong'), logged());
    const { body } = rendered(reply);
    assert.ok(body.content.length > 0 && body.content.length <= LIMITS.contentCharacters);
    assert.deepEqual(body.allowed_mentions, { parse: [] });
    assert.doesNotMatch(body.content, /@everyone|@here|(?<!\\)<[@#t&]/);
  });
}

/** Whatever is typed at a terminal is a command, a question, or a problem in one sentence. */
export function typedLineProperty(): fc.IProperty<[string]> {
  const start = fc.constantFrom('', '/', ...ACTIONS.map(({ command, action }) => `${command} ${action ?? ''} `));
  const line = fc.tuple(start, hostileText).map(([begun, rest]) => begun + rest);
  return fc.property(line, (text) => {
    const typed = typedLine(text, COMMANDS);
    assert.ok(typed.ok ? COMMANDS.some(({ name }) => name === typed.value.command) : typed.problem.length > 0);
  });
}
