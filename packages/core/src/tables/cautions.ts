import type { CautionConditions } from '../model/caution.js';
import type { SourceKey } from '../sources/bibliography.js';
import type { HowKnown } from '../sources/how-known.js';
import { fromFeet } from '../units/length.js';

/** Name of one caution; `wordCaution` gives its text. */
export type CautionCode =
  | 'locate-utilities'
  | 'trench-walls'
  | 'trench-ladder'
  | 'spoil-back'
  | 'cutting-near-trunk'
  | 'arborist-first'
  | 'dig-with-care-near-trees'
  | 'protected-trees'
  | 'saws-in-soil'
  | 'chemicals-in-drains'
  | 'no-entry'
  | 'water-to-others'
  | 'screening-only'
  | 'local-code';

/** Languages that cautions are worded in. */
export type CautionLanguage = 'en' | 'es';

/** One caution, what raises it, and where it is known from. */
export interface CautionRow {
  readonly code: CautionCode;
  /** True where what may be done calls for it. */
  readonly raisedBy: (conditions: CautionConditions) => boolean;
  readonly source: SourceKey;
  readonly known: HowKnown;
  readonly texts: Readonly<Record<CautionLanguage, string>>;
}

/** 29 CFR 1926.652(a)(1)(ii): no protective system only below 5 ft with no sign of a cave-in. */
const PROTECTED_FROM_M = fromFeet(5);
/** 29 CFR 1926.651(c)(2): a way out from 4 ft on. */
const LADDER_FROM_M = fromFeet(4);

/** Unknown counts as deep enough, or near enough. */
const atLeast = (value: number | null | undefined, limit: number): boolean => (value ?? Infinity) >= limit;
const below = (value: number | null | undefined, limit: number): boolean => (value ?? 0) < limit;

/** A tree is in question: roots are cut or the ground is opened at a distance from it that was told or asked. */
const nearTree = (c: CautionConditions, limit: number): boolean =>
  (c.rootCutting === true || (c.digging === true && c.trunkDiametersAway !== undefined)) &&
  below(c.trunkDiametersAway, limit);

const mayCaveIn = ({ unstableGround, trenchDepthM }: CautionConditions): boolean =>
  unstableGround === true || atLeast(trenchDepthM, PROTECTED_FROM_M);

const always = (): boolean => true;

