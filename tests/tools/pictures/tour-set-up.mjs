import { isReady, measureBore, passTheRest, planBox, tapToNextStep } from './at-the-lathe.mjs';

const TWO = (at) => String(at).padStart(2, '0');

/** Every step of the set-up that has just begun, why it is asked, and the form of its reading; all are passed. */
const pictureSteps = async (phone, name, besides = async () => {}) => {
  const { tap, shows, picture } = phone;
  for (let at = 1; !(await isReady(phone)); at += 1) {
    const step = `${name}-${TWO(at)}`;
    await picture(step, { inAllShapes: at === 1 });
    if (await shows(/^Why\?/)) {
      await tap(/^Why\?/);
      await picture(`${step}-why`);
      await tap(/Back$/);
    }
    for (const form of ['Reading', 'Other'])
      if (await shows(form)) {
        await tap(form);
        await picture(`${step}-reading`, { inAllShapes: true });
        await tap('Keep it');
        await picture(`${step}-reading-refused`);
        await tap('Without');
      }
    await besides(at);
    await tapToNextStep(phone, 'Pass');
  }
};

/** Every step of a set-up with what lies beside and over it, and every way in which one ends. */
export const setUp = async (phone) => {
  const { tap, sees, shows, picture, fill, go, rest } = phone;
  await planBox(phone);
  await measureBore(phone, '2.003');

  await go('bench', 'set-up-recess');
  await tap('Start the set-up');
  await sees('Pass', 'button');
  await pictureSteps(phone, 'set-up-step', async (at) => {
    if (at === 1) {
      await tap('Something moved');
      await picture('set-up-what-moved', { inAllShapes: true });
      await tap('Nothing did. Back');
      await tap(/^All steps\./);
      await picture('set-up-all-steps', { inAllShapes: true });
      await tap('Pause');
      await sees('Paused');
      await picture('set-up-paused', { inAllShapes: true });
      await tap('Go on');
      await sees('Pass', 'button');
    }
    if (at === 2) {
      await tap('Fail');
      await sees('Leave it', 'button');
      await picture('set-up-step-failed', { inAllShapes: true });
    }
  });
  await picture('set-up-ready', { inAllShapes: true });
  await tap('Photo');
  await picture('set-up-ready-photo');
  await tap('Back');

  // A reading, and what it means for the joint: inside its limits, and outside.
  await tap('Something moved');
  await tap('Post');
  await sees('Pass', 'button');
  await picture('set-up-step-reopened', { inAllShapes: true });
  while (!(await shows('Reading'))) await tapToNextStep(phone, 'Pass');
  for (const [name, gap] of [
    ['inside', '0.001'],
    ['outside', '0.5'],
  ]) {
    await tap('Reading');
    await fill('Over a length of', '8');
    await fill('Or type it', gap);
    await tap('Keep it');
    await rest();
    await sees('What the reading means', 'region');
    await picture(`set-up-verdict-${name}`, { inAllShapes: true });
    await tap('Back');
    await picture(`set-up-step-read-${name}`);
  }
  await tapToNextStep(phone, 'Skip');
  await tapToNextStep(phone, 'Skip');
  await tap(/^All steps\./);
  await picture('set-up-all-steps-of-every-kind');
  await tap('Back');
  while (await shows('Skip')) await tapToNextStep(phone, 'Skip');
  await picture('set-up-withheld', { inAllShapes: true });
  await go('bench', 'cut-recess');
  await picture('cut-withheld');
  await go('bench', 'set-up-recess');
  await picture('set-up-under-way');
  await tap('Go on with it', 'link');
  await sees('Don’t switch on.');
  while (!(await isReady(phone))) {
    if (await shows('Don’t switch on.', 'heading'))
      await phone.page.getByRole('listitem').getByRole('button').first().tap();
    await tapToNextStep(phone, 'Pass');
  }

  await tap(/^Pause/);
  await tap('Give up this set-up');
  await sees('Set up for the recess');
  await picture('set-up-given-up');
  await go('boxes');
  await tap(/Boxwood/, 'link');
  await phone.openAllFolds();
  await picture('box-page-set-up-story');

  // The next one takes over what still holds.
  await go('bench', 'set-up-recess');
  await tap(/^Start/);
  await sees('Pass', 'button');
  await picture('set-up-carried-first-step', { inAllShapes: true });
  await tap(/^All steps\./);
  await picture('set-up-carried-all-steps');
  const closed = phone.page.url().split('#/')[1].split('/');
  await tap('Back');
  await passTheRest(phone);
  await tap('To the cut', 'link');
  await tap('Cutter stopped: pass 1 cut');
  await tap('Something moved');
  await tap('Chuck, work');
  await sees('Pass', 'button');
  while (!(await shows(/^Tip in the old groove/))) await tapToNextStep(phone, 'Pass');
  await picture('set-up-pick-up-the-thread');
  await tap(/^Why\?/);
  await picture('set-up-pick-up-the-thread-why', { inAllShapes: true });
  await tap(/Back$/);
  await passTheRest(phone);
  await tap('To the cut', 'link');
  await picture('cut-recess-after-moved');
  await rest();
  await tap(/^Cutter stopped/);
  await rest();
  await go(...closed);
  await picture('set-up-closed');
  await go('set-up', 'nowhere');
  await picture('set-up-no-such');

  // The other procedure.
  await planBox(phone);
  await measureBore(phone, '2.003');
  await go('shop', 'procedures');
  await tap(/^True bar/, 'link');
  await tap('Use it for the box on the lathe');
  await picture('procedure-in-use');
  await go('bench', 'set-up-recess');
  await tap('Start the set-up');
  await sees('Pass', 'button');
  await pictureSteps(phone, 'set-up-bar-step');
};
