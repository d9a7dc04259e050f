import { generateKeyPairSync, type KeyObject, sign } from 'node:crypto';
import { once } from 'node:events';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { request as httpRequest } from 'undici';
import { type Asker, commandData, interactionBase, type OfferedFile, type TypedCommand } from './asked.ts';
import { Conversation, type FirstAnswer } from './conversation.ts';
import { type Fault, Faults } from './faults.ts';
import type { GlobalRate } from './global-rate.ts';
import { newId } from './ids.ts';
import { Messages } from './messages.ts';
import { type BodyCheck, bodyCheck, DESCRIPTION_ABSENT } from './openapi-check.ts';
import { guildJson, type Platform, ROUTES, responseProblems } from './routes.ts';
import { Sessions } from './sessions.ts';
import { type Answer, type Json, type RecordedRequest, recorded, refusal, sent } from './wire.ts';
import { World } from './world.ts';

const BASE = '/api/v10';
const PING = 1;
const COMMAND = 2;
const COMPONENT = 3;
const AUTOCOMPLETE = 4;
const FORM = 5;

/** A window that was filled in. */
export interface FilledForm extends Asker {
  readonly formId: string;
  readonly answers: Readonly<Record<string, string>>;
}

export interface PressedButton extends Asker {
  readonly buttonId: string;
}

/** How a signed request is spoilt. */
export interface Spoilt {
  readonly timestamp?: string;
  readonly signature?: string;
  readonly bodyAfterSigning?: string;
}

/**
 * Discord on this machine, as far as a bot meets it: HTTP interface, gateway, and people who type. Every request is
 * kept; every body is held against Discord's own description and its documented limits, and `problems` tells the rest.
 */
export class DiscordDouble implements Platform {
  readonly applicationId = newId();
  token = 'token-of-the-loopback-double';
  /** Where the gateway wants another token than the rest. */
  gatewayToken: string | undefined;
  readonly world = new World();
  readonly messages = new Messages(this.world);
  readonly requests: RecordedRequest[] = [];
  readonly problems: string[] = [];
  readonly conversations = new Map<string, Conversation>();
  readonly faults = new Faults();
  readonly gateway: Sessions;
  /** Set where a test or bench holds the bot to Discord's limit for everything. */
  globalRate: GlobalRate | undefined;
  commands: Json[] = [];
  interactionsUrl: string | null = null;
  /** Where signed requests go instead of the gateway, such as `http://127.0.0.1:8080`. */
  doorUrl: string | undefined;
  readonly publicKey: string;
  readonly #privateKey: KeyObject;
  readonly #check: BodyCheck | undefined = bodyCheck();
  readonly #attachments = new Map<string, OfferedFile>();
  #server: Server;
  #port = 0;

  private constructor() {
    const pair = generateKeyPairSync('ed25519');
    this.#privateKey = pair.privateKey;
    this.publicKey = pair.publicKey.export({ format: 'der', type: 'spki' }).subarray(-32).toString('hex');
    this.gateway = new Sessions({
      token: () => this.gatewayToken ?? this.token,
      url: () => this.gatewayUrl(),
      ready: () => ({
        user: { id: this.world.botId, username: 'eiderdown', discriminator: '0', avatar: null, bot: true },
        application: { id: this.applicationId, flags: 0 },
      }),
      guilds: () => [...this.world.guilds.keys()].map((id) => guildJson(this.world, id) ?? { id }),
    });
    this.#server = this.#made();
  }

  static async open(): Promise<DiscordDouble> {
    const double = new DiscordDouble();
    await double.listen();
    return double;
  }

  /** Why bodies are not held against Discord's description; undefined when they are. */
  get unchecked(): string | undefined {
    return this.#check === undefined ? DESCRIPTION_ABSENT : undefined;
  }

  /** For `DISCORD_API_BASE`. */
  get apiBase(): string {
    return `http://127.0.0.1:${this.#port}/api`;
  }

  readonly gatewayUrl = (): string => `ws://127.0.0.1:${this.#port}/gateway`;

