/** A house style for tests, with the bundled fonts. */
import type { HouseStyle } from '../../src/domain/house-style.ts';

const palette = {
  paper: '#fffcf7',
  ink: '#2a2226',
  quietInk: '#685b60',
  rule: '#cabfb6',
  accent: '#74304d',
  accentInk: '#fffcf7',
  tint: '#f5eee4',
  caution: '#8a4300',
};

export const sampleStyle: HouseStyle = {
  name: 'Test style',
  colours: { light: palette, dark: palette },
  fonts: {
    text: 'bundled:Source Sans 3/400Regular',
    textBold: 'bundled:Source Sans 3/600SemiBold',
    textItalic: 'bundled:Source Sans 3/400Regular_Italic',
    heading: 'bundled:Source Serif 4/600SemiBold',
  },
  headingCase: 'as written',
  marginMm: { top: 14, right: 14, bottom: 16, left: 14 },
};
