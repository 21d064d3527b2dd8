// Compares two folders of pictures pixel by pixel: node tests/tools/compare-pictures.mjs A B [DIFFERENCES]
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { chromiumOptions } from './browser.mjs';

const [a, b, differences = 'reports/differences'] = process.argv.slice(2);
if (!a || !b) {
  console.error('node tests/tools/compare-pictures.mjs A B [DIFFERENCES]');
  process.exit(2);
}

/**
 * Runs in a page: counts the pixels in which two PNG differ, those that only one of them has included, and draws both
 * side by side with what differs marked between them.
 */
const compareInPage = async (first, second) => {
  const decode = async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const exact = { colorSpaceConversion: 'none', premultiplyAlpha: 'none' };
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }), exact);
    const brush = new OffscreenCanvas(image.width, image.height).getContext('2d', {
      willReadFrequently: true,
    });
    brush.drawImage(image, 0, 0);
    return { image, data: brush.getImageData(0, 0, image.width, image.height).data };
  };
  const [left, right] = [await decode(first), await decode(second)];
  const width = Math.max(left.image.width, right.image.width);
  const height = Math.max(left.image.height, right.image.height);
  const at = ({ image, data }, x, y) => {
    if (x >= image.width || y >= image.height) return null;
    const i = 4 * (y * image.width + x);
    return (data[i] << 24) | (data[i + 1] << 16) | (data[i + 2] << 8) | data[i + 3];
  };

  const marks = new ImageData(width, height);
  let count = 0;
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      if (at(left, x, y) === at(right, x, y)) continue;
      count += 1;
      marks.data.set([255, 0, 0, 255], 4 * (y * width + x));
    }
  if (count === 0) return { count, picture: null };

  const GAP = 20;
  const sheet = new OffscreenCanvas(3 * width + 2 * GAP, height);
  const brush = sheet.getContext('2d');
  brush.fillStyle = '#888';
  brush.fillRect(0, 0, sheet.width, height);
  brush.drawImage(left.image, 0, 0);
  brush.drawImage(right.image, 2 * (width + GAP), 0);
  brush.putImageData(marks, width + GAP, 0);
  const buffer = await (await sheet.convertToBlob({ type: 'image/png' })).arrayBuffer();
  const letters = Array.from(new Uint8Array(buffer), (byte) => String.fromCharCode(byte));
  return { count, picture: btoa(letters.join('')) };
};

const picturesIn = (dir) => readdirSync(dir).filter((name) => name.endsWith('.png'));
const names = [...new Set([...picturesIn(a), ...picturesIn(b)])].sort();
if (names.length === 0) throw new Error(`there is no picture in ${a} or ${b}`);
rmSync(differences, { recursive: true, force: true });

const browser = await chromium.launch(await chromiumOptions());
const page = await browser.newPage();
const found = [];
for (const name of names) {
  const missing = [a, b].find((dir) => !existsSync(join(dir, name)));
  if (missing) {
    found.push(`${name}: missing in ${missing}`);
    continue;
  }
  const [first, second] = [a, b].map((dir) => readFileSync(join(dir, name)));
  // The same bytes are the same pixels.
  if (first.equals(second)) continue;
  const [left, right] = [first, second].map((bytes) => JSON.stringify(bytes.toString('base64')));
  const { count, picture } = await page.evaluate(`(${compareInPage})(${left}, ${right})`);
  if (count === 0) continue;
  mkdirSync(differences, { recursive: true });
  writeFileSync(join(differences, name), Buffer.from(picture, 'base64'));
  found.push(`${name}: ${count} pixels differ`);
}
await browser.close();

for (const line of found) console.log(line);
if (existsSync(differences)) console.log(`Side by side, what differs in red between them: ${differences}`);
console.log(`${names.length} pictures compared, ${found.length} not the same`);
process.exitCode = found.length > 0 ? 1 : 0;
