import { join } from 'node:path';
import * as ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { exportedNumbers } from './exported-numbers.ts';
import { CHECKOUT } from './plant.ts';
import { PLAIN_ENDINGS, UNIT_ENDINGS, WHOLE_NAMES } from './unit-endings.ts';

const RULES = join(CHECKOUT, 'rules/');
const ENDINGS = [...Object.keys(UNIT_ENDINGS), ...Object.keys(PLAIN_ENDINGS)];

describe('every number that rules/ exports', () => {
  test('says its unit at the end of its name', () => {
    const config = ts.readConfigFile(join(RULES, 'tsconfig.json'), ts.sys.readFile);
    const { fileNames, options } = ts.parseJsonConfigFileContent(config.config, ts.sys, RULES);
    const program = ts.createProgram(fileNames, { ...options, noEmit: true, composite: false });
    const numbers = exportedNumbers(program, (file) => file.startsWith(RULES));
    expect(numbers.length).toBeGreaterThan(100);
    const silent = numbers.filter(({ name }) => !saysItsUnit(name));
    expect(silent.map(({ name, file, line }) => `${file.slice(CHECKOUT.length)}:${line} ${name}`)).toEqual([]);
  });

  test.each([
    ['a parameter', 'export function warmC(air: number): boolean { return air > 0; }', ['air']],
    ['a result', 'export function warmth(airC: number): number { return airC; }', ['warmth']],
    ['the result of an arrow', 'export const warmth = (airC: number) => airC;', ['warmth']],
    ['a constant', 'export const LIMIT = 3;', ['LIMIT']],
    [
      'an optional property',
      'export interface Air { readonly temperature?: number; readonly windMPerS: number }',
      ['temperature'],
    ],
    ['a list', 'export type Air = { readonly temperatures: readonly number[] };', ['temperatures']],
    ['a record', "export const lows: Record<'leaf' | 'root', number> = { leaf: 1, root: 2 };", ['lows']],
    ['a label in a pair', 'export interface Night { readonly pair: readonly [lowC: number, high: number] }', ['high']],
    ['a map', 'export const lows = new Map<string, number>();', ['lows']],
    ['a property of a bare literal', 'export const AIR = { warm: 3, cold: { deepC: 1, deep: 2 } };', ['warm', 'deep']],
    ['a method', 'export class Air { wind(heightM: number): number { return heightM; } }', ['wind']],
    ['a quotient that ends in half its unit', 'export interface Air { readonly lossPerM2K: number }', ['lossPerM2K']],
    [
      'a record of literal keys made read-only',
      "export const lows: Readonly<Record<'leaf' | 'root', number>> = { leaf: 1, root: 2 };",
      ['lows'],
    ],
    ['nothing that has a unit', 'export const AIR_C = 3; export const windMPerS = (airC: number) => airC;', []],
    [
      'nothing private',
      'const LIMIT = 3; export function isWarm(airC: number) { const limit = LIMIT; return airC > limit; }',
      [],
    ],
  ])('is found when silent: %s', (_what, source, silent) => {
    expect(silentNames(source)).toEqual(silent);
  });
});

/** Whether a name ends in a listed unit, at a word boundary and with all of a quotient. */
function saysItsUnit(name: string): boolean {
  if (WHOLE_NAMES.includes(name)) return true;
  return ENDINGS.some((ending) => {
    if (/^[A-Z\d_]+$/.test(name)) return `_${name}`.endsWith(`_${ending.replaceAll('Per', '_PER_').toUpperCase()}`);
    if (name === `${ending.charAt(0).toLowerCase()}${ending.slice(1)}`) return true;
    const start = name.endsWith(ending) ? name.slice(0, -ending.length) : '';
    return /[a-z\d]$/.test(start) && !/Per[A-Z]/.test(start);
  });
}

function silentNames(source: string): string[] {
  const file = join(RULES, 'planted.ts');
  const options = { target: ts.ScriptTarget.ES2023, strict: true, noEmit: true, types: [] };
  const host = ts.createCompilerHost(options);
  const { getSourceFile } = host;
  host.getSourceFile = (name, ...rest) =>
    name === file ? ts.createSourceFile(name, source, ts.ScriptTarget.ES2023) : getSourceFile(name, ...rest);
  const program = ts.createProgram([file], options, host);
  return exportedNumbers(program, (name) => name === file)
    .map(({ name }) => name)
    .filter((name) => !saysItsUnit(name));
}
