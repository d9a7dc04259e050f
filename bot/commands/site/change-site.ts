import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import type { SiteFacts } from '../../store/port/sites.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe } from '../options.ts';
import type { Services } from '../services.ts';
import { read } from '../typed/read.ts';
import { ownSite, siteOption } from './own-sites.ts';
import { siteLines } from './site-lines.ts';
import { PLACE_OPTIONS, placeFacts, placeSchema } from './site-options.ts';

export const CHANGE_SITE: Action = {
  description: 'Changes the place, height, exposure, horizon or name of a site',
  example: 'site change site:Home exposure:sheltered',
  options: [siteOption('Which of your sites; the usual one unless you say'), ...PLACE_OPTIONS],
  private: true,
  run: changeSite,
};

async function changeSite(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const reader = await readerFor(request, services);
  const options = checkedOptions(request, z.object({ ...placeSchema(reader.units), site: maybe(read) }));
  const site = await ownSite(store, request, options.site);
  const change = changeFrom(options);
  if (Object.keys(change).length === 0) {
    throw new PlainProblem('Say what to change: name, lat and lon, height, exposure or horizon.');
  }
  const changed = await store.sites.change(request.memberId, site.id, change);
  return {
    headline: `${changed.name} is changed.`,
    sections: [{ lines: siteLines(changed, reader, request.now) }],
    private: true,
  };
}

type Options = z.output<z.ZodObject<ReturnType<typeof placeSchema>>>;

function changeFrom({ lat, lon, height, exposure, horizon, name }: Options): Partial<SiteFacts> {
  if (lat === undefined && lon !== undefined) throw new PlainProblem('Give lat with lon; a place needs both.');
  return {
    ...(lat !== undefined && placeFacts(lat, lon)),
    ...(height !== undefined && { heightM: height }),
    ...(exposure !== undefined && { exposure }),
    ...(horizon !== undefined && { horizonDeg: horizon }),
    ...(name !== undefined && { name }),
  };
}
