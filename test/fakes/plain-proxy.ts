import { once } from 'node:events';
import { createServer, type IncomingMessage, request, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { buffer } from 'node:stream/consumers';

/** What stands before several processes: asks them in turn, and the next one when one is not there. */
export class PlainProxy {
  /** Answers given by each, in the order of the ports. */
  readonly answered: number[];
  /** How often one was asked that was not there, or went before it had answered. */
  leftAlone = 0;
  readonly #ports: readonly number[];
  readonly #server = createServer((asked, response) => void this.#pass(asked, response));
  #turn = 0;

  private constructor(ports: readonly number[]) {
    this.#ports = ports;
    this.answered = ports.map(() => 0);
  }

  static async open(ports: readonly number[]): Promise<PlainProxy> {
    const proxy = new PlainProxy(ports);
    proxy.#server.listen(0, '127.0.0.1');
    await once(proxy.#server, 'listening');
    return proxy;
  }

  get url(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  close(): void {
    this.#server.close();
    this.#server.closeAllConnections();
  }

  async #pass(asked: IncomingMessage, response: ServerResponse): Promise<void> {
    const body = await buffer(asked);
    this.#turn += 1;
    const turn = this.#turn;
    for (let tried = 0; tried < this.#ports.length; tried += 1) {
      const index = (turn + tried) % this.#ports.length;
      const answer = await fromOne(this.#ports[index] ?? 0, asked, body).catch(() => undefined);
      if (answer === undefined) {
        this.leftAlone += 1;
        continue;
      }
      this.answered[index] = (this.answered[index] ?? 0) + 1;
      response.writeHead(answer.status, answer.headers).end(answer.body);
      return;
    }
    response.writeHead(502).end();
  }
}

async function fromOne(port: number, asked: IncomingMessage, body: Buffer) {
  const { method = 'GET', url: path = '/', headers } = asked;
  const onward = request({ host: '127.0.0.1', port, method, path, headers, agent: false });
  onward.end(body);
  const [answer] = (await once(onward, 'response')) as [IncomingMessage];
  return { status: answer.statusCode ?? 502, headers: answer.headers, body: await buffer(answer) };
}
