import { MS_PER_H } from '../../rules/index.ts';
import { deliveryNonce, directPlace } from '../store/delivery-key.ts';
import type { Claim, PlannedDelivery } from '../store/port/deliveries.ts';
import { StoreProblem } from '../store/store-problem.ts';
import { PostError } from '../talk/channel-poster.ts';
import { CellDesk } from './cell-desk.ts';
import { ChannelNight } from './channel-night.ts';
import { NightDesk } from './club-night.ts';
import { gather } from './gather.ts';
import { followHardening } from './hardening.ts';
import type { JobServices } from './job-services.ts';
import { type Made, NOTHING } from './made.ts';
import { openingPost } from './opening.ts';
import { ownPart } from './own-part.ts';
import { Pace } from './pace.ts';
import { pauseNotice } from './pause-notice.ts';
import { marked } from './rehearsal.ts';
import { RunTally } from './run-tally.ts';
import { tryAgainAt } from './try-again.ts';
import { pauseKind, type Work, workOf } from './work.ts';

/** What a row is settled with when nothing had to be posted. */
export const NO_MESSAGE = 'nothing-to-say';

const PAUSE_NOTICE_H = 24;

type Post = Extract<Made, { kind: 'post' }>;

/** Works on rows of the ledger that this process holds. Nothing that it does ever throws: a fault stays with its row. */
export class Nightly {
  readonly #services: JobServices;
  readonly #cells: CellDesk;
  readonly #nights: NightDesk;
  readonly #channels: ChannelNight;
  readonly #pace: Pace;
  readonly #tally = new RunTally();

  /** @param postsPerS - Of all processes together. */
  constructor(services: JobServices, postsPerS: number) {
    this.#services = services;
    this.#pace = new Pace(postsPerS, () => services.store.deliveries.busyWorkers());
    this.#cells = new CellDesk(services.store, services.forecasts, (cellId) => this.#tally.asked(cellId));
    this.#nights = new NightDesk(services.store, this.#cells, this.#isolated);
    this.#channels = new ChannelNight(services.store, this.#nights);
  }

  async handle(claim: Claim): Promise<void> {
    const work = workOf(claim);
    const begun = this.#now();
    try {
      if (work === undefined) await this.#services.store.deliveries.giveUp(claim, 'unknown-kind');
      else await this.#settle(claim, await this.#made(work, claim, begun));
    } catch (error) {
      await this.#failed(claim, work, error);
    }
    if (work !== undefined) this.#tally.worked(work, claim, begun, this.#now());
  }

  /** Works out ahead what a warning will need; what goes wrong shows when it is due. False: worth another try. */
  async prepare(warning: PlannedDelivery): Promise<boolean> {
    try {
      return await this.#channels.prepare(warning);
    } catch (error) {
      this.#services.log.debug({ err: error }, 'a warning could not be prepared');
      return false;
    }
  }

  /** Nothing is in hand, nor soon to be: lets go of what was worked out, and tells the operator what was done. */
  rest(): void {
    this.#nights.forgetShared();
    const figures = this.#tally.ended();
    if (figures !== undefined) this.#services.log.info(figures, 'a nightly run is done');
  }

