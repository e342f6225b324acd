const NAME = '[A-Za-z_][\\w.:-]*';
const ATTRIBUTE = `\\s+${NAME}\\s*=\\s*(?:"[^"<]*"|'[^'<]*')`;
const TAG = new RegExp(`^<(/?)(${NAME})((?:${ATTRIBUTE})*)\\s*(/?)>`);
const REFERENCE = /&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\dA-Fa-f]+);)/;

/**
 * What keeps a text from being well-formed XML 1.0 (W3C, section 2.1), or null: one root, tags that close in order,
 * quoted attributes given once, no bare `<` or `&`. Without DTD, comments and CDATA.
 */
export function faultOf(xml: string): string | null {
  let rest = xml.replace(/^<\?xml version="1\.0"[^?]*\?>\s*/, '').trimEnd();
  if (REFERENCE.test(rest)) return 'a bare &';
  const open: string[] = [];
  let roots = 0;
  while (rest !== '') {
    const text = /^[^<]+/.exec(rest)?.[0] ?? '';
    if (text !== '' && open.length === 0) return `text outside the root: ${text.slice(0, 20)}`;
    if (text.includes(']]>')) return 'a bare ]]>';
    rest = rest.slice(text.length);
    if (rest === '') break;
    const tag = TAG.exec(rest);
    if (tag === null) return `no tag at ${rest.slice(0, 40)}`;
    const [whole, closing, name = '', attributes = '', empty] = tag;
    const names = [...attributes.matchAll(new RegExp(`(${NAME})\\s*=\\s*["']`, 'g'))].map(
      ([, given]) => given,
    );
    if (new Set(names).size < names.length) return `an attribute twice in <${name}>`;
    if (closing === '/') {
      if (open.pop() !== name) return `</${name}> closes nothing`;
    } else {
      if (open.length === 0) roots += 1;
      if (empty !== '/') open.push(name);
    }
    rest = rest.slice(whole.length);
  }
  if (open.length > 0) return `<${open[open.length - 1]}> is not closed`;
  return roots === 1 ? null : `${roots} roots`;
}
