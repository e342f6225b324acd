import cornerLot from '../../../data/sites/corner-lot.geojson?url';
import frenchDrainPlan from '../../../data/sites/french-drain-plan.geojson?url';
import smallCampus from '../../../data/sites/small-campus.geojson?url';

/** The invented sites that come with the page; the first opens at start. */
export const demos = {
  'corner-lot': cornerLot,
  'french-drain-plan': frenchDrainPlan,
  'small-campus': smallCampus,
} as const;

export type DemoKey = keyof typeof demos;

export const isDemo = (key: string | null): key is DemoKey => key !== null && Object.hasOwn(demos, key);
