import { elements, parsed } from './page-text.js';

const allowed = new Set(
  `html head meta title style body main header section footer div p span h1 h2 ul li b table thead tbody tr th td
  figure figcaption img svg g defs pattern radialGradient stop rect circle path line text desc`.split(/\s+/),
);

/** What stands in markup and could run or fetch: elements and attributes that no page of ours has. */
export function strangers(markup: string): string[] {
  return elements(parsed(markup)).flatMap((one) => {
    const attributes = Array.from({ length: one.attributes.length }, (_, i) => one.attributes.item(i));
    const odd = attributes
      .filter((attribute) => {
        const { name = '', value = '' } = attribute ?? {};
        if (name === 'src' && one.nodeName === 'img')
          return !/^data:image\/(png|jpeg|gif|webp);base64,/.test(value);
        return (
          /^on|^style$|^src$|^srcset$|^action$|href$/i.test(name) || /^\s*(javascript|data):/i.test(value)
        );
      })
      .map((attribute) => `${attribute?.name}=${attribute?.value}`);
    return [...(allowed.has(one.nodeName) ? [] : [one.nodeName]), ...odd];
  });
}
