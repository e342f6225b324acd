import { resolveSpecies } from '@rootreach/core';
import { words } from '../../words/words.js';
import { RadioRow } from './radio-row.js';

type TreeForm = 'broadleaf' | 'conifer' | 'palm';
type Size = 'large' | 'medium' | 'small';

interface Looks {
  readonly form: TreeForm | null;
  readonly size: Size | null;
}

const KEY = /^unknown-(broadleaf|conifer|palm)(?:-(large|medium|small))?$/;

/** What is said of a tree whose kind nobody knows. */
function looksOf(text: string): Looks {
  const [, form, size] = KEY.exec(text === '' ? '' : resolveSpecies(text).key) ?? [];
  return { form: (form as TreeForm | undefined) ?? null, size: (size as Size | undefined) ?? null };
}

/** As it stands in the file, whatever the language of the page: `large broadleaf`. */
const written = ({ form, size }: Looks): string =>
  [size, form ?? 'broadleaf'].filter((word) => word !== null).join(' ');

/** For a tree that nobody can name: what it looks like. */
export function UnknownKind({
  text,
  write,
}: {
  readonly text: string;
  readonly write: (species: string) => void;
}) {
  const w = words.value.forms.tree;
  const looks = looksOf(text);
  return (
    <details class="fold" open={looks.form !== null}>
      <summary>{w.unknown}</summary>
      <RadioRow<TreeForm>
        label={w.form}
        value={looks.form}
        choices={Object.entries(w.forms) as [TreeForm, string][]}
        choose={(form) => write(written({ ...looks, form }))}
      />
      <RadioRow<Size>
        label={w.size}
        value={looks.size}
        choices={Object.entries(w.sizes) as [Size, string][]}
        choose={(size) => write(written({ ...looks, size }))}
      />
    </details>
  );
}
