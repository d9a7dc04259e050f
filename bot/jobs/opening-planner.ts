import { setImmediate as nextTurn } from 'node:timers/promises';
import { dayFrom } from '../../rules/index.ts';
import { type OpeningPlan, openingPlan } from '../outlook/opening-plan.ts';
import { storedGarden } from '../outlook/stored-garden.ts';
import { clubOpening } from '../text/club-opening.ts';
import type { GardenDay, OpeningPlanner } from './job-services.ts';
import { commonReader } from './telling.ts';

/** Says in the morning what to open, for all gardens of a channel in one post. */
export const MORNING_PLANNER: OpeningPlanner = {
  async openingPlan(gardens, { now, isolated, unknownCount }) {
    const plans: OpeningPlan[] = [];
    let failedCount = 0;
    for (const garden of gardens) {
      const plan = await isolated(async () => planOf(garden, now));
      if (plan === undefined) failedCount += 1;
      else if (plan !== 'no-day') plans.push(plan);
      // Whoever asks the bot something meanwhile is answered between two gardens.
      await nextTurn();
    }
    const reader = commonReader(gardens.map(({ garden }) => garden));
    return clubOpening({ plans, unknownCount: unknownCount + failedCount, reader, now });
  },
};

function planOf({ garden, forecast }: GardenDay, now: Date): OpeningPlan | 'no-day' {
  const day = dayFrom(now, garden.site.latitudeDeg, garden.site.longitudeDeg);
  return day === undefined ? 'no-day' : openingPlan(storedGarden(garden), forecast, day, now);
}
