import { newId } from './ids.ts';
import { type Answer, type Json, type RecordedRequest, refusal, type SentFile } from './wire.ts';

/** A message as the asking person sees it now. */
export interface ShownMessage {
  readonly body: Json;
  readonly files: readonly SentFile[];
  /** Seen by the asking person alone. */
  readonly isPrivate: boolean;
}

export interface FirstAnswer {
  readonly type: number;
  readonly data: Json;
  readonly files: readonly SentFile[];
  /** From sending the interaction. */
  readonly afterMs: number;
}

/** Discord's time for a first answer. */
const FIRST_WITHIN_MS = 3000;
const EPHEMERAL = 64;

/** One interaction, from asking to the last edit, by Discord's rules. */
export class Conversation {
  readonly interaction: Json;
  readonly #askedMs = performance.now();
  readonly first: Promise<FirstAnswer>;
  readonly edits: ShownMessage[] = [];
  readonly followUps: ShownMessage[] = [];
  #settleFirst: ((first: FirstAnswer) => void) | undefined;
  #failFirst: ((error: Error) => void) | undefined;
  #firstAnswer: FirstAnswer | undefined;
  #shown: ShownMessage | undefined;
  #thinking = false;
  readonly #waiting: (() => void)[] = [];

  constructor(interaction: Json) {
    this.interaction = interaction;
    this.first = new Promise((resolve, reject) => {
      this.#settleFirst = resolve;
      this.#failFirst = reject;
    });
    this.first.catch(() => undefined);
    const late = setTimeout(() => this.#failFirst?.(new Error('The application did not respond')), FIRST_WITHIN_MS);
    late.unref();
    void this.first.then(
      () => clearTimeout(late),
      () => undefined,
    );
  }

  /** The message that stands there once nothing is thinking any more. */
  async shown(): Promise<ShownMessage> {
    await this.first;
    while (this.#shown === undefined || this.#thinking) {
      await new Promise<void>((resolve) => this.#waiting.push(resolve));
    }
    return this.#shown;
  }

  /** Waits until so many follow-ups have come. */
  async followedUp(count: number): Promise<readonly ShownMessage[]> {
    while (this.followUps.length < count) await new Promise<void>((resolve) => this.#waiting.push(resolve));
    return this.followUps;
  }

  /** A first answer, over the callback or inside an HTTP response. */
  answer(response: Json, files: readonly SentFile[]): Answer {
    const afterMs = performance.now() - this.#askedMs;
    if (this.#firstAnswer !== undefined) return refusal(400, 40060, 'Interaction has already been acknowledged.');
    if (afterMs > FIRST_WITHIN_MS) return refusal(404, 10062, 'Unknown interaction');
    const type = Number(response['type']);
    const data = (response['data'] as Json | undefined) ?? {};
    this.#firstAnswer = { type, data, files, afterMs };
    const isPrivate = (Number(data['flags'] ?? 0) & EPHEMERAL) !== 0;
    if (type === 4) this.#shown = { body: data, files, isPrivate };
    if (type === 5) {
      this.#shown = { body: {}, files: [], isPrivate };
      this.#thinking = true;
    }
    this.#settleFirst?.(this.#firstAnswer);
    this.#wake();
    return { status: 204 };
  }

  /** An edit never changes who sees the message. */
  edit(request: RecordedRequest): Answer {
    if (this.#shown === undefined) return refusal(404, 10015, 'Unknown Webhook');
    const body = { ...this.#shown.body, ...(request.body as Json) };
    this.#shown = { body, files: request.files, isPrivate: this.#shown.isPrivate };
    this.edits.push(this.#shown);
    this.#thinking = false;
    this.#wake();
    return { status: 200, json: { id: newId(), content: '' } };
  }

  followUp(request: RecordedRequest): Answer {
    if (this.#firstAnswer === undefined) return refusal(404, 10015, 'Unknown Webhook');
    // The first one after "thinking" takes its place, and who sees it stays as it was.
    if (this.#thinking) return this.edit(request);
    const body = request.body as Json;
    const isPrivate = (Number(body['flags'] ?? 0) & EPHEMERAL) !== 0;
    this.followUps.push({ body, files: request.files, isPrivate });
    this.#wake();
    return { status: 200, json: { id: newId(), content: '' } };
  }

  /** Discord's HTTP client gave up, or got something else than an answer. */
  fail(reason: string): void {
    this.#failFirst?.(new Error(reason));
  }

  #wake(): void {
    for (const resolve of this.#waiting.splice(0)) resolve();
  }
}
