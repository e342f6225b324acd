import type { MaterialKey } from '../tables/pipe-row.js';

/** A way of writing a material: the pattern, what it means, and how surely. The first that fits is taken. */
type MaterialName = readonly [
  pattern: RegExp,
  key: MaterialKey,
  certainty: 'exact' | 'likely' | 'guess' | 'none',
];

/**
 * Names as they stand on plans, in logs and in talk (common practice), for text in lower case with single
 * spaces between words.
 */
export const materialNames: readonly MaterialName[] = [
  [
    /\b(?:bituminous|bitumen|bitumenous|pitch|tar ?paper|tar) ?(?:fib(?:re|er))?\b(?! ?coated)/,
    'bituminous-fibre',
    'exact',
  ],
  [/\b(?:fib(?:re|er)) (?:conduit|pipe)\b/, 'bituminous-fibre', 'likely'],
  [/\basbestos\b/, 'asbestos-cement', 'exact'],
  [/\b(?:acp|ac)\b/, 'asbestos-cement', 'likely'],
  [/\babs\b/, 'abs', 'exact'],
  [/\b(?:sch(?:edule|ed)?\.? ?\d*|s) ?40\b/, 'pvc-sch40', 'exact'],
  [/\bsch(?:edule|ed)?\.? ?80\b/, 'pvc-sch40', 'guess'],
  [
    /\b(?:thin ?walls?|thin walled|s ?(?:&|and|n) ?d|sewer (?:&|and) drain|(?:astm )?d? ?2729)\b/,
    'pvc-thin-wall',
    'exact',
  ],
  [/\b(?:sdr ?35|(?:astm )?d ?3034|3034)\b/, 'pvc-sdr35', 'exact'],
  [/\bsdr ?(?:2[36]|41)\b/, 'pvc-sdr35', 'likely'],
  [
    /\b(?:fused?|welded|fusion|butt ?fus\w*|heat ?fus\w*)\b(?=.*\b(?:hdpe|pe|poly\w*|plastic|pipe)\b)/,
    'hdpe-welded',
    'exact',
  ],
  [/\b(?:hdpe|pe|poly\w*|plastic)\b.*\b(?:fused?|welded|fusion|butt ?fus\w*)/, 'hdpe-welded', 'exact'],
  [
    /\b(?:dual|double|twin) ?wall(?:ed)?\b|\bsmooth (?:interior|inner|bore|lined)\b|\bm ?294\b/,
    'hdpe-dual-wall',
    'exact',
  ],
  [
    /\bheavy ?(?:duty|wall)\b.*\b(?:corr\w*|flex\w*|hdpe|drain ?tile)\b|\b(?:corr\w*|flex\w*|hdpe)\b.*\bheavy ?(?:duty|wall)?\b/,
    'hdpe-corrugated-heavy',
    'exact',
  ],
  [/\bsingle ?wall(?:ed)?\b/, 'hdpe-corrugated', 'exact'],
  [/\bcorrugated (?:steel|metal|iron|aluminum|aluminium)\b|\b(?:cmp|csp)\b/, 'unknown', 'none'],
  [
    /\bcorr(?:ugated|\.|ug|gated)?\b|\bflex(?:ible|i)?\b|\bblack (?:coil|flex|corr\w*|plastic|pipe|poly\w*|drain ?pipe)\b|\bcoils?\b/,
    'hdpe-corrugated',
    'exact',
  ],
  [/\b(?:cpvc|u?pvc|pvcu|pvc ?u|vinyl)\b/, 'pvc-sdr35', 'guess'],
  [/\b(?:vcp|vc|vitrified|terra ?cotta|earthenware|stoneware|clayware|clay|tcp)\b/, 'clay', 'exact'],
  [/\b(?:cip|ci|cast ?iron|cast)\b/, 'cast-iron', 'exact'],
  [/\b(?:dip|di|ductile(?: iron)?)\b/, 'cast-iron', 'likely'],
  [/\b(?:steel|iron)\b/, 'cast-iron', 'guess'],
  [/\b(?:rcp|concrete|conc|cement|precast)\b/, 'concrete', 'exact'],
  [/\bbrick(?:work|s)?\b/, 'brick', 'exact'],
  [/\bdrain ?tiles?\b/, 'clay', 'guess'],
  [/\btiles?\b/, 'clay', 'likely'],
  [/\b(?:hdpe|pehd|polyethylene|polythene|pe|poly)\b/, 'hdpe-corrugated', 'guess'],
  [/\bplastic\b/, 'pvc-sdr35', 'guess'],
];

/** Whole words that may be mended when one letter slipped. */
export const materialWords: readonly string[] = [
  ...['asbestos', 'bituminous', 'brick', 'concrete', 'corrugated', 'ductile', 'earthenware', 'flexible'],
  ...['perforated', 'polyethylene', 'schedule', 'slotted', 'terracotta', 'vitrified', 'welded'],
];
