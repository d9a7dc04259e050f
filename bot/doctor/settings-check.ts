import { type Config, readConfig, unknownSettings } from '../config.ts';
import { type DoorChoice, doorChoice, startLines } from '../door-choice.ts';
import { PlainProblem } from '../ground/errors.ts';
import { type Finding, findingsOn } from './finding.ts';
import { isPortFree } from './free-port.ts';

const { good, look, fix } = findingsOn('Settings');

export interface SettingsRead {
  readonly findings: readonly Finding[];
  /** Undefined where the settings do not hold together: nothing else can be looked at then. */
  readonly settings?: { readonly config: Config; readonly door: DoorChoice };
}

/** Reads the settings as a start would. */
export async function settingsRead(environment: Readonly<Record<string, string | undefined>>): Promise<SettingsRead> {
  const strangers = unknownSettings(environment).map((name) =>
    look(`${name} is not a setting of this program.`, 'Compare its spelling with .env.example.'),
  );
  try {
    const config = readConfig(environment);
    const door = doorChoice(config);
    const lines = startLines(config, door).map(good);
    return { findings: [...lines, ...strangers, ...(await portFindings(config))], settings: { config, door } };
  } catch (error) {
    if (!(error instanceof PlainProblem)) throw error;
    return { findings: [fix(error.message), ...strangers] };
  }
}

async function portFindings({ HTTP_PORT: http, METRICS_PORT: metrics }: Config): Promise<Finding[]> {
  if (http !== undefined && http === metrics) {
    return [fix('HTTP_PORT and METRICS_PORT are the same.', 'Give METRICS_PORT a port of its own.')];
  }
  const wanted = [['HTTP_PORT', http] as const, ['METRICS_PORT', metrics] as const];
  const findings: Finding[] = [];
  for (const [name, port] of wanted) {
    if (port === undefined || (await isPortFree(port))) continue;
    const says = `${name} ${port} is taken.`;
    findings.push(look(says, 'If the bot is running now, that is the bot itself; otherwise choose another port.'));
  }
  return findings;
}
