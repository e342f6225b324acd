/** Ink and paper of the plan drawings. */
export const ink = {
  paper: '#F6F3EA',
  text: '#2A2B26',
  faint: '#6A6B62',
  hairline: '#D9D4C5',
  stone: '#C9C6BB',
  dark: '#4A1942',
  rust: '#B04E2A',
  ochre: '#8A6A1F',
} as const;
