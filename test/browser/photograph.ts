import type { Browser, Page } from 'playwright-core';

/** How somebody held a telephone over papers. */
export interface Held {
  /** Degrees, on the table. */
  readonly turned?: number;
  /** Degrees, out of the table's plane: the far edge is smaller. */
  readonly tilted?: number;
  /** Points of the paper: hundredths of an inch. */
  readonly blurred?: number;
  /** How dark the darkest corner is: 0 is as light as the lightest. */
  readonly shaded?: number;
  /** The most that a pixel is off, of 255. */
  readonly grain?: number;
  readonly as?: 'image/jpeg' | 'image/png' | 'image/webp';
}

/** A paper on a table as a camera sees it, as the bytes of a picture. `paper` is a PNG of some four inches by four. */
export async function photograph(browser: Browser, paper: Uint8Array, held: Held = {}): Promise<Uint8Array> {
  const page = await browser.newPage({
    viewport: { width: 720, height: 640 },
    // Some 230 dots to the inch of paper, as a telephone of twelve million pixels has them.
    deviceScaleFactor: 2.5,
  });
  try {
    const { turned = 0, tilted = 0, blurred = 0 } = held;
    const shape = `rotateX(${tilted}deg) rotateY(${tilted / 2}deg) rotate(${turned}deg)`;
    await page.setContent(
      `<body style="margin:0;height:100vh;background:#7a6a58;perspective:1800px;display:grid;place-content:center">
       <img width="410" style="transform:${shape};filter:blur(${blurred}px)"
         src="data:image/png;base64,${Buffer.from(paper).toString('base64')}">`,
    );
    await page.waitForFunction(() => Array.from(document.images).every(({ complete }) => complete));
    return await developed(page, held);
  } finally {
    await page.close();
  }
}

async function developed(page: Page, { shaded = 0, grain = 0, as = 'image/jpeg' }: Held): Promise<Uint8Array> {
  const seen = (await page.screenshot({ type: 'png' })).toString('base64');
  return Buffer.from(await page.evaluate(develop, { seen, shaded, grain, as }), 'base64');
}

/** Runs in the page: the light falls off to the right, and each pixel is off by a little that is the same at every run. */
async function develop(of: { seen: string; shaded: number; grain: number; as: string }): Promise<string> {
  const image = new Image();
  image.src = `data:image/png;base64,${of.seen}`;
  await image.decode();
  const canvas = new OffscreenCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('this browser draws nothing');
  context.drawImage(image, 0, 0);
  const pixels = context.getImageData(0, 0, image.width, image.height);
  let seed = 1;
  for (let at = 0; at < pixels.data.length; at += 4) {
    const light = 1 - (of.shaded * ((at / 4) % image.width)) / image.width;
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    const off = (seed / 2 ** 31 - 1) * of.grain;
    for (let color = at; color < at + 3; color += 1) pixels.data[color] = (pixels.data[color] ?? 0) * light + off;
  }
  context.putImageData(pixels, 0, 0);
  const blob = await canvas.convertToBlob({ type: of.as, quality: 0.8 });
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const texts: string[] = [];
  for (let at = 0; at < bytes.length; at += 0x8000) texts.push(String.fromCharCode(...bytes.subarray(at, at + 0x8000)));
  return btoa(texts.join(''));
}
