import type { Conversation } from './conversation.ts';
import { commandProblems, formProblems, messageProblems } from './documented-limits.ts';
import { newId } from './ids.ts';
import type { Messages } from './messages.ts';
import { type Answer, type Json, type RecordedRequest, refusal } from './wire.ts';
import type { World, WorldChannel } from './world.ts';

export interface Platform {
  readonly world: World;
  readonly messages: Messages;
  readonly applicationId: string;
  readonly publicKey: string;
  readonly conversations: ReadonlyMap<string, Conversation>;
  readonly gatewayUrl: () => string;
  interactionsUrl: string | null;
  commands: Json[];
  readonly problems: string[];
}

type Handler = (platform: Platform, request: RecordedRequest, ids: readonly string[]) => Answer;

interface Route {
  readonly method: string;
  readonly path: RegExp;
  readonly handle: Handler;
  /** The address itself carries the right. */
  readonly open?: boolean;
}

/** What of REST v10 the double speaks. */
export const ROUTES: readonly Route[] = [
  { method: 'GET', path: /^\/gateway\/bot$/, handle: gatewayBot },
  { method: 'GET', path: /^\/users\/@me$/, handle: ({ world }) => found({ id: world.botId, username: 'eiderdown' }) },
  { method: 'GET', path: /^\/applications\/@me$/, handle: application },
  { method: 'GET', path: /^\/applications\/(\d+)\/commands$/, handle: ({ commands }) => found(commands) },
  { method: 'PUT', path: /^\/applications\/(\d+)\/commands$/, handle: putCommands },
  { method: 'POST', path: /^\/interactions\/(\d+)\/([^/]+)\/callback$/, handle: callback, open: true },
  { method: 'POST', path: /^\/webhooks\/(\d+)\/([^/]+)$/, handle: followUp, open: true },
  { method: 'PATCH', path: /^\/webhooks\/(\d+)\/([^/]+)\/messages\/@original$/, handle: edit, open: true },
  { method: 'POST', path: /^\/channels\/(\d+)\/messages$/, handle: post },
  { method: 'GET', path: /^\/channels\/(\d+)\/messages$/, handle: (p, r, [id = '']) => p.messages.list(id, r.query) },
  { method: 'GET', path: /^\/channels\/(\d+)$/, handle: channel },
  { method: 'POST', path: /^\/users\/@me\/channels$/, handle: direct },
  { method: 'GET', path: /^\/guilds\/(\d+)$/, handle: guild },
  { method: 'GET', path: /^\/guilds\/(\d+)\/roles$/, handle: roles },
  { method: 'GET', path: /^\/guilds\/(\d+)\/members\/(\d+)$/, handle: member },
];

function found(json: unknown): Answer {
  return { status: 200, json };
}

function gatewayBot({ gatewayUrl }: Platform): Answer {
  const session_start_limit = { total: 1000, remaining: 1000, reset_after: 0, max_concurrency: 1 };
  return found({ url: gatewayUrl(), shards: 1, session_start_limit });
}

function application({ applicationId, interactionsUrl, publicKey }: Platform): Answer {
  const interactions = { interactions_endpoint_url: interactionsUrl, verify_key: publicKey };
  return found({ id: applicationId, name: 'Eiderdown', flags: 0, ...interactions });
}

/** Discord fills in what was left out, and gives each command its id. */
function putCommands(platform: Platform, request: RecordedRequest): Answer {
  const list = request.body as readonly Json[];
  platform.problems.push(...commandProblems(list));
  platform.commands = list.map((command) => ({
    default_member_permissions: null,
    nsfw: false,
    dm_permission: true,
    contexts: null,
    integration_types: [0],
    ...withoutUsual(command),
    id: newId(),
    application_id: platform.applicationId,
    version: newId(),
  }));
  return found(platform.commands);
}

/** What is usual is not given back. */
function withoutUsual(value: unknown): Json {
  const entries = Object.entries(value as Json).flatMap(([name, held]): [string, unknown][] => {
    if (held === false || (Array.isArray(held) && held.length === 0)) return [];
    return [[name, name === 'options' && Array.isArray(held) ? held.map(withoutUsual) : held]];
  });
  return Object.fromEntries(entries);
}

