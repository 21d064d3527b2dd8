import { measureBore, planBox, setUpAndCut } from './at-the-lathe.mjs';

const DAY = 86_400_000;

/** A lid looked at again after weeks; a box like the last; sizes that make no joint, or one with warnings. */
export const oddBoxes = async (phone) => {
  const { tap, sees, picture, fill, choose, openAllFolds, go, rest, letTimePass } = phone;

  await planBox(phone);
  await measureBore(phone, '2.003');
  await setUpAndCut(phone, 'recess');
  await go('bench', 'tenon');
  await fill('Diameter of the tenon', '2.1');
  await tap('Save');
  await sees('To the set-up', 'link');
  await setUpAndCut(phone, 'tenon');
  await go('bench', 'trial');
  await tap(/^Right: /);
  await sees('Seat and grain');
  await go('bench', 'close');
  await tap('Keep it: close');
  await rest();
  await letTimePass(60 * DAY);
  await go('boxes');
  await go('bench');
  await sees('Stiff', 'button');
  await picture('bench-asks-after-weeks');
  await tap('Stiff');
  await picture('bench-answered-after-weeks');
  await tap('Like the last one');
  await sees('Set up for the recess');
  await picture('bench-like-the-last');

  await go('bench', 'new');
  await fill('Opening', '1');
  await fill('Outside', '1.55');
  await fill('Wood', 'Riverwood');
  await choose('Other');
  await fill('Which pitch', '6');
  await openAllFolds();
  await fill('Threads engaged', '8');
  await fill('Clearance', '0.5');
  await tap('Plan it');
  await picture('new-box-no-such-joint');
  await fill('Clearance', '0.003');
  await choose('On the base');
  await fill('Wood of the ring', 'African blackwood');
  await choose('Both turned first');
  await tap('Plan it');
  await sees('Bored? Measure it', 'link');
  await picture('plan-with-warnings', { inAllShapes: true });
  await openAllFolds();
  await picture('plan-with-warnings-folds-open');
  await go('bench', 'bore');
  await fill('Along the rings', '1.02');
  await tap('Save');
  await sees('To the tenon', 'link');
  await picture('bore-both-turned');
};
