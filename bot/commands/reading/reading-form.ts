import type { Button, Reply } from '../../talk/reply.ts';
import { list } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { type OwnBed, ownBeds } from '../bed/own-beds.ts';
import type { ButtonHandler } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { EXAMPLE_LOWS } from './example-lows.ts';

const PREFIX = 'reading-form';

/** Under the morning post: opens the form for last night's lows. */
export const readingButton: Button = { id: PREFIX, label: 'Enter a reading' };

export const READING_BUTTON: ButtonHandler = {
  prefix: PREFIX,
  private: true,
  async press(press, services) {
    const beds = await ownBeds(storeOf(services), press.memberId);
    return readingForm(beds, await readerFor(press, services));
  },
};

/** Asks for last night's lows. */
export function readingForm(beds: readonly OwnBed[], { units }: Reader): Reply {
  const unit = units === 'us' ? '°F' : '°C';
  const { inside, outside } = EXAMPLE_LOWS[units];
  const names = list(
    beds.map(({ label }) => label),
    'or',
  );
  return {
    headline: 'What did the thermometers show last night?',
    sections: [{ lines: [`Give what you have: /reading ${inside} ${outside}, or a logger’s file with file:.`] }],
    form: {
      id: 'reading form',
      title: 'Last night’s lows',
      fields: [
        { id: 'inside', label: `Low under the cover, ${unit}`, required: false },
        { id: 'outside', label: `Low outside, ${unit}`, required: false },
        ...(beds.length > 1 ? [{ id: 'bed', label: `Bed: ${names}`, required: true }] : []),
        { id: 'night', label: 'Night, if not the last one', required: false },
      ],
    },
    private: true,
  };
}
