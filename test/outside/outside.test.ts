import { describe, expect, it } from 'vitest';
import type { OutsideCheck } from './types.ts';

const modules = import.meta.glob<{ checks: readonly OutsideCheck[] }>('./*.checks.ts', {
  eager: true,
});

describe.each(Object.entries(modules))('%s', (_file, { checks }) => {
  it.each(checks)('$topic: $what', (check) => {
    const expected = typeof check.expected === 'number' ? check.expected : check.expected();
    expect(Math.abs(check.ours() - expected)).toBeLessThanOrEqual(check.tolerance);
  });
});
