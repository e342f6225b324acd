import { z } from 'zod';
import type { LearnedModel } from '../model/learned.js';
import { MODEL_VERSION, modelFingerprint } from '../risk/fingerprint.js';
import { ruleWords } from '../validate/rule-words.js';

const group = z.object({
  group: z.string(),
  entries: z.number(),
  expected: z.number(),
  someStretches: z.number(),
  multiplier: z.object({ low: z.number(), mean: z.number().positive(), high: z.number() }),
  logSd: z.number().min(0),
  priorLogSd: z.number().positive(),
});

const schema = z.object({
  schema: z.literal(1),
  kind: z.literal('rootreach-learned'),
  model: z.object({ version: z.string(), fingerprint: z.string() }),
  data: z.object({ fingerprint: z.string(), sites: z.number(), lines: z.number(), observations: z.number() }),
  groups: z.array(group),
  kinds: z.array(group),
}) satisfies z.ZodType<LearnedModel>;

/** A learned model from its text, or why it cannot be used. Never throws. */
export function readLearnedModel(
  text: string,
): { readonly ok: true; readonly model: LearnedModel } | { readonly ok: false; readonly reason: string } {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, reason: 'the model file is not JSON' };
  }
  const parsed = schema.safeParse(value);
  if (!parsed.success) {
    const [first] = parsed.error.issues;
    return {
      ok: false,
      reason: `not a learned model: ${first?.path.join('.') || 'the file'} must be ${first ? ruleWords(first) : 'another'}`,
    };
  }
  const { version, fingerprint } = parsed.data.model;
  if (version !== MODEL_VERSION || fingerprint !== modelFingerprint()) {
    return {
      ok: false,
      reason: 'it was learned with other tables or relations: learn again from the findings',
    };
  }
  return { ok: true, model: parsed.data };
}
