/** Bake times as a baker is told them and works by: on the five, so that every paper and the timetable say the same. */
const STEP_MIN = 5;

/** Minutes on the five, never less than five. */
export const nearestFive = (minutes: number): number =>
  Math.max(STEP_MIN, Math.round(minutes / STEP_MIN) * STEP_MIN);
