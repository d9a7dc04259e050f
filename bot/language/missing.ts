import type { Intent, Missing, Understood } from './understood.ts';

export interface KnownOfMember {
  readonly hasPlace?: boolean;
  readonly hasBeds?: boolean;
}

type Slots = Omit<Understood, 'missing'>;

const OF_A_PLANT: ReadonlySet<Intent> = new Set<Intent>(['survive', 'how-cold', 'what-cover']);
const OF_A_PLACE: ReadonlySet<Intent> = new Set<Intent>(['vent', 'close', 'season', 'pick']);

/** The one thing to ask back for, if the answer turns on it. */
export function missingFrom(slots: Slots, member: KnownOfMember): Missing | undefined {
  const { intent, choices, options } = slots;
  if (choices.length > 0 && intent !== 'which-crops' && intent !== 'caution') return 'crop-choice';
  if (OF_A_PLANT.has(intent) && slots.crops.length === 0 && !namesBeds(slots.beds, member)) return 'crop';
  if (intent === 'compare-covers') return options === undefined ? 'covers' : undefined;
  return member.hasPlace === true ? undefined : missingWithoutForecast(slots);
}

/** No place is known: then a low must be said, or the place told. */
function missingWithoutForecast({ intent, temperature }: Slots): Missing | undefined {
  if (OF_A_PLACE.has(intent)) return 'place';
  if (temperature !== undefined) return undefined;
  if (intent === 'survive' || intent === 'what-cover') return 'temperature';
  return intent === 'which-crops' || intent === 'outlook' ? 'place' : undefined;
}

function namesBeds({ mine, numbers, named }: Slots['beds'], { hasBeds }: KnownOfMember): boolean {
  return numbers.length > 0 || named.length > 0 || (mine && (hasBeds ?? false));
}
