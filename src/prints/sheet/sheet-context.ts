/** What every drawing on a sheet needs to know: the house style's inks and the measures of its fonts. */
import type { HouseStyle, Palette } from '../../domain/house-style.ts';
import type { LogoDrawing } from '../../domain/logo.ts';
import type { Metrics } from './surface.ts';

export interface SheetContext {
  inks: Palette;
  metrics: Metrics;
  marginMm: HouseStyle['marginMm'];
  /** Null where the style has none, or none that can be drawn. */
  logo: LogoDrawing | null;
}

/** Prints are on paper: the light palette. */
export const sheetContext = (style: HouseStyle, metrics: Metrics): SheetContext => ({
  inks: style.colours.light,
  metrics,
  marginMm: style.marginMm,
  logo: style.logoDrawing ?? null,
});
