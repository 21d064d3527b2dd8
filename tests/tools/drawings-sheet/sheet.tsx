import '@fontsource/atkinson-hyperlegible-next/400.css';
import '@fontsource/atkinson-hyperlegible-next/700.css';
import '../../../src/ui/shell/tokens.css';
import { render } from 'preact';
import { DRAWING_KEYS } from '../../../src/ui/drawings/drawing-key.ts';
import { loadStepDrawing } from '../../../src/ui/drawings/step-drawing.tsx';
import { figures } from './figures.tsx';

// ?look=day|night & labels=yes|no & scale=1 & only=key,key & what=figures for everything but the steps
const query = new URLSearchParams(location.search);
const only = query.get('only')?.split(',');
const labelled = query.get('labels') !== 'no';
const width = 362 * Number(query.get('scale') ?? 1);
document.documentElement.dataset.look = query.get('look') ?? 'day';

const keys = DRAWING_KEYS.filter((key) => !only || only.includes(key));
const drawings = await Promise.all(keys.map(async (key) => ({ key, Drawing: await loadStepDrawing(key) })));

const sheets =
  query.get('what') === 'figures'
    ? figures
    : drawings.map(({ key, Drawing }) => <Drawing key={key} labelled={labelled} />);

render(
  sheets.map((sheet, i) => (
    <figure key={i} class="paper" style={{ width: `${width}px` }}>
      {sheet}
    </figure>
  )),
  document.getElementById('sheet') as HTMLElement,
);
await document.fonts.ready;
document.body.dataset.ready = 'yes';
