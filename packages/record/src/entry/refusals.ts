import type { Refusal, RefusalCode } from '@evenfall/clinical';
import { pointer, refusal } from '@evenfall/clinical';
import type { z } from 'zod';

/** Says a schema's complaints as refusals, each at its JSON Pointer, in order of place. */
export function refusalsOf(error: z.ZodError, input: unknown, at = ''): Refusal[] {
  return error.issues.flatMap((issue) => refusalsOfIssue(issue, input, at));
}

function refusalsOfIssue(issue: z.core.$ZodIssue, input: unknown, at: string): Refusal[] {
  const got = valueAt(input, issue.path);
  const field = at + pointerOf(issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => refusal(pointer(field, key), 'unknown-field', 'known-field', key));
    case 'invalid_type': {
      if (got === undefined || got === null || got === '')
        return [refusal(field, 'missing', issue.expected, got)];
      const code: RefusalCode =
        issue.expected === 'number' ? 'not-a-number' : issue.expected === 'int' ? 'not-whole' : 'contradicts';
      return [refusal(field, code, issue.expected, got)];
    }
    case 'invalid_value':
      return [
        got === undefined || got === null
          ? refusal(field, 'missing', 'choice', got, { choices: issue.values.map(String) })
          : refusal(field, 'unknown-id', 'choice', got, { choices: issue.values.map(String) }),
      ];
    case 'too_small':
      return [
        refusal(field, isBlankText(got) ? 'missing' : 'out-of-range', `at-least-${issue.origin}`, got, {
          figures: { minimum: Number(issue.minimum) },
        }),
      ];
    case 'too_big':
      return [
        refusal(field, 'out-of-range', `at-most-${issue.origin}`, got, {
          figures: { maximum: Number(issue.maximum) },
        }),
      ];
    case 'invalid_format':
      return [refusal(field, codeOfFormat(issue.format, got), issue.format, got)];
    case 'invalid_union': {
      const nearest = nearestShape(issue.errors);
      if (nearest !== null)
        return nearest.flatMap((inner) =>
          refusalsOfIssue({ ...inner, path: [...issue.path, ...inner.path] }, input, at),
        );
      return [
        refusal(
          field,
          got === undefined || got === null ? 'missing' : 'contradicts',
          'one-of-the-shapes',
          got,
        ),
      ];
    }
    case 'custom':
      return [
        refusal(
          field,
          got === undefined || got === null || got === '' ? 'missing' : 'contradicts',
          issue.message,
          got,
        ),
      ];
    default:
      return [refusal(field, 'contradicts', issue.code, got)];
  }
}

/** What the one shape complains of that fits better than every other; null when none does. */
function nearestShape(shapes: readonly z.core.$ZodIssue[][]): readonly z.core.$ZodIssue[] | null {
  const [nearest, next] = shapes.toSorted((a, b) => a.length - b.length);
  return nearest !== undefined && next !== undefined && nearest.length < next.length ? nearest : null;
}

function codeOfFormat(format: string, got: unknown): RefusalCode {
  if (isBlankText(got)) return 'missing';
  return format === 'datetime' ? 'not-a-time' : 'contradicts';
}

/** A text of nothing but spaces is nothing: names and reasons are trimmed before they are judged. */
function isBlankText(got: unknown): boolean {
  return typeof got === 'string' && got.trim() === '';
}

function pointerOf(path: readonly PropertyKey[]): string {
  return path.reduce<string>((at, part) => pointer(at, String(part)), '');
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  let value = input;
  for (const part of path) {
    if (value === null || typeof value !== 'object') return undefined;
    value = (value as Record<PropertyKey, unknown>)[part];
  }
  return value;
}
