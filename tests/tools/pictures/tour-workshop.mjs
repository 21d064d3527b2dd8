import { fileURLToPath } from 'node:url';

/** The log of an invented workshop, 126 boxes up to 14 March 2026: a backup as the app makes one. */
const WORKSHOP = fileURLToPath(new URL('./workshop.zip', import.meta.url));

/** The places over a log of two years. */
export const workshop = async (phone) => {
  const { tap, sees, says, picture, fill, openAllFolds, go, rest } = phone;

  await go('shop', 'backups');
  await phone.pick('Import a backup', WORKSHOP);
  await sees('Take this in', 'button');
  await picture('backup-offered');
  await tap('Take this in');
  await sees('Import a backup', 'button');
  await picture('backup-taken-in');

  await go('bench');
  await sees(/^Box 126/);
  await picture('workshop-bench');
  await phone.fold('Set up for the tenon');
  await picture('workshop-bench-stages-open', { inAllShapes: true });
  await tap('Go on with it', 'link');
  await sees('Pass', 'button');
  await picture('workshop-set-up', { inAllShapes: true });
  await tap(/^All steps\./);
  await picture('workshop-set-up-all-steps');
  await tap('Back');
  await go('bench', 'new');
  await picture('workshop-new-box');
  await go('bench', 'plan');
  await picture('workshop-plan');
  await tap('See the joint', 'link');
  await sees('Job card, to print', 'link');
  await picture('joint', { inAllShapes: true });
  for (const slider of await phone.page.getByRole('slider').all()) await slider.press('ArrowRight');
  await rest();
  await openAllFolds();
  await picture('joint-other-sizes-folds-open');
  await tap('Job card, to print', 'link');
  await sees('Print', 'button');
  await picture('job-card', { inAllShapes: true });
  await phone.page.emulateMedia({ media: 'print' });
  await picture('job-card-printed');
  await phone.page.emulateMedia({ media: 'screen' });

  await go('boxes');
  await sees('Boxes');
  await picture('boxes', { inAllShapes: true });
  await fill('Find', 'pear');
  await picture('boxes-found');
  await fill('Find', 'zzz');
  await picture('boxes-none-found');
  await tap('Show all');
  await tap(/^Show \d+ more/);
  await picture('boxes-more');
  for (const [name, number] of [
    ['box-page-right', 1],
    ['box-page-eased', 12],
    ['box-page-third', 40],
  ]) {
    await go('boxes');
    await fill('Find', String(number));
    await rest();
    await phone.page.getByRole('main').getByRole('listitem').getByRole('link').last().tap();
    await sees('Sizes');
    await picture(name);
    await openAllFolds();
    await picture(`${name}-folds-open`);
  }

  await go('woods');
  await sees('In your log');
  await picture('woods', { inAllShapes: true });
  await fill('Find a wood', 'maple');
  await picture('woods-found');
  await phone.page.getByRole('main').getByRole('listitem').getByRole('link').first().tap();
  await sees('Your record');
  await picture('wood-page');
  await go('woods');
  await phone.page.getByRole('main').getByRole('listitem').getByRole('link').first().tap();
  await sees('Your record');
  await picture('wood-page-often-used', { inAllShapes: true });
  await go('woods', 'hedge-pear');
  await picture('wood-page-own');

  await go('findings');
  await sees('What to change tomorrow');
  await picture('findings', { inAllShapes: true });
  await tap('Plan a test');
  await sees('Assign boxes', 'button');
  await picture('trial-plan', { inAllShapes: true });
  await fill('How many boxes? (a multiple of 4, from 8)', '3');
  await tap('Assign boxes');
  await picture('trial-plan-refused');
  await fill('How many boxes? (a multiple of 4, from 8)', '40');
  await tap('Assign boxes');
  await sees('Cancel this test', 'button');
  await says(/^0 of 40 boxes/);
  await picture('trial-under-way');
  await openAllFolds();
  await picture('findings-folds-open');
};
