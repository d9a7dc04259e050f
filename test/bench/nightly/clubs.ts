import type { Store } from '../../../bot/store/store.ts';
import { type CoverKey, type CropId, EXPOSURES } from '../../../rules/index.ts';
import { addClub, addGrower } from '../../bot/jobs/club.ts';
import type { DiscordDouble } from '../../fakes/discord/double.ts';

const BEDS: readonly (readonly [readonly CoverKey[], CropId])[] = [
  [['cold-frame', 'row-cover-medium'], 'spinach'],
  [['low-tunnel'], 'leaf-lettuce'],
  [['row-cover-heavy', 'hoops'], 'kale'],
  [[], 'leek'],
  [['low-tunnel', 'row-cover-light'], 'tatsoi'],
  [['straw'], 'carrot'],
  [['cold-frame'], 'mache'],
  [['high-tunnel', 'row-cover-medium', 'hoops'], 'spinach'],
  [['blanket', 'hoops'], 'claytonia'],
  [['low-tunnel-perforated'], 'kale'],
];
const BARE_KALE: (typeof BEDS)[number] = [[], 'kale'];
const BEDS_OF_A_GROWER = 5;
const GROWERS_OF_A_CLUB = 4;
const CLUBS_OF_A_CELL = 10;
const GROWERS_OF_A_CELL = 8;
const CELL_DEG = 0.02;
/** Where one service alone is asked, and covers must be shut by 14:15 on 1 December. */
const HOME = { latitudeDeg: 47.81, longitudeDeg: 13.05, timeZone: 'Europe/Vienna', heightM: 430 };
const BEFORE = new Date('2026-11-01T12:00:00Z');

/** Clubs of four growers with five beds each; ten clubs share a cell and draw on the eight growers there. */
export async function addClubs(store: Store, double: DiscordDouble, count: number): Promise<number> {
  const guild = double.world.addGuild();
  const cells = Math.ceil(count / CLUBS_OF_A_CELL);
  for (let cell = 0; cell < cells; cell += 1) {
    const growers = Array.from({ length: GROWERS_OF_A_CELL }, (_, n) => grower(cell, n));
    const nursery = double.world.addChannel(guild.id);
    await addClub(store, { id: nursery.id }, [], BEFORE);
    for (const each of growers) await addGrower(store, nursery.id, each, BEFORE);
    await store.channels.stop(nursery.id);
    double.world.channels.delete(nursery.id);
    for (let club = cell * CLUBS_OF_A_CELL; club < Math.min(count, (cell + 1) * CLUBS_OF_A_CELL); club += 1) {
      const { id } = double.world.addChannel(guild.id);
      await addClub(store, { id }, [], BEFORE);
      for (let n = 0; n < GROWERS_OF_A_CLUB; n += 1) {
        const member = growers[(club + n) % GROWERS_OF_A_CELL];
        if (member === undefined) continue;
        await store.channels.join(id, member.id, { siteId: undefined, wantsDirect: false }, BEFORE);
      }
    }
  }
  return cells;
}

function grower(cell: number, n: number) {
  const [row, column] = [Math.floor(cell / 25), cell % 25];
  return {
    id: `4${String(cell * GROWERS_OF_A_CELL + n).padStart(17, '0')}`,
    site: {
      ...HOME,
      latitudeDeg: HOME.latitudeDeg + row * CELL_DEG,
      longitudeDeg: HOME.longitudeDeg + column * CELL_DEG,
      exposure: EXPOSURES[n % 3] ?? 'open',
    },
    beds: Array.from({ length: BEDS_OF_A_GROWER }, (_, i) => BEDS[(n + i * 3) % BEDS.length] ?? BARE_KALE),
  };
}
