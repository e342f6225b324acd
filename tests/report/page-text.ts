import { DOMParser, type Element, type Node } from '@xmldom/xmldom';

/** A page or picture through a strict parser: anything out of place in the markup throws. */
export function parsed(page: string): Element {
  const closed = page.replace(/^<!DOCTYPE html>\s*/, '').replace(/<(meta|img|br)\b([^>]*)>/g, '<$1$2/>');
  const parser = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  });
  const root = parser.parseFromString(closed, 'text/xml').documentElement;
  if (root === null) throw new Error('nothing was parsed');
  return root;
}

/** All elements below one, itself first. */
export function elements(root: Element): Element[] {
  const inside = Array.from({ length: root.childNodes.length }, (_, i) => root.childNodes.item(i) as Node);
  return [root, ...inside.filter((node): node is Element => node.nodeType === 1).flatMap(elements)];
}

const SENTENCES = new Set(['p', 'li', 'h1', 'h2', 'figcaption']);

/** What a person reads as running text, a sentence or more an entry: no drawing, no key, no figures of a table. */
export function readText(page: string): string[] {
  return elements(parsed(page))
    .filter(({ nodeName }) => SENTENCES.has(nodeName))
    .filter((element) => (element.parentNode as Element | null)?.getAttribute('class') !== 'key')
    .filter((element) => element.getAttribute('class') !== 'fill')
    .map((element) => (element.textContent ?? '').replace(/\s+/g, ' ').trim())
    .filter((text) => text !== '');
}
