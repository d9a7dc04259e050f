import type { Reply } from '../talk/reply.ts';
import type { Press, Request } from '../talk/request.ts';
import type { Services } from './services.ts';

/** One option of a command as every door shows it. Names and descriptions are ours; Discord allows 25 options and 100 characters. */
export interface OptionSpec {
  readonly name: string;
  readonly description: string;
  readonly kind: 'text' | 'number' | 'whole-number' | 'yes-no' | 'file' | 'channel';
  readonly required?: boolean;
  readonly choices?: readonly { readonly label: string; readonly value: string }[];
  /** Completes what is being typed; at most 25 suggestions are used. */
  readonly suggest?: (typed: string, request: Request, services: Services) => Promise<readonly Suggestion[]>;
}

export interface Suggestion {
  readonly label: string;
  readonly value: string;
}

/** A thing a command does: the whole command, or one of its actions. */
export interface Action {
  readonly description: string;
  readonly options: readonly OptionSpec[];
  /** An example as it would be typed, for `help`. */
  readonly example: string;
  /** Only people who may manage the channel. */
  readonly managersOnly?: boolean;
  /** Answers only the asking person. Doors must know before the answer is ready. */
  readonly private: boolean;
  run(request: Request, services: Services): Promise<Reply>;
}

/** A command is either one action, or several actions by name. */
export type Command = { readonly name: string; readonly description: string } & (
  | { readonly action: Action; readonly actions?: never }
  | { readonly action?: never; readonly actions: Readonly<Record<string, Action>> }
);

/** Answers presses of buttons whose id begins with `prefix`. */
export interface ButtonHandler {
  readonly prefix: string;
  readonly private: boolean;
  press(press: Press, services: Services): Promise<Reply>;
}
