import { MS_PER_H, MS_PER_MIN } from '../../rules/index.ts';
import { nightLater } from '../learning/night-days.ts';
import { directPlace } from '../store/delivery-key.ts';
import type { Channel, Garden } from '../store/port/channels.ts';
import type { Claim, Delivery, DeliveryKey, PlannedDelivery } from '../store/port/deliveries.ts';
import type { Store } from '../store/store.ts';
import type { Reply } from '../talk/reply.ts';
import type { ClubTelling } from '../text/club-telling.ts';
import { clubAllClear, clubWarning } from '../text/club-warning.ts';
import { type Ahead, lowsAhead, worstAhead } from './ahead.ts';
import type { ClubNight, GardenNight, NightDesk } from './club-night.ts';
import { type Made, NOTHING } from './made.ts';
import { predictionsOf } from './predictions.ts';
import { clubTelling, needsWord, ownReply } from './telling.ts';
import { LATE, ownPartKind, suffixOf, workOf } from './work.ts';
import { hasWorsened } from './worsened.ts';

/** A break at the very time is asked through before the channel is told that there is no forecast (judgement). */
const ASKED_TIMES = 3;
const TRY_AGAIN_MIN = 2;
const USEFUL_AFTER_SHUTTING_H = 1;
/** On a quiet evening a grave night is told of when it is so many nights ahead: once, and early enough to get ready. */
const HEADS_UP_NIGHTS = 2;

/** A night as a channel is told of it. */
export class ChannelNight {
  readonly #store: Store;
  readonly #nights: NightDesk;

  constructor(store: Store, nights: NightDesk) {
    this.#store = store;
    this.#nights = nights;
  }

  /** Works out ahead what a warning will need. False: its forecasts are not there yet. */
  async prepare(warning: PlannedDelivery): Promise<boolean> {
    const { placeId, night, dueAt } = warning;
    const channel = await this.#store.channels.find(placeId);
    if (channel === undefined) return true;
    const gardens = await this.#gardens(channel, warning);
    const known = await this.#nights.prepare(gardens, night, dueAt);
    if (known === undefined) return false;
    const { calendar, shared } = this.#nights;
    worstAhead({ name: night, known }, calendar, dueAt, shared);
    return true;
  }

  /** The warning of a night. */
  async warning(claim: Claim, now: Date): Promise<Made> {
    const channel = await this.#store.channels.find(claim.placeId);
    if (channel?.paused !== undefined || channel === undefined) return { kind: 'drop', problem: 'paused-or-stopped' };
    const gardens = await this.#gardens(channel, claim);
    const club = await this.#nights.clubNight(gardens, claim.night, now);
    return this.#told(channel, club, claim, now);
  }

