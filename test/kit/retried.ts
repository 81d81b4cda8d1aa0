// A reporter: tests that were tried again, by name and counted. One that passes in the end is a defect seen now and then.
import { appendFileSync } from 'node:fs';
import type { Reporter, TestCase } from 'vitest/node';

export default class Retried implements Reporter {
  readonly names: string[] = [];

  onTestCaseResult(test: Pick<TestCase, 'fullName' | 'diagnostic' | 'result'>): void {
    const times = test.diagnostic()?.retryCount ?? 0;
    if (times > 0) this.names.push(`${test.fullName} (${times} more, ${test.result().state})`);
  }

  /** The names go to the file RETRIED too, where one is named. */
  onTestRunEnd(): void {
    console.log([`retried: ${this.names.length}`, ...this.names.map(name => `  ${name}`)].join('\n'));
    const { RETRIED } = process.env;
    if (RETRIED !== undefined) appendFileSync(RETRIED, this.names.map(name => `${name}\n`).join(''));
  }
}
