// Writes one of two texts to a file, then the other, as the command writes, until it is killed.
import { writeWhole } from '../../packages/cli/dist/write-output.js';

const [path, characters] = process.argv.slice(2);
const texts = ['a', 'b'].map((letter) => letter.repeat(Number(characters)));
process.stdout.write('writing\n');
for (let turn = 0; ; turn++) {
  const text = texts[turn % 2];
  const half = text.length >> 1;
  await writeWhole(path, [text.slice(0, half), new TextEncoder().encode(text.slice(half))]);
}
