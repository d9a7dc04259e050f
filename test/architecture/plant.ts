import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as ts from 'typescript';

/** The checkout that the tests belong to. */
export const CHECKOUT = fileURLToPath(new URL('../..', import.meta.url));

/** What the compiler says to one file planted in `rules/` under the settings of `rules/tsconfig.json`; nothing is written. */
export function compilerComplaints(source: string): string[] {
  const planted = join(CHECKOUT, 'rules/planted/planted.ts');
  const config = ts.readConfigFile(join(CHECKOUT, 'rules/tsconfig.json'), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config.config, ts.sys, join(CHECKOUT, 'rules'));
  const host = ts.createCompilerHost({ ...options, noEmit: true });
  const { fileExists, getSourceFile } = host;
  host.fileExists = (file) => file === planted || fileExists(file);
  host.getSourceFile = (file, ...rest) =>
    file === planted ? ts.createSourceFile(file, source, ts.ScriptTarget.ES2023) : getSourceFile(file, ...rest);
  const program = ts.createProgram([planted], { ...options, noEmit: true, incremental: false, composite: false }, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map((diagnostic) => ts.flattenDiagnosticMessageText(diagnostic.messageText, ' '));
}

/** What Biome says to planted files, by file, under the settings of this checkout copied to a directory of its own. */
export function biomeComplaints(files: Readonly<Record<string, string>>): Map<string, string[]> {
  const garden = mkdtempSync(join(tmpdir(), 'planted-'));
  try {
    for (const file of ['biome.json', 'package.json', '.gitignore', 'test/architecture/pure-rules.grit']) {
      cpSync(join(CHECKOUT, file), join(garden, file));
    }
    for (const [file, source] of Object.entries(files)) {
      mkdirSync(dirname(join(garden, file)), { recursive: true });
      writeFileSync(join(garden, file), source);
    }
    return byFile(lintReport(garden));
  } finally {
    rmSync(garden, { recursive: true });
  }
}

interface LintReport {
  readonly diagnostics: readonly {
    readonly severity: string;
    readonly category: string;
    readonly message: string;
    readonly location: { readonly path: string };
  }[];
}

function lintReport(directory: string): LintReport {
  const biome = join(CHECKOUT, 'node_modules/@biomejs/biome/bin/biome');
  try {
    execFileSync(process.execPath, [biome, 'lint', '--reporter=json', '--max-diagnostics=none', '.'], {
      cwd: directory,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  } catch (failure) {
    // Biome ends with 1 when it finds something; the report is then on the failed run.
    const report = (failure as { stdout?: Buffer }).stdout?.toString() ?? '';
    if (report.startsWith('{')) return JSON.parse(report) as LintReport;
    throw failure;
  }
  return { diagnostics: [] };
}

function byFile(report: LintReport): Map<string, string[]> {
  const complaints = new Map<string, string[]>();
  for (const { severity, category, message, location } of report.diagnostics) {
    if (severity !== 'error') continue;
    complaints.set(location.path, [...(complaints.get(location.path) ?? []), `${category}: ${message}`]);
  }
  return complaints;
}
