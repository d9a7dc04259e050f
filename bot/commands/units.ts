import { z } from 'zod';
import { temperature, windSpeed } from '../ground/units.ts';
import { UNIT_SYSTEMS } from '../store/port/members.ts';
import { readerOf } from '../text/reader.ts';
import type { Command } from './command.ts';
import { storeOf } from './kept-for.ts';
import { checkedOptions, maybe, oneOf } from './options.ts';

/** A night to show the units with. */
const SHOWN = { lowC: -10, windMPerS: 2 };

export const UNITS: Command = {
  name: 'units',
  description: '°F or °C, for all that I tell you',
  action: {
    description: '°F or °C, for all that I tell you',
    example: 'units use:metric',
    options: [
      {
        name: 'use',
        description: 'Which units; shows the present ones if left out',
        kind: 'text',
        choices: [
          { label: '°F, mph, feet and inches', value: 'us' },
          { label: '°C, m/s, metres', value: 'metric' },
          { label: 'The usual ones of my language', value: 'usual' },
        ],
      },
    ],
    private: true,
    async run(request, services) {
      const store = storeOf(services);
      const { memberId, locale, now } = request;
      const { use } = checkedOptions(
        request,
        z.object({ use: maybe(oneOf('use', [...UNIT_SYSTEMS, 'usual'] as const)) }),
      );
      const member =
        use === undefined
          ? await store.members.find(memberId)
          : await store.members.change(memberId, { units: use === 'usual' ? undefined : use, locale }, now);
      const { units } = readerOf(locale, member?.units);
      const shown = `${temperature(SHOWN.lowC, units)}, wind ${windSpeed(SHOWN.windMPerS, units)}`;
      const why = member?.units === undefined ? 'the usual ones of your language' : 'as you chose';
      return { headline: `I write to you like this: ${shown} (${why}).`, sections: [], private: true };
    },
  },
};
