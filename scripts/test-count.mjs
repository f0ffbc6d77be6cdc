// A Vitest reporter that writes how many tests passed and failed; tests a crashed worker never finished count as failed.
import { writeFileSync } from 'node:fs';

export default class TestCount {
  onTestRunEnd(modules, unhandledErrors) {
    let passed = 0;
    let failed = unhandledErrors.length;
    let skipped = 0;
    for (const module of modules) {
      if (module.errors().length > 0) failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed += 1;
        else if (state === 'skipped') skipped += 1;
        else failed += 1;
      }
    }
    writeFileSync(process.env.SHOREGLASS_TEST_COUNT, JSON.stringify({ passed, failed, skipped }));
  }
}
