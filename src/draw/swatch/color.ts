// Shades are made in OKLab, where equal steps look equal. Source: B. Ottosson, "A perceptual color space for image
// processing", 2020 (matrices as published there).

interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** The colour lighter (or, by a negative share, darker) by a share of full lightness, as `#rrggbb`. */
export function shade(color: string, by: number): string {
  const lab = toLab(color);
  const l = Math.min(1, Math.max(0, lab.l + by));
  // Colour fades towards black and white.
  const fade = lab.l > 0 && l < lab.l ? Math.max(0.4, l / lab.l) : 1;
  return toHex({ l, a: lab.a * fade, b: lab.b * fade });
}

/** A mixture; `share` 0 is the first colour, 1 the second. */
export function mix(one: string, other: string, share: number): string {
  const p = toLab(one);
  const q = toLab(other);
  return toHex({ l: p.l + (q.l - p.l) * share, a: p.a + (q.a - p.a) * share, b: p.b + (q.b - p.b) * share });
}

/** What is seen where one colour lies over another, as screens and printers lay it: `opacity` 0 is the colour beneath. */
export function laidOver(over: string, beneath: string, opacity: number): string {
  const channel = (at: number): string => {
    const [one, other] = [over, beneath].map((color) => parseInt(color.slice(at, at + 2), 16)) as [number, number];
    return Math.round(other + (one - other) * opacity)
      .toString(16)
      .padStart(2, '0');
  };
  return `#${channel(1)}${channel(3)}${channel(5)}`;
}

/** 0 black to 1 white, as the eye takes it. */
export function lightness(color: string): number {
  return toLab(color).l;
}

/** True when the colours are two things rather than two tones of one. */
export function isOther(one: string, other: string): boolean {
  const p = toLab(one);
  const q = toLab(other);
  return Math.hypot(p.l - q.l, 2 * (p.a - q.a), 2 * (p.b - q.b)) > 0.16;
}

/** Red over blue by enough to glow. */
export function isWarm(color: string): boolean {
  const { l, a, b } = toLab(color);
  return l > 0.45 && a > 0.02 && b > 0.06;
}

/** Warm and of middling lightness: shown as timber; anything else as paint. */
export function isWood(color: string): boolean {
  const [r, g, b] = [1, 3, 5].map((at) => parseInt(color.slice(at, at + 2), 16)) as [number, number, number];
  return r > g && g > b && r - b > 30;
}

function toLab(color: string): Lab {
  const [r, g, b] = [1, 3, 5].map((at) => linear(parseInt(color.slice(at, at + 2), 16) / 255)) as [
    number,
    number,
    number,
  ];
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return {
    l: 0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    a: 1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    b: 0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  };
}

function toHex({ l, a, b }: Lab): string {
  const p = (l + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const q = (l - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const r = (l - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const channels = [
    4.0767416621 * p - 3.3077115913 * q + 0.2309699292 * r,
    -1.2684380046 * p + 2.6097574011 * q - 0.3413193965 * r,
    -0.0041960863 * p - 0.7034186147 * q + 1.707614701 * r,
  ];
  return `#${channels
    .map((value) =>
      Math.round(encoded(value) * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
}

function linear(value: number): number {
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

function encoded(value: number): number {
  const inside = Math.min(1, Math.max(0, value));
  return inside <= 0.0031308 ? inside * 12.92 : 1.055 * inside ** (1 / 2.4) - 0.055;
}
