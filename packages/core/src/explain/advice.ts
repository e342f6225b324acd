import type { SegmentResult } from '../model/result.js';

/** What to do about a segment, in a few words, from what is known and what the model found strongest. */
export function adviceFor(segment: SegmentResult): string {
  const { band, known, nextLook } = segment;
  if (known?.seen === 'full' || known?.seen === 'crushed')
    return 'replace or move this stretch: it cannot be cleared';
  if (known?.seen === 'mass') return 'clear it now, then plan what to do about the way in';
  if (known) return `roots or a fault were seen: look again by ${nextLook}`;
  switch (band) {
    case 'act':
      return 'camera now, and plan the work';
    case 'inspect':
      return 'camera this season';
    case 'watch':
      return `look by ${nextLook}`;
    case 'cannot-say':
      return 'find out material, age and trees, or push the camera';
    case 'leave':
      return `nothing now; look by ${nextLook}`;
  }
}

/** Why a segment stands where it does, in a few words: the strongest way in and what it passes. */
export function reasonFor(segment: SegmentResult): string {
  const { joints, slots, crush } = segment.expectedEntries;
  const all = joints + slots + crush;
  if (all <= 0) return 'no tree reaches it';
  const fitting = segment.fittings.find((f) => f.type !== 'outlet');
  const ways: string[] = [];
  if (joints >= 0.25 * all) {
    const count = `${segment.joints.count} joint${segment.joints.count === 1 ? '' : 's'}`;
    ways.push(fitting ? `${count} at ${fitting.type} ${fitting.id}` : count);
  }
  if (slots >= 0.25 * all) ways.push('open slots');
  if (crush >= 0.25 * all) ways.push('thin wall by the trunk');
  return ways.join(', ');
}
