import { z } from 'zod';
import type { Button, Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { capitalised } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import type { ButtonHandler, Command } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, oneOf } from '../options.ts';
import type { Services } from '../services.ts';
import { ownSite, ownSites, siteOption } from '../site/own-sites.ts';
import { forecastsOf } from '../site/site-weather.ts';
import { read } from '../typed/read.ts';
import { NIGHTS_AND_WEEK, type NightOrWeek } from './night-option.ts';
import { ownNightsReply } from './own-nights.ts';
import { ownWeekReply } from './own-week.ts';

const SAMPLE_NOTICE = 'A sample garden of our own invention. For yours: /site set, then /bed add.';

const schema = z.object({ site: maybe(read), night: maybe(oneOf('The night', NIGHTS_AND_WEEK)) });

export const TONIGHT: Command = {
  name: 'tonight',
  description: 'Which of your beds are at risk, and what to do before dark',
  action: {
    description: 'Which of your beds are at risk, and what to do before dark',
    example: 'tonight night:tomorrow',
    options: [
      {
        name: 'night',
        description: 'Which night, or the whole week; tonight unless you say',
        kind: 'text',
        choices: NIGHTS_AND_WEEK.map((value) => ({ label: capitalised(value), value })),
      },
      siteOption('Which of your sites; all of them unless you say'),
    ],
    private: true,
    run: tonight,
  },
};

async function tonight(request: Request, services: Services): Promise<Reply> {
  const { site: typed, night = 'tonight' } = checkedOptions(request, schema);
  const reader = await readerFor(request, services);
  const { memberId, now } = request;
  const sample = await sampleNight(night, memberId, reader, services);
  if (sample !== undefined) return sample;
  const store = storeOf(services);
  const sites = typed === undefined ? await ownSites(store, memberId) : [await ownSite(store, request, typed)];
  if (night === 'week') return ownWeekReply({ sites, reader, now }, store, forecastsOf(services));
  return ownNightsReply({ sites, night, reader, now }, store, forecastsOf(services));
}

/** The sample garden's night, for who has no garden here yet where it is shown. */
export async function sampleNight(
  night: NightOrWeek,
  memberId: string,
  reader: Reader,
  { sample, store }: Services,
): Promise<Reply | undefined> {
  if (sample === undefined || ((await store?.sites.list(memberId)) ?? []).length > 0) return undefined;
  const reply = await sample(reader, night);
  return { ...reply, sections: [...reply.sections, { lines: [SAMPLE_NOTICE] }] };
}

const MY_BEDS = 'my-beds';

/** Under a warning for all: opens the pressing member's own beds, for that member alone. */
export const myBedsButton: Button = { id: MY_BEDS, label: 'My beds' };

export const MY_BEDS_BUTTON: ButtonHandler = {
  prefix: MY_BEDS,
  private: true,
  async press(press, services) {
    const store = storeOf(services);
    const sites = await ownSites(store, press.memberId);
    const reader = await readerFor(press, services);
    return ownNightsReply({ sites, night: 'tonight', reader, now: press.now }, store, forecastsOf(services));
  },
};