  #now(): Date {
    return this.#services.clock.now();
  }

  async #made(work: Work, claim: Claim, now: Date): Promise<Made> {
    const { store } = this.#services;
    switch (work.kind) {
      case 'warning':
        return this.#channels.warning(claim, now);
      case 'check':
        return this.#channels.check(claim, now);
      case 'late':
        return this.#channels.late(claim, now);
      case 'own-part':
        return ownPart(work, claim, now, { store, nights: this.#nights });
      case 'pause-notice':
        return pauseNotice(work, store);
      case 'gather':
        return gather(claim, now, this.#cells);
      case 'opening':
        return openingPost(claim, now, this.#services, {
          ...{ cells: this.#cells, nights: this.#nights, isolated: this.#isolated },
        });
      case 'hardening': {
        const { calendar } = this.#nights;
        const gardens = await store.channels.gardens(claim.placeId);
        await followHardening(gardens, now, { store, calendar, isolated: this.#isolated });
        return NOTHING;
      }
    }
  }

  async #settle(claim: Claim, made: Made): Promise<void> {
    const { deliveries } = this.#services.store;
    switch (made.kind) {
      case 'later':
        await deliveries.postpone(claim, made.until, made.problem);
        return;
      case 'drop':
        await deliveries.giveUp(claim, made.problem);
        return;
      case 'nothing-to-say':
        await this.#isolated(async () => made.afterwards?.());
        await deliveries.settle(claim, NO_MESSAGE);
        return;
      case 'post': {
        const messageId = (await this.#found(claim, made)) ?? (await this.#posted(claim, made));
        if (messageId === undefined) return;
        this.#tally.sent(claim, this.#now());
        await this.#isolated(async () => made.afterwards?.());
        await deliveries.settle(claim, messageId);
      }
    }
  }

  /** What an earlier attempt has left; only a first one can be sure that there is nothing. */
  async #found(claim: Claim, { to }: Post): Promise<string | undefined> {
    if (claim.attempts === 1) return undefined;
    const { poster } = this.#services;
    try {
      const channelId = to.kind === 'channel' ? to.channelId : await poster.directChannelId(to.memberId);
      return (await poster.findRecent(channelId, claim.firstClaimedAt, deliveryNonce(claim)))?.messageId;
    } catch (error) {
      // Who may not read back posts again: a frost warning twice beats none, and the nonce guards the next minutes.
      if (error instanceof PostError && isOurLack(error)) return undefined;
      throw error;
    }
  }

  /** Undefined: another worker may be about to post, so this one must not. */
  async #posted(claim: Claim, { to, reply }: Post): Promise<string | undefined> {
    const { poster, store, clock } = this.#services;
    const nonce = deliveryNonce(claim);
    const shown = marked(reply, clock);
    return this.#pace.inTurn(async () => {
      if (claim.giveUpAt <= this.#now() || !(await store.deliveries.mayPost(claim))) return undefined;
      const { messageId } =
        to.kind === 'channel'
          ? await poster.send(to.channelId, shown, nonce)
          : await poster.direct(to.memberId, shown, nonce);
      return messageId;
    });
  }

  /** One garden's fault is told to the operator and stops nobody else's. */
  readonly #isolated = async <T>(work: () => Promise<T>): Promise<T | undefined> => {
    try {
      return await work();
    } catch (error) {
      if (error instanceof StoreProblem && error.code !== 'bad-value') throw error;
      this.#services.log.error({ err: error }, 'a garden could not be worked out');
      return undefined;
    }
  };

  /** The row is put off, given up, or left to the end of its lease where the store itself fails. */
  async #failed(claim: Claim, work: Work | undefined, error: unknown): Promise<void> {
    const { log, store } = this.#services;
    const facts = { kind: work?.kind, night: claim.night, attempt: claim.attempts };
    try {
      if (error instanceof PostError) await this.#postFailed(claim, work, error);
      else {
        log.error({ ...facts, err: error }, 'a delivery failed');
        await store.deliveries.postpone(claim, tryAgainAt(this.#now(), claim.attempts), 'fault');
      }
    } catch (second) {
      log.warn({ ...facts, err: second }, 'a delivery is left to the end of its lease');
    }
  }

  async #postFailed(claim: Claim, work: Work | undefined, error: PostError): Promise<void> {
    const { log, store } = this.#services;
    const toMember = work?.kind === 'own-part' || work?.kind === 'pause-notice';
    if (!toMember && (isOurLack(error) || error.code === 'dm-closed')) return this.#pause(claim, error);
    if (error.code === 'refused' || (toMember && (isOurLack(error) || error.code === 'dm-closed'))) {
      log.warn({ kind: work?.kind, code: error.code }, error.message);
      await this.#giveUp(claim, error);
      return;
    }
    const facts = { kind: work?.kind, code: error.code, attempt: claim.attempts };
    const until = tryAgainAt(this.#now(), claim.attempts, error.retryAfterS);
    if (until < claim.giveUpAt) {
      log.warn(facts, error.message);
      await store.deliveries.postpone(claim, until, error.code);
    } else {
      log.error(facts, 'a post came to nothing before it was stale');
      await this.#giveUp(claim, error);
    }
  }

  async #giveUp(claim: Claim, { code }: PostError): Promise<void> {
    this.#tally.failed();
    await this.#services.store.deliveries.giveUp(claim, code);
  }

  /** The notice is planned first, so that a process that dies in between leaves it to be sent. */
  async #pause(claim: Claim, error: PostError): Promise<void> {
    const { code } = error;
    const { store, log } = this.#services;
    const now = this.#now();
    const channel = await store.channels.find(claim.placeId);
    if (channel?.startedBy !== undefined && channel.kind === 'channel') {
      const giveUpAt = new Date(now.getTime() + PAUSE_NOTICE_H * MS_PER_H);
      const kind = pauseKind(channel.id);
      await store.deliveries.plan([
        { placeId: directPlace(channel.startedBy), night: claim.night, kind, dueAt: now, giveUpAt },
      ]);
    }
    const isFirst = await store.channels.pause(claim.placeId, { reason: code, at: now });
    await this.#giveUp(claim, error);
    if (isFirst) log.warn({ channel: claim.placeId, code }, 'a channel is paused');
  }
}

/** The bot lacks a right, or the place is gone: trying again helps nobody. */
function isOurLack({ code }: PostError): boolean {
  return code === 'missing-access' || code === 'missing-permission' || code === 'channel-gone';
}