  /** Listens again after `refuse`, at the same port. */
  async listen(): Promise<void> {
    this.#server = this.#made();
    this.#server.listen(this.#port, '127.0.0.1');
    await once(this.#server, 'listening');
    this.#port = (this.#server.address() as AddressInfo).port;
  }

  /** Refuses every connection, and cuts those there are. */
  async refuse(): Promise<void> {
    const closed = once(this.#server, 'close');
    this.gateway.drop();
    this.#server.close();
    this.#server.closeAllConnections();
    await closed;
  }

  async close(): Promise<void> {
    if (this.#server.listening) await this.refuse();
    this.gateway.server.close();
  }

  /** Drops what was recorded, for runs of many thousands. */
  forget(): void {
    this.requests.length = 0;
    this.conversations.clear();
    this.gateway.forget();
    for (const [id, { recipientId }] of this.world.channels)
      if (recipientId !== undefined) this.world.channels.delete(id);
  }

  fail(fault: Fault): void {
    this.faults.order(fault);
  }

  /** Requests of one kind, in their order. */
  asked(method: string, path: RegExp): readonly RecordedRequest[] {
    return this.requests.filter((each) => each.method === method && path.test(each.path));
  }

  /** A person sends a command that is registered. */
  type(typed: TypedCommand): Conversation {
    return this.#begun(this.#command(typed, COMMAND));
  }

  /** A person is typing an option and waits for suggestions. */
  suggest(typed: TypedCommand & { readonly focused: string }): Conversation {
    return this.#begun(this.#command(typed, AUTOCOMPLETE));
  }

  press(pressed: PressedButton): Conversation {
    const data = { component_type: 2, custom_id: pressed.buttonId };
    const message = { id: newId(), channel_id: newId(), content: '', attachments: [], embeds: [], components: [] };
    return this.#begun({ ...this.#base(pressed, COMPONENT), data, message });
  }

  fill(form: FilledForm): Conversation {
    const components = Object.entries(form.answers).map(([id, value]) => ({
      type: 18,
      component: { type: 4, custom_id: id, value },
    }));
    return this.#begun({ ...this.#base(form, FORM), data: { custom_id: form.formId, components } });
  }

  ping(): Json {
    return { id: newId(), application_id: this.applicationId, type: PING, token: 'ping', version: 1 };
  }

  /** A signed request as Discord sends it, or spoilt. */
  async deliver(interaction: Json, spoilt: Spoilt = {}): Promise<{ status: number; text: string }> {
    const body = JSON.stringify(interaction);
    const timestamp = spoilt.timestamp ?? String(Math.floor(Date.now() / 1000));
    const signature = spoilt.signature ?? sign(null, Buffer.from(timestamp + body), this.#privateKey).toString('hex');
    const { statusCode, body: answer } = await httpRequest(`${this.doorUrl}/interactions`, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        'x-signature-ed25519': signature,
        'x-signature-timestamp': timestamp,
      },
      body: spoilt.bodyAfterSigning ?? body,
    });
    return { status: statusCode, text: await answer.text() };
  }

  /** The first answer's message, typed and waited for: what most tests want. */
  async answerTo(typed: TypedCommand): Promise<FirstAnswer> {
    return this.type(typed).first;
  }

  #begun(interaction: Json): Conversation {
    const conversation = new Conversation(interaction);
    this.conversations.set(String(interaction['token']), conversation);
    if (this.doorUrl === undefined) this.gateway.dispatch('INTERACTION_CREATE', interaction);
    else void this.#knock(interaction, conversation);
    return conversation;
  }

  /** Over signed HTTP; 202 means that the answer comes the other way. */
  async #knock(interaction: Json, conversation: Conversation): Promise<void> {
    try {
      const { status, text } = await this.deliver(interaction);
      if (status === 202) return;
      if (status !== 200) return conversation.fail(`the door answered ${status}: ${text.trim()}`);
      const response = JSON.parse(text) as Json;
      this.problems.push(...responseProblems(response, { files: [] }));
      this.#validated('POST', `/interactions/${String(interaction['id'])}/token/callback`, response);
      conversation.answer(response, []);
    } catch (error) {
      conversation.fail(`the door did not answer: ${String(error)}`);
    }
  }

  #command(typed: TypedCommand, type: number): Json {
    const definition = this.commands.find((each) => each['name'] === typed.command);
    if (definition === undefined) throw new Error(`no command ${typed.command} is registered`);
    return { ...this.#base(typed, type), data: commandData(definition, typed, (offered) => this.#hosted(offered)) };
  }

  #base(asker: Asker, type: number): Json {
    const userId = asker.userId ?? newId();
    return interactionBase({ ...asker, userId }, type, this.applicationId, this.world.directChannel(userId).id);
  }

  #hosted(offered: OfferedFile): string {
    const path = `/attachments/${newId()}/${offered.file.name}`;
    this.#attachments.set(path, offered);
    return `http://127.0.0.1:${this.#port}${path}`;
  }

  #made(): Server {
    const server = createServer((request, response) => {
      this.#served(request, response).catch(() => response.destroy());
    });
    server.on('upgrade', (request, socket, head) => {
      this.gateway.server.handleUpgrade(request, socket, head, (opened) =>
        this.gateway.server.emit('connection', opened, request),
      );
    });
    return server;
  }

  async #served(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const attachment = this.#attachments.get(request.url ?? '');
    if (attachment !== undefined) {
      response.writeHead(attachment.status ?? 200).end(attachment.file.bytes);
      return;
    }
    if (!(request.url ?? '').startsWith(`${BASE}/`)) return sent(response, refusal(404, 0, 'not under the base'));
    const asked = await recorded(request, BASE);
    this.requests.push(asked);
    if (asked.body !== undefined) this.#validated(asked.method, asked.path, asked.body);
    const tooMany = this.globalRate?.refusal();
    if (tooMany !== undefined) return sent(response, tooMany);
    await this.faults.answered(asked, response, async () => this.#answer(asked));
  }

  #answer(asked: RecordedRequest): Answer {
    const route = ROUTES.find((each) => each.method === asked.method && each.path.test(asked.path));
    if (route === undefined) return refusal(404, 0, '404: Not Found');
    if (route.open !== true && asked.headers.authorization !== `Bot ${this.token}`) {
      return refusal(401, 0, '401: Unauthorized');
    }
    return route.handle(this, asked, (route.path.exec(asked.path) ?? []).slice(1));
  }

  #validated(method: string, path: string, body: unknown): void {
    const problem = this.#check?.problem(method, path, body);
    if (problem !== undefined) this.problems.push(problem);
  }
}
