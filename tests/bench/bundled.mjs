import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { tempFolder } from '../tools/opened.mjs';

/** A file of this folder with all it needs as one classic script, for a page or a worker without the app; what it exports is `name`. */
export const bundled = async (file, name) => {
  const outDir = tempFolder('bench');
  await build({
    configFile: false,
    root: fileURLToPath(new URL('../../', import.meta.url)),
    logLevel: 'error',
    publicDir: false,
    build: {
      outDir,
      lib: {
        entry: fileURLToPath(new URL(file, import.meta.url)),
        formats: ['iife'],
        name,
        fileName: () => 'bench.js',
      },
    },
  });
  return readFileSync(join(outDir, 'bench.js'), 'utf8');
};