  /** Looks again, and tells what has become worse since the warning. */
  async check(claim: Claim, now: Date): Promise<Made> {
    const warning = await this.#warningOf(claim);
    // The warning itself is still to come, and will tell the newest.
    if (warning?.state === 'due' || warning?.state === 'sending') return NOTHING;
    if (warning?.state !== 'sent') return this.warning(claim, now);
    const channel = await this.#store.channels.find(claim.placeId);
    if (channel?.paused !== undefined || channel === undefined) return { kind: 'drop', problem: 'paused-or-stopped' };
    const gardens = (await this.#gardens(channel, claim)).filter((garden) => this.#canAct(garden, claim, now));
    return this.#worse(channel, await this.#nights.clubNight(gardens, claim.night, now), claim, now);
  }

  /** Tells the gardens for which there was no forecast, once there is one. */
  async late(claim: Claim, now: Date): Promise<Made> {
    const again: Made = { kind: 'later', until: minutesAfter(now, TRY_AGAIN_MIN), problem: 'no-forecast' };
    const warning = await this.#warningOf(claim);
    if (warning?.state === 'due' || warning?.state === 'sending') return again;
    const channel = await this.#store.channels.find(claim.placeId);
    if (channel?.paused !== undefined || channel === undefined) return { kind: 'drop', problem: 'paused-or-stopped' };
    const gardens = await this.#untold((await this.#gardens(channel, claim)).filter(hasCrops), claim.night);
    if (gardens.length === 0) return NOTHING;
    const club = await this.#nights.clubNight(gardens, claim.night, now);
    if (club.known.length === 0) return again;
    const telling = clubTelling(club, { now, ahead: undefined, markedBeds: await this.#markedBeds(club) });
    await this.#planOwnParts(channel, club, claim, now);
    const [own] = club.known;
    const reply =
      channel.kind === 'direct' && own !== undefined ? ownReply(own, now) : clubReply(telling, isNeeded(club, telling));
    return {
      ...{ kind: 'post', to: { kind: 'channel', channelId: channel.id } },
      reply: { ...reply, headline: `I have a forecast now. ${reply.headline}` },
      afterwards: () => this.#store.predictions.keep(club.known.flatMap((night) => predictionsOf(night, now))),
    };
  }

  async #untold(gardens: readonly Garden[], night: string): Promise<readonly Garden[]> {
    const ids = gardens.flatMap(({ beds }) => beds.map(({ id }) => id));
    const told = await this.#store.predictions.latest(ids, night);
    return gardens.filter(({ beds }) => !beds.some(({ id }) => told.has(id)));
  }

  async #warningOf({ placeId, night, kind }: Claim): Promise<Delivery | undefined> {
    return (await this.#store.deliveries.ofNight(placeId, night)).find((each) => isWarningOf(each, kind));
  }

  async #told(channel: Channel, club: ClubNight, claim: Claim, now: Date): Promise<Made> {
    if (isStillToAsk(club, claim)) {
      return { kind: 'later', until: minutesAfter(now, TRY_AGAIN_MIN), problem: 'no-forecast' };
    }
    const { calendar, shared } = this.#nights;
    const ahead = worstAhead(club, calendar, now, shared);
    const afterwards = () => this.#store.predictions.keep(club.known.flatMap((night) => predictionsOf(night, now)));
    const telling = clubTelling(club, {
      ...{ now, ahead, lowsAhead: lowsAhead(club, calendar) },
      markedBeds: await this.#markedBeds(club),
    });
    const needed = isNeeded(club, telling);
    const asked = channel.allClear || isHeadsUp(ahead);
    if (!needed && !(asked && telling.gardens.length > 0)) return { kind: 'nothing-to-say', afterwards };
    if (needed) await this.#planOwnParts(channel, club, claim, now);
    if (telling.gaps.length > 0) await this.#planLateWord(claim, now);
    const [own] = channel.kind === 'direct' && club.unknown.length === 0 ? club.known : [];
    const reply = own === undefined ? clubReply(telling, needed) : ownReply(own, now);
    const told = await this.#withOutage(reply, claim);
    return { kind: 'post', to: { kind: 'channel', channelId: channel.id }, reply: told, afterwards };
  }

  /** Owns up to the night before, where nothing ran until its warning was of no use. */
  async #withOutage(reply: Reply, { placeId, night, kind }: Claim): Promise<Reply> {
    const before = await this.#store.deliveries.ofNight(placeId, nightLater(night, -1));
    const missed = before.some((each) => isWarningOf(each, kind) && each.state === 'missed');
    if (!missed) return reply;
    const line = 'I was not running when last night’s warning was due, and told you nothing. I am sorry.';
    return { ...reply, sections: [...reply.sections, { lines: [line] }] };
  }

  async #worse(channel: Channel, club: ClubNight, claim: Claim, now: Date): Promise<Made> {
    const ids = club.known.flatMap(({ bedOf }) => [...bedOf.values()].map(({ id }) => id));
    const told = await this.#store.predictions.latest(ids, claim.night);
    const nights = club.known.flatMap((night) => {
      const beds = night.outlook.beds.filter((bed) => hasWorsened(told.get(night.bedOf.get(bed.bed)?.id ?? ''), bed));
      return beds.length === 0 ? [] : [{ ...night, outlook: { ...night.outlook, beds } }];
    });
    if (nights.length === 0) return NOTHING;
    const worse = nights.flatMap(({ outlook }) => outlook.beds);
    // Where the warning had no forecast, this is the first that is told.
    const isSecond = nights.some(({ bedOf }) => [...bedOf.values()].some(({ id }) => told.has(id)));
    await this.#planOwnParts(channel, { known: nights, unknown: [] }, claim, now);
    const telling = clubTelling(club, {
      ...{ now, ahead: undefined, markedBeds: await this.#markedBeds(club) },
      ...(isSecond && { worse: new Set(worse) }),
    });
    const [own] = nights;
    const reply =
      channel.kind === 'direct' && own !== undefined ? secondReply(own, now, isSecond) : clubWarning(telling);
    const afterwards = () => this.#store.predictions.keep(nights.flatMap((night) => predictionsOf(night, now)));
    return { kind: 'post', to: { kind: 'channel', channelId: channel.id }, reply, afterwards };
  }

