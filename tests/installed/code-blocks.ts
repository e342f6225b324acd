/** Blocks of code in a text: their language and what they hold. */
export function codeBlocks(markdown: string): { readonly language: string; readonly code: string }[] {
  return [...markdown.matchAll(/^```(\w*)\n([\s\S]*?)^```$/gm)].map(([, language = '', code = '']) => ({
    language,
    code,
  }));
}
