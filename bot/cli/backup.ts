import { processConfig } from '../config.ts';
import { backUp } from '../store/backup/back-up.ts';
import { runOnce } from './run-once.ts';

await runOnce('npm run backup -- FILE', async (file) => {
  await backUp(processConfig().DATABASE_URL, file);
  return `Backed up to ${file}. It holds members' places: keep it as you would keep a key.`;
});
