import { predictionsOf as predictionsOfNight } from '../learning/told-night.ts';
import type { Prediction } from '../store/port/readings.ts';
import type { GardenNight } from './club-night.ts';

/** What is told of a garden's beds. */
export function predictionsOf({ garden, night, outlook, bedOf }: GardenNight, now: Date): Prediction[] {
  return predictionsOfNight({ memberId: garden.member.id, name: night.name, outlook, bedOf }, now);
}
