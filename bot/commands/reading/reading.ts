import { PlainProblem } from '../../ground/errors.ts';
import type { Store } from '../../store/store.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { list } from '../../text/phrases.ts';
import { type OwnBed, ownBeds } from '../bed/own-beds.ts';
import type { Command } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { meant } from '../meant.ts';
import { checkedOptions } from '../options.ts';
import type { Services } from '../services.ts';
import { loggerReply } from './logger-reply.ts';
import { lowsReply } from './lows-reply.ts';
import { readingForm } from './reading-form.ts';
import { READING_OPTIONS, readingSchema } from './reading-options.ts';

export const READING: Command = {
  name: 'reading',
  description: 'Enter what your thermometers showed: the bot learns your beds from it',
  action: {
    description: 'Enter what your thermometers showed: the bot learns your beds from it',
    example: 'reading inside:21F outside:14F bed:"Long tunnel"',
    options: READING_OPTIONS,
    private: true,
    run: reading,
  },
};

async function reading(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const reader = await readerFor(request, services);
  const { file, ...typed } = request.options;
  const options = checkedOptions({ options: typed }, readingSchema(reader));
  const hasLows = options.inside !== undefined || options.outside !== undefined;
  if (file === undefined && !hasLows) return readingForm(await ownBeds(store, request.memberId), reader);
  const bed = await bedMeant(store, request.memberId, options.bed);
  if (file === undefined) return lowsReply({ bed, options, request, reader }, store);
  if (typeof file !== 'object' || !('text' in file))
    throw new PlainProblem('Attach the logger’s file with the option file.');
  if (hasLows) throw new PlainProblem('Give either single lows or a file, not both at once.');
  if (services.fileAllowance?.take(request.memberId, request.now) === false) {
    throw new PlainProblem('That is a lot of files for one day. Send the next one in a few hours.');
  }
  return loggerReply({ bed, file, options, request, reader }, store);
}

async function bedMeant(store: Store, memberId: string, typed: string | undefined): Promise<OwnBed> {
  const beds = await ownBeds(store, memberId);
  const [only, ...others] = beds;
  if (only === undefined) throw new PlainProblem('You have no bed here yet. Tell me one with /bed add.');
  if (typed !== undefined) return meant(beds, typed, 'bed');
  if (others.length === 0) return only;
  throw new PlainProblem(
    `Say which bed, such as bed:"${only.name}". You have ${list(beds.map(({ label }) => label))}.`,
  );
}
