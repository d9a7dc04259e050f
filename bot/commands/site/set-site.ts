import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, option } from '../options.ts';
import type { Services } from '../services.ts';
import { read } from '../typed/read.ts';
import { siteLines } from './site-lines.ts';
import { PLACE_OPTIONS, placeFacts, placeSchema } from './site-options.ts';

const USUAL_NAME = 'Home';
/** Enough for anyone, and a bound on what one member can make the services be asked (judgement). */
const MOST_SITES = 10;

export const SET_SITE: Action = {
  description: 'Tells where you grow, so that the forecast is for your garden',
  example: 'site set lat:43.10 lon:-76.30 height:490ft exposure:hollow',
  options: PLACE_OPTIONS.map((each) => (each.name === 'lat' ? { ...each, required: true } : each)),
  private: true,
  run: setSite,
};

async function setSite(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const { memberId, now, locale } = request;
  const reader = await readerFor(request, services);
  const schema = z.object({
    ...placeSchema(reader.units),
    lat: option('Say where: lat and lon, such as lat:43.10 lon:-76.30.', read),
  });
  const { lat, lon, height, exposure, horizon = [], name = USUAL_NAME } = checkedOptions(request, schema);
  const place = placeFacts(lat, lon);
  const sites = await store.sites.list(memberId);
  if (sites.length >= MOST_SITES) throw new PlainProblem(`You have ${MOST_SITES} sites already; remove one first.`);
  if (sites.some((site) => site.name.toLowerCase() === name.toLowerCase())) {
    throw new PlainProblem(
      `You have a site called ${name} already: change it with /site change, or give this one another name.`,
    );
  }
  const facts = { ...place, name, heightM: height, exposure: exposure ?? 'open', horizonDeg: horizon };
  const site = await store.sites.add(memberId, facts, now);
  await store.members.change(memberId, { locale }, now);
  const beds = await store.beds.list(memberId, site.id);
  return {
    headline: `${site.name} is set.`,
    sections: [
      { lines: siteLines(site, reader, now) },
      {
        lines: [
          'Only you see where it is. Weather services are asked for a rounded place.',
          ...(beds.length === 0 ? ['Next, tell me your beds: /bed add.'] : []),
        ],
      },
    ],
    private: true,
  };
}
