import type { Migration } from 'kysely';
import { createFirstSchema } from './0001-first-schema.ts';
import { addPlantingDates } from './0002-planting-dates.ts';
import { addToldSteps } from './0003-told-steps.ts';

export type Migrations = Readonly<Record<string, Migration>>;

/** Forward only, run in order of their names, the same for both engines. Append; never edit or reorder. */
export const MIGRATIONS: Migrations = {
  '0001-first-schema': { up: createFirstSchema },
  '0002-planting-dates': { up: addPlantingDates },
  '0003-told-steps': { up: addToldSteps },
};
