// Makes the demo that the app carries, shared/demo-log.json, from shared/demo-scenario.json: node tests/tools/make-demo.mjs
import { writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { bundled } from '../bench/bundled.mjs';

const { makeDemo, textOf } = new Function(`${await bundled('../demo/demo-file.ts', 'demo')}; return demo;`)();
const text = textOf(await makeDemo());
writeFileSync(new URL('../../shared/demo-log.json', import.meta.url), text);
console.log(`shared/demo-log.json: ${text.length} bytes, ${gzipSync(text, { level: 9 }).length} after gzip`);
