import { howItWentButton } from '../commands/outcome/outcome-buttons.ts';
import { readingButton } from '../commands/reading/reading-form.ts';
import { nightLater } from '../learning/night-days.ts';
import type { Garden } from '../store/port/channels.ts';
import type { Store } from '../store/store.ts';
import type { Button, Reply } from '../talk/reply.ts';

/**
 * The morning post with what the bot would like to know: last night's lows, and after a risky night how the crops came
 * through. After such a night it is asked even where there is nothing to open.
 *
 * @param today - Local day of the morning, `2026-12-31`.
 */
export async function withMorningQuestions(
  reply: Reply | undefined,
  gardens: readonly Garden[],
  today: string,
  store: Pick<Store, 'predictions'>,
): Promise<Reply | undefined> {
  const bedIds = gardens.flatMap(({ beds }) => beds.map(({ id }) => id));
  const told = await store.predictions.latest(bedIds, nightLater(today, -1));
  const wasRisky = [...told.values()].some(({ verdict }) => verdict !== 'holds');
  const buttons: readonly Button[] = [
    ...(wasRisky ? [howItWentButton] : []),
    ...(told.size > 0 ? [readingButton] : []),
  ];
  if (reply !== undefined) return { ...reply, buttons: [...(reply.buttons ?? []), ...buttons] };
  return wasRisky ? { ...AFTER_A_RISKY_NIGHT, buttons } : undefined;
}

const AFTER_A_RISKY_NIGHT: Reply = {
  headline: 'How did your beds come through the night?',
  sections: [{ lines: ['Only you see your answers; they sharpen what I tell you next time.'] }],
  private: false,
};
