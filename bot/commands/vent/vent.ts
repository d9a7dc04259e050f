import { z } from 'zod';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { capitalised } from '../../text/phrases.ts';
import type { Command } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, oneOf } from '../options.ts';
import type { Services } from '../services.ts';
import { ownSite, siteOption } from '../site/own-sites.ts';
import { read } from '../typed/read.ts';
import { DAY_NAMES, ownDayReply } from './own-day.ts';

const SAMPLE_NOTICE = 'A sample garden of our own invention. For yours: /site set, then /bed add.';

const schema = z.object({ site: maybe(read), day: maybe(oneOf('The day', DAY_NAMES)) });

export const VENT: Command = {
  name: 'vent',
  description: 'When to open your covers, how wide, when to shut, and when to pick',
  action: {
    description: 'When to open your covers, how wide, when to shut, and when to pick',
    example: 'vent day:tomorrow',
    options: [
      {
        name: 'day',
        description: 'Which day; today until it is time to shut, then tomorrow',
        kind: 'text',
        choices: DAY_NAMES.map((value) => ({ label: capitalised(value), value })),
      },
      siteOption('Which of your sites; the usual one unless you say'),
    ],
    private: true,
    run: vent,
  },
};

async function vent(request: Request, services: Services): Promise<Reply> {
  const { site: typed, day } = checkedOptions(request, schema);
  const reader = await readerFor(request, services);
  const { memberId, now } = request;
  const { sampleDay, store } = services;
  if (sampleDay !== undefined && ((await store?.sites.list(memberId)) ?? []).length === 0) {
    const reply = await sampleDay(reader);
    return { ...reply, sections: [...reply.sections, { lines: [SAMPLE_NOTICE] }] };
  }
  const site = await ownSite(storeOf(services), request, typed);
  return ownDayReply({ site, reader, now, ...(day && { day }) }, services);
}
