import { MS_PER_DAY } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Button } from '../../talk/reply.ts';
import { counted } from '../../text/phrases.ts';
import type { ButtonHandler } from '../command.ts';
import { storeOf } from '../kept-for.ts';

const PREFIX = 'covered:';
/** Local days are a day apart at most from those of UTC; a night's advice serves until the morning after. */
const SERVES_DAYS = 2;

/**
 * Marks a night's advice as done for the pressing member's own beds.
 *
 * @param night - Local day of the evening, `2026-11-25`.
 * @param siteId - Only the beds there; all of the member's where absent, as under a channel's warning.
 */
export function coveredButton(night: string, siteId?: string): Button {
  return { id: siteId === undefined ? `${PREFIX}${night}` : `${PREFIX}${night}:${siteId}`, label: 'Covered' };
}

export const COVERED_BUTTON: ButtonHandler = {
  prefix: PREFIX,
  private: true,
  async press({ memberId, buttonId, now }, services) {
    const store = storeOf(services);
    const [night = '', siteId] = buttonId.slice(PREFIX.length).split(':');
    const evening = Date.parse(`${night}T00:00:00Z`);
    if (!(now.getTime() - evening < SERVES_DAYS * MS_PER_DAY)) {
      throw new PlainProblem('That was for a night that is over. For the coming one: /tonight.');
    }
    const beds = await store.beds.list(memberId, siteId);
    if (beds.length === 0) throw new PlainProblem('You have no bed here yet. Tell me one with /bed add.');
    const ids = beds.map(({ id }) => id);
    const marked = await store.covered.mark(memberId, ids, night, now);
    return { headline: `Noted: ${counted(marked, 'bed')} covered for the night.`, sections: [], private: true };
  },
};