function callback(platform: Platform, request: RecordedRequest, [, token = '']: readonly string[]): Answer {
  const conversation = platform.conversations.get(token);
  if (conversation === undefined) return refusal(404, 10062, 'Unknown interaction');
  const response = request.body as Json;
  platform.problems.push(...responseProblems(response, request));
  return conversation.answer(response, request.files);
}

/** What a first answer breaks of the documented limits. */
export function responseProblems(response: Json, request: Pick<RecordedRequest, 'files'>): string[] {
  const data = (response['data'] as Json | undefined) ?? {};
  if (response['type'] === 4) return messageProblems(data, ...filesOf(request));
  if (response['type'] === 9) return formProblems(data);
  if (response['type'] === 5) return Object.keys(data).some((name) => name !== 'flags') ? ['a deferral with more'] : [];
  return [];
}

function followUp(platform: Platform, request: RecordedRequest, [, token = '']: readonly string[]): Answer {
  platform.problems.push(...messageProblems(request.body as Json, ...filesOf(request)));
  return platform.conversations.get(token)?.followUp(request) ?? refusal(404, 10015, 'Unknown Webhook');
}

function edit(platform: Platform, request: RecordedRequest, [, token = '']: readonly string[]): Answer {
  platform.problems.push(...messageProblems(request.body as Json, ...filesOf(request)));
  return platform.conversations.get(token)?.edit(request) ?? refusal(404, 10015, 'Unknown Webhook');
}

function post(platform: Platform, request: RecordedRequest, [id = '']: readonly string[]): Answer {
  platform.problems.push(...messageProblems(request.body as Json, ...filesOf(request)));
  return platform.messages.post(id, request);
}

function filesOf({ files }: Pick<RecordedRequest, 'files'>): [string[], number] {
  return [files.map((file) => file.name), files.reduce((sum, file) => sum + file.bytes.length, 0)];
}

function channel({ world }: Platform, _request: RecordedRequest, [id = '']: readonly string[]): Answer {
  const there = world.channels.get(id);
  if (there === undefined || there.deleted) return refusal(404, 10003, 'Unknown Channel');
  return world.canSee(there) ? found(channelJson(there)) : refusal(403, 50001, 'Missing Access');
}

function channelJson({ id, type, guildId, parentId, overwrites }: WorldChannel): Json {
  return {
    id,
    type,
    name: 'garden',
    ...(guildId === undefined ? {} : { guild_id: guildId }),
    ...(parentId === undefined ? {} : { parent_id: parentId, thread_metadata: { archived: false } }),
    permission_overwrites: overwrites.map(({ id: holder, allow = 0n, deny = 0n }) => ({
      id: holder,
      type: 0,
      allow: String(allow),
      deny: String(deny),
    })),
  };
}

function direct({ world }: Platform, request: RecordedRequest): Answer {
  return found(channelJson(world.directChannel(String((request.body as Json)['recipient_id']))));
}

export function guildJson(world: World, id: string): Json | undefined {
  const there = world.guilds.get(id);
  if (there === undefined) return undefined;
  const channels = [...world.channels.values()].filter((each) => each.guildId === id).map(channelJson);
  return { id, name: 'A garden club', owner_id: newId(), roles: roleList(world, id), channels, unavailable: false };
}

function roleList(world: World, guildId: string): Json[] {
  return (world.guilds.get(guildId)?.roles ?? []).map((role) => ({
    id: role.id,
    name: 'role',
    permissions: String(role.permissions),
  }));
}

function guild({ world }: Platform, _request: RecordedRequest, [id = '']: readonly string[]): Answer {
  const there = guildJson(world, id);
  return there === undefined ? refusal(404, 10004, 'Unknown Guild') : found(there);
}

function roles({ world }: Platform, _request: RecordedRequest, [id = '']: readonly string[]): Answer {
  return world.guilds.has(id) ? found(roleList(world, id)) : refusal(403, 50001, 'Missing Access');
}

function member({ world }: Platform, _request: RecordedRequest, [id = '', userId = '']: readonly string[]): Answer {
  const there = world.guilds.get(id);
  if (there === undefined) return refusal(403, 50001, 'Missing Access');
  if (userId !== world.botId) return refusal(404, 10007, 'Unknown Member');
  return found({ user: { id: userId }, roles: there.botRoleIds });
}
