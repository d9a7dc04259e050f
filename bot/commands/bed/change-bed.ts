import { z } from 'zod';
import { COVER_KEYS } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, option } from '../options.ts';
import type { Services } from '../services.ts';
import { ownSite, siteOption } from '../site/own-sites.ts';
import { typedName } from '../typed/name.ts';
import { read } from '../typed/read.ts';
import { bedLines } from './bed-lines.ts';
import { GROUND_OPTIONS, groundSchema } from './bed-options.ts';
import { frameFrom } from './frame.ts';
import { bedOption, ownBed } from './own-beds.ts';

export const CHANGE_BED: Action = {
  description: 'Changes the covers, soil, frame, name or site of a bed',
  example: 'bed change bed:"Long tunnel" covers:"blanket over low tunnel"',
  options: [
    bedOption,
    { name: 'name', description: 'A new name for it', kind: 'text' },
    ...GROUND_OPTIONS,
    siteOption('Another site that it belongs to'),
  ],
  private: true,
  run: changeBed,
};

async function changeBed(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const { memberId, now } = request;
  const reader = await readerFor(request, services);
  const schema = z.object({
    bed: option('Say which bed, such as bed:Tunnel.', read),
    name: maybe((text) => typedName(text, 'a bed')),
    site: maybe(read),
    ...groundSchema(reader),
  });
  const { bed: typed, name, site: typedSite, soil, mulch, ...stack } = checkedOptions(request, schema);
  const bed = await ownBed(store, memberId, typed);
  const site = typedSite === undefined ? bed.site : await ownSite(store, request, typedSite);
  const covers = stack.covers ?? bed.covers.flatMap((cover) => COVER_KEYS.find((key) => key === cover) ?? []);
  const frame = frameFrom(stack, bed.frame, covers, site.latitudeDeg);
  const told = [name, typedSite, soil, mulch, ...Object.values(stack)].some((value) => value !== undefined);
  if (!told)
    throw new PlainProblem('Say what to change: covers, soil, mulch, size, back, front, facing, walls, name or site.');
  await store.beds.change(
    memberId,
    bed.id,
    {
      covers,
      frame,
      siteId: site.id,
      ...(name !== undefined && { name }),
      ...(soil !== undefined && { soil }),
      ...(mulch !== undefined && { mulch }),
    },
    now,
  );
  const changed = await ownBed(store, memberId, bed.id);
  return { headline: `${changed.label} is changed.`, sections: [{ lines: bedLines(changed, reader) }], private: true };
}
