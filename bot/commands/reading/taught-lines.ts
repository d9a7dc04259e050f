import { learnedSite } from '../../learning/learned-site.ts';
import { storedGarden } from '../../outlook/stored-garden.ts';
import type { Store } from '../../store/store.ts';
import { bedLine, siteLine } from '../../text/learned-words.ts';
import type { Reader } from '../../text/reader.ts';
import type { OwnBed } from '../bed/own-beds.ts';

/** What the readings of a bed come to by now, in words. */
export async function taughtLines(store: Store, bed: OwnBed, now: Date, reader: Reader): Promise<string[]> {
  const { site } = bed;
  const beds = await store.beds.list(site.memberId, site.id);
  const learned = await learnedSite(store, { site, beds }, now);
  const garden = storedGarden({ site, beds, spareCovers: [], learned });
  const laidOut = garden.beds[beds.findIndex(({ id }) => id === bed.id)];
  if (laidOut?.learned === undefined) return [];
  const lines = [bedLine(laidOut, laidOut.learned, reader), siteLine(laidOut.learned, reader)];
  return lines.filter((line) => line !== undefined);
}
