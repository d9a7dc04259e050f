import type { ButtonHandler, Command } from '../../commands/command.ts';
import type { Services } from '../../commands/services.ts';
import type { PlainProblem } from '../../ground/errors.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Press, Request } from '../../talk/request.ts';
import type { DiscordApi } from './discord-api.ts';

/** What stands behind a door: the commands, and what answers them. */
export interface Desk {
  readonly commands: readonly Command[];
  readonly buttons: readonly ButtonHandler[];
  readonly services: Services;
  answer(request: Request, services: Services, commands: readonly Command[]): Promise<Reply>;
  answerPress(press: Press, services: Services, buttons: readonly ButtonHandler[]): Promise<Reply>;
}

export interface DoorOptions {
  readonly desk: Desk;
  readonly api: DiscordApi;
  /** Discord's address in use, without version and without trailing slash. */
  readonly apiBase: string;
}

/** A way in that is open. */
export interface Door {
  /** Settles when the door answers; rejects with a `PlainProblem` that says what a host must put right. */
  readonly ready: Promise<void>;
  /** Whether what people ask now reaches us. */
  isOpen(): boolean;
  /** Finishes what is being answered, for a while, then closes. */
  stop(): Promise<void>;
}

/** Told when a door that was open cannot go on. */
export type OnFatal = (problem: PlainProblem) => void;
