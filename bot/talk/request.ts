/** A command as any door hands it on: who asks, where, in which words. Knows nothing of Discord or of terminals. */
export interface Request {
  readonly memberId: string;
  /** Where it was asked. `conversationId` keeps a follow-up question together with its answer. */
  readonly place: Place;
  readonly command: string;
  /** The sub-command, such as `add` of `bed add`; absent where a command has none. */
  readonly action?: string;
  /** Options as typed; every command checks its own. */
  readonly options: Readonly<Record<string, OptionValue>>;
  /** BCP 47 tag of the asking person's language, such as `en-US`. */
  readonly locale: string;
  /** May this person change what a whole channel gets (Discord: Manage Server)? */
  readonly mayManageChannel: boolean;
  readonly now: Date;
}

export type OptionValue = string | number | boolean | UploadedFile | undefined;

export interface UploadedFile {
  readonly name: string;
  readonly sizeBytes: number;
  readonly contentType: string | undefined;
  /** Fetches the text, refusing anything over `maxBytes`. */
  text(maxBytes: number): Promise<string>;
}

export interface Place {
  readonly kind: 'channel' | 'direct' | 'terminal';
  readonly channelId?: string;
  readonly guildId?: string;
  readonly conversationId: string;
}

/** A pressed button, by the id that a reply gave it. */
export interface Press extends Omit<Request, 'command' | 'action' | 'options'> {
  readonly buttonId: string;
}
