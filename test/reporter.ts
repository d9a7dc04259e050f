import type { Reporter, TestCase, TestModule, Vitest } from 'vitest/node';

const tell = (line: string) => process.stdout.write(`${line}\n`);

/** Prints what failed and why, the reason of each skipped test, and one closing line: `N passed, N failed`. */
export default class PlainReporter implements Reporter {
  #passed = 0;
  #failed = 0;
  #skipped = 0;

  onInit(vitest: Vitest): void {
    tell(`Running the tests with vitest ${vitest.version}`);
  }

  onUserConsoleLog(log: { content: string }): void {
    tell(log.content.trimEnd());
  }

  onTestCaseResult(test: TestCase): void {
    const result = test.result();
    if (result.state === 'passed') this.#passed += 1;
    else if (result.state === 'skipped') {
      this.#skipped += 1;
      tell(`skipped: ${test.fullName}${result.note ? ` (${result.note})` : ''}`);
    } else if (result.state === 'failed') {
      this.#failed += 1;
      tell(`FAILED: ${test.module.relativeModuleId} > ${test.fullName}`);
      for (const error of result.errors) tell(indented(error.stack ?? error.message));
    }
  }

  onTestModuleEnd(module: TestModule): void {
    for (const error of module.errors()) {
      this.#failed += 1;
      tell(`FAILED to load: ${module.relativeModuleId}`);
      tell(indented(error.stack ?? error.message));
    }
  }

  onTestRunEnd(_modules: unknown, unhandled: readonly { message: string; stack?: string }[]): void {
    for (const error of unhandled) {
      this.#failed += 1;
      tell('FAILED outside any test:');
      tell(indented(error.stack ?? error.message));
    }
    if (this.#passed === 0 && this.#failed === 0) this.#failed = 1;
    const skipped = this.#skipped > 0 ? `, ${this.#skipped} skipped` : '';
    tell(`${this.#passed} passed, ${this.#failed} failed${skipped}`);
  }
}

function indented(text: string): string {
  return text.replace(/^/gm, '    ');
}
