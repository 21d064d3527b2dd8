// First load: the shell, Bench and the set-up. What this file reaches without import() is on the path to the first tap.
import './ui/shell/base.css';
import './ui/shell/shell.css';
import { effect } from '@preact/signals';
import { render } from 'preact';
import { settings } from './app/session.ts';
import { start } from './app/start.ts';
import { applyDistance, applyLook } from './platform/look.ts';
import { App } from './ui/shell/app.tsx';

const main = async (): Promise<void> => {
  await start();
  effect(() => {
    applyLook(settings.value.look);
    applyDistance(settings.value.distanceCm, settings.value.pxPerMm);
  });
  const root = document.getElementById('app');
  if (!root) return;
  render(<App />, root);
  document.documentElement.dataset.started = '';
  const { afterStart } = await import('./app/after-start.ts');
  await afterStart();
};

main();
