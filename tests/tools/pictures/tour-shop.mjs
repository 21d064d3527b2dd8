/** Every page of Shop and the places as they are before the first box, with an empty log. */
export const shop = async (phone) => {
  const { tap, sees, picture, fill, choose, openAllFolds, go, rest } = phone;

  for (const place of ['Boxes', 'Woods', 'Findings']) {
    await tap(place, 'link');
    await sees(place);
    await picture(`${place.toLowerCase()}-of-an-empty-log`);
  }
  await go('boxes', 'nowhere');
  await picture('box-no-such');
  await go('woods', 'nowhere');
  await picture('wood-no-such');
  await go('nowhere');
  await picture('no-such-place');
  await go('bench', 'joint');
  await picture('joint-without-a-box');

  await tap('Shop', 'link');
  await sees('Shop');
  await picture('shop', { inAllShapes: true });

  await tap(/^Rig/, 'link');
  await sees('Rig');
  await picture('rig-nothing-known');
  await tap(/^Next:/, 'link');
  await askAll(phone);
  await go('shop', 'rig');
  await picture('rig-all-known');
  await tap('Another rig');
  await sees('Rig 2');
  await picture('rig-second');
  await go('bench', 'new');
  await picture('new-box-two-rigs');
  await go('shop', 'rig', 'nonsense');
  await picture('rig-no-such-question');

  await go('shop', 'rig', 'tipFlat');
  await fill('Bore of the recess', '2');
  await fill('Diameter of the tenon', '2.1');
  await fill('Depth cut, recess', '0.08');
  await fill('Depth cut, tenon', '0.08');
  await fill('End play', '0.01');
  await tap('Reckon and keep it');
  await picture('rig-scrap-pair');

  await go('shop', 'procedures');
  await picture('procedures');
  await phone.page.getByRole('main').getByRole('listitem').getByRole('link').first().tap();
  await sees('Copy it, to change', 'button');
  await picture('procedure-ours', { inAllShapes: true });
  await tap('Copy it, to change');
  await sees('Add a step', 'button');
  await picture('procedure-editor');
  await tap('Change it');
  await picture('procedure-step-hold');
  await tap('Leave it');
  await tap('Take it out');
  await rest();
  await tap('Add a step');
  await picture('procedure-step-refused');
  await fill('What to do, in one sentence', 'Blow the chips off the dial.');
  await tap('Add a step');
  await sees('Add a step', 'button');
  await rest();
  const own = phone.page.getByRole('listitem').filter({ hasText: 'Blow the chips off the dial.' });
  await own.getByRole('button', { name: 'Change it' }).tap();
  await picture('procedure-step-own');
  await fill('Sentence, at most 56 characters', 'Blow the chips off dial and slide.');
  await fill('Why', 'Chips under the slide tilt it.');
  await tap('Keep it');
  await rest();
  await tap('Remove this procedure');
  await picture('procedure-remove-sure');
  await go('shop', 'procedures');
  await picture('procedures-with-own');

  await go('shop', 'reading');
  await picture('reading');
  await choose('Speak each step', 'checkbox');
  await choose('Millimetres');
  await choose('Night');
  await phone.page.getByRole('slider').first().fill('90');
  await picture('reading-far-and-night');
  await go('bench', 'new');
  await picture('new-box-in-millimetres');
  await go('shop', 'rig', 'cutterRadius');
  await picture('rig-question-in-millimetres');
  await go('shop', 'reading');
  await choose('As the phone');
  await choose('Inches');
  // A bank card is wider than the phone: nothing beside it can be tapped while its fold is open.
  await openAllFolds();
  await picture('reading-folds-open');

  await go('shop', 'backups');
  await picture('backups');
  await openAllFolds();
  await picture('backups-replaced');
  await phone.pick('Import a backup', {
    name: 'notes.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from('not a backup'),
  });
  await sees('Import a backup', 'button');
  await picture('backups-refused');
  await tap('Boxes as a table (CSV)');
  await sees('Share or save it', 'button');
  await picture('backups-table-ready');

  await go('shop', 'safety');
  await picture('safety');
  await go('shop', 'sources');
  await picture('sources');

  // The note over every place of the demo; its log is not pictured.
  await go('shop', 'backups');
  await tap('Open the demo');
  await sees('Leave it', 'button');
  await go('shop', 'safety');
  await picture('demo-note', { inAllShapes: true });
};

/** What is typed where a question has no answers to choose from, by the question's place in the address. */
const ANSWERS = {
  pitch: '10 tpi',
  cutterRadius: '0.35',
  tipFlat: '0.008',
  teeth: '1',
  aheadOfTooth: '0.1',
  travelPerTurn: '0.1',
  marksPerTurn: '100',
  slideTravel: '6',
  chucks: '2',
  name: 'Bench rig',
};

/** Answers the question on screen and those that follow it, until the list of answers comes up. */
const askAll = async ({ page, tap, shows, picture }) => {
  while (await shows(/^(Keep it|Next)$/)) {
    const [, , question] = page.url().split('#/')[1].split('/');
    const name = `rig-question-${question}`;
    await picture(name, { inAllShapes: question === 'tipFlat' });
    if (ANSWERS[question]) {
      const answer = page.getByRole('main').getByRole('textbox').first();
      await answer.fill('');
      await tap('Keep it');
      await picture(`${name}-refused`);
      await answer.fill(ANSWERS[question]);
      await tap('Keep it');
    } else {
      await page.getByRole('radio').first().check();
      await picture(`${name}-chosen`);
      await tap('Next');
    }
  }
};
