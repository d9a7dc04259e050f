import { once } from 'node:events';
import { createServer } from 'node:net';

/** Whether a server could listen there now. */
export async function isPortFree(port: number): Promise<boolean> {
  const probe = createServer();
  try {
    probe.listen(port);
    await once(probe, 'listening');
  } catch {
    return false;
  }
  const closed = once(probe, 'close');
  probe.close();
  await closed;
  return true;
}
