import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, option } from '../options.ts';
import type { Services } from '../services.ts';
import { ownSite, siteOption } from '../site/own-sites.ts';
import { typedCrops } from '../typed/crops.ts';
import { typedName } from '../typed/name.ts';
import { read } from '../typed/read.ts';
import { bedLines } from './bed-lines.ts';
import { cropOption, GROUND_OPTIONS, groundSchema, PLANTING_OPTIONS, plantingSchema } from './bed-options.ts';
import { frameFrom } from './frame.ts';
import { ownBed } from './own-beds.ts';
import { newPlantings, refuseCrowding } from './plantings.ts';

/** A bound on one night's work for one member (judgement). */
const MOST_BEDS = 40;

export const ADD_BED: Action = {
  description: 'Tells a bed: what grows in it and what lies over it',
  example: 'bed add name:"Long tunnel" crop:"spinach, kale" stage:grown covers:"row cover under low tunnel"',
  options: [
    { name: 'name', description: 'What you call it, such as Long tunnel', kind: 'text', required: true },
    cropOption,
    ...PLANTING_OPTIONS,
    ...GROUND_OPTIONS,
    siteOption('Where it is; your usual site unless you say'),
  ],
  private: true,
  run: addBed,
};

async function addBed(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const { memberId, now } = request;
  const reader = await readerFor(request, services);
  const schema = z.object({
    name: option('Give the bed a name, such as name:Tunnel.', (text) => typedName(text, 'a bed')),
    crop: maybe((text) => typedCrops(text, reader)),
    site: maybe(read),
    ...plantingSchema,
    ...groundSchema(reader),
  });
  const { name, crop: crops = [], site: typedSite, ...told } = checkedOptions(request, schema);
  const site = await ownSite(store, request, typedSite);
  if ((await store.beds.list(memberId)).length >= MOST_BEDS) {
    throw new PlainProblem(`You have ${MOST_BEDS} beds already; remove one first.`);
  }
  refuseCrowding(crops.length);
  const { covers = [], soil = 'moist', mulch, stage, hardened, sown, 'set-out': setOut } = told;
  const added = await store.beds.add(
    memberId,
    {
      siteId: site.id,
      name,
      covers,
      soil,
      mulch,
      frame: frameFrom(told, undefined, covers, site.latitudeDeg),
      hardeningNote: undefined,
    },
    now,
    newPlantings({ crops, stage, hardened, sown, setOut, today: localDay(now, site.timeZone) }),
  );
  const bed = await ownBed(store, memberId, added.id);
  return {
    headline: `${bed.label} is noted.`,
    sections: [{ lines: bedLines(bed, reader) }, { lines: ['See what tonight does to it: /tonight.'] }],
    private: true,
  };
}
