/** Who lifts a cake? Above this weight two people do where a kitchen says nothing else, g. Common practice, no source. */
export const LIFT_TWO_ABOVE_G = 8000;
