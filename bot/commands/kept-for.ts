import { PlainProblem } from '../ground/errors.ts';
import type { Store } from '../store/store.ts';
import type { Request } from '../talk/request.ts';
import { type Reader, readerOf } from '../text/reader.ts';
import type { Services } from './services.ts';

/** The store, where there is one. */
export function storeOf({ store }: Services): Store {
  if (store === undefined) throw new PlainProblem('Nothing can be kept here; start the bot itself for that.');
  return store;
}

type Asking = Pick<Request, 'memberId' | 'locale'>;

/** How the asking person reads: in the units they chose, else in those of their language. */
export async function readerFor({ memberId, locale }: Asking, services: Services): Promise<Reader> {
  const member = await services.store?.members.find(memberId);
  return readerOf(locale, member?.units);
}
