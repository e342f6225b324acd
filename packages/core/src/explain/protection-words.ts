import type { ProtectionSheet, SheetStretch, SheetTree, SheetWay } from '../model/protection-sheet.js';
import type { HarmReason, HarmRule } from '../model/tree-harm.js';

/** Lengths as the reader wants them. */
export interface SheetNumbers {
  /** Along the ground: `34 ft`. */
  readonly length: (lengthM: number) => string;
  /** From one station to another: `34 to 44 ft`. */
  readonly span: (fromM: number, toM: number) => string;
  /** Through a trunk or a root: `14 in`. */
  readonly trunk: (diameterM: number) => string;
}

/** One line of the sheet and what stands below it. */
export interface SheetLine {
  readonly text: string;
  readonly details: readonly string[];
}

/** A titled list of the sheet. */
export interface SheetSection {
  readonly title: string;
  readonly lines: readonly SheetLine[];
}

const plain = (...texts: readonly string[]): SheetLine[] => texts.map((text) => ({ text, details: [] }));

const WAYS: Readonly<Record<SheetWay, string>> = {
  'do-not-dig': 'do not dig: move the trench, or bore',
  arborist: 'with an arborist only, by hand or air',
  bore: 'bore under the roots',
  'hand-or-air': 'dig by hand or with air',
};

const REASONS: Readonly<Record<HarmReason, string>> = {
  'inside-3-diameters': 'the trench is within three trunk widths: the tree could fall',
  'severs-over-25': 'more than a quarter of its protection circle would be lost',
  'inside-structural': 'it runs among the roots that hold the tree up',
  'severs-over-10': 'more than a tenth of its protection circle would be lost',
  'inside-6-diameters': 'the trench is within six trunk widths',
  'bore-too-shallow': 'the bore is too shallow',
  'inside-12-diameters': 'the trench is within twelve trunk widths',
  'bore-starts-too-near': 'the open trench comes too near before the bore starts',
  'bore-depth-unknown': 'the depth of the bore is not known',
};

/** Why a rule was given for a tree, a clause without its full stop. */
export const wordHarmReason = (reason: HarmReason): string => REASONS[reason];

const RULES: Readonly<Record<HarmRule, string>> = {
  'no-dig': 'Do not dig here',
  arborist: 'Arborist first',
  caution: 'With care',
  clear: 'Clear',
};

const percent = (share: number): string =>
  share > 0 && share < 0.01 ? 'less than 1 %' : `${Math.round(100 * share)} %`;

const nameOf = ({ name, id }: Pick<SheetTree, 'name' | 'id'>): string => `${name} (${id})`;

function treeLine(tree: SheetTree, { length, trunk }: SheetNumbers): SheetLine {
  const { stemDiameterM, stemAssumed, line, atM, nearestM, severedShare, rule, reasons, rings, boring } =
    tree;
  const measured = stemAssumed
    ? `trunk taken as ${trunk(stemDiameterM)}, measure it`
    : `trunk ${trunk(stemDiameterM)}`;
  const place =
    nearestM <= 0
      ? 'the route runs over it'
      : `the route passes ${length(nearestM)} from the middle of the trunk`;
  const lost = severedShare > 0 ? [`${percent(severedShare)} of its protection circle lost.`] : [];
  const why = reasons.map((reason) => REASONS[reason]).join('; ');
  return {
    text: `${nameOf(tree)}, ${measured}: ${place}, ${length(atM)} along${line === undefined ? '' : ` ${line}`}.`,
    details: [
      `${RULES[rule]}: ${why}.`,
      ...lost,
      `Around it: no digging within ${length(rings.noDigM)}, arborist within ${length(rings.arboristM)}, ` +
        `by hand or air within ${length(rings.careM)}.`,
      `If you bore: start ${length(boring.startM)} or more from the trunk, ${trunk(boring.depthM)} deep or more.`,
    ],
  };
}

function stretchLine(stretch: SheetStretch, sheet: ProtectionSheet, { span }: SheetNumbers): string {
  const names = stretch.trees.flatMap((id) => {
    const tree = sheet.trees.find((each) => each.id === id);
    return tree ? [nameOf(tree)] : [];
  });
  const line = stretch.line === undefined ? '' : `${stretch.line}, `;
  return `${line}${span(stretch.fromM, stretch.toM)}: ${WAYS[stretch.way]}; ${names.join(', ')}`;
}

/**
 * The sheet in words: trees, stretches, who is called, what is not cut, permits, and the cautions.
 * @param sheet as `protectionSheet` gives it.
 * @param numbers how the reader's page writes metres.
 */
export function wordProtectionSheet(sheet: ProtectionSheet, numbers: SheetNumbers): SheetSection[] {
  const cautions = { title: 'Before you dig', lines: plain(...sheet.cautions.map(({ text }) => text)) };
  const none = 'None near the trench. Stop and ask if you meet roots all the same.';
  if (sheet.trees.length === 0) return [{ title: 'Trees', lines: plain(none) }, cautions];
  const called = sheet.trees.filter(({ id }) => sheet.arboristFor.includes(id)).map(nameOf);
  const root = numbers.trunk(sheet.askBeforeCuttingM);
  const arborist =
    called.length > 0
      ? `Call a certified arborist before anything is opened for ${called.join(', ')}.`
      : `None needed before you start; call one if you meet a root of ${root} or more.`;
  return [
    { title: 'Trees', lines: sheet.trees.map((tree) => treeLine(tree, numbers)) },
    {
      title: sheet.stretches.some(({ line }) => line !== undefined)
        ? 'Stretches, from the upper end of each line'
        : 'Stretches, from the upper end',
      lines: plain(...sheet.stretches.map((stretch) => stretchLine(stretch, sheet, numbers))),
    },
    { title: 'Arborist', lines: plain(arborist) },
    {
      title: 'Roots',
      lines: plain(
        `Do not cut a root of ${root} or more: dig under it, and ask.`,
        'Cut thinner ones clean with a sharp saw or shears, never with the bucket.',
        'Keep bared roots damp and covered, and fill the trench the same day if you can.',
        'Keep machines, soil and pipe outside the fenced circle.',
      ),
    },
    {
      title: 'Permits',
      lines: plain(
        'Ask whether the trees are protected and whether the dig needs a permit, before you start.',
      ),
    },
    cautions,
  ];
}
