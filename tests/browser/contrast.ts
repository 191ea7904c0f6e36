export type Rgb = readonly [red: number, green: number, blue: number];

/** Relative luminance of a colour in sRGB (W3C, WCAG 2.2, 2023, definition "relative luminance"). */
function luminance(colour: Rgb): number {
  const [red, green, blue] = colour.map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast of two colours, 1 to 21 (WCAG 2.2, definition "contrast ratio"). */
export function contrastRatio(one: Rgb, other: Rgb): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}
