import decodeQR from 'qr/decode.js';
import type { Locator, Page } from 'playwright-core';

/** How a code lies before a camera: turned by degrees, blurred by pixels. */
interface Camera {
  readonly turned: number;
  readonly blurred: number;
}

/** Reads codes off a page as it is drawn, with a reader that has nothing in common with what makes them. Throws where one cannot be read. */
export async function readCodes(page: Page, codes: Locator, camera: Camera): Promise<readonly string[]> {
  const lines: string[] = [];
  for (const code of await codes.all()) {
    const png = await code.screenshot({ type: 'png' });
    const { width, height, rgba } = await page.evaluate(pixels, [png.toString('base64'), camera] as const);
    const data = Uint8Array.from(Buffer.from(rgba, 'base64'));
    // A time limit would make a busy machine's answer another.
    lines.push(decodeQR({ width, height, data }, { timeLimit: 60_000 }));
  }
  return lines;
}

/** Runs in the page: the picture as a camera sees it, pixel by pixel, red, green, blue and alpha. */
async function pixels([png, { turned, blurred }]: readonly [string, Camera]): Promise<{
  width: number;
  height: number;
  rgba: string;
}> {
  const image = new Image();
  image.src = `data:image/png;base64,${png}`;
  await image.decode();
  const around = Math.ceil(image.width * 1.15);
  const context = new OffscreenCanvas(around, around).getContext('2d');
  if (!context) throw new Error('this browser draws nothing');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, around, around);
  context.translate(around / 2, around / 2);
  context.rotate((turned * Math.PI) / 180);
  context.filter = `blur(${blurred}px)`;
  context.drawImage(image, -image.width / 2, -image.height / 2);
  const { data } = context.getImageData(0, 0, around, around);
  let text = '';
  for (const byte of data) text += String.fromCharCode(byte);
  return { width: around, height: around, rgba: btoa(text) };
}
