/** A number keeps its unit on the line: '18 to 20 °C' may break after 'to', never before '°C'. */
const UNIT = /(\d|[¼-¾⅐-⅞]) (?=(?:°[CF]|%|×|mm|cm|in|ml|mL|kg|g|oz|lb)(?![a-z]))/g;

/**
 * The text with no-break spaces between figures and units.
 * @example keptUnits('bake at 180 °C') // 'bake at 180\u00a0°C'
 */
export const keptUnits = (text: string): string => text.replace(UNIT, '$1\u00a0');
