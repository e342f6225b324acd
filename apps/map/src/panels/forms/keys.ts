import type { Drain } from '@rootreach/core';

export type MaterialKey = Drain['material'];
export type JointKey = NonNullable<Drain['joint']>;
