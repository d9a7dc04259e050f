import type { Understood } from '../../language/understood.ts';

const REMEMBERED_MS = 10 * 60_000;
/** Most conversations kept; the oldest go first. */
const MOST_KEPT = 5000;

/** What was understood last in each conversation, for ten minutes, so that "and at 10 °F?" makes sense. In memory only. */
export class Conversations {
  readonly #last = new Map<string, { readonly understood: Understood; readonly at: number }>();

  previous(conversationId: string, now: Date): Understood | undefined {
    const last = this.#last.get(conversationId);
    return last !== undefined && now.getTime() - last.at <= REMEMBERED_MS ? last.understood : undefined;
  }

  remember(conversationId: string, understood: Understood, now: Date): void {
    const at = now.getTime();
    this.#last.delete(conversationId);
    this.#last.set(conversationId, { understood, at });
    this.#forget(at);
  }

  get size(): number {
    return this.#last.size;
  }

  /** The oldest come first. */
  #forget(now: number): void {
    for (const [conversationId, { at }] of this.#last) {
      if (this.#last.size <= MOST_KEPT && now - at <= REMEMBERED_MS) return;
      this.#last.delete(conversationId);
    }
  }
}
