import { describe, expect, it } from 'vitest';
import { parseJson } from '../../../packages/core/src/read/parse-json.js';

function reason(text: string): string {
  const parsed = parseJson({ name: 'f', text });
  return parsed.ok || parsed.issue.code !== 'not-json' ? 'read' : parsed.issue.reason;
}

describe('a text', () => {
  it('is a value, with or without a byte-order mark', () => {
    expect(parseJson({ name: 'f', text: '{"a": [1]}' })).toEqual({ ok: true, file: 'f', value: { a: [1] } });
    expect(parseJson({ name: 'f', text: '\ufeff{"a": 1}' })).toEqual({
      ok: true,
      file: 'f',
      value: { a: 1 },
    });
  });

  it('that is none is an issue of its file, never an error', () => {
    expect(parseJson({ name: 'f', text: '' })).toMatchObject({
      ok: false,
      issue: { code: 'not-json', severity: 'error', place: { file: 'f', index: null } },
    });
  });

  it('is told apart: empty, broken off, not JSON', () => {
    expect(reason('  \n')).toBe('the file is empty');
    expect(reason('{"a": [1, 2')).toMatch(/breaks off|line 1/);
    expect(reason('{\n"a": 1,\n"b": oops\n}')).toMatch(/line 3|not JSON/);
    expect(reason('<html></html>')).toMatch(/not JSON|line 1/);
  });

  it('is not quoted back in the reason', () => {
    expect(reason('{"secret-thing": nope}')).not.toContain('secret-thing');
  });
});
