import { type APIApplication, type APIGatewayBotInfo, type APIUser, Routes } from 'discord.js';
import type { DiscordApi } from '../chat/discord/discord-api.ts';
import { DiscordError } from '../chat/discord/discord-error.ts';
import { TOKEN_REFUSED } from '../chat/discord/startup.ts';
import type { Config } from '../config.ts';
import type { DoorChoice } from '../door-choice.ts';
import { type Finding, findingsOn } from './finding.ts';

const { good, look, fix } = findingsOn('Discord');

const WITHIN_MS = 8000;
/** A start takes one; each lost connection may take another. Judgement. */
const FEW_STARTS = 50;

export interface DiscordRead {
  readonly findings: readonly Finding[];
  /** Undefined where Discord does not know us. */
  readonly botId?: string;
}

/** Who we are at Discord, and whether the application's page agrees with the settings. */
export async function discordRead(api: DiscordApi, config: Config, door: DoorChoice): Promise<DiscordRead> {
  try {
    const user = await got<APIUser>(api, Routes.user());
    const application = await got<APIApplication>(api, Routes.currentApplication());
    const findings = [
      good('The token is accepted.'),
      ...applicationFindings(application, config, door),
      ...(await commandFindings(api, application.id)),
      ...(door.kind === 'gateway' ? await startFindings(api) : []),
    ];
    return { findings, botId: user.id };
  } catch (error) {
    if (!(error instanceof DiscordError)) throw error;
    return { findings: [failureFinding(error)] };
  }
}

function got<T>(api: DiscordApi, route: `/${string}`): Promise<T> {
  return api.call<T>({ method: 'GET', route, withinMs: WITHIN_MS });
}

function failureFinding(error: DiscordError): Finding {
  if (error.code === 'token-refused') return fix(TOKEN_REFUSED);
  if (error.code === 'unavailable') {
    return fix(
      `Discord cannot be reached: ${error.message}`,
      'Check that this machine may open https connections, and that DISCORD_API_BASE is empty or right.',
    );
  }
  return fix(`Discord refuses to tell of the bot: ${error.message}`, 'Wait a minute and run this again.');
}

function applicationFindings(application: APIApplication, config: Config, door: DoorChoice): Finding[] {
  const { DISCORD_APPLICATION_ID: id } = config;
  const findings: Finding[] = [];
  if (id !== undefined && id !== application.id) {
    const todo = "Copy both from the same application's page, or leave DISCORD_APPLICATION_ID empty.";
    findings.push(fix('DISCORD_APPLICATION_ID names another application than the token belongs to.', todo));
  }
  if (door.kind === 'http') return [...findings, ...signedFindings(application, door.publicKey)];
  return door.kind === 'gateway' ? [...findings, ...wiredFindings(application)] : findings;
}

function signedFindings(application: APIApplication, publicKey: string): Finding[] {
  const isOurs = application.verify_key.toLowerCase() === publicKey.toLowerCase();
  return [
    isOurs
      ? good("DISCORD_PUBLIC_KEY is the application's.")
      : fix(
          'DISCORD_PUBLIC_KEY is not the key of this application: every command would be refused.',
          "Copy the public key from the application's page at Discord.",
        ),
    application.interactions_endpoint_url
      ? good('An interactions address is set.')
      : look(
          'No interactions address is set: no command will come.',
          "While the bot runs, enter https://YOUR-HOST/interactions on the application's page at Discord.",
        ),
  ];
}

function wiredFindings(application: APIApplication): Finding[] {
  if (!application.interactions_endpoint_url) return [];
  return [
    fix(
      'Discord sends the commands to a web address, so none will come over the gateway.',
      "Clear the interactions address on the application's page, or set HTTP_PORT and DISCORD_PUBLIC_KEY.",
    ),
  ];
}

async function commandFindings(api: DiscordApi, applicationId: string): Promise<Finding[]> {
  const { length } = await got<readonly unknown[]>(api, Routes.applicationCommands(applicationId));
  return [good(length === 0 ? 'No commands yet; the first start puts them there.' : `${length} commands are there.`)];
}

async function startFindings(api: DiscordApi): Promise<Finding[]> {
  const { session_start_limit: starts } = await got<APIGatewayBotInfo>(api, Routes.gatewayBot());
  if (starts.remaining >= FEW_STARTS) return [];
  const hours = Math.ceil(starts.reset_after / 3_600_000);
  return [
    look(
      `Discord allows only ${starts.remaining} more connections for ${hours} h.`,
      'Something starts the bot again and again: read its log before starting it once more.',
    ),
  ];
}