  /** Of the channel's those whose time it is. */
  async #gardens({ id, leadH }: Channel, key: DeliveryKey): Promise<readonly Garden[]> {
    return this.#nights.lookedAfter(await this.#store.channels.gardens(id), key, leadH);
  }

  #canAct(garden: Garden, { night }: Claim, now: Date): boolean {
    const shutBy = this.#nights.nightOf(garden, night)?.shutBy;
    return shutBy !== undefined && now < usefulUntil(shutBy);
  }

  async #markedBeds({ known, name }: ClubNight): Promise<number> {
    const ids = known.flatMap(({ garden }) => garden.beds.map(({ id }) => id));
    return ids.length === 0 ? 0 : (await this.#store.covered.marked(ids, name)).size;
  }

  /** So that news of who has no forecast yet follows as soon as there is one. */
  async #planLateWord({ placeId, night, kind, giveUpAt }: Claim, now: Date): Promise<void> {
    const late = { placeId, night, kind: `${LATE}${suffixOf(kind)}` };
    await this.#store.deliveries.plan([{ ...late, dueAt: minutesAfter(now, TRY_AGAIN_MIN), giveUpAt }]);
  }

  /** Members' own copies become rows of the ledger: told once, whatever happens to this process. */
  async #planOwnParts(
    channel: Channel,
    club: Pick<ClubNight, 'known' | 'unknown'>,
    claim: Claim,
    now: Date,
  ): Promise<void> {
    if (channel.kind === 'direct') return;
    const wanted = [...club.known.filter(needsWord), ...club.unknown].filter(
      ({ garden }) => garden.wantsDirect && garden.member.directMessages,
    );
    const rows = wanted.map(
      ({ garden, night }): PlannedDelivery => ({
        placeId: directPlace(garden.member.id),
        night: claim.night,
        kind: ownPartKind(claim.kind, garden.site.id),
        dueAt: now,
        giveUpAt: usefulUntil(night.shutBy),
      }),
    );
    const useful = rows.filter(({ giveUpAt }) => giveUpAt > now);
    if (useful.length > 0) await this.#store.deliveries.plan(useful);
  }
}

/** Of the same gardens. */
function isWarningOf(each: Delivery, kind: string): boolean {
  return workOf(each)?.kind === 'warning' && suffixOf(each.kind) === suffixOf(kind);
}

function usefulUntil(shutBy: Date): Date {
  return new Date(shutBy.getTime() + USEFUL_AFTER_SHUTTING_H * MS_PER_H);
}

/** Nothing is known of anybody's night, and services have hardly been asked. */
function isStillToAsk({ known, unknown }: ClubNight, { attempts }: Claim): boolean {
  return known.length === 0 && unknown.length > 0 && attempts < ASKED_TIMES;
}

function minutesAfter(at: Date, minutes: number): Date {
  return new Date(at.getTime() + minutes * MS_PER_MIN);
}

function hasCrops({ beds }: Garden): boolean {
  return beds.some(({ plantings }) => plantings.length > 0);
}

/** Is anything to be done, or not known? */
function isNeeded({ known }: ClubNight, { gardens, gaps, failedCount }: ClubTelling): boolean {
  return gaps.length > 0 || failedCount > 0 || (gardens.length > 0 && known.some(needsWord));
}

function clubReply(telling: ClubTelling, needed: boolean): Reply {
  return needed ? clubWarning(telling) : clubAllClear(telling);
}

function isHeadsUp(ahead: Ahead | undefined): boolean {
  const verdict = ahead?.worst.verdict.worst.verdict;
  return ahead?.nightsAhead === HEADS_UP_NIGHTS && (verdict === 'leaf burn' || verdict === 'winterkill');
}

function secondReply(night: GardenNight, now: Date, isSecond: boolean) {
  const reply = ownReply(night, now);
  return isSecond ? { ...reply, headline: `Worse than I said. ${reply.headline}` } : reply;
}
