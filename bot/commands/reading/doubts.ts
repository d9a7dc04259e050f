import { PlainProblem } from '../../ground/errors.ts';
import type { Store } from '../../store/store.ts';
import type { Button, Reply } from '../../talk/reply.ts';
import { counted } from '../../text/phrases.ts';
import type { ButtonHandler } from '../command.ts';
import { storeOf } from '../kept-for.ts';
import type { Doubt } from './night-of-bed.ts';

/** What is odd about a reading, and what may lie behind it. */
export const DOUBT_WORDS: Readonly<Record<Doubt, string>> = {
  'too-warm':
    'That is warmer under the cover than I can explain. Was the thermometer in the sun, or not reset the evening before?',
  'too-cold':
    'That is colder under the cover than I can explain. Was it open, or does the reading belong to another night?',
  'outside-off': 'That is far from what was forecast outside. Does it belong to another night?',
  'colder-than-outside': 'That is much colder under the cover than outside. Are the two swapped?',
  'covers-unsure': 'You had marked the bed as covered. Did anything more than usual lay over it that night?',
};

const PREFIX = 'doubted:';

/** The choices for one reading in doubt, or for all of a bed's. */
export function doubtButtons(bedId: string, readingId = ''): readonly Button[] {
  const many = readingId === '';
  return [
    { id: `${PREFIX}keep:${bedId}:${readingId}`, label: many ? 'They are right' : 'It is right' },
    { id: `${PREFIX}drop:${bedId}:${readingId}`, label: many ? 'Take them out' : 'Take it out' },
  ];
}

export const DOUBT_BUTTON: ButtonHandler = {
  prefix: PREFIX,
  private: true,
  async press({ memberId, buttonId }, services) {
    const [action = '', bedId = '', readingId = ''] = buttonId.slice(PREFIX.length).split(':');
    const store = storeOf(services);
    const ids = await doubted(store, memberId, bedId, readingId);
    if (ids.length === 0) throw new PlainProblem('There is no reading in doubt any more.');
    for (const id of ids) {
      if (action === 'keep') await store.readings.confirm(memberId, id);
      else await store.readings.remove(memberId, id);
    }
    return settled(action === 'keep', ids.length);
  },
};

async function doubted(store: Store, memberId: string, bedId: string, readingId: string): Promise<readonly string[]> {
  const readings = await store.readings.ofBed(memberId, bedId);
  return readings
    .filter(({ id, doubt }) => doubt !== undefined && (readingId === '' || id === readingId))
    .map(({ id }) => id);
}

function settled(kept: boolean, count: number): Reply {
  const what = counted(count, 'reading');
  const headline = kept ? `${what} kept: the bed learns from it.` : `${what} taken out.`;
  return { headline, sections: [], private: true };
}
