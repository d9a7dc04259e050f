import { processConfig } from '../config.ts';
import { restore } from '../store/backup/restore.ts';
import { runOnce } from './run-once.ts';

await runOnce('npm run restore -- FILE', async (file) => {
  const rows = await restore(processConfig().DATABASE_URL, file);
  return `Restored ${rows} rows from ${file}.`;
});
