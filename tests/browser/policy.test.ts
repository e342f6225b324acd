import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const dist = fileURLToPath(new URL('../../apps/map/dist/', import.meta.url));
const html = readFileSync(`${dist}index.html`, 'utf8');

/** The policy by directive, as the page is served (Content Security Policy Level 3, W3C). */
const policy = new Map(
  (/http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(html)?.[1] ?? '')
    .split(';')
    .map((directive) => directive.trim().split(/\s+/))
    .map(([name = '', ...values]) => [name, values]),
);

describe('the page as it is built', () => {
  it('allows nothing by default, and scripts, workers and connections from its own place alone', () => {
    expect(policy.get('default-src')).toEqual(["'none'"]);
    for (const name of ['script-src', 'worker-src', 'connect-src', 'manifest-src'])
      expect(policy.get(name), name).toEqual(["'self'"]);
    for (const name of ['object-src', 'base-uri', 'form-action'])
      expect(policy.get(name), name).toEqual(["'none'"]);
    // pictures may come from a host that the user typed for map tiles: the page's first act narrows this
    expect(policy.get('img-src')).toEqual(["'self'", 'data:', 'blob:', 'https:']);
    expect([...policy.values()].flat()).not.toContain("'unsafe-eval'");
    expect([...policy].filter(([, values]) => values.includes("'unsafe-inline'")).map(([at]) => at)).toEqual([
      'style-src',
    ]);
  });

  it('states its policy before anything that it holds for', () => {
    const stated = html.indexOf('Content-Security-Policy');
    for (const held of ['<script', '<link', '<style', '<img'])
      expect(html.includes(held) ? html.indexOf(held) : Infinity, held).toBeGreaterThan(stated);
  });

  it('has no script written into it, and asks no other host for anything', () => {
    const scripts = [...html.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/g)];
    expect(scripts.length).toBeGreaterThan(0);
    for (const [, attributes, text] of scripts) {
      expect(attributes).toMatch(/\bsrc="\.\/assets\//);
      expect(text?.trim()).toBe('');
    }
    expect(html).not.toMatch(/\son\w+=|javascript:/i);
    expect(html).not.toMatch(/(?:src|href)="(?:https?:)?\/\//);
    const styles = readdirSync(`${dist}assets`).filter((name) => name.endsWith('.css'));
    expect(styles.length).toBeGreaterThan(0);
    for (const name of styles)
      expect(readFileSync(`${dist}assets/${name}`, 'utf8'), name).not.toMatch(
        /@import|url\(["']?(?:https?:)?\/\//,
      );
  });
});
