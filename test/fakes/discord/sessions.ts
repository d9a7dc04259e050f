import { randomUUID } from 'node:crypto';
import type { WebSocket } from 'ws';
import { WebSocketServer } from 'ws';
import type { Json } from './wire.ts';

/** Operation codes of the gateway (topics/opcodes-and-status-codes). */
const OP = {
  dispatch: 0,
  heartbeat: 1,
  identify: 2,
  resume: 6,
  reconnect: 7,
  invalidSession: 9,
  hello: 10,
  heartbeatAck: 11,
} as const;

/** Intents that an application must be allowed: members, presences, message content. */
const PRIVILEGED = (1 << 1) | (1 << 8) | (1 << 15);
const GUILDS = 1 << 0;

interface Session {
  readonly id: string;
  seq: number;
  readonly sent: { readonly seq: number; readonly text: string }[];
  socket: WebSocket | undefined;
}

export interface GatewaySettings {
  readonly token: () => string;
  readonly url: () => string;
  readonly ready: () => Json;
  readonly guilds: () => readonly Json[];
}

/** Discord's gateway: HELLO, IDENTIFY, READY, heartbeats, RESUME with what was missed, invalid sessions, closings. */
export class Sessions {
  readonly server = new WebSocketServer({ noServer: true });
  readonly identified: Json[] = [];
  readonly resumed: Json[] = [];
  heartbeats = 0;
  heartbeatIntervalMs = 41_250;
  acknowledges = true;
  /** Takes connections and says nothing. */
  silent = false;
  /** While true, RESUME is answered with an invalid session. */
  refusesResume = false;
  readonly #settings: GatewaySettings;
  readonly #sessions = new Map<string, Session>();

  constructor(settings: GatewaySettings) {
    this.#settings = settings;
    this.server.on('connection', (socket) => this.#connected(socket));
  }

  /** Sends an event to the newest session; kept for resuming while its socket is away. False when nobody could get it. */
  dispatch(type: string, data: Json): boolean {
    const session = [...this.#sessions.values()].at(-1);
    if (session === undefined) return false;
    this.#toSession(session, type, data);
    return true;
  }

  /** Drops what is kept for resuming. */
  forget(): void {
    for (const session of this.#sessions.values()) session.sent.length = 0;
  }

  get open(): number {
    return this.server.clients.size;
  }

  /** Cuts every socket without a word. */
  drop(): void {
    for (const socket of this.server.clients) socket.terminate();
  }

  closeAll(code: number): void {
    for (const socket of this.server.clients) socket.close(code);
  }

  askToReconnect(): void {
    for (const socket of this.server.clients) socket.send(JSON.stringify({ op: OP.reconnect, d: null }));
  }

  /** Tells the clients that their session is over, to be resumed or not. */
  invalidate(resumable: boolean): void {
    if (!resumable) this.#sessions.clear();
    for (const socket of this.server.clients) socket.send(JSON.stringify({ op: OP.invalidSession, d: resumable }));
  }

  #connected(socket: WebSocket): void {
    if (this.silent) return;
    socket.send(JSON.stringify({ op: OP.hello, d: { heartbeat_interval: this.heartbeatIntervalMs } }));
    socket.on('message', (data) => this.#received(socket, JSON.parse(String(data)) as { op: number; d: Json }));
    socket.on('close', () => {
      for (const session of this.#sessions.values()) if (session.socket === socket) session.socket = undefined;
    });
    socket.on('error', () => undefined);
  }

  #received(socket: WebSocket, { op, d }: { op: number; d: Json }): void {
    if (op === OP.heartbeat) {
      this.heartbeats += 1;
      if (this.acknowledges) socket.send(JSON.stringify({ op: OP.heartbeatAck }));
    } else if (op === OP.identify) this.#identify(socket, d);
    else if (op === OP.resume) this.#resume(socket, d);
    else socket.close(4001);
  }

  #identify(socket: WebSocket, d: Json): void {
    this.identified.push(d);
    const intents = Number(d['intents']);
    const closing = d['token'] !== this.#settings.token() ? 4004 : (intents & PRIVILEGED) === 0 ? undefined : 4014;
    if (closing !== undefined) {
      socket.close(closing);
      return;
    }
    const session: Session = { id: randomUUID(), seq: 0, sent: [], socket };
    this.#sessions.set(session.id, session);
    const guilds = (intents & GUILDS) === 0 ? [] : this.#settings.guilds();
    this.#toSession(session, 'READY', {
      ...this.#settings.ready(),
      v: 10,
      session_id: session.id,
      resume_gateway_url: this.#settings.url(),
      shard: d['shard'],
      guilds: guilds.map(({ id }) => ({ id, unavailable: true })),
    });
    for (const guild of guilds) this.#toSession(session, 'GUILD_CREATE', guild);
  }

  #resume(socket: WebSocket, d: Json): void {
    this.resumed.push(d);
    const session = this.#sessions.get(String(d['session_id']));
    if (session === undefined || this.refusesResume || d['token'] !== this.#settings.token()) {
      socket.send(JSON.stringify({ op: OP.invalidSession, d: false }));
      return;
    }
    session.socket = socket;
    for (const { seq, text } of session.sent) if (seq > Number(d['seq'])) socket.send(text);
    this.#toSession(session, 'RESUMED', {});
  }

  #toSession(session: Session, type: string, data: Json): void {
    session.seq += 1;
    const text = JSON.stringify({ op: OP.dispatch, t: type, s: session.seq, d: data });
    session.sent.push({ seq: session.seq, text });
    session.socket?.send(text);
  }
}
