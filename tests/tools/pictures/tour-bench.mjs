import { passTheRest } from './at-the-lathe.mjs';

/** A photo half red, half blue. */
const PHOTO = {
  name: 'photo.png',
  mimeType: 'image/png',
  buffer: Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAADAAAAAkCAIAAABAJy5dAAAANklEQVR42u3OQQkAAAgEMONcEhMb0BJ+' +
      'hMECrCY5kZ4TJSQkJCQkJCQkJCQkJCQkJCQkJPQptDgxQKq+Zoz8AAAAAElFTkSuQmCC',
    'base64',
  ),
};

/** A box from the empty Bench to the shelf, with every screen of its stages. */
export const bench = async (phone) => {
  const { tap, sees, picture, fill, choose, openAllFolds, go, rest } = phone;

  await sees('Nothing on the lathe.');
  await picture('bench-empty', { inAllShapes: true });

  await tap('New box');
  await sees('New box');
  await picture('new-box-empty', { inAllShapes: true });
  await tap('Plan it');
  await picture('new-box-refused');
  await fill('Opening', '2');
  await fill('Outside', '2 3/4');
  await fill('Wood', 'Box');
  await picture('new-box-woods-offered');
  await fill('Wood', 'Riverwood');
  await picture('new-box-unknown-wood');
  await fill('Wood', 'Boxwood');
  await choose('Other');
  await picture('new-box-other-pitch');
  await fill('Which pitch', '10');
  await openAllFolds();
  await picture('new-box-filled-folds-open', { inAllShapes: true });
  await choose('My own depth');
  await choose('In the lid');
  await choose('Both turned first');
  await fill('Name', 'Pounce pot');
  await picture('new-box-other-answers');
  await choose('A fit');
  await choose('None');
  await choose('Recess first');
  await tap('Plan it');

  await sees('Bored? Measure it', 'link');
  await picture('plan', { inAllShapes: true });
  await openAllFolds();
  await picture('plan-folds-open');
  await tap('Change the plan');
  await sees('Keep the plan', 'button');
  await picture('plan-change');
  await openAllFolds();
  await picture('plan-change-folds-open');
  await fill('Opening', 'wide');
  await tap('Keep the plan');
  await picture('plan-change-refused');
  await fill('Opening', '2');
  await tap('Keep the plan');

  await tap('Bored? Measure it', 'link');
  await sees('Save', 'button');
  await picture('bore-empty');
  await fill('Along the rings', 'two');
  await tap('Save');
  await picture('bore-refused');
  await fill('Along the rings', '2.003');
  await tap('Save');
  await sees('To the set-up', 'link');
  await picture('bore-one-reading', { inAllShapes: true });
  await choose('By the relief');
  await fill('Along the rings', '2.001');
  await fill('Across them', '1.997');
  await tap('Save');
  await sees(/^Remove: By the relief/, 'button');
  await picture('bore-two-readings');
  await openAllFolds();
  await picture('bore-folds-open');
  await fill('Inside jaws read', '0.874');
  await fill('Its true bore', '0.875');
  await tap('Keep the difference');
  await rest();
  await openAllFolds();
  await sees('Forget it', 'button');
  await picture('bore-caliper-known');
  await fill('Along the rings', '2.2');
  await fill('Across them', '');
  await choose('Over finished crests', 'checkbox');
  await tap('Save');
  await sees(/^Remove: .*2\.2/, 'button');
  await picture('bore-over-crests-off-plan');
  await tap(/^Remove: .*2\.2/);
  await sees('Undo', 'button');
  await picture('bore-reading-removed');

  await go('bench', 'cut-recess');
  await picture('cut-not-set-up');
  await go('bench', 'tenon');
  await picture('tenon-empty');
  await go('bench', 'set-up-recess');
  await sees('Start the set-up', 'button');
  await picture('set-up-to-start', { inAllShapes: true });
  await tap('Start the set-up');
  await sees('Pass', 'button');
  await passTheRest(phone);
  await go('bench', 'cut-tenon');
  await picture('cut-tenon-not-set-up');
  await go('bench', 'cut-recess');

  await sees('Cutter stopped: pass 1 cut', 'button');
  await picture('cut-recess-first-pass-uncounted', { inAllShapes: true });
  await tap('Note the turns');
  await picture('cut-recess-turns-form', { inAllShapes: true });
  await fill('Turns to the stop', '4 1/4');
  await tap('Keep it');
  await picture('cut-recess-first-pass', { inAllShapes: true });
  await tap('Something moved');
  await picture('cut-recess-moved');
  await tap('Nothing did. Back');
  await tap('Cutter stopped: pass 1 cut');
  await sees('Cutter stopped: pass 2 cut', 'button');
  await picture('cut-recess-last-pass');
  await tap('List');
  await picture('cut-recess-list');
  await tap(/^Cut deeper or less\?/);
  await picture('cut-recess-pass-corrected');
  await tap('Leave it');
  await tap('To the cut');
  await tap('Cutter stopped: pass 2 cut');

  await sees('Measure the tenon');
  await picture('tenon-to-measure');
  await fill('Diameter of the tenon', 'big');
  await tap('Save');
  await picture('tenon-refused');
  for (const [name, diameter] of [
    ['tenon-on-size', '2.096'],
    ['tenon-over', '2.115'],
    ['tenon-under', '2.080'],
    ['tenon-far-under', '1.95'],
  ]) {
    await fill('Diameter of the tenon', diameter);
    await tap('Save');
    await sees(new RegExp(`^Remove: .*${diameter.replace('.', '\\.')}`), 'button');
    await picture(name, { inAllShapes: name === 'tenon-over' });
    await tap(new RegExp(`^Remove: .*${diameter.replace('.', '\\.')}`));
    await rest();
  }
  await fill('Diameter of the tenon', '2.115');
  await tap('Save');

  await go('bench', 'set-up-tenon');
  await tap('Start the set-up');
  await sees('Pass', 'button');
  await picture('set-up-tenon-first-step');
  await passTheRest(phone);
  await tap('To the cut', 'link');
  await sees('Cutter stopped: pass 1 cut', 'button');
  await picture('cut-tenon-first-pass');
  await tap('Cutter stopped: pass 1 cut');
  await sees('Cutter stopped: pass 2 cut', 'button');
  await picture('cut-tenon-last-pass');
  await tap('Cutter stopped: pass 2 cut');

  await sees('Trial fit');
  await picture('trial-empty', { inAllShapes: true });
  await choose('Drags more each turn', 'checkbox');
  await choose('Flanks', 'checkbox');
  await choose('All along', 'checkbox');
  await picture('trial-filled');
  await tap('Get advice (3)');
  await sees('Causes', 'button');
  await picture('advice', { inAllShapes: true });
  await tap('Causes');
  await picture('advice-causes');
  await tap('Back');
  await tap(/^Check: /);
  await picture('advice-check');
  await tap('Back');

  await go('bench', 'cut-tenon');
  await picture('cut-tenon-done');
  await tap('Once more with the cutter', 'link');
  await picture('cut-tenon-again');
  await tap('More');
  await tap('More');
  await picture('cut-tenon-again-deeper', { inAllShapes: true });
  await tap('Cutter stopped: cut');
  await rest();
  await go('bench', 'trial');
  await sees(/^Good: /, 'button');
  await picture('trial-after-extra-pass');
  await choose('Stops dead', 'checkbox');
  await choose('Gap all round', 'checkbox');
  await choose('Chipped', 'checkbox');
  await tap('Get advice (3)');
  await sees('Causes', 'button');
  await picture('advice-stops-dead');
  await tap('Tried again');
  await choose('Rattles sideways', 'checkbox');
  await choose('Rocks', 'checkbox');
  await tap('Get advice (2)');
  await sees('Causes', 'button');
  await picture('advice-slack');
  await tap('Tried again');
  await tap(/^Good: /);

  await sees('Seat and grain');
  await picture('seat-empty', { inAllShapes: true });
  await choose('1 o’clock', 'checkbox');
  await choose('2 o’clock', 'checkbox');
  await fill('How many papers go in', '2');
  await fill('Degrees', '25');
  await picture('seat-filled');
  await tap('What comes off?');
  await sees('Tried it again', 'button');
  await picture('seat-advice');
  await openAllFolds();
  await picture('seat-advice-folds-open');
  await tap('Tried it again');
  await sees('In line and flush: close the box', 'button');
  await picture('seat-second');
  await tap('In line and flush: close the box');

  await sees('Close the box');
  await picture('close-empty', { inAllShapes: true });
  await choose('Scrapped');
  await choose('Thin CA');
  await choose('After, lid on');
  await picture('close-scrapped');
  await choose('Keep it');
  await fill('Before pass', '2');
  await fill('Note', 'Chatter on the second pass; sharpened the cutter.');
  await phone.page.locator('input[type=file]:not([capture])').setInputFiles(PHOTO);
  await sees(/^Look at it/, 'button');
  await picture('close-filled-with-photo');
  await tap(/^Look at it/);
  await picture('photo-open');
  await tap('Close');
  await tap('Keep it: close');

  await sees('Nothing on the lathe.');
  await picture('bench-after-a-box');
  await go('boxes');
  await picture('boxes-one');
  await tap(/Pounce pot/, 'link');
  await sees('Box 1: Pounce pot');
  await picture('box-page-own');
  await openAllFolds();
  await picture('box-page-own-folds-open');
};
