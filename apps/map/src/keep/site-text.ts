import { readDocument } from '../sketch/read-document.js';
import { fileText } from './file-text.js';

/** Whether a kept text is a site at all. */
export function isSiteText(text: string): boolean {
  try {
    const { type, features } = JSON.parse(text) as { type?: unknown; features?: unknown };
    return type === 'FeatureCollection' && Array.isArray(features);
  } catch {
    return false;
  }
}

/** The same site under another name. */
export function withName(text: string, name: string): string {
  const { document } = readDocument('', [{ name, text }]);
  return fileText({ ...document, info: { ...document.info, name } });
}