/** All cautions in the order in which they are given: before the dig, in it, by the tree, after it, and always. */
export const cautionTable: readonly CautionRow[] = [
  {
    code: 'locate-utilities',
    raisedBy: ({ digging }) => digging === true,
    source: 'utility-tolerance-zones',
    known: 'quoted',
    texts: {
      en: 'Before any digging have buried utilities located and wait for the marks. Dig by hand within 2 ft (0.6 m) of a mark, or as far as your law says. Private lines are not marked.',
      es: 'Antes de cavar, pida que marquen los servicios enterrados y espere las marcas. Cave a mano a menos de 0.6 m (2 pies) de una marca, o lo que diga su ley. Las líneas privadas no se marcan.',
    },
  },
  {
    code: 'trench-walls',
    raisedBy: (c) => c.digging === true && mayCaveIn(c),
    source: 'osha-1926-p',
    known: 'quoted',
    texts: {
      en: 'A trench 5 ft (1.5 m) or deeper, or in ground that may cave in, needs a protective system and a competent person to check it.',
      es: 'Una zanja de 1.5 m (5 pies) o más, o en suelo que puede derrumbarse, necesita un sistema de protección y una persona competente que la revise.',
    },
  },
  {
    code: 'trench-ladder',
    raisedBy: ({ digging, trenchDepthM }) => digging === true && atLeast(trenchDepthM, LADDER_FROM_M),
    source: 'osha-1926-p',
    known: 'quoted',
    texts: {
      en: 'From 4 ft (1.2 m) deep keep a ladder or ramp within 25 ft (7.6 m) of anybody in the trench.',
      es: 'Desde 1.2 m (4 pies) de hondo, tenga una escalera o rampa a menos de 7.6 m (25 pies) de quien esté en la zanja.',
    },
  },
  {
    code: 'spoil-back',
    raisedBy: ({ digging }) => digging === true,
    source: 'osha-1926-p',
    known: 'quoted',
    texts: {
      en: 'Keep soil, pipe and machines 2 ft (0.6 m) back from the edge of the trench.',
      es: 'Deje la tierra, los tubos y las máquinas a 0.6 m (2 pies) del borde de la zanja.',
    },
  },
  {
    code: 'cutting-near-trunk',
    raisedBy: (c) => nearTree(c, 3),
    source: 'smiley-2008',
    known: 'read',
    texts: {
      en: 'Cutting roots within three trunk widths of a tree can bring the tree down. Do not dig there.',
      es: 'Cortar raíces a menos de tres anchos de tronco puede hacer caer el árbol. No cave ahí.',
    },
  },
  {
    code: 'arborist-first',
    raisedBy: (c) => nearTree(c, 6),
    source: 'ansi-a300-part8',
    known: 'quoted',
    texts: {
      en: 'Within six trunk widths, or before cutting a root of 2 in (5 cm) or more, ask a certified arborist first.',
      es: 'A menos de seis anchos de tronco, o antes de cortar una raíz de 5 cm (2 pulg) o más, pregunte primero a un arborista certificado.',
    },
  },
  {
    code: 'dig-with-care-near-trees',
    raisedBy: (c) => nearTree(c, 12),
    source: 'bs-5837-2012',
    known: 'quoted',
    texts: {
      en: 'Within twelve trunk widths dig by hand or with air, cut roots clean, and keep machines and soil off.',
      es: 'A menos de doce anchos de tronco, cave a mano o con aire, corte las raíces limpio y no ponga máquinas ni tierra.',
    },
  },
  {
    code: 'protected-trees',
    raisedBy: ({ digging, rootCutting }) => digging === true || rootCutting === true,
    source: 'ansi-a300-part5',
    known: 'memory',
    texts: {
      en: 'Trees may be protected by law, and work near them may need a permit.',
      es: 'La ley puede proteger los árboles. El trabajo cerca de ellos puede necesitar permiso.',
    },
  },
  {
    code: 'saws-in-soil',
    raisedBy: ({ sawing }) => sawing === true,
    source: 'common-practice',
    known: 'memory',
    texts: {
      en: 'Saws kick back and throw stones in soil: guards, goggles, chaps, and nobody in the line of the blade.',
      es: 'Las sierras saltan y tiran piedras en la tierra: protecciones, gafas, perneras, y nadie en la línea de la hoja.',
    },
  },
  {
    code: 'chemicals-in-drains',
    raisedBy: ({ chemicals }) => chemicals === true,
    source: 'common-practice',
    known: 'memory',
    texts: {
      en: 'Put no root killer in a drain that runs to open water. It can kill fish, and in many places it is not allowed.',
      es: 'No eche productos contra raíces en un drenaje que va a aguas abiertas. Matan peces, y en muchos lugares está prohibido.',
    },
  },
  {
    code: 'no-entry',
    raisedBy: ({ entry }) => entry === true,
    source: 'osha-1926-aa',
    known: 'memory',
    texts: {
      en: 'Never climb into a pit, basin or pipe. Bad air gives no warning. That is work for trained people with the right gear.',
      es: 'Nunca entre en un pozo, una caja o un tubo. El aire malo no avisa. Es trabajo de gente capacitada con el equipo debido.',
    },
  },
  {
    code: 'water-to-others',
    raisedBy: ({ discharge }) => discharge === true,
    source: 'common-practice',
    known: 'memory',
    texts: {
      en: "Water sent onto a neighbour's land, a public street or into a foul sewer may be against local rules: ask before a line is made bigger or moved.",
      es: 'Mandar agua al terreno del vecino, a la calle o al alcantarillado puede ir contra las reglas locales: pregunte antes de agrandar o mover una línea.',
    },
  },
  {
    code: 'screening-only',
    raisedBy: always,
    source: 'our-judgement',
    known: 'judgement',
    texts: {
      en: 'These are screening estimates for planning an inspection: not a survey and not engineering.',
      es: 'Son estimaciones para planear una inspección: no son un levantamiento ni un estudio de ingeniería.',
    },
  },
  {
    code: 'local-code',
    raisedBy: always,
    source: 'common-practice',
    known: 'memory',
    texts: {
      en: 'Local code and licensed people decide.',
      es: 'Deciden las normas locales y las personas con licencia.',
    },
  },
];
