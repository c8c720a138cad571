/** What the rest of the house may use of tin shapes. */

export { perimeterMm, planAreaMm2, tinBaseOutline, tinBoundsMm, tinOutline } from './plan.ts';
export { heightForVolumeMm, volumeMl, volumeToHeightMl } from './volume.ts';
